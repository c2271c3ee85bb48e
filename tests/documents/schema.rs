//! The schema that describes the document, checked by the crate `jsonschema`.

use fillwright::document::{Document, SCHEMA};
use jsonschema::Validator;
use proptest::prelude::*;
use serde_json::{Value, json};

#[path = "../properties/documents.rs"]
mod documents;

fn schema() -> Validator {
    let text = include_str!("../../src/document/document.schema.json");
    jsonschema::draft202012::new(&serde_json::from_str(text).unwrap()).unwrap()
}

fn written(document: &Document) -> Value {
    serde_json::from_str(&document.to_json().unwrap()).unwrap()
}

#[test]
fn the_schema_is_one_and_the_example_fits() {
    let text = include_str!("../../src/document/document.schema.json");
    assert!(jsonschema::draft202012::meta::is_valid(&serde_json::from_str(text).unwrap()));
    schema().validate(&written(&Document::demo())).unwrap();
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn everything_that_is_written_fits(document in documents::document()) {
        let schema = schema();
        let value = written(&document);
        let wrong: Vec<String> = schema.iter_errors(&value).map(|it| it.to_string()).collect();
        prop_assert!(wrong.is_empty(), "{wrong:?}");
    }
}

/// Places in a document, and what cannot stand there.
fn wrong_values() -> Vec<(&'static str, Value)> {
    vec![
        ("/schema", json!("2")),
        ("/schema", json!(SCHEMA + 1)),
        ("/schema", json!(-1)),
        ("/schema", Value::Null),
        ("/settings", json!("metric")),
        ("/settings/units", json!("cubits")),
        ("/settings/units", json!("metric+cubits")),
        ("/settings/units", json!("metric psi")),
        ("/settings/units", json!({"system": "metric"})),
        ("/settings/decimal", json!(",")),
        ("/settings/currency", json!(7)),
        ("/settings/rates", json!({"from": "DKK"})),
        ("/settings/rates/0/rate", json!(0.134)),
        ("/settings/rates/0", json!({"from": "DKK", "to": "kr", "rate": "1.5"})),
        ("/here/car/range_display", json!("to_nowhere")),
        ("/here", Value::Null),
        ("/here/id", json!("Not An Id")),
        ("/here/id", json!("")),
        ("/here/demo", json!("yes")),
        ("/here/last_id", json!(-1)),
        ("/here/last_id", json!(1.5)),
        ("/here/last_id", json!(4_294_967_296_u64)),
        ("/here/car/capacity", json!("58")),
        ("/here/car/capacity/text", json!(58)),
        ("/here/car/fluid", json!("maybe")),
        ("/here/car/calibrations", json!({})),
        ("/here/car/calibrations/0/low", Value::Null),
        ("/here/car/calibrations/0/ron_min", json!(95)),
        ("/here/fill/contents/how_sure", json!("very")),
        ("/here/fill/offers/0/how_sure", json!(5)),
        ("/here/fill/contents/level/level", json!({"text": "95"})),
        ("/here/fill/aim", json!({"calibration": "1"})),
        ("/here/fill/aim", json!("calibration")),
        ("/here/fill/stop", json!("never")),
        ("/here/fill/offers/0/price", json!(15.94)),
        ("/here/draft", json!({})),
        ("/here/log", json!({"a": 1})),
        ("/here/log/0/id", json!("a/b")),
        ("/here/log/0/revision", json!(-3)),
        ("/here/log/0/time", json!("yesterday")),
        ("/here/log/0/time", json!("2026-05-03")),
        ("/here/log/0/what", json!("fill")),
        ("/here/log/0/what", json!({"fill": {}, "level": {}})),
        ("/here/log/0/what", json!({"refuel": {}})),
        ("/here/log/0/what", json!({"fill": {"fuels": [{"colour": "red"}]}})),
        ("/here/log/0/what", json!({"drive": "120"})),
        ("/here/log/0/what", json!({"tube_test": {"method": "beer"}})),
        ("/here/workshop", json!("none")),
        ("/here/workshop/curves/0/table", json!("2000 350")),
        ("/here/workshop/curves/0/place", json!("hub")),
        ("/here/workshop/curves/0/given", json!("SAE")),
        ("/here/workshop/curves/0/columns", json!({"unit": "cubits"})),
        ("/here/workshop/target", json!(-1)),
        ("/here/workshop/engine", json!({"boost": "1.3"})),
        ("/here/workshop/engine", json!({"colour": {"text": "red", "typed_in": "metric"}})),
        ("/here/workshop/parts/0/kind", json!("carburettor")),
        ("/here/workshop/parts/0/marks", json!(["shiny"])),
        ("/here/workshop/parts/0/id", Value::Null),
        ("/here/workshop/blend", json!("guessed")),
        ("/here/route", json!("none")),
        ("/here/route/stops", Value::Null),
        ("/here/route/stops/0/id", json!(-1)),
        ("/here/route/stops/0/distance", json!("130")),
        ("/here/route/stops/0/fuels/0/price", json!("15.94")),
        ("/here/route/stops/0/closed", json!(["E85"])),
        ("/here/route/stops/0/calibrations", json!("Mid blend")),
        ("/here/route/stops/0/factor", json!(1.1)),
        ("/here/route/here", json!("Home")),
        ("/here/route/start", json!("guessed")),
        ("/here/route/contents", json!({"level": "20"})),
        ("/here/route/prefer", json!("fastest")),
        ("/here/route/careful", json!("yes")),
        ("/here/route/budget", json!(500)),
        ("/others", Value::Null),
        ("/others", json!([{}])),
    ]
}

