//! Small parts of which views are made. They take boxed signals and callbacks
//! instead of closures of their own types: each widget is then compiled once,
//! not once for every place that uses it, which keeps the download small.

mod bar;
mod below;
mod button;
mod error_summary;
mod facts;
mod field;
mod file_button;
mod flow;
mod need;
mod options;
mod paper;
mod section;
mod spoken;
mod table;
mod text_area;
mod time_field;
mod undo_line;
mod undoable_rows;
mod verdict;
mod working;

pub(crate) use super::signals::{holds, said};
pub(crate) use bar::Bar;
pub(crate) use button::Button;
pub(crate) use error_summary::{ErrorSummary, Lead, in_a_sentence};
pub(crate) use facts::facts;
pub(crate) use field::{LEVEL_HINT, OCTANE_HINT, TextField};
pub(crate) use file_button::FileButton;
pub(crate) use flow::{Drawn, Rows, When};
pub(crate) use need::{Need, NeedInShort};
pub(crate) use options::{CheckBox, Choices, Options, key_of, options, value_of};
pub(crate) use paper::{PrintButton, Sheet, sheet_head, sheet_sources};
pub(crate) use section::Section;
pub(crate) use spoken::Spoken;
pub(crate) use table::{table, wide_table};
pub(crate) use text_area::TextArea;
pub(crate) use time_field::TimeField;
pub(crate) use undo_line::{UndoAbove, UndoAtEntry, UndoLine};
pub(crate) use undoable_rows::UndoableRows;
pub(crate) use verdict::{NoCalibration, Shape, class_of, mark, verdict_item, verdict_shape};
pub(crate) use working::working_shown;
