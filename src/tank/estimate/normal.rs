//! Quantiles of a mixture of normal distributions.

use std::f64::consts::FRAC_1_SQRT_2;

/// A normal distribution with its weight in a mixture.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Component {
    pub(super) weight: f64,
    pub(super) mean: f64,
    pub(super) sd: f64,
}

impl Component {
    /// The probability of a value at or below this one.
    fn at_most(&self, value: f64) -> f64 {
        if self.sd > 0.0 {
            0.5 * libm::erfc((self.mean - value) / self.sd * FRAC_1_SQRT_2)
        } else {
            f64::from(u8::from(value >= self.mean))
        }
    }
}

/// A quantile by the probability below it and by how many deviations above the
/// mean it lies in a normal distribution.
#[derive(Clone, Copy, Debug)]
pub(super) struct Tail {
    probability: f64,
    deviations: f64,
}

/// The lower end of a 95 % band.
pub(super) const LOW: Tail = Tail { probability: 0.025, deviations: -1.959_963_984_540_054 };
/// The upper end of a 95 % band.
pub(super) const HIGH: Tail = Tail { probability: 0.975, deviations: 1.959_963_984_540_054 };

/// How near the probability must come: far nearer than any band is worth.
const NEAR: f64 = 1e-7;

/// The quantile of a mixture.
///
/// It lies between the least and the greatest of the components' own. Regula falsi
/// in the Illinois form narrows that down: it keeps the quantile between two values,
/// as bisection does, and needs a quarter of the steps.
pub(super) fn quantile(mixture: &[Component], tail: Tail) -> f64 {
    let excess = |value| {
        mixture.iter().map(|own| own.weight * own.at_most(value)).sum::<f64>() - tail.probability
    };
    let own = || mixture.iter().map(|own| own.mean + tail.deviations * own.sd);
    let mut low = own().fold(f64::INFINITY, f64::min);
    let mut high = own().fold(f64::NEG_INFINITY, f64::max);
    let (mut below, mut above) = (excess(low), excess(high));
    // Where all components agree, rounding decides the signs.
    if below >= 0.0 {
        return low;
    }
    if above <= 0.0 {
        return high;
    }
    for _ in 0..60 {
        let between = (low * above - high * below) / (above - below);
        let found = excess(between);
        if found.abs() < NEAR {
            return between;
        }
        if found < 0.0 {
            low = between;
            below = found;
            above *= 0.5;
        } else {
            high = between;
            above = found;
            below *= 0.5;
        }
    }
    f64::midpoint(low, high)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    /// Tables of the normal distribution: 1.959964 deviations hold 95 %.
    #[test]
    fn one_component_has_the_quantiles_of_the_tables() {
        let one = [Component { weight: 1.0, mean: 3.0, sd: 2.0 }];
        assert_abs_diff_eq!(quantile(&one, HIGH), 3.0 + 2.0 * 1.959_964, epsilon = 1e-5);
        assert_abs_diff_eq!(quantile(&one, LOW), 3.0 - 2.0 * 1.959_964, epsilon = 1e-5);
    }

    /// The defining property, with the probabilities summed over the density.
    #[test]
    fn a_mixture_stays_below_its_quantile_as_often_as_asked() {
        let mixture = [
            Component { weight: 0.3, mean: 0.0, sd: 1.0 },
            Component { weight: 0.6, mean: 8.0, sd: 0.1 },
            Component { weight: 0.1, mean: 3.0, sd: 5.0 },
        ];
        for (p, tail) in [(0.025, LOW), (0.975, HIGH)] {
            let end = quantile(&mixture, tail);
            let (start, steps) = (-40.0, 400_000_u32);
            let width = (end - start) / f64::from(steps);
            let below: f64 = (0..steps)
                .map(|k| start + (f64::from(k) + 0.5) * width)
                .map(|x| {
                    let density = |own: &Component| {
                        own.weight * (-0.5 * ((x - own.mean) / own.sd).powi(2)).exp() / own.sd
                    };
                    mixture.iter().map(density).sum::<f64>() * width
                })
                .sum::<f64>()
                / std::f64::consts::TAU.sqrt();
            assert_abs_diff_eq!(below, p, epsilon = 1e-5);
        }
    }

    #[test]
    fn what_is_certain_is_its_own_quantile() {
        let certain = [Component { weight: 1.0, mean: 5.0, sd: 0.0 }];
        assert_abs_diff_eq!(quantile(&certain, LOW), 5.0, epsilon = 1e-9);
    }
}
