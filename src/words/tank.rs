//! What is said of the tank between fills.

use crate::answers::tank::{
    Clearing, Need, Oddity, OldBlend, Remedy, Replayed, TankAnswer, TankVerdict,
};
use crate::document::{BeforeForm, Event, FillEntry, FuelForm, What};
use crate::message::Message;
use crate::message::keys::{notation, tank_said as keys};
use crate::quantity::notation::{Entry, Measure, OctaneScale, Printer, parse_number};
use crate::quantity::{Band, Length, Share};
use crate::tank::{Doubt, Estimate, ShareReadingKind};

use super::extras::beside_ethanol;
use super::or;

/// The blend: `about E31`, and between what.
pub fn blend(share: Band<Share>, printer: &Printer) -> (String, String) {
    let [low, expected, high] = printer.grade_ends(share);
    let between = if low == high { String::new() } else { notation::Between { low, high }.say() };
    (expected, between)
}

/// How much there is, and of what octane.
pub fn level_and_octane(estimate: &Estimate, printer: &Printer) -> String {
    let level = estimate.level;
    let at_least = |value| printer.at_least(value, 1);
    let octane = match (estimate.ron, estimate.mon, printer.units.octane()) {
        (Some(ron), Some(mon), OctaneScale::Aki) => {
            keys::AtLeastAki { octane: at_least(f64::midpoint(ron.low(), mon.low())) }.say()
        }
        (Some(ron), ..) => keys::AtLeastRon { octane: at_least(ron.low()) }.say(),
        (None, ..) => keys::OCTANE_UNKNOWN.say().to_owned(),
    };
    let expected = printer.volume(level.expected());
    let unit = printer.units.volume();
    let [low, ..] = printer.number_ends(level.map(|it| unit.value_of(it)), 1);
    let [_, _, high] = printer.volume_ends(level);
    match beside_ethanol(&estimate.extras, printer) {
        Some(extras) => keys::LevelWith { expected, low, high, octane, extras }.say(),
        None => keys::Level { expected, low, high, octane }.say(),
    }
}

/// The estimate in one sentence.
pub fn estimate(estimate: &Estimate, printer: &Printer) -> String {
    let (blend, between) = blend(estimate.share, printer);
    let level = level_and_octane(estimate, printer);
    if between.is_empty() {
        keys::About { blend, level }.say()
    } else {
        keys::AboutBetween { blend, between, level }.say()
    }
}

/// What lies beyond the band, but cannot be ruled out.
pub fn possible(estimate: &Estimate, printer: &Printer) -> String {
    keys::Possible {
        shares: printer.grade_band(estimate.possible_share),
        levels: printer.volume_band(estimate.possible_level),
    }
    .say()
}

/// What would make a calibration usable.
pub fn remedies(verdict: &TankVerdict, answer: &TankAnswer, printer: &Printer) -> String {
    let mut sentences = Vec::new();
    let mut pours = Vec::new();
    for remedy in &verdict.remedies {
        match remedy {
            Remedy::Pour { fuel, volume } => {
                let (volume, fuel) = (printer.volume(*volume), &answer.fuels[*fuel]);
                pours.push(keys::Pour { volume, fuel }.say());
            }
            other => sentences.push(way(other, answer, printer)),
        }
    }
    if !pours.is_empty() {
        sentences.push(keys::Pours { pours: or(&pours) }.say());
    }
    let alone = sentences.is_empty();
    sentences.extend(verdict.needs.iter().map(|it| {
        let need = need(*it);
        if alone { need.say().to_owned() } else { keys::Also { need }.say() }
    }));
    sentences.join(" ")
}

