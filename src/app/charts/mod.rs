//! Pictures drawn from numbers.

mod glass;

pub(crate) use glass::SightGlass;
