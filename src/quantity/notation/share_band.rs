//! Shares with their error, as typed.

use super::ShareTextError;
use super::share::Percentage;
use super::text::clean;
use crate::quantity::style::MINUS;
use crate::quantity::{Band, Share};

/// What a text says of a share.
#[derive(Clone, Debug, PartialEq)]
pub enum ShareText {
    /// One share, and nothing of how far it may be off.
    Single(Share),
    /// What it may be, and what is expected.
    Range(Band<Share>),
    /// How far a share that stands elsewhere may be off.
    Spread(Spread),
}

impl ShareText {
    /// The band that it means; a single share is exact.
    fn band(self) -> Result<Band<Share>, ShareTextError> {
        match self {
            Self::Single(share) => Ok(Band::exact(share)),
            Self::Range(band) => Ok(band),
            Self::Spread(spread) => Err(spread.refused()),
        }
    }
}

/// How far a share may be off to either side.
#[derive(Clone, Debug, PartialEq)]
pub struct Spread {
    given: String,
    points: f64,
    doubt: Result<(), ShareTextError>,
}

impl Spread {
    /// The band around the share that it belongs to, as far as shares go.
    ///
    /// # Errors
    /// When the spread may be a fraction as well as percentage points.
    pub fn around(self, expected: Share) -> Result<Band<Share>, ShareTextError> {
        // A share above 0 shows that percentages are meant.
        if expected == Share::ZERO {
            self.doubt?;
        }
        around(expected, self.points, &self.given)
    }

    /// What to say where it stands alone.
    pub fn refused(self) -> ShareTextError {
        ShareTextError::SpreadAlone { given: self.given }
    }
}

/// What a text says of a share: one share, a range or an expected share with one as in
/// [`parse_share_band`], or a spread alone (`±2`), which belongs to a share that stands
/// elsewhere.
///
/// # Errors
/// When a share cannot be read, may be a fraction as well as a percentage, or when the
/// expected one lies outside its range.
pub fn parse_share_text(text: &str) -> Result<ShareText, ShareTextError> {
    read(text, false)
}

/// The band of what a fuel holds little of, such as water, as of a share: a number is a
/// percentage, however small it is.
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
    read(text, true).and_then(ShareText::band).map_err(|error| match error {
        ShareTextError::NotAShare { given } => ShareTextError::NotAPart { given },
        error => error,
    })
}

/// Reads what a text says of a share; `percent` says that every number is a percentage.
fn read(text: &str, percent: bool) -> Result<ShareText, ShareTextError> {
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
        return between(low.value, expected.value, high.value, given).map(ShareText::Range);
    }
    if let Some((expected, spread)) = spread(given) {
        let points = Percentage::read(spread)?;
        if expected.trim().is_empty() {
            let (doubt, points) = (check(&[&points], percent), points.value);
            return Ok(ShareText::Spread(Spread { given: given.to_owned(), points, doubt }));
        }
        let expected = Percentage::read(expected)?;
        check(&[&expected, &points], percent)?;
        let expected = Share::from_percent(expected.value)?;
        return around(expected, points.value, given).map(ShareText::Range);
    }
    if let Some((low, high)) = ends(given) {
        let (low, high) = (Percentage::read(low)?, Percentage::read(high)?);
        check(&[&low, &high], percent)?;
        let middle = f64::midpoint(low.value, high.value);
        return between(low.value, middle, high.value, given).map(ShareText::Range);
    }
    let single = Percentage::read(given)?;
    check(&[&single], percent)?;
    Ok(ShareText::Single(Share::from_percent(single.value)?))
}

/// The share with its band that a text means.
///
/// It can be a range (`70-85`, `70 to 85 %`, `70..85`, `E70–E85`), whose middle is
/// expected and whose ends may come in either order; an expected share with a range
/// (`82 (70-85)`) or with a spread in percentage points (`82 ±5`, `82 +-5`), as far as
/// shares go; or a single share, which is exact.
///
/// ```
/// use fillwright::quantity::notation::{ShareTextError, parse_share_band};
/// let pump = parse_share_band("82 (70-85) %")?;
/// assert_eq!(pump.low().fraction(), 0.70);
/// assert_eq!(pump.expected().fraction(), 0.82);
/// assert_eq!(parse_share_band("90-70")?.expected().fraction(), 0.80);
/// assert_eq!(parse_share_band("95 ±10")?.high().fraction(), 1.0);
/// assert!(parse_share_band("±10").is_err());
/// # Ok::<(), ShareTextError>(())
/// ```
///
/// # Errors
/// When a share cannot be read, may be a fraction as well as a percentage, when the
/// expected one lies outside its range or when a spread stands alone.
pub fn parse_share_band(text: &str) -> Result<Band<Share>, ShareTextError> {
    parse_share_text(text).and_then(ShareText::band)
}

