//! Volumes and levels as typed.

use thiserror::Error;

use super::comparable::is_percent;
use super::field::{AnyField, anew};
use super::quantities::{DISTANCE, VOLUME};
use super::text::{clean, split_number, words};
use super::{
    DecimalMark, Decimals, LITRE, NumberError, Unit, Units, parse_number, print_anew, print_number,
};
use crate::quantity::Consumption;
use crate::quantity::style::Style;
use crate::quantity::style::joined;
use crate::quantity::{Length, Volume};

/// What a field for a volume knows besides the text in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VolumeField {
    /// The units of the person: those of a bare number, and of a gallon.
    pub units: Units,
    /// What the tank holds, for readings such as `1/4`.
    pub tank: Option<Volume>,
    /// What the car uses, for distances to empty such as `120 km`.
    pub consumption: Option<Consumption>,
    /// The largest volume that is taken. A number may exceed it by what rounding
    /// up to two decimals adds (from one unit on), and then means this volume.
    pub largest: Volume,
    /// Whether people tell such a volume as a part of the tank. A number below one
    /// without a unit has two meanings then.
    pub part_is_usual: bool,
}

/// The largest tank, in litres, that a text is taken for.
const LARGEST_TANK_L: f64 = 1000.0;

impl VolumeField {
    /// A field for a volume that knows no tank and asks no question.
    pub(crate) fn anywhere(units: Units) -> Self {
        Self {
            units,
            tank: None,
            consumption: None,
            largest: LITRE.quantity(LARGEST_TANK_L),
            part_is_usual: false,
        }
    }
}

/// Why a text is not a volume.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum VolumeTextError {
    /// The number in it cannot be read.
    Number(#[from] NumberError),
    /// Something else than a unit follows the number.
    UnknownUnit {
        /// What was typed.
        given: String,
    },
    /// A part of the tank that is none.
    NotAPart {
        /// What was typed.
        given: String,
    },
    /// A part of a tank of unknown size.
    NeedsTank {
        /// What was typed.
        given: String,
    },
    /// A distance to empty without a consumption.
    NeedsConsumption {
        /// What was typed.
        given: String,
    },
    /// A number below one where a part of the tank is usual.
    VolumeOrPart {
        /// What was typed.
        given: String,
        /// The text that means the volume.
        as_volume: String,
        /// The text that means the part of the tank.
        as_part: String,
    },
    /// Less than nothing or more than fits.
    OutOfRange {
        /// What was typed.
        given: String,
        /// The most that is allowed.
        high: f64,
        /// The symbol of the unit of `high`.
        unit: &'static str,
    },
}

/// The volume that a text means.
///
/// It can be a number with a unit of volume or without, a part of the tank
/// (`3/8`, `½`, `25 %`, `1/2 tank`, `full`, `half`, `empty`), or the distance
/// that the fuel lasts for (`120 km`). A distance is turned into fuel by the
/// consumption alone: a reserve that the car's own display leaves out is not
/// added ([`parse_level`] tells such a level apart). A gallon
/// without a country is the person's own.
///
/// ```
/// use fillwright::quantity::Consumption;
/// use fillwright::quantity::notation::{LITRE, Units, VolumeField, parse_volume};
/// let field = VolumeField {
///     units: Units::METRIC,
///     tank: Some(LITRE.quantity(52.0)),
///     consumption: Some(Consumption::from_litres_per_100_km(8.0)?),
///     largest: LITRE.quantity(60.0),
///     part_is_usual: true,
/// };
/// for (text, litres) in [("13,5", 13.5), ("2 US gal", 7.570_823_568), ("1/4", 13.0), ("50 km", 4.0)]
/// {
///     let volume = parse_volume(text, &field)?;
///     assert!((LITRE.value_of(volume) - litres).abs() < 1e-9);
/// }
/// assert!(parse_volume("61 l", &field).is_err());
/// // Three quarters of a litre, or of the tank?
/// assert!(parse_volume("0.75", &field).is_err());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// When the text has no meaning or two, when it needs a tank or a consumption
/// that the field lacks, or when the volume is above the largest.
pub fn parse_volume(text: &str, field: &VolumeField) -> Result<Volume, VolumeTextError> {
    match parse_level(text, field)? {
        LevelText::Volume(volume) | LevelText::Lasting(volume) => Ok(volume),
    }
}

/// What a text says of a level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LevelText {
    /// So much.
    Volume(Volume),
    /// A distance to empty: the fuel that it takes.
    Lasting(Volume),
}

