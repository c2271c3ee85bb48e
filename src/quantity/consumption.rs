//! Fuel over distance.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use uom::si::length::kilometer;
use uom::si::volume::liter;

use super::{Length, Volume};

/// The lowest consumption that is taken, in litres per 100 km.
const LOWEST: f64 = 1e-6;
/// The highest consumption that is taken, in litres per 100 km.
const HIGHEST: f64 = 1e6;

/// Why a number is not a consumption.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct ConsumptionError {
    /// The number that was given, as litres per 100 km.
    pub given: f64,
}

/// Fuel used per way driven.
///
/// It is always positive, and far enough from zero and infinity that it stays a
/// number in every unit.
///
/// ```
/// use fillwright::quantity::Consumption;
/// use fillwright::quantity::notation::quantities::{KILOMETRE, LITRE, MILES_PER_US_GALLON};
/// let car = Consumption::from_litres_per_100_km(7.5)?;
/// let used = car.over(KILOMETRE.quantity(200.0));
/// assert!((LITRE.value_of(used) - 15.0).abs() < 1e-9);
/// assert!((MILES_PER_US_GALLON.value_of(car) - 31.36).abs() < 0.01);
/// assert!(Consumption::from_litres_per_100_km(0.0).is_err());
/// # Ok::<(), fillwright::quantity::ConsumptionError>(())
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

    /// The consumption that is nearest to so many litres per 100 km.
    pub(crate) fn nearest(litres_per_100_km: f64) -> Self {
        Self { litres_per_100_km: litres_per_100_km.clamp(LOWEST, HIGHEST) }
    }

    /// The consumption of a car that used `volume` over `distance`.
    ///
    /// # Errors
    /// As for [`Consumption::from_litres_per_100_km`].
    pub fn new(volume: Volume, distance: Length) -> Result<Self, ConsumptionError> {
        let litres = volume.get::<liter>();
        Self::from_litres_per_100_km(litres / distance.get::<kilometer>() * 100.0)
    }

    /// The consumption in litres per 100 km.
    pub fn litres_per_100_km(self) -> f64 {
        self.litres_per_100_km
    }

    /// The fuel that a distance takes.
    pub fn over(self, distance: Length) -> Volume {
        let hundreds = distance.get::<kilometer>() / 100.0;
        Volume::new::<liter>(self.litres_per_100_km * hundreds)
    }

    /// The distance for which a volume lasts.
    pub fn reach(self, volume: Volume) -> Length {
        let hundreds = volume.get::<liter>() / self.litres_per_100_km;
        Length::new::<kilometer>(hundreds * 100.0)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::notation::quantities::{
        KILOMETRES_PER_LITRE, LITRES_PER_100_KM, MILES_PER_IMPERIAL_GALLON, MILES_PER_US_GALLON,
    };
    use crate::quantity::notation::{KILOMETRE, LITRE, Unit};
    use approx::assert_relative_eq;

    const UNITS: [Unit<Consumption>; 4] =
        [LITRES_PER_100_KM, KILOMETRES_PER_LITRE, MILES_PER_US_GALLON, MILES_PER_IMPERIAL_GALLON];

    // NIST Special Publication 811, appendix B.8: litres per 100 km are 235.215
    // divided by the miles per US gallon. From memory. The imperial 282.481 is
    // common practice, no source.
    #[test]
    fn miles_per_gallon_turn_into_litres_per_100_km() {
        let us = MILES_PER_US_GALLON.quantity(1.0);
        assert_relative_eq!(us.litres_per_100_km(), 235.215, max_relative = 3e-6);
        let imperial = MILES_PER_IMPERIAL_GALLON.quantity(1.0);
        assert_relative_eq!(imperial.litres_per_100_km(), 282.481, max_relative = 3e-6);
    }

    #[test]
    fn every_unit_undoes_itself() {
        for unit in UNITS {
            assert_relative_eq!(unit.value_of(unit.quantity(31.0)), 31.0, max_relative = 1e-14);
        }
    }

    #[test]
    fn volume_over_distance_and_back() -> Result<(), ConsumptionError> {
        let (litre, km) = (LITRE, KILOMETRE);
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
        let nowhere = KILOMETRE.quantity(0.0);
        assert!(Consumption::new(LITRE.quantity(1.0), nowhere).is_err());
    }

    #[test]
    fn stored_consumption_is_checked_when_read() -> Result<(), serde_json::Error> {
        assert!(serde_json::from_str::<Consumption>("-3").is_err());
        let car: Consumption = serde_json::from_str("7.5")?;
        assert_eq!(serde_json::to_string(&car)?, "7.5");
        Ok(())
    }
}
