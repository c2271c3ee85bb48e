//! The road: a route of stops as it was typed, and what a plan makes of it.

mod compare;
mod demo;
mod forms;
mod plan;
mod reading;

pub use compare::Turn;
pub use forms::{HaltForm, PreferForm, RouteForm};
pub use plan::{InShort, Place, RoadPlan};
pub use reading::{Halt, RoadAsked, RoadFuel, RoadReading};
