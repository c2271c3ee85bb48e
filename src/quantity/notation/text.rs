//! What the readers of typed text share.

use super::number_error::{MAX_CHARS, NumberError};
use crate::quantity::style::MINUS;

/// Spaces, and the invisible marks that copied text brings along.
fn is_blank(c: char) -> bool {
    c.is_whitespace() || matches!(c, '\u{200b}'..='\u{200f}' | '\u{2060}' | '\u{feff}')
}

/// The text without blanks around it, if it is neither empty nor too long.
pub(super) fn clean(text: &str) -> Result<&str, NumberError> {
    if text.chars().nth(MAX_CHARS).is_some() {
        return Err(NumberError::TooLong);
    }
    let inner = text.trim_matches(is_blank);
    if inner.is_empty() { Err(NumberError::Empty) } else { Ok(inner) }
}

/// Whether a character can belong to a number; spaces can, as they group digits.
fn is_of_number(c: char) -> bool {
    c.is_ascii_digit()
        || c.is_whitespace()
        || matches!(c, '.' | ',' | '\'' | '\u{2019}' | '-' | MINUS)
}

/// The number that the text begins with, and what follows it. Either can be
/// empty.
pub(super) fn split_number(text: &str) -> (&str, &str) {
    let end = text.find(|c| !is_of_number(c)).unwrap_or(text.len());
    text.split_at(end)
}

/// A unit or a word as typed, made comparable: lower case, single spaces, none
/// around a slash, and no full stop after an abbreviation.
pub(super) fn words(text: &str) -> String {
    let mut plain = String::new();
    let mut last = ' ';
    for c in text.to_lowercase().chars() {
        let c = if c.is_whitespace() { ' ' } else { c };
        let stop = c == '.' && last.is_alphabetic();
        // A stop counts as a space: "imp.gal" is two words.
        let c = if stop { ' ' } else { c };
        if c == '/' {
            plain.truncate(plain.trim_end().len());
        }
        if c != ' ' || !matches!(last, ' ' | '/') {
            plain.push(c);
            last = c;
        }
    }
    plain.truncate(plain.trim_end().len());
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_lose_case_stops_and_doubled_spaces() {
        assert_eq!(words("  Imp.  Gal. "), "imp gal");
        assert_eq!(words("L / 100\u{202f}KM"), "l/100 km");
        assert_eq!(words("imp.gal"), "imp gal");
        // Only an abbreviation ends in a stop.
        assert_eq!(words("l.."), "l .");
        assert_eq!(words("."), ".");
    }

    #[test]
    fn number_ends_where_the_unit_begins() {
        assert_eq!(split_number("13,5 l"), ("13,5 ", "l"));
        assert_eq!(split_number("l"), ("", "l"));
        assert_eq!(split_number("13"), ("13", ""));
        assert_eq!(split_number("1.679€/l"), ("1.679", "€/l"));
    }

    #[test]
    fn invisible_marks_around_a_text_do_not_count() {
        assert_eq!(clean("\u{200e} 5 \u{feff}"), Ok("5"));
        assert_eq!(clean("\u{200b}"), Err(NumberError::Empty));
    }

    #[test]
    fn length_is_bounded_in_characters() {
        assert!(clean(&"€".repeat(MAX_CHARS)).is_ok());
        assert_eq!(clean(&"1".repeat(MAX_CHARS + 1)), Err(NumberError::TooLong));
    }
}
