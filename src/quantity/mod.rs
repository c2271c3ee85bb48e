//! Quantities: physical dimensions from [`uom`], and the types that a dimension
//! alone cannot tell apart.

mod band;
mod consumption;
pub mod notation;
mod place;
mod pressure;
mod price;
mod share;
mod specific_consumption;
mod style;

pub use band::{Band, BandError};
pub use consumption::{Consumption, ConsumptionError};
pub use place::{CrankPower, WheelPower};
pub use pressure::{AbsolutePressure, GaugePressure};
pub use price::{Money, MoneyError, UnitPrice};
pub use share::{Share, ShareError};
pub use specific_consumption::SpecificConsumption;
pub(crate) use specific_consumption::{KILOGRAMS_PER_POUND, WATTS_PER_HORSEPOWER};

/// Energy per mass, such as a heating value.
pub use uom::si::f64::AvailableEnergy as SpecificEnergy;
/// Dimensions used as they stand.
pub use uom::si::f64::{
    AmountOfSubstance, Angle, AngularVelocity, DynamicViscosity, ElectricPotential, Energy,
    Frequency, Length, Mass, MassDensity, MassRate, MolarMass, Power, Pressure,
    TemperatureInterval, ThermodynamicTemperature, Time, Torque, Volume, VolumeRate,
};
