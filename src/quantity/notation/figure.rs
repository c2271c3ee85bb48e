//! Figures without a unit, and ranges.

use crate::message::keys::typed;
use std::ops::RangeInclusive;

use super::comparable::comparable;
use super::comparable::is_percent;
use super::field::{AnyField, FigureTextError};
use crate::quantity::notation::text::{clean, split_number};
use crate::quantity::notation::{
    Choosable, MixtureScale, NumberError, Style, Units, parse_number, print_anew,
};

/// The lambdas that an engine runs at.
const LAMBDAS: RangeInclusive<f64> = 0.5..=2.0;

/// Numbers that are air-fuel ratios when somebody types them for lambda.
const AIR_FUEL_RATIOS: RangeInclusive<f64> = 5.0..=30.0;

/// A number in a range, or why not in words that quote all that was typed.
fn within(
    number: &str,
    allowed: &RangeInclusive<f64>,
    given: &str,
) -> Result<f64, FigureTextError> {
    parse_number(number, allowed.clone()).map_err(|error| match error {
        NumberError::OutOfRange { low, high, .. } => {
            FigureTextError::OutOfRange { given: given.to_owned(), low, high, unit: String::new() }
        }
        other => FigureTextError::Number(other),
    })
}

/// The air-fuel ratio that a gauge set to petrol shows at lambda 1: common practice,
/// no source. It is a scale, not a property of any petrol.
pub const PETROL_GAUGE_RATIO: f64 = 14.7;

/// The lambda that a text means, from 0.5 to 2: a number, with or without the
/// word or the letter. An air-fuel ratio is refused, as what it says of the mixture
/// depends on the fuel, unless the person reads a gauge set to petrol: then it is
/// taken on that scale, and marked or bare.
///
/// ```
/// use fillwright::quantity::notation::{Choosable, Units, parse_lambda};
/// assert_eq!(parse_lambda("0,80", Units::METRIC)?, 0.8);
/// assert!(parse_lambda("11.7 AFR", Units::METRIC).is_err());
/// let gauge = Units::US.with(Choosable::Mixture, "afr_of_petrol").unwrap_or_default();
/// assert!((parse_lambda("11.76 AFR", gauge)? - 0.8).abs() < 1e-12);
/// # Ok::<(), fillwright::quantity::notation::FigureTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning, is an air-fuel ratio of an unknown scale or out of
/// range.
pub fn parse_lambda(text: &str, units: Units) -> Result<f64, FigureTextError> {
    let given = clean(text)?;
    let plain = comparable(given);
    let without = |names: &[&str]| {
        let rest = names.iter().find_map(|name| {
            plain.strip_prefix(name).or_else(|| plain.strip_suffix(name)).map(str::to_owned)
        });
        rest.map(|rest| rest.trim_matches([' ', '=']).to_owned())
    };
    let by_gauge = units.mixture() == MixtureScale::AfrOfPetrol;
    let ratio = without(&["afr", ": 1", ":1"]);
    let lambda = without(&["lambda", "λ"]);
    let number = ratio.as_ref().or(lambda.as_ref()).map_or(given, String::as_str);
    let is_ratio =
        ratio.is_some() || lambda.is_none() && parse_number(number, AIR_FUEL_RATIOS).is_ok();
    match (is_ratio, by_gauge) {
        (true, true) => {
            let allowed = LAMBDAS.start() * PETROL_GAUGE_RATIO..=LAMBDAS.end() * PETROL_GAUGE_RATIO;
            Ok(within(number, &allowed, given)? / PETROL_GAUGE_RATIO)
        }
        (true, false) => Err(FigureTextError::NotAUnit {
            given: given.to_owned(),
            advice: typed::ADVICE_AIR_FUEL_RATIO,
        }),
        (false, _) => within(number, &LAMBDAS, given),
    }
}

/// The bare number that a text means, in a range.
///
/// # Errors
/// When the text has no meaning or two, or is out of range.
pub fn parse_factor(text: &str, allowed: RangeInclusive<f64>) -> Result<f64, FigureTextError> {
    let given = clean(text)?;
    within(given, &allowed, given)
}

/// The fraction that a percentage means, with `12` as with `12 %`; `allowed` is in
/// fractions. A bare number is taken for a fraction where it can be nothing else,
/// and asked about where it can be both.
///
/// ```
/// use fillwright::quantity::notation::parse_fraction;
/// assert_eq!(parse_fraction("12", 0.0..=0.4)?, 0.12);
/// assert_eq!(parse_fraction("0,12 %", 0.0..=0.4)?, 0.0012);
/// assert_eq!(parse_fraction("0.85", 0.5..=1.0)?, 0.85);
/// assert!(parse_fraction("0.12", 0.0..=0.4).is_err());
/// # Ok::<(), fillwright::quantity::notation::FigureTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning or two, or is out of range.
pub fn parse_fraction(text: &str, allowed: RangeInclusive<f64>) -> Result<f64, FigureTextError> {
    let given = clean(text)?;
    let (number, word) = split_number(given);
    let word = comparable(word);
    if number.trim().is_empty() {
        return Err(NumberError::NotANumber { given: given.to_owned() }.into());
    }
    if !word.is_empty() && !is_percent(&word) {
        return Err(FigureTextError::UnknownUnit { given: given.to_owned(), known: vec!["%"] });
    }
    let percentages = allowed.start() * 100.0..=allowed.end() * 100.0;
    let percent = parse_number(number, percentages.clone());
    if word.is_empty()
        && let Ok(fraction) = parse_number(number, allowed)
        && fraction != 0.0
    {
        return match percent {
            Ok(percent) => {
                let given = given.to_owned();
                Err(FigureTextError::PerhapsFraction { given, percent, fraction })
            }
            Err(_) => Ok(fraction),
        };
    }
    percent.map(|percent| percent / 100.0).map_err(|error| match error {
        NumberError::OutOfRange { low, high, .. } => {
            FigureTextError::OutOfRange { given: given.to_owned(), low, high, unit: " %".into() }
        }
        other => FigureTextError::Number(other),
    })
}

/// Lambda to be shown on another scale.
pub(super) struct MixtureInField;

impl AnyField for MixtureInField {
    fn symbol(&self, units: Units) -> &'static str {
        match units.mixture() {
            MixtureScale::AfrOfPetrol => units.choice(Choosable::Mixture).symbol,
            MixtureScale::Lambda | MixtureScale::AfrOfTheBlend => "λ",
        }
    }

    /// A bare number as a gauge set to petrol shows it, or the other way.
    fn reprint(&self, text: &str, then: Units, now: Units, style: Style) -> Option<String> {
        let one = |units: Units| match units.mixture() {
            MixtureScale::AfrOfPetrol => PETROL_GAUGE_RATIO,
            MixtureScale::Lambda | MixtureScale::AfrOfTheBlend => 1.0,
        };
        let differs = one(then).total_cmp(&one(now)).is_ne() && !text.contains(char::is_alphabetic);
        let lambda = parse_lambda(text, then).ok().filter(|_| differs)?;
        Some(print_anew(lambda * one(now), 2, style))
    }
}
