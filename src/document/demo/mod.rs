//! The invented example that a first start offers. Every figure of it is made
//! up: an estate car with a 1.9-litre turbo four, at home on the Swedish west
//! coast.

mod hardware;
mod trip;

use super::car::{CalibrationForm, Car};
use super::contents::{ContentsForm, LevelForm};
use super::event::{BeforeForm, Event, FillEntry, SensorForm, TubeTestForm, What};
use super::file::Document;
use super::fill::StartForm;
use super::fuel::FuelForm;
use super::hardware::HardwareForm;
use super::id::Id;
use super::log::Log;
use super::moment::Moment;
use super::trip::TripForm;
use crate::calibration::FluidState;
use crate::message::Message;
use crate::message::keys::demo as words;
use crate::quantity::notation::Entry;
use crate::tank::LevelReading;

impl Document {
    /// The invented example, whose names are said by `say`.
    pub fn invented(say: fn(Message) -> &'static str) -> Self {
        let mut document = Self::empty(Id::of_content("the invented example"));
        document.here.demo = true;
        document.settings.currency = "kr".into();
        document.here.car = Car {
            name: say(words::CAR).into(),
            capacity: Entry::metric("58"),
            reserve: Entry::metric("7"),
            consumption: Entry::metric("8.2"),
            reference: "E10".into(),
            fluid: FluidState::Unknown,
            line: Entry::metric("0.6"),
            ..Car::default()
        };
        let mut calibration =
            |name: Message, window: (&str, &str), written_for: &str, ron: &str, fluid| {
                let id = document.here.next_id();
                document.here.car.calibrations.push(CalibrationForm {
                    id,
                    name: say(name).into(),
                    low: window.0.into(),
                    high: window.1.into(),
                    written_for: written_for.into(),
                    ron_min: Entry::metric(ron),
                    needs_fluid: fluid,
                });
                id
            };
        let petrol = calibration(words::ON_PETROL, ("E0", "E12"), "E10", "95", false);
        let mid_blend = calibration(words::ON_MID_BLEND, ("E24", "E40"), "E30", "98", false);
        calibration(words::ON_MID_BLEND_WITH_FLUID, ("E26", "E40"), "E32", "98", true);
        let fuels = [
            ("en15293-e85-summer", "E85", "82", "70-85", ("104", "88"), "15.94"),
            ("en228-95-e10", "95 E10", "9.5", "5-10", ("95", "85"), "17.29"),
        ];
        for (grade, name, share, range, (ron, mon), price) in fuels {
            let id = document.here.next_id();
            document.here.fill.offers.push(FuelForm {
                id,
                grade: Some(grade.into()),
                name: name.into(),
                share: share.into(),
                share_range: range.into(),
                octane: Entry::metric(ron),
                mon: mon.into(),
                price: Entry::metric(price),
                ..FuelForm::default()
            });
        }
        document.here.fill.start = StartForm::Log;
        document.here.fill.aim_share = "E30".into();
        document.here.log = log(&document.here.fill.offers, say);
        document.here.hardware = HardwareForm::invented(&mut document.here, petrol, mid_blend, say);
        document.here.route = TripForm::invented(&mut document.here, mid_blend, say);
        document
    }
}

/// Five weeks of the invented car: from petrol to a mid blend at home, diluted on
/// the way south, where there was no E85.
fn log(offers: &[FuelForm], say: fn(Message) -> &'static str) -> Log {
    const MINUTES_AHEAD: i32 = 120;
    let poured = |fuel: &FuelForm, volume: &str| FuelForm {
        price: Entry::default(),
        poured: Entry::metric(volume),
        ..fuel.clone()
    };
    let abroad = FuelForm {
        id: 1,
        name: "98 E5".into(),
        share: "4".into(),
        share_range: "0-5".into(),
        octane: Entry::metric("98"),
        mon: "87".into(),
        ..FuelForm::default()
    };
    let gauge = |level: &str| LevelForm { level: Entry::metric(level), ..LevelForm::default() };
    let fill = |fuels, clicked| {
        What::Fill(FillEntry { before: BeforeForm::Level(gauge("1/4")), fuels, clicked })
    };
    let drive = |distance: &str| What::Drive(Entry::metric(distance));
    let at_home = [("21", 0), ("22.4", 1)].map(|(volume, fuel)| poured(&offers[fuel], volume));
    let entries = [
        (
            "2026-04-18T09:30",
            say(words::HOME),
            What::Correction(ContentsForm {
                level: LevelForm { reading: LevelReading::Brimmed, ..gauge("full") },
                share: "9".into(),
                share_range: "5-10".into(),
                octane: Entry::metric("95"),
                mon: "85".into(),
                ..ContentsForm::default()
            }),
        ),
        ("2026-05-06T18:05", "", drive("480")),
        ("2026-05-08T17:40", say(words::HOME), fill(at_home.to_vec(), true)),
        (
            "2026-05-10T11:20",
            "",
            What::Sensor(SensorForm { reading: "84 Hz".into(), ..SensorForm::default() }),
        ),
        ("2026-05-15T19:10", say(words::JUTLAND), drive("445")),
        ("2026-05-15T19:25", say(words::JUTLAND), fill(vec![poured(&abroad, "27")], false)),
        (
            "2026-05-17T08:50",
            say(words::HARZ),
            What::TubeTest(TubeTestForm { boundary: "57.5".into(), ..TubeTestForm::default() }),
        ),
        ("2026-05-20T16:30", "", drive("325")),
        ("2026-05-22T07:45", say(words::HOME), What::Level(gauge("1/4"))),
    ];
    let event = |(time, place, what): (&str, &str, What)| {
        Some(Event {
            id: Id::of_content(time),
            revision: 1,
            sequence: 0,
            removed: false,
            time: Moment::new(time, MINUTES_AHEAD).ok()?,
            place: place.into(),
            note: String::new(),
            what,
        })
    };
    entries.into_iter().filter_map(event).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::answers::tank::{History, LogReading};
    use crate::quantity::notation::DecimalMark;

    #[test]
    fn the_example_survives_storage_unchanged() {
        let demo = Document::demo();
        let text = demo.to_json().unwrap();
        assert_eq!(Document::from_json(&text).unwrap(), demo);
    }

    #[test]
    fn every_entry_of_the_example_is_used_and_fits() {
        let demo = Document::demo();
        let printer = demo.settings.printer(DecimalMark::Comma);
        let history = History::of(&LogReading::of(&demo.here, &printer));
        assert_eq!(history.replays.len(), 9);
        for replayed in history.replays.iter() {
            assert_eq!((&replayed.unused, &replayed.doubts), (&None, &vec![]), "{replayed:?}");
        }
        assert_eq!(history.replays.last().unwrap().time.local(), "2026-05-22T07:45");
    }
}
