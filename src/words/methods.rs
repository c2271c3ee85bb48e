//! What is said of methods: how sure a source is, limits, cautions.

use crate::fuel::Grade;
use crate::methods::SourceStanding;
use crate::quantity::Share;
use crate::quantity::notation::Printer;
use crate::source::{Confidence, Source};

use super::extras::beside_ethanol;

/// Decimals beyond which a stated value is not written out.
const MOST_DECIMALS: usize = 6;

/// How far a source can be relied on.
pub fn standing(source: &Source) -> String {
    let kind = match SourceStanding::of(source) {
        SourceStanding::Published => "published",
        SourceStanding::Defined => "by definition",
        SourceStanding::Derived => "follows by arithmetic",
        SourceStanding::CommonPractice => "common practice",
        SourceStanding::FromMemory => "from memory",
    };
    let how = match (SourceStanding::of(source), source.confidence) {
        (SourceStanding::Published, Confidence::Checked) => ", read or computed there",
        (_, Confidence::Secondary) => ", read in a text that reports it",
        (SourceStanding::Published, Confidence::Weak) => ", not read there: use with care",
        _ => "",
    };
    format!("{kind}{how}")
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
        format!("{expected}\u{202f}%")
    } else {
        format!("{low} to {high}\u{202f}%, expected {expected}\u{202f}%")
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
    if known.is_empty() { "not stated".into() } else { known.join(", ") }
}

/// What no figure here covers.
pub const LIMITS: [&str; 9] = [
    "Volumes are taken as additive. Petrol and ethanol expand by a few tenths of a per cent on mixing, less than a gauge can tell.",
    "Volumes are meant at 15 °C, as standards state them; the tank's own temperature is not asked for.",
    "Water, methanol and ethers count where they are given. The petrol itself is a middling one: a real one differs by a few per cent in density and heating value, and more so by season.",
    "Octane by moles is a floor, worked out from the octane of the finished petrol. How an engine answers to octane, and to the cooling by ethanol, is not in it.",
    "E85 is no fixed fuel: by season and country it holds from half to 85 % ethanol, and after a change of season the pump may still hold the other.",
    "How a fuel starts in the cold, how it ages, and what water does in it are not modelled.",
    "The bands of the tank were tuned and tested in simulation, not in the field. They are only as good as what is entered as possible.",
    "Parts are reckoned as steady: pulses in rail and lines, hot fuel, wear, a tired pump and a clogged filter are not.",
    "A trip knows no road, no traffic and no pump but those that were typed, and takes consumption to follow distance and energy alone. Where a fuel on it holds water, methanol or ethers, all of it is planned with the energy of the fuel that lacks most.",
];

/// What has to be said of fuel and calibrations.
pub const FUEL_CAUTIONS: [&str; 6] = [
    "It estimates; it does not certify. The author of your calibration has the last word.",
    "A lean mixture under boost destroys an engine. Select a calibration on what was measured, not on what was hoped.",
    "Fuel vapour burns, and static ignites it: no flame, no spark, earth the can, and leave the pump's nozzle on metal.",
    "Ethanol above 10 % belongs only in a fuel system whose every part is rated for it.",
    "Draining a tank is work for somebody equipped for it.",
    "Local law on fuel, duty, emissions and road approval comes first.",
];
