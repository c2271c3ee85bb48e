//! The gain from one power curve to another.

use uom::si::angular_velocity::radian_per_second;
use uom::si::power::watt;
use uom::si::torque::newton_meter;

use super::curve::{Peak, PowerCurve};
use super::parabola::Parabola;
use crate::quantity::{AngularVelocity, CrankPower, Power, Torque};

/// A peak before and after a change.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PeakChange<T> {
    /// Before the change.
    pub before: Peak<T>,
    /// After it.
    pub after: Peak<T>,
}

impl PeakChange<CrankPower> {
    /// The change as a fraction of what was before.
    pub fn relative(&self) -> f64 {
        f64::from(self.after.value.get() / self.before.value.get()) - 1.0
    }
}

impl PeakChange<Torque> {
    /// The change as a fraction of what was before.
    pub fn relative(&self) -> f64 {
        f64::from(self.after.value / self.before.value) - 1.0
    }
}

/// What a change gave over the speeds that both curves cover; below zero where it
/// took.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BandGain<T> {
    /// The mean over engine speed.
    pub mean: T,
    /// The mean as a fraction of the mean before.
    pub relative: f64,
    /// The largest gain, and where it is.
    pub largest: Peak<T>,
    /// The smallest gain, and where it is.
    pub smallest: Peak<T>,
}

/// Two curves of one engine, compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gain {
    /// The lowest and the highest speed that both curves cover.
    pub speeds: (AngularVelocity, AngularVelocity),
    /// The most power of each curve, wherever it is.
    pub peak_power: PeakChange<CrankPower>,
    /// The most torque of each curve, wherever it is.
    pub peak_torque: PeakChange<Torque>,
    /// Power over the common speeds.
    pub power: BandGain<CrankPower>,
    /// Torque over the common speeds.
    pub torque: BandGain<Torque>,
}

/// What a change gave; nothing where the curves have no range of speeds in common.
pub fn compare(before: &PowerCurve, after: &PowerCurve) -> Option<Gain> {
    let (first, second) = (before.speeds(), after.speeds());
    let low = if first.0 > second.0 { first.0 } else { second.0 };
    let high = if first.1 < second.1 { first.1 } else { second.1 };
    if low >= high {
        return None;
    }
    let watts = |value: f64| CrankPower::new(Power::new::<watt>(value));
    let power = over(before.powers(), || after.powers())?;
    let torque = over(before.torques(), || after.torques())?;
    Some(Gain {
        speeds: (low, high),
        peak_power: PeakChange { before: before.peak_power(), after: after.peak_power() },
        peak_torque: PeakChange { before: before.peak_torque(), after: after.peak_torque() },
        power: power.map(watts),
        torque: torque.map(Torque::new::<newton_meter>),
    })
}

/// The gain over the pieces that two curves have in common.
fn over<A: Iterator<Item = Parabola>>(
    before: impl Iterator<Item = Parabola>,
    after: impl Fn() -> A,
) -> Option<BandGain<f64>> {
    // Each piece of the one is cut at the points of the other.
    let pairs: Vec<(Parabola, Parabola)> = before
        .flat_map(|old| {
            after().filter_map(move |new| {
                let (low, high) = (old.low.max(new.low), old.high.min(new.high));
                // Pieces that only touch have no width and would count nothing.
                (low < high).then_some((old.within(low, high)?, new.within(low, high)?))
            })
        })
        .collect();
    let width: f64 = pairs.iter().map(|(old, _)| old.high - old.low).sum();
    let area: f64 = pairs.iter().map(|(old, _)| old.area()).sum();
    let gained: f64 = pairs.iter().map(|(old, new)| new.less(old).area()).sum();
    let higher = |best: (f64, f64), next: (f64, f64)| if next.1 > best.1 { next } else { best };
    let largest = pairs.iter().map(|(old, new)| new.less(old).highest()).reduce(higher)?;
    let loss = pairs.iter().map(|(old, new)| old.less(new).highest()).reduce(higher)?;
    let at = |(speed, value): (f64, f64)| Peak {
        speed: AngularVelocity::new::<radian_per_second>(speed),
        value,
    };
    Some(BandGain {
        mean: gained / width,
        relative: gained / area,
        largest: at(largest),
        smallest: at((loss.0, -loss.1)),
    })
}

