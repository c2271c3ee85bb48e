//! What is said of results: short sentences, in the person's units.

pub mod deeds;
mod demo;
pub mod extras;
pub mod fields;
pub mod files;
pub mod fill;
pub mod hardware;
pub mod methods;
pub mod problems;
pub mod shared;
pub mod sources;
pub mod tank;
pub mod trip;
pub mod units;

use crate::calibration::{Calibration, Judgement, Reason, Verdict};
use crate::document::{CarFile, Exchanged};
use crate::message::keys::{shared as shared_keys, verdicts as keys};
use crate::quantity::notation::{Printer, print_number_short};

/// The word for a verdict.
pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Usable => keys::USABLE,
        Verdict::ConfirmFirst => keys::CONFIRM_FIRST,
        Verdict::DoNotSelect => keys::DO_NOT_SELECT,
    }
    .say()
}

/// Why a calibration gets its verdict.
pub fn reasons(judgement: &Judgement, calibration: &Calibration, printer: &Printer) -> String {
    if judgement.reasons.is_empty() {
        let window = printer.window(calibration.low, calibration.high);
        return match calibration.ron_min {
            Some(_) => keys::InsideWithOctane { window }.say(),
            None => keys::Inside { window }.say(),
        };
    }
    let sentences: Vec<String> =
        judgement.reasons.iter().map(|reason| sentence(*reason, calibration, printer)).collect();
    sentences.join(" ")
}

fn sentence(reason: Reason, calibration: &Calibration, printer: &Printer) -> String {
    let low = printer.edge(calibration.low);
    let high = printer.edge(calibration.high);
    let octane = |ron: f64| printer.at_least(ron, 1);
    // As finely as it was typed, since a figure is told to be below it.
    let needed = calibration
        .ron_min
        .map_or_else(String::new, |ron| print_number_short(ron, 3, printer.style));
    match reason {
        Reason::TooWeak => keys::TooWeak { low }.say(),
        Reason::TooStrong => keys::TooStrong { high }.say(),
        Reason::MaybeTooWeak { expected_outside: false } => keys::MaybeTooWeak { low }.say(),
        Reason::MaybeTooWeak { expected_outside: true } => keys::LikelyTooWeak { low }.say(),
        Reason::MaybeTooStrong { expected_outside: false } => keys::MaybeTooStrong { high }.say(),
        Reason::MaybeTooStrong { expected_outside: true } => keys::LikelyTooStrong { high }.say(),
        Reason::OctaneShort { at_least } => {
            keys::OctaneShort { needed, octane: octane(at_least) }.say()
        }
        Reason::MaybeOctaneShort { at_least } => {
            keys::MaybeOctaneShort { needed, octane: octane(at_least) }.say()
        }
        Reason::OctaneUnknown => keys::OctaneUnknown { needed }.say(),
        Reason::FluidAbsent => keys::FLUID_ABSENT.say().to_owned(),
        Reason::FluidUnchecked => keys::FLUID_UNCHECKED.say().to_owned(),
    }
}

/// What lambda does when the calibration meters fuel open loop.
pub fn lambda(judgement: &Judgement, printer: &Printer) -> Option<String> {
    let band = judgement.open_loop_lambda?;
    let off = |ratio: f64| {
        let percent = (ratio - 1.0) * 100.0;
        let size = printer.at_most(percent.abs(), 1);
        if percent > 0.0 {
            keys::Leaner { percent: size }.say()
        } else {
            keys::Richer { percent: size }.say()
        }
    };
    // Half a per cent is less than any lambda sensor tells.
    let is_off = |ratio: f64| (ratio - 1.0).abs() >= 0.005;
    let (richest, leanest) = (band.low(), band.high());
    Some(match (is_off(richest), is_off(leanest)) {
        (false, false) => return None,
        (true, true) if richest < 1.0 && leanest > 1.0 => {
            keys::OpenLoopBetween { richest: off(richest), leanest: off(leanest) }.say()
        }
        (true, true) if leanest < 1.0 => keys::OpenLoopUpTo { off: off(richest) }.say(),
        (true, false) => keys::OpenLoopUpTo { off: off(richest) }.say(),
        _ => keys::OpenLoopUpTo { off: off(leanest) }.say(),
    })
}

/// A price in both currencies, and the rate: `12.90 DKK/L is 1.73 €/L: 1 DKK is 0.134 €,
/// typed on 2026-05-03.`
pub fn exchanged(it: &Exchanged, printer: &Printer) -> String {
    let factor = print_number_short(it.rate.factor, 6, printer.style);
    keys::Exchanged {
        theirs: printer.price_in(it.price, it.rate),
        ours: printer.price(it.price),
        currency: it.rate.currency.to_string(),
        rate: format!("{factor}\u{202f}{}", printer.currency),
        day: &it.typed_on,
    }
    .say()
}

/// What a car is called.
pub fn car(car: &CarFile) -> String {
    name_or_unnamed(&car.car.name)
}

/// The same from its name.
pub fn name_or_unnamed(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { keys::UNNAMED_CAR.say().into() } else { name.into() }
}

/// “A, B and C”
pub(crate) fn and(parts: &[String]) -> String {
    listed(parts, |others, last| shared_keys::And { others, last }.say())
}

/// “A, B or C”
pub(crate) fn or(parts: &[String]) -> String {
    listed(parts, |others, last| shared_keys::Or { others, last }.say())
}

fn listed(parts: &[String], join: impl FnOnce(String, &String) -> String) -> String {
    match parts.split_last() {
        None => String::new(),
        Some((last, [])) => last.clone(),
        Some((last, others)) => join(others.join(", "), last),
    }
}
