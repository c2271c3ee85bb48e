//! The units of volume and distance, and the systems that they belong to.

use serde::{Deserialize, Serialize};
use uom::si::length::kilometer;
use uom::si::volume::liter;

use crate::quantity::{Length, Volume};

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

/// A unit in which people count fuel.
///
/// ```
/// use fillwright::quantity::notation::VolumeUnit;
/// let tank = VolumeUnit::UsGallon.quantity(18.0);
/// assert!((VolumeUnit::Litre.value_of(tank) - 68.137_412_112).abs() < 1e-12);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum VolumeUnit {
    /// The litre.
    Litre,
    /// The US liquid gallon, 3.785411784 L.
    UsGallon,
    /// The imperial gallon, 4.54609 L.
    ImperialGallon,
}

impl VolumeUnit {
    /// Every unit, in the order in which to offer them.
    pub const ALL: [Self; 3] = [Self::Litre, Self::UsGallon, Self::ImperialGallon];

    /// How many litres one of this unit holds.
    pub fn litres(self) -> f64 {
        match self {
            Self::Litre => 1.0,
            Self::UsGallon => LITRES_PER_US_GALLON,
            Self::ImperialGallon => LITRES_PER_IMPERIAL_GALLON,
        }
    }

    /// How the unit is written after a number.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Litre => "L",
            Self::UsGallon => "gal",
            Self::ImperialGallon => "imp gal",
        }
    }

    /// So many of this unit, as a volume.
    pub fn quantity(self, value: f64) -> Volume {
        Volume::new::<liter>(value * self.litres())
    }

    /// How many of this unit a volume is.
    pub fn value_of(self, volume: Volume) -> f64 {
        volume.get::<liter>() / self.litres()
    }
}

/// A unit in which people count the way driven.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DistanceUnit {
    /// The kilometre.
    Kilometre,
    /// The international mile, 1609.344 m.
    Mile,
}

impl DistanceUnit {
    /// Every unit, in the order in which to offer them.
    pub const ALL: [Self; 2] = [Self::Kilometre, Self::Mile];

    /// How many kilometres one of this unit is.
    pub fn kilometres(self) -> f64 {
        match self {
            Self::Kilometre => 1.0,
            Self::Mile => KILOMETRES_PER_MILE,
        }
    }

    /// How the unit is written after a number.
    pub fn symbol(self) -> &'static str {
        match self {
            Self::Kilometre => "km",
            Self::Mile => "mi",
        }
    }

    /// So many of this unit, as a length.
    pub fn quantity(self, value: f64) -> Length {
        Length::new::<kilometer>(value * self.kilometres())
    }

    /// How many of this unit a length is.
    pub fn value_of(self, distance: Length) -> f64 {
        distance.get::<kilometer>() / self.kilometres()
    }
}

/// The units that go together where a person lives. [`Units`](super::Units) tells
/// which those are, and what was chosen apart from them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum UnitSystem {
    /// Litres, kilometres, litres per 100 km.
    #[default]
    Metric,
    /// US gallons, miles, miles per US gallon.
    Us,
    /// Imperial gallons, miles, miles per imperial gallon.
    Imperial,
}

impl UnitSystem {
    /// Every system, in the order in which to offer them.
    pub const ALL: [Self; 3] = [Self::Metric, Self::Us, Self::Imperial];

    /// The word by which it is stored.
    pub fn word(self) -> &'static str {
        match self {
            Self::Metric => "metric",
            Self::Us => "us",
            Self::Imperial => "imperial",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Units;
    use super::*;
    use approx::assert_relative_eq;
    use uom::si::volume::gallon;

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
        assert_relative_eq!(DistanceUnit::Mile.kilometres(), 1.609_344, max_relative = 1e-15);
    }

    // NIST Special Publication 811, appendix B.8, lists 4.546 09 E-03 m^3 in bold
    // (exact) for the imperial gallon and 3.785 412 E-03 (rounded) for the US one:
    // from memory.
    #[test]
    fn gallons_agree_with_sp_811() {
        assert_relative_eq!(VolumeUnit::ImperialGallon.litres(), 4.546_09, max_relative = 1e-15);
        assert_relative_eq!(VolumeUnit::UsGallon.litres(), 3.785_412, max_relative = 1e-7);
    }

    // The negative: the rounded gallon of `uom` is off in the eighth digit.
    #[test]
    fn tank_of_18_us_gallons_is_not_the_rounded_one() {
        let exact = VolumeUnit::UsGallon.quantity(18.0).get::<liter>();
        assert_relative_eq!(exact, 68.137_412_112, max_relative = 1e-15);
        let rounded = Volume::new::<gallon>(18.0).get::<liter>();
        assert_relative_eq!(rounded, 68.137_416, max_relative = 1e-12);
        assert!((exact - rounded).abs() > 3e-6);
    }

    #[test]
    fn units_are_stored_in_snake_case() -> Result<(), serde_json::Error> {
        assert_eq!(serde_json::to_string(&VolumeUnit::ImperialGallon)?, "\"imperial_gallon\"");
        assert_eq!(serde_json::to_string(&DistanceUnit::Mile)?, "\"mile\"");
        Ok(())
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
