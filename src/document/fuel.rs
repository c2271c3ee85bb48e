//! A fuel as it was typed.

use serde::{Deserialize, Serialize};

use crate::fuel::Extras;
use crate::fuel::grades::Grade;
use crate::quantity::notation::{DecimalMark, Entry, Style, print_number_short};
use crate::quantity::{Band, Share};
use crate::tank::HowSure;

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
    pub(crate) fn of(extras: &Extras, text: impl Fn(f64) -> String) -> Self {
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
    #[serde(rename = "put_in", skip_serializing_if = "Entry::is_untouched")]
    pub poured: Entry,
}

impl FuelForm {
    /// The form of a catalogue grade. Its name, its price and its id are left to be given.
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
            share: percent(ethanol.expected()),
            share_range: format!("{}-{}", percent(ethanol.low()), percent(ethanol.high())),
            extras: ExtrasForm::of(&grade.extras(), short),
            octane: Entry::metric(&octane),
            mon: grade.mon_min.map(short).unwrap_or_default(),
            ..Self::default()
        }
    }
}

/// What there may be beside petrol and ethanol.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ExtraPart {
    /// Water.
    Water,
    /// Methanol.
    Methanol,
    /// Ethers.
    Ethers,
    /// Oxygen, which tells of ethers.
    Oxygen,
}

impl ExtraPart {
    /// A name for it within the ids of its fields.
    pub(super) fn id(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::Methanol => "methanol",
            Self::Ethers => "ethers",
            Self::Oxygen => "oxygen",
        }
    }
}

/// A part of a fuel on offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FuelPart {
    /// Its name.
    Name,
    /// The ethanol share expected.
    Share,
    /// What the share may be.
    ShareRange,
    /// What it holds beside petrol and ethanol.
    Extra(ExtraPart),
    /// The octane number.
    Octane,
    /// The motor octane number.
    Mon,
    /// The price.
    Price,
    /// How much there is.
    Limit,
    /// What was put in.
    Poured,
}

impl FuelPart {
    /// A name for it within the ids of its fields.
    pub(super) fn id(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Share => "share",
            Self::ShareRange => "share-range",
            Self::Extra(part) => part.id(),
            Self::Octane => "octane",
            Self::Mon => "mon",
            Self::Price => "price",
            Self::Limit => "limit",
            Self::Poured => "put-in",
        }
    }
}
