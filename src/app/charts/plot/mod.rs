//! What pictures with axes share.

mod crosshair;
mod names;
mod path;
mod stage;
mod svg;
mod table;
mod ticks;

pub(crate) use crosshair::Crosshair;
pub(crate) use names::{Area, GAP, LINE, Name, fitting, least_covering};
pub(crate) use path::{Path, pen};
pub(crate) use stage::{Room, Show, Stage, height};
pub(crate) use svg::{hatch, path, shape, text, whole, width_of, window_hatches};
pub(crate) use table::{AsTable, ROWS, heading, table, wide};
pub(crate) use ticks::ticks;
