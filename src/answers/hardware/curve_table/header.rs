//! What the header of a column says of it.

use crate::document::MeasuredAt;
use crate::message::Message;
use crate::message::keys::hardware_problems;
use crate::quantity::notation::{Unit, Units, quantities};
use crate::quantity::{AngularVelocity, GaugePressure, Power, Torque};

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Meaning {
    /// Engine speed.
    EngineSpeed,
    /// Torque.
    Torque,
    /// Power.
    Power,
    /// Boost above the air around.
    Boost,
    /// Something else, or nothing that the header tells.
    Unknown,
}

impl Meaning {
    /// What is in the column, inside a sentence.
    pub fn name(self) -> Message {
        match self {
            Self::EngineSpeed => hardware_problems::ENGINE_SPEED,
            Self::Torque => hardware_problems::TORQUE,
            Self::Power => hardware_problems::POWER,
            Self::Boost => hardware_problems::BOOST,
            Self::Unknown => hardware_problems::NOT_USED,
        }
    }
}

/// The unit that a header names.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Named {
    Speed(Unit<AngularVelocity>),
    Torque(Unit<Torque>),
    Power(Unit<Power>),
    Boost(Unit<GaugePressure>),
}

/// A header, understood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Understood {
    pub(super) meaning: Meaning,
    pub(super) unit: Option<Named>,
    pub(super) place: Option<MeasuredAt>,
}

/// Headers longer than this are titles.
const LONGEST: usize = 64;

/// What a header says.
pub(super) fn understood(header: &str, units: Units) -> Understood {
    let nothing = Understood { meaning: Meaning::Unknown, unit: None, place: None };
    if header.len() > LONGEST {
        return nothing;
    }
    let lower = header.to_lowercase();
    let words: Vec<&str> =
        lower.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    let says = |names: &[&str]| words.iter().any(|word| names.contains(word));
    let unit = unit(header, units);
    // A letter alone; before a unit, the unit tells as much by itself.
    let symbol = |letters: &[&str]| words.len() == 1 && says(letters);
    let named = if says(&["boost", "charge", "turbo"]) {
        Meaning::Boost
    } else if says(&["torque", "tq", "trq", "wtq"]) || symbol(&["t", "m"]) {
        Meaning::Torque
    } else if says(&["power", "pwr"]) || symbol(&["p"]) {
        Meaning::Power
    } else if says(&["rpm", "revs"]) || (says(&["engine"]) && says(&["speed"])) || symbol(&["n"]) {
        Meaning::EngineSpeed
    } else {
        Meaning::Unknown
    };
    let meaning = match (named, unit) {
        (named, None) => named,
        (Meaning::EngineSpeed | Meaning::Unknown, Some(Named::Speed(_))) => Meaning::EngineSpeed,
        (Meaning::Boost, Some(Named::Boost(_))) => Meaning::Boost,
        (Meaning::Torque | Meaning::Unknown, Some(Named::Torque(_))) => Meaning::Torque,
        (Meaning::Power | Meaning::Unknown, Some(Named::Power(_))) => Meaning::Power,
        // A pressure is boost only where it says so, and a name and a unit that
        // contradict each other say nothing.
        _ => Meaning::Unknown,
    };
    let place = if !matches!(meaning, Meaning::Torque | Meaning::Power) {
        None
    } else if says(&["wheel", "wheels", "hub", "hubs", "whp", "rwhp", "fwhp", "awhp", "wkw", "wtq"])
    {
        Some(MeasuredAt::Wheel)
    } else if says(&["crank", "crankshaft", "flywheel", "engine", "brake", "bhp", "chp", "bkw"]) {
        Some(MeasuredAt::Crank)
    } else {
        None
    };
    Understood { meaning, unit, place }
}

