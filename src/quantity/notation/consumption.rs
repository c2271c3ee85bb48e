//! Consumption, and the units in which it is written.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::style::plain;
use super::{DistanceUnit, KILOMETRES_PER_MILE, VolumeUnit};
use crate::quantity::{Length, Volume};

/// The lowest consumption that is taken, in litres per 100 km.
const LOWEST: f64 = 1e-6;
/// The highest consumption that is taken, in litres per 100 km.
const HIGHEST: f64 = 1e6;

/// Why a number is not a consumption.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error(
    "{} L/100 km is not a consumption: it must lie between a millionth and a million L/100 km, so \
     give what the car uses, such as 7.5 L/100 km or 31 mpg",
    plain(*given)
)]
pub struct ConsumptionError {
    /// The number that was given, as litres per 100 km.
    pub given: f64,
}

/// Fuel used per way driven.
///
/// It is always positive, and far enough from zero and infinity that it stays a
/// number in every [`ConsumptionUnit`].
///
/// ```
/// use fillwright::quantity::notation::{Consumption, ConsumptionUnit, DistanceUnit, VolumeUnit};
/// let car = Consumption::from_litres_per_100_km(7.5)?;
/// let used = car.over(DistanceUnit::Kilometre.quantity(200.0));
/// assert!((VolumeUnit::Litre.value_of(used) - 15.0).abs() < 1e-9);
/// assert!((ConsumptionUnit::MilesPerUsGallon.value_of(car) - 31.36).abs() < 0.01);
/// assert!(Consumption::from_litres_per_100_km(0.0).is_err());
/// # Ok::<(), fillwright::quantity::notation::ConsumptionError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub struct Consumption {
    litres_per_100_km: f64,
}

impl Consumption {
    /// A consumption from litres per 100 km.
    ///
    /// # Errors
    /// When the number is zero, negative, absurdly small or large, or not a
    /// number.
    pub fn from_litres_per_100_km(value: f64) -> Result<Self, ConsumptionError> {
        if (LOWEST..=HIGHEST).contains(&value) {
            Ok(Self { litres_per_100_km: value })
        } else {
            Err(ConsumptionError { given: value })
        }
    }

    /// The consumption of a car that used `volume` over `distance`.
    ///
    /// # Errors
    /// As for [`Consumption::from_litres_per_100_km`].
    pub fn new(volume: Volume, distance: Length) -> Result<Self, ConsumptionError> {
        let litres = VolumeUnit::Litre.value_of(volume);
        Self::from_litres_per_100_km(litres / DistanceUnit::Kilometre.value_of(distance) * 100.0)
    }

    /// The consumption in litres per 100 km.
    pub fn litres_per_100_km(self) -> f64 {
        self.litres_per_100_km
    }

    /// The fuel that a distance takes.
    pub fn over(self, distance: Length) -> Volume {
        let hundreds = DistanceUnit::Kilometre.value_of(distance) / 100.0;
        VolumeUnit::Litre.quantity(self.litres_per_100_km * hundreds)
    }

    /// The distance for which a volume lasts.
    pub fn reach(self, volume: Volume) -> Length {
        let hundreds = VolumeUnit::Litre.value_of(volume) / self.litres_per_100_km;
        DistanceUnit::Kilometre.quantity(hundreds * 100.0)
    }
}

impl TryFrom<f64> for Consumption {
    type Error = ConsumptionError;
    fn try_from(litres_per_100_km: f64) -> Result<Self, ConsumptionError> {
        Self::from_litres_per_100_km(litres_per_100_km)
    }
}

impl From<Consumption> for f64 {
    fn from(consumption: Consumption) -> Self {
        consumption.litres_per_100_km
    }
}

/// A unit in which people count consumption.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ConsumptionUnit {
    /// Litres per 100 km.
    // Without the name, serde would write `litres_per100_km`.
    #[serde(rename = "litres_per_100_km")]
    LitresPer100Km,
    /// Kilometres per litre.
    KilometresPerLitre,
    /// Miles per US gallon.
    MilesPerUsGallon,
    /// Miles per imperial gallon.
    MilesPerImperialGallon,
}

