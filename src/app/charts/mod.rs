//! Pictures drawn from numbers.

mod glass;
#[expect(dead_code, reason = "no view draws one yet")]
pub(crate) mod graph;
mod plot;
mod timeline;

pub(crate) use glass::SightGlass;
pub(crate) use timeline::{Mark, MarkKind, Point, Timeline, TimelineChart, Window};
