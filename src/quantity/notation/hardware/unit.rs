//! A unit of a quantity, and how it becomes the SI unit.

use std::fmt;
use std::marker::PhantomData;

use uom::si::{
    angle::radian, angular_velocity::radian_per_second, electric_potential::volt, length::meter,
    mass_density::kilogram_per_cubic_meter, mass_rate::kilogram_per_second, power::watt,
    pressure::pascal, thermodynamic_temperature::kelvin, time::second, torque::newton_meter,
    volume::cubic_meter, volume_rate::cubic_meter_per_second,
};

use crate::quantity::notation::print::joined;
use crate::quantity::notation::{Decimals, Style, UnitSystem, print_number};
use crate::quantity::{
    AbsolutePressure, Angle, AngularVelocity, ElectricPotential, GaugePressure, Length,
    MassDensity, MassRate, Power, Pressure, SpecificConsumption, ThermodynamicTemperature, Time,
    Torque, Volume, VolumeRate,
};

/// A quantity that is stored as a number of its SI unit.
pub trait InSi: Copy {
    /// The quantity of so many of the SI unit.
    fn of_si(value: f64) -> Self;
    /// How many of the SI unit it is.
    fn si(self) -> f64;
}

macro_rules! in_si {
    ($($quantity:ty: $unit:ty),+ $(,)?) => {$(
        impl InSi for $quantity {
            fn of_si(value: f64) -> Self {
                Self::new::<$unit>(value)
            }
            fn si(self) -> f64 {
                self.get::<$unit>()
            }
        }
    )+};
}

in_si! {
    Angle: radian,
    AngularVelocity: radian_per_second,
    ElectricPotential: volt,
    Length: meter,
    MassDensity: kilogram_per_cubic_meter,
    MassRate: kilogram_per_second,
    Power: watt,
    Pressure: pascal,
    ThermodynamicTemperature: kelvin,
    Time: second,
    Torque: newton_meter,
    Volume: cubic_meter,
    VolumeRate: cubic_meter_per_second,
}

impl InSi for GaugePressure {
    fn of_si(value: f64) -> Self {
        Self::new(Pressure::of_si(value))
    }
    fn si(self) -> f64 {
        self.get().si()
    }
}

impl InSi for AbsolutePressure {
    fn of_si(value: f64) -> Self {
        Self::new(Pressure::of_si(value))
    }
    fn si(self) -> f64 {
        self.get().si()
    }
}

impl InSi for SpecificConsumption {
    fn of_si(value: f64) -> Self {
        Self::of_kilograms_per_joule(value)
    }
    fn si(self) -> f64 {
        self.kilograms_per_joule()
    }
}

/// A unit of one quantity: how it is written, and what it is worth.
///
/// ```
/// use fillwright::quantity::notation::{Units, hardware};
/// let psi = hardware::PRESSURE.own(Units::US);
/// let bar = hardware::PRESSURE.own(Units::METRIC);
/// assert_eq!(psi.symbol(), "psi");
/// assert!((bar.value_of(psi.quantity(43.5)) - 2.9992).abs() < 1e-4);
/// ```
pub struct Unit<Q> {
    symbol: &'static str,
    spellings: &'static [&'static str],
    /// SI units in one of this unit.
    size: f64,
    /// Where this unit's zero lies, in SI units.
    zero: f64,
    /// Decimals that are worth showing.
    decimals: usize,
    /// Where a person means this unit when none is named, or when a name such as
    /// "gal/h" could be several.
    home: &'static [UnitSystem],
    quantity: PhantomData<fn() -> Q>,
}

// Derived, these would ask for a quantity that can be copied, compared or shown.
impl<Q> Clone for Unit<Q> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<Q> Copy for Unit<Q> {}

impl<Q> fmt::Debug for Unit<Q> {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.debug_tuple("Unit").field(&self.symbol).finish()
    }
}

impl<Q> PartialEq for Unit<Q> {
    /// Within one quantity, a symbol is one unit.
    fn eq(&self, other: &Self) -> bool {
        self.symbol == other.symbol
    }
}

impl<Q> Unit<Q> {
    /// A unit of so many SI units; its spellings are in the form of
    /// [`comparable`](super::words::comparable).
    pub(super) const fn new(
        symbol: &'static str,
        size: f64,
        decimals: usize,
        spellings: &'static [&'static str],
    ) -> Self {
        let (zero, home): (f64, &[UnitSystem]) = (0.0, &[]);
        Self { symbol, spellings, size, zero, decimals, home, quantity: PhantomData }
    }

    /// The same unit, at home in these systems.
    pub(super) const fn at_home(self, home: &'static [UnitSystem]) -> Self {
        Self { home, ..self }
    }

    /// The same unit with its zero at so many SI units.
    pub(super) const fn from(self, zero: f64) -> Self {
        Self { zero, ..self }
    }

    /// How the unit is written after a number.
    pub fn symbol(&self) -> &'static str {
        self.symbol
    }

    /// The decimals that are worth showing.
    pub fn decimals(&self) -> usize {
        self.decimals
    }

    pub(super) fn is_at_home(&self, system: UnitSystem) -> bool {
        self.home.contains(&system)
    }

    /// Whether a comparable word names it.
    pub(super) fn is_spelt(&self, word: &str) -> bool {
        self.spellings.contains(&word)
    }

    #[cfg(test)]
    pub(super) fn spellings(&self) -> &'static [&'static str] {
        self.spellings
    }
}

impl<Q: InSi> Unit<Q> {
    /// So many of this unit, as a quantity.
    pub fn quantity(&self, value: f64) -> Q {
        Q::of_si(value * self.size + self.zero)
    }

    /// How many of this unit a quantity is.
    pub fn value_of(&self, quantity: Q) -> f64 {
        (quantity.si() - self.zero) / self.size
    }

    /// A quantity in this unit, with its symbol.
    pub fn print(&self, quantity: Q, decimals: impl Into<Decimals>, style: Style) -> String {
        let number = print_number(self.value_of(quantity), decimals, style);
        // A plane angle's degree alone stands close to its number (SI brochure, 5.4.3:
        // from memory).
        if self.symbol == "°" { number + self.symbol } else { joined(&number, self.symbol) }
    }
}
