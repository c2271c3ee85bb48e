//! The hardware of a car: its power curves, its fuel system, and what follows.

pub mod curve_table;

mod answer;
mod crossed;
mod curves;
mod engine;
mod parts;
mod reading;
mod rows;
mod tables;
mod texts;
mod workings;

pub use crate::document::{
    BlendForm, ColumnForm, CurveForm, Fields, HardwareField, HardwareForm, Mark, MeasuredAt,
    PartForm, PartKind, ValueUnit,
};
pub use answer::{AirAnswer, FluidAnswer, HardwareAnswer, PartAnswer, PartStanding};
pub use crossed::CrossedLimit;
pub use curves::{Corrected, CurveRead};
pub use engine::{Breathing, Engine, SetLimit};
pub use parts::Parts;
pub use reading::{HardwareAsked, HardwareReading};
pub use rows::{ByAir, SpeedRow};
pub(crate) use tables::SMALL_TABLE_ROWS;
pub use texts::{Assumption, Taken};
