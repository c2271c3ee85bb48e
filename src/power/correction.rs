//! The correction of a measured power to the air of a standard day.

use crate::message::keys::workings;
use serde::{Deserialize, Serialize};
use uom::si::pressure::kilopascal;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use super::AmbientAir;
use super::humid_air::VAPOUR_PRESSURE_SOURCE;
use crate::message::keys::practice as words;
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::workings::{Expression, Working, literal, number};

/// The factors within which a correction of this kind is meant to be used
/// (UN Regulation No. 85, annex 5: from memory).
const USUAL: std::ops::RangeInclusive<f64> = 0.93..=1.07;

/// How a measured power is brought to the air of a standard day.
///
/// All of them take the power of an engine to follow the air around. One that holds
/// an absolute boost pressure does so hardly at all, and is then over-corrected:
/// hence [`AirCorrection::None`] comes first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum AirCorrection {
    /// As measured.
    #[default]
    #[serde(rename = "none")]
    None,
    /// SAE J1349 in the form of June 1990: 25 degrees Celsius, 99 kPa dry, with a
    /// mechanical efficiency of 85 %.
    #[serde(rename = "sae-j1349")]
    SaeJ1349,
    /// ISO 1585 and UN Regulation No. 85, spark ignition: 25 degrees Celsius, 99 kPa
    /// dry.
    #[serde(rename = "iso-1585")]
    Iso1585,
    /// DIN 70020: 20 degrees Celsius, 1013 mbar with the vapour in it.
    #[serde(rename = "din-70020")]
    Din70020,
    /// SAE J607: 60 degrees Fahrenheit, 29.92 inches of mercury dry.
    #[serde(rename = "j607")]
    StandardJ607,
}

impl AirCorrection {
    /// Every correction, in the order in which to offer them.
    pub const ALL: [Self; 5] =
        [Self::None, Self::SaeJ1349, Self::Iso1585, Self::Din70020, Self::StandardJ607];

    /// A short name that never changes, for stored documents.
    pub fn id(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::SaeJ1349 => "sae-j1349",
            Self::Iso1585 => "iso-1585",
            Self::Din70020 => "din-70020",
            Self::StandardJ607 => "j607",
        }
    }

    /// The correction with an id.
    pub fn of_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|correction| correction.id() == id)
    }

    /// The standard that it is of; none where nothing is corrected.
    pub fn standard(self) -> Option<&'static str> {
        match self {
            Self::None => None,
            Self::SaeJ1349 => Some("SAE J1349"),
            Self::Iso1585 => Some("ISO 1585"),
            Self::Din70020 => Some("DIN 70020"),
            Self::StandardJ607 => Some("STD (SAE J607)"),
        }
    }

    /// What a measured power or torque is multiplied by.
    pub fn factor(self, air: &AmbientAir) -> f64 {
        self.expression(air).map_or(1.0, |formula| formula.value())
    }

    /// The factor as a line of the workings; nothing where none is applied.
    pub fn working(self, air: &AmbientAir) -> Option<Working> {
        let formula = self.expression(air)?;
        let mut sources: Vec<Source> = self.source().into_iter().collect();
        if self.is_of_dry_air() {
            sources.push(VAPOUR_PRESSURE_SOURCE);
        }
        let name = workings::Correction { standard: self.standard()? }.sentence();
        Some(Working::new(name, "CF", &formula, 4, "", &sources))
    }

    /// Where its formula comes from. None of the standards was read itself.
    pub fn source(self) -> Option<Source> {
        let (kind, confidence, citation) = match self {
            Self::None => return None,
            Self::SaeJ1349 => {
                (SourceKind::Standard, Confidence::Secondary, Citation::Words(words::SAE_J1349))
            }
            Self::Iso1585 => {
                (SourceKind::FromMemory, Confidence::Weak, Citation::WithCaveat(words::ISO_1585))
            }
            Self::Din70020 => {
                (SourceKind::Standard, Confidence::Secondary, Citation::Words(words::DIN_70020))
            }
            Self::StandardJ607 => {
                (SourceKind::Standard, Confidence::Secondary, Citation::Words(words::SAE_J607))
            }
        };
        Some(Source { kind, citation, confidence })
    }

    /// Whether the vapour is taken off the pressure.
    fn is_of_dry_air(self) -> bool {
        matches!(self, Self::SaeJ1349 | Self::Iso1585 | Self::StandardJ607)
    }

    /// The formula as published: temperatures in degrees Celsius (for J607 in
    /// kelvin), pressures in kilopascals.
    fn expression(self, air: &AmbientAir) -> Option<Expression> {
        let dry = number("p_dry", air.dry_pressure().get().get::<kilopascal>());
        let celsius = number("t", air.temperature().get::<degree_celsius>());
        let kelvins = number("T", air.temperature().get::<kelvin>());
        let warmth = |reference: f64| (celsius + literal(273.0)) / literal(reference);
        Some(match self {
            Self::None => return None,
            Self::SaeJ1349 => {
                literal(1.18) * (literal(99.0) / dry) * warmth(298.0).sqrt() - literal(0.18)
            }
            Self::Iso1585 => {
                (literal(99.0) / dry).power(literal(1.2)) * warmth(298.0).power(literal(0.6))
            }
            Self::Din70020 => {
                let total = number("p", air.pressure().get().get::<kilopascal>());
                literal(101.3) / total * warmth(293.0).sqrt()
            }
            Self::StandardJ607 => literal(101.325) / dry * (kelvins / literal(288.71)).sqrt(),
        })
    }
}

/// Whether a factor is within the range for which corrections of this kind were
/// made, 0.93 to 1.07; beyond it, repeat the run in other weather.
pub fn is_in_usual_range(factor: f64) -> bool {
    USUAL.contains(&factor)
}
