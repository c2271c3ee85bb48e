//! What is said of the tank between fills.

use crate::answers::tank::{
    Clearing, Need, Oddity, OldBlend, Remedy, Replayed, TankAnswer, TankVerdict,
};
use crate::document::{BeforeForm, Event, FillEntry, FuelForm, What};
use crate::quantity::notation::{Entry, Measure, OctaneScale, Printer, parse_number};
use crate::quantity::{Band, Length, Share, Volume};
use crate::tank::{Doubt, Estimate, ShareReadingKind};

use super::extras::beside_ethanol;

/// The blend: `about E31`, and between what.
pub fn blend(share: Band<Share>, printer: &Printer) -> (String, String) {
    let [low, expected, high] = printer.grade_ends(share);
    let between = if low == high { String::new() } else { format!("between {low} and {high}") };
    (expected, between)
}

/// How much there is, and of what octane.
pub fn level_and_octane(estimate: &Estimate, printer: &Printer) -> String {
    let level = estimate.level;
    let at_least = |value| printer.at_least(value, 1);
    let octane = match (estimate.ron, estimate.mon, printer.units.octane()) {
        (Some(ron), Some(mon), OctaneScale::Aki) => {
            format!("at least AKI {}", at_least(f64::midpoint(ron.low(), mon.low())))
        }
        (Some(ron), ..) => format!("at least RON {}", at_least(ron.low())),
        (None, ..) => "octane not known".to_owned(),
    };
    let beside = beside_ethanol(&estimate.extras, printer);
    let beside = beside.map_or_else(String::new, |it| format!("; {it}"));
    format!(
        "{}, between {}; {octane}{beside}",
        printer.volume(level.expected()),
        printer.volume_band(level).replacen(" to ", " and ", 1)
    )
}

/// The estimate in one sentence.
pub fn estimate(estimate: &Estimate, printer: &Printer) -> String {
    let (blend, between) = blend(estimate.share, printer);
    let comma = if between.is_empty() { "" } else { ", " };
    format!("About {blend}{comma}{between}; {}.", level_and_octane(estimate, printer))
}

/// What lies beyond the band, but cannot be ruled out.
pub fn possible(estimate: &Estimate, printer: &Printer) -> String {
    let (share, level) = (estimate.possible_share, estimate.possible_level);
    format!(
        "Possible at all: {}, {}. The likely range holds in 95 of 100 cases in simulation, not in road tests.",
        printer.grade_band(share),
        printer.volume_band(level)
    )
}

/// The instrument that the remedies speak of.
fn instrument(answer: &TankAnswer) -> &'static str {
    match answer.reading {
        ShareReadingKind::Sensor => "sensor reading",
        ShareReadingKind::TubeTest => "tube test",
    }
}

/// What would make a calibration usable.
pub fn remedies(verdict: &TankVerdict, answer: &TankAnswer, printer: &Printer) -> String {
    let mut sentences = Vec::new();
    let mut pours = Vec::new();
    for remedy in &verdict.remedies {
        match remedy {
            Remedy::Pour { fuel, volume } => {
                pours.push(format!("{} of {}", printer.volume(*volume), answer.fuels[*fuel]));
            }
            other => sentences.push(way(other, answer, printer)),
        }
    }
    if !pours.is_empty() {
        sentences.push(format!("{} would make it usable.", pours.join(" or ")));
    }
    let also = if sentences.is_empty() { "" } else { "Also: " };
    sentences.extend(verdict.needs.iter().map(|it| format!("{also}{}", need(*it))));
    sentences.join(" ")
}

/// One way to make a calibration usable.
fn way(remedy: &Remedy, answer: &TankAnswer, printer: &Printer) -> String {
    let name = |fuel: usize| &answer.fuels[fuel];
    match remedy {
        Remedy::Reading { from, to } => {
            let to_text = printer.percent(*to);
            let shown = if from == to {
                to_text
            } else {
                format!("{}–{to_text}", printer.number(from.percent(), 0))
            };
            format!("A {} that shows {shown} would clear it.", instrument(answer))
        }
        Remedy::Pour { fuel, volume } => {
            format!("{} of {} would make it usable.", printer.volume(*volume), name(*fuel))
        }
        Remedy::DriveDown { level, fuel, volume } => format!(
            "Drive down to {}, then {} of {} would make it usable.",
            printer.volume(*level),
            printer.volume(*volume),
            name(*fuel)
        ),
        Remedy::Drain { fuel: Some(fuel) } => {
            format!(
                "Have the tank drained by a workshop: filled with {} it is usable.",
                name(*fuel)
            )
        }
        Remedy::Drain { fuel: None } => {
            "Have the tank drained by a workshop, then plan a blend for it under Fill.".to_owned()
        }
        Remedy::OtherFuel => {
            "None of the fuels under Fill makes it usable: it needs another fuel.".to_owned()
        }
    }
}

/// Something to look up or put right.
fn need(need: Need) -> &'static str {
    match need {
        Need::Octane => {
            "Give the octane of what is in the tank: change the entry that lacks it, or set the contents by hand."
        }
        Need::CheckFluid => "Check the injection fluid and say so under Car.",
        Need::FillFluid => "Fill the injection fluid, check that it flows, and say so under Car.",
    }
}

