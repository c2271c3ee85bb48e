//! What goes into a tank and how far it takes a car: volumes, distances, consumption.

use crate::quantity::notation::Choosable;
use crate::quantity::notation::UnitSystem::{Imperial, Us};
use crate::quantity::notation::field::{QuantityField, Taken};
use crate::quantity::notation::unit::Unit;
use crate::quantity::{Consumption, Length, Volume};

/// Litres in a US gallon: 231 cubic inches (NIST Handbook 44, appendix C), with
/// the inch 25.4 mm exactly (international yard and pound agreement, 1959).
///
/// The crate `uom` has a gallon too, but rounded to 3.785412 L: it is not used.
pub const LITRES_PER_US_GALLON: f64 = 3.785_411_784;

/// Litres in an imperial gallon, exact by definition (Weights and Measures Act
/// 1985, United Kingdom; the clause was not looked up).
pub const LITRES_PER_IMPERIAL_GALLON: f64 = 4.546_09;

/// Kilometres in a mile: 1760 yards of 0.9144 m exactly (international yard and
/// pound agreement, 1959).
pub const KILOMETRES_PER_MILE: f64 = 1.609_344;

/// The litre.
///
/// ```
/// use fillwright::quantity::notation::{LITRE, US_GALLON};
/// let tank = US_GALLON.quantity(18.0);
/// assert!((LITRE.value_of(tank) - 68.137_412_112).abs() < 1e-12);
/// ```
pub const LITRE: Unit<Volume> =
    Unit::new("L", 1e-3, 1, &["l", "ℓ", "ltr", "litre", "litres", "liter", "liters"])
        .chosen_as("litre");

/// The US liquid gallon, 3.785411784 L.
pub const US_GALLON: Unit<Volume> = Unit::new(
    "gal",
    LITRES_PER_US_GALLON * 1e-3,
    1,
    &[
        "gal",
        "gals",
        "gallon",
        "gallons",
        "us gal",
        "us gals",
        "u s gal",
        "u s gallons",
        "us gallon",
        "us gallons",
        "gal us",
        "gal (us)",
        "usg",
        "us liquid gallon",
        "us liquid gallons",
    ],
)
.chosen_as("us_gallon")
.at_home(&[Us]);

/// The imperial gallon, 4.54609 L.
pub const IMPERIAL_GALLON: Unit<Volume> = Unit::new(
    "imp gal",
    LITRES_PER_IMPERIAL_GALLON * 1e-3,
    1,
    &[
        "gal",
        "gals",
        "gallon",
        "gallons",
        "imp gal",
        "imp gals",
        "imp gallon",
        "imp gallons",
        "imperial gal",
        "imperial gallon",
        "imperial gallons",
        "uk gal",
        "uk gals",
        "u k gal",
        "uk gallon",
        "uk gallons",
        "gal imp",
        "gal uk",
        "gal (imp)",
        "gal (uk)",
    ],
)
.chosen_as("imperial_gallon")
.at_home(&[Imperial]);

/// Fuel. A field for it also takes parts of a tank: see
/// [`parse_volume`](crate::quantity::notation::parse_volume).
pub static VOLUME: QuantityField<Volume> = QuantityField {
    choosable: Some(Choosable::Volume),
    main: LITRE,
    others: &[US_GALLON, IMPERIAL_GALLON],
    refused: &[],
    taken: Taken::InSi(0.0, 1.0),
};

/// The kilometre.
pub const KILOMETRE: Unit<Length> =
    Unit::new("km", 1e3, 0, &["km", "kms", "kilometre", "kilometres", "kilometer", "kilometers"])
        .chosen_as("kilometre");

/// The international mile, 1609.344 m.
pub const MILE: Unit<Length> =
    Unit::new("mi", KILOMETRES_PER_MILE * 1e3, 0, &["mi", "mile", "miles"])
        .chosen_as("mile")
        .at_home(&[Us, Imperial]);

/// The way driven: no more than an odometer shows.
pub static DISTANCE: QuantityField<Length> = QuantityField {
    choosable: Some(Choosable::Distance),
    main: KILOMETRE,
    others: &[MILE],
    refused: &[],
    taken: Taken::InUnit(0.0, 1e7),
};

/// Litres per 100 km.
pub const LITRES_PER_100_KM: Unit<Consumption> = Unit::new(
    "L/100 km",
    1e-8,
    1,
    &[
        "l/100 km",
        "l/100km",
        "l/100",
        "litres/100 km",
        "litres/100km",
        "liters/100 km",
        "liters/100km",
    ],
)
.chosen_as("litres_per_100_km");

