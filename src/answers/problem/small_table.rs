//! Why a text is no small table, of dead times or of a pump's flow.

use thiserror::Error;

use crate::hardware::{DeadTimeError, OutsideTable, PumpTableError};
use crate::quantity::notation::FigureTextError;

/// Why a text is no table.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum TableError {
    /// A cell cannot be read.
    Cell {
        /// The line, counted from 1.
        line: usize,
        /// What is wrong with it.
        reason: FigureTextError,
    },
    /// A row has another number of cells than the others.
    Width {
        /// The line, counted from 1.
        line: usize,
        /// How many numbers it has.
        found: usize,
        /// How many it needs.
        wanted: usize,
    },
    /// There are too many rows.
    TooLong,
    /// A word that is not understood.
    Word {
        /// The line, counted from 1.
        line: usize,
        /// The word.
        word: String,
        /// The units that figures are in.
        units: String,
    },
    /// The table has several columns, and no voltage says which holds.
    NoVoltage,
    /// The table has one column and does not say for which voltage.
    NoHeader,
    /// The values make no table.
    DeadTimes(#[from] DeadTimeError),
    /// The values make no table.
    Pump(#[from] PumpTableError),
    /// The voltage is not in the table.
    Outside(#[from] OutsideTable),
}
