//! How far off a fill can end when level, present share and pump shares are only
//! known within bands, and no pump's meter is exact.

use super::check::CheckedProblem;
use super::extremes::{Contents, Extreme, Part};
use super::problem::{in_litres, litres};
use crate::quantity::{Band, Share, Volume};

/// One pour of a fill.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlannedPour {
    /// The index of the fuel.
    pub fuel: usize,
    /// The litres still to pour, at the expected level.
    pub volume: Volume,
    /// Whether the pump is left to click off at the brim, whatever the litres.
    pub to_click: bool,
}

/// A fill as it is carried out: pours in order.
pub type Pours = [PlannedPour];

/// How a fill ends over the whole box of what is possible.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Worst {
    /// The ethanol share afterwards.
    pub share: Band<Share>,
    /// The level afterwards, with the litres as planned.
    pub level: Band<Volume>,
    /// Whether every planned litre fits at the highest level.
    pub fits: bool,
}

/// A corner of the box: the values at which an outcome is worst.
#[derive(Clone, Debug, PartialEq)]
pub struct WorstCorner {
    /// The level before the fill.
    pub level: Volume,
    /// The ethanol share of what was in the tank.
    pub tank_share: Share,
    /// What really goes in of each fuel.
    pub volumes: Vec<Volume>,
    /// The ethanol share of each fuel.
    pub shares: Vec<Share>,
}

/// A fill carried out from one level, everything being as expected; litres.
struct Ending {
    amounts: Vec<f64>,
    total: f64,
    share: Share,
}

/// Litres that are dosed before the click.
pub(super) fn doses(pours: &Pours) -> f64 {
    pours.iter().filter(|pour| !pour.to_click).map(|pour| in_litres(pour.volume)).sum()
}

fn end<T: PartialOrd + Copy>(band: &Band<T>, high: bool) -> T {
    if high { band.high() } else { band.low() }
}

impl CheckedProblem {
    /// The exact extremes of the ethanol share after these pours: over the level, the
    /// present share, each pump share, and what the meter makes of each dose, which may
    /// err to either side for itself. What is poured to the click takes the rest, so a
    /// dose that is too small is made up for by it.
    ///
    /// The share grows with the present share and with each pump share, so those
    /// stand at one end together. A dose does not: more of it is a stronger blend where
    /// it is stronger than what it displaces, which is the fuel that overflows or is
    /// poured to the click, and the outcome only where nothing is displaced.
    pub fn worst(&self, pours: &Pours) -> Worst {
        let expected = self.end_of(pours, self.level()).share;
        let ends = [false, true].map(|high| {
            let extreme = self.extreme(pours, high);
            extreme.map_or(expected, |extreme| Share::clamped(extreme.mean))
        });
        let share = Band::enclosing(expected, ends).unwrap_or(Band::exact(expected));
        let level_from = |level| self.end_of(pours, in_litres(level)).total;
        let level = self.tank.level.map(|level| litres(level_from(level)));
        let planned = self.poured() + doses(pours);
        let highest = in_litres(self.tank.level.high());
        Worst { share, level, fits: highest + planned <= self.capacity() * (1.0 + 1e-12) }
    }

    /// Where in the box the share is weakest or strongest.
    pub fn worst_corner(&self, pours: &Pours, strong: bool) -> WorstCorner {
        let extreme = self.extreme(pours, strong);
        let parts = extreme.map_or_else(Vec::new, |extreme| extreme.litres);
        let mut volumes = vec![0.0; self.offers.len()];
        for (fuel, x) in self.in_order(pours).zip(parts.iter().skip(1)) {
            volumes[fuel.fuel] += x;
        }
        WorstCorner {
            level: parts.first().map_or(self.tank.level.expected(), |level| litres(*level)),
            tank_share: end(&self.tank.share, strong),
            volumes: volumes.into_iter().map(litres).collect(),
            shares: self.offers.iter().map(|offer| end(&offer.share, strong)).collect(),
        }
    }

    /// The lowest or the highest share; none where the tank stays empty.
    fn extreme(&self, pours: &Pours, high: bool) -> Option<Extreme> {
        let contents =
            self.contents(pours, |_, share| Some(((1.0, 1.0), end(share, high).fraction())))?;
        if high { contents.highest() } else { contents.lowest() }
    }

    /// All that may be in the tank after these pours, given what a litre of each part
    /// weighs at least and at most, and its value; parts are told by their fuel, or by
    /// none for what was in the tank, and their share. None where one of them has no value.
    pub(super) fn contents(
        &self,
        pours: &Pours,
        per_litre: impl Fn(Option<usize>, &Band<Share>) -> Option<((f64, f64), f64)>,
    ) -> Option<Contents> {
        let capacity = self.capacity();
        let part = |fuel: Option<usize>, ends: (f64, f64)| {
            let share = fuel.map_or(&self.tank.share, |fuel| &self.offers[fuel].share);
            // Of nothing nothing need be known.
            let (weight, value) =
                if ends.1 > 0.0 { per_litre(fuel, share)? } else { ((1.0, 1.0), 0.0) };
            Some(Part { litres: ends, weight, value })
        };
        let level = self.tank.level.map(|level| in_litres(level).min(capacity));
        let mut parts = vec![part(None, (level.low(), level.high()))?];
        for pour in self.in_order(pours) {
            let dose = in_litres(pour.volume);
            let ends = if pour.to_click {
                (0.0, capacity)
            } else {
                (dose * (1.0 - self.meter_error), dose * (1.0 + self.meter_error))
            };
            parts.push(part(Some(pour.fuel), ends)?);
        }
        let to_click = pours.iter().any(|pour| pour.to_click);
        Some(Contents { capacity, parts, within: 1 + self.offers.len(), to_click })
    }

    /// What is already in and then the pours, up to the one that fills the tank.
    fn in_order<'a>(&'a self, pours: &'a Pours) -> impl Iterator<Item = PlannedPour> + 'a {
        let already = self.offers.iter().enumerate().map(|(fuel, offer)| PlannedPour {
            fuel,
            volume: offer.poured,
            to_click: false,
        });
        let last = pours.iter().position(|pour| pour.to_click).map_or(pours.len(), |at| at + 1);
        already.chain(pours[..last].iter().copied())
    }

    /// The share after these pours from one level, when only the level is in
    /// doubt.
    pub fn share_from(&self, pours: &Pours, level: Volume) -> Share {
        self.end_of(pours, in_litres(level)).share
    }

    /// Pours in order until the tank is full, after what is already in, all else
    /// being as expected.
    fn end_of(&self, pours: &Pours, level: f64) -> Ending {
        let mut total = level;
        let mut amounts = vec![0.0; self.offers.len()];
        let mut free = (self.capacity() - level).max(0.0);
        for pour in self.in_order(pours) {
            let poured = if pour.to_click { free } else { in_litres(pour.volume).min(free) };
            free -= poured;
            amounts[pour.fuel] += poured;
            total += poured;
        }
        let share = self.share_of(level, &amounts).unwrap_or_default();
        Ending { amounts, total, share }
    }

    /// Litres of each fuel that go in from one level, with what is already in.
    pub(super) fn amounts(&self, pours: &Pours, level: f64) -> Vec<f64> {
        self.end_of(pours, level).amounts
    }
}
