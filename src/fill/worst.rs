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

/// A corner of the box: the values at which an outcome is worst.
#[derive(Clone, Debug, PartialEq)]
pub struct Corner {
    /// The level before the fill.
    pub level: Volume,
    /// The ethanol share of what was in the tank.
    pub tank_share: Share,
    /// What really goes in of each fuel.
    pub volumes: Vec<Volume>,
    /// The ethanol share of each fuel.
    pub shares: Vec<Share>,
}

/// How a fill ends from one point of the box; litres and fractions.
struct Ending {
    from: f64,
    amounts: Vec<f64>,
    total: f64,
    share: f64,
}

/// Litres that are dosed before the click.
pub(super) fn doses(pours: &Pours) -> f64 {
    pours.iter().filter(|pour| !pour.to_click).map(|pour| in_litres(pour.volume)).sum()
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
        let expected = self.end_of(pours, self.level(), End::Expected);
        let ends =
            [End::Low, End::High].map(|end| Share::clamped(self.worst_end(pours, end).share));
        let expected = Share::clamped(expected.share);
        let share = Band::enclosing(expected, ends).unwrap_or(Band::exact(expected));
        let level_from = |level| self.end_of(pours, in_litres(level), End::Expected).total;
        let level = self.tank.level.map(|level| litres(level_from(level)));
        let planned = self.poured() + doses(pours);
        let highest = in_litres(self.tank.level.high());
        Worst { share, level, fits: highest + planned <= self.capacity() * (1.0 + 1e-12) }
    }

    /// Where in the box the share is weakest or strongest.
    pub fn worst_corner(&self, pours: &Pours, strong: bool) -> Corner {
        let end = if strong { End::High } else { End::Low };
        let worst = self.worst_end(pours, end);
        Corner {
            level: litres(worst.from),
            tank_share: pick(&self.tank.share, end),
            volumes: worst.amounts.into_iter().map(litres).collect(),
            shares: self.offers.iter().map(|offer| pick(&offer.share, end)).collect(),
        }
    }

    /// The worst outcome over the levels at which it can lie.
    fn worst_end(&self, pours: &Pours, end: End) -> Ending {
        let low = in_litres(self.tank.level.low());
        let high = in_litres(self.tank.level.high());
        let mut levels = vec![low, high];
        let mut planned = self.poured();
        for pour in pours.iter().filter(|pour| !pour.to_click) {
            planned += in_litres(pour.volume);
            let break_at = self.capacity() - planned;
            if low < break_at && break_at < high {
                levels.push(break_at);
            }
        }
        let sign = if matches!(end, End::High) { 1.0 } else { -1.0 };
        levels
            .into_iter()
            .map(|level| self.end_of(pours, level, end))
            // A tank that ends empty has no share.
            .filter(|ending| ending.total > 0.0)
            .reduce(
                |worst, next| if sign * (next.share - worst.share) > 0.0 { next } else { worst },
            )
            .unwrap_or_else(|| self.end_of(pours, self.level(), end))
    }

    /// The share after these pours from one level, when only the level is in
    /// doubt.
    pub fn share_from(&self, pours: &Pours, level: Volume) -> Share {
        Share::clamped(self.end_of(pours, in_litres(level), End::Expected).share)
    }

    /// Pours in order until the tank is full, after what is already in: the
    /// share and the level then.
    ///
    /// At the ends the meter errs to the worse side as well: a fuel stronger than
    /// the outcome was given too generously for the high end, one weaker too
    /// sparingly. The outcome decides the sides and the sides the outcome, so
    /// the two are repeated until they agree.
    fn end_of(&self, pours: &Pours, level: f64, end: End) -> Ending {
        let mut ending = self.end_with(pours, level, end, |_| 1.0);
        let error = match end {
            End::Low => -self.meter_error,
            End::Expected => 0.0,
            End::High => self.meter_error,
        };
        if error != 0.0 {
            for _ in 0..=self.offers.len() {
                let threshold = ending.share;
                let side = |fuel| if fuel > threshold { 1.0 + error } else { 1.0 - error };
                ending = self.end_with(pours, level, end, side);
            }
        }
        ending
    }

    /// The same with each pour multiplied by what the meter makes of it, given
    /// the share of the fuel.
    fn end_with(&self, pours: &Pours, level: f64, end: End, meter: impl Fn(f64) -> f64) -> Ending {
        let of_offer = |fuel: usize| pick(&self.offers[fuel].share, end).fraction();
        let mut total = level;
        let mut ethanol = level * pick(&self.tank.share, end).fraction();
        let mut amounts = vec![0.0; self.offers.len()];
        self.pour(
            pours,
            level,
            |fuel| meter(of_offer(fuel)),
            |fuel, poured| {
                amounts[fuel] += poured;
                total += poured;
                ethanol += poured * of_offer(fuel);
            },
        );
        let share = if total > 0.0 { ethanol / total } else { 0.0 };
        Ending { from: level, amounts, total, share }
    }

    /// Litres of each fuel that go in from one level, with what is already in.
    pub(super) fn amounts(&self, pours: &Pours, level: f64) -> Vec<f64> {
        self.end_with(pours, level, End::Expected, |_| 1.0).amounts
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
