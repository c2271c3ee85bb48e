//! The trips that are timed: twelve stops with up to four fuels, half of them with a
//! fee at every stop, invented and solved by SCIP beforehand.

#[path = "../../tests/trip_instances/instance.rs"]
#[allow(dead_code, reason = "the tests read more of an instance than is timed")]
mod instance;

use fillwright::trip::{CheckedRoute, Done, PlanWanted, Planner, Progress};
use serde_json::Value;

use self::instance::Instance;

const TRIPS: &str = include_str!("../../tests/trip_instances/twelve_stops.json");
/// The gap at which a plan counts as proved good.
const GAP: f64 = 0.01;
/// A trip that takes more is given up.
const MOST_PROGRAMMES: u32 = 30_000;

/// A trip and what is wanted of it.
pub(crate) struct Trip {
    pub(crate) has_fee: bool,
    route: CheckedRoute,
    wish: PlanWanted,
}

/// All trips, those without a plan among them left out.
pub(crate) fn trips() -> Result<Vec<Trip>, String> {
    let file: Value = serde_json::from_str(TRIPS).map_err(|error| error.to_string())?;
    let all = file["instances"].as_array().ok_or("no trips")?.iter();
    all.filter(|each| each["reference"]["status"] == "optimal")
        .map(|each| {
            let instance: Instance =
                serde_json::from_value(each.clone()).map_err(|error| error.to_string())?;
            Ok(Trip {
                has_fee: each["stops"][0]["fixed_cost_eur"] != 0.0,
                route: instance.route()?,
                wish: instance.wish(GAP)?,
            })
        })
        .collect()
}

impl Trip {
    /// Plans until there is a plan with a bound; how many programmes that took.
    pub(crate) fn first_plan(&self) -> Option<u32> {
        self.run(|progress| progress.plan.is_some() && progress.bound.is_some())
    }

    /// Plans until the plan is certified; how many programmes that took.
    pub(crate) fn certificate(&self) -> Option<u32> {
        self.run(|progress| progress.done == Done::Certified)
    }

    fn run(&self, is_enough: impl Fn(&Progress) -> bool) -> Option<u32> {
        let mut planner = Planner::new(self.route.clone(), self.wish);
        while planner.programmes() < MOST_PROGRAMMES {
            let progress = planner.step();
            if is_enough(&progress) {
                return Some(planner.programmes());
            }
            if progress.done != Done::Working {
                return None;
            }
        }
        None
    }
}
