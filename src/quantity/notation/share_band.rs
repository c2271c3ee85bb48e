use super::ShareTextError;
use super::share::Percentage;
use super::text::{MINUS, clean};
use crate::quantity::{Band, Share};

/// How far a spread may pass 0 % or 100 % by rounding alone.
const ROUNDING: f64 = 1e-9;

/// The share with its band that a text means.
///
/// It can be a range (`70-85`, `70 to 85 %`, `E70–E85`), whose middle is
/// expected; an expected share with a range (`82 (70-85)`) or with a spread in
/// percentage points (`82 ±5`, `82 +-5`); or a single share, which is exact.
///
/// ```
/// use fillwright::quantity::notation::{ShareTextError, parse_share_band};
/// let pump = parse_share_band("82 (70-85) %")?;
/// assert_eq!(pump.low().fraction(), 0.70);
/// assert_eq!(pump.expected().fraction(), 0.82);
/// assert_eq!(parse_share_band("70-90")?.expected().fraction(), 0.80);
/// assert!(parse_share_band("95 ±10").is_err());
/// # Ok::<(), ShareTextError>(())
/// ```
///
/// # Errors
/// When a share cannot be read, may be a fraction as well as a percentage, when
/// the shares are out of order or when the spread leaves 0 % to 100 %.
pub fn parse_share_band(text: &str) -> Result<Band<Share>, ShareTextError> {
    read(text, false)
}

/// The same for what a fuel holds little of, such as water: a number is a percentage,
/// however small it is.
///
/// ```
/// use fillwright::quantity::notation::{ShareTextError, parse_part_band};
/// let water = parse_part_band("0.2 (0-0.4)")?;
/// assert!((water.expected().percent() - 0.2).abs() < 1e-12);
/// assert!(parse_part_band("a little").is_err());
/// # Ok::<(), ShareTextError>(())
/// ```
///
/// # Errors
/// As [`parse_share_band`], but no number is asked about.
pub fn parse_part_band(text: &str) -> Result<Band<Share>, ShareTextError> {
    read(text, true).map_err(|error| match error {
        ShareTextError::NotAShare { given } => ShareTextError::NotAPart { given },
        error => error,
    })
}

/// Reads a band; `percent` says that every number is a percentage.
fn read(text: &str, percent: bool) -> Result<Band<Share>, ShareTextError> {
    let given = clean(text)?;
    // The one percent sign after the brackets counts for all that is before it.
    let outer = given.strip_suffix('%').map(str::trim_end).filter(|rest| rest.ends_with(')'));
    if let Some(inner) = outer.unwrap_or(given).strip_suffix(')') {
        let no_range = || ShareTextError::NoRange { given: given.to_owned() };
        let (expected, range) = inner.split_once('(').ok_or_else(no_range)?;
        let (low, high) = ends(range.trim()).ok_or_else(no_range)?;
        let shares = [low, expected, high].map(Percentage::read);
        let [low, expected, high] = shares;
        let (low, expected, high) = (low?, expected?, high?);
        check(&[&low, &expected, &high], percent || outer.is_some())?;
        return ordered(low.value, expected.value, high.value, given);
    }
    if let Some((expected, spread)) = spread(given) {
        let (expected, spread) = (Percentage::read(expected)?, Percentage::read(spread)?);
        check(&[&expected, &spread], percent)?;
        return around(expected.value, spread.value, given);
    }
    if let Some((low, high)) = ends(given) {
        let (low, high) = (Percentage::read(low)?, Percentage::read(high)?);
        check(&[&low, &high], percent)?;
        return ordered(low.value, f64::midpoint(low.value, high.value), high.value, given);
    }
    let single = Percentage::read(given)?;
    check(&[&single], percent)?;
    Ok(Band::exact(Share::from_percent(single.value)?))
}

/// Asks about numbers that may be fractions, unless one among them shows that
/// all are percentages.
fn check(percentages: &[&Percentage], marked: bool) -> Result<(), ShareTextError> {
    if marked || percentages.iter().any(|percentage| percentage.is_clear()) {
        return Ok(());
    }
    percentages.iter().try_for_each(|percentage| percentage.doubt())
}

/// The band of three percentages, if they are in order.
fn ordered(low: f64, expected: f64, high: f64, given: &str) -> Result<Band<Share>, ShareTextError> {
    if low > high {
        return Err(ShareTextError::OutOfOrder { given: given.to_owned() });
    }
    let low = Share::from_percent(low)?;
    let expected = Share::from_percent(expected)?;
    let high = Share::from_percent(high)?;
    Band::new(low, expected, high)
        .map_err(|_| ShareTextError::ExpectedOutside { given: given.to_owned() })
}

