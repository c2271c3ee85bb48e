//! Humid air: the pressure of its vapour, and of what is dry.

use thiserror::Error;
use uom::si::pressure::{kilopascal, pascal};
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

use crate::message::keys::practice as words;
use crate::quantity::{AbsolutePressure, Pressure, ThermodynamicTemperature};
use crate::source::{Citation, Confidence, Source, SourceKind};

/// Where the vapour pressure comes from.
pub const VAPOUR_PRESSURE_SOURCE: Source = Source {
    kind: SourceKind::Law,
    citation: Citation::Words(words::VAPOUR_PRESSURE_SOURCE),
    confidence: Confidence::Secondary,
};

/// The temperatures of air that are taken, in degrees Celsius.
const TEMPERATURES: (f64, f64) = (-40.0, 60.0);

/// The pressures of air that are taken, in kilopascals.
const PRESSURES: (f64, f64) = (50.0, 110.0);

/// Why three numbers are no air that an engine breathes.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum AmbientAirError {
    /// Too cold or too hot, in degrees Celsius.
    Temperature {
        /// What was given.
        given: f64,
    },
    /// Too low or too high, in kilopascals.
    Pressure {
        /// What was given.
        given: f64,
    },
    /// Not between dry and saturated.
    Humidity {
        /// What was given, as a fraction.
        given: f64,
    },
}

/// The air around an engine on a test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AmbientAir {
    temperature: ThermodynamicTemperature,
    pressure: AbsolutePressure,
    relative_humidity: f64,
}

impl AmbientAir {
    /// Air from its temperature (-40 to 60 degrees Celsius), its total pressure (50
    /// to 110 kPa) and its relative humidity as a fraction (0 to 1).
    ///
    /// # Errors
    /// When one of them is outside its range.
    pub fn new(
        temperature: ThermodynamicTemperature,
        pressure: AbsolutePressure,
        relative_humidity: f64,
    ) -> Result<Self, AmbientAirError> {
        let celsius = temperature.get::<degree_celsius>();
        let kilopascals = pressure.get().get::<kilopascal>();
        let within = |value: f64, (low, high): (f64, f64)| {
            // What conversion adds in the last digits does not count.
            (low - 1e-9..=high + 1e-9).contains(&value)
        };
        if !within(celsius, TEMPERATURES) {
            return Err(AmbientAirError::Temperature { given: celsius });
        }
        if !within(kilopascals, PRESSURES) {
            return Err(AmbientAirError::Pressure { given: kilopascals });
        }
        if !(0.0..=1.0).contains(&relative_humidity) {
            return Err(AmbientAirError::Humidity { given: relative_humidity });
        }
        Ok(Self { temperature, pressure, relative_humidity })
    }

    /// Its temperature.
    pub fn temperature(&self) -> ThermodynamicTemperature {
        self.temperature
    }

    /// Its total pressure, vapour included.
    pub fn pressure(&self) -> AbsolutePressure {
        self.pressure
    }

    /// Its relative humidity as a fraction.
    pub fn relative_humidity(&self) -> f64 {
        self.relative_humidity
    }

    /// The part of the pressure that the water vapour makes up.
    pub fn vapour_pressure(&self) -> Pressure {
        saturation_vapour_pressure(self.temperature) * self.relative_humidity
    }

    /// The pressure without the vapour: only dry air brings oxygen.
    pub fn dry_pressure(&self) -> AbsolutePressure {
        AbsolutePressure::new(self.pressure.get() - self.vapour_pressure())
    }
}

/// The vapour pressure of water above its liquid, also where it is supercooled
/// (40 CFR 1065.645(a)), for -50 to 100 degrees Celsius.
pub fn saturation_vapour_pressure(temperature: ThermodynamicTemperature) -> Pressure {
    // The regulation's own coefficients, in kilopascals and kelvin.
    let ratio = temperature.get::<kelvin>() / 273.16;
    let logarithm = 10.795_74 * (1.0 - 1.0 / ratio) - 5.028_00 * ratio.log10()
        + 1.504_75e-4 * (1.0 - 10_f64.powf(-8.2969 * (ratio - 1.0)))
        + 0.428_73e-3 * (10_f64.powf(4.769_55 * (1.0 - 1.0 / ratio)) - 1.0)
        - 0.213_860_2;
    Pressure::new::<pascal>(10_f64.powf(logarithm) * 1000.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn air(celsius: f64, kilopascals: f64, humidity: f64) -> Result<AmbientAir, AmbientAirError> {
        AmbientAir::new(
            ThermodynamicTemperature::new::<degree_celsius>(celsius),
            AbsolutePressure::new(Pressure::new::<kilopascal>(kilopascals)),
            humidity,
        )
    }

    #[test]
    fn dry_air_has_all_the_pressure() {
        let dry = air(20.0, 101.3, 0.0).unwrap();
        assert_eq!(dry.dry_pressure(), dry.pressure());
        let damp = air(20.0, 101.3, 1.0).unwrap();
        assert!(damp.dry_pressure() < dry.dry_pressure());
    }

    #[test]
    fn air_that_nobody_breathes_is_refused() {
        assert!(matches!(air(300.0, 100.0, 0.5), Err(AmbientAirError::Temperature { .. })));
        // Bars or hectopascals taken for kilopascals.
        assert!(matches!(air(20.0, 1.013, 0.5), Err(AmbientAirError::Pressure { .. })));
        assert!(matches!(air(20.0, 1013.0, 0.5), Err(AmbientAirError::Pressure { .. })));
        assert!(matches!(air(20.0, 100.0, 50.0), Err(AmbientAirError::Humidity { .. })));
        assert!(air(20.0, 100.0, f64::NAN).is_err() && air(f64::NAN, 100.0, 0.5).is_err());
        assert!(air(-40.0, 50.0, 1.0).is_ok() && air(60.0, 110.0, 1.0).is_ok());
    }
}
