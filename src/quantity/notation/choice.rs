//! Which unit a bare number has, and which one a figure is printed in: a system,
//! and for each quantity the unit that was chosen apart from it.

use std::fmt;

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::field::QuantityField;
use super::quantities;
use super::unit::{InSi, Unit, UnitName};
use crate::quantity::{Consumption, Length, Volume};

/// The rows of a quantity's units, whatever the quantity.
pub(super) trait Rows: Sync {
    /// The name of the first unit.
    fn main(&self) -> UnitName;
    /// The name of the unit in a row, while there are rows.
    fn name(&self, row: usize) -> Option<UnitName>;
}

impl<Q: InSi> Rows for QuantityField<Q> {
    fn main(&self) -> UnitName {
        self.main.name()
    }

    fn name(&self, row: usize) -> Option<UnitName> {
        self.units().nth(row).map(|unit| unit.name())
    }
}

/// Scales of which none turns into another without knowing the fuel, each with its name.
struct Scales<T: 'static> {
    main: (UnitName, T),
    others: &'static [(UnitName, T)],
}

impl<T: Copy> Scales<T> {
    fn rows(&self) -> impl Iterator<Item = (UnitName, T)> {
        std::iter::once(self.main).chain(self.others.iter().copied())
    }

    /// The scale of one person.
    fn own(&self, quantity: Choosable, units: Units) -> T {
        let own = units.choice(quantity);
        self.rows().find(|(name, _)| *name == own).unwrap_or(self.main).1
    }
}

impl<T: Copy + Sync> Rows for Scales<T> {
    fn main(&self) -> UnitName {
        self.main.0
    }

    fn name(&self, row: usize) -> Option<UnitName> {
        self.rows().nth(row).map(|(name, _)| name)
    }
}

static OCTANE: Scales<OctaneScale> = Scales {
    main: (UnitName::new("RON").chosen_as("ron"), OctaneScale::Ron),
    others: &[(UnitName::new("AKI").chosen_as("aki").at_home(&[UnitSystem::Us]), OctaneScale::Aki)],
};

static MIXTURE: Scales<MixtureScale> = Scales {
    main: (UnitName::new("λ").chosen_as("lambda"), MixtureScale::Lambda),
    others: &[
        (UnitName::new("AFR").chosen_as("afr_of_petrol"), MixtureScale::AfrOfPetrol),
        (UnitName::new("AFR").chosen_as("afr_of_the_blend"), MixtureScale::AfrOfTheBlend),
    ],
};

