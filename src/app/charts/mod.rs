//! Pictures drawn from numbers: the sight glass, and charts over distance, engine speed,
//! ethanol share or time.

mod across;
mod axis;
mod chart;
mod crosshair;
mod curve;
mod dates;
mod draw;
mod ends;
mod frame;
mod glass;
mod head;
mod key;
mod labels;
mod names;
mod notes;
mod paper;
mod path;
mod point;
mod reading;
mod screen;
mod stage;
mod stops;
mod svg;
mod table;
mod ticks;

pub(crate) use axis::{Axis, PrintDate, minutes};
pub(crate) use chart::{Chart, Course, Entry, EntryKind, Limit, Line, Mark, Side, Window};
pub(crate) use glass::SightGlass;
pub(crate) use paper::ChartOnPaper;
pub(crate) use point::Point;
pub(crate) use screen::ChartOnScreen;
