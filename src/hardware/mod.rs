//! The fuel system: what an engine asks of it, what each part can give, and what
//! gives first.
//!
//! Two rules run through all parts and must not be confused: a nozzle passes a
//! *mass* that goes with the square root of density and pressure difference, a
//! displacement pump passes a *volume*. So ethanol, which is denser and asks for
//! more of both, weighs on them differently.

pub mod constants;
mod cooling;
mod demand;
mod direct_injectors;
mod fluid_effect;
mod fluid_mixing;
mod fuel_line;
mod fuel_part;
mod fuel_properties;
mod headroom;
mod injection_fluid;
mod load;
mod nozzle;
mod operating_point;
mod part_of;
mod part_workings;
mod plunger_pump;
mod port_injectors;
mod pump_curve;
mod regulator;
mod requirement;
mod shortage;
mod sizing;
mod sources;
mod supply;
mod system;
mod table;

pub use cooling::Evaporation;
pub use demand::{AirRoute, BrakeSpecificFuelConsumption, PowerRoute, air_for};
pub use direct_injectors::DirectInjectors;
pub use fluid_effect::FluidEffect;
pub use fluid_mixing::{MixError, Recipe, Wanted, recipe};
pub use fuel_line::FuelLine;
pub use fuel_part::{FittedPart, FuelSystemPart};
pub use fuel_properties::FuelProperties;
pub use headroom::{AtShare, Headroom, LargestShare, Load, Loading, PartOverSpeed, Tightest};
pub use injection_fluid::{FluidError, FluidNozzle, METHANOL_WATER_DENSITIES, MethanolWater};
pub use load::{Blend, Demand, LoadPoint};
pub(crate) use nozzle::{HEAVIEST, LIGHTEST};
pub use nozzle::{NozzleError, RatedFlow};
pub use operating_point::OperatingPoint;
pub use part_of::PartOf;
pub use part_workings::PartWorkings;
pub use plunger_pump::{PlungerPump, delivered_fraction, leakage};
pub use port_injectors::{DeadTimeError, DeadTimes, PortInjectors};
pub use pump_curve::{PumpCurve, PumpTable, PumpTableError};
pub use regulator::Regulator;
pub use requirement::Requirement;
pub use shortage::{Shortage, shortage};
pub(crate) use sources::{BALANCE, CYCLE, ORIFICE, RESERVE};
pub use supply::{Arrangement, Supply};
pub use system::FuelSystem;
pub use table::OutsideTable;
