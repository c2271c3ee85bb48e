//! A field for a quantity of the fuel system: its units, its range and its errors.

use thiserror::Error;

use super::unit::{InSi, Unit};
use super::words::number_and_unit;
use crate::quantity::notation::style::plain;
use crate::quantity::notation::text::clean;
use crate::quantity::notation::{
    Choosable, NumberError, Style, UnitSystem, Units, VolumeUnit, parse_number, print_anew,
};

/// Why a text is not the quantity that a field asks for.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum FigureTextError {
    /// The number in it cannot be read.
    #[error(transparent)]
    Number(#[from] NumberError),
    /// Something else than a unit follows the number.
    #[error("“{given}” does not end in a unit that is known here: type {known} after the number")]
    UnknownUnit {
        /// What was typed.
        given: String,
        /// The units that are known.
        known: String,
    },
    /// Too small or too large for what is asked.
    #[error(
        "“{given}” is out of range: type from {} to {}{unit}",
        plain(*low),
        plain(*high)
    )]
    OutOfRange {
        /// What was typed.
        given: String,
        /// The least that is allowed.
        low: f64,
        /// The most that is allowed.
        high: f64,
        /// The symbol of the unit of both with a blank before it; empty for a
        /// bare number.
        unit: String,
    },
    /// The word after the number says something else than a unit.
    #[error("“{given}” {advice}")]
    NotAUnit {
        /// What was typed.
        given: String,
        /// What it says instead, and what to type.
        advice: &'static str,
    },
    /// A number that may be a fraction or a percentage.
    #[error(
        "“{given}” may mean {} % or {} %: which one? Type a percent sign after the number",
        plain(*percent),
        plain(*fraction * 100.0)
    )]
    PerhapsFraction {
        /// What was typed.
        given: String,
        /// The number, if it is a percentage.
        percent: f64,
        /// The number, if it is a fraction.
        fraction: f64,
    },
    /// A range that is none.
    #[error(
        "“{given}” is not a range of engine speed: type the lower one, a dash and the higher one, \
         such as 2000-6500"
    )]
    NotARange {
        /// What was typed.
        given: String,
    },
}

/// A word that follows numbers but is no unit, and what to say to it.
pub(super) struct Refusal {
    pub(super) words: &'static [&'static str],
    pub(super) advice: &'static str,
}

/// What a field asks for: the units that it knows, which of them a person means
/// without naming it, and the range that makes sense.
///
/// ```
/// use fillwright::quantity::notation::{Style, Units, hardware::TORQUE};
/// let torque = TORQUE.parse("450 Nm", Units::US)?;
/// assert_eq!(TORQUE.print(torque, Units::US, Style::default()), "332\u{202f}lb·ft");
/// # Ok::<(), fillwright::quantity::notation::hardware::FigureTextError>(())
/// ```
pub struct QuantityField<Q: 'static> {
    /// The choice that decides the unit of a bare number, where there is one.
    pub(super) choosable: Option<Choosable>,
    /// The unit where nothing is chosen and none of the others is at home.
    pub(super) main: Unit<Q>,
    pub(super) others: &'static [Unit<Q>],
    pub(super) refused: &'static [Refusal],
    /// The least that is taken, in SI units.
    pub(super) low: f64,
    /// The most that is taken, in SI units.
    pub(super) high: f64,
}

impl<Q> std::fmt::Debug for QuantityField<Q> {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let symbols: Vec<_> = self.units().map(|unit| unit.symbol()).collect();
        formatter.debug_tuple("QuantityField").field(&symbols).finish()
    }
}

impl<Q> QuantityField<Q> {
    /// Every unit, in the order in which to offer them.
    pub fn units(&self) -> impl Iterator<Item = Unit<Q>> {
        std::iter::once(self.main).chain(self.others.iter().copied())
    }

    /// The unit of a bare number.
    pub fn own(&self, units: Units) -> Unit<Q> {
        let found = match self.choosable.map(|it| units.choice(it).symbol) {
            Some(symbol) => self.units().find(|unit| unit.symbol() == symbol),
            None => self.units().find(|unit| unit.is_at_home(units.system())),
        };
        found.unwrap_or(self.main)
    }

    /// The unit that a word names. A gallon without a country is that of
    /// [`Units::gallon`].
    pub fn named(&self, word: &str, units: Units) -> Option<Unit<Q>> {
        self.spelt(&super::words::comparable(word), units)
    }

