//! The workshop of a car: its power curves, its fuel system, and what follows.

mod answer;
mod crossed;
mod curves;
mod demo;
mod engine;
mod forms;
mod parts;
mod reading;
mod rows;
mod slot;
mod tables;
mod texts;
mod workings;

pub use answer::{AirAnswer, FluidAnswer, HardwareAnswer, PartAnswer, Standing};
pub use crossed::CrossedLimit;
pub use curves::{Corrected, CurveRead};
pub use engine::{Breathing, Engine, SetLimit};
pub use forms::{
    BlendForm, ColumnForm, CurveForm, Fields, Mark, PartForm, PartKind, Place, ValueUnit, Workshop,
};
pub use parts::Parts;
pub use reading::{HardwareAsked, WorkshopReading};
pub use rows::{ByAir, SpeedRow};
pub use slot::Slot;
pub use texts::Assumption;