/// Kilometres per litre.
pub const KILOMETRES_PER_LITRE: Unit<Consumption> = Unit::reciprocal(
    "km/L",
    1e-6,
    1,
    &["km/l", "kml", "kmpl", "km/litre", "km/liter", "kilometres/litre", "kilometers/liter"],
)
.chosen_as("kilometres_per_litre");

/// Miles per US gallon.
pub const MILES_PER_US_GALLON: Unit<Consumption> = Unit::reciprocal(
    "mpg",
    LITRES_PER_US_GALLON / KILOMETRES_PER_MILE * 1e-6,
    1,
    &["mpg", "miles/gallon", "mi/gal", "mpg us", "mpg (us)", "us mpg", "miles/us gallon"],
)
.chosen_as("miles_per_us_gallon")
.at_home(&[Us]);

/// Miles per imperial gallon, written as those per US gallon are: the settings say which
/// gallon it is.
pub const MILES_PER_IMPERIAL_GALLON: Unit<Consumption> = Unit::reciprocal(
    "mpg",
    LITRES_PER_IMPERIAL_GALLON / KILOMETRES_PER_MILE * 1e-6,
    1,
    &[
        "mpg",
        "miles/gallon",
        "mi/gal",
        "mpg imp",
        "mpg (imp)",
        "imp mpg",
        "mpg uk",
        "mpg (uk)",
        "uk mpg",
        "mpg imperial",
        "mpg (imperial)",
        "imperial mpg",
        "miles/imperial gallon",
    ],
)
.chosen_as("miles_per_imperial_gallon")
.at_home(&[Imperial]);

/// Fuel over distance. The largest stays below 1000, so that 7.500 is never 7500.
pub static CONSUMPTION: QuantityField<Consumption> = QuantityField {
    choosable: Some(Choosable::Consumption),
    main: LITRES_PER_100_KM,
    others: &[KILOMETRES_PER_LITRE, MILES_PER_US_GALLON, MILES_PER_IMPERIAL_GALLON],
    refused: &[],
    taken: Taken::InUnit(0.1, 999.0),
};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::notation::Units;
    use approx::assert_relative_eq;
    use uom::si::volume::gallon;
    use uom::si::volume::liter;

    // NIST Handbook 44, appendix C, section 4, gives the US gallon as 231 cubic
    // inches exactly. The inch is 254 tenths of a millimetre, so the gallon in
    // units of (0.1 mm)^3, of which a litre has 10^12, is a whole number.
    #[test]
    fn us_gallon_is_231_cubic_inches() {
        let tenths_cubed: u64 = 231 * 254 * 254 * 254;
        assert_eq!(tenths_cubed, 3_785_411_784);
        assert_relative_eq!(LITRES_PER_US_GALLON, 3.785_411_784, max_relative = 1e-15);
    }

    // 1760 yards of 914.4 mm.
    #[test]
    fn mile_is_1760_yards() {
        let tenths: u64 = 1760 * 9144;
        assert_eq!(tenths, 16_093_440);
        assert_relative_eq!(
            KILOMETRE.value_of(MILE.quantity(1.0)),
            1.609_344,
            max_relative = 1e-15
        );
    }

    // NIST Special Publication 811, appendix B.8, lists 4.546 09 E-03 m^3 in bold
    // (exact) for the imperial gallon and 3.785 412 E-03 (rounded) for the US one:
    // from memory.
    #[test]
    fn gallons_agree_with_sp_811() {
        assert_relative_eq!(
            LITRE.value_of(IMPERIAL_GALLON.quantity(1.0)),
            4.546_09,
            max_relative = 1e-15
        );
        assert_relative_eq!(
            LITRE.value_of(US_GALLON.quantity(1.0)),
            3.785_412,
            max_relative = 1e-7
        );
    }

    // The negative: the rounded gallon of `uom` is off in the eighth digit.
    #[test]
    fn tank_of_18_us_gallons_is_not_the_rounded_one() {
        let exact = US_GALLON.quantity(18.0).get::<liter>();
        assert_relative_eq!(exact, 68.137_412_112, max_relative = 1e-15);
        let rounded = Volume::new::<gallon>(18.0).get::<liter>();
        assert_relative_eq!(rounded, 68.137_416, max_relative = 1e-12);
        assert!((exact - rounded).abs() > 3e-6);
    }

    #[test]
    fn systems_use_their_own_units() {
        assert_eq!(Units::METRIC.volume().symbol(), "L");
        assert_eq!(Units::US.volume().symbol(), "gal");
        assert_eq!(Units::IMPERIAL.volume().symbol(), "imp gal");
        assert_eq!(Units::METRIC.distance().symbol(), "km");
        assert_eq!(Units::IMPERIAL.distance().symbol(), "mi");
    }
}
