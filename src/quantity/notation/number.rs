//! A number as typed.

use super::number_error::NumberError;
use std::ops::RangeInclusive;

use super::text::clean;
use crate::quantity::style::MINUS;

/// The number that a text means.
///
/// Point and comma both stand before decimals; spaces (also the no-break ones),
/// apostrophes, points and commas also stand between groups of exactly three
/// digits. With both a point and a comma, the last is the decimal one. A text
/// such as `1.234` has two readings: if `allowed` holds just one it is taken,
/// and if it holds both the text is refused with a question.
///
/// ```
/// use fillwright::quantity::notation::{NumberError, parse_number};
/// assert_eq!(parse_number("13,5", 0.0..=60.0)?, 13.5);
/// assert_eq!(parse_number("1.234,5", 0.0..=9999.0)?, 1234.5);
/// assert_eq!(parse_number("1.679", 0.0..=10.0)?, 1.679);
/// let both = parse_number("1.679", 0.0..=9999.0);
/// assert!(matches!(both, Err(NumberError::Ambiguous { .. })));
/// # Ok::<(), NumberError>(())
/// ```
///
/// # Errors
/// When the text is empty, too long, no number, a number with two meanings, or
/// outside `allowed`.
pub fn parse_number(text: &str, allowed: RangeInclusive<f64>) -> Result<f64, NumberError> {
    let given = clean(text)?;
    let (sign, body) = match given.strip_prefix(['-', MINUS]) {
        Some(body) => (-1.0, body),
        None => (1.0, given),
    };
    let not_a_number = || NumberError::NotANumber { given: given.to_owned() };
    let pieces = Pieces::of(body).ok_or_else(not_a_number)?;
    // The sum turns a negative zero into zero.
    let decimal = pieces.with_decimals().map(|value| sign * value + 0.0);
    let grouped = pieces.without_decimals().map(|value| sign * value + 0.0);
    let inside = |value: &f64| allowed.contains(value);
    match (decimal.filter(inside), grouped.filter(inside)) {
        (Some(decimal), Some(grouped)) => {
            Err(NumberError::Ambiguous { given: given.to_owned(), decimal, grouped })
        }
        (Some(value), None) | (None, Some(value)) => Ok(value),
        (None, None) if decimal.is_none() && grouped.is_none() => {
            Err(NumberError::Separators { given: given.to_owned() })
        }
        (None, None) => Err(NumberError::OutOfRange {
            given: given.to_owned(),
            low: *allowed.start(),
            high: *allowed.end(),
        }),
    }
}

/// Runs of digits and the separators between them.
struct Pieces<'a> {
    runs: Vec<&'a str>,
    separators: Vec<char>,
}

impl<'a> Pieces<'a> {
    /// The pieces of a text that has digits and nothing else than digits and
    /// separators.
    fn of(body: &'a str) -> Option<Self> {
        let separators: Vec<char> =
            body.chars().filter(|c| !c.is_ascii_digit()).map(separator).collect::<Option<_>>()?;
        let runs: Vec<&str> = body.split(|c: char| !c.is_ascii_digit()).collect();
        runs.iter().any(|run| !run.is_empty()).then_some(Self { runs, separators })
    }

    /// The number whose last separator stands before the decimals.
    fn with_decimals(&self) -> Option<f64> {
        let (mark, groups) = self.separators.split_last()?;
        let (decimals, runs) = self.runs.split_last()?;
        if !matches!(mark, '.' | ',') || groups.contains(mark) || decimals.is_empty() {
            return None;
        }
        Some(value(&whole(runs, groups)?, decimals))
    }

    /// The number whose separators all stand between groups.
    fn without_decimals(&self) -> Option<f64> {
        let digits = whole(&self.runs, &self.separators).filter(|digits| !digits.is_empty())?;
        Some(value(&digits, ""))
    }
}

/// Digits that are read; decimals after them are finer than any use here.
const READ_DIGITS: usize = 15;

/// The number that digits before and after the decimal mark stand for.
///
/// Fifteen digits are a whole number below 2^53, and powers of ten up to 10^22
/// are exact, so one division gives the correctly rounded value. The general
/// reader of the standard library does no better for such texts, but brings a
/// table of powers of five that alone is a tenth of this program's data.
fn value(whole: &str, decimals: &str) -> f64 {
    let digit = |byte: u8| f64::from(byte - b'0');
    let whole = whole.trim_start_matches('0');
    let value = whole.bytes().fold(0.0, |value, byte| value * 10.0 + digit(byte));
    let read = decimals.len().min(READ_DIGITS.saturating_sub(whole.len()));
    let (mut digits, mut scale) = (value, 1.0);
    for byte in decimals.bytes().take(read) {
        digits = digits * 10.0 + digit(byte);
        scale *= 10.0;
    }
    digits / scale
}

