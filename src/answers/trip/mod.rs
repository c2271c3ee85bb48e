//! The road: a route of stops as it was typed, and what a plan makes of it.

mod answer;
mod compare;
#[cfg(test)]
mod example;
mod reading;

pub use crate::document::{PreferForm, TripForm, TripStopForm};
pub use answer::{InShort, TankAtPlace, TripAnswer};
pub use compare::Turn;
pub use reading::{TripAsked, TripFuel, TripReading, TripStop};
