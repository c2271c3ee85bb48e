//! Shares as typed, and why a text is none.

use thiserror::Error;

use super::comparable::is_percent;
use super::text::{clean, split_number, words};
use super::{NumberError, parse_number};
use crate::quantity::{Share, ShareError};

/// Why a text is not a share, or not a range of shares.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum ShareTextError {
    /// A number in it cannot be read.
    Number(#[from] NumberError),
    /// A number in it is not a share.
    Share(#[from] ShareError),
    /// Something else than a percent sign follows the number.
    NotAShare {
        /// What was typed.
        given: String,
    },
    /// Something else than a percent sign follows the number of a small part.
    NotAPart {
        /// What was typed.
        given: String,
    },
    /// The number can be a percentage or a fraction.
    PercentOrFraction {
        /// What was typed.
        given: String,
        /// Its value if it is a percentage.
        percent: f64,
    },
    /// The expected share is outside its range.
    ExpectedOutside {
        /// What was typed.
        given: String,
    },
    /// A spread without the share that it belongs to.
    SpreadAlone {
        /// What was typed.
        given: String,
    },
    /// The brackets hold no range.
    NoRange {
        /// What was typed.
        given: String,
    },
}

/// A percentage as typed.
pub(super) struct Percentage<'a> {
    pub(super) text: &'a str,
    pub(super) value: f64,
    /// Whether an E or a percent sign says that it is one.
    pub(super) marked: bool,
}

impl<'a> Percentage<'a> {
    /// The percentage that a text means, marked or not.
    pub(super) fn read(text: &'a str) -> Result<Self, ShareTextError> {
        let text = clean(text)?;
        let fuel = text
            .strip_prefix(['E', 'e'])
            .map(str::trim_start)
            .filter(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
        let (number, rest) = split_number(fuel.unwrap_or(text));
        let word = words(rest);
        if number.is_empty() || !(word.is_empty() || is_percent(&word)) {
            return Err(ShareTextError::NotAShare { given: text.to_owned() });
        }
        let value = parse_number(number, 0.0..=100.0)?;
        Ok(Self { text, value, marked: fuel.is_some() || !word.is_empty() })
    }

    /// Whether it can only be a percentage, as no fraction is so large. Zero is
    /// the same in both readings, and says nothing of its neighbours.
    pub(super) fn is_clear(&self) -> bool {
        self.marked || self.value > 1.0
    }

    /// The question to ask if the number could be a fraction.
    pub(super) fn doubt(&self) -> Result<(), ShareTextError> {
        if self.is_clear() || self.value <= 0.0 {
            return Ok(());
        }
        let given = self.text.to_owned();
        Err(ShareTextError::PercentOrFraction { given, percent: self.value })
    }
}

/// The share that a text means: `E30`, `30` or `30 %`.
///
/// A bare number above 0 and up to 1 may be a percentage or a fraction, and is
/// refused with a question; with a percent sign or an E it is taken.
///
/// ```
/// use fillwright::quantity::notation::{ShareTextError, parse_share};
/// assert_eq!(parse_share("E30")?.fraction(), 0.3);
/// assert_eq!(parse_share("12,5 %")?.fraction(), 0.125);
/// assert!(matches!(parse_share("0.3"), Err(ShareTextError::PercentOrFraction { .. })));
/// # Ok::<(), ShareTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning or two, or is not between 0 % and 100 %.
pub fn parse_share(text: &str) -> Result<Share, ShareTextError> {
    let percentage = Percentage::read(text)?;
    percentage.doubt()?;
    Ok(Share::from_percent(percentage.value)?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::problems::in_metric;

    #[test]
    fn bare_number_up_to_one_is_a_question() {
        let asked = parse_share("0,3").map_err(in_metric);
        let words = "“0,3” may mean 0,3 % or 30 %: which one? Type 0,3 % for the first, 30 % for \
                     the second";
        assert_eq!(asked, Err(words.to_owned()));
        for text in ["1", "0.01", "1.0", ".5"] {
            let asked = parse_share(text);
            assert!(matches!(asked, Err(ShareTextError::PercentOrFraction { .. })), "{text}");
        }
    }

    #[test]
    fn marked_or_zero_is_no_question() -> Result<(), ShareTextError> {
        for (text, percent) in [("1 %", 1.0), ("0.5%", 0.5), ("E1", 1.0), ("0", 0.0), ("E0", 0.0)] {
            assert_eq!(parse_share(text)?, Share::from_percent(percent)?, "{text}");
        }
        Ok(())
    }

    #[test]
    fn what_is_no_share_is_refused() {
        for text in ["", "E", "e-5", "EE30", "E30E", "30 l", "30 %%", "101", "-1", "E85x", "1e1"] {
            assert!(parse_share(text).is_err(), "{text}");
        }
    }
}
