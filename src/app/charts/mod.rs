//! Pictures drawn from numbers.

mod glass;
#[allow(dead_code)]
mod timeline;

pub(crate) use glass::SightGlass;
#[allow(unused_imports)]
pub(crate) use timeline::{Mark, MarkKind, Point, Timeline, TimelineChart, Window};