/// The same as [`parse_volume`], a distance to empty told apart from a volume.
///
/// # Errors
/// As for [`parse_volume`].
pub fn parse_level(text: &str, field: &VolumeField) -> Result<LevelText, VolumeTextError> {
    // A printed limit may have been rounded up.
    let bounded = |volume| if volume > field.largest { field.largest } else { volume };
    let given = clean(text)?;
    if let Some(part) = part_of_tank(given)? {
        return field.part(part, given).map(LevelText::Volume);
    }
    let (number, rest) = split_number(given);
    let word = words(rest);
    let (word, of_tank) = match without_tank(&word) {
        Some(word) => (word, true),
        None => (word.as_str(), false),
    };
    if number.is_empty() {
        // Its error says what a number looks like.
        parse_number(given, 0.0..=0.0)?;
    }
    if is_percent(word) {
        let part = parse_number(number, 0.0..=100.0)? / 100.0;
        return field.part(part, given).map(LevelText::Volume);
    }
    if of_tank {
        return match word {
            "" => field.part(parse_number(number, 0.0..=1.0)?, given).map(LevelText::Volume),
            _ => Err(VolumeTextError::UnknownUnit { given: given.to_owned() }),
        };
    }
    if let Some(unit) = (!word.is_empty()).then(|| DISTANCE.named(word, field.units)).flatten() {
        let Some(consumption) = field.consumption else {
            return Err(VolumeTextError::NeedsConsumption { given: given.to_owned() });
        };
        let reach: Length = consumption.reach(field.largest);
        let value = within(number, unit.value_of(reach), unit.symbol(), given)?;
        return Ok(LevelText::Lasting(bounded(consumption.over(unit.quantity(value)))));
    }
    let own = field.units;
    let unit = if word.is_empty() { Some(own.volume()) } else { VOLUME.named(word, own) };
    let Some(unit) = unit else {
        return Err(VolumeTextError::UnknownUnit { given: given.to_owned() });
    };
    let value = within(number, unit.value_of(field.largest), unit.symbol(), given)?;
    if field.part_is_usual && word.is_empty() && 0.0 < value && value < 1.0 {
        return Err(volume_or_part(given, value, unit));
    }
    Ok(LevelText::Volume(bounded(unit.quantity(value))))
}

impl VolumeField {
    /// A part of the tank.
    fn part(&self, part: f64, given: &str) -> Result<Volume, VolumeTextError> {
        let zero = LITRE.quantity(0.0);
        let known = |tank: &Volume| tank.is_finite() && *tank > zero;
        let Some(tank) = self.tank.filter(known) else {
            return Err(VolumeTextError::NeedsTank { given: given.to_owned() });
        };
        let volume = tank * part;
        // A tank that is the largest volume can differ from it by rounding.
        if zero <= volume && volume <= self.largest * (1.0 + 1e-9) {
            Ok(if volume > self.largest { self.largest } else { volume })
        } else {
            Err(VolumeTextError::OutOfRange {
                given: given.to_owned(),
                high: self.units.volume().value_of(self.largest),
                unit: self.units.volume().symbol(),
            })
        }
    }
}

/// The question whether a number below one is a volume or a part of the tank.
fn volume_or_part(given: &str, value: f64, unit: Unit<Volume>) -> VolumeTextError {
    let decimal = if given.contains(',') { DecimalMark::Comma } else { DecimalMark::Point };
    let style = Style { decimal };
    // Twelve digits, since the text has to mean what was typed.
    let as_volume = format!("{} {}", print_number(value, Decimals::Exact, style), unit.symbol());
    let marks = [2.0, 3.0, 4.0, 8.0].map(|below: f64| (value * below, below));
    let mark = marks.into_iter().find(|(above, _)| (above - above.round()).abs() < 1e-9);
    let as_part = match mark {
        Some((above, below)) => format!("{above:.0}/{below:.0}"),
        None => format!("{} %", print_number(value * 100.0, Decimals::Exact, style)),
    };
    VolumeTextError::VolumeOrPart { given: given.to_owned(), as_volume, as_part }
}

/// The number in a text, from 0 to `high` or what rounding makes of it.
fn within(
    number: &str,
    high: f64,
    unit: &'static str,
    given: &str,
) -> Result<f64, VolumeTextError> {
    // A limit printed with two decimals, or exactly, can be typed again.
    let rounded = if high >= 1.0 { ((high * 100.0 - 1e-6).ceil()) / 100.0 } else { high };
    let high = rounded.max(high * (1.0 + 1e-11));
    parse_number(number, 0.0..=high).map_err(|error| match error {
        NumberError::OutOfRange { .. } => {
            VolumeTextError::OutOfRange { given: given.to_owned(), high, unit }
        }
        other => VolumeTextError::Number(other),
    })
}

