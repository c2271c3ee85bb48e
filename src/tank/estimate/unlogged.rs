//! What a fill that nobody logged may have been.

use super::evidence::Pour;
use super::filter::Moments;
use super::octane_floor::Floor;
use super::prior::Content;
use super::vehicle::Car;
use crate::message::keys::practice as words;
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};

/// The levels between which people fill up, as fractions of the tank.
pub(super) const FILLED_AT: Sourced<(f64, f64)> = Sourced {
    value: (1.0 / 30.0, 11.0 / 30.0),
    source: Source {
        kind: SourceKind::CommonPractice,
        citation: Citation::Words(words::FILLED_AT_SOURCE),
        confidence: Confidence::Weak,
    },
};
/// The probabilities of a weak fuel, of a strong one, and of half and half.
const KINDS: [f64; 3] = [0.35, 0.35, 0.30];

/// A petrol and a flex fuel to think of while the log knows none: mean and variance.
const ANY_WEAK: Content = Content { mean: 0.08, variance: 0.0004, strong: false };
const ANY_STRONG: Content = Content { mean: 0.75, variance: 0.0025, strong: true };

/// The fuels that the log knows.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct KnownFuels {
    weak: Option<Content>,
    strong: Option<Content>,
    ron: Option<Floor>,
    mon: Option<Floor>,
}

impl KnownFuels {
    /// Remembers what was poured last of each kind, and the least octane.
    pub(super) fn remember(&mut self, content: &Content, pour: &Pour, litres: f64) {
        if litres <= 0.0 {
            return;
        }
        let kind = if content.strong { &mut self.strong } else { &mut self.weak };
        *kind = Some(*content);
        for (least, octane) in [(&mut self.ron, pour.ron), (&mut self.mon, pour.mon)] {
            let own = Floor::given(octane);
            *least = Some(least.map_or(own, |least| least.or_mixed_with(own)));
        }
    }

    /// The least research octane number of them all.
    pub(super) fn least_ron(&self) -> Floor {
        self.ron.unwrap_or(Floor::Unknown)
    }

    /// The least motor octane number of them all.
    pub(super) fn least_mon(&self) -> Floor {
        self.mon.unwrap_or(Floor::Unknown)
    }

    /// The part of the contents that was there before, and the share of what was
    /// added, for an unlogged fill of so many litres.
    pub(super) fn unlogged_fill(&self, car: &Car, added: f64) -> (Moments, Moments) {
        let (lowest, highest) = FILLED_AT.value;
        let (low, high) = (lowest * car.capacity, highest * car.capacity);
        // Simpson's rule: exact enough for a function this smooth.
        let kept = [low, f64::midpoint(low, high), high]
            .map(|level| if level + added > 0.0 { level / (level + added) } else { 1.0 });
        let mean = (kept[0] + 4.0 * kept[1] + kept[2]) / 6.0;
        let square = (kept[0].powi(2) + 4.0 * kept[1].powi(2) + kept[2].powi(2)) / 6.0;
        let kept = Moments { mean, variance: (square - mean * mean).max(0.0) };

        let (weak, strong) = (self.weak.unwrap_or(ANY_WEAK), self.strong.unwrap_or(ANY_STRONG));
        let kinds = [
            (weak.mean, weak.variance),
            (strong.mean, strong.variance),
            (f64::midpoint(weak.mean, strong.mean), (strong.mean - weak.mean).powi(2) / 48.0),
        ];
        let weighted = || KINDS.into_iter().zip(kinds);
        let mean: f64 = weighted().map(|(weight, (mean, _))| weight * mean).sum();
        let variance = weighted()
            .map(|(weight, (own, variance))| weight * (variance + (own - mean).powi(2)))
            .sum();
        (kept, Moments { mean, variance })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Share, Volume};
    use crate::tank::estimate::vehicle::Vehicle;
    use approx::assert_abs_diff_eq;
    use uom::si::volume::liter;

    /// Against the moments summed over many levels and over the three kinds.
    #[test]
    fn the_moments_are_those_of_all_that_may_have_been() {
        let car = Car::new(&Vehicle {
            capacity: Volume::new::<liter>(60.0),
            consumption: None,
            reference: Share::ZERO,
        });
        let (kept, content) = KnownFuels::default().unlogged_fill(&car, 30.0);
        let levels = || (0..2000_u16).map(|k| 2.0 + (f64::from(k) + 0.5) / 100.0);
        let mean = levels().map(|level| level / (level + 30.0)).sum::<f64>() / 2000.0;
        let square = levels().map(|level| (level / (level + 30.0)).powi(2)).sum::<f64>() / 2000.0;
        assert_abs_diff_eq!(kept.mean, mean, epsilon = 2e-3);
        assert_abs_diff_eq!(kept.variance, square - mean * mean, epsilon = 1e-3);
        let by_hand = 0.35 * 0.08 + 0.35 * 0.75 + 0.30 * 0.415;
        assert_abs_diff_eq!(content.mean, by_hand, epsilon = 1e-12);
        assert!(content.variance.sqrt() > 0.25 && content.variance.sqrt() < 0.33);
    }
}
