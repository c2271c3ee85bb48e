//! The fill, as it was typed.

use serde::{Deserialize, Serialize};

use super::fuel::{ExtrasForm, FuelForm};
use crate::quantity::notation::Entry;
use crate::tank::{HowSure, LevelReading};

impl FillForm {
    /// Whether it starts from what the log tells.
    pub fn is_from_log(&self) -> bool {
        self.start == StartForm::Log
    }
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
pub enum StopRuleForm {
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

/// Where a fill starts from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StartForm {
    /// From what was typed.
    #[default]
    Typed,
    /// From what the log tells, and a level read now, if one was typed.
    Log,
}

/// The fill, as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FillForm {
    /// Where it starts from.
    #[serde(default)]
    pub start: StartForm,
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
    /// What is in it beside petrol and ethanol.
    #[serde(default, skip_serializing_if = "ExtrasForm::is_untouched")]
    pub extras: ExtrasForm,
    /// How sure the share is, where no range says so.
    #[serde(default, skip_serializing_if = "HowSure::is_usual")]
    pub how_sure: HowSure,
    /// The octane number of what is in the tank, at least.
    #[serde(deserialize_with = "Entry::or_text")]
    pub octane: Entry,
    /// Its motor octane number, at least.
    pub mon: String,
    /// The fuels on offer.
    pub offers: Vec<FuelForm>,
    /// Where it is.
    #[serde(default)]
    pub place: String,
    /// Whether the nozzle clicked off at what was put in: the tank is full then.
    pub clicked: bool,
    /// The blend wanted.
    pub aim: AimForm,
    /// The share wanted, when one is.
    pub aim_share: String,
    /// When to stop.
    pub stop: StopRuleForm,
    /// Whether to go as far as that even where it breaks the aim.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub anyway: bool,
    /// The level to stop at.
    pub stop_level: Entry,
    /// The volume to stop after.
    pub stop_volume: Entry,
    /// The money to stop after.
    pub stop_money: String,
}
