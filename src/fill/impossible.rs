//! Why the aim cannot be reached, and what can be done about it.

use super::check::CheckedProblem;
use super::linear::{Solved, minimise};
use super::plan::FillPlan;
use super::problem::{FillObjective, in_litres, litres};
use super::rows::{FillRule, Part};
use crate::quantity::{Share, Volume};

/// What sort of obstacle it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Obstacle {
    /// No fuel on offer is strong enough; no burning down helps. Holds the
    /// share that can be approached but not passed.
    TooWeakEver(Share),
    /// No fuel on offer is weak enough; no burning down helps. Holds the share
    /// that can be approached but not passed.
    TooStrongEver(Share),
    /// The tank is too full for the change that is wanted.
    TooFull,
    /// The litres or the money of the stop rule are too few.
    StopRule,
    /// There is too little of a fuel.
    FuelLimit,
    /// The aim is met on the way, but not where the stop rule ends.
    Overshoots,
    /// The octane number cannot be had inside the aim.
    Octane,
}

/// The level to burn down to before the aim can be reached.
#[derive(Clone, Debug, PartialEq)]
pub struct BurnDown {
    /// The highest level from which the aim can be reached.
    pub level: Volume,
    /// What has to be burned or drained first.
    pub away: Volume,
    /// What to pour then, for each offer.
    pub then: Vec<Volume>,
    /// Whether that level is below the reserve.
    pub below_reserve: bool,
}

/// Burning down to the reserve and filling up, again and again.
#[derive(Clone, Debug, PartialEq)]
pub struct Cycles {
    /// The index of the fuel to fill up with.
    pub fuel: usize,
    /// The ethanol share after each fill.
    pub shares: Vec<Share>,
}

/// An aim that cannot be reached.
#[derive(Clone, Debug, PartialEq)]
pub struct FillImpossible {
    /// What stands in the way.
    pub obstacle: Obstacle,
    /// The rules that contradict each other, from the proof.
    pub binding: Vec<FillRule>,
    /// The weakest and the strongest blend within reach of the stop rule.
    pub reachable: Option<(Share, Share)>,
    /// The plan that comes closest.
    pub closest: Option<FillPlan>,
    /// The plan that meets the aim with the most in the tank, ignoring the stop
    /// rule; it may be to pour nothing.
    pub fullest_at_aim: Option<FillPlan>,
    /// The plan that meets the aim with the least to pour when litres or money
    /// do not limit it.
    pub without_limit: Option<FillPlan>,
    /// The level to burn down to, where that helps.
    pub burn_down: Option<BurnDown>,
    /// What to do where one burn-down would go below the reserve.
    pub cycles: Option<Cycles>,
    /// The highest octane number inside the aim, and how to get it.
    pub highest_ron: Option<(f64, FillPlan)>,
}

/// So many refills are no plan any more.
const MOST_CYCLES: usize = 30;

impl CheckedProblem {
    /// Explains why no plan exists, given the weights that prove it.
    pub(super) fn explain(&self, weights: &[f64]) -> FillImpossible {
        let binding = self.binding(weights);
        let extremes = self.share_extremes();
        let plan_at = |x: &[f64]| self.plan(x);
        let reachable = extremes.as_ref().and_then(|(weakest, strongest)| {
            Some((plan_at(weakest).share?, plan_at(strongest).share?))
        });
        let octane_alone = self.ron_min.is_some() && self.optimum(&[Part::Octane]).is_ok();
        let highest_ron = octane_alone.then(|| self.highest_ron()).flatten();
        let unlimited = &[Part::Stop];
        let without_limit = self.with_objective(FillObjective::LeastVolume).optimum(unlimited).ok();
        let obstacle = self.obstacle(octane_alone, reachable, without_limit.is_some());
        let closest = match (&highest_ron, extremes) {
            (Some((_, plan)), _) => Some(plan.clone()),
            (None, Some((weakest, strongest))) => {
                let too_weak = reachable
                    .is_some_and(|(_, high)| high < self.aim.low() && !self.aim.admits(high));
                Some(plan_at(if too_weak { &strongest } else { &weakest }))
            }
            (None, None) => None,
        };
        let burn_down = match obstacle {
            Obstacle::TooFull | Obstacle::StopRule | Obstacle::FuelLimit => self.burn_down(),
            _ => None,
        };
        let cycles = burn_down
            .as_ref()
            .filter(|burn_down| burn_down.below_reserve)
            .and_then(|_| self.cycles());
        FillImpossible {
            obstacle,
            binding,
            reachable,
            closest,
            fullest_at_aim: self
                .with_objective(FillObjective::MostVolume)
                .optimum(unlimited)
                .ok()
                .map(|x| plan_at(&x)),
            without_limit: without_limit.map(|x| plan_at(&x)),
            burn_down,
            cycles,
            highest_ron,
        }
    }

