//! Each text field is written and read back: in the example, and in each kind of entry.

use std::collections::{BTreeMap, BTreeSet};

use super::*;
use crate::document::{
    BeforeForm, CalibrationPart, ContentsForm, ContentsOf, ContentsPart, CurvePart, Draft,
    DriveForm, ExtraPart, Fields, FillEntry, FuelForm, HardwareField, Id, LevelForm, SensorForm,
    TripPart, TripStopPart, TubeTestForm, What,
};
use crate::quantity::notation::Units;

const FUEL_PARTS: [FuelPart; 12] = [
    FuelPart::Name,
    FuelPart::Share,
    FuelPart::ShareRange,
    FuelPart::Extra(ExtraPart::Water),
    FuelPart::Extra(ExtraPart::Methanol),
    FuelPart::Extra(ExtraPart::Ethers),
    FuelPart::Extra(ExtraPart::Oxygen),
    FuelPart::Octane,
    FuelPart::Mon,
    FuelPart::Price,
    FuelPart::Limit,
    FuelPart::Poured,
];

const CONTENTS_PARTS: [ContentsPart; 10] = [
    ContentsPart::Level,
    ContentsPart::LevelError,
    ContentsPart::Share,
    ContentsPart::ShareRange,
    ContentsPart::Extra(ExtraPart::Water),
    ContentsPart::Extra(ExtraPart::Methanol),
    ContentsPart::Extra(ExtraPart::Ethers),
    ContentsPart::Extra(ExtraPart::Oxygen),
    ContentsPart::Octane,
    ContentsPart::Mon,
];

const ENTRY_PARTS: [EntryPart; 13] = [
    EntryPart::Time,
    EntryPart::Place,
    EntryPart::Note,
    EntryPart::Sensor,
    EntryPart::Pulse,
    EntryPart::TubeFuel,
    EntryPart::TubeWater,
    EntryPart::Boundary,
    EntryPart::TubeStep,
    EntryPart::Distance,
    EntryPart::Consumption,
    EntryPart::Drained,
    EntryPart::Fuels,
];

/// The fields of the hardware that were filled in, and some that are blank.
fn slots(texts: &Fields) -> impl Iterator<Item = HardwareField> {
    let typed = serde_json::to_value(texts).unwrap();
    let names: Vec<serde_json::Value> =
        typed.as_object().unwrap().keys().map(|name| name.as_str().into()).collect();
    let typed = names.into_iter().map(|name| serde_json::from_value(name).unwrap());
    let blank = [HardwareField::FlowTable, HardwareField::MixAmount, HardwareField::LimitAir];
    typed.chain(blank).collect::<BTreeSet<_>>().into_iter()
}

/// The fields that show a text in any view, of what there is in a document.
fn fields(document: &Document) -> Vec<Field> {
    use Field as F;
    let here = &document.here;
    let mut all = vec![
        F::Capacity,
        F::Reserve,
        F::Consumption,
        F::Reference,
        F::PumpStep,
        F::Currency,
        F::CarName,
        F::Line,
        F::AimShare,
        F::Place,
        F::StopLevel,
        F::StopVolume,
        F::StopMoney,
        F::Trip(TripPart::Budget),
        F::Trip(TripPart::Margin),
        F::Trip(TripPart::FinalLevel),
    ];
    all.extend(slots(&here.hardware.mix).map(F::Mix));
    all.extend(slots(&here.hardware.engine).map(F::Engine));
    for of in [ContentsOf::Fill, ContentsOf::Trip] {
        all.extend(CONTENTS_PARTS.map(|part| F::Contents(of, part)));
    }
    for form in &here.fill.offers {
        all.extend(FUEL_PARTS.map(|part| F::Fuel(form.id, part)));
    }
    for form in &here.car.calibrations {
        use CalibrationPart::{High, Low, Name, RonMin, WrittenFor};
        let parts = [Name, Low, High, WrittenFor, RonMin];
        all.extend(parts.map(|part| F::Calibration(form.id, part)));
    }
    for form in &here.hardware.parts {
        all.extend(slots(&form.fields).map(|slot| F::Part(form.id, slot)));
        all.push(F::PartName(form.id));
    }
    for form in &here.hardware.curves {
        use CurvePart::{Air, Blend, Name, Table};
        let air = slots(&form.air).map(Air);
        all.extend([Name, Table, Blend].into_iter().chain(air).map(|part| F::Curve(form.id, part)));
    }
    for stop in &here.route.stops {
        use TripStopPart::{Distance, Factor, Fee, Place, RonMin};
        all.extend([Place, Fee, Distance, Factor, RonMin].map(|part| F::TripStop(stop.id, part)));
        // What was put in is asked for at the pump alone.
        let parts = FUEL_PARTS.into_iter().filter(|part| *part != FuelPart::Poured);
        for fuel in &stop.fuels {
            all.extend(parts.clone().map(|part| F::Fuel(fuel.id, part)));
        }
    }
    all
}

/// All values of a document, each by the way to it.
fn values(document: &Document) -> BTreeMap<String, String> {
    fn note(way: &str, value: &serde_json::Value, all: &mut BTreeMap<String, String>) {
        match value {
            serde_json::Value::Object(of) => {
                of.iter().for_each(|(name, it)| note(&format!("{way}/{name}"), it, all));
            }
            serde_json::Value::Array(of) => {
                of.iter().enumerate().for_each(|(at, it)| note(&format!("{way}/{at}"), it, all));
            }
            value => {
                all.insert(way.to_owned(), value.to_string());
            }
        }
    }
    let mut all = BTreeMap::new();
    note("", &serde_json::to_value(document).unwrap(), &mut all);
    all
}

