//! Fuel chemistry: what fuels are made of, and what follows from it.
//!
//! A [`Mixture`] is a sum of amounts; density and energy per litre follow by
//! volume, air-fuel ratio, heating value and oxygen by mass, octane by moles.

pub mod constants;
pub mod grades;

mod constituent;
mod density;
mod mixture;
mod octane;
mod properties;

pub use constituent::{Constituent, HydrocarbonBase};
pub use density::{DensityError, PETROL_EXPANSION, TABULATED_DENSITY};
pub use mixture::{Mixture, Volumes};
pub use octane::{MOLAR_RULE, MolarDensity, USUAL_SENSITIVITY, ron_mon_from_aki};
