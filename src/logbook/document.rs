//! Everything that a person typed or chose, as it is stored: the texts
//! themselves, so that nothing typed is ever lost or rounded.

use serde::{Deserialize, Serialize};

use crate::calibration::FluidState;
use crate::fuel::grades::Grade;
use crate::quantity::Share;
use crate::quantity::notation::{DecimalMark, Style, UnitSystem, print_number_short};
use crate::tank::LevelReading;

/// The number that tells apart the ways in which a document was written.
pub const SCHEMA: u32 = 1;

/// A document of this many bytes is no longer what a person typed.
pub const LARGEST_DOCUMENT: usize = 1 << 20;

/// Why a stored document cannot be read.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum DocumentError {
    /// It was written by a later version.
    #[error(
        "this was written by a later version (schema {found}); this version reads schema {SCHEMA}: update, or keep the text"
    )]
    TooNew {
        /// The schema found.
        found: u32,
    },
    /// It is too large.
    #[error("{bytes} bytes are too many; at most {LARGEST_DOCUMENT} are read")]
    TooLarge {
        /// The size found.
        bytes: usize,
    },
    /// It is not a document.
    #[error("this is not a stored document: {reason}")]
    Unreadable {
        /// What the parser said.
        reason: String,
    },
}

/// A text whose meaning depends on the units that were chosen when it was typed.
///
/// The text stays as it was typed for ever; in other units it is printed anew
/// from there, so that switching to and fro cannot make it drift.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// What was typed.
    pub text: String,
    /// The units chosen when it was typed.
    pub typed_in: UnitSystem,
}

impl Entry {
    /// A text typed in metric units.
    pub fn metric(text: &str) -> Self {
        Self { text: text.into(), typed_in: UnitSystem::Metric }
    }

    /// Whether nothing was typed.
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }
}

/// How things are shown.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Settings {
    /// The units.
    pub system: UnitSystem,
    /// The decimal mark, once chosen; else that of the device.
    pub decimal: Option<DecimalMark>,
    /// The currency's sign or name; a label only.
    pub currency: String,
    /// The step in which a person can stop the pump.
    pub pump_step: Entry,
}

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
    pub ron_min: String,
    /// Whether it counts on injection fluid.
    pub needs_fluid: bool,
}

/// A fuel as it was typed: on offer, or kept as one's own.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FuelForm {
    /// Tells it apart; never used again.
    pub id: u32,
    /// The catalogue grade that filled it in.
    pub grade: Option<String>,
    /// Its name.
    pub name: String,
    /// The ethanol share expected.
    pub share: String,
    /// What the ethanol share may be.
    pub share_range: String,
    /// The octane number, at least: RON, or marked AKI.
    pub octane: String,
    /// The motor octane number, at least.
    pub mon: String,
    /// The price per volume.
    pub price: Entry,
    /// How much there is of it.
    pub limit: Entry,
    /// Whether all of it has to go in.
    pub use_all: bool,
    /// What of it was actually put in.
    pub put_in: Entry,
}

impl FuelForm {
    /// The form of a catalogue grade. Its price and its id are left to be given.
    pub fn of_grade(grade: &Grade) -> Self {
        let ethanol = grade.ethanol();
        let short =
            |value: f64| print_number_short(value, 2, Style { decimal: DecimalMark::Point });
        let percent = |share: Share| short(share.percent());
        let octane = match (grade.ron_min, grade.aki_min) {
            (Some(ron), _) => short(ron),
            (None, Some(aki)) => format!("{} AKI", short(aki)),
            (None, None) => String::new(),
        };
        Self {
            grade: Some(grade.id.into()),
            name: grade.name.into(),
            share: percent(ethanol.expected()),
            share_range: format!("{}-{}", percent(ethanol.low()), percent(ethanol.high())),
            octane,
            mon: grade.mon_min.map(short).unwrap_or_default(),
            ..Self::default()
        }
    }
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
    /// The blend on which that was measured: the reference for comparisons.
    pub reference: String,
    /// The injection fluid.
    pub fluid: FluidState,
    /// Its calibrations.
    pub calibrations: Vec<CalibrationForm>,
    /// Fuels that its owner keeps.
    pub own_fuels: Vec<FuelForm>,
}

/// Which blend is wanted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum AimForm {
    /// The share that was typed.
    #[default]
    Share,
    /// Anything that suits the calibration with this id.
    Calibration(u32),
    /// None: what was put in is all, and the question is what that makes.
    AsPoured,
}

/// When to stop pouring.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StopForm {
    /// When the tank is full.
    #[default]
    Brim,
    /// At a level.
    Level,
    /// After so much fuel.
    AtMost,
    /// After so much money.
    Budget,
    /// As soon as the aim is reached.
    Least,
}

/// The fill, as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FillForm {
    /// What is in the tank.
    pub level: Entry,
    /// How that was read.
    pub reading: LevelReading,
    /// The error of that reading, where the person knows better.
    pub level_error: Entry,
    /// The ethanol share of what is in the tank.
    pub share: String,
    /// What that share may be.
    pub share_range: String,
    /// The octane number of what is in the tank, at least.
    pub octane: String,
    /// Its motor octane number, at least.
    pub mon: String,
    /// The fuels on offer.
    pub offers: Vec<FuelForm>,
    /// Whether the nozzle clicked off at what was put in: the tank is full then.
    pub clicked: bool,
    /// The blend wanted.
    pub aim: AimForm,
    /// The share wanted, when one is.
    pub aim_share: String,
    /// When to stop.
    pub stop: StopForm,
    /// The level to stop at.
    pub stop_level: Entry,
    /// The volume to stop after.
    pub stop_volume: Entry,
    /// The money to stop after.
    pub stop_money: String,
}

/// The whole document.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Document {
    /// How it was written.
    pub schema: u32,
    /// The last id given to a fuel or calibration.
    pub last_id: u32,
    /// Whether it is the invented example.
    pub demo: bool,
    /// How things are shown.
    pub settings: Settings,
    /// The car.
    pub car: Car,
    /// The fill at hand.
    pub fill: FillForm,
}

impl Document {
    /// A new id for a fuel or a calibration.
    pub fn next_id(&mut self) -> u32 {
        self.last_id += 1;
        self.last_id
    }

    /// Reads a stored document.
    ///
    /// # Errors
    /// When it is too large, written by a later version, or no document.
    pub fn from_json(text: &str) -> Result<Self, DocumentError> {
        #[derive(Deserialize)]
        struct Envelope {
            schema: u32,
        }
        if text.len() > LARGEST_DOCUMENT {
            return Err(DocumentError::TooLarge { bytes: text.len() });
        }
        let unreadable =
            |error: serde_json::Error| DocumentError::Unreadable { reason: error.to_string() };
        let envelope: Envelope = serde_json::from_str(text).map_err(unreadable)?;
        if envelope.schema > SCHEMA {
            return Err(DocumentError::TooNew { found: envelope.schema });
        }
        serde_json::from_str(text).map_err(unreadable)
    }

    /// The text to store.
    ///
    /// # Errors
    /// When the text cannot be made, which would be a mistake in this program.
    pub fn to_json(&self) -> Result<String, DocumentError> {
        serde_json::to_string(self)
            .map_err(|error| DocumentError::Unreadable { reason: error.to_string() })
    }
}
