//! The units of one person.

use serde::{Deserialize, Serialize};

use super::choosable::{COUNT, Choosable};
use super::system::UnitSystem;

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
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Units {
    system: UnitSystem,
    /// For each quantity one more than the place of what was chosen; zero where
    /// the system decides. What the system has anyway is never put down, so that
    /// equal units are equal values.
    chosen: [u8; COUNT],
    /// The system whose gallon is meant where no country is named.
    gallons: UnitSystem,
}

impl Default for Units {
    fn default() -> Self {
        Self::METRIC
    }
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
        let gallons = match system {
            UnitSystem::Imperial => UnitSystem::Imperial,
            UnitSystem::Metric | UnitSystem::Us => UnitSystem::Us,
        };
        Self { system, chosen: [0; COUNT], gallons }
    }

    /// The system that decides where nothing was chosen.
    pub fn system(self) -> UnitSystem {
        self.system
    }

    /// Whether some unit was chosen apart from the system.
    pub fn are_mixed(self) -> bool {
        self.chosen != [0; COUNT]
    }

    /// Which of the units that are offered for a quantity was chosen, counted from 0; none
    /// where the system decides.
    pub(super) fn place(self, quantity: Choosable) -> Option<usize> {
        self.chosen[quantity as usize].checked_sub(1).map(usize::from)
    }

    /// The same with another one chosen, and with the gallon that is then meant.
    pub(super) fn placed(
        mut self,
        quantity: Choosable,
        place: Option<u8>,
        gallons: impl FnOnce(Self) -> UnitSystem,
    ) -> Self {
        self.chosen[quantity as usize] = place.map_or(0, |place| place + 1);
        self.gallons = gallons(self);
        self
    }

    /// The system whose gallon is meant where no country is named.
    pub(super) fn gallons(self) -> UnitSystem {
        self.gallons
    }
}

impl From<UnitSystem> for Units {
    fn from(system: UnitSystem) -> Self {
        Self::of(system)
    }
}
