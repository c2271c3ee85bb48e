//! What the octane of the contents is at least.

use crate::fuel::{Mean, MolarDensity};
use crate::quantity::{Band, Share};

/// A part of a mixture: its moles, at least, as expected and at most, and its
/// octane number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Part {
    moles: Band<f64>,
    octane: Floor,
}

/// The octane number of a fuel, at least.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Floor {
    /// There is no fuel.
    Nothing,
    /// That of a part is unknown.
    Unknown,
    /// At the worst end of what is possible, and as expected.
    AtLeast {
        /// At the worst end.
        low: f64,
        /// As expected.
        expected: f64,
    },
}

impl Floor {
    /// That of a fuel whose octane was given, or not.
    pub(super) fn given(octane: Option<f64>) -> Self {
        octane.map_or(Self::Unknown, |octane| Self::AtLeast { low: octane, expected: octane })
    }

    /// As a band from the worst end to what is expected.
    pub(super) fn band(self) -> Option<Band<f64>> {
        match self {
            Self::AtLeast { low, expected } => Band::new(low, expected, expected).ok(),
            Self::Nothing | Self::Unknown => None,
        }
    }

    /// That of a mixture.
    pub(super) fn of_mixture(parts: &[Part]) -> Self {
        let mut numbers = Vec::with_capacity(parts.len());
        for part in parts.iter().filter(|part| part.moles.high() > 0.0) {
            match part.octane {
                Self::Nothing => {}
                Self::Unknown => return Self::Unknown,
                Self::AtLeast { low, expected } => numbers.push((part.moles, low, expected)),
            }
        }
        let Some(low) = least_mean(&numbers) else { return Self::Nothing };
        let part = |(moles, _, own): &(Band<f64>, f64, f64)| Mean::of(moles.expected(), Some(*own));
        let expected = numbers.iter().map(part).sum::<Mean>().value().unwrap_or(low);
        Self::AtLeast { low, expected: expected.max(low) }
    }

    /// The lower of this and that of a fuel that may have been added.
    pub(super) fn or_mixed_with(self, other: Self) -> Self {
        match (self, other) {
            (Self::AtLeast { low, expected }, Self::AtLeast { low: other, .. }) => {
                Self::AtLeast { low: low.min(other), expected }
            }
            (Self::Nothing, other) => other,
            (this, Self::Nothing) => this,
            _ => Self::Unknown,
        }
    }
}

impl Part {
    /// So many litres, within a band, of a fuel whose share lies within another.
    pub(super) fn new(
        litres: Band<f64>,
        share: Band<Share>,
        octane: Floor,
        density: &MolarDensity,
    ) -> Self {
        let per_litre = share.map(|share| density.per_litre(share.fraction()));
        let moles = |litres: f64, per_litre: f64| (litres * per_litre).max(0.0);
        let expected = moles(litres.expected(), per_litre.expected());
        let ends = [
            moles(litres.low(), per_litre.low().min(per_litre.high())),
            moles(litres.high(), per_litre.low().max(per_litre.high())),
        ];
        Self { moles: Band::enclosing(expected, ends).unwrap_or(Band::exact(expected)), octane }
    }
}

/// The least mean of the numbers over all weights within their bands.
///
/// At the least, every number below the mean has its largest weight and every
/// number above its smallest. Each round lowers the mean until that is so
/// (Dinkelbach's iteration), and there are at most as many rounds as numbers.
fn least_mean(numbers: &[(Band<f64>, f64, f64)]) -> Option<f64> {
    let mut mean = numbers.iter().map(|(_, low, _)| *low).fold(f64::NEG_INFINITY, f64::max);
    if !mean.is_finite() {
        return None;
    }
    for _ in 0..=numbers.len() {
        let part = |(band, low, _): &(Band<f64>, f64, f64)| {
            Mean::of(if *low < mean { band.high() } else { band.low() }, Some(*low))
        };
        let Some(next) = numbers.iter().map(part).sum::<Mean>().value() else { break };
        mean = mean.min(next);
    }
    Some(mean)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    fn band(low: f64, expected: f64, high: f64) -> Band<f64> {
        Band::new(low, expected, high).unwrap()
    }

    fn part(moles: Band<f64>, octane: Floor) -> Part {
        Part { moles, octane }
    }

    fn at_least(octane: f64) -> Floor {
        Floor::given(Some(octane))
    }

    /// Every corner of the box of weights.
    #[test]
    fn the_floor_is_the_least_over_all_corners() {
        let bands = [band(50.0, 100.0, 180.0), band(200.0, 220.0, 230.0), band(10.0, 90.0, 95.0)];
        let octanes = [95.0, 104.0, 98.0];
        let mut least = f64::INFINITY;
        for corner in 0..8_u8 {
            let weights: [f64; 3] = std::array::from_fn(|k| {
                if corner >> k & 1 == 0 { bands[k].low() } else { bands[k].high() }
            });
            let sum: f64 =
                weights.iter().zip(octanes).map(|(weight, octane)| weight * octane).sum();
            least = least.min(sum / weights.iter().sum::<f64>());
        }
        let parts: Vec<Part> =
            bands.iter().zip(octanes).map(|(band, octane)| part(*band, at_least(octane))).collect();
        let Floor::AtLeast { low, expected } = Floor::of_mixture(&parts) else { panic!() };
        assert_abs_diff_eq!(low, least, epsilon = 1e-12);
        let by_hand = (100.0 * 95.0 + 220.0 * 104.0 + 90.0 * 98.0) / 410.0;
        assert_abs_diff_eq!(expected, by_hand, epsilon = 1e-12);
    }

    #[test]
    fn a_part_of_unknown_octane_makes_it_unknown() {
        let some = part(band(1.0, 2.0, 3.0), at_least(95.0));
        let unknown = part(band(0.0, 0.0, 0.1), Floor::Unknown);
        assert_eq!(Floor::of_mixture(&[some, unknown]), Floor::Unknown);
        let none = part(Band::exact(0.0), Floor::Unknown);
        assert_eq!(Floor::of_mixture(&[some, none]), at_least(95.0));
        assert_eq!(Floor::of_mixture(&[]), Floor::Nothing);
    }
}
