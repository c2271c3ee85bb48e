//! The words and symbols that people use for units.
//!
//! All take text that went through [`super::text::words`].

use super::{ConsumptionUnit, DistanceUnit, VolumeUnit};

/// The unit of volume that a word names. A gallon without a country is the
/// person's own: `own` where that is a gallon, else the US one.
pub(super) fn volume_unit(word: &str, own: VolumeUnit) -> Option<VolumeUnit> {
    match word {
        "l" | "ℓ" | "ltr" | "litre" | "litres" | "liter" | "liters" => Some(VolumeUnit::Litre),
        "gal" | "gals" | "gallon" | "gallons" => Some(gallon_of(own)),
        "us gal" | "us gals" | "u s gal" | "u s gallons" | "us gallon" | "us gallons"
        | "gal us" | "gal (us)" | "usg" | "us liquid gallon" | "us liquid gallons" => {
            Some(VolumeUnit::UsGallon)
        }
        "imp gal" | "imp gals" | "imp gallon" | "imp gallons" | "imperial gal"
        | "imperial gallon" | "imperial gallons" | "uk gal" | "uk gals" | "u k gal"
        | "uk gallon" | "uk gallons" | "gal imp" | "gal uk" | "gal (imp)" | "gal (uk)" => {
            Some(VolumeUnit::ImperialGallon)
        }
        _ => None,
    }
}

/// The gallon that a person means who counts fuel in `own`.
fn gallon_of(own: VolumeUnit) -> VolumeUnit {
    match own {
        VolumeUnit::ImperialGallon => VolumeUnit::ImperialGallon,
        VolumeUnit::Litre | VolumeUnit::UsGallon => VolumeUnit::UsGallon,
    }
}

/// The unit of distance that a word names.
pub(super) fn distance_unit(word: &str) -> Option<DistanceUnit> {
    match word {
        "km" | "kms" | "kilometre" | "kilometres" | "kilometer" | "kilometers" => {
            Some(DistanceUnit::Kilometre)
        }
        "mi" | "mile" | "miles" => Some(DistanceUnit::Mile),
        _ => None,
    }
}

/// The unit of consumption that a word names. As with volumes, miles per gallon
/// without a country are those of the person's own unit, else the US ones.
pub(super) fn consumption_unit(word: &str, own: ConsumptionUnit) -> Option<ConsumptionUnit> {
    match word {
        "l/100 km" | "l/100km" | "l/100" | "l per 100 km" | "l per 100km" | "litres/100 km"
        | "litres/100km" | "liters/100 km" | "liters/100km" | "litres per 100 km"
        | "litres per 100km" | "liters per 100 km" | "liters per 100km" => {
            Some(ConsumptionUnit::LitresPer100Km)
        }
        "mpg" | "miles per gallon" | "miles/gallon" | "mi/gal" => Some(match own {
            ConsumptionUnit::MilesPerImperialGallon => ConsumptionUnit::MilesPerImperialGallon,
            ConsumptionUnit::LitresPer100Km | ConsumptionUnit::MilesPerUsGallon => {
                ConsumptionUnit::MilesPerUsGallon
            }
        }),
        "mpg us" | "mpg (us)" | "us mpg" | "mpg-us" | "miles per us gallon" => {
            Some(ConsumptionUnit::MilesPerUsGallon)
        }
        "mpg imp"
        | "mpg (imp)"
        | "imp mpg"
        | "mpg-imp"
        | "mpg uk"
        | "mpg (uk)"
        | "uk mpg"
        | "mpg imperial"
        | "mpg (imperial)"
        | "imperial mpg"
        | "miles per imperial gallon" => Some(ConsumptionUnit::MilesPerImperialGallon),
        _ => None,
    }
}

/// Whether a word is a sign for percent.
pub(super) fn is_percent(word: &str) -> bool {
    matches!(word, "%" | "percent" | "per cent" | "pct" | "vol%" | "vol %" | "% vol" | "%vol")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gallon_without_a_country_is_the_persons_own() {
        assert_eq!(volume_unit("gal", VolumeUnit::Litre), Some(VolumeUnit::UsGallon));
        assert_eq!(
            volume_unit("gal", VolumeUnit::ImperialGallon),
            Some(VolumeUnit::ImperialGallon)
        );
        assert_eq!(volume_unit("us gal", VolumeUnit::ImperialGallon), Some(VolumeUnit::UsGallon));
        assert_eq!(volume_unit("gl", VolumeUnit::Litre), None);
    }

    #[test]
    fn every_symbol_names_its_unit() {
        for unit in VolumeUnit::ALL {
            assert_eq!(volume_unit(&unit.symbol().to_lowercase(), unit), Some(unit));
        }
        for unit in DistanceUnit::ALL {
            assert_eq!(distance_unit(unit.symbol()), Some(unit));
        }
        for unit in ConsumptionUnit::ALL {
            assert_eq!(consumption_unit(&unit.symbol().to_lowercase(), unit), Some(unit));
        }
    }
}
