//! A unit in one row: its symbol, its size, its spellings, and whether it can be chosen.

use std::fmt;
use std::marker::PhantomData;

use uom::si::{
    angle::radian, angular_velocity::radian_per_second, electric_potential::volt, length::meter,
    mass_density::kilogram_per_cubic_meter, mass_rate::kilogram_per_second, power::watt,
    pressure::pascal, thermodynamic_temperature::kelvin, time::second, torque::newton_meter,
    volume::cubic_meter, volume_rate::cubic_meter_per_second,
};

use crate::quantity::notation::{Decimals, Style, UnitSystem, print_number};
use crate::quantity::style::joined;
use crate::quantity::{
    AbsolutePressure, Angle, AngularVelocity, Consumption, ElectricPotential, GaugePressure,
    Length, MassDensity, MassRate, Power, Pressure, SpecificConsumption, ThermodynamicTemperature,
    Time, Torque, Volume, VolumeRate,
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

impl InSi for Consumption {
    /// What is beyond any consumption is taken as the least or the most that there is; what
    /// is typed never comes near either.
    fn of_si(value: f64) -> Self {
        Self::nearest(value * SQUARE_METRES)
    }
    fn si(self) -> f64 {
        self.litres_per_100_km() / SQUARE_METRES
    }
}

/// Litres per 100 km in a square metre, the SI unit of fuel over distance.
const SQUARE_METRES: f64 = 1e8;

/// How a unit is written, where it is at home, and the word by which a choice of it is stored.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnitName {
    /// How it is written after a number.
    pub symbol: &'static str,
    /// The word in a stored choice, of which no two are alike; empty where the unit cannot
    /// be chosen.
    pub word: &'static str,
    /// Where a person means this unit when none is named, or when a name such as
    /// "gal/h" could be several.
    home: &'static [UnitSystem],
}

impl UnitName {
    /// A name that can neither be chosen nor is at home anywhere.
    pub(super) const fn new(symbol: &'static str) -> Self {
        Self { symbol, word: "", home: &[] }
    }

    /// The same, stored by this word where it is chosen.
    pub(super) const fn chosen_as(self, word: &'static str) -> Self {
        Self { word, ..self }
    }

    /// The same, at home in these systems.
    pub(super) const fn at_home(self, home: &'static [UnitSystem]) -> Self {
        Self { home, ..self }
    }

    /// Whether a person of this system means it when no unit is named.
    pub fn is_at_home(&self, system: UnitSystem) -> bool {
        self.home.contains(&system)
    }
}

/// How a number of a unit and the quantity in SI units hang together.
#[derive(Clone, Copy)]
enum Scale {
    /// So many SI units in one, counted from where the unit's zero lies.
    Linear { size: f64, zero: f64 },
    /// More of one is less of the other: their product.
    Reciprocal(f64),
}

/// A unit of one quantity: how it is written, and what it is worth.
///
/// ```
/// use fillwright::quantity::notation::{Units, quantities};
/// let psi = quantities::PRESSURE.own(Units::US);
/// let bar = quantities::PRESSURE.own(Units::METRIC);
/// assert_eq!(psi.symbol(), "psi");
/// assert!((bar.value_of(psi.quantity(43.5)) - 2.9992).abs() < 1e-4);
/// ```
pub struct Unit<Q> {
    name: UnitName,
    spellings: &'static [&'static str],
    scale: Scale,
    /// Decimals that are worth showing.
    decimals: usize,
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
        formatter.debug_tuple("Unit").field(&self.name).finish()
    }
}

impl<Q> PartialEq for Unit<Q> {
    /// Within one quantity, a name is one unit.
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

impl<Q> Unit<Q> {
    /// A unit of so many SI units; its spellings are in the form of
    /// [`comparable`](super::comparable::comparable).
    pub(super) const fn new(
        symbol: &'static str,
        size: f64,
        decimals: usize,
        spellings: &'static [&'static str],
    ) -> Self {
        let scale = Scale::Linear { size, zero: 0.0 };
        Self { name: UnitName::new(symbol), spellings, scale, decimals, quantity: PhantomData }
    }

    /// A unit of which more is less of the quantity: its number times SI units is this.
    pub(super) const fn reciprocal(
        symbol: &'static str,
        product: f64,
        decimals: usize,
        spellings: &'static [&'static str],
    ) -> Self {
        Self { scale: Scale::Reciprocal(product), ..Self::new(symbol, 1.0, decimals, spellings) }
    }

    /// The same unit, stored by this word where it is chosen.
    pub(super) const fn chosen_as(self, word: &'static str) -> Self {
        Self { name: self.name.chosen_as(word), ..self }
    }

    /// The same unit, at home in these systems.
    pub(super) const fn at_home(self, home: &'static [UnitSystem]) -> Self {
        Self { name: self.name.at_home(home), ..self }
    }

    /// The same unit with its zero at so many SI units.
    pub(super) const fn from(self, zero: f64) -> Self {
        match self.scale {
            Scale::Linear { size, .. } => Self { scale: Scale::Linear { size, zero }, ..self },
            Scale::Reciprocal(_) => self,
        }
    }

    /// How it is written, where it is at home, and the word by which it is stored.
    pub fn name(&self) -> UnitName {
        self.name
    }

    /// How the unit is written after a number.
    pub fn symbol(&self) -> &'static str {
        self.name.symbol
    }

    /// The decimals that are worth showing.
    pub fn decimals(&self) -> usize {
        self.decimals
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
        Q::of_si(match self.scale {
            Scale::Linear { size, zero } => value * size + zero,
            Scale::Reciprocal(product) => product / value,
        })
    }

    /// How many of this unit a quantity is.
    pub fn value_of(&self, quantity: Q) -> f64 {
        match self.scale {
            Scale::Linear { size, zero } => (quantity.si() - zero) / size,
            Scale::Reciprocal(product) => product / quantity.si(),
        }
    }

    /// A quantity in this unit, with its symbol.
    pub fn print(&self, quantity: Q, decimals: impl Into<Decimals>, style: Style) -> String {
        let number = print_number(self.value_of(quantity), decimals, style);
        // A plane angle's degree alone stands close to its number (SI brochure, 5.4.3:
        // from memory).
        if self.symbol() == "°" { number + self.symbol() } else { joined(&number, self.symbol()) }
    }
}
