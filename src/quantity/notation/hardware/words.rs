//! The words of a unit as typed, made comparable.

use crate::quantity::notation::text::words;

/// A unit as typed, made comparable beyond [`words`]: one blank for every sign of
/// multiplication, plain digits for raised ones, a slash for "per".
pub(super) fn comparable(text: &str) -> String {
    let mut plain = String::new();
    for c in words(text).chars() {
        match c {
            // Middle dot, dot operator, multiplication signs, hyphens and minus.
            '·' | '\u{22c5}' | '×' | '*' | '-' | '\u{2010}' | '\u{2011}' | '\u{2212}'
            | '\u{207b}' => plain.push(' '),
            '¹' => plain.push('1'),
            '²' => plain.push('2'),
            '³' => plain.push('3'),
            // Both letters mu, the micro sign and the Greek one.
            'μ' => plain.push('µ'),
            // The ordinal sign is close to the degree on many keyboards.
            'º' => plain.push('°'),
            c => plain.push(c),
        }
    }
    words(&plain.replace(" per ", "/"))
}

/// The number that a text begins with, and the unit after it, made comparable.
/// The 1 of `1/min` belongs to the unit.
pub(super) fn number_and_unit(given: &str) -> (&str, String) {
    let (number, rest) = super::super::text::split_number(given);
    if rest.starts_with('/')
        && let Some(before) = number.trim_end().strip_suffix('1')
        && before.ends_with(char::is_whitespace)
    {
        return (before, comparable(&format!("1{rest}")));
    }
    (number, comparable(rest))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn signs_of_multiplication_and_raised_digits_are_made_plain() {
        for (text, plain) in [
            ("N·m", "n m"),
            ("N.m", "n m"),
            ("lb-ft", "lb ft"),
            ("min⁻¹", "min 1"),
            ("kg/m³", "kg/m3"),
            ("cc per min", "cc/min"),
            ("lb/(hp·h)", "lb/(hp h)"),
            ("\u{3bc}s", "\u{b5}s"),
            (" º C ", "° c"),
        ] {
            assert_eq!(comparable(text), plain, "{text}");
        }
    }

    #[test]
    fn the_one_of_one_per_minute_is_no_digit_of_the_speed() {
        assert_eq!(number_and_unit("6500 1/min"), ("6500 ", "1/min".into()));
        assert_eq!(number_and_unit("6501/min"), ("6501", "/min".into()));
        assert_eq!(number_and_unit("12 l/h"), ("12 ", "l/h".into()));
    }
}
