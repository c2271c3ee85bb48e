//! Hard bounds of level and share, kept beside the filters: no distribution, only
//! what the evidence leaves possible.

use super::vehicle::Car;
use crate::message::keys::practice as words;
use crate::quantity::{Band, Share};
use crate::source::Sourced;
use crate::tank::DISPENSER_ERROR;

/// The least and most that a leg burns, as factors on the consumption.
pub(super) const DRIVEN: Sourced<(f64, f64)> = Sourced::common((0.6, 1.5), words::DRIVEN_SOURCE);
/// The same where the trip computer counted.
pub(super) const COUNTED: Sourced<(f64, f64)> = Sourced::common((0.75, 1.3), words::COUNTED_SOURCE);
/// Litres that any leg may burn beside that.
pub(super) const BESIDE_L: Sourced<f64> = Sourced::common(0.7, words::BESIDE_L_SOURCE);

/// What pumps sell.
pub(super) const SOLD: Sourced<[f64; 2]> = Sourced::common([0.0, 0.85], words::SOLD_SOURCE);

/// An interval: low, high.
type Interval = [f64; 2];

/// The interval of what lies in both; in either, where they have nothing in common:
/// then one of them is wrong, and nobody knows which.
fn agree(one: Interval, other: Interval) -> Interval {
    let both = [one[0].max(other[0]), one[1].min(other[1])];
    if both[0] <= both[1] { both } else { hull(one, other) }
}

fn hull(one: Interval, other: Interval) -> Interval {
    [one[0].min(other[0]), one[1].max(other[1])]
}

/// What is possible.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Envelope {
    level: Interval,
    share: Interval,
    /// What a fill that nobody logged may have held.
    fuels: Interval,
}

impl Envelope {
    pub(super) fn new(car: &Car) -> Self {
        Self { level: [0.0, car.capacity], share: [0.0, 1.0], fuels: SOLD.value }
    }

    /// The bounds of the level, in litres, about a value that is moved inside.
    pub(super) fn level_about(&self, expected: f64) -> Band<f64> {
        about(self.level, expected)
    }

    /// The bounds of the share, about a value that is moved inside.
    pub(super) fn share_about(&self, expected: f64) -> Band<f64> {
        about(self.share, expected)
    }

    /// The most that can be in the tank, in litres.
    pub(super) fn highest_level(&self) -> f64 {
        self.level[1]
    }

    /// The weakest share that is possible.
    pub(super) fn weakest_share(&self) -> f64 {
        self.share[0]
    }

    fn keep_in_tank(&mut self, car: &Car) {
        self.level = self.level.map(|level| level.clamp(0.0, car.capacity));
        self.share = self.share.map(|share| share.clamp(0.0, 1.0));
    }

    /// Burns the energy of so many litres of petrol: `b = petrol / (1 - c e)`.
    pub(super) fn drive(&mut self, car: &Car, petrol: f64) {
        let [least, most] =
            self.share.map(|share| petrol / (1.0 - car.ethanol_lacks * share).max(f64::EPSILON));
        let (low, high) = DRIVEN.value;
        self.burn(car, [low * least, high * most]);
    }

    /// Burns what the trip computer counted.
    pub(super) fn count(&mut self, car: &Car, counted: f64) {
        let (low, high) = COUNTED.value;
        self.burn(car, [low * counted, high * counted]);
    }

    fn burn(&mut self, car: &Car, burned: Interval) {
        self.take_out(car, [burned[0], burned[1] + BESIDE_L.value]);
    }

    /// Takes out between so many litres.
    pub(super) fn take_out(&mut self, car: &Car, litres: Interval) {
        self.level = [self.level[0] - litres[1], self.level[1] - litres[0]];
        self.keep_in_tank(car);
    }

    /// Takes out all but so many litres at most.
    pub(super) fn empty(&mut self, car: &Car, left: f64) {
        self.level = [0.0, left];
        self.keep_in_tank(car);
    }

    /// Fuel may have been burned that nobody logged.
    pub(super) fn use_unknown(&mut self) {
        self.level[0] = 0.0;
    }

    /// Takes in a level with its largest error.
    pub(super) fn read_level(&mut self, car: &Car, litres: f64, error: f64) {
        self.level = agree(self.level, [litres - error, litres + error]);
        self.keep_in_tank(car);
    }

    /// Takes in that the level is not above this.
    pub(super) fn read_at_most(&mut self, car: &Car, litres: f64) {
        self.level = agree(self.level, [0.0, litres.max(0.0)]);
        self.keep_in_tank(car);
    }

