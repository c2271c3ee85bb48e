//! Which unit a bare number has, and which one a figure is printed in: a system,
//! and for each quantity the unit that was chosen apart from it.

use std::fmt;

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::{ConsumptionUnit, DistanceUnit, UnitSystem, VolumeUnit};

/// A unit that can be chosen: the word that stands for it where the choice is
/// stored, and its symbol.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Choice {
    /// The word in a stored choice. No two choices of any quantity share one.
    pub word: &'static str,
    /// How it is written after a number.
    pub symbol: &'static str,
}

macro_rules! choosables {
    ($($(#[$doc:meta])+ $name:ident [$metric:literal, $us:literal, $imperial:literal]:
        $($word:literal $symbol:literal),+;)+) => {
        /// A quantity whose unit can be chosen apart from the system.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Choosable {
            $($(#[$doc])+ $name),+
        }

        impl Choosable {
            /// Every one, in the order in which to offer them.
            pub const ALL: [Self; COUNT] = [$(Self::$name),+];

            /// The units that are offered.
            pub fn choices(self) -> &'static [Choice] {
                match self {
                    $(Self::$name => &[$(Choice { word: $word, symbol: $symbol }),+]),+
                }
            }

            /// Where in [`Choosable::choices`] a system's own unit stands.
            fn home(self, system: UnitSystem) -> u8 {
                let [metric, us, imperial] = match self {
                    $(Self::$name => [$metric, $us, $imperial]),+
                };
                match system {
                    UnitSystem::Metric => metric,
                    UnitSystem::Us => us,
                    UnitSystem::Imperial => imperial,
                }
            }
        }
    };
}

/// How many quantities have a unit of their own.
const COUNT: usize = 14;

// After each name: which of its units is at home in the metric, the US and the
// imperial system.
choosables! {
    /// Fuel.
    Volume [0, 1, 2]:
        "litre" "L", "us_gallon" "gal", "imperial_gallon" "imp gal";
    /// The way driven.
    Distance [0, 1, 1]:
        "kilometre" "km", "mile" "mi";
    /// Fuel over distance.
    Consumption [0, 2, 3]:
        "litres_per_100_km" "L/100 km", "kilometres_per_litre" "km/L",
        "miles_per_us_gallon" "mpg", "miles_per_imperial_gallon" "mpg";
    /// Pressures of fuel, and boost.
    Pressure [0, 2, 2]:
        "bar" "bar", "kilopascal" "kPa", "psi" "psi";
    /// The pressure of the air around.
    AirPressure [0, 2, 0]:
        "hectopascal" "hPa", "kilopascal_of_air" "kPa", "inch_of_mercury" "inHg";
    /// Power.
    Power [0, 2, 2]:
        "kilowatt" "kW", "metric_horsepower" "PS", "horsepower" "hp";
    /// Torque.
    Torque [0, 1, 1]:
        "newton_metre" "N·m", "pound_foot" "lb·ft";
    /// Temperature.
    Temperature [0, 1, 0]:
        "celsius" "°C", "fahrenheit" "°F";
    /// What an injector passes by volume.
    InjectorFlow [0, 0, 0]:
        "cubic_centimetres_per_minute" "cc/min", "injector_litres_per_hour" "L/h";
    /// What a pump or an engine passes by volume.
    PumpFlow [0, 2, 3]:
        "litres_per_hour" "L/h", "litres_per_minute" "L/min",
        "us_gallons_per_hour" "gal/h", "imperial_gallons_per_hour" "imp gal/h";
    /// A fuel flow by mass.
    MassFlow [0, 2, 2]:
        "grams_per_second" "g/s", "kilograms_per_hour" "kg/h", "pounds_per_hour" "lb/h";
    /// An air flow by mass.
    AirFlow [0, 3, 3]:
        "kilograms_per_second_of_air" "kg/s", "grams_per_second_of_air" "g/s",
        "kilograms_per_hour_of_air" "kg/h", "pounds_per_minute_of_air" "lb/min";
    /// The scale of an octane number.
    Octane [0, 1, 0]:
        "ron" "RON", "aki" "AKI";
    /// How rich or lean the mixture is: the air-fuel ratio over that of burning
    /// without rest, or the ratio itself, of petrol or of the blend at hand.
    Mixture [0, 0, 0]:
        "lambda" "λ", "afr_of_petrol" "AFR", "afr_of_the_blend" "AFR";
}

/// The scale on which octane numbers are told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OctaneScale {
    /// The research octane number.
    Ron,
    /// The anti-knock index.
    Aki,
}

