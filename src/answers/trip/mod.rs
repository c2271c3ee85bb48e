//! The road: a route of stops as it was typed, and what a plan makes of it.

mod compare;
#[cfg(test)]
mod example;
mod plan;
mod reading;

pub use crate::document::{PreferForm, TripForm, TripStopForm};
pub use compare::Turn;
pub use plan::{InShort, TankAtPlace, TripAnswer};
pub use reading::{TripAsked, TripFuel, TripReading, TripStop};
