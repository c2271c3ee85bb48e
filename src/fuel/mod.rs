//! Fuel chemistry: what a fuel is made of, and what follows from it.
//!
//! A [`Mixture`] is a sum of additive amounts. Every property is derived from it,
//! each on its own basis: stoichiometric air, heating value and oxygen by mass,
//! density and energy per litre by volume, octane by moles. Each formula stands in
//! one place, and reads its numbers from [`constants`].

mod air;
mod composition;
pub mod constants;
mod constituent;
mod content;
mod cooling;
mod density;
mod energy;
mod expansion;
pub mod grades;
mod hydrocarbon;
mod mean;
mod mixture;
mod octane;
mod volatility;

pub use air::air_per_oxygen;
pub(crate) use air::{air_for_oxygen, open_loop_ratio, oxygen_needed, volume_ratio};
pub use constants::Constant;
pub use constituent::{Constituent, HydrocarbonBase};
pub use content::{Content, Corner, Extras, OxygenError, ethers_of_oxygen};
pub use energy::EnergyDensity;
pub use expansion::{
    DensityError, DensityTable, ETHANOL_DENSITIES, METHANOL_DENSITIES, WATER_DENSITIES,
    petrol_expansion, petrol_volume_correction_factor,
};
pub use grades::Grade;
pub use mean::Mean;
pub use mixture::{Mixture, MixtureParts};
pub(crate) use octane::anti_knock_index;
pub(crate) use octane::neat_aki;
pub use octane::{AkiError, MolarDensity, ron_mon_from_aki};
pub use volatility::{ETHANOL_WAIVER, FLEX_FUEL_CLASSES, ethanol_waiver};