/// The band of a percentage and its spread to either side.
fn around(expected: f64, spread: f64, given: &str) -> Result<Band<Share>, ShareTextError> {
    let (low, high) = (expected - spread, expected + spread);
    if low < -ROUNDING || high > 100.0 + ROUNDING {
        return Err(ShareTextError::SpreadTooWide { given: given.to_owned(), low, high });
    }
    let expected = Share::from_percent(expected)?;
    Band::new(Share::clamped(low / 100.0), expected, Share::clamped(high / 100.0))
        .map_err(|_| ShareTextError::ExpectedOutside { given: given.to_owned() })
}

/// The texts before and after a plus-minus sign.
fn spread(text: &str) -> Option<(&str, &str)> {
    ["±", "+-", "+/-", "+\u{2212}"].iter().find_map(|sign| text.split_once(sign))
}

/// The texts of the two ends of a range.
fn ends(text: &str) -> Option<(&str, &str)> {
    let word = " to ";
    // Lower case of ASCII letters keeps every position.
    if let Some(at) = text.to_ascii_lowercase().find(word) {
        return Some((text.get(..at)?, text.get(at + word.len()..)?));
    }
    // A dash in front is a minus sign.
    let is_dash = |c: char| matches!(c, '-' | '\u{2010}'..='\u{2014}' | MINUS);
    let (at, dash) = text.char_indices().skip(1).find(|(_, c)| is_dash(*c))?;
    Some((text.get(..at)?, text.get(at + dash.len_utf8()..)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn percents(text: &str) -> Result<(f64, f64, f64), ShareTextError> {
        // Rounded, as a percentage is stored as a fraction.
        let round = |share: Share| (share.percent() * 1e9).round() / 1e9;
        parse_share_band(text)
            .map(|band| (round(band.low()), round(band.expected()), round(band.high())))
    }

    #[test]
    fn ranges_have_their_middle_expected() {
        for text in [
            "70-85",
            "70–85 %",
            "70 — 85",
            "E70-E85",
            "E70-85",
            "70 to 85",
            "70 TO 85%",
            "70−85",
            "70 % - 85 %",
            "70-85%",
        ] {
            assert_eq!(percents(text), Ok((70.0, 77.5, 85.0)), "{text}");
        }
    }

    #[test]
    fn expected_share_comes_with_a_range_or_a_spread() {
        for text in ["82 (70-85)", "82(70–85) %", "E82 (E70-E85)", "82 % (70 % to 85 %)"] {
            assert_eq!(percents(text), Ok((70.0, 82.0, 85.0)), "{text}");
        }
        for text in ["82 ±5", "82±5 %", "82 +-5", "82 +/- 5", "E82 ± 5", "82 % ± 5 %", "82 +−5"]
        {
            assert_eq!(percents(text), Ok((77.0, 82.0, 87.0)), "{text}");
        }
        assert_eq!(percents("99.9 ±0.1"), Ok((99.8, 99.9, 100.0)));
    }

    #[test]
    fn single_share_is_exact() {
        assert_eq!(percents("E30"), Ok((30.0, 30.0, 30.0)));
        assert_eq!(percents("0"), Ok((0.0, 0.0, 0.0)));
    }

    #[test]
    fn wrong_order_and_wide_spreads_are_refused() {
        let given = |text: &str| text.to_owned();
        let error = ShareTextError::OutOfOrder { given: given("85-70") };
        assert_eq!(percents("85-70"), Err(error));
        let error = ShareTextError::ExpectedOutside { given: given("90 (70-85)") };
        assert_eq!(percents("90 (70-85)"), Err(error));
        let error =
            ShareTextError::SpreadTooWide { given: given("95 ±10"), low: 85.0, high: 105.0 };
        assert_eq!(percents("95 ±10"), Err(error));
        let error = ShareTextError::NoRange { given: given("82 (70)") };
        assert_eq!(percents("82 (70)"), Err(error));
    }

    #[test]
    fn fractions_are_asked_about_unless_a_neighbour_settles_it() {
        for text in ["0.7-0.85", "0-1", "0.8 (0.7-0.9)", "0.8 ±0.1", "1"] {
            let asked = percents(text);
            assert!(matches!(asked, Err(ShareTextError::PercentOrFraction { .. })), "{text}");
        }
        for (text, low, high) in [
            ("0.5-10", 0.5, 10.0),
            ("0-10", 0.0, 10.0),
            ("0.5-0.9 %", 0.5, 0.9),
            ("10 ±0.5", 9.5, 10.5),
            ("0.7 (0.5-0.9) %", 0.5, 0.9),
        ] {
            let band = percents(text).map(|(low, _, high)| (low, high));
            assert_eq!(band, Ok((low, high)), "{text}");
        }
    }

    #[test]
    fn what_is_no_band_is_refused() {
        for text in [
            "",
            "-",
            "70-",
            "-85",
            "70--85",
            "70-85-90",
            "70 - 85 l",
            "±5",
            "82 ±",
            "82 ±-5",
            ")",
            "()",
            "82 ()",
            "(70-85)",
            "82 (70-85",
            "82 70-85)",
            "to",
            " to 85",
            "70 to",
            "70..85",
        ] {
            assert!(percents(text).is_err(), "{text}");
        }
    }
}
