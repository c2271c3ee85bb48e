//! Documents of earlier versions.
//!
//! Schema 6 kept what is in the tank before a fill in the fill's own texts. Schema 5 knew of a fuel only how much ethanol it holds, and no rate between currencies.
//! Schema 4 knew no units apart from their system, and no scale of an octane number but in
//! its text. Schema 3 had no route, schema 2 no hardware either. Schema 1 held one car and its fill, and no log.
//! Schema 0 was the same without settings, example and numbering.

use serde::Deserialize;
use serde_json::{Map, Value};

use super::car::Car;
use super::file::{CarFile, Document, DocumentError, SCHEMA, Settings};
use super::fill::FillForm;
use super::fuel::FuelForm;
use super::id::Id;

/// Schemas 0 and 1.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct OneCar {
    schema: u32,
    #[serde(default)]
    last_id: u32,
    #[serde(default)]
    demo: bool,
    #[serde(default)]
    settings: Settings,
    car: Car,
    fill: FillForm,
}

/// The last schema in which a fill kept what is in the tank among its own texts.
const CONTENTS_IN_FILL: u32 = 6;

/// Each of those texts, and its name in the form of what is in a tank.
const CONTENTS: [(&str, &str); 6] = [
    ("share", "share"),
    ("share_range", "share_range"),
    ("extras", "extras"),
    ("how_sure", "how_sure"),
    ("octane", "octane"),
    ("mon", "mon"),
];

/// Likewise those of the level.
const LEVEL: [(&str, &str); 3] =
    [("level", "level"), ("reading", "reading"), ("level_error", "error")];

/// Moves what is in the tank into a form of its own.
fn part_contents(car: &mut Value) {
    let Some(fill) = car.get_mut("fill").and_then(Value::as_object_mut) else { return };
    let mut taken = |names: &[(&str, &str)]| -> Map<String, Value> {
        let moved = names.iter().filter_map(|(old, new)| Some(((*new).into(), fill.remove(*old)?)));
        moved.collect()
    };
    let level = taken(&LEVEL);
    let mut contents = taken(&CONTENTS);
    contents.insert("level".into(), level.into());
    fill.insert("contents".into(), contents.into());
}

/// Reads a document of an earlier version, of the schema that it says.
pub(crate) fn read(text: &str, schema: u32) -> Result<Document, DocumentError> {
    let mut old: Value = serde_json::from_str(text)?;
    if schema <= CONTENTS_IN_FILL {
        part_contents(&mut old);
        old.get_mut("here").map(part_contents);
        let others = old.get_mut("others").and_then(Value::as_array_mut);
        others.into_iter().flatten().for_each(part_contents);
    }
    if schema >= 2 {
        // What came later may be left out there.
        let document: Document = serde_json::from_value(old)?;
        return Ok(Document { schema: SCHEMA, ..document });
    }
    let old: OneCar = serde_json::from_value(old)?;
    // The same text gets the same identity wherever it is read, so that two
    // copies of it are one car again when they meet.
    let mut here = CarFile::new(Id::of_content(text));
    here.demo = old.demo;
    let in_use = [&old.car.own_fuels, &old.fill.offers];
    let fuels = in_use.into_iter().flatten().map(|fuel: &FuelForm| fuel.id);
    let calibrations = old.car.calibrations.iter().map(|calibration| calibration.id);
    here.last_id = fuels.chain(calibrations).fold(old.last_id, u32::max);
    here.car = old.car;
    here.fill = old.fill;
    debug_assert!(old.schema < 2, "later schemas have their own shape");
    Ok(Document { schema: SCHEMA, settings: old.settings, here, others: Vec::new() })
}
