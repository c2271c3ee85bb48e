//! Pictures drawn from numbers.

mod glass;
pub(crate) mod graph;
mod plot;
mod timeline;

pub(crate) use glass::SightGlass;
pub(crate) use plot::{heading, table, wide};
pub(crate) use timeline::{Mark, MarkKind, Point, Timeline, TimelineChart, Window};