/// The digits of a whole number, if equal separators cut it into threes.
fn whole(runs: &[&str], separators: &[char]) -> Option<String> {
    let (first, rest) = runs.split_first()?;
    if let Some((separator, others)) = separators.split_first() {
        let fits = others.iter().all(|other| other == separator)
            && (1..=3).contains(&first.len())
            && !first.starts_with('0')
            && rest.iter().all(|run| run.len() == 3);
        if !fits {
            return None;
        }
    }
    Some(runs.concat())
}

/// One character for each kind of separator; all spaces are one kind.
fn separator(c: char) -> Option<char> {
    match c {
        '.' | ',' => Some(c),
        '\'' | '\u{2019}' => Some('\''),
        // Space, no-break space, thin space, narrow no-break space.
        ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}' => Some(' '),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::problems::in_metric;

    const WIDE: RangeInclusive<f64> = -1e9..=1e9;

    #[test]
    fn one_meaning_is_taken() {
        let cases = [
            ("13", 13.0),
            (" 13.5 ", 13.5),
            ("13,5", 13.5),
            (".5", 0.5),
            (",5", 0.5),
            ("0", 0.0),
            ("-0", 0.0),
            ("-2.5", -2.5),
            ("\u{2212}2,5", -2.5),
            ("0.123", 0.123),
            ("0,123", 0.123),
            ("1234.567", 1234.567),
            ("1.2345", 1.2345),
            ("12 500", 12_500.0),
            ("12\u{a0}500", 12_500.0),
            ("12\u{202f}500,25", 12_500.25),
            ("12'500.5", 12_500.5),
            ("12’500", 12_500.0),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("1,234.567", 1234.567),
            ("1,234,567", 1_234_567.0),
            ("1.234.567", 1_234_567.0),
            ("1.234.567,8", 1_234_567.8),
            ("007", 7.0),
        ];
        for (text, value) in cases {
            assert_eq!(parse_number(text, WIDE), Ok(value), "{text}");
        }
    }

    #[test]
    fn broken_grouping_is_refused() {
        let texts = [
            "1,23,456",
            "1.2.3",
            "1,2,3",
            "1,234.5.6",
            "1.234.56",
            "0,123,456",
            "1234,567.8",
            "12 34",
            "1 234 56",
            "1  234",
            "1 234'567",
            "1.5 000",
            "5.",
            "5,",
            "1,234,",
            ".5.",
            "1.,5",
            "1'5",
        ];
        for text in texts {
            let error = NumberError::Separators { given: text.to_owned() };
            assert_eq!(parse_number(text, WIDE), Err(error));
        }
    }

    #[test]
    fn what_is_no_number_is_refused() {
        let texts = [
            "nan", "inf", "-inf", "1e5", "1E5", "0x1f", "--5", "5-", "+5", "x", "5 l", "５", "٣",
            "1_000", "-", ".", ",", "-.", "½", "1/2", "5\n6", "− −5", "1·5",
        ];
        for text in texts {
            let error = NumberError::NotANumber { given: text.to_owned() };
            assert_eq!(parse_number(text, WIDE), Err(error));
        }
    }

    #[test]
    fn two_meanings_become_one_where_only_one_is_allowed() {
        assert_eq!(parse_number("1.234", 0.0..=100.0), Ok(1.234));
        assert_eq!(parse_number("1,234", 100.0..=9999.0), Ok(1234.0));
        for (text, decimal, grouped) in
            [("1.234", 1.234, 1234.0), ("1,234", 1.234, 1234.0), ("-123,000", -123.0, -123_000.0)]
        {
            let error = NumberError::Ambiguous { given: text.to_owned(), decimal, grouped };
            assert_eq!(parse_number(text, WIDE), Err(error));
        }
    }

    #[test]
    fn the_question_offers_texts_that_settle_it() {
        let question = parse_number("1,234", WIDE).map_err(in_metric);
        let words = "“1,234” may mean 1.234 or 1234: which one? \
                     Type 1,2340 for the first, 1234 for the second";
        assert_eq!(question, Err(words.to_owned()));
        assert_eq!(parse_number("1,2340", WIDE), Ok(1.234));
        assert_eq!(parse_number("1234", WIDE), Ok(1234.0));
    }

    #[test]
    fn out_of_range_names_what_is_allowed() {
        let refusal = parse_number("61", 0.0..=60.0).map_err(in_metric);
        let words = "61 is out of range: type a number from 0 to 60";
        assert_eq!(refusal, Err(words.to_owned()));
        assert!(parse_number("-0.1", 0.0..=60.0).is_err());
        assert!(parse_number("1.234", 2000.0..=3000.0).is_err());
        assert!(parse_number("1", f64::NAN..=f64::NAN).is_err());
    }

    #[test]
    fn empty_and_endless_texts_are_refused() {
        assert_eq!(parse_number(" \u{202f}", WIDE), Err(NumberError::Empty));
        assert_eq!(parse_number(&"1".repeat(65), WIDE), Err(NumberError::TooLong));
        assert!(parse_number(&"1".repeat(64), 0.0..=f64::MAX).is_ok());
    }
}
