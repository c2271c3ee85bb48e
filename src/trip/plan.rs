//! What is asked of a planner, and what it hands back.

use serde::{Deserialize, Serialize};
use uom::si::volume::liter;

use crate::quantity::{Money, Share, Volume};

use super::checked::CheckedRoute;
use super::route::Bought;
use super::rule::TripRule;
use super::simulate::TripCourse;

/// What makes one plan better than another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum TripObjective {
    /// Fuel and stops cost the least.
    Cheapest,
    /// Fewest stops, and of those plans the cheapest.
    FewestStops,
    /// The highest mean part of ethanol in the energy burnt (in the litres, where
    /// consumption goes by litres). Over a box the mean of its corners counts.
    MostEthanol,
}

/// What is wanted of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlanWanted {
    /// What to prefer.
    pub objective: TripObjective,
    /// The most that fuel and stops may cost.
    pub budget: Option<Money>,
    /// Whether the plan has to hold whatever is true within the bands, or only if
    /// everything is as expected.
    pub is_robust: bool,
    /// How far inside a calibration's window the blend is to stay, as a share: what
    /// is only as expected had better not lie on the edge. From 0 to 20 %. Where no
    /// plan keeps it, one without is looked for.
    pub margin: Share,
    /// How far above the best possible a plan may be to be taken as proved good
    /// enough: a fraction above zero, such as 0.001.
    pub gap: f64,
    /// What a person can pump: the plan is also given in whole steps of this.
    pub step: Option<Volume>,
}

impl Default for PlanWanted {
    fn default() -> Self {
        Self {
            objective: TripObjective::Cheapest,
            budget: None,
            is_robust: false,
            margin: Share::ZERO,
            gap: 1e-3,
            step: None,
        }
    }
}

/// What to buy, and what comes of it.
#[derive(Clone, Debug, PartialEq)]
pub struct TripPlan {
    /// Litres by stop and pump.
    pub bought: Bought,
    /// The exact course.
    pub course: TripCourse,
}

impl TripPlan {
    pub(super) fn new(route: &CheckedRoute, bought: Bought) -> Self {
        let course = route.simulate(&bought);
        Self { bought, course }
    }

    /// Whether no rule is broken: as expected, or whatever is true.
    pub fn holds(&self, is_robust: bool) -> bool {
        let breaches =
            if is_robust { &self.course.possible_breaches } else { &self.course.breaches };
        breaches.is_empty()
    }

    /// Whether every amount is a whole number of steps.
    pub fn is_in_steps_of(&self, step: Volume) -> bool {
        let step = step.get::<liter>();
        self.bought.iter().flatten().all(|volume| {
            let steps = volume.get::<liter>() / step;
            (steps - steps.round()).abs() < 1e-6
        })
    }
}

/// What no plan can be better than.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub enum Bound {
    /// It costs at least this.
    Cost(Money),
    /// It needs at least so many stops. The cost is looked at after that; where whether
    /// so few are enough stays open, nothing is claimed of it.
    Stops(u32),
    /// It needs so many stops, and with no more than these costs at least this.
    StopsThenCost(u32, Money),
    /// The mean part of ethanol is at most this.
    EthanolPart(f64),
}

/// Why there is no plan: up to the leg after this stop the route cannot be driven.
/// It can up to the leg before, except where deciding that would have taken too long.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct TripImpossible {
    /// The stop, counted from 0.
    pub stop: usize,
    /// The rules of this stop and its leg of which each alone stands in the way:
    /// without it the route could be driven up to the end of the leg. Empty where
    /// several would have to give way together.
    pub rules: Vec<TripRule>,
}

/// Whether there is more to come.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Done {
    /// Yes.
    Working,
    /// The plan is proved to be within the gap of the best possible.
    Certified,
    /// There is no plan, and that is proved.
    Impossible(TripImpossible),
    /// Nothing is left to try, but numbers were too delicate to prove more than the
    /// bound says.
    Unsettled,
}

/// How far a planner is.
#[derive(Clone, Debug, PartialEq)]
pub struct Progress {
    /// The best plan so far; it holds exactly.
    pub plan: Option<TripPlan>,
    /// The same in steps of the pump; it holds exactly as well. Only at the end, and
    /// where such a plan was found.
    pub rounded: Option<TripPlan>,
    /// What no plan can be better than.
    pub bound: Option<Bound>,
    /// How far the plan is from the bound, as a fraction of the plan's value. For
    /// the fewest stops it is known once their number is settled.
    pub gap: Option<f64>,
    /// The margin that plan and bound keep: that wished for, or none where it is
    /// proved that no plan keeps it.
    pub margin: Share,
    /// Whether there is more to come.
    pub done: Done,
}
