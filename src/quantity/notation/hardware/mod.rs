//! The quantities of the workshop: pressure, power, torque, flow and the like.
//!
//! Each is a [`QuantityField`]: the units that a person may type, in any system,
//! the unit that a bare number has, and the range beyond which it must be a slip.
//!
//! ```
//! use fillwright::quantity::notation::{FigureTextError, Units, parse_pressure, parse_power};
//! use uom::si::{power::kilowatt, pressure::bar};
//! assert_eq!(parse_pressure("3,5", Units::METRIC)?.get::<bar>(), 3.5);
//! assert!((parse_power("600 PS", Units::US)?.get::<kilowatt>() - 441.299).abs() < 1e-3);
//! assert!(parse_power("550 whp", Units::US).is_err());
//! # Ok::<(), FigureTextError>(())
//! ```

mod printer;

mod bulk;
mod dimensions;
mod engine;
mod field;
mod figure;
mod flow;
mod pressure;
#[cfg(test)]
mod tests;
mod unit;
mod words;

pub use bulk::{BULK_MODULUS, LITRES};
pub use dimensions::{ANGLE, DENSITY, LENGTH, LINE_LENGTH, TEMPERATURE, TIME, VOLTAGE};
pub use engine::{ENGINE_SPEED, POWER, SPECIFIC_CONSUMPTION, TORQUE};
pub use field::{FigureTextError, QuantityField};
pub use figure::{
    PETROL_GAUGE_RATIO, parse_factor, parse_fraction, parse_lambda, parse_speed_range,
};
pub use flow::{AIR_FLOW, INJECTOR_FLOW, MASS_FLOW, PUMP_FLOW};
pub use pressure::{AIR_PRESSURE, BOOST, PRESSURE};
pub use unit::{InSi, Unit};

use crate::quantity::notation::Units;
use crate::quantity::{
    AbsolutePressure, Angle, AngularVelocity, ElectricPotential, GaugePressure, Length,
    MassDensity, MassRate, Power, Pressure, SpecificConsumption, ThermodynamicTemperature, Time,
    Torque, VolumeRate,
};

macro_rules! readers {
    ($($(#[$doc:meta])+ $name:ident: $field:ident -> $quantity:ty;)+) => {$(
        $(#[$doc])+
        ///
        /// # Errors
        /// When the text has no meaning or two, names no unit of this quantity, or is
        /// out of range.
        pub fn $name(text: &str, units: Units) -> Result<$quantity, FigureTextError> {
            $field.parse(text, units)
        }
    )+};
}

readers! {
    /// The pressure that a text means, from 0 to 999 bar.
    parse_pressure: PRESSURE -> Pressure;
    /// The pressure of the air around that a text means, from 500 to 1100 hPa.
    parse_air_pressure: AIR_PRESSURE -> AbsolutePressure;
    /// The boost that a text means, from -1 to 9.99 bar above the air around.
    parse_boost: BOOST -> GaugePressure;
    /// The power that a text means, from 1 to 3000 kW. Where it was measured is not
    /// part of the text: `whp` and `bhp` are refused.
    parse_power: POWER -> Power;
    /// The torque that a text means, from 1 to 5000 N m.
    parse_torque: TORQUE -> Torque;
    /// The engine speed that a text means, from 100 to 25 000 rpm.
    parse_engine_speed: ENGINE_SPEED -> AngularVelocity;
    /// An injector's flow by volume, from 20 to 9990 cc/min.
    parse_injector_flow: INJECTOR_FLOW -> VolumeRate;
    /// A pump's flow by volume, from 5 to 4990 L/h.
    parse_pump_flow: PUMP_FLOW -> VolumeRate;
    /// A fuel flow by mass, from 0.1 to 999 g/s.
    parse_mass_flow: MASS_FLOW -> MassRate;
    /// An air flow by mass, from 0.001 to 5 kg/s.
    parse_air_flow: AIR_FLOW -> MassRate;
    /// The density of a fluid, from 500 to 1500 kg/m3.
    parse_density: DENSITY -> MassDensity;
    /// A small length such as a bore, a stroke or a gap, from 0 to 999 mm.
    parse_length: LENGTH -> Length;
    /// The length of a line, from 0 to 99.9 m.
    parse_line_length: LINE_LENGTH -> Length;
    /// A time within an engine cycle, from 0 to 999 ms.
    parse_time: TIME -> Time;
    /// A voltage of a car's supply, from 0 to 60 V.
    parse_voltage: VOLTAGE -> ElectricPotential;
    /// A temperature, from -60 to 300 degrees Celsius.
    parse_temperature: TEMPERATURE -> ThermodynamicTemperature;
    /// An angle of the crank, from -720 to 720 degrees.
    parse_angle: ANGLE -> Angle;
    /// A brake-specific fuel consumption, from 100 to 999 g/kWh.
    parse_specific_consumption: SPECIFIC_CONSUMPTION -> SpecificConsumption;
}