/// One way to make a calibration usable.
fn way(remedy: &Remedy, answer: &TankAnswer, printer: &Printer) -> String {
    let name = |fuel: usize| &answer.fuels[fuel];
    match remedy {
        Remedy::Reading { from, to } => {
            let to_text = printer.percent(*to);
            let share = if from == to {
                to_text
            } else {
                format!("{}–{to_text}", printer.number(from.percent(), 0))
            };
            match answer.reading {
                ShareReadingKind::Sensor => keys::SensorClears { share }.say(),
                ShareReadingKind::TubeTest => keys::TubeTestClears { share }.say(),
            }
        }
        Remedy::Pour { fuel, volume } => {
            let (volume, fuel) = (printer.volume(*volume), name(*fuel));
            keys::Pours { pours: keys::Pour { volume, fuel }.say() }.say()
        }
        Remedy::DriveDown { level, fuel, volume } => keys::DriveDown {
            level: printer.volume(*level),
            volume: printer.volume(*volume),
            fuel: name(*fuel),
        }
        .say(),
        Remedy::Drain { fuel: Some(fuel) } => keys::Drain { fuel: name(*fuel) }.say(),
        Remedy::Drain { fuel: None } => keys::DRAIN_AND_PLAN.say().to_owned(),
        Remedy::OtherFuel => keys::OTHER_FUEL.say().to_owned(),
    }
}

/// Something to look up or put right.
fn need(need: Need) -> Message {
    match need {
        Need::Octane => keys::GIVE_OCTANE,
        Need::CheckFluid => keys::CHECK_FLUID,
        Need::FillFluid => keys::FILL_FLUID,
    }
}

/// What it means that no calibration may be selected.
pub fn none_usable(answer: &TankAnswer) -> Option<String> {
    let none = answer.none_usable?;
    let name = |at: usize| &answer.verdicts[at].calibration.name;
    let first = none.clears.map(|(at, clearing)| {
        let calibration = name(at);
        match (clearing, answer.reading) {
            (Clearing::Reading, ShareReadingKind::Sensor) => {
                keys::FirstSensor { calibration }.say()
            }
            (Clearing::Reading, ShareReadingKind::TubeTest) => {
                keys::FirstTubeTest { calibration }.say()
            }
            (Clearing::Need(Need::Octane), _) => keys::FirstOctane { calibration }.say(),
            (Clearing::Need(Need::CheckFluid), _) => keys::FirstCheckFluid { calibration }.say(),
            (Clearing::Need(Need::FillFluid), _) => keys::FirstFillFluid { calibration }.say(),
        }
    });
    let until_then = keys::UntilThen { calibration: name(none.nearest) }.say();
    let sentences = [Some(keys::NONE_USABLE.say().to_owned()), first, Some(until_then)];
    Some(sentences.into_iter().flatten().collect::<Vec<_>>().join(" "))
}

/// How far the old blend still feeds the engine, where it does.
pub fn old_blend(old: OldBlend, printer: &Printer) -> Option<String> {
    (old.left > Length::default()).then(|| {
        let (distance, left) = (printer.distance(old.reach), printer.distance(old.left));
        keys::OldBlend { distance, left }.say()
    })
}

/// What does not fit, as a question.
pub fn doubt(doubt: &Doubt, printer: &Printer) -> String {
    match doubt {
        Doubt::UnloggedFill { volume } => {
            keys::UnloggedFill { volume: printer.volume(*volume) }.say()
        }
        Doubt::UnloggedUse { volume } => {
            keys::UnloggedUse { volume: printer.volume(*volume) }.say()
        }
        Doubt::ShareContradicts { expected, read } => keys::ShareContradicts {
            read: printer.grade(*read),
            expected: printer.grade_band(*expected),
        }
        .say(),
        Doubt::Overfull { volume } => keys::Overfull { volume: printer.volume(*volume) }.say(),
    }
}

/// What is odd about an entry before it is kept; `date` writes a moment, in minutes since
/// 1970 as its clock showed them, as this device does.
pub fn oddity(oddity: &Oddity, date: impl Fn(i64) -> String, printer: &Printer) -> String {
    match oddity {
        Oddity::Distance { driven, farthest } => keys::OddDistance {
            distance: printer.distance(*driven),
            most: printer.distance(*farthest),
        }
        .say(),
        Oddity::Burned { counted, most } => {
            keys::OddBurned { volume: printer.volume(*counted), most: printer.volume(*most) }.say()
        }
        Oddity::Future { time } => keys::OddFuture { time: date(time.local_minutes()) }.say(),
        Oddity::Drained { drained, most } => {
            keys::OddDrained { volume: printer.volume(*drained), most: printer.volume(*most) }.say()
        }
        Oddity::Overfull { volume } => keys::OddOverfull { volume: printer.volume(*volume) }.say(),
    }
}