impl ConsumptionUnit {
    /// Every unit, in the order in which to offer them.
    pub const ALL: [Self; 4] = [
        Self::LitresPer100Km,
        Self::KilometresPerLitre,
        Self::MilesPerUsGallon,
        Self::MilesPerImperialGallon,
    ];

    /// How the unit is written after a number. The two kinds of miles per gallon
    /// are written alike, as people do: the settings say which gallon it is.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::LitresPer100Km => "L/100 km",
            Self::KilometresPerLitre => "km/L",
            Self::MilesPerUsGallon | Self::MilesPerImperialGallon => "mpg",
        }
    }

    /// So many of this unit, as a consumption.
    ///
    /// # Errors
    /// As for [`Consumption::from_litres_per_100_km`].
    pub fn quantity(self, value: f64) -> Result<Consumption, ConsumptionError> {
        Consumption::from_litres_per_100_km(self.exchange(value))
    }

    /// How many of this unit a consumption is.
    pub fn value_of(self, consumption: Consumption) -> f64 {
        self.exchange(consumption.litres_per_100_km)
    }

    /// Litres per 100 km to this unit, and equally the other way: both are
    /// reciprocals of each other with the same product.
    fn exchange(self, value: f64) -> f64 {
        let gallon = match self {
            Self::LitresPer100Km => return value,
            Self::KilometresPerLitre => return 100.0 / value,
            Self::MilesPerUsGallon => VolumeUnit::UsGallon,
            Self::MilesPerImperialGallon => VolumeUnit::ImperialGallon,
        };
        100.0 * gallon.litres() / KILOMETRES_PER_MILE / value
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    // NIST Special Publication 811, appendix B.8: litres per 100 km are 235.215
    // divided by the miles per US gallon. From memory. The imperial 282.481 is
    // common practice, no source.
    #[test]
    fn miles_per_gallon_turn_into_litres_per_100_km() -> Result<(), ConsumptionError> {
        let us = ConsumptionUnit::MilesPerUsGallon.quantity(1.0)?;
        assert_relative_eq!(us.litres_per_100_km(), 235.215, max_relative = 3e-6);
        let imperial = ConsumptionUnit::MilesPerImperialGallon.quantity(1.0)?;
        assert_relative_eq!(imperial.litres_per_100_km(), 282.481, max_relative = 3e-6);
        Ok(())
    }

    #[test]
    fn every_unit_undoes_itself() -> Result<(), ConsumptionError> {
        for unit in ConsumptionUnit::ALL {
            assert_relative_eq!(unit.value_of(unit.quantity(31.0)?), 31.0, max_relative = 1e-14);
        }
        Ok(())
    }

    #[test]
    fn volume_over_distance_and_back() -> Result<(), ConsumptionError> {
        let (litre, km) = (VolumeUnit::Litre, DistanceUnit::Kilometre);
        let car = Consumption::new(litre.quantity(30.0), km.quantity(400.0))?;
        assert_relative_eq!(car.litres_per_100_km(), 7.5, max_relative = 1e-12);
        assert_relative_eq!(km.value_of(car.reach(litre.quantity(15.0))), 200.0, epsilon = 1e-9);
        Ok(())
    }

    #[test]
    fn what_no_car_can_use_is_refused() {
        for value in [0.0, -1.0, 1e-7, 1e7, f64::NAN, f64::INFINITY] {
            assert!(Consumption::from_litres_per_100_km(value).is_err(), "{value}");
        }
        for unit in ConsumptionUnit::ALL {
            assert!(unit.quantity(0.0).is_err());
        }
        let nowhere = DistanceUnit::Kilometre.quantity(0.0);
        assert!(Consumption::new(VolumeUnit::Litre.quantity(1.0), nowhere).is_err());
    }

    #[test]
    fn stored_consumption_is_checked_when_read() -> Result<(), serde_json::Error> {
        assert!(serde_json::from_str::<Consumption>("-3").is_err());
        let car: Consumption = serde_json::from_str("7.5")?;
        assert_eq!(serde_json::to_string(&car)?, "7.5");
        let unit = serde_json::to_string(&ConsumptionUnit::LitresPer100Km)?;
        assert_eq!(unit, "\"litres_per_100_km\"");
        Ok(())
    }
}