/// The words before "tank", if the text ends in it.
fn without_tank(word: &str) -> Option<&str> {
    let before = word.strip_suffix("tank")?;
    let before = before.strip_suffix("the ").unwrap_or(before);
    let before = before.strip_suffix("of ").unwrap_or(before);
    (before.is_empty() || before.ends_with(' ') || before.ends_with('%')).then(|| before.trim_end())
}

/// The part of the tank that a word or a fraction means, if it is one.
fn part_of_tank(given: &str) -> Result<Option<f64>, VolumeTextError> {
    let all = words(given);
    let text = without_tank(&all).unwrap_or(&all);
    let part = match text {
        "full" => 1.0,
        "empty" => 0.0,
        "half" | "½" => 0.5,
        "¼" => 0.25,
        "¾" => 0.75,
        "⅓" => 1.0 / 3.0,
        "⅔" => 2.0 / 3.0,
        "⅛" => 0.125,
        "⅜" => 0.375,
        "⅝" => 0.625,
        "⅞" => 0.875,
        _ => return fraction(text, given),
    };
    Ok(Some(part))
}

/// The value of two whole numbers with a slash between them, if the text is that.
fn fraction(text: &str, given: &str) -> Result<Option<f64>, VolumeTextError> {
    let Some((above, below)) = text.split_once(['/', '\u{2044}']) else { return Ok(None) };
    let (above, below) = (above.trim(), below.trim());
    let whole = |text: &str| text.chars().all(|c| c.is_ascii_digit());
    if above.is_empty() || !whole(above) || !whole(below) {
        return Ok(None);
    }
    let small = |text: &str| text.parse::<u16>().ok().filter(|_| text.len() <= 3);
    match (small(above), small(below)) {
        (Some(above), Some(below)) if below > 0 && above <= below => {
            Ok(Some(f64::from(above) / f64::from(below)))
        }
        _ => Err(VolumeTextError::NotAPart { given: given.to_owned() }),
    }
}

/// A volume to be shown in other units.
pub(super) struct VolumeInField {
    /// Whether people tell such a volume as a part of the tank.
    pub(super) part_is_usual: bool,
}

