//! What happens when the supply gives less than the injectors take.

use crate::quantity::VolumeRate;

/// What happens when the supply gives less than the injectors take.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shortage {
    /// The pressure difference across the injectors relative to the set one.
    pub pressure_ratio: f64,
    /// The lambda that results; infinite when nothing is supplied.
    pub lambda: f64,
}

/// Where pressure and mixture settle when demand exceeds supply and nothing corrects
/// it; none when the supply is enough.
///
/// The nozzles pass only what is supplied, so with `q = supplied / demanded` the
/// pressure difference falls to `q^2` and lambda rises to `target / q`.
///
/// ```
/// use fillwright::hardware::shortage;
/// use fillwright::quantity::VolumeRate;
/// use uom::si::volume_rate::liter_per_minute;
/// let flow = VolumeRate::new::<liter_per_minute>;
/// let short = shortage(flow(4.5), flow(5.0), 0.80).unwrap();
/// assert!((short.pressure_ratio - 0.81).abs() < 1e-12);
/// assert!((short.lambda - 0.889).abs() < 1e-3); // lean enough for damage
/// assert_eq!(shortage(flow(5.0), flow(5.0), 0.80), None);
/// ```
pub fn shortage(available: VolumeRate, demand: VolumeRate, target: f64) -> Option<Shortage> {
    let none = VolumeRate::default();
    (available < demand).then(|| {
        let supplied: f64 = (available.max(none) / demand).into();
        Shortage { pressure_ratio: supplied.powi(2), lambda: target / supplied }
    })
}
