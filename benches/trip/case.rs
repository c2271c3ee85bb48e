//! The trips that are timed: twelve stops with up to four fuels, from the known
//! instances, as they stand and with a fee at every stop.

#[path = "../../tests/trip_instances/instance.rs"]
#[allow(dead_code, reason = "the tests read more of an instance than is timed")]
mod instance;

use fillwright::trip::{CheckedRoute, Done, Planner, Wish};
use serde_json::Value;

use self::instance::Instance;

const INSTANCES: &str = include_str!("../../tests/trip_instances/trip_instances.json");
/// The ones of twelve stops; the second has the widest gap at the root.
const TWELVE_STOPS: [&str; 2] = ["T09", "T12"];
/// What stopping costs where it does.
const FEE: f64 = 2.0;

/// A trip and what is wanted of it.
pub(crate) type Trip = (CheckedRoute, Wish);

/// The trips, with a fee at every stop or without; none where they cannot be read.
pub(crate) fn trips(has_fee: bool) -> Option<Vec<Trip>> {
    let file: Value = serde_json::from_str(INSTANCES).ok()?;
    let named = |id: &str| file["instances"].as_array()?.iter().find(|each| each["id"] == id);
    let trip = |id: &&str| {
        let mut value = named(id)?.clone();
        if has_fee {
            for stop in value["stops"].as_array_mut()? {
                stop["fixed_cost_eur"] = FEE.into();
            }
        }
        let instance: Instance = serde_json::from_value(value).ok()?;
        Some((instance.route().ok()?, instance.wish(0.01).ok()?))
    };
    TWELVE_STOPS.iter().map(trip).collect()
}

/// Plans every trip until there is a plan with a bound. Returns what the plans cost.
pub(crate) fn first_plans(trips: &[Trip]) -> f64 {
    sum(trips, |planner| {
        loop {
            let progress = planner.step();
            let plan = progress.plan.filter(|_| progress.bound.is_some());
            match plan {
                Some(plan) => break plan.course.cost.amount(),
                None if progress.done == Done::Working => {}
                None => break f64::NAN,
            }
        }
    })
}

/// Plans every trip until the plan is certified to 1 %. Returns what the plans cost.
pub(crate) fn certificates(trips: &[Trip]) -> f64 {
    sum(trips, |planner| {
        loop {
            let progress = planner.step();
            match (progress.done, progress.plan) {
                (Done::Working, _) => {}
                (Done::Certified, Some(plan)) => break plan.course.cost.amount(),
                _ => break f64::NAN,
            }
        }
    })
}

fn sum(trips: &[Trip], plan: impl Fn(&mut Planner) -> f64) -> f64 {
    trips.iter().map(|(route, wish)| plan(&mut Planner::new(route.clone(), *wish))).sum()
}
