//! Why a text is not a number.

use thiserror::Error;

use crate::quantity::style::{Style, print_number_short};

/// The longest text that is read. Nobody types more for one quantity, and a
/// bound keeps every reader's work small.
pub(super) const MAX_CHARS: usize = 64;

/// A number as the messages below show it.
fn shown(value: f64) -> String {
    print_number_short(value, 3, Style::default())
}

/// Why a text is not a number, or not one that is allowed.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum NumberError {
    /// Nothing was typed.
    #[error("nothing was typed: type a number, such as 13.5")]
    Empty,
    /// The text is longer than any number needs.
    #[error("the text is too long: at most {MAX_CHARS} characters are read, so type a shorter one")]
    TooLong,
    /// There is something else than digits and separators, or no digit.
    #[error(
        "“{given}” is not a number: type the digits 0 to 9, with a point or a comma before the \
         decimals, such as 13.5"
    )]
    NotANumber {
        /// What was typed.
        given: String,
    },
    /// The points, commas or spaces fit no way to write one number.
    #[error(
        "“{given}” does not read as one number: type a single point or comma before the decimals \
         and nothing between the other digits, such as 1234.5"
    )]
    Separators {
        /// What was typed.
        given: String,
    },
    /// The separator can stand before decimals or between thousands.
    #[error(
        "“{given}” may mean {} or {}: which one? Type {given}0 for the first, {} for the second",
        shown(*decimal),
        shown(*grouped),
        shown(*grouped)
    )]
    Ambiguous {
        /// What was typed.
        given: String,
        /// The number if the separator stands before decimals.
        decimal: f64,
        /// The number if the separator stands between thousands.
        grouped: f64,
    },
    /// A number, but too small or too large here.
    #[error("{given} is out of range: type a number from {} to {}", shown(*low), shown(*high))]
    OutOfRange {
        /// What was typed.
        given: String,
        /// The smallest number that is allowed.
        low: f64,
        /// The largest number that is allowed.
        high: f64,
    },
}
