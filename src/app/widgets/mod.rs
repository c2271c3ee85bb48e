//! Small parts of which views are made.

mod field;
mod options;

pub(crate) use field::TextField;
pub(crate) use options::{Choices, Options};
