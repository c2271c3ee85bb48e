//! The ethanol-content sensor in the fuel line: its frequency tells the share,
//! the width of its pulse the temperature.

use serde::{Deserialize, Serialize};
use thiserror::Error;
use uom::si::frequency::hertz;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::millisecond;

use crate::message::keys::practice as words;
use crate::quantity::{Frequency, Share, ThermodynamicTemperature, Time};
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};
use crate::workings::Arithmetic;

/// The frequency without ethanol, in hertz; each hertz above it is one percent.
pub const SENSOR_ZERO_HZ: Sourced<f64> = Sourced {
    value: 50.0,
    source: Source {
        kind: SourceKind::Handbook,
        citation: Citation::Words(words::SENSOR_ZERO_HZ_SOURCE),
        confidence: Confidence::Secondary,
    },
};

/// The frequencies beyond which the sensor reports a fault, in hertz.
pub const SENSOR_FAULT_HZ: Sourced<(f64, f64)> = Sourced {
    value: (45.0, 155.0),
    source: Source {
        kind: SourceKind::Handbook,
        citation: Citation::Words(words::SENSOR_FAULT_HZ_SOURCE),
        confidence: Confidence::Secondary,
    },
};

/// The standard error of a reading, as a fraction of volume, apart from what one
/// sensor always reads high or low.
pub const SENSOR_ERROR: Sourced<f64> = Sourced {
    value: 0.02,
    source: Source {
        kind: SourceKind::FromMemory,
        citation: Citation::Words(words::SENSOR_ERROR_SOURCE),
        confidence: Confidence::Weak,
    },
};

/// The fuel temperature at a pulse of 5 ms. Two are published.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SensorScale {
    /// 125 degrees Celsius, which the trade uses.
    #[default]
    To125,
    /// 95 degrees Celsius, as in a maker's paper of 1993.
    To95,
}

impl SensorScale {
    /// The temperature at 5 ms, in degrees Celsius; at 1 ms it is -40 for both.
    fn top(self) -> f64 {
        match self {
            Self::To125 => 125.0,
            Self::To95 => 95.0,
        }
    }
}

/// Why a signal of the sensor tells nothing.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum SensorError {
    /// The frequency reports a fault.
    Fault {
        /// The frequency, in hertz.
        given: f64,
    },
    /// The pulse has no meaning.
    Pulse {
        /// The width, in milliseconds.
        given: f64,
    },
}

/// The ethanol share at a frequency: one percent per hertz above 50 Hz.
///
/// ```
/// use fillwright::{quantity::Frequency, tank::share_of_frequency};
/// use uom::si::frequency::hertz;
/// let hz = |value| Frequency::new::<hertz>(value);
/// assert!((share_of_frequency(hz(81.0))?.percent() - 31.0).abs() < 1e-9);
/// assert!(share_of_frequency(hz(170.0)).is_err());
/// # Ok::<(), fillwright::tank::SensorError>(())
/// ```
///
/// # Errors
/// Below 45 and above 155 Hz the sensor reports a fault. What lies between that
/// and the ends of the scale counts as 0 and 100 %.
pub fn share_of_frequency(frequency: Frequency) -> Result<Share, SensorError> {
    let given = frequency.get::<hertz>();
    let (low, high) = SENSOR_FAULT_HZ.value;
    if (low..=high).contains(&given) {
        Ok(Share::clamped(sensor_share(given)))
    } else {
        Err(SensorError::Fault { given })
    }
}

/// The share at a frequency `f` in hertz, as it is read off: `(f - f0) / 100`.
pub(crate) fn sensor_share<A: Arithmetic>(frequency: f64) -> A {
    (A::number("f", frequency) - A::number("f0", SENSOR_ZERO_HZ.value)) / A::literal(100.0)
}

/// The fuel's temperature at a width of the pulse: linear from -40 degrees
/// Celsius at 1 ms to the top of the scale at 5 ms.
///
/// # Errors
/// When the width is not between 1 and 5 ms.
pub fn temperature_of_pulse(
    width: Time,
    scale: SensorScale,
) -> Result<ThermodynamicTemperature, SensorError> {
    let given = width.get::<millisecond>();
    if !(1.0..=5.0).contains(&given) {
        return Err(SensorError::Pulse { given });
    }
    let celsius = -40.0 + (given - 1.0) / 4.0 * (scale.top() + 40.0);
    Ok(ThermodynamicTemperature::new::<degree_celsius>(celsius))
}