/// What it means that no calibration may be selected.
pub fn none_usable(answer: &TankAnswer) -> Option<String> {
    let none = answer.none_usable?;
    let name = |at: usize| &answer.verdicts[at].calibration.name;
    let first = none.clears.map_or_else(String::new, |(at, clearing)| {
        let name = name(at);
        match clearing {
            Clearing::Reading => {
                format!("Measure first: a {} can clear {name}. ", instrument(answer))
            }
            Clearing::Need(Need::Octane) => {
                format!("First give the octane of what is in the tank: that can clear {name}. ")
            }
            Clearing::Need(Need::CheckFluid) => {
                format!("First check the injection fluid: that can clear {name}. ")
            }
            Clearing::Need(Need::FillFluid) => {
                format!("First fill the injection fluid: that can clear {name}. ")
            }
        }
    });
    Some(format!(
        "No calibration may be selected on what is known. {first}Until one is usable: no full load. Drive gently on {}, which is nearest to this blend, only as its author allows. If nothing below helps, have the blend measured or the tank drained by a workshop.",
        name(none.nearest)
    ))
}

/// How far the old blend still feeds the engine, where it does.
pub fn old_blend(old: OldBlend, printer: &Printer) -> Option<String> {
    (old.left > Length::default()).then(|| {
        format!(
            "The old blend still feeds the engine: about {} from the fill on, {} of it left by the distances in the log. A sensor shows the old blend until then.",
            printer.distance(old.reach),
            printer.distance(old.left)
        )
    })
}

/// What does not fit, as a question.
pub fn doubt(doubt: &Doubt, printer: &Printer) -> String {
    match doubt {
        Doubt::UnloggedFill { volume } => format!(
            "The tank held about {} more than the log allows. Was there a fill that is not in the log? Then add it; if the reading was wrong, correct it. Until you decide, both stay possible.",
            printer.volume(*volume)
        ),
        Doubt::UnloggedUse { volume } => format!(
            "The tank held about {} less than the log allows. Was the car driven, or fuel drained, without an entry? Add it, or correct the reading.",
            printer.volume(*volume)
        ),
        Doubt::ShareContradicts { expected, read } => format!(
            "{} was read, but the log allows {}. Was there a fill that is not in the log, or had the new fuel not reached the sensor? Correct one of them. Until you decide, both stay possible.",
            printer.grade(*read),
            printer.grade_band(*expected)
        ),
        Doubt::Overfull { volume } => format!(
            "About {} more went in than there was room for. Correct the litres, the level before, or the tank's size under Car.",
            printer.volume(*volume)
        ),
    }
}

/// What is odd about an entry before it is kept; `date` writes a moment, in minutes since
/// 1970 as its clock showed them, as this device does.
pub fn oddity(oddity: &Oddity, date: impl Fn(i64) -> String, printer: &Printer) -> String {
    match oddity {
        Oddity::Distance { driven, farthest } => format!(
            "{} is further than the fuel in the tank can have taken the car: {} at most. Is a fill missing from the log?",
            printer.distance(*driven),
            printer.distance(*farthest)
        ),
        Oddity::Burned { counted, most } => format!(
            "That makes {} burned, more than the tank can have held: {} at most. Is a fill missing from the log?",
            printer.volume(*counted),
            printer.volume(*most)
        ),
        Oddity::Future { time } => {
            format!("{} has not come yet.", date(time.local_minutes()))
        }
        Oddity::Drained { drained, most } => format!(
            "{} is more than the tank can have held: {} at most. Is a fill missing from the log?",
            printer.volume(*drained),
            printer.volume(*most)
        ),
        Oddity::Overfull { volume } => format!(
            "About {} more went in than there was room for. Is the level before it right, and the size of the tank?",
            printer.volume(*volume)
        ),
    }
}

/// The name of an entry's kind.
pub fn kind(what: &What) -> &'static str {
    match what {
        What::Fill(_) => "Fill",
        What::Level(_) => "Level",
        What::Sensor(_) => "Sensor reading",
        What::TubeTest(_) => "Tube test",
        What::Drive(_) => "Distance driven",
        What::Trip(_) => "Trip computer",
        What::Drain(_) => "Drained",
        What::Correction(_) => "Set contents by hand",
        What::Note => "Note",
    }
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
        What::TubeTest(form) => format!("boundary at {}", with_unit(&form.boundary, "mL")),
        What::Drive(entry) => distance(entry),
        What::Trip(form) => {
            let unit = printer.units.consumption().symbol();
            let mean = with_unit(&printer.told(&form.consumption, Measure::Consumption), unit);
            format!("{} at {mean}", distance(&form.distance))
        }
        What::Drain(entry) if entry.is_blank() => "all of it".into(),
        What::Drain(entry) => volume(entry),
        What::Correction(form) => {
            let level = level(&form.level.level, printer);
            format!("{level}, ethanol {}", with_unit(&form.share, "%"))
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
        parts.push("to the click".into());
    }
    if let BeforeForm::Level(form) = &fill.before {
        parts.push(format!("onto {}", level(&form.level, printer)));
    }
    parts.join(", ")
}

/// What an entry made of the estimate, in short.
pub fn then(replayed: &Replayed, printer: &Printer) -> Option<String> {
    let estimate = replayed.after()?;
    let (blend, between) = blend(estimate.share, printer);
    let level: Volume = estimate.level.expected();
    Some(format!("then {blend} {between}, {}", printer.volume(level)))
}