    fn spelt(&self, word: &str, units: Units) -> Option<Unit<Q>> {
        let gallons = match units.gallon() {
            VolumeUnit::ImperialGallon => UnitSystem::Imperial,
            VolumeUnit::Litre | VolumeUnit::UsGallon => UnitSystem::Us,
        };
        let own = self.own(units);
        // The first of the least: one's own, then at home where that gallon is, then
        // in order.
        self.units()
            .filter(|unit| unit.is_spelt(word))
            .min_by_key(|unit| (*unit != own, !unit.is_at_home(gallons)))
    }
}

impl<Q: InSi> QuantityField<Q> {
    /// The quantity that a text means, in the system's own unit unless it names
    /// another one.
    ///
    /// # Errors
    /// When the text has no meaning or two, names no unit of this quantity, or is
    /// out of range.
    pub fn parse(&self, text: &str, units: Units) -> Result<Q, FigureTextError> {
        self.parse_in(self.own(units), text, units)
    }

    /// The quantity that a text means, in `own` unless it names another unit; the
    /// system only tells which gallon is meant.
    ///
    /// # Errors
    /// As for [`QuantityField::parse`].
    pub fn parse_in(&self, own: Unit<Q>, text: &str, units: Units) -> Result<Q, FigureTextError> {
        let given = clean(text)?;
        let (number, word) = number_and_unit(given);
        if number.trim().is_empty() {
            return Err(NumberError::NotANumber { given: given.to_owned() }.into());
        }
        if let Some(refusal) = self.refused.iter().find(|it| it.words.contains(&word.as_str())) {
            let given = given.to_owned();
            return Err(FigureTextError::NotAUnit { given, advice: refusal.advice });
        }
        let named = if word.is_empty() { Some(own) } else { self.spelt(&word, units) };
        let unit = named.ok_or_else(|| FigureTextError::UnknownUnit {
            given: given.to_owned(),
            known: self.known(),
        })?;
        let (low, high) = self.range(unit);
        let value = parse_number(number, low..=high).map_err(|error| match error {
            NumberError::OutOfRange { .. } => FigureTextError::OutOfRange {
                given: given.to_owned(),
                low,
                high,
                unit: format!(" {}", unit.symbol()),
            },
            other => FigureTextError::Number(other),
        })?;
        Ok(unit.quantity(value))
    }

    /// A quantity in the system's own unit, with the decimals worth showing.
    pub fn print(&self, quantity: Q, units: Units, style: Style) -> String {
        let unit = self.own(units);
        unit.print(quantity, unit.decimals(), style)
    }

    /// What a text that was typed in one system says in another, as a number to be
    /// edited: finer by one decimal than what is shown, and with one reading only.
    /// `None` when it cannot be read, or means the same in both.
    pub fn reprint(
        &self,
        text: &str,
        typed_in: Units,
        units: Units,
        style: Style,
    ) -> Option<String> {
        let meant = self.parse(text, typed_in).ok()?;
        if self.parse(text, units).is_ok_and(|today| today.si().to_bits() == meant.si().to_bits()) {
            return None;
        }
        let unit = self.own(units);
        Some(print_anew(unit.value_of(meant), unit.decimals() + 1, style))
    }

    /// The least and the most that is taken in a unit. They are rounded outwards to
    /// three digits, so that the message about them can be typed.
    pub fn range(&self, unit: Unit<Q>) -> (f64, f64) {
        let [low, high] = [self.low, self.high].map(|value| unit.value_of(Q::of_si(value)));
        (-outwards(-low), outwards(high))
    }

    /// The symbols of the units, as a list in words.
    fn known(&self) -> String {
        let mut symbols: Vec<_> = self.units().map(|unit| unit.symbol()).collect();
        let last = symbols.pop().unwrap_or_default();
        if symbols.is_empty() { last.into() } else { format!("{} or {last}", symbols.join(", ")) }
    }
}

/// The next number above with three digits.
fn outwards(value: f64) -> f64 {
    if value == 0.0 {
        return 0.0;
    }
    #[expect(clippy::cast_possible_truncation, reason = "exponents of doubles are small")]
    let exponent = value.abs().log10().floor() as i32 - 2;
    let scale = 10_f64.powi(exponent.abs());
    let digits = if exponent < 0 { value * scale } else { value / scale };
    // What arithmetic adds in the last digits does not count.
    let digits = (digits - 1e-9 * digits.abs()).ceil();
    if exponent < 0 { digits / scale } else { digits * scale }
}
