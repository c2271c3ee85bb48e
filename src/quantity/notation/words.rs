//! The words and symbols that people use for units.
//!
//! All take text that went through [`super::text::words`].

use super::{ConsumptionUnit, DistanceUnit, Units, VolumeUnit};

/// The unit of volume that a word names. A gallon without a country is that of
/// [`Units::gallon`].
pub(super) fn volume_unit(word: &str, own: Units) -> Option<VolumeUnit> {
    match word {
        "l" | "ℓ" | "ltr" | "litre" | "litres" | "liter" | "liters" => Some(VolumeUnit::Litre),
        "gal" | "gals" | "gallon" | "gallons" => Some(own.gallon()),
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

/// The unit of consumption that a word names. Miles per gallon without a country
/// are the person's own, or else those of [`Units::gallon`].
pub(super) fn consumption_unit(word: &str, own: Units) -> Option<ConsumptionUnit> {
    match word {
        "l/100 km" | "l/100km" | "l/100" | "l per 100 km" | "l per 100km" | "litres/100 km"
        | "litres/100km" | "liters/100 km" | "liters/100km" | "litres per 100 km"
        | "litres per 100km" | "liters per 100 km" | "liters per 100km" => {
            Some(ConsumptionUnit::LitresPer100Km)
        }
        "km/l"
        | "kml"
        | "kmpl"
        | "km per l"
        | "km/litre"
        | "km/liter"
        | "km per litre"
        | "km per liter"
        | "kilometres per litre"
        | "kilometers per liter" => Some(ConsumptionUnit::KilometresPerLitre),
        "mpg" | "miles per gallon" | "miles/gallon" | "mi/gal" => {
            Some(match (own.consumption(), own.gallon()) {
                (ConsumptionUnit::MilesPerUsGallon, _) => ConsumptionUnit::MilesPerUsGallon,
                (ConsumptionUnit::MilesPerImperialGallon, _) | (_, VolumeUnit::ImperialGallon) => {
                    ConsumptionUnit::MilesPerImperialGallon
                }
                _ => ConsumptionUnit::MilesPerUsGallon,
            })
        }
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
    use super::super::Choosable;
    use super::*;

    #[test]
    fn gallon_without_a_country_is_the_persons_own() {
        assert_eq!(volume_unit("gal", Units::METRIC), Some(VolumeUnit::UsGallon));
        assert_eq!(volume_unit("gal", Units::IMPERIAL), Some(VolumeUnit::ImperialGallon));
        assert_eq!(volume_unit("us gal", Units::IMPERIAL), Some(VolumeUnit::UsGallon));
        assert_eq!(volume_unit("gl", Units::METRIC), None);
        let british = Units::IMPERIAL.with(Choosable::Consumption, "litres_per_100_km").unwrap();
        let mpg = consumption_unit("mpg", british);
        assert_eq!(mpg, Some(ConsumptionUnit::MilesPerImperialGallon));
    }

    #[test]
    fn every_symbol_names_its_unit() {
        for unit in VolumeUnit::ALL {
            assert_eq!(volume_unit(&unit.symbol().to_lowercase(), unit.into()), Some(unit));
        }
        for unit in DistanceUnit::ALL {
            assert_eq!(distance_unit(unit.symbol()), Some(unit));
        }
        for choice in Choosable::Consumption.choices() {
            let own = Units::METRIC.with(Choosable::Consumption, choice.word).unwrap();
            let named = consumption_unit(&choice.symbol.to_lowercase(), own);
            assert_eq!(named, Some(own.consumption()));
        }
    }
}