#[test]
fn what_is_wrong_is_refused_by_the_schema_and_by_the_app() {
    let schema = schema();
    let entry =
        json!({"id": "a", "revision": 1, "time": "2026-05-03T17:40:00+02:00", "what": "note"});
    let mut right = written(&Document::demo());
    right["here"]["log"] = json!([entry]);
    // What the example leaves out.
    right["here"]["route"]["here"] = json!(3);
    right["here"]["route"]["budget"] = json!("900");
    right["here"]["fill"]["contents"]["how_sure"] = json!("sure");
    right["here"]["car"]["range_display"] = json!("to_reserve");
    right["settings"]["rates"] =
        json!([{"from": "DKK", "to": "kr", "rate": "1.5", "typed_on": "2026-05-03"}]);
    right["here"]["fill"]["offers"][0]["how_sure"] = json!("unknown");
    right["here"]["route"]["careful"] = json!(true);
    right["here"]["route"]["stops"][0]["factor"] = json!("1.1");
    right["here"]["route"]["stops"][0]["closed"] = json!([4]);
    assert!(schema.is_valid(&right));
    assert!(Document::from_json(&right.to_string()).is_ok());

    for (place, value) in wrong_values() {
        let mut document = right.clone();
        *document.pointer_mut(place).unwrap_or_else(|| panic!("no {place}")) = value.clone();
        assert!(!schema.is_valid(&document), "the schema takes {value} as {place}");
        let read = Document::from_json(&document.to_string());
        assert!(read.is_err(), "the app takes {value} as {place}");
    }
    for (place, missing) in [
        ("", "settings"),
        ("", "here"),
        ("/here", "log"),
        ("/here", "car"),
        ("/here/log/0", "time"),
        ("/here/log/0", "what"),
        ("/here/workshop/parts/0", "kind"),
    ] {
        let mut document = right.clone();
        let of = document.pointer_mut(place).and_then(Value::as_object_mut).unwrap();
        of.remove(missing).unwrap();
        assert!(
            !schema.is_valid(&document) && Document::from_json(&document.to_string()).is_err(),
            "without {missing}"
        );
        let of = document.pointer_mut(place).and_then(Value::as_object_mut).unwrap();
        of.insert("unknown".into(), json!(1));
        assert!(!schema.is_valid(&document) && Document::from_json(&document.to_string()).is_err());
    }
}
