//! Small parts of which views are made. They take boxed signals and callbacks
//! instead of closures of their own types: each widget is then compiled once,
//! not once for every place that uses it, which keeps the download small.

mod button;
mod field;
mod flow;
mod options;
mod time_field;
mod verdict;
mod working;

pub(crate) use button::Button;
pub(crate) use field::TextField;
pub(crate) use flow::{Drawn, Rows, When, holds, said};
pub(crate) use options::{CheckBox, Choices, Options, key_of, options, value_of};
pub(crate) use time_field::TimeField;
pub(crate) use verdict::{NoCalibration, verdict_item};
pub(crate) use working::working_shown;
