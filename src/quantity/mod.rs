//! Quantities: physical dimensions from [`uom`], and the types that a dimension
//! alone cannot tell apart.

mod band;
pub mod notation;
mod price;
mod share;

pub use band::{Band, BandError};
pub use price::{Money, MoneyError, UnitPrice};
pub use share::{Share, ShareError};

/// Energy per mass, such as a heating value.
pub use uom::si::f64::AvailableEnergy as SpecificEnergy;
/// Dimensions used as they stand.
pub use uom::si::f64::{
    AmountOfSubstance, Energy, Frequency, Length, Mass, MassDensity, MolarMass,
    TemperatureInterval, ThermodynamicTemperature, Time, Volume,
};
