//! What a fill must satisfy before anything is worked out from it.

use std::ops::Deref;

use super::error::FillError;
use super::problem::{Aim, FillObjective, Problem, StopRule, in_litres, litres};
use crate::quantity::{Band, Share, Volume};

impl FillError {
    /// Whether something has not been given yet, and nothing that was given is wrong.
    pub fn is_missing(&self) -> bool {
        matches!(
            self,
            Self::NoCapacity
                | Self::NoOffer
                | Self::PriceMissing { .. }
                | Self::OctaneMissing { .. }
                | Self::TankOctaneMissing
                | Self::AmountMissing { .. }
        )
    }
}

/// A level that is passed by less than this, in litres, is reached: no gauge
/// tells the difference, and rounding to the pump's step leaves as much.
const LEVEL_REACHED_L: f64 = 2.0;

impl Problem {
    /// Checks what was given, and lowers the level band where more has gone in
    /// than the expected level left free: the tank must have been emptier.
    ///
    /// # Errors
    /// The first thing that is wrong, with what to do about it.
    pub fn checked(mut self) -> Result<CheckedProblem, FillError> {
        let capacity_l = self.capacity();
        if capacity_l <= 0.0 {
            return Err(FillError::NoCapacity);
        }
        let level_l = in_litres(self.tank.level.expected());
        if level_l > capacity_l * (1.0 + 1e-12) {
            return Err(FillError::Overfull { level_l, capacity_l });
        }
        if self.offers.is_empty() {
            return Err(FillError::NoOffer);
        }
        let poured_l = self.poured();
        let lowest_l = in_litres(self.tank.level.low());
        if poured_l > (capacity_l - lowest_l) * (1.0 + 1e-9) + 1e-9 {
            return Err(FillError::Overpoured { poured_l, free_l: capacity_l - lowest_l });
        }
        // Nothing that was poured can have been too much, so it tells the level.
        let highest = litres(capacity_l - poured_l);
        let cap = |level: Volume| if level > highest { highest } else { level };
        self.tank.level = self.tank.level.map(cap);
        if let StopRule::Level(wanted) = self.stop {
            let wanted_l = in_litres(wanted);
            if wanted_l > capacity_l * (1.0 + 1e-12) {
                return Err(FillError::LevelAboveBrim { wanted_l, capacity_l });
            }
            let level_l = self.level() + poured_l;
            if wanted_l < level_l - LEVEL_REACHED_L {
                return Err(FillError::AboveLevel { level_l, wanted_l });
            }
            // Nobody takes a spoonful out again.
            if wanted_l < level_l {
                self.stop = StopRule::Level(litres(level_l));
            }
        }
        if matches!(self.stop, StopRule::Budget(_))
            && let Some(index) = self.offers.iter().position(|offer| offer.price.is_none())
        {
            return Err(FillError::PriceMissing { index });
        }
        if self.ron_min.is_some() {
            if let Some(index) = self.offers.iter().position(|offer| offer.ron.is_none()) {
                return Err(FillError::OctaneMissing { index });
            }
            if self.tank.ron.is_none() && self.level() > 0.0 {
                return Err(FillError::TankOctaneMissing);
            }
        }
        if let Some(index) =
            self.offers.iter().position(|offer| offer.use_all && offer.limit.is_none())
        {
            return Err(FillError::AmountMissing { index });
        }
        Ok(CheckedProblem { problem: self })
    }
}

/// A fill in which everything fits together: what can be solved.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckedProblem {
    problem: Problem,
}

impl Deref for CheckedProblem {
    type Target = Problem;
    fn deref(&self) -> &Problem {
        &self.problem
    }
}

impl CheckedProblem {
    /// The same fill, to be changed.
    pub fn into_inner(self) -> Problem {
        self.problem
    }

    /// The same fill with something else about it, checked anew.
    ///
    /// # Errors
    /// When what was changed no longer fits.
    pub fn changed(&self, change: impl FnOnce(&mut Problem)) -> Result<Self, FillError> {
        let mut problem = self.problem.clone();
        change(&mut problem);
        problem.checked()
    }

    /// The same fill with another aim: what fits together does not depend on it.
    #[must_use]
    pub fn with_aim(&self, aim: Aim) -> Self {
        Self { problem: Problem { aim, ..self.problem.clone() } }
    }

    /// The same fill with another objective: what fits together does not depend on it.
    #[must_use]
    pub fn with_objective(&self, objective: FillObjective) -> Self {
        Self { problem: Problem { objective, ..self.problem.clone() } }
    }

    /// The same fill with other shares of the tank and of each fuel: what fits together
    /// does not depend on them.
    #[must_use]
    pub fn with_shares(
        &self,
        tank: Band<Share>,
        offers: impl Iterator<Item = Band<Share>>,
    ) -> Self {
        let mut problem = self.problem.clone();
        problem.tank.share = tank;
        for (offer, share) in problem.offers.iter_mut().zip(offers) {
            offer.share = share;
        }
        Self { problem }
    }

    /// The same fill to the brim.
    pub(super) fn to_the_brim(&self) -> Self {
        Self { problem: Problem { stop: StopRule::Brim, ..self.problem.clone() } }
    }

    /// The same fill with as much of one fuel as can be, and of every other no more than
    /// is in already.
    pub(super) fn with_most_of(&self, fuel: usize) -> Self {
        let mut alone = self.with_objective(FillObjective::MostVolume);
        for (index, offer) in alone.problem.offers.iter_mut().enumerate() {
            if index != fuel {
                offer.limit = Some(offer.poured);
            }
        }
        alone
    }

    /// The same fill with what was poured counted as in the tank.
    pub(super) fn with_poured_in_tank(&self) -> Self {
        let poured = self.poured();
        let mut merged = self.problem.clone();
        if poured > 0.0 {
            let level = self.level();
            let amounts: Vec<f64> = self.offers.iter().map(|it| in_litres(it.poured)).collect();
            merged.tank.level = Band::exact(litres(level + poured));
            merged.tank.share = Band::exact(self.share_of(level, &amounts).unwrap_or_default());
            merged.tank.ron = self.ron_of(&amounts);
            for offer in &mut merged.offers {
                offer.limit = offer.limit.map(|limit| {
                    let left = in_litres(limit) - in_litres(offer.poured);
                    litres(left.max(0.0))
                });
                offer.poured = litres(0.0);
            }
        }
        Self { problem: merged }
    }
}