impl AnyField for VolumeInField {
    fn symbol(&self, units: Units) -> &'static str {
        units.volume().symbol()
    }

    fn reprint(&self, text: &str, then: Units, now: Units, style: Style) -> Option<String> {
        let field = |units| VolumeField {
            part_is_usual: self.part_is_usual,
            ..VolumeField::anywhere(units)
        };
        let read = |units| parse_volume(text, &field(units)).ok();
        let value = now.volume().value_of(anew(read(then), read(now))?);
        let number = print_anew(value, 2, style);
        // Without its unit this could be a part of the tank.
        let needs_unit = self.part_is_usual && 0.0 < value && value < 1.0;
        Some(if needs_unit { joined(&number, now.volume().symbol()) } else { number })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::ConsumptionError;
    use crate::quantity::notation::{LITRE, US_GALLON, Unit};
    use crate::words::problems::in_metric;
    use approx::assert_relative_eq;

    fn bare(unit: Unit<Volume>, largest: f64) -> VolumeField {
        VolumeField {
            units: Units::with_volume(unit),
            tank: None,
            consumption: None,
            largest: LITRE.quantity(largest),
            part_is_usual: false,
        }
    }

    fn litres(text: &str, field: &VolumeField) -> Result<f64, VolumeTextError> {
        parse_volume(text, field).map(|volume| LITRE.value_of(volume))
    }

    #[test]
    fn parts_need_the_tank() {
        let field = bare(LITRE, 60.0);
        for text in ["1/4", "25 %", "full", "½", "1/2 tank", "0.5 tank", "empty"] {
            let error = VolumeTextError::NeedsTank { given: text.to_owned() };
            assert_eq!(litres(text, &field), Err(error));
        }
        let nothing = VolumeField { tank: Some(LITRE.quantity(0.0)), ..field };
        assert!(matches!(litres("full", &nothing), Err(VolumeTextError::NeedsTank { .. })));
    }

    #[test]
    fn number_below_one_is_a_question_where_a_part_is_usual() {
        let level = VolumeField { part_is_usual: true, ..bare(LITRE, 60.0) };
        for (text, as_volume, as_part) in [
            ("0.75", "0.75 L", "3/4"),
            (",75", "0,75 L", "3/4"),
            (".5", "0.5 L", "1/2"),
            ("0,125", "0,1250 L", "1/8"),
            ("0.3", "0.3 L", "30 %"),
            ("0.999", "0.9990 L", "99.9 %"),
        ] {
            let question = in_metric(litres(text, &level).unwrap_err());
            let words = format!(
                "“{text}” may mean {as_volume} or {as_part} of the tank: which one? \
                 Type {as_volume} or {as_part}"
            );
            assert_eq!(question, words);
            // Each of the two that are offered settles it.
            let tank = VolumeField { tank: Some(LITRE.quantity(50.0)), ..level };
            let value = litres(text, &bare(LITRE, 60.0)).unwrap();
            assert_relative_eq!(litres(as_volume, &tank).unwrap(), value, max_relative = 1e-12);
            assert_relative_eq!(
                litres(as_part, &tank).unwrap(),
                value * 50.0,
                max_relative = 1e-12
            );
        }
        let gallons = VolumeField { units: Units::US, ..level };
        let question = in_metric(litres("0.5", &gallons).unwrap_err());
        assert!(question.contains("Type 0.5 gal or 1/2"), "{question}");
    }

    #[test]
    fn other_numbers_are_no_question_there() -> Result<(), VolumeTextError> {
        let level = VolumeField { part_is_usual: true, ..bare(LITRE, 60.0) };
        for (text, value) in
            [("0", 0.0), ("0.75 L", 0.75), ("1", 1.0), ("1.5", 1.5), (",75 l", 0.75)]
        {
            assert_relative_eq!(litres(text, &level)?, value);
        }
        // What is poured is told in volumes.
        assert_relative_eq!(litres("0.75", &bare(LITRE, 60.0))?, 0.75);
        Ok(())
    }

    #[test]
    fn distances_need_the_consumption() {
        let error = VolumeTextError::NeedsConsumption { given: "120 km".to_owned() };
        assert_eq!(litres("120 km", &bare(LITRE, 60.0)), Err(error));
    }

    #[test]
    fn limit_printed_in_gallons_can_be_typed_again() -> Result<(), VolumeTextError> {
        // 50 L are 13.2086 US gallons, which two decimals round up.
        let field = bare(US_GALLON, 50.0);
        assert_relative_eq!(litres("13.21", &field)?, 50.0, max_relative = 1e-15);
        let error = litres("13.22", &field).map_err(in_metric);
        assert_eq!(error, Err("“13.22” is out of range: type from 0 to 13.21 gal".to_owned()));
        Ok(())
    }

    #[test]
    fn tank_above_the_largest_is_out_of_range() {
        let field = VolumeField { tank: Some(LITRE.quantity(70.0)), ..bare(LITRE, 60.0) };
        let error = VolumeTextError::OutOfRange { given: "full".to_owned(), high: 60.0, unit: "L" };
        assert_eq!(litres("full", &field), Err(error));
        assert!(litres("1/2", &field).is_ok());
    }

    #[test]
    fn wrong_fractions_are_refused() {
        let field = VolumeField { tank: Some(LITRE.quantity(50.0)), ..bare(LITRE, 60.0) };
        for text in ["5/4", "1/0", "0/0", "1/", "1/1000", "99999/99999"] {
            let error = VolumeTextError::NotAPart { given: text.to_owned() };
            assert_eq!(litres(text, &field), Err(error));
        }
        for text in ["1/2/3", "1.5/2", "-1/2", "/2", "1/x", "½½", "1½", "1/2 l", "3 l tank"] {
            assert!(litres(text, &field).is_err(), "{text}");
        }
    }

    #[test]
    fn distance_beyond_the_largest_volume_is_out_of_range() -> Result<(), ConsumptionError> {
        let consumption = Some(Consumption::from_litres_per_100_km(10.0)?);
        let field = VolumeField { consumption, ..bare(LITRE, 60.0) };
        let error = litres("601 km", &field).map_err(in_metric);
        assert_eq!(error, Err("“601 km” is out of range: type from 0 to 600 km".to_owned()));
        Ok(())
    }

    #[test]
    fn field_without_a_sensible_limit_takes_nothing() {
        for largest in [f64::NAN, -1.0] {
            assert!(litres("1", &bare(LITRE, largest)).is_err());
        }
    }
}