impl BandGain<f64> {
    fn map<T>(self, quantity: impl Fn(f64) -> T) -> BandGain<T> {
        let peak = |peak: Peak<f64>| Peak { speed: peak.speed, value: quantity(peak.value) };
        BandGain {
            mean: quantity(self.mean),
            relative: self.relative,
            largest: peak(self.largest),
            smallest: peak(self.smallest),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::CurvePoint;
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::angular_velocity::revolution_per_minute;
    use uom::si::power::kilowatt;

    /// Newton metres times revolutions per minute in a kilowatt: 30 000 / pi.
    const PER_KILOWATT: f64 = 30_000.0 / std::f64::consts::PI;

    fn curve(points: &[(f64, f64)]) -> PowerCurve {
        let point = |(speed, torque): &(f64, f64)| CurvePoint {
            speed: AngularVelocity::new::<revolution_per_minute>(*speed),
            torque: Torque::new::<newton_meter>(*torque),
            boost: None,
        };
        PowerCurve::new(points.iter().map(point).collect()).unwrap()
    }

    fn rpm<T>(peak: &Peak<T>) -> f64 {
        peak.speed.get::<revolution_per_minute>()
    }

    // By hand. Before: 300 N m throughout. After: 300 at 2000, 400 at 4000, 300 at 6000.
    // In common 2000 to 6000: a triangle of 100 N m, mean 50, a sixth of 300. Power gains
    // (T - 300) n: the mean of n (n - 2000) / 20 over the rise and n (6000 - n) / 20 over
    // the fall is 4000 x 50 in N m rpm, as the triangle is even about 4000; the largest is
    // 100 x 4000, since beyond 4000 the fall outweighs the speed.
    #[test]
    fn a_triangle_of_torque() {
        let before = curve(&[(1000.0, 300.0), (7000.0, 300.0)]);
        let after = curve(&[(2000.0, 300.0), (4000.0, 400.0), (6000.0, 300.0)]);
        let gain = compare(&before, &after).unwrap();
        assert_relative_eq!(gain.torque.mean.get::<newton_meter>(), 50.0, max_relative = 1e-9);
        assert_relative_eq!(gain.torque.relative, 1.0 / 6.0, max_relative = 1e-9);
        assert_relative_eq!(rpm(&gain.torque.largest), 4000.0, max_relative = 1e-9);
        let power = gain.power.mean.get().get::<kilowatt>();
        assert_relative_eq!(power, 200_000.0 / PER_KILOWATT, max_relative = 1e-9);
        // The mean before is 300 N m at 4000 rpm.
        assert_relative_eq!(gain.power.relative, 1.0 / 6.0, max_relative = 1e-9);
        let largest = gain.power.largest.value.get().get::<kilowatt>();
        assert_relative_eq!(largest, 400_000.0 / PER_KILOWATT, max_relative = 1e-9);
        assert_relative_eq!(gain.power.smallest.value.get().get::<kilowatt>(), 0.0, epsilon = 1e-9);
        assert_relative_eq!(gain.speeds.0.get::<revolution_per_minute>(), 2000.0);
        assert_relative_eq!(gain.speeds.1.get::<revolution_per_minute>(), 6000.0);
        assert_relative_eq!(rpm(&gain.peak_power.before), 7000.0, max_relative = 1e-9);
    }

    // Gained 0.1 N m for each rpm above 4000 and lost below: the mean of torque is none,
    // and power gains, as more is gained where the engine turns faster: the mean of
    // 0.1 (n - 4000) n over 3000 to 5000 is 0.1 x 1000^2 / 3.
    #[test]
    fn a_shift_of_torque_upwards_gains_power() {
        let before = curve(&[(3000.0, 400.0), (5000.0, 400.0)]);
        let after = curve(&[(3000.0, 300.0), (5000.0, 500.0)]);
        let gain = compare(&before, &after).unwrap();
        assert_relative_eq!(gain.torque.mean.get::<newton_meter>(), 0.0, epsilon = 1e-9);
        assert_relative_eq!(rpm(&gain.torque.smallest), 3000.0, max_relative = 1e-9);
        let smallest = gain.torque.smallest.value.get::<newton_meter>();
        assert_relative_eq!(smallest, -100.0, max_relative = 1e-9);
        let power = gain.power.mean.get().get::<kilowatt>();
        assert_relative_eq!(power, 0.1e6 / 3.0 / PER_KILOWATT, max_relative = 1e-9);
    }

    #[test]
    fn curves_apart_cannot_be_compared() {
        let low = curve(&[(1000.0, 300.0), (2000.0, 300.0)]);
        let high = curve(&[(2000.0, 300.0), (3000.0, 300.0)]);
        assert_eq!(compare(&low, &high), None);
        let same = compare(&low, &low).unwrap();
        assert_eq!((same.power.relative, same.torque.relative), (0.0, 0.0));
    }
}
