//! How far off a fill can end when level, present share and pump shares are only
//! known within bands.

use super::problem::{Problem, in_litres, litres};
use crate::quantity::{Band, Share, Volume};

/// One pour of a fill.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pour {
    /// The index of the fuel.
    pub fuel: usize,
    /// The litres still to pour, at the expected level.
    pub volume: Volume,
    /// Whether the pump is left to click off at the brim, whatever the litres.
    pub to_click: bool,
}

/// A fill as it is carried out: pours in order.
pub type Pours = [Pour];

/// How a fill ends over the whole box of what is possible.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Worst {
    /// The ethanol share afterwards.
    pub share: Band<Share>,
    /// The level afterwards.
    pub level: Band<Volume>,
    /// Whether every planned litre fits at the highest level.
    pub fits: bool,
}

/// The three readings of a band.
#[derive(Clone, Copy)]
enum End {
    Low,
    Expected,
    High,
}

fn pick<T: PartialOrd + Copy>(band: &Band<T>, end: End) -> T {
    match end {
        End::Low => band.low(),
        End::Expected => band.expected(),
        End::High => band.high(),
    }
}

impl Problem {
    /// The exact extremes of the ethanol share after these pours.
    ///
    /// The share grows with the present share and with each pump share, so
    /// those stand at one end together. In the level it is monotone between the
    /// levels at which a pour begins to overflow: there the sign of its slope
    /// is that of (present share - mean added share), or of (present share -
    /// share of the fuel poured to the click), and neither changes. So the ends
    /// of the level band and those breaks are all that need be looked at.
    pub fn worst(&self, pours: &Pours) -> Worst {
        let low = in_litres(self.tank.level.low());
        let high = in_litres(self.tank.level.high());
        let mut levels = vec![low, high];
        let mut planned = self.poured();
        for pour in pours {
            if !pour.to_click {
                planned += in_litres(pour.volume);
                let break_at = self.capacity() - planned;
                if low < break_at && break_at < high {
                    levels.push(break_at);
                }
            }
        }
        let expected = self.end_of(pours, self.level(), End::Expected).0;
        let fold = |end: End, better: fn(f64, f64) -> f64| {
            levels.iter().map(|&level| self.end_of(pours, level, end).0).fold(expected, better)
        };
        let level_after = |level: f64| self.end_of(pours, level, End::Expected).1;
        let share = Band::new(
            Share::clamped(fold(End::Low, f64::min)),
            Share::clamped(expected),
            Share::clamped(fold(End::High, f64::max)),
        )
        .unwrap_or(Band::exact(Share::clamped(expected)));
        let expected_level = level_after(self.level());
        let level = Band::new(
            litres(level_after(low).min(expected_level)),
            litres(expected_level),
            litres(level_after(high).max(expected_level)),
        )
        .unwrap_or(Band::exact(litres(expected_level)));
        Worst { share, level, fits: high + planned <= self.capacity() * (1.0 + 1e-12) }
    }

    /// The share after these pours from one level, when only the level is in
    /// doubt.
    pub fn share_from(&self, pours: &Pours, level: Volume) -> Share {
        Share::clamped(self.end_of(pours, in_litres(level), End::Expected).0)
    }

    /// Pours in order until the tank is full, after what is already in: the
    /// share and the level then.
    ///
    /// At the ends the meter errs to the worse side as well: a fuel stronger than
    /// the outcome was given too generously for the high end, one weaker too
    /// sparingly. The outcome decides the sides and the sides the outcome, so
    /// the two are repeated until they agree.
    fn end_of(&self, pours: &Pours, level: f64, end: End) -> (f64, f64) {
        let (mut share, mut total) = self.end_with(pours, level, end, |_| 1.0);
        let error = match end {
            End::Low => -self.meter_error,
            End::Expected => 0.0,
            End::High => self.meter_error,
        };
        if error != 0.0 {
            for _ in 0..=self.offers.len() {
                let threshold = share;
                let side = |fuel| if fuel > threshold { 1.0 + error } else { 1.0 - error };
                (share, total) = self.end_with(pours, level, end, side);
            }
        }
        (share, total)
    }

    /// The same with each pour multiplied by what the meter makes of it, given
    /// the share of the fuel.
    fn end_with(
        &self,
        pours: &Pours,
        level: f64,
        end: End,
        meter: impl Fn(f64) -> f64,
    ) -> (f64, f64) {
        let of_offer = |fuel: usize| pick(&self.offers[fuel].share, end).fraction();
        let mut total = level;
        let mut ethanol = level * pick(&self.tank.share, end).fraction();
        self.pour(
            pours,
            level,
            |fuel| meter(of_offer(fuel)),
            |fuel, poured| {
                total += poured;
                ethanol += poured * of_offer(fuel);
            },
        );
        let share = if total > 0.0 { ethanol / total } else { 0.0 };
        (share, total)
    }

    /// Litres of each fuel that go in from one level, with what is already in.
    pub(super) fn amounts(&self, pours: &Pours, level: f64) -> Vec<f64> {
        let mut amounts = vec![0.0; self.offers.len()];
        self.pour(pours, level, |_| 1.0, |fuel, poured| amounts[fuel] += poured);
        amounts
    }

    /// Goes through what is already in and then the pours, until the tank is
    /// full, and tells what really goes in of each.
    fn pour(
        &self,
        pours: &Pours,
        level: f64,
        meter: impl Fn(usize) -> f64,
        mut goes_in: impl FnMut(usize, f64),
    ) {
        let mut free = (self.capacity() - level).max(0.0);
        let already = self.offers.iter().enumerate().map(|(fuel, offer)| Pour {
            fuel,
            volume: offer.poured,
            to_click: false,
        });
        for pour in already.chain(pours.iter().copied()) {
            let wanted = in_litres(pour.volume) * meter(pour.fuel);
            let poured = if pour.to_click { free } else { wanted.min(free) };
            free -= poured;
            goes_in(pour.fuel, poured);
        }
    }
}
