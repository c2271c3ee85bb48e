//! How far off and how sure.

use fillwright::tank::{Estimate, Estimator};
use uom::si::volume::liter;

use super::bookkeeping::Books;
use super::truth::{Scenario, Stop, life, vehicle};

pub(crate) const DRIVERS: u64 = 200;
/// The stops that are not scored: at first nobody knows what is in the tank.
pub(crate) const UNSCORED: usize = 5;

/// Sums over many stops.
#[derive(Clone, Copy, Default)]
pub(crate) struct Score {
    stops: f64,
    squares: f64,
    covered: f64,
    width: f64,
}

impl Score {
    /// One stop: what was thought, the band, and the truth.
    pub(crate) fn add(&mut self, expected: f64, band: [f64; 2], truth: f64) {
        self.stops += 1.0;
        self.squares += (expected - truth).powi(2);
        self.covered += f64::from(u8::from(band[0] <= truth && truth <= band[1]));
        self.width += band[1] - band[0];
    }

    /// Root of the mean square error.
    pub(crate) fn rms(&self) -> f64 {
        (self.squares / self.stops).sqrt()
    }

    /// How often the truth lay in the band, in percent.
    pub(crate) fn coverage(&self) -> f64 {
        100.0 * self.covered / self.stops
    }

    pub(crate) fn width(&self) -> f64 {
        self.width / self.stops
    }
}

/// All scores of one scenario; shares in points, levels in litres.
#[derive(Clone, Copy, Default)]
pub(crate) struct Scores {
    pub(crate) share: Score,
    pub(crate) level: Score,
    pub(crate) possible_share: Score,
    pub(crate) possible_level: Score,
    pub(crate) naive: Score,
    pub(crate) careful: Score,
    pub(crate) careful_level: Score,
    pub(crate) naive_level: Score,
    pub(crate) doubts: u32,
}

/// Takes in all that was logged at a stop and returns how many doubts there were.
pub(crate) fn take_stop(estimator: &mut Estimator, stop: &Stop) -> u32 {
    stop.evidence().iter().map(|evidence| u32::from(estimator.take(evidence).is_some())).sum()
}

impl Scores {
    pub(crate) fn of(scenario: &Scenario) -> Self {
        let mut scores = Self::default();
        for driver in 0..DRIVERS {
            let mut estimator = Estimator::new(vehicle());
            let (mut naive, mut careful) = (Books::new(), Books::new());
            for (count, stop) in life(driver, scenario).iter().enumerate() {
                let doubts = take_stop(&mut estimator, stop);
                naive.naive(stop);
                careful.careful(stop);
                if count >= UNSCORED {
                    scores.doubts += doubts;
                    scores.add(&estimator.estimate(), stop);
                    scores.add_books(&naive, &careful, stop);
                }
            }
        }
        scores
    }

    fn add(&mut self, estimate: &Estimate, stop: &Stop) {
        let points = |band: fillwright::quantity::Band<fillwright::quantity::Share>| {
            [band.low().percent(), band.high().percent()]
        };
        let in_litres = |band: fillwright::quantity::Band<fillwright::quantity::Volume>| {
            [band.low().get::<liter>(), band.high().get::<liter>()]
        };
        let (share, level) = (stop.true_share * 100.0, stop.true_level);
        let (expected, middle) =
            (estimate.share.expected().percent(), estimate.level.expected().get::<liter>());
        self.share.add(expected, points(estimate.share), share);
        self.possible_share.add(expected, points(estimate.possible_share), share);
        self.level.add(middle, in_litres(estimate.level), level);
        self.possible_level.add(middle, in_litres(estimate.possible_level), level);
    }

    fn add_books(&mut self, naive: &Books, careful: &Books, stop: &Stop) {
        let exact = |score: &mut Score, thought: f64, truth: f64| {
            score.add(thought, [thought, thought], truth);
        };
        exact(&mut self.naive, naive.share * 100.0, stop.true_share * 100.0);
        exact(&mut self.careful, careful.share * 100.0, stop.true_share * 100.0);
        exact(&mut self.naive_level, naive.level, stop.true_level);
        exact(&mut self.careful_level, careful.level, stop.true_level);
    }
}
