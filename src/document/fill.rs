//! The fill, as it was typed.

use serde::{Deserialize, Serialize};

use super::contents::ContentsForm;
use super::fuel::FuelForm;
use crate::quantity::notation::Entry;

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
    /// What is in the tank, as far as it is typed.
    pub contents: ContentsForm,
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
