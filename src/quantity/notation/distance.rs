//! Distances and consumption as typed.

use thiserror::Error;

use crate::quantity::Length;
use crate::quantity::notation::text::{clean, split_number, words};
use crate::quantity::notation::words::{consumption_unit, distance_unit};
use crate::quantity::notation::{
    Consumption, ConsumptionError, DistanceUnit, NumberError, Units, parse_number,
};

/// The largest distance that is taken, in its own unit: more than an odometer
/// shows.
const LARGEST_DISTANCE: f64 = 1e7;

/// The smallest and the largest consumption that are taken, in their own unit.
/// The largest stays below 1000 so that 7.500 is never 7500.
const CONSUMPTIONS: (f64, f64) = (0.1, 999.0);

/// Why a text is not a distance or a consumption.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum MeasureTextError {
    /// The number in it cannot be read.
    #[error(transparent)]
    Number(#[from] NumberError),
    /// The number in it is no consumption.
    #[error(transparent)]
    Consumption(#[from] ConsumptionError),
    /// Something else than a unit follows the number.
    #[error("“{given}” does not end in a unit that is known here: type {known} after the number")]
    UnknownUnit {
        /// What was typed.
        given: String,
        /// The units that are known.
        known: &'static str,
    },
}

/// The distance that a text means, in `unit` unless it names another one.
///
/// ```
/// use fillwright::quantity::notation::{DistanceUnit, MeasureTextError, parse_distance};
/// let way = parse_distance("80 mi", DistanceUnit::Kilometre)?;
/// assert!((DistanceUnit::Kilometre.value_of(way) - 128.747_52).abs() < 1e-9);
/// # Ok::<(), MeasureTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning or two (`123.456`), or is not between zero and
/// ten million.
pub fn parse_distance(text: &str, unit: DistanceUnit) -> Result<Length, MeasureTextError> {
    let (number, word, given) = parts(text)?;
    let named = if word.is_empty() { Some(unit) } else { distance_unit(&word) };
    let unknown = MeasureTextError::UnknownUnit { given, known: "km or mi" };
    let unit = named.ok_or(unknown)?;
    Ok(unit.quantity(parse_number(number, 0.0..=LARGEST_DISTANCE)?))
}

/// The consumption that a text means, in the person's own unit unless it names
/// another one. Miles per gallon without a country are the person's own too.
///
/// ```
/// use fillwright::quantity::notation::{MeasureTextError, Units, parse_consumption};
/// let car = parse_consumption("7,5 l/100km", Units::US)?;
/// assert_eq!(car.litres_per_100_km(), 7.5);
/// # Ok::<(), MeasureTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning, or is not between 0.1 and 999.
pub fn parse_consumption(text: &str, units: Units) -> Result<Consumption, MeasureTextError> {
    let (number, word, given) = parts(text)?;
    let named =
        if word.is_empty() { Some(units.consumption()) } else { consumption_unit(&word, units) };
    let known = "L/100 km, km/L, mpg, mpg US or mpg imp";
    let unit = named.ok_or(MeasureTextError::UnknownUnit { given, known })?;
    let (low, high) = CONSUMPTIONS;
    Ok(unit.quantity(parse_number(number, low..=high)?)?)
}

/// The number, the unit made comparable, and the text without blanks around it.
fn parts(text: &str) -> Result<(&str, String, String), NumberError> {
    let given = clean(text)?;
    let (number, rest) = split_number(given);
    if number.is_empty() {
        return Err(NumberError::NotANumber { given: given.to_owned() });
    }
    Ok((number, words(rest), given.to_owned()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::notation::ConsumptionUnit;
    use approx::assert_relative_eq;

    #[test]
    fn distances_name_their_unit_or_not() -> Result<(), MeasureTextError> {
        for (text, unit, kilometres) in [
            ("120", DistanceUnit::Kilometre, 120.0),
            ("120", DistanceUnit::Mile, 193.121_28),
            ("120 km", DistanceUnit::Mile, 120.0),
            ("80mi", DistanceUnit::Kilometre, 128.747_52),
            ("123 456 km", DistanceUnit::Kilometre, 123_456.0),
            ("1,234.5 miles", DistanceUnit::Kilometre, 1_986.735_168),
        ] {
            let way = DistanceUnit::Kilometre.value_of(parse_distance(text, unit)?);
            assert_relative_eq!(way, kilometres, max_relative = 1e-12);
        }
        Ok(())
    }

    #[test]
    fn odometer_with_one_separator_is_a_question() {
        let asked = parse_distance("123.456", DistanceUnit::Kilometre);
        let question =
            matches!(asked, Err(MeasureTextError::Number(NumberError::Ambiguous { .. })));
        assert!(question, "{asked:?}");
    }

    #[test]
    fn consumptions_name_their_unit_or_not() -> Result<(), MeasureTextError> {
        use ConsumptionUnit::{LitresPer100Km, MilesPerImperialGallon, MilesPerUsGallon};
        for (text, units, same) in [
            ("7.5", Units::METRIC, LitresPer100Km.quantity(7.5)?),
            ("7,5 l/100km", Units::US, LitresPer100Km.quantity(7.5)?),
            ("7.500 L / 100 km", Units::METRIC, LitresPer100Km.quantity(7.5)?),
            // 100 km with 8 L, as every kilometre takes a 12.5th of one.
            ("12,5 km/l", Units::METRIC, LitresPer100Km.quantity(8.0)?),
            ("31", Units::US, MilesPerUsGallon.quantity(31.0)?),
            ("31 mpg", Units::METRIC, MilesPerUsGallon.quantity(31.0)?),
            ("31 mpg", Units::IMPERIAL, MilesPerImperialGallon.quantity(31.0)?),
            ("31 mpg US", Units::IMPERIAL, MilesPerUsGallon.quantity(31.0)?),
            ("37 mpg imp", Units::METRIC, MilesPerImperialGallon.quantity(37.0)?),
        ] {
            assert_eq!(parse_consumption(text, units)?, same, "{text}");
        }
        Ok(())
    }

    #[test]
    fn other_units_are_refused() {
        for text in ["", "km", "5 l", "5 m", "5 km/h", "km 5", "-5 km", "1e7 km", "10000001"] {
            assert!(parse_distance(text, DistanceUnit::Kilometre).is_err(), "{text}");
        }
        for text in ["", "mpg", "0", "0 mpg", "-7", "7 l", "1000", "7 l/100 mi"] {
            assert!(parse_consumption(text, Units::METRIC).is_err(), "{text}");
        }
    }
}
