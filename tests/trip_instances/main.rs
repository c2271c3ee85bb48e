//! Trips whose best plans are known: solved to a gap of 1e-7 by SCIP 10 and by a
//! spatial branch and bound written apart from this project (each instance carries
//! its proofs).
//!
//! The instances are in `trip_instances.json`; `TRIP_INSTANCES` may name another file
//! of the same schema. An objective or a field that is not known fails.

#![allow(clippy::panic, clippy::unwrap_used, reason = "a test fails by panicking")]

mod by_hand;
mod checker;
mod instance;
mod random_trips;

use fillwright::trip::{Bound, Done, Planner, Progress, TripPlan};
use instance::{Checked, Goal, Instance};
use serde_json::Value;

/// The gap to which the planner is asked to go: below every tolerance in the file.
const GAP: f64 = 2e-4;
/// No instance may take more than this.
const MOST_PROGRAMMES: u32 = 60_000;

fn read(path: &str) -> Value {
    let text = std::fs::read_to_string(path).unwrap_or_else(|error| panic!("{path}: {error}"));
    serde_json::from_str(&text).unwrap_or_else(|error| panic!("{path}: {error}"))
}

fn validator() -> jsonschema::Validator {
    let schema =
        read(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/trip_instances/trip_schema.json"));
    jsonschema::validator_for(&schema).unwrap_or_else(|error| panic!("{error}"))
}

/// Runs a planner to its end.
fn planned(instance: &Instance, gap: f64) -> Checked<(Progress, u32)> {
    let mut planner = Planner::new(instance.route()?, instance.wish(gap)?);
    loop {
        let progress = planner.step();
        if progress.done != Done::Working {
            return Ok((progress, planner.programmes()));
        }
        if planner.programmes() > MOST_PROGRAMMES {
            return Err(format!("not done after {MOST_PROGRAMMES} programmes: {progress:?}"));
        }
    }
}

fn check(value: &Value, validator: &jsonschema::Validator) -> Checked<String> {
    if let Some(error) = validator.iter_errors(value).next() {
        return Err(format!("not of the schema: {error}"));
    }
    let instance: Instance =
        serde_json::from_value(value.clone()).map_err(|error| error.to_string())?;
    let (progress, programmes) = planned(&instance, GAP)?;
    match instance.reference["status"].as_str() {
        Some("optimal") => {
            let plan = progress.plan.as_ref().ok_or("no plan")?;
            if progress.done != Done::Certified {
                return Err(format!("{:?} in place of a certificate", progress.done));
            }
            let objective = optimal(&instance, &progress, plan)?;
            Ok(format!("{objective:.6} after {programmes} programmes"))
        }
        Some("infeasible") => match progress.done {
            Done::Impossible(why) => Ok(format!("{why:?} after {programmes} programmes")),
            other => Err(format!("{other:?} in place of a proof that there is no plan")),
        },
        other => Err(format!("unknown status {other:?}")),
    }
}

fn optimal(instance: &Instance, progress: &Progress, plan: &TripPlan) -> Checked<f64> {
    let reference = &instance.reference;
    let number = |value: &Value| value.as_f64().ok_or("a number is missing");
    let wanted = number(&reference["objective_value"])?;
    let accept = &reference["accept_if_objective_within"];
    let outcome = checker::follow(instance, &instance.named(&plan.bought))?;
    let tolerance = number(&accept["feasibility_tolerance_l"])?;
    if outcome.violation > tolerance {
        return Err(format!("a rule is missed by {} L", outcome.violation));
    }
    let objective = outcome.objective(instance.objective);
    let allowed = number(&accept["absolute"])?.min(number(&accept["relative"])? * wanted.abs());
    if (objective - wanted).abs() > allowed {
        return Err(format!("{objective} in place of {wanted} +- {allowed}"));
    }
    let slack = 1e-6 * (1.0 + wanted.abs());
    let holds = match (progress.bound, instance.objective) {
        (Some(Bound::Cost(cost)), Goal::MinCost { .. }) => cost.amount() <= wanted + slack,
        (Some(Bound::StopsThenCost(stops, cost)), Goal::MinStopsThenCost { .. }) => {
            1000.0 * f64::from(stops) + cost.amount() <= wanted + slack
        }
        (Some(Bound::EthanolPart(part)), Goal::MaxEthanolEnergyShare { .. }) => {
            part >= wanted - slack
        }
        _ => false,
    };
    if holds {
        Ok(objective)
    } else {
        Err(format!("{:?} is no bound for {wanted}", progress.bound))
    }
}

#[test]
fn every_instance_is_met() {
    let path = std::env::var("TRIP_INSTANCES").unwrap_or_else(|_| {
        concat!(env!("CARGO_MANIFEST_DIR"), "/tests/trip_instances/trip_instances.json").into()
    });
    let file = read(&path);
    assert_eq!(file["schema"], "trip-blend/1", "{path} has an unknown schema");
    let instances = file["instances"].as_array().unwrap_or_else(|| panic!("{path} has none"));
    assert!(!instances.is_empty(), "{path} has no instances");
    let validator = validator();
    let mut failures = Vec::new();
    for value in instances {
        let id = value["id"].as_str().unwrap_or("(no id)");
        match check(value, &validator) {
            Ok(result) => eprintln!("{id}: {result}"),
            Err(problem) => failures.push(format!("{id}: {problem}")),
        }
    }
    let (failed, all) = (failures.len(), instances.len());
    assert!(failures.is_empty(), "{failed} of {all} instances:\n{}", failures.join("\n"));
}

/// The harness itself must be able to fail.
#[test]
fn an_unknown_objective_or_field_fails() {
    let file =
        read(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/trip_instances/trip_instances.json"));
    let validator = validator();
    let known = &file["instances"][0];
    assert!(check(known, &validator).is_ok());
    let fails = |change: fn(&mut Value)| {
        let mut changed = known.clone();
        change(&mut changed);
        assert!(check(&changed, &validator).is_err());
    };
    fails(|value| value["objective"]["type"] = "least_smoke".into());
    fails(|value| value["objective"]["colour"] = "red".into());
    fails(|value| value["wind"] = 3.into());
    fails(|value| value["legs"][0]["slope"] = 3.into());
    fails(|value| value["reference"]["objective_value"] = 79.0.into());
    fails(|value| value["reference"]["status"] = "infeasible".into());
}
