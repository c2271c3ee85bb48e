//! Readings of an ethanol-content sensor as typed.

use thiserror::Error;
use uom::si::frequency::hertz;
use uom::si::time::millisecond;
use uom::si::volume::milliliter;

use super::text::{clean, split_number, words};
use super::{NumberError, ShareTextError, parse_number, parse_share};
use crate::quantity::{Frequency, Share, Time, Volume};

/// What a person read off an ethanol-content sensor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SensorFigure {
    /// The share, worked out by the device that reads it.
    Share(Share),
    /// The raw frequency.
    Frequency(Frequency),
}

/// Why a text is not a reading.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum SignalTextError {
    /// The number in it cannot be read.
    Number(#[from] NumberError),
    /// It is no share either.
    Share(#[from] ShareTextError),
    /// Something else than the unit follows the number.
    UnknownUnit {
        /// What was typed.
        given: String,
        /// The unit that is known.
        known: &'static str,
    },
}

/// The number before one of these units, or without any.
fn number_in<'a>(
    text: &'a str,
    units: &[&str],
    known: &'static str,
) -> Result<&'a str, SignalTextError> {
    let given = clean(text)?;
    let (number, unit) = split_number(given);
    let unit = words(unit);
    if unit.is_empty() || units.contains(&unit.as_str()) {
        Ok(number)
    } else {
        Err(SignalTextError::UnknownUnit { given: given.to_owned(), known })
    }
}

/// What a text says that a sensor shows: a share as in [`parse_share`], or a
/// frequency where `Hz` stands behind the number.
///
/// ```
/// use fillwright::quantity::notation::{SensorFigure, parse_sensor};
/// assert!(matches!(parse_sensor("81 Hz")?, SensorFigure::Frequency(_)));
/// assert!(matches!(parse_sensor("E31")?, SensorFigure::Share(_)));
/// # Ok::<(), fillwright::quantity::notation::SignalTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning, or the frequency is not from 0 to 1000 Hz.
pub fn parse_sensor(text: &str) -> Result<SensorFigure, SignalTextError> {
    let (number, unit) = split_number(clean(text)?);
    if words(unit) == "hz" {
        let value = parse_number(number, 0.0..=999.0)?;
        return Ok(SensorFigure::Frequency(Frequency::new::<hertz>(value)));
    }
    Ok(SensorFigure::Share(parse_share(text)?))
}

/// The width of a pulse in milliseconds, from 0 to 100.
///
/// # Errors
/// When the text has no meaning.
pub fn parse_pulse_width(text: &str) -> Result<Time, SignalTextError> {
    let number = number_in(text, &["ms"], "ms")?;
    Ok(Time::new::<millisecond>(parse_number(number, 0.0..=100.0)?))
}

/// A volume on a graduated tube in millilitres, from 0 to 999.
///
/// # Errors
/// When the text has no meaning.
pub fn parse_millilitres(text: &str) -> Result<Volume, SignalTextError> {
    let number = number_in(text, &["ml", "cc", "cm3", "cm³"], "mL")?;
    Ok(Volume::new::<milliliter>(parse_number(number, 0.0..=999.0)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reading_is_a_share_unless_it_says_hertz() {
        let hertz_of = |text| match parse_sensor(text) {
            Ok(SensorFigure::Frequency(it)) => it.get::<hertz>(),
            other => panic!("{text}: {other:?}"),
        };
        for text in ["81,5 Hz", "81.5hz", " 81.5 HZ "] {
            approx::assert_abs_diff_eq!(hertz_of(text), 81.5, epsilon = 1e-9);
        }
        for text in ["31", "31 %", "E31"] {
            assert_eq!(
                parse_sensor(text),
                Ok(SensorFigure::Share(Share::from_percent(31.0).unwrap()))
            );
        }
        for text in ["", "Hz", "E81 Hz", "131", "2000 Hz", "31 V"] {
            assert!(parse_sensor(text).is_err(), "{text}");
        }
    }

    #[test]
    fn millilitres_and_milliseconds_may_go_without_unit() {
        let ml = |text| parse_millilitres(text).map(|it| it.get::<milliliter>());
        for text in ["64,5", "64.5 mL", "64.5 cc"] {
            approx::assert_abs_diff_eq!(ml(text).unwrap(), 64.5, epsilon = 1e-9);
        }
        assert!(ml("64 L").is_err() && ml("-1").is_err());
        let width = parse_pulse_width("3,1 ms").map(|it| it.get::<millisecond>());
        approx::assert_abs_diff_eq!(width.unwrap(), 3.1, epsilon = 1e-9);
        assert!(parse_pulse_width("3 s").is_err());
    }
}