/// How a mixture is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MixtureScale {
    /// As lambda.
    Lambda,
    /// As the air-fuel ratio that petrol would have at the same lambda, as a gauge
    /// set to petrol shows it whatever the fuel.
    AfrOfPetrol,
    /// As the air-fuel ratio of the blend at hand.
    AfrOfTheBlend,
}

/// The units of one person: a system, and what was chosen apart from it.
///
/// ```
/// use fillwright::quantity::notation::{Choosable, Units, VolumeUnit};
/// let units = Units::US.with(Choosable::Pressure, "kilopascal").unwrap_or_default();
/// assert_eq!(units.choice(Choosable::Pressure).symbol, "kPa");
/// assert_eq!(units.volume(), VolumeUnit::UsGallon);
/// assert_eq!(units.to_string(), "us+kilopascal");
/// assert_eq!("us+kilopascal".parse(), Ok(units));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Units {
    system: UnitSystem,
    /// For each quantity one more than the place of what was chosen; zero where
    /// the system decides. What the system has anyway is never put down, so that
    /// equal units are equal values.
    chosen: [u8; COUNT],
}

/// Why a text is not a choice of units.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[error(
    "“{given}” is no choice of units: write metric, us or imperial, and after it a + and the name \
     of a unit for each that differs"
)]
pub struct UnitsError {
    /// What was given.
    pub given: String,
}

impl Units {
    /// Litres, kilometres, bar, kilowatts.
    pub const METRIC: Self = Self::of(UnitSystem::Metric);
    /// US gallons, miles, psi, horsepower.
    pub const US: Self = Self::of(UnitSystem::Us);
    /// Imperial gallons, miles, psi, horsepower.
    pub const IMPERIAL: Self = Self::of(UnitSystem::Imperial);

    /// A system, nothing chosen apart from it.
    pub const fn of(system: UnitSystem) -> Self {
        Self { system, chosen: [0; COUNT] }
    }

    /// The system that decides where nothing was chosen.
    pub fn system(self) -> UnitSystem {
        self.system
    }

    /// Whether some unit was chosen apart from the system.
    pub fn are_mixed(self) -> bool {
        self.chosen != [0; COUNT]
    }

    /// The same with the unit of one quantity chosen; `None` when it is not offered
    /// for that.
    pub fn with(mut self, quantity: Choosable, word: &str) -> Option<Self> {
        let place = quantity.choices().iter().position(|choice| choice.word == word)?;
        let place = u8::try_from(place).ok()?;
        self.chosen[quantity as usize] =
            if place == quantity.home(self.system) { 0 } else { place + 1 };
        Some(self)
    }

    /// The unit of a quantity.
    pub fn choice(self, quantity: Choosable) -> Choice {
        quantity.choices()[self.place(quantity)]
    }

    fn place(self, quantity: Choosable) -> usize {
        let chosen = self.chosen[quantity as usize].checked_sub(1);
        usize::from(chosen.unwrap_or_else(|| quantity.home(self.system)))
    }

    /// The unit of fuel.
    pub fn volume(self) -> VolumeUnit {
        VolumeUnit::ALL[self.place(Choosable::Volume)]
    }

    /// The unit of the way driven.
    pub fn distance(self) -> DistanceUnit {
        DistanceUnit::ALL[self.place(Choosable::Distance)]
    }

    /// The unit of consumption.
    pub fn consumption(self) -> ConsumptionUnit {
        ConsumptionUnit::ALL[self.place(Choosable::Consumption)]
    }

    /// The scale of a bare octane number.
    pub fn octane(self) -> OctaneScale {
        [OctaneScale::Ron, OctaneScale::Aki][self.place(Choosable::Octane)]
    }

    /// How a mixture is told.
    pub fn mixture(self) -> MixtureScale {
        const ALL: [MixtureScale; 3] =
            [MixtureScale::Lambda, MixtureScale::AfrOfPetrol, MixtureScale::AfrOfTheBlend];
        ALL[self.place(Choosable::Mixture)]
    }

    /// The gallon that is meant where no country is named: the person's own, or
    /// else that of the system, or else the US one. Who pumps litres in an imperial
    /// country still means the imperial gallon.
    pub fn gallon(self) -> VolumeUnit {
        use ConsumptionUnit::{MilesPerImperialGallon, MilesPerUsGallon};
        let of_distance = match (self.consumption(), self.system) {
            (MilesPerImperialGallon, _) => true,
            (MilesPerUsGallon, _) => false,
            (_, system) => system == UnitSystem::Imperial,
        };
        match (self.volume(), of_distance) {
            (VolumeUnit::ImperialGallon, _) | (VolumeUnit::Litre, true) => {
                VolumeUnit::ImperialGallon
            }
            (VolumeUnit::UsGallon, _) | (VolumeUnit::Litre, false) => VolumeUnit::UsGallon,
        }
    }
}