    fn obstacle(
        &self,
        octane_alone: bool,
        reachable: Option<(Share, Share)>,
        reachable_without_stop: bool,
    ) -> Obstacle {
        if octane_alone {
            return Obstacle::Octane;
        }
        if self.optimum(&[Part::FuelLimits]).is_ok() {
            return Obstacle::FuelLimit;
        }
        let has_fixed_level = self.final_level().is_some();
        if reachable_without_stop {
            return if has_fixed_level { Obstacle::Overshoots } else { Obstacle::StopRule };
        }
        let shares = || self.offers.iter().map(|offer| offer.share.expected());
        let present = (self.level() > 0.0).then(|| self.tank.share.expected());
        let strongest =
            shares().fold(Share::ZERO, |most, share| if share > most { share } else { most });
        let weakest =
            shares().fold(Share::ONE, |least, share| if share < least { share } else { least });
        let too_weak = reachable.is_none_or(|(_, high)| high < self.aim.low());
        if too_weak && strongest < self.aim.low() && present.is_none_or(|e| e < self.aim.low()) {
            Obstacle::TooWeakEver(strongest)
        } else if !too_weak
            && weakest > self.aim.high()
            && present.is_none_or(|e| e > self.aim.high())
        {
            Obstacle::TooStrongEver(weakest)
        } else {
            Obstacle::TooFull
        }
    }

    /// The rules with a share in the proof that no plan exists.
    fn binding(&self, weights: &[f64]) -> Vec<FillRule> {
        self.rows(&[], false)
            .iter()
            .zip(weights)
            .filter(|(_, weight)| weight.abs() > 1e-9)
            .map(|(row, _)| row.rule)
            .collect()
    }

    fn highest_ron(&self) -> Option<(f64, FillPlan)> {
        let rows = self.rows(&[Part::Octane], false);
        let ratio = self.ron_ratio();
        let x = ratio.extreme(&rows, 1.0)?;
        Some((ratio.at(&x)?, self.plan(&x)))
    }

    /// The largest present level from which all rows can be met: a linear
    /// programme with the level as one more variable.
    fn burn_down(&self) -> Option<BurnDown> {
        let merged = self.with_poured_in_tank();
        let fuels = merged.offers.len();
        let mut rows = merged.rows(&[], true);
        let mut at_most = vec![0.0; fuels + 1];
        at_most[fuels] = 1.0;
        rows.push(super::linear::Row {
            rule: FillRule::Space,
            coefficients: at_most,
            relation: super::linear::Relation::AtMost,
            bound: merged.level(),
        });
        let mut cost = vec![0.0; fuels + 1];
        cost[fuels] = -1.0;
        let Solved::Optimum(mut x) = minimise(&cost, &rows) else { return None };
        let level = x.pop()?;
        Some(BurnDown {
            level: litres(level),
            away: litres(merged.level() - level),
            then: x.into_iter().map(litres).collect(),
            below_reserve: level < in_litres(merged.tank.reserve),
        })
    }

    /// Burns to the reserve and fills to the brim with the fuel furthest to the
    /// wanted side, until the aim is reached or passed.
    pub fn cycles(&self) -> Option<Cycles> {
        let merged = self.with_poured_in_tank();
        let present = merged.tank.share.expected();
        let upwards = present < self.aim.low();
        let further = |a: Share, b: Share| if upwards { a > b } else { a < b };
        let (fuel, reach) = merged
            .offers
            .iter()
            .map(|offer| offer.share.expected())
            .enumerate()
            .reduce(|best, next| if further(next.1, best.1) { next } else { best })?;
        let goal = if upwards { self.aim.low() } else { self.aim.high() };
        // The fuel itself is approached, never reached.
        if !further(reach, goal) {
            return None;
        }
        let kept = in_litres(merged.tank.reserve) / merged.capacity();
        let mut share = present.fraction();
        let mut shares = Vec::new();
        while further(goal, Share::clamped(share)) {
            if shares.len() == MOST_CYCLES {
                return None;
            }
            share = kept * share + (1.0 - kept) * reach.fraction();
            shares.push(Share::clamped(share));
        }
        Some(Cycles { fuel, shares })
    }

    /// The highest level to burn down to for the aim to be reached by filling to
    /// the brim; also where the aim can be reached already.
    pub fn level_to_burn_to(&self) -> Option<BurnDown> {
        self.to_the_brim().burn_down()
    }
}
