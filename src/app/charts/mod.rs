//! Pictures drawn from numbers.

mod glass;
mod timeline;

pub(crate) use glass::SightGlass;
pub(crate) use timeline::{Mark, MarkKind, Point, Timeline, TimelineChart, Window};
