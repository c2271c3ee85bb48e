//! The fill problem against cases that were solved in exact fractions by
//! enumerating vertices, apart from this project's code (each case names its
//! method; those of linear-programme type were solved a second time by
//! `scipy` / `HiGHS` and agree to 1e-6).
//!
//! The cases are in `cases.json`; `FILL_CASES` may name another file of the
//! same schema. A mode or a field that this harness does not know fails.

mod by_hand;
mod case;
mod expect;

use case::Case;
use serde_json::Value;

#[test]
fn every_case_is_met() {
    let path = std::env::var("FILL_CASES").unwrap_or_else(|_| {
        concat!(env!("CARGO_MANIFEST_DIR"), "/tests/fill_cases/cases.json").into()
    });
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{path}: {error}"));
    let file: Value = serde_json::from_str(&text).unwrap_or_else(|error| panic!("{path}: {error}"));
    assert_eq!(file["schema"], "fill-cases/1", "{path} has an unknown schema");
    let cases = file["cases"].as_array().unwrap_or_else(|| panic!("{path} has no cases"));
    assert!(!cases.is_empty(), "{path} has no cases");
    let failures: Vec<String> = cases
        .iter()
        .filter_map(|case| {
            let id = case["id"].as_str().unwrap_or("(no id)");
            let outcome = Case::read(&case["input"]).and_then(|read| {
                expect::check(&read, case["expected"].as_object().ok_or("no expectation")?)
            });
            outcome.err().map(|problem| format!("{id}: {problem}"))
        })
        .collect();
    assert!(
        failures.is_empty(),
        "{} of {} cases:\n{}",
        failures.len(),
        cases.len(),
        failures.join("\n")
    );
}

/// The harness itself must be able to fail.
#[test]
fn a_wrong_expectation_or_an_unknown_field_fails() {
    let input = serde_json::json!({
        "tank_capacity_l": "60", "present_volume_l": "15", "present_ethanol_share_vol": "1/10",
        "target_ethanol_share_vol": "1/2", "mode": "fill_full",
        "fuels": [{"id": "A", "ethanol_share_vol": "1/10"}, {"id": "B", "ethanol_share_vol": "17/20"}],
    });
    let verdict = |input: &Value, expected: Value| {
        let expected = expected.as_object().cloned().unwrap_or_default();
        Case::read(input).and_then(|case| expect::check(&case, &expected))
    };
    let right = serde_json::json!({"status": "ok", "litres": {"A": "13", "B": "32"}});
    assert_eq!(verdict(&input, right), Ok(()));
    let wrong = serde_json::json!({"status": "ok", "litres": {"A": "13", "B": "32.00001"}});
    assert!(verdict(&input, wrong).is_err());
    assert!(verdict(&input, serde_json::json!({"status": "impossible_now"})).is_err());
    assert!(verdict(&input, serde_json::json!({"status": "ok", "new_field": "1"})).is_err());
    let mut unknown_mode = input.clone();
    unknown_mode["mode"] = "fill_half".into();
    assert!(verdict(&unknown_mode, serde_json::json!({"status": "ok"})).is_err());
    let mut unknown_input = input;
    unknown_input["wind"] = "3".into();
    assert!(verdict(&unknown_input, serde_json::json!({"status": "ok"})).is_err());
}
