//! The road: a route of stops as it was typed, and what a plan makes of it.

mod forms;
mod plan;
mod reading;

pub use forms::{HaltForm, PreferForm, RouteForm};
pub use plan::{InShort, Place, RoadPlan};
pub use reading::{Halt, RoadAsked, RoadFuel, RoadReading};