/// Asks about numbers that may be fractions, unless one among them shows that
/// all are percentages.
fn check(percentages: &[&Percentage], marked: bool) -> Result<(), ShareTextError> {
    if marked || percentages.iter().any(|percentage| percentage.is_clear()) {
        return Ok(());
    }
    percentages.iter().try_for_each(|percentage| percentage.doubt())
}

/// The band from one percentage to another, whichever is the lower one.
fn between(
    one: f64,
    expected: f64,
    other: f64,
    given: &str,
) -> Result<Band<Share>, ShareTextError> {
    let low = Share::from_percent(one.min(other))?;
    let high = Share::from_percent(one.max(other))?;
    let expected = Share::from_percent(expected)?;
    Band::new(low, expected, high)
        .map_err(|_| ShareTextError::ExpectedOutside { given: given.to_owned() })
}

/// The band of a share and its spread in points to either side, as far as shares go.
fn around(expected: Share, points: f64, given: &str) -> Result<Band<Share>, ShareTextError> {
    let [low, high] = [-points, points].map(|it| Share::clamped((expected.percent() + it) / 100.0));
    // Dividing alone can put an end on the wrong side of the share.
    let (low, high) = if points > 0.0 { (low, high) } else { (expected, expected) };
    Band::new(low, expected, high)
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
    // Points in a row, as spreadsheets and handbooks write it.
    let dots = |c: char| c == '.' || c == '\u{2026}';
    if let Some(at) = text.find('\u{2026}').into_iter().chain(text.find("..")).min() {
        let (low, rest) = (text.get(..at)?, text.get(at..)?);
        return Some((low, rest.trim_start_matches(dots)));
    }
    // A dash in front is a minus sign.
    let is_dash = |c: char| matches!(c, '-' | '\u{2010}'..='\u{2014}' | MINUS);
    let (at, dash) = text.char_indices().skip(1).find(|(_, c)| is_dash(*c))?;
    Some((text.get(..at)?, text.get(at + dash.len_utf8()..)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::problems::in_metric;

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
            "70..85",
            "70...85 %",
            "70…85",
            "E70 … E85",
            "70 .. 85",
            "85-70",
            "85 to 70 %",
            "85..70",
        ] {
            assert_eq!(percents(text), Ok((70.0, 77.5, 85.0)), "{text}");
        }
    }

    #[test]
    fn expected_share_comes_with_a_range_or_a_spread() {
        for text in [
            "82 (70-85)",
            "82 (85-70)",
            "82 (70..85)",
            "82(70–85) %",
            "E82 (E70-E85)",
            "82 % (70 % to 85 %)",
        ] {
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
    fn spread_goes_as_far_as_shares_go() {
        assert_eq!(percents("95 ±10"), Ok((85.0, 95.0, 100.0)));
        assert_eq!(percents("1 % ±2"), Ok((0.0, 1.0, 3.0)));
    }

    #[test]
    fn expected_share_outside_its_range_is_refused() {
        let given = |text: &str| text.to_owned();
        for text in ["90 (70-85)", "90 (85-70)"] {
            let error = ShareTextError::ExpectedOutside { given: given(text) };
            assert_eq!(percents(text), Err(error));
        }
        let error = ShareTextError::NoRange { given: given("82 (70)") };
        assert_eq!(percents("82 (70)"), Err(error));
    }

    #[test]
    fn spread_alone_belongs_to_the_share_beside_it() {
        let beside = |text: &str, percent: f64| {
            let Ok(ShareText::Spread(spread)) = parse_share_text(text) else {
                panic!("{text} is no spread")
            };
            let band = spread.around(Share::from_percent(percent)?)?;
            Ok([band.low(), band.expected(), band.high()]
                .map(|it| (it.percent() * 1e9).round() / 1e9))
        };
        for text in ["±2", "+-2", "+/- 2", "± 2 %", "+−2"] {
            assert_eq!(beside(text, 10.0), Ok([8.0, 10.0, 12.0]), "{text}");
        }
        assert_eq!(beside("±2", 1.0), Ok([0.0, 1.0, 3.0]));
        assert_eq!(beside("±5", 98.0), Ok([93.0, 98.0, 100.0]));
        assert_eq!(beside("±0", 30.0), Ok([30.0, 30.0, 30.0]));
        // Half a point, as the share beside it is clear; of none at all it may be half.
        assert_eq!(beside("±0.5", 10.0), Ok([9.5, 10.0, 10.5]));
        let asked = beside("±0.5", 0.0);
        assert!(matches!(asked, Err(ShareTextError::PercentOrFraction { .. })), "{asked:?}");
        let alone = percents("±2").map_err(in_metric);
        let words = "“±2” says how far a share may be off, but not which one: type that share \
                     beside it, or a range such as 8-12";
        assert_eq!(alone, Err(words.to_owned()));
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
            "70..",
            "..85",
            "70..85..90",
        ] {
            assert!(percents(text).is_err(), "{text}");
        }
    }
}
