//! Why a text is no table of a curve, and a row of one none of it.

use thiserror::Error;

use crate::message::Message;
use crate::quantity::notation::FigureTextError;

/// Why a text is no table at all.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[error("{self:?}")]
pub enum CurveTableError {
    /// The text is too long.
    TooLong {
        /// How many bytes it has.
        given: usize,
    },
    /// It has too many rows.
    TooManyRows {
        /// How many it has.
        given: usize,
    },
    /// It has too many columns.
    TooManyColumns {
        /// How many it has.
        given: usize,
    },
    /// No line holds two numbers.
    NoRows,
    /// A column was chosen that is not there.
    NoSuchColumn {
        /// The column that was chosen, counted from 1.
        given: usize,
        /// How many there are.
        columns: usize,
    },
    /// One column was chosen for two things.
    ColumnChosenTwice {
        /// The column, counted from 1.
        given: usize,
    },
}

/// A row that cannot be read; as text it is a sentence.
#[derive(Clone, Debug, PartialEq)]
pub struct BadRow {
    /// Its line in the text, counted from 1.
    pub line: usize,
    /// The line, shortened.
    pub text: String,
    /// What is wrong with it.
    pub cell: BadCell,
}

/// Why a cell cannot be read.
#[derive(Clone, Debug, PartialEq)]
pub struct BadCell {
    /// What its column holds, inside a sentence.
    pub column: Message,
    /// What stands in it, shortened.
    pub given: String,
    /// What is wrong with that.
    pub error: FigureTextError,
}
