//! The style in which numbers are written: the decimal mark and the decimals.

use serde::{Deserialize, Serialize};

/// The narrow space that keeps a number and its unit on one line.
pub(crate) const NARROW_SPACE: char = '\u{202f}';

/// The typographic minus sign.
pub(crate) const MINUS: char = '\u{2212}';

/// More decimals than this are never printed: a double does not hold them, and
/// the text has to stay short enough to be read back.
const MOST_DECIMALS: usize = 40;

/// What stands before the decimals of a printed number.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DecimalMark {
    /// A point: 13.5.
    #[default]
    Point,
    /// A comma: 13,5.
    Comma,
}

impl DecimalMark {
    /// The mark itself.
    pub fn char(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }
}

/// How numbers are printed for one person.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Style {
    /// What stands before the decimals.
    pub decimal: DecimalMark,
}

/// How many decimals a printed number has. A plain `usize` stands for
/// [`Decimals::Fixed`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Decimals {
    /// Just so many, with zeros at the end: 13.50.
    Fixed(usize),
    /// Up to so many, without zeros at the end: 13.5.
    UpTo(usize),
    /// Twelve significant digits without zeros at the end, written such that the
    /// text reads back as the same number and has no second reading: 1.2340, as
    /// 1.234 might be taken for a thousand. Meant for a field to be edited. A
    /// number below 1e-28 loses digits.
    Exact,
}

impl From<usize> for Decimals {
    fn from(decimals: usize) -> Self {
        Self::Fixed(decimals)
    }
}

/// A number as text, rounded to the given decimals, with a typographic minus
/// where it is negative and no minus where it rounds to zero. Digits are not
/// grouped. What is no finite number prints as a dash.
///
/// ```
/// use fillwright::quantity::notation::{DecimalMark, Decimals, Style, print_number};
/// let style = Style { decimal: DecimalMark::Comma };
/// assert_eq!(print_number(-13.5, 2, style), "−13,50");
/// assert_eq!(print_number(13.5, Decimals::UpTo(2), style), "13,5");
/// assert_eq!(print_number(1.234, Decimals::Exact, style), "1,2340");
/// assert_eq!(print_number(-0.001, 2, style), "0,00");
/// ```
pub fn print_number(value: f64, decimals: impl Into<Decimals>, style: Style) -> String {
    if !value.is_finite() {
        return "—".to_owned();
    }
    let magnitude = value.abs();
    let digits = match decimals.into() {
        Decimals::Fixed(decimals) => fixed(magnitude, decimals),
        Decimals::UpTo(decimals) => trimmed(&fixed(magnitude, decimals)),
        Decimals::Exact => exact(magnitude),
    };
    let negative = value < 0.0 && digits.contains(|c: char| matches!(c, '1'..='9'));
    let mut text = if negative { MINUS.to_string() } else { String::new() };
    text.extend(digits.chars().map(|c| if c == '.' { style.decimal.char() } else { c }));
    text
}

/// A number as text with up to so many decimals, and no zeros at the end:
/// [`print_number`] with [`Decimals::UpTo`].
pub fn print_number_short(value: f64, decimals: usize, style: Style) -> String {
    print_number(value, Decimals::UpTo(decimals), style)
}

/// A number that is shown in other units than those in which it was typed, to be
/// edited: with at least so many decimals and at least four digits, without zeros at
/// the end, and with one reading only.
///
/// ```
/// use fillwright::quantity::notation::{Style, print_anew};
/// assert_eq!(print_anew(15.850_323, 2, Style::default()), "15.85");
/// assert_eq!(print_anew(0.264_172, 2, Style::default()), "0.2642");
/// ```
pub fn print_anew(value: f64, decimals: usize, style: Style) -> String {
    #[expect(clippy::cast_possible_truncation, reason = "exponents of doubles are small")]
    let digits_before = if value == 0.0 { 0 } else { value.abs().log10().floor() as i32 + 1 };
    let decimals = decimals.max(usize::try_from(4 - digits_before).unwrap_or(0)).min(12);
    // Three decimals could be taken for a group of thousands.
    let decimals = if decimals == 3 { 4 } else { decimals };
    let scale = 10_f64.powi(i32::try_from(decimals).unwrap_or(0));
    print_number((value * scale).round() / scale, Decimals::Exact, style)
}

