//! What a person typed or chose, as it is stored: the texts themselves, so that
//! nothing typed is ever lost or rounded.

use serde::{Deserialize, Deserializer, Serialize};

use crate::calibration::FluidState;
use crate::fuel::Extras;
use crate::fuel::grades::Grade;
use crate::quantity::notation::{DecimalMark, Style, Units, print_number_short};
use crate::quantity::{Band, Share};
use crate::tank::{HowSure, LevelReading, RangeDisplay, SensorScale};

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
    pub typed_in: Units,
}

impl Entry {
    /// A text typed in metric units.
    pub fn metric(text: &str) -> Self {
        Self { text: text.into(), typed_in: Units::METRIC }
    }

    /// Whether nothing was typed.
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }

    /// For a text that was stored alone before its scale could be chosen. It meant
    /// what it means in metric units.
    pub(super) fn or_text<'de, D: Deserializer<'de>>(source: D) -> Result<Self, D::Error> {
        #[derive(Deserialize)]
        #[serde(untagged)]
        enum Stored {
            Text(String),
            Entry(Entry),
        }
        Ok(match Stored::deserialize(source)? {
            Stored::Text(text) => Self::metric(&text),
            Stored::Entry(entry) => entry,
        })
    }

    /// Whether nobody ever typed here.
    pub(super) fn is_untouched(&self) -> bool {
        *self == Self::default()
    }
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
    #[serde(deserialize_with = "Entry::or_text")]
    pub ron_min: Entry,
    /// Whether it counts on injection fluid.
    pub needs_fluid: bool,
}

/// What a fuel or a tank holds beside petrol and ethanol, as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct ExtrasForm {
    /// Water, in percent by volume; a band where it is known within one.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub water: String,
    /// Methanol, likewise.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub methanol: String,
    /// Ethers, likewise.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub ethers: String,
    /// Oxygen in percent by mass, where that is known in place of the ethers.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub oxygen: String,
}

impl ExtrasForm {
    /// Whether nobody ever typed here.
    pub fn is_untouched(&self) -> bool {
        *self == Self::default()
    }

    /// These extras in texts, in percent; what there is none of is left blank.
    pub(super) fn of(extras: &Extras, text: impl Fn(f64) -> String) -> Self {
        let band = |band: Band<Share>| {
            let [low, expected, high] =
                [band.low(), band.expected(), band.high()].map(|share| text(share.percent()));
            match (low == high, band.high() > Share::ZERO) {
                (_, false) => String::new(),
                (true, _) => expected,
                (false, _) => format!("{expected} ({low}-{high})"),
            }
        };
        Self {
            water: band(extras.water),
            methanol: band(extras.methanol),
            ethers: band(extras.ethers),
            oxygen: String::new(),
        }
    }
}

/// A fuel as it was typed: on offer, kept as one's own, or in an entry of the log.
///
/// What was left blank is not written down: a log holds many of these.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct FuelForm {
    /// Tells it apart; never used again.
    pub id: u32,
    /// The catalogue grade that filled it in.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub grade: Option<String>,
    /// Its name.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// The ethanol share expected.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub share: String,
    /// What the ethanol share may be.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub share_range: String,
    /// What it holds beside petrol and ethanol.
    #[serde(skip_serializing_if = "ExtrasForm::is_untouched")]
    pub extras: ExtrasForm,
    /// How sure the share is, where no range says so.
    #[serde(skip_serializing_if = "HowSure::is_usual")]
    pub how_sure: HowSure,
    /// The octane number, at least.
    #[serde(skip_serializing_if = "Entry::is_untouched", deserialize_with = "Entry::or_text")]
    pub octane: Entry,
    /// The motor octane number, at least.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub mon: String,
    /// The price per volume.
    #[serde(skip_serializing_if = "Entry::is_untouched")]
    pub price: Entry,
    /// How much there is of it.
    #[serde(skip_serializing_if = "Entry::is_untouched")]
    pub limit: Entry,
    /// Whether all of it has to go in.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub use_all: bool,
    /// What of it was actually put in.
    #[serde(skip_serializing_if = "Entry::is_untouched")]
    pub put_in: Entry,
}

impl FillForm {
    /// Whether it starts from what the log tells.
    pub fn is_from_log(&self) -> bool {
        self.start == StartForm::Log
    }
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
            extras: ExtrasForm::of(&grade.extras(), short),
            octane: Entry::metric(&octane),
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
    pub stop: StopForm,
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