/// The name of an entry's kind.
pub fn kind(what: &What) -> &'static str {
    match what {
        What::Fill(_) => keys::FILL,
        What::Level(_) => keys::KIND_LEVEL,
        What::Sensor(_) => keys::SENSOR,
        What::TubeTest(_) => keys::TUBE_TEST,
        What::Drive(_) => keys::DRIVE,
        What::Trip(_) => keys::TRIP_COMPUTER,
        What::Drain(_) => keys::DRAINED,
        What::Correction(_) => keys::CORRECTION,
        What::Note => keys::NOTE,
    }
    .say()
}

/// An entry in short.
pub fn detail(event: &Event, printer: &Printer) -> String {
    let volume =
        |entry: &Entry| with_unit(&printer.told(entry, Measure::Volume), volume_unit(printer));
    let distance = |entry: &Entry| {
        with_unit(&printer.told(entry, Measure::Distance), printer.units.distance().symbol())
    };
    match &event.what {
        What::Fill(fill) => fill_detail(fill, printer),
        What::Level(form) => level(&form.level, printer),
        What::Sensor(form) => with_unit(&form.reading, "%"),
        What::TubeTest(form) => keys::BoundaryAt { volume: with_unit(&form.boundary, "mL") }.say(),
        What::Drive(entry) => distance(entry),
        What::Trip(form) => {
            let unit = printer.units.consumption().symbol();
            let consumption = printer.told(&form.consumption, Measure::Consumption);
            let consumption = with_unit(&consumption, unit);
            keys::DistanceAt { distance: distance(&form.distance), consumption }.say()
        }
        What::Drain(entry) if entry.is_blank() => keys::ALL_OF_IT.say().into(),
        What::Drain(entry) => volume(entry),
        What::Correction(form) => {
            let level = level(&form.level.level, printer);
            keys::LevelEthanol { level, share: with_unit(&form.share, "%") }.say()
        }
        What::Note => String::new(),
    }
}

/// A level as it was typed. What may be a part of the tank stays without a unit.
pub fn level(entry: &Entry, printer: &Printer) -> String {
    let told = printer.told(entry, Measure::Level);
    if parse_number(&told, 0.0..=1.0).is_ok_and(|it| it > 0.0 && it < 1.0) {
        told
    } else {
        with_unit(&told, volume_unit(printer))
    }
}

fn volume_unit(printer: &Printer) -> &'static str {
    printer.units.volume().symbol()
}

/// A typed text with the unit it stands for, where it names none.
pub fn with_unit(text: &str, unit: &str) -> String {
    let is_number = !text.is_empty()
        && text.trim().chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',' | ' '));
    if is_number { format!("{}\u{202f}{unit}", text.trim()) } else { text.trim().to_owned() }
}

fn fill_detail(fill: &FillEntry, printer: &Printer) -> String {
    let pour = |fuel: &FuelForm| {
        let volume = printer.told(&fuel.poured, Measure::Volume);
        format!("{} {}", with_unit(&volume, volume_unit(printer)), fuel.name)
    };
    let mut parts: Vec<String> = fill.fuels.iter().map(pour).collect();
    if fill.clicked {
        parts.push(keys::TO_THE_CLICK.say().into());
    }
    if let BeforeForm::Level(form) = &fill.before {
        parts.push(keys::Onto { level: level(&form.level, printer) }.say());
    }
    parts.join(", ")
}

/// What an entry made of the estimate, in short.
pub fn then(replayed: &Replayed, printer: &Printer) -> Option<String> {
    let estimate = replayed.after()?;
    let (blend, between) = blend(estimate.share, printer);
    let level = printer.volume(estimate.level.expected());
    Some(keys::Then { blend, between, level }.say())
}