/// A magnitude with just so many decimals.
fn fixed(magnitude: f64, decimals: usize) -> String {
    format!("{magnitude:.*}", decimals.min(MOST_DECIMALS))
}

/// Without zeros after the last other decimal.
fn trimmed(digits: &str) -> String {
    if digits.contains('.') {
        digits.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        digits.to_owned()
    }
}

/// A magnitude with twelve significant digits and one reading only.
fn exact(magnitude: f64) -> String {
    // The exponent as the formatter rounds it; a logarithm could be off by one.
    let scientific = format!("{magnitude:.11e}");
    let exponent = scientific.rsplit('e').next().and_then(|exponent| exponent.parse().ok());
    let decimals = usize::try_from(11_i32.saturating_sub(exponent.unwrap_or(0))).unwrap_or(0);
    let mut digits = trimmed(&fixed(magnitude, decimals));
    // Three decimals could be taken for a group of thousands; four cannot.
    if digits.split_once('.').is_some_and(|(_, decimals)| decimals.len() == 3) {
        digits.push('0');
    }
    digits
}

/// A number and its unit, kept on one line.
pub(crate) fn joined(number: &str, unit: &str) -> String {
    format!("{number}{NARROW_SPACE}{unit}")
}

#[cfg(test)]
mod tests {
    use super::*;

    const POINT: Style = Style { decimal: DecimalMark::Point };
    const COMMA: Style = Style { decimal: DecimalMark::Comma };

    #[test]
    fn decimals_are_fixed_or_trimmed() {
        assert_eq!(print_number(13.456, 1, POINT), "13.5");
        assert_eq!(print_number(13.0, 2, COMMA), "13,00");
        assert_eq!(print_number_short(13.0, 2, COMMA), "13");
        assert_eq!(print_number_short(100.0, 0, COMMA), "100");
        assert_eq!(print_number_short(13.10, 3, COMMA), "13,1");
        assert_eq!(print_number(1234.5, 1, COMMA), "1234,5");
    }

    #[test]
    fn minus_is_typographic_and_never_before_zero() {
        assert_eq!(print_number(-0.5, 1, POINT), "\u{2212}0.5");
        assert_eq!(print_number(-0.04, 1, POINT), "0.0");
        assert_eq!(print_number(-0.0, 0, POINT), "0");
    }

    #[test]
    fn exact_is_short_and_unmistakable() {
        for (value, text) in [
            (0.0, "0"),
            (30.000_000_000_000_004, "30"),
            (0.1 + 0.2, "0.3"),
            (1.234, "1.2340"),
            (0.123, "0.1230"),
            (1.0 / 3.0, "0.333333333333"),
            (9.999_999_999_999_9, "10"),
            (1e-9, "0.000000001"),
            (1e15, "1000000000000000"),
        ] {
            assert_eq!(print_number(value, Decimals::Exact, POINT), text);
        }
    }

    #[test]
    fn no_number_and_absurd_decimals_do_no_harm() {
        assert_eq!(print_number(f64::NAN, 2, POINT), "—");
        assert_eq!(print_number(f64::NEG_INFINITY, Decimals::Exact, POINT), "—");
        assert_eq!(print_number(0.5, usize::MAX, POINT).len(), 42);
        assert_eq!(print_number(f64::MIN_POSITIVE, Decimals::Exact, POINT), "0");
    }

    #[test]
    fn style_is_stored_by_name() -> Result<(), serde_json::Error> {
        assert_eq!(serde_json::to_string(&COMMA)?, "{\"decimal\":\"comma\"}");
        assert_eq!(serde_json::from_str::<Style>("{\"decimal\":\"point\"}")?, Style::default());
        Ok(())
    }
}
