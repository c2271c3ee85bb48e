//! What is said of results: short sentences, in the person's units.

pub mod deeds;
mod demo;
pub mod extras;
pub mod fields;
pub mod files;
pub mod fill;
pub mod hardware;
pub mod methods;
pub mod shared;
pub mod sources;
pub mod tank;
pub mod trip;
pub mod units;

use crate::calibration::{Calibration, Judgement, Reason, Verdict};
use crate::document::{CarFile, Exchanged};
use crate::quantity::notation::{Printer, print_number_short};

/// The word for a verdict.
pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Usable => "usable",
        Verdict::ConfirmFirst => "confirm first",
        Verdict::DoNotSelect => "do not select",
    }
}

/// Why a calibration gets its verdict.
pub fn reasons(judgement: &Judgement, calibration: &Calibration, printer: &Printer) -> String {
    if judgement.reasons.is_empty() {
        let octane = if calibration.ron_min.is_some() { ", octane included" } else { "" };
        return format!(
            "The whole band lies inside {}{octane}.",
            printer.window(calibration.low, calibration.high)
        );
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
        Reason::TooWeak => format!("All of the band is below its window, which begins at {low}."),
        Reason::TooStrong => format!("All of the band is above its window, which ends at {high}."),
        Reason::MaybeTooWeak { expected_outside: false } => {
            format!("The low end of the band is below its window, which begins at {low}: measure.")
        }
        Reason::MaybeTooWeak { expected_outside: true } => format!(
            "The blend is likely below its window, which begins at {low}: only if a measurement says otherwise."
        ),
        Reason::MaybeTooStrong { expected_outside: false } => {
            format!("The high end of the band is above its window, which ends at {high}: measure.")
        }
        Reason::MaybeTooStrong { expected_outside: true } => format!(
            "The blend is likely above its window, which ends at {high}: only if a measurement says otherwise."
        ),
        Reason::OctaneShort { at_least } => {
            format!("It needs RON {needed}; only {} can be counted on.", octane(at_least))
        }
        Reason::MaybeOctaneShort { at_least } => format!(
            "It needs RON {needed}; in the worst case only {} can be counted on.",
            octane(at_least)
        ),
        Reason::OctaneUnknown => {
            format!(
                "It needs RON {needed}, and the octane of all that is in the tank is not known."
            )
        }
        Reason::FluidAbsent => "It counts on injection fluid, and there is none.".into(),
        Reason::FluidUnchecked => {
            "It counts on injection fluid: check the level and that it flows.".into()
        }
    }
}

/// What lambda does when the calibration meters fuel open loop.
pub fn lambda(judgement: &Judgement, printer: &Printer) -> Option<String> {
    let band = judgement.open_loop_lambda?;
    let off = |ratio: f64| {
        let percent = (ratio - 1.0) * 100.0;
        let direction = if percent > 0.0 { "leaner" } else { "richer" };
        format!("{}\u{202f}% {direction}", printer.at_most(percent.abs(), 1))
    };
    // Half a per cent is less than any lambda sensor tells.
    let is_off = |ratio: f64| (ratio - 1.0).abs() >= 0.005;
    let (richest, leanest) = (band.low(), band.high());
    let how_far = match (is_off(richest), is_off(leanest)) {
        (false, false) => return None,
        (true, true) if richest < 1.0 && leanest > 1.0 => {
            format!("from {} to {}", off(richest), off(leanest))
        }
        (true, true) if leanest < 1.0 => format!("up to {}", off(richest)),
        (true, false) => format!("up to {}", off(richest)),
        _ => format!("up to {}", off(leanest)),
    };
    Some(format!("Open loop, {how_far} than it was written for."))
}

/// A price in both currencies, and the rate: `12.90 DKK/L is 1.73 €/L: 1 DKK is 0.134 €,
/// typed on 2026-05-03.`
pub fn exchanged(it: &Exchanged, printer: &Printer) -> String {
    let factor = print_number_short(it.rate.factor, 6, printer.style);
    format!(
        "{} is {}: 1 {} is {factor}\u{202f}{}, typed on {}.",
        printer.price_in(it.price, it.rate),
        printer.price(it.price),
        it.rate.currency,
        printer.currency,
        it.typed_on
    )
}

/// What a car is called.
pub fn car(car: &CarFile) -> String {
    name_or_unnamed(&car.car.name)
}

/// The same from its name.
pub fn name_or_unnamed(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { "Unnamed car".into() } else { name.into() }
}

/// “1 entry”, “2 entries”
pub fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}
