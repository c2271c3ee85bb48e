//! Which unit a bare number has, and which one a figure is printed in: a system,
//! and for each quantity the unit that was chosen apart from it.

use std::fmt;

use thiserror::Error;

use super::choosable::Choosable;
use super::field::QuantityField;
use super::quantities;
use super::system::UnitSystem;
use super::unit::{InSi, Unit, UnitName};
use super::units::Units;
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

impl Choosable {
    fn rows(self) -> &'static dyn Rows {
        match self {
            Self::Volume => &quantities::VOLUME,
            Self::Distance => &quantities::DISTANCE,
            Self::Consumption => &quantities::CONSUMPTION,
            Self::Pressure => &quantities::PRESSURE,
            Self::AirPressure => &quantities::AIR_PRESSURE,
            Self::Power => &quantities::POWER,
            Self::Torque => &quantities::TORQUE,
            Self::Temperature => &quantities::TEMPERATURE,
            Self::InjectorFlow => &quantities::INJECTOR_FLOW,
            Self::PumpFlow => &quantities::PUMP_FLOW,
            Self::MassFlow => &quantities::MASS_FLOW,
            Self::AirFlow => &quantities::AIR_FLOW,
            Self::Octane => &OCTANE,
            Self::Mixture => &MIXTURE,
        }
    }

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
    /// The same with the unit of one quantity chosen; `None` when it is not offered
    /// for that.
    pub fn with(self, quantity: Choosable, word: &str) -> Option<Self> {
        let place = quantity.choices().position(|choice| choice.word == word)?;
        let is_home = place == quantity.home(self.system());
        let place = u8::try_from(place).ok().filter(|_| !is_home);
        Some(self.placed(quantity, place, Self::meant_gallons))
    }

    /// The unit of a quantity, where it was chosen apart from the system.
    pub(super) fn chosen(self, quantity: Choosable) -> Option<UnitName> {
        quantity.choices().nth(self.place(quantity)?)
    }

    /// The units of the system in which fuel is counted so.
    #[cfg(test)]
    pub(super) fn with_volume(unit: Unit<Volume>) -> Self {
        let is_home = |system: &UnitSystem| Self::of(*system).volume() == unit;
        Self::of(UnitSystem::ALL.into_iter().find(is_home).unwrap())
    }

    /// The name of the unit of a quantity.
    pub fn choice(self, quantity: Choosable) -> UnitName {
        let home = || quantity.choices().nth(quantity.home(self.system()));
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
    fn meant_gallons(self) -> UnitSystem {
        let imperial =
            |is_imperial| if is_imperial { UnitSystem::Imperial } else { UnitSystem::Us };
        if self.volume() != quantities::LITRE {
            return imperial(self.volume() == quantities::IMPERIAL_GALLON);
        }
        match self.consumption() {
            own if own == quantities::MILES_PER_IMPERIAL_GALLON => UnitSystem::Imperial,
            own if own == quantities::MILES_PER_US_GALLON => UnitSystem::Us,
            _ => imperial(self.system() == UnitSystem::Imperial),
        }
    }
}

impl fmt::Display for Units {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(self.system().word())?;
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
