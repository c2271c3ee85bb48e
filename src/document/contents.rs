//! What is in a tank, as it was typed: before a fill, in an entry of the log, at the start
//! of a trip.

use serde::{Deserialize, Serialize};

use super::fuel::{ExtraPart, ExtrasForm};
use crate::quantity::notation::{Entry, Units};
use crate::tank::{HowSure, LevelReading};

/// A level as it was read.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct LevelForm {
    /// The level.
    pub level: Entry,
    /// How it was read.
    pub reading: LevelReading,
    /// The error of that reading, where the person knows better.
    #[serde(skip_serializing_if = "Entry::is_untouched")]
    pub error: Entry,
}

impl LevelForm {
    /// Notes how the level was read. A brimmed tank says how full as well.
    pub fn read_as(&mut self, reading: LevelReading, typed_in: Units) {
        self.reading = reading;
        if reading == LevelReading::Brimmed {
            self.level = Entry { text: "full".into(), typed_in };
        }
    }
}

/// All of what is in a tank.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct ContentsForm {
    /// How much.
    pub level: LevelForm,
    /// Its ethanol share.
    pub share: String,
    /// What that share may be.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub share_range: String,
    /// What it holds beside petrol and ethanol.
    #[serde(skip_serializing_if = "ExtrasForm::is_untouched")]
    pub extras: ExtrasForm,
    /// How sure that is, where no range says so.
    #[serde(skip_serializing_if = "HowSure::is_usual")]
    pub how_sure: HowSure,
    /// Its octane number, at least.
    #[serde(skip_serializing_if = "Entry::is_untouched", deserialize_with = "Entry::or_text")]
    pub octane: Entry,
    /// Its motor octane number, at least.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub mon: String,
}

/// A part of what is in a tank.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ContentsPart {
    /// How much.
    Level,
    /// The error of that.
    LevelError,
    /// Its ethanol share.
    Share,
    /// What that may be.
    ShareRange,
    /// What is in it beside petrol and ethanol.
    Extra(ExtraPart),
    /// Its octane number.
    Octane,
    /// Its motor octane number.
    Mon,
}

impl ContentsPart {
    /// A name for it within the ids of its fields.
    pub(super) fn id(self) -> &'static str {
        match self {
            Self::Level => "level",
            Self::LevelError => "level-error",
            Self::Share => "share",
            Self::ShareRange => "share-range",
            Self::Extra(part) => part.id(),
            Self::Octane => "octane",
            Self::Mon => "mon",
        }
    }
}