impl From<UnitSystem> for Units {
    fn from(system: UnitSystem) -> Self {
        Self::of(system)
    }
}

impl From<VolumeUnit> for Units {
    /// The units of the system in which fuel is counted so.
    fn from(unit: VolumeUnit) -> Self {
        match unit {
            VolumeUnit::Litre => Self::METRIC,
            VolumeUnit::UsGallon => Self::US,
            VolumeUnit::ImperialGallon => Self::IMPERIAL,
        }
    }
}

impl fmt::Display for Units {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(self.system.word())?;
        for quantity in Choosable::ALL.into_iter().filter(|it| self.chosen[*it as usize] > 0) {
            write!(formatter, "+{}", self.choice(quantity).word)?;
        }
        Ok(())
    }
}

impl std::str::FromStr for Units {
    type Err = UnitsError;

    fn from_str(text: &str) -> Result<Self, UnitsError> {
        let mut words = text.split('+');
        let first = words.next().unwrap_or_default();
        let system = UnitSystem::ALL.into_iter().find(|system| system.word() == first);
        let add =
            |units: Self, word| Choosable::ALL.into_iter().find_map(|it| units.with(it, word));
        system
            .and_then(|system| words.try_fold(Self::of(system), add))
            .ok_or_else(|| UnitsError { given: text.chars().take(80).collect() })
    }
}

impl TryFrom<String> for Units {
    type Error = UnitsError;
    fn try_from(text: String) -> Result<Self, UnitsError> {
        text.parse()
    }
}

impl From<Units> for String {
    fn from(units: Units) -> Self {
        units.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn choices_of_typed_units_are_those_units() {
        let symbols = |quantity: Choosable| -> Vec<_> {
            quantity.choices().iter().map(|choice| choice.symbol).collect()
        };
        assert_eq!(symbols(Choosable::Volume), VolumeUnit::ALL.map(VolumeUnit::symbol));
        assert_eq!(symbols(Choosable::Distance), DistanceUnit::ALL.map(DistanceUnit::symbol));
        let consumption = ConsumptionUnit::ALL.map(ConsumptionUnit::symbol);
        assert_eq!(symbols(Choosable::Consumption), consumption);
    }

    #[test]
    fn every_choice_is_stored_by_a_word_of_its_own() {
        let mut words: Vec<_> =
            Choosable::ALL.iter().flat_map(|it| it.choices()).map(|choice| choice.word).collect();
        let count = words.len();
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), count);
        for system in UnitSystem::ALL {
            for quantity in Choosable::ALL {
                for choice in quantity.choices() {
                    let units = Units::of(system).with(quantity, choice.word).unwrap();
                    assert_eq!(units.choice(quantity), *choice);
                    assert_eq!(units.to_string().parse(), Ok(units));
                    assert_eq!(units.system(), system);
                }
            }
        }
    }

    #[test]
    fn what_the_system_has_anyway_is_no_choice() {
        let units = Units::US.with(Choosable::Pressure, "bar").unwrap();
        assert!(units.are_mixed());
        assert_eq!(units.with(Choosable::Pressure, "psi"), Some(Units::US));
        assert_eq!("us+psi".parse(), Ok(Units::US));
        assert_eq!(Units::US.with(Choosable::Power, "psi"), None);
    }

    #[test]
    fn gallon_of_a_british_driver_is_imperial_though_pumps_count_litres() {
        let british = Units::IMPERIAL.with(Choosable::Volume, "litre").unwrap();
        assert_eq!(british.gallon(), VolumeUnit::ImperialGallon);
        let canadian =
            Units::METRIC.with(Choosable::Consumption, "miles_per_imperial_gallon").unwrap();
        assert_eq!(canadian.gallon(), VolumeUnit::ImperialGallon);
        assert_eq!(Units::METRIC.gallon(), VolumeUnit::UsGallon);
    }

    #[test]
    fn other_words_are_refused() {
        for text in ["", "SI", "metric+", "metric+furlong", "psi", "metric psi", "+psi"] {
            let refused = text.parse::<Units>();
            assert_eq!(refused, Err(UnitsError { given: text.into() }), "{text}");
        }
        assert_eq!(serde_json::from_str::<Units>("\"imperial\"").unwrap(), Units::IMPERIAL);
        assert!(serde_json::from_str::<Units>("\"imperial+bar+stone\"").is_err());
    }
}
