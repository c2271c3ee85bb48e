//! Why a text is not a number.

use thiserror::Error;

/// The longest text that is read. Nobody types more for one quantity, and a
/// bound keeps every reader's work small.
pub(crate) const MAX_CHARS: usize = 64;

/// Why a text is not a number, or not one that is allowed.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum NumberError {
    /// Nothing was typed.
    Empty,
    /// The text is longer than any number needs.
    TooLong,
    /// There is something else than digits and separators, or no digit.
    NotANumber {
        /// What was typed.
        given: String,
    },
    /// The points, commas or spaces fit no way to write one number.
    Separators {
        /// What was typed.
        given: String,
    },
    /// The separator can stand before decimals or between thousands.
    Ambiguous {
        /// What was typed.
        given: String,
        /// The number if the separator stands before decimals.
        decimal: f64,
        /// The number if the separator stands between thousands.
        grouped: f64,
    },
    /// A number, but too small or too large here.
    OutOfRange {
        /// What was typed.
        given: String,
        /// The smallest number that is allowed.
        low: f64,
        /// The largest number that is allowed.
        high: f64,
    },
}
