//! The road: a route of stops as it was typed, and what a plan makes of it.

mod compare;
#[cfg(test)]
mod example;
mod plan;
mod reading;

pub use crate::document::{HaltForm, PreferForm, RouteForm};
pub use compare::Turn;
pub use plan::{InShort, Place, RoadPlan};
pub use reading::{Halt, RoadAsked, RoadFuel, RoadReading};
