//! A car with a tank of 60 litres, and entries to write into its log.

use fillwright::answers::tank::{History, LogReading};
use fillwright::document::{
    BeforeForm, CarFile, ContentsForm, Document, Event, FillEntry, FuelForm, Id, LevelForm, Moment,
    SensorForm, What,
};
use fillwright::quantity::Volume;
use fillwright::quantity::notation::{DecimalMark, Entry, Printer};
use fillwright::tank::Estimate;
use uom::si::volume::liter;

/// A car that burns 8 L/100 km on petrol without ethanol, and nothing in its log.
pub(crate) fn car() -> Document {
    let mut document = Document::empty(Id::new("car").unwrap());
    let car = &mut document.here.car;
    car.capacity = Entry::metric("60");
    car.consumption = Entry::metric("8");
    car.reference = "E0".into();
    document
}

pub(crate) fn printer(document: &Document) -> Printer {
    document.settings.printer(DecimalMark::Point)
}

pub(crate) fn event(id: &str, time: &str, what: What) -> Event {
    Event {
        id: Id::new(id).unwrap(),
        revision: 1,
        sequence: 0,
        removed: false,
        time: Moment::new(time, 0).unwrap(),
        place: String::new(),
        note: String::new(),
        what,
    }
}

pub(crate) fn fuel(id: u32, share: &str, volume: &str) -> FuelForm {
    FuelForm {
        id,
        name: format!("E{share}"),
        share: share.into(),
        octane: Entry::metric(if share == "85" { "104" } else { "95" }),
        poured: Entry::metric(volume),
        ..FuelForm::default()
    }
}

pub(crate) fn fill(before: BeforeForm, fuels: Vec<FuelForm>, clicked: bool) -> What {
    What::Fill(FillEntry { before, fuels, clicked })
}

pub(crate) fn level(text: &str) -> LevelForm {
    LevelForm { level: Entry::metric(text), ..LevelForm::default() }
}

/// Level and share stated, the level to half a litre.
pub(crate) fn stated(level: &str, share: &str) -> What {
    What::Correction(ContentsForm {
        level: LevelForm { error: Entry::metric("0.5"), ..self::level(level) },
        share: share.into(),
        octane: Entry::metric("95"),
        ..ContentsForm::default()
    })
}

pub(crate) fn drive(distance: &str) -> What {
    What::Drive(Entry::metric(distance))
}

pub(crate) fn sensor(reading: &str) -> What {
    What::Sensor(SensorForm { reading: reading.into(), ..SensorForm::default() })
}

pub(crate) fn history(document: &Document) -> History {
    History::of(&LogReading::of(&document.here, &printer(document)))
}

/// What is in the tank after the last entry.
pub(crate) fn now(document: &Document) -> Estimate {
    history(document).estimate().expect("an estimate")
}

pub(crate) fn write(file: &mut CarFile, events: impl IntoIterator<Item = Event>) {
    for event in events {
        file.log.write(event);
    }
}

pub(crate) fn litres(volume: Volume) -> f64 {
    volume.get::<liter>()
}

#[track_caller]
pub(crate) fn near(value: f64, expected: f64, tolerance: f64) {
    assert!(
        (value - expected).abs() <= tolerance,
        "{value} is not within {tolerance} of {expected}"
    );
}