/// The longest part of a header that names a unit.
fn unit(header: &str, units: Units) -> Option<Named> {
    let boundary = |c: char| !c.is_alphanumeric() && !matches!(c, '°' | '"');
    let mut starts = vec![0];
    let mut ends = Vec::new();
    for (at, c) in header.char_indices() {
        if boundary(c) {
            ends.push(at);
            starts.push(at + c.len_utf8());
        }
    }
    ends.push(header.len());
    let mut parts: Vec<&str> = starts
        .iter()
        .flat_map(|start| ends.iter().filter_map(|end| header.get(*start..*end)))
        .filter(|part| !part.is_empty())
        .collect();
    parts.sort_by_key(|part| std::cmp::Reverse(part.len()));
    parts.into_iter().find_map(|part| named(part, units))
}

/// The unit that a word names.
pub(super) fn named(word: &str, units: Units) -> Option<Named> {
    let word = word.trim_matches(['(', ')', '[', ']', ' ']);
    // In a header these are power in a unit, and a hint of the place beside it.
    let power = match word.to_lowercase().as_str() {
        "whp" | "rwhp" | "fwhp" | "awhp" | "bhp" | "chp" => "hp",
        "wkw" | "bkw" => "kW",
        _ => word,
    };
    let speed = || quantities::ENGINE_SPEED.named(word, units).map(Named::Speed);
    let torque = || quantities::TORQUE.named(word, units).map(Named::Torque);
    let power = || quantities::POWER.named(power, units).map(Named::Power);
    let boost = || quantities::BOOST.named(word, units).map(Named::Boost);
    speed().or_else(torque).or_else(power).or_else(boost)
}

impl Named {
    pub(super) fn symbol(self) -> &'static str {
        match self {
            Self::Speed(unit) => unit.symbol(),
            Self::Torque(unit) => unit.symbol(),
            Self::Power(unit) => unit.symbol(),
            Self::Boost(unit) => unit.symbol(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(header: &str) -> (Meaning, Option<&'static str>, Option<MeasuredAt>) {
        let it = understood(header, Units::METRIC);
        (it.meaning, it.unit.map(Named::symbol), it.place)
    }

    #[test]
    fn headers_name_a_quantity_a_unit_and_a_place() {
        use Meaning::{Boost, EngineSpeed, Power, Torque, Unknown};
        for (header, meaning, unit, place) in [
            ("RPM", EngineSpeed, Some("rpm"), None),
            ("Engine speed (1/min)", EngineSpeed, Some("rpm"), None),
            ("n / min⁻¹", EngineSpeed, Some("rpm"), None),
            ("n", EngineSpeed, None, None),
            ("Torque (Nm)", Torque, Some("N·m"), None),
            ("Torque_Nm", Torque, Some("N·m"), None),
            ("T [lb-ft]", Torque, Some("lb·ft"), None),
            ("M in N m", Torque, Some("N·m"), None),
            ("Torque", Torque, None, None),
            ("P [kW]", Power, Some("kW"), None),
            ("P/kW", Power, Some("kW"), None),
            ("Power (PS) corrected", Power, Some("PS"), None),
            ("whp", Power, Some("hp"), Some(MeasuredAt::Wheel)),
            ("Wheel power (hp)", Power, Some("hp"), Some(MeasuredAt::Wheel)),
            ("BHP", Power, Some("hp"), Some(MeasuredAt::Crank)),
            ("Flywheel power kW", Power, Some("kW"), Some(MeasuredAt::Crank)),
            ("Boost (psi)", Boost, Some("psi"), None),
            ("boost pressure", Boost, None, None),
            // A pressure that is not boost, and what a header may say besides.
            ("Oil pressure (bar)", Unknown, Some("bar"), None),
            ("MAP (kPa)", Unknown, Some("kPa"), None),
            ("T (°C)", Unknown, None, None),
            ("P (bar)", Unknown, Some("bar"), None),
            ("Road speed (km/h)", Unknown, None, None),
            ("Lambda", Unknown, None, None),
            ("Power (Nm)", Unknown, Some("N·m"), None),
            ("", Unknown, None, None),
        ] {
            assert_eq!(read(header), (meaning, unit, place), "{header}");
        }
    }
}
