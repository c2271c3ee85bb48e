//! Amounts of money and prices as typed.

use thiserror::Error;

use super::currency::is_symbol;
use super::field::{AnyField, anew};
use super::quantities::VOLUME;
use super::text::{clean, split_number, words};
use super::{Currency, InCurrency, NumberError, Style, Units, parse_number, print_anew};
use crate::quantity::style::joined;
use crate::quantity::{Money, MoneyError, UnitPrice};

/// The largest amount that is taken.
const LARGEST_AMOUNT: f64 = 1e9;

/// The largest price that is taken, per unit of the price. It stays below 1000
/// so that no price has a second reading: 1.679 is never 1679.
const LARGEST_PRICE: f64 = 999.999;

/// Why a text is not an amount of money or a price.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum MoneyTextError {
    /// The number in it cannot be read.
    Number(#[from] NumberError),
    /// The number in it is no amount.
    Money(#[from] MoneyError),
    /// Something else than one currency stands beside the number.
    NotAnAmount {
        /// What was typed.
        given: String,
    },
    /// Cents or pence.
    Hundredths {
        /// What was typed.
        given: String,
    },
    /// The price is not per volume.
    UnknownUnit {
        /// What was typed.
        given: String,
    },
}

/// The amount of money that a text means, and its currency. One, as a sign or a word
/// of at most three letters, may stand before or after the number; whether it is the
/// person's own is for the caller to say.
///
/// ```
/// use fillwright::quantity::notation::{Currency, MoneyTextError, parse_money};
/// let euros = parse_money("12,50 €")?;
/// assert_eq!((euros.value.amount(), euros.currency), (12.5, Currency::named("EUR")));
/// assert_eq!(parse_money("12.50")?.currency, None);
/// assert!(parse_money("1250 ct").is_err());
/// # Ok::<(), MoneyTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning or two, is in cents or pence, or is not between
/// zero and a thousand million.
pub fn parse_money(text: &str) -> Result<InCurrency<Money>, MoneyTextError> {
    let given = clean(text)?;
    let parts = Parts::of(given);
    let currency = parts.currency(&parts.after, given)?;
    let value = Money::new(parse_number(parts.number, 0.0..=LARGEST_AMOUNT)?)?;
    Ok(InCurrency { value, currency })
}

/// The price of fuel that a text means, per the person's own unit of volume unless
/// it names another one.
/// The currency is read as by [`parse_money`].
///
/// ```
/// use fillwright::quantity::notation::{LITRE, MoneyTextError, Units, parse_price};
/// let price = parse_price("1,679 €/l", Units::US)?;
/// let cost = price.value * LITRE.quantity(10.0);
/// assert!((cost.amount() - 16.79).abs() < 1e-9);
/// # Ok::<(), MoneyTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning, is in cents or pence, is not per volume, or is
/// not between 0 and 999.999.
pub fn parse_price(text: &str, units: Units) -> Result<InCurrency<UnitPrice>, MoneyTextError> {
    let given = clean(text)?;
    let parts = Parts::of(given);
    let (currency, per) = match parts.after.split_once('/') {
        Some((currency, per)) => (currency, Some(per)),
        None => match parts.after.split_once("per ") {
            Some((currency, per)) if currency.is_empty() || currency.ends_with(' ') => {
                (currency.trim_end(), Some(per))
            }
            _ => (parts.after.as_str(), None),
        },
    };
    let currency = parts.currency(currency, given)?;
    let unknown = || MoneyTextError::UnknownUnit { given: given.to_owned() };
    let unit = match per {
        Some(word) => VOLUME.named(word, units).ok_or_else(unknown)?,
        None => units.volume(),
    };
    let amount = Money::new(parse_number(parts.number, 0.0..=LARGEST_PRICE)?)?;
    Ok(InCurrency { value: UnitPrice::new(amount, unit.quantity(1.0)), currency })
}

/// A number and the words on either side of it.
struct Parts<'a> {
    before: String,
    number: &'a str,
    after: String,
}

impl<'a> Parts<'a> {
    fn of(given: &'a str) -> Self {
        let end = given.find(|c: char| !(c.is_alphabetic() || is_symbol(c))).unwrap_or(given.len());
        let (before, rest) = given.split_at(end);
        // The stop of an abbreviation, unless it is the point of ".50".
        let spaced = |rest: &&str| rest.starts_with(char::is_whitespace);
        let stop = rest.strip_prefix('.').filter(spaced).filter(|_| !before.is_empty());
        let (number, after) = split_number(stop.unwrap_or(rest));
        Self { before: words(before), number, after: words(after) }
    }

    /// The currency beside the number, which is there: at most one.
    fn currency(&self, after: &str, given: &str) -> Result<Option<Currency>, MoneyTextError> {
        let given = || given.to_owned();
        let (("", currency) | (currency, "")) = (self.before.as_str(), after) else {
            return Err(MoneyTextError::NotAnAmount { given: given() });
        };
        if matches!(currency, "p" | "c" | "ct" | "cts" | "cent" | "cents" | "pence" | "¢") {
            return Err(MoneyTextError::Hundredths { given: given() });
        }
        let named = Currency::named(currency);
        if self.number.is_empty() || !(currency.is_empty() || named.is_some()) {
            return Err(MoneyTextError::NotAnAmount { given: given() });
        }
        Ok(named)
    }
}