    /// Takes in a share with its largest error.
    pub(super) fn read_share(&mut self, car: &Car, share: f64, error: f64) {
        self.share = agree(self.share, [share - error, share + error]);
        self.keep_in_tank(car);
    }

    /// Pours in so many litres of a fuel.
    ///
    /// The share grows with both shares, and its slope in the level and in the
    /// litres has one sign throughout: so the corners of the box hold its extremes.
    pub(super) fn pour(&mut self, car: &Car, litres: f64, content: &Band<Share>) {
        if litres <= 0.0 {
            return;
        }
        let content = [content.low().fraction(), content.high().fraction()];
        let poured = [1.0 - DISPENSER_ERROR.value, 1.0 + DISPENSER_ERROR.value]
            .map(|factor| factor * litres);
        let corners = |share: f64, content: f64| {
            let mixed =
                |level: f64, poured: f64| (level * share + poured * content) / (level + poured);
            self.level.map(|level| poured.map(|poured| mixed(level, poured)))
        };
        let [low, high] = [0, 1].map(|end| corners(self.share[end], content[end]));
        self.share = [
            low.into_iter().flatten().fold(f64::INFINITY, f64::min),
            high.into_iter().flatten().fold(f64::NEG_INFINITY, f64::max),
        ];
        self.level = [self.level[0] + poured[0], self.level[1] + poured[1]];
        self.fuels = hull(self.fuels, content);
        self.keep_in_tank(car);
    }

    /// A fill may have been made that nobody logged, of any fuel that is sold or
    /// that the log knows.
    pub(super) fn doubt_log(&mut self) {
        self.share = hull(self.share, self.fuels);
    }

    /// A correction.
    pub(super) fn correct(&mut self, car: &Car, level: Interval, share: Interval) {
        self.level = level;
        self.share = share;
        self.keep_in_tank(car);
    }
}

fn about(bounds: Interval, expected: f64) -> Band<f64> {
    let inside = expected.max(bounds[0]).min(bounds[1]);
    Band::enclosing(inside, bounds).unwrap_or(Band::exact(inside))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Volume;
    use crate::tank::estimate::vehicle::Vehicle;
    use approx::assert_abs_diff_eq;
    use uom::si::volume::liter;

    fn car() -> Car {
        Car::new(&Vehicle {
            capacity: Volume::new::<liter>(60.0),
            consumption: None,
            reference: Share::ZERO,
        })
    }

    fn band(low: f64, high: f64) -> Band<Share> {
        let share = |value| Share::new(value).unwrap();
        Band::new(share(low), share(f64::midpoint(low, high)), share(high)).unwrap()
    }

    /// Every corner and many inner points of the box, mixed by hand.
    #[test]
    fn a_pour_leaves_no_mixture_outside() {
        let mut envelope = Envelope::new(&car());
        envelope.correct(&car(), [10.0, 16.0], [0.08, 0.30]);
        envelope.pour(&car(), 25.0, &band(0.71, 0.85));
        let steps = [0.0, 0.2, 0.5, 0.9, 1.0];
        let (mut least, mut most) = (1.0_f64, 0.0_f64);
        for level in steps.map(|k| 10.0 + 6.0 * k) {
            for share in steps.map(|k| 0.08 + 0.22 * k) {
                for content in steps.map(|k| 0.71 + 0.14 * k) {
                    for poured in steps.map(|k| 25.0 * (0.995 + 0.01 * k)) {
                        let mixed = (level * share + poured * content) / (level + poured);
                        least = least.min(mixed);
                        most = most.max(mixed);
                    }
                }
            }
        }
        assert_abs_diff_eq!(envelope.share[0], least, epsilon = 1e-12);
        assert_abs_diff_eq!(envelope.share[1], most, epsilon = 1e-12);
        assert_abs_diff_eq!(envelope.level[0], 34.875, epsilon = 1e-12);
        assert_abs_diff_eq!(envelope.level[1], 41.125, epsilon = 1e-12);
    }

    #[test]
    fn a_reading_that_contradicts_leaves_both_possible() {
        let mut envelope = Envelope::new(&car());
        envelope.correct(&car(), [10.0, 12.0], [0.2, 0.3]);
        envelope.read_level(&car(), 40.0, 5.0);
        envelope.read_share(&car(), 0.6, 0.05);
        assert_abs_diff_eq!(envelope.level[..], [10.0, 45.0][..]);
        assert_abs_diff_eq!(envelope.share[1], 0.65, epsilon = 1e-12);
        envelope.read_level(&car(), 40.0, 5.0);
        assert_abs_diff_eq!(envelope.level[..], [35.0, 45.0][..]);
    }
}
