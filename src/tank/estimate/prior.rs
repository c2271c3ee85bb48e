//! What is believed before anything is read. Nobody has measured these: they are
//! chosen so that the bands hold in the simulations of `tests/estimator`.

use crate::message::keys::practice as words;
use crate::quantity::{Band, Share};
use crate::source::Sourced;

/// Spread of real against stated consumption, as a fraction.
pub(super) const GAIN_SD: Sourced<f64> = Sourced::common(0.08, words::GAIN_SD_SOURCE);
/// Spread from leg to leg, as a fraction of what was burned.
pub(super) const LEG_SD: Sourced<f64> = Sourced::common(0.06, words::LEG_SD_SOURCE);
/// The same where the trip computer counted.
pub(super) const COUNTED_LEG_SD: Sourced<f64> = Sourced::common(0.02, words::COUNTED_LEG_SD_SOURCE);
/// Variance that every leg adds, in litres squared: starts, idling, a short way.
pub(super) const LEG_VARIANCE: Sourced<f64> = Sourced::common(0.05, words::LEG_VARIANCE_SOURCE);
/// Spread of a gauge's reading, as a fraction of the tank.
pub(super) const GAUGE_SD: Sourced<f64> = Sourced::common(0.02, words::GAUGE_SD_SOURCE);
/// The fraction of the tank between two marks that a gauge is read to.
pub(super) const GAUGE_STEP: Sourced<f64> = Sourced::common(0.125, words::GAUGE_STEP_SOURCE);
/// Spread of what a gauge always reads high or low, as a fraction of the tank.
pub(super) const GAUGE_BIAS_SD: Sourced<f64> = Sourced::common(0.025, words::GAUGE_BIAS_SD_SOURCE);
/// Spread of what a flex sensor always reads high or low, as a share.
pub(super) const SENSOR_BIAS_SD: Sourced<f64> = Sourced::common(0.02, words::SENSOR_BIAS_SD_SOURCE);
/// From this share on a fuel is a strong one, whose content follows the season.
pub(super) const STRONG_FROM: Sourced<f64> = Sourced::common(0.5, words::STRONG_FROM_SOURCE);
/// The part of a strong fuel's variance that belongs to the pump, not to the fill.
pub(super) const LASTING_PART: Sourced<f64> = Sourced::common(0.73, words::LASTING_PART_SOURCE);
/// What of a pump's offset is still there at the next fill.
pub(super) const LASTING_TO_NEXT: Sourced<f64> =
    Sourced::common(0.99, words::LASTING_TO_NEXT_SOURCE);
/// How many times wider than their bands weak fuels spread.
pub(super) const WEAK_SPREAD: Sourced<f64> = Sourced::common(1.5, words::WEAK_SPREAD_SOURCE);
/// How many times wider than their bands strong fuels may spread, with the
/// probability of each.
pub(super) const SPREADS: Sourced<[(f64, f64); 4]> =
    Sourced::common([(0.7, 0.20), (1.2, 0.35), (1.8, 0.30), (2.6, 0.15)], words::SPREADS_SOURCE);
/// Whether a reading is wrong that shows far more or less than the log allows;
/// otherwise the log is.
pub(super) const MISREAD: Sourced<f64> = Sourced::common(0.3, words::MISREAD_SOURCE);
/// Whether nothing was burned where none was logged.
pub(super) const STOOD: Sourced<f64> = Sourced::common(0.5, words::STOOD_SOURCE);

/// What a fuel is believed to hold.
///
/// The mean is the share that is expected of the fuel, as everywhere else: a fill that
/// was planned with it and went to plan must not look like another one to the log. How
/// far the truth may lie from it comes from the band, taken as a triangle. A pump whose
/// fuel lies to one side of what is expected is learnt from readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Content {
    /// The mean share.
    pub(super) mean: f64,
    /// The mean square of what it may be off.
    pub(super) variance: f64,
    /// Whether it is a strong fuel.
    pub(super) strong: bool,
}

impl Content {
    /// Mean `e`; mean square of the distance to it over the triangle of the band,
    /// `(a² - a b + b²) / 6` with `a = e - l` and `b = h - e`.
    pub(super) fn of(share: &Band<Share>) -> Self {
        let [low, expected, high] =
            [share.low(), share.expected(), share.high()].map(Share::fraction);
        let (below, above) = (expected - low, high - expected);
        Self {
            mean: expected,
            variance: (below * below - below * above + above * above) / 6.0,
            strong: expected >= STRONG_FROM.value,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    /// Against the moments summed over the triangle itself.
    #[test]
    fn how_far_it_may_be_off_is_that_of_the_triangle() {
        let share = |percent| Share::from_percent(percent).unwrap();
        let band = Band::new(share(4.5), share(9.5), share(10.0)).unwrap();
        let density = |x: f64| {
            let height = 2.0 / (0.100 - 0.045);
            if x < 0.095 { height * (x - 0.045) / 0.050 } else { height * (0.100 - x) / 0.005 }
        };
        let steps = 20_000_u32;
        let width = 0.055 / f64::from(steps);
        let points = (0..steps).map(|k| 0.045 + (f64::from(k) + 0.5) * width);
        let square: f64 = points.map(|x| (x - 0.095).powi(2) * density(x) * width).sum();
        let content = Content::of(&band);
        assert_abs_diff_eq!(content.mean, 0.095, epsilon = 1e-12);
        assert_abs_diff_eq!(content.variance, square, epsilon = 1e-8);
        assert!(!content.strong);
    }

    #[test]
    fn the_probabilities_add_up() {
        let sum: f64 = SPREADS.value.iter().map(|(_, probability)| probability).sum();
        assert_abs_diff_eq!(sum, 1.0, epsilon = 1e-12);
    }
}