/// A price to be shown in other units.
pub(super) struct PriceInField;

impl AnyField for PriceInField {
    /// None: the unit of a price has the currency in it.
    fn symbol(&self, _: Units) -> &'static str {
        ""
    }

    fn reprint(&self, text: &str, then: Units, now: Units, style: Style) -> Option<String> {
        let read = |units| parse_price(text, units).ok();
        let meant = anew(read(then), read(now))?;
        let amount = meant.value.of(now.volume().quantity(1.0)).amount();
        let number = print_anew(amount, 2, style);
        // The currency that was typed stays beside it.
        Some(match meant.currency {
            Some(currency) => joined(&number, &currency.to_string()),
            None => number,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::notation::{IMPERIAL_GALLON, LITRE, US_GALLON};
    use approx::assert_relative_eq;

    #[test]
    fn one_currency_may_stand_beside_the_number() -> Result<(), MoneyTextError> {
        for text in [
            "12.5",
            "12,50 €",
            "€12.50",
            "$ 12.50",
            "12.50 EUR",
            "CHF 12.50",
            "kr. 12,50",
            "12,50 kr.",
            "US$12.50",
            "12,50 zł",
            "R12.50",
            "12.50\u{202f}₹",
        ] {
            assert_relative_eq!(parse_money(text)?.value.amount(), 12.5);
        }
        assert_relative_eq!(parse_money("£.50")?.value.amount(), 0.5);
        Ok(())
    }

    #[test]
    fn currency_beside_the_number_is_told() -> Result<(), MoneyTextError> {
        for (text, name) in [
            ("12.5", None),
            ("12,50 €", Some("€")),
            ("12.50 EUR", Some("€")),
            ("US$12.50", Some("$")),
            ("12.50 usd", Some("$")),
            ("£.50", Some("£")),
            ("200 DKK", Some("DKK")),
            ("200 dkk", Some("DKK")),
            ("kr. 12,50", Some("kr")),
            ("12,50 kr.", Some("kr")),
            ("12,50 zł", Some("zł")),
        ] {
            let named = parse_money(text)?.currency.map(|it| it.to_string());
            assert_eq!(named.as_deref(), name, "{text}");
        }
        let price = parse_price("12,90 DKK/L", Units::METRIC)?;
        assert_eq!(price.currency, Currency::named("DKK"));
        Ok(())
    }

    #[test]
    fn what_is_no_amount_is_refused() {
        for text in [
            "",
            "€",
            "€ 5 €",
            "€5 EUR",
            "5 euros",
            "-5",
            "$-5",
            "5 $$",
            "5 l",
            "5 km",
            "E85",
            "1e5",
            "5 €/l",
            "nan",
            "inf",
            "USD",
            "5 5 €",
            "5%",
            "5 € x",
        ] {
            assert!(parse_money(text).is_err(), "{text}");
        }
        let asked = parse_money("1.234 €");
        let question = matches!(asked, Err(MoneyTextError::Number(NumberError::Ambiguous { .. })));
        assert!(question, "{asked:?}");
    }

    #[test]
    fn hundredths_are_not_taken_for_whole_ones() {
        for text in ["145.9p", "145.9 ct", "¢99", "99 cents", "145,9 p/l"] {
            let error = MoneyTextError::Hundredths { given: text.to_owned() };
            assert_eq!(parse_price(text, Units::METRIC), Err(error));
        }
    }

    #[test]
    fn price_is_per_the_unit_it_names() -> Result<(), MoneyTextError> {
        for (text, units, per) in [
            ("1.679", Units::METRIC, LITRE),
            ("1,679", Units::US, US_GALLON),
            ("1.679 €", Units::METRIC, LITRE),
            ("1,679 €/l", Units::US, LITRE),
            ("1.679/gal", Units::METRIC, US_GALLON),
            ("$1.679 per gal", Units::METRIC, US_GALLON),
            ("1.679 USD per US gallon", Units::METRIC, US_GALLON),
            ("£1.679 / imp gal", Units::METRIC, IMPERIAL_GALLON),
        ] {
            let price = parse_price(text, units)?;
            assert_relative_eq!(
                price.value.of(per.quantity(1.0)).amount(),
                1.679,
                max_relative = 1e-12
            );
        }
        Ok(())
    }

    #[test]
    fn round_prices_with_three_decimals_are_no_question() -> Result<(), MoneyTextError> {
        let price = parse_price("1.000", Units::METRIC)?;
        assert_relative_eq!(price.value.of(LITRE.quantity(1.0)).amount(), 1.0);
        Ok(())
    }

    #[test]
    fn what_is_no_price_is_refused() {
        for text in [
            "1.679 l",
            "1.679/",
            "1.679 per",
            "1.679/km",
            "1.679 €/l/l",
            "€1.679 €/l",
            "/l",
            "1000",
            "1.679super l",
            "1.679 per per l",
        ] {
            assert!(parse_price(text, Units::METRIC).is_err(), "{text}");
        }
    }
}