macro_rules! choosables {
    ($($(#[$doc:meta])+ $name:ident: $rows:expr;)+) => {
        /// A quantity whose unit can be chosen apart from the system.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Choosable {
            $($(#[$doc])+ $name),+
        }

        /// How many quantities have a unit of their own.
        const COUNT: usize = [$(Choosable::$name),+].len();

        impl Choosable {
            /// Every one, in the order in which to offer them.
            pub const ALL: [Self; COUNT] = [$(Self::$name),+];

            fn rows(self) -> &'static dyn Rows {
                match self {
                    $(Self::$name => &$rows),+
                }
            }
        }
    };
}

choosables! {
    /// Fuel.
    Volume: quantities::VOLUME;
    /// The way driven.
    Distance: quantities::DISTANCE;
    /// Fuel over distance.
    Consumption: quantities::CONSUMPTION;
    /// Pressures of fuel, and boost.
    Pressure: quantities::PRESSURE;
    /// The pressure of the air around.
    AirPressure: quantities::AIR_PRESSURE;
    /// Power.
    Power: quantities::POWER;
    /// Torque.
    Torque: quantities::TORQUE;
    /// Temperature.
    Temperature: quantities::TEMPERATURE;
    /// What an injector passes by volume.
    InjectorFlow: quantities::INJECTOR_FLOW;
    /// What a pump or an engine passes by volume.
    PumpFlow: quantities::PUMP_FLOW;
    /// A fuel flow by mass.
    MassFlow: quantities::MASS_FLOW;
    /// An air flow by mass.
    AirFlow: quantities::AIR_FLOW;
    /// The scale of an octane number.
    Octane: OCTANE;
    /// How rich or lean the mixture is: the air-fuel ratio over that of burning
    /// without rest, or the ratio itself, of petrol or of the blend at hand.
    Mixture: MIXTURE;
}

impl Choosable {
    /// The units that are offered: those that a word stands for where the choice is stored.
    pub fn choices(self) -> impl Iterator<Item = UnitName> {
        let rows = self.rows();
        (0..).map_while(|row| rows.name(row)).filter(|name| !name.word.is_empty())
    }

    /// Where among its choices a system's own unit stands: the first, where none is at home.
    fn home(self, system: UnitSystem) -> usize {
        self.choices().position(|name| name.is_at_home(system)).unwrap_or(0)
    }
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

/// The units that go together where a person lives. [`Units`] tells
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

/// The units of one person: a system, and what was chosen apart from it.
///
/// ```
/// use fillwright::quantity::notation::{Choosable, US_GALLON, Units};
/// let units = Units::US.with(Choosable::Pressure, "kilopascal").unwrap_or_default();
/// assert_eq!(units.choice(Choosable::Pressure).symbol, "kPa");
/// assert_eq!(units.volume(), US_GALLON);
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

    /// The units of the system in which fuel is counted so.
    #[cfg(test)]
    pub(super) fn with_volume(unit: Unit<Volume>) -> Self {
        let is_home = |system: &UnitSystem| Self::of(*system).volume() == unit;
        Self::of(UnitSystem::ALL.into_iter().find(is_home).unwrap())
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
        let place = quantity.choices().position(|choice| choice.word == word)?;
        let is_home = place == quantity.home(self.system);
        self.chosen[quantity as usize] = if is_home { 0 } else { u8::try_from(place + 1).ok()? };
        Some(self)
    }

    /// The unit of a quantity, where it was chosen apart from the system.
    pub(super) fn chosen(self, quantity: Choosable) -> Option<UnitName> {
        let place = self.chosen[quantity as usize].checked_sub(1)?;
        quantity.choices().nth(usize::from(place))
    }

    /// The name of the unit of a quantity.
    pub fn choice(self, quantity: Choosable) -> UnitName {
        let home = || quantity.choices().nth(quantity.home(self.system));
        self.chosen(quantity).or_else(home).unwrap_or_else(|| quantity.rows().main())
    }

    /// The unit of fuel.
    pub fn volume(self) -> Unit<Volume> {
        quantities::VOLUME.own(self)
    }

    /// The unit of the way driven.
    pub fn distance(self) -> Unit<Length> {
        quantities::DISTANCE.own(self)
    }

    /// The unit of consumption.
    pub fn consumption(self) -> Unit<Consumption> {
        quantities::CONSUMPTION.own(self)
    }

    /// The scale of a bare octane number.
    pub fn octane(self) -> OctaneScale {
        OCTANE.own(Choosable::Octane, self)
    }

    /// How a mixture is told.
    pub fn mixture(self) -> MixtureScale {
        MIXTURE.own(Choosable::Mixture, self)
    }

    /// The system whose gallon is meant where no country is named: the person's own, or
    /// else that of the system, or else the US one. Who pumps litres in an imperial
    /// country still means the imperial gallon.
    pub(super) fn gallons(self) -> UnitSystem {
        let imperial =
            |is_imperial| if is_imperial { UnitSystem::Imperial } else { UnitSystem::Us };
        if self.volume() != quantities::LITRE {
            return imperial(self.volume() == quantities::IMPERIAL_GALLON);
        }
        match self.consumption() {
            own if own == quantities::MILES_PER_IMPERIAL_GALLON => UnitSystem::Imperial,
            own if own == quantities::MILES_PER_US_GALLON => UnitSystem::Us,
            _ => imperial(self.system == UnitSystem::Imperial),
        }
    }
}

impl From<UnitSystem> for Units {
    fn from(system: UnitSystem) -> Self {
        Self::of(system)
    }
}

impl fmt::Display for Units {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(self.system.word())?;
        let chosen = Choosable::ALL.into_iter().filter_map(|it| self.chosen(it));
        for name in chosen {
            write!(formatter, "+{}", name.word)?;
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
    fn every_choice_is_stored_by_a_word_of_its_own() {
        let mut words: Vec<_> =
            Choosable::ALL.iter().flat_map(|it| it.choices()).map(|it| it.word).collect();
        let count = words.len();
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), count);
        for system in UnitSystem::ALL {
            for quantity in Choosable::ALL {
                for choice in quantity.choices() {
                    let units = Units::of(system).with(quantity, choice.word).unwrap();
                    assert_eq!(units.choice(quantity), choice);
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
        assert_eq!(quantities::VOLUME.named("gal", british), Some(quantities::IMPERIAL_GALLON));
        let canadian =
            Units::METRIC.with(Choosable::Consumption, "miles_per_imperial_gallon").unwrap();
        assert_eq!(quantities::VOLUME.named("gal", canadian), Some(quantities::IMPERIAL_GALLON));
        assert_eq!(quantities::VOLUME.named("gal", Units::METRIC), Some(quantities::US_GALLON));
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
