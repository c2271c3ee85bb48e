//! What is in the tank beside petrol and ethanol: hard bounds as for the level and the
//! share, with what is expected carried along.

use crate::fuel::Extras;
use crate::quantity::{Band, Share};
use crate::tank::DISPENSER_ERROR;

/// What may be in the tank, and what the fuels of the log may hold.
///
/// As long as nobody said otherwise there is none. Burning and draining keep every
/// share; a reading of the ethanol share tells nothing of the others.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Beside {
    now: Extras,
    poured: Extras,
}

impl Beside {
    /// What may be in the tank now.
    pub(super) fn now(&self) -> Extras {
        self.now
    }

    /// A correction.
    pub(super) fn correct(&mut self, extras: Extras) {
        self.now = extras;
    }

    /// Pours so many litres into a tank of which the level is known within bounds.
    ///
    /// A share grows with both shares, and its slope in the level and in the litres has
    /// one sign throughout: so the corners of the box hold its extremes.
    pub(super) fn pour(&mut self, level: &Band<f64>, litres: f64, fuel: &Extras) {
        if litres <= 0.0 {
            return;
        }
        self.poured = Extras::each(|of| either(of(&self.poured), of(fuel)));
        self.now = Extras::each(|of| mixed(level, of(&self.now), litres, of(fuel)));
    }

    /// A fill may have been made that nobody logged, of a fuel that the log knows or of
    /// one without any of this.
    pub(super) fn doubt_log(&mut self) {
        let none = Band::exact(Share::ZERO);
        self.now = Extras::each(|of| either(of(&self.now), either(none, of(&self.poured))));
    }
}

/// What is possible of either, about what is expected of the first.
fn either(one: Band<Share>, other: Band<Share>) -> Band<Share> {
    Band::enclosing(one.expected(), [one.low(), one.high()])
        .and_then(|_| {
            let low = if other.low() < one.low() { other.low() } else { one.low() };
            let high = if other.high() > one.high() { other.high() } else { one.high() };
            Band::enclosing(one.expected(), [low, high])
        })
        .unwrap_or(one)
}

/// A share after a pour: `(V s + x c) / (V + x)`.
fn mixed(level: &Band<f64>, share: Band<Share>, litres: f64, fuel: Band<Share>) -> Band<Share> {
    let mix = |level: f64, share: Share, litres: f64, fuel: Share| {
        (level * share.fraction() + litres * fuel.fraction()) / (level + litres)
    };
    let ends = [1.0 - DISPENSER_ERROR.value, 1.0 + DISPENSER_ERROR.value];
    let corners = |share: Share, fuel: Share| {
        let at = move |level: f64| ends.map(|end| mix(level, share, end * litres, fuel));
        [at(level.low()), at(level.high())].into_iter().flatten()
    };
    let low = corners(share.low(), fuel.low()).fold(f64::INFINITY, f64::min);
    let high = corners(share.high(), fuel.high()).fold(f64::NEG_INFINITY, f64::max);
    let expected = mix(level.expected(), share.expected(), litres, fuel.expected());
    Band::enclosing(expected, [low, high]).unwrap_or(Band::exact(expected)).map(Share::clamped)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    fn percent(low: f64, expected: f64, high: f64) -> Band<Share> {
        let share = |value| Share::from_percent(value).unwrap();
        Band::new(share(low), share(expected), share(high)).unwrap()
    }

    fn water(band: Band<Share>) -> Extras {
        Extras { water: band, ..Extras::default() }
    }

    /// By hand: 10 (8 to 12) L without water, then 30 L of hydrous ethanol of 4.8 (3.4 to
    /// 6.1) % water: 30 * 4.8 / 40 = 3.6 %; at least 29.85 * 3.4 / (12 + 29.85) = 2.4251,
    /// at most 30.15 * 6.1 / (8 + 30.15) = 4.8209 %. The mistake to keep the share of the
    /// fuel gives 4.8.
    #[test]
    fn a_pour_is_diluted_by_what_was_in() {
        let mut tank = Beside::default();
        let level = Band::new(8.0, 10.0, 12.0).unwrap();
        tank.pour(&level, 30.0, &water(percent(3.4, 4.8, 6.1)));
        let now = tank.now().water;
        assert_abs_diff_eq!(now.expected().percent(), 3.6, epsilon = 1e-9);
        assert_abs_diff_eq!(now.low().percent(), 2.4251, epsilon = 1e-4);
        assert_abs_diff_eq!(now.high().percent(), 4.8209, epsilon = 1e-4);
        assert_eq!(tank.now().methanol, Band::exact(Share::ZERO));
    }

    #[test]
    fn a_fill_that_nobody_logged_may_have_been_of_any_fuel_known() {
        let mut tank = Beside::default();
        tank.pour(&Band::exact(0.0), 30.0, &water(percent(3.4, 4.8, 6.1)));
        tank.correct(water(percent(1.0, 1.0, 1.0)));
        tank.doubt_log();
        assert_eq!(tank.now().water, percent(0.0, 1.0, 6.1));
    }
}
