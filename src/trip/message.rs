//! What passes between the page and the worker that plans.

use serde::{Deserialize, Serialize};

use crate::quantity::Share;

use super::check::RouteError;
use super::checked::CheckedRoute;
use super::plan::{Bound, Done, PlanWanted, Progress, TripPlan};
use super::planner::Planner;
use super::route::{Bought, Route};

/// A route to be planned.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Question {
    /// Which run it starts; a later one takes the place of an earlier one.
    pub run: u32,
    /// The route.
    pub route: Route,
    /// What is wanted.
    pub wish: PlanWanted,
}

/// How far a run is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Report {
    /// The run.
    pub run: u32,
    /// The best plan so far: in steps of the pump once there is such a one.
    pub bought: Option<Bought>,
    /// Whether it is in steps of the pump.
    pub is_rounded: bool,
    /// What no plan can be better than.
    pub bound: Option<Bound>,
    /// How far the plan is from that, as a fraction.
    pub gap: Option<f64>,
    /// How far inside the windows the blend stays.
    pub margin: Share,
    /// Whether there is more to come.
    pub done: Done,
}

impl Question {
    /// The question for a route.
    pub fn new(run: u32, route: CheckedRoute, wish: PlanWanted) -> Self {
        Self { run, route: route.into_inner(), wish }
    }

    /// A planner for it.
    ///
    /// # Errors
    /// When the route does not fit together, which one that came from a checked route
    /// does.
    pub fn planner(self) -> Result<Planner, RouteError> {
        Ok(Planner::new(self.route.checked()?, self.wish))
    }
}

impl Report {
    /// What a planner found so far.
    pub fn of(run: u32, progress: Progress) -> Self {
        let bought = |plan: TripPlan| plan.bought;
        let is_rounded = progress.rounded.is_some();
        Self {
            run,
            bought: progress.rounded.or(progress.plan).map(bought),
            is_rounded,
            bound: progress.bound,
            gap: progress.gap,
            margin: progress.margin,
            done: progress.done,
        }
    }
}
