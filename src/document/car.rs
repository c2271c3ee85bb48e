//! The car and its calibrations, as they were typed.

use serde::{Deserialize, Serialize};

use super::fuel::FuelForm;
use crate::calibration::FluidState;
use crate::quantity::notation::Entry;
use crate::tank::{RangeDisplay, SensorScale};

/// A calibration as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CalibrationForm {
    /// Tells it apart; never used again.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// The weakest blend allowed.
    pub low: String,
    /// The strongest blend allowed.
    pub high: String,
    /// The blend it was written for.
    pub written_for: String,
    /// The least octane number.
    #[serde(deserialize_with = "Entry::or_text")]
    pub ron_min: Entry,
    /// Whether it counts on injection fluid.
    pub needs_fluid: bool,
}

/// The car, as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Car {
    /// Its name.
    pub name: String,
    /// What the tank holds to the brim.
    pub capacity: Entry,
    /// The level below which nobody should plan to drive.
    pub reserve: Entry,
    /// What it burns.
    pub consumption: Entry,
    /// The fuel between the tank and the nozzles: pump, lines, rail.
    #[serde(default)]
    pub line: Entry,
    /// The fuel temperature at the sensor's longest pulse, in degrees Celsius.
    #[serde(default)]
    pub sensor_scale: SensorScale,
    /// What the display of the distance left counts down to.
    #[serde(default, skip_serializing_if = "RangeDisplay::is_usual")]
    pub range_display: RangeDisplay,
    /// The blend on which that was measured: the reference for comparisons.
    pub reference: String,
    /// The injection fluid.
    pub fluid: FluidState,
    /// Its calibrations.
    pub calibrations: Vec<CalibrationForm>,
    /// Fuels that its owner keeps.
    pub own_fuels: Vec<FuelForm>,
}

/// A part of a calibration.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CalibrationPart {
    /// Its name.
    Name,
    /// The weakest blend.
    Low,
    /// The strongest blend.
    High,
    /// The blend it was written for.
    WrittenFor,
    /// The least octane number.
    RonMin,
}

impl CalibrationPart {
    /// A name for it within the ids of its fields.
    pub(super) fn id(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Low => "low",
            Self::High => "high",
            Self::WrittenFor => "written-for",
            Self::RonMin => "ron-min",
        }
    }
}
