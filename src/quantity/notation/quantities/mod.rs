//! The quantities that people type with a unit: what goes into a tank, how far it takes a
//! car, pressure, power, torque, flow and the like.
//!
//! Each is a [`QuantityField`](super::QuantityField): the units that a person may type, in any
//! system, the unit that a bare number has, and the range beyond which it must be a slip. A
//! unit is one row there.
//!
//! ```
//! use fillwright::quantity::notation::{FigureTextError, Units, quantities};
//! use uom::si::{power::kilowatt, pressure::bar};
//! assert_eq!(quantities::PRESSURE.parse("3,5", Units::METRIC)?.get::<bar>(), 3.5);
//! let power = quantities::POWER.parse("600 PS", Units::US)?;
//! assert!((power.get::<kilowatt>() - 441.299).abs() < 1e-3);
//! assert!(quantities::POWER.parse("550 whp", Units::US).is_err());
//! # Ok::<(), FigureTextError>(())
//! ```

mod bulk;
mod dimensions;
mod engine;
mod flow;
mod pressure;
#[cfg(test)]
mod tests;
mod travel;

pub use bulk::{BULK_MODULUS, LITRES};
pub use dimensions::{ANGLE, DENSITY, LENGTH, LINE_LENGTH, TEMPERATURE, TIME, VOLTAGE};
pub use engine::{ENGINE_SPEED, POWER, SPECIFIC_CONSUMPTION, TORQUE};
pub use flow::{AIR_FLOW, INJECTOR_FLOW, MASS_FLOW, PUMP_FLOW};
pub use pressure::{AIR_PRESSURE, BOOST, PRESSURE};
pub use travel::{
    CONSUMPTION, DISTANCE, IMPERIAL_GALLON, KILOMETRE, KILOMETRES_PER_LITRE, KILOMETRES_PER_MILE,
    LITRE, LITRES_PER_100_KM, LITRES_PER_IMPERIAL_GALLON, LITRES_PER_US_GALLON, MILE,
    MILES_PER_IMPERIAL_GALLON, MILES_PER_US_GALLON, US_GALLON, VOLUME,
};