/// Checks that a field is read where it is written, and that nothing else changes.
fn check(document: &Document, field: Field) -> String {
    let mut changed = document.clone();
    changed.settings.units = Units::US;
    let before = values(&changed);
    let was = changed.typed(field).unwrap_or_else(|| panic!("{field:?}")).text.to_owned();
    changed.type_into(field, "0.125".into());
    assert_eq!(changed.typed(field).unwrap().text, "0.125", "{field:?}");
    let after = values(&changed);
    let places: Vec<&String> =
        after.iter().filter(|(way, it)| before.get(*way) != Some(*it)).map(|it| it.0).collect();
    let place = places[0].trim_end_matches("/text").trim_end_matches("/typed_in").to_owned();
    let is_there = |way: &String| {
        *way == place || *way == format!("{place}/text") || *way == format!("{place}/typed_in")
    };
    assert!(places.iter().all(|way| is_there(way)), "{field:?} also changes {places:?}");
    assert!(before.keys().all(|way| after.contains_key(way)), "{field:?}");
    if let Some(units) = after.get(&format!("{place}/typed_in")) {
        let goes_on = changed.typed(field).unwrap().unit == FieldUnit::Lines && !was.is_empty();
        let expected = if goes_on { Units::METRIC } else { Units::US };
        assert_eq!(*units, serde_json::to_value(expected).unwrap().to_string(), "{field:?}");
    }
    changed.type_into(field, was);
    let undone = values(&changed);
    let units_apart = |values: &BTreeMap<String, String>| -> Vec<(String, String)> {
        let blank = |way: &String| !before.contains_key(way) && is_there(way);
        let unit = format!("{place}/typed_in");
        let kept = values.iter().filter(|(way, _)| **way != unit && !blank(way));
        kept.map(|(way, it)| (way.clone(), it.clone())).collect()
    };
    assert_eq!(units_apart(&undone), units_apart(&before), "{field:?}");
    place
}

/// Checks all these fields, and that no two share a place.
fn check_all(document: &Document, fields: &[Field]) {
    let mut places: BTreeMap<String, Field> = BTreeMap::new();
    for field in fields {
        if let Some(other) = places.insert(check(document, *field), *field) {
            panic!("{field:?} and {other:?} stand in one place");
        }
    }
}

fn drafted(what: What) -> Document {
    let mut document = Document::demo();
    let time = "2026-05-03T17:40".to_owned();
    document.here.draft = Some(Draft::new(Id::of_chance([7; 10]), what, time, 120));
    document
}

#[test]
fn each_field_is_read_where_it_is_written_and_changes_nothing_else() {
    let document = Document::demo();
    let fields = fields(&document);
    assert!(fields.len() > 150, "{}", fields.len());
    check_all(&document, &fields);
}

#[test]
fn each_kind_of_entry_has_the_fields_that_it_asks_for() {
    use EntryPart as E;
    let fuel = FuelForm { id: 1, ..FuelForm::default() };
    let fill = |before| What::Fill(FillEntry { before, fuels: vec![fuel.clone()], clicked: false });
    let contents = CONTENTS_PARTS.map(|part| Field::Contents(ContentsOf::Entry, part));
    let level = &contents[..2];
    let poured = FUEL_PARTS.map(|part| Field::Poured(1, part));
    let tube = [E::TubeFuel, E::TubeWater, E::Boundary, E::TubeStep];
    let kinds: [(What, &[E], &[Field]); 11] = [
        (What::Level(LevelForm::default()), &[], level),
        (What::Sensor(SensorForm::default()), &[E::Sensor, E::Pulse], &[]),
        (What::TubeTest(TubeTestForm::default()), &tube, &[]),
        (What::Drive(Entry::default()), &[E::Distance], &[]),
        (What::Trip(DriveForm::default()), &[E::Distance, E::Consumption], &[]),
        (What::Drain(Entry::default()), &[E::Drained], &[]),
        (What::Correction(ContentsForm::default()), &[], &contents),
        (What::Note, &[], &[]),
        (fill(BeforeForm::Nothing), &[], &[]),
        (fill(BeforeForm::Level(LevelForm::default())), &[], level),
        (fill(BeforeForm::Contents(ContentsForm::default())), &[], &contents),
    ];
    for (what, parts, also) in kinds {
        let is_fill = matches!(what, What::Fill(_));
        let document = drafted(what);
        let own = [&[E::Place, E::Note], parts].concat();
        let mut asked: Vec<Field> = own.iter().map(|part| Field::Entry(*part)).collect();
        asked.extend(also);
        asked.extend(poured.iter().filter(|_| is_fill));
        check_all(&document, &asked);
        let others = ENTRY_PARTS.map(Field::Entry).into_iter().chain(contents).chain(poured);
        for field in others.filter(|it| !asked.contains(it) && *it != Field::Entry(E::Time)) {
            assert!(document.typed(field).is_none(), "{field:?} of {:?}", document.draft_what());
        }
    }
}

#[test]
fn what_takes_no_text_and_what_is_gone_is_not_there() {
    let mut document = Document::demo();
    let before = document.clone();
    let fields = [
        Field::Start,
        Field::Offers,
        Field::AimCalibration,
        Field::Stop,
        Field::Trip(TripPart::Start),
        Field::Trip(TripPart::Stops),
        Field::Fuel(9999, FuelPart::Share),
        Field::Calibration(9999, CalibrationPart::Low),
        Field::Part(9999, HardwareField::Count),
        Field::Curve(9999, CurvePart::Name),
        Field::TripStop(9999, TripStopPart::Fee),
        Field::Entry(EntryPart::Place),
    ];
    for field in fields {
        assert!(document.typed(field).is_none(), "{field:?}");
        document.type_into(field, "1".into());
    }
    assert_eq!(document, before);
}
