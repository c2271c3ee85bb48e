//! The whole document, as it is stored and exported.

use serde::{Deserialize, Serialize};

use super::car::Car;
use super::event::Draft;
use super::fill::FillForm;
use super::hardware::HardwareForm;
use super::id::Id;
use super::log::Log;
use super::rate::RateForm;
use super::trip::TripForm;
use crate::quantity::notation::{DecimalMark, Entry, Printer, Style, Units};

/// The number that tells apart the ways in which a document was written.
///
/// What each looks like is described in `document.schema.json` beside this file;
/// `migration.rs` reads the earlier ones.
pub const SCHEMA: u32 = 7;

/// A document of this many bytes is no longer what a person typed.
pub const LARGEST_DOCUMENT: usize = 8 << 20;

/// The last number that a stored document may have given: far beyond what anybody
/// enters, and far from where numbers end.
pub(super) const LARGEST_NUMBER: u32 = (1 << 31) - 1;

/// So many characters of what the parser says of a document are shown.
const LONGEST_REASON: usize = 240;

/// Why a stored document cannot be read.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum DocumentError {
    /// It was written by a later version.
    TooNew {
        /// The schema found.
        found: u32,
    },
    /// It is too large.
    TooLarge {
        /// The size found.
        bytes: usize,
    },
    /// It is not a document.
    Unreadable {
        /// Why not.
        reason: DocumentFault,
    },
}

/// Why a text is no document.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum DocumentFault {
    /// Its form is wrong, in the words of the parser.
    Form(String),
    /// A number that no fuel and no part can have.
    Number(u32),
    /// Two cars have this identity.
    SameIdentity(Id),
}

impl From<serde_json::Error> for DocumentError {
    fn from(error: serde_json::Error) -> Self {
        // It may name every word that is known in a place.
        let mut reason = error.to_string();
        if let Some((end, _)) = reason.char_indices().nth(LONGEST_REASON) {
            reason.truncate(end);
            reason.push('…');
        }
        Self::Unreadable { reason: DocumentFault::Form(reason) }
    }
}

/// How things are shown.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Settings {
    /// The units.
    #[serde(alias = "system")]
    pub units: Units,
    /// The decimal mark, once chosen; else that of the device.
    pub decimal: Option<DecimalMark>,
    /// The sign or name of the currency that the person counts in.
    pub currency: String,
    /// What other currencies are worth in it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rates: Vec<RateForm>,
    /// The step in which a person can stop the pump.
    pub pump_step: Entry,
}

impl Settings {
    /// A printer for these settings; `device` is the decimal mark of the device.
    pub fn printer(&self, device: DecimalMark) -> Printer {
        Printer {
            units: self.units,
            style: Style { decimal: self.decimal.unwrap_or(device) },
            currency: self.currency.clone(),
        }
    }
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            units: Units::METRIC,
            decimal: None,
            currency: String::new(),
            rates: Vec::new(),
            pump_step: Entry::metric("0.5"),
        }
    }
}

/// A car with all that belongs to it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CarFile {
    /// Tells the car apart from all others.
    pub id: Id,
    /// Whether it is the invented example.
    pub demo: bool,
    /// Whether it was removed. It is kept, so that it can be brought back.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub removed: bool,
    /// The last number given to a fuel, a calibration, a curve or a part of this
    /// car.
    pub last_id: u32,
    /// The car.
    pub car: Car,
    /// Its power curves and its fuel system.
    #[serde(default, rename = "workshop")]
    pub hardware: HardwareForm,
    /// The route ahead.
    #[serde(default)]
    pub route: TripForm,
    /// The fill at hand.
    pub fill: FillForm,
    /// The entry of the log that is being written.
    pub draft: Option<Draft>,
    /// The log.
    pub log: Log,
}

impl CarFile {
    /// A car of which nothing was typed yet.
    pub fn new(id: Id) -> Self {
        Self {
            id,
            demo: false,
            removed: false,
            last_id: 0,
            car: Car { reference: "E10".into(), ..Car::default() },
            hardware: HardwareForm::default(),
            route: TripForm::default(),
            fill: FillForm::default(),
            draft: None,
            log: Log::default(),
        }
    }

    /// A new number for a fuel, a calibration, a curve or a part.
    pub fn next_id(&mut self) -> u32 {
        self.last_id += 1;
        self.last_id
    }
}

/// The whole document: the car in use, the others, and how things are shown.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Document {
    /// How it was written.
    pub schema: u32,
    /// How things are shown.
    pub settings: Settings,
    /// The car in use.
    pub here: CarFile,
    /// The other cars.
    pub others: Vec<CarFile>,
}

impl Document {
    /// A document in which nothing was typed, for a car with this identity.
    pub fn empty(car: Id) -> Self {
        Self {
            schema: SCHEMA,
            settings: Settings::default(),
            here: CarFile::new(car),
            others: Vec::new(),
        }
    }

    /// All cars, the one in use first.
    pub fn cars(&self) -> impl Iterator<Item = &CarFile> {
        std::iter::once(&self.here).chain(&self.others)
    }

    /// All cars, the one in use first, to be changed.
    pub fn cars_mut(&mut self) -> impl Iterator<Item = &mut CarFile> {
        std::iter::once(&mut self.here).chain(&mut self.others)
    }

    /// The car with this identity.
    pub fn car_mut(&mut self, id: &Id) -> Option<&mut CarFile> {
        self.cars_mut().find(|car| car.id == *id)
    }

    /// Takes another car into use.
    pub fn choose(&mut self, id: &Id) {
        if let Some(at) = self.others.iter().position(|car| car.id == *id) {
            std::mem::swap(&mut self.here, &mut self.others[at]);
        }
    }

    /// Adds a car and takes it into use.
    pub fn add(&mut self, car: CarFile) {
        let before = std::mem::replace(&mut self.here, car);
        self.others.push(before);
    }

    /// The text to store.
    ///
    /// # Errors
    /// When the text cannot be made, which would be a mistake in this program.
    pub fn to_json(&self) -> Result<String, DocumentError> {
        Ok(serde_json::to_string(self)?)
    }
}
