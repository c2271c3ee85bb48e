//! What a field with a unit asks for: the rows of its units, and what it takes.

use crate::message::Message;
use thiserror::Error;

use super::comparable::{comparable, number_and_unit};
use super::unit::{InSi, Unit};
use crate::quantity::notation::text::clean;
use crate::quantity::notation::{Choosable, NumberError, Style, Units, parse_number, print_anew};

/// Why a text is not the quantity that a field asks for.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum FigureTextError {
    /// The number in it cannot be read.
    Number(#[from] NumberError),
    /// Something else than a unit follows the number.
    UnknownUnit {
        /// What was typed.
        given: String,
        /// The units that are known.
        known: Vec<&'static str>,
    },
    /// Too small or too large for what is asked.
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
    NotAUnit {
        /// What was typed.
        given: String,
        /// What it says instead, and what to type.
        advice: Message,
    },
    /// A number that may be a fraction or a percentage.
    PerhapsFraction {
        /// What was typed.
        given: String,
        /// The number, if it is a percentage.
        percent: f64,
        /// The number, if it is a fraction.
        fraction: f64,
    },
}

/// A word that follows numbers but is no unit, and what to say to it.
pub(super) struct Refusal {
    pub(super) words: &'static [&'static str],
    pub(super) advice: Message,
}

/// The least and the most that a field takes.
#[derive(Clone, Copy)]
pub(super) enum Taken {
    /// In SI units, whatever the unit that is typed.
    InSi(f64, f64),
    /// In the unit that is typed: numbers that have one reading in each.
    InUnit(f64, f64),
}

/// What a field asks for: the units that it knows, which of them a person means
/// without naming it, and the range that makes sense.
///
/// ```
/// use fillwright::quantity::notation::{Style, Units, quantities::TORQUE};
/// let torque = TORQUE.parse("450 Nm", Units::US)?;
/// assert_eq!(TORQUE.print(torque, Units::US, Style::default()), "332\u{202f}lb·ft");
/// # Ok::<(), fillwright::quantity::notation::FigureTextError>(())
/// ```
pub struct QuantityField<Q: 'static> {
    /// The choice that decides the unit of a bare number, where there is one.
    pub(super) choosable: Option<Choosable>,
    /// The unit where nothing is chosen and none of the others is at home.
    pub(super) main: Unit<Q>,
    pub(super) others: &'static [Unit<Q>],
    pub(super) refused: &'static [Refusal],
    /// The least and the most that is taken.
    pub(super) taken: Taken,
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
        let offered = |unit: &Unit<Q>| self.choosable.is_none() || !unit.name().word.is_empty();
        let at_home = |unit: &Unit<Q>| unit.name().is_at_home(units.system());
        let mut offered = self.units().filter(offered);
        let found = match self.choosable.and_then(|it| units.place(it)) {
            Some(place) => offered.nth(place),
            None => offered.find(at_home),
        };
        found.unwrap_or(self.main)
    }

    /// The unit that a word names. A gallon without a country is the person's own.
    pub fn named(&self, word: &str, units: Units) -> Option<Unit<Q>> {
        self.spelt(&comparable(word), units)
    }

    fn spelt(&self, word: &str, units: Units) -> Option<Unit<Q>> {
        let gallons = units.gallons();
        let own = self.own(units);
        // The first of the least: one's own, then at home where that gallon is, then
        // in order.
        self.units()
            .filter(|unit| unit.is_spelt(word))
            .min_by_key(|unit| (*unit != own, !unit.name().is_at_home(gallons)))
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
    pub fn reprint(&self, text: &str, then: Units, now: Units, style: Style) -> Option<String> {
        let read = |units| self.parse(text, units).ok().map(|it| it.si().to_bits());
        let meant = anew(read(then), read(now))?;
        let unit = self.own(now);
        let value = unit.value_of(Q::of_si(f64::from_bits(meant)));
        Some(print_anew(value, unit.decimals() + 1, style))
    }

    /// The least and the most that is taken in a unit. They are rounded outwards to
    /// three digits, so that the message about them can be typed.
    pub fn range(&self, unit: Unit<Q>) -> (f64, f64) {
        let (low, high) = match self.taken {
            Taken::InUnit(low, high) => return (low, high),
            Taken::InSi(low, high) => (low, high),
        };
        let [low, high] = [low, high].map(|value| unit.value_of(Q::of_si(value)));
        (-outwards(-low), outwards(high))
    }

    /// The symbols of the units.
    fn known(&self) -> Vec<&'static str> {
        self.units().map(|unit| unit.symbol()).collect()
    }
}

/// What is typed into a field, whatever its quantity.
pub(super) trait AnyField: Sync {
    /// The symbol of the unit that a bare number has.
    fn symbol(&self, units: Units) -> &'static str;

    /// As for [`QuantityField::reprint`].
    fn reprint(&self, text: &str, then: Units, now: Units, style: Style) -> Option<String>;
}

impl<Q: InSi> AnyField for QuantityField<Q> {
    fn symbol(&self, units: Units) -> &'static str {
        self.own(units).symbol()
    }

    fn reprint(&self, text: &str, then: Units, now: Units, style: Style) -> Option<String> {
        self.reprint(text, then, now, style)
    }
}

/// What was meant, when it has to be printed anew: not where the text cannot be
/// read (a fraction of the tank, a slip), nor where it means the same in the
/// units of today.
pub(super) fn anew<T: PartialEq>(meant: Option<T>, as_read_today: Option<T>) -> Option<T> {
    match (meant, as_read_today) {
        (Some(meant), Some(today)) if meant == today => None,
        (meant, _) => meant,
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
