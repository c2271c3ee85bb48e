//! The workshop of a car: its power curves, its fuel system, and what follows.

mod forms;
mod parts;
mod slot;
mod tables;
mod texts;

pub use forms::{
    BlendForm, ColumnForm, CurveForm, CurveValue, Fields, Mark, PartForm, PartKind, Place, Workshop,
};
pub use parts::Parts;
pub use slot::Slot;
pub use texts::Assumption;
