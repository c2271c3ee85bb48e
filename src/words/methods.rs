//! What is said of methods: how sure a source is, limits, cautions.

use crate::fuel::Grade;
use crate::message::Message;
use crate::message::keys::methods as keys;
use crate::methods::SourceStanding;
use crate::quantity::Share;
use crate::quantity::notation::Printer;
use crate::source::{Confidence, Source};

use super::extras::beside_ethanol;

/// Decimals beyond which a stated value is not written out.
const MOST_DECIMALS: usize = 6;

/// How far a source can be relied on.
pub fn standing(source: &Source) -> String {
    let how = match (SourceStanding::of(source), source.confidence) {
        (SourceStanding::Published, Confidence::Checked) => keys::PUBLISHED_CHECKED,
        (SourceStanding::Published, Confidence::Weak) => keys::PUBLISHED_WEAK,
        (SourceStanding::Published, Confidence::Secondary) => keys::PUBLISHED,
        (SourceStanding::Defined, _) => keys::BY_DEFINITION,
        (SourceStanding::Derived, _) => keys::BY_ARITHMETIC,
        (SourceStanding::CommonPractice, _) => keys::COMMON_PRACTICE,
        (SourceStanding::FromMemory, _) => keys::FROM_MEMORY,
    };
    match source.confidence {
        Confidence::Secondary => keys::Reported { how }.say(),
        _ => how.say().to_owned(),
    }
}

/// A value with the decimals that it is stated with.
pub fn as_stated(value: f64, unit: &str, printer: &Printer) -> String {
    let text = format!("{value}");
    let decimals = text.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    let number = printer.number(value, decimals.min(MOST_DECIMALS));
    if unit.is_empty() { number } else { format!("{number}\u{202f}{unit}") }
}

/// “70 to 85 %, expected 77 %; water 0.2 % (0 to 0.4 %)”
pub fn may_hold(grade: &Grade, printer: &Printer) -> String {
    let ethanol = grade.ethanol();
    let [low, expected, high] = printer.number_ends(ethanol.map(Share::percent), 1);
    let ethanol = if low == high {
        keys::Exactly { expected }.say()
    } else {
        keys::Between { low, high, expected }.say()
    };
    let beside = beside_ethanol(&grade.extras(), printer);
    beside.map_or(ethanol.clone(), |beside| format!("{ethanol}; {beside}"))
}

/// “RON 95, MON 85”
pub fn least_octane(grade: &Grade, printer: &Printer) -> String {
    let each = [("RON", grade.ron_min), ("MON", grade.mon_min), ("AKI", grade.aki_min)];
    let known: Vec<String> = each
        .into_iter()
        .filter_map(|(name, least)| Some(format!("{name} {}", printer.number(least?, 0))))
        .collect();
    if known.is_empty() { keys::OCTANE_NOT_STATED.say().into() } else { known.join(", ") }
}

/// What no figure here covers.
pub const LIMITS: [Message; 9] = [
    keys::LIMIT_VOLUMES_ADD,
    keys::LIMIT_TEMPERATURE,
    keys::LIMIT_PETROL,
    keys::LIMIT_OCTANE,
    keys::LIMIT_E85,
    keys::LIMIT_FUEL,
    keys::LIMIT_TANK,
    keys::LIMIT_PARTS,
    keys::LIMIT_TRIP,
];

/// What has to be said of fuel and calibrations.
pub const FUEL_CAUTIONS: [Message; 6] = [
    keys::CAUTION_ESTIMATES,
    keys::CAUTION_LEAN,
    keys::CAUTION_VAPOUR,
    keys::CAUTION_ABOVE_TEN,
    keys::CAUTION_DRAINING,
    keys::CAUTION_LOCAL_LAW,
];
