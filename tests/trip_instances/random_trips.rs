//! Invented trips against SCIP: at no time is a bound above the optimum or a plan
//! below it. The script `random_trips.py` made the trips and solved them.

use fillwright::trip::{Bound, Done, Planner, Progress};
use serde_json::Value;

use crate::checker;
use crate::instance::{Checked, Goal, Instance};

/// The relative error that SCIP's own tolerances leave.
const OF_SCIP: f64 = 1e-6;
/// The gap at which a plan counts as certified.
const GAP: f64 = 1e-3;
/// What a single trip may take here; some with fees take far more to be certified.
const MOST_PROGRAMMES: u32 = 1200;

/// How a trip went.
#[derive(Debug, PartialEq, Eq)]
enum Ended {
    Certified,
    Impossible,
    NotYet,
}

fn run(instance: &Instance) -> Checked<Ended> {
    let status = instance.reference["status"].as_str().ok_or("no status")?;
    let wanted = instance.reference["objective_value"].as_f64();
    let mut planner = Planner::new(instance.route()?, instance.wish(GAP)?);
    loop {
        let progress = planner.step();
        if let Some(wanted) = wanted {
            bound_holds(instance, &progress, wanted)?;
        }
        match &progress.done {
            Done::Working if planner.programmes() < MOST_PROGRAMMES => {}
            Done::Impossible(_) if status == "infeasible" => return Ok(Ended::Impossible),
            Done::Certified | Done::Working if status == "optimal" => {
                let is_certified = progress.done == Done::Certified;
                plan_holds(instance, &progress, wanted.ok_or("no optimum")?, is_certified)?;
                return Ok(if is_certified { Ended::Certified } else { Ended::NotYet });
            }
            Done::Working if progress.plan.is_none() => return Ok(Ended::NotYet),
            other => return Err(format!("{other:?}, but SCIP says {status}")),
        }
    }
}

/// A bound never passes the optimum.
fn bound_holds(instance: &Instance, progress: &Progress, wanted: f64) -> Checked<()> {
    let slack = OF_SCIP * (1.0 + wanted.abs());
    let holds = match (progress.bound, instance.objective) {
        (None, _) => true,
        (Some(Bound::Cost(cost)), Goal::MinCost { .. }) => cost.amount() <= wanted + slack,
        (Some(Bound::Stops(stops)), Goal::MinStopsThenCost { .. }) => {
            1000.0 * f64::from(stops) <= wanted
        }
        (Some(Bound::StopsThenCost(stops, cost)), Goal::MinStopsThenCost { .. }) => {
            1000.0 * f64::from(stops) + cost.amount() <= wanted + slack
        }
        (Some(Bound::EthanolPart(part)), Goal::MaxEthanolEnergyShare { .. }) => {
            part >= wanted - slack
        }
        _ => false,
    };
    if holds { Ok(()) } else { Err(format!("{:?}, but {wanted} is possible", progress.bound)) }
}

/// A plan holds, is no better than the optimum, and near it once certified.
fn plan_holds(
    instance: &Instance,
    progress: &Progress,
    wanted: f64,
    is_certified: bool,
) -> Checked<()> {
    let Some(plan) = &progress.plan else {
        return if is_certified { Err("a certificate without a plan".into()) } else { Ok(()) };
    };
    let outcome = checker::follow(instance, &instance.named(&plan.bought))?;
    if outcome.violation > 1e-5 {
        return Err(format!("a rule is missed by {} L", outcome.violation));
    }
    let objective = outcome.objective(instance.objective);
    // How much worse than the optimum.
    let worse = match instance.objective {
        Goal::MaxEthanolEnergyShare { .. } => wanted - objective,
        Goal::MinCost { .. } | Goal::MinStopsThenCost { .. } => objective - wanted,
    };
    let slack = OF_SCIP * (1.0 + wanted.abs());
    if worse < -slack {
        return Err(format!("{objective} is better than the optimum {wanted}"));
    }
    if is_certified && worse > GAP * wanted.abs() + slack {
        return Err(format!("{objective} is certified, but {wanted} is possible"));
    }
    Ok(())
}

/// The trips of a file.
fn trips(path: &str) -> Vec<Value> {
    let file = crate::read(path);
    file["instances"].as_array().unwrap_or_else(|| panic!("{path} has none")).clone()
}

#[test]
fn random_trips_agree_with_scip() {
    const FOLDER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/trip_instances");
    let mut instances = trips(&format!("{FOLDER}/random.json"));
    instances.extend(trips(&format!("{FOLDER}/twelve_stops.json")));
    assert!(instances.len() >= 200, "{} trips", instances.len());
    let (mut failures, mut certified, mut optimal) = (Vec::new(), 0, 0);
    for value in &instances {
        let outcome = serde_json::from_value(value.clone())
            .map_err(|error| error.to_string())
            .and_then(|instance: Instance| run(&instance));
        if value["reference"]["status"] == "optimal" {
            optimal += 1;
        }
        match outcome {
            Ok(Ended::Certified) => certified += 1,
            Ok(Ended::Impossible | Ended::NotYet) => {}
            Err(problem) => failures.push(format!("{}: {problem}", value["id"])),
        }
    }
    let (failed, all) = (failures.len(), instances.len());
    assert!(failures.is_empty(), "{failed} of {all} trips:\n{}", failures.join("\n"));
    eprintln!("{certified} of {optimal} trips certified within {MOST_PROGRAMMES} programmes");
    assert!(certified * 10 >= optimal * 8, "only {certified} of {optimal} were certified");
}
