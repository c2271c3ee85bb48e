//! Currencies, as far as texts tell them apart: by a sign or a short name.

use std::fmt;

use super::quantities::{DISTANCE, VOLUME};
use super::text::words;
use super::{LITRE, Units};
use crate::quantity::{Money, UnitPrice};

/// A currency: one sign, up to three letters, or both. Names of the same currency are
/// equal: `€` and `EUR`, `$`, `US$` and `USD`, `kr` and `kr.`.
///
/// ```
/// use fillwright::quantity::notation::Currency;
/// let own = Currency::named("DKK").unwrap();
/// assert_eq!(Currency::named("eur"), Currency::named("€"));
/// assert!(Currency::named("kr.").unwrap().stands_for(own));
/// assert!(!own.stands_for(Currency::named("kr").unwrap()));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Currency {
    /// The name, filled up with nothing.
    letters: [char; 4],
}

impl Currency {
    /// The currency that a word names; none when it can be no currency.
    pub fn named(text: &str) -> Option<Self> {
        let word = words(text);
        let word = word.strip_suffix('.').unwrap_or(&word);
        if word.is_empty() || !is_currency(word) {
            return None;
        }
        let name = match word {
            "eur" => "€".to_owned(),
            "usd" | "us$" => "$".to_owned(),
            "gbp" | "￡" => "£".to_owned(),
            "jpy" | "￥" => "¥".to_owned(),
            "pln" => "zł".to_owned(),
            "inr" => "₹".to_owned(),
            code if code.len() == 3 && code.is_ascii() => code.to_uppercase(),
            other => other.to_owned(),
        };
        let mut letters = ['\0'; 4];
        for (place, letter) in letters.iter_mut().zip(name.chars()) {
            *place = letter;
        }
        Some(Self { letters })
    }

    /// Whether the name can mean a currency: it is that one, or a name that people use
    /// for it in its own country, such as `kr` for the Danish one.
    pub fn stands_for(self, own: Self) -> bool {
        let (name, own_name) = (self.to_string(), own.to_string());
        let countries: &[&str] = match name.as_str() {
            "kr" => &["SEK", "NOK", "DKK", "ISK"],
            "$" => &["CAD", "AUD", "NZD", "SGD", "HKD", "MXN"],
            "¥" => &["CNY"],
            _ => &[],
        };
        self == own || countries.contains(&own_name.as_str())
    }

    /// A name for it in which no sign stands.
    pub fn id(self) -> String {
        let part = |letter: char| {
            if letter.is_ascii_alphanumeric() {
                letter.to_string()
            } else {
                format!("u{:x}", u32::from(letter))
            }
        };
        self.letters.into_iter().filter(|letter| *letter != '\0').map(part).collect()
    }
}

impl fmt::Display for Currency {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.letters
            .iter()
            .filter(|letter| **letter != '\0')
            .try_for_each(|letter| write!(formatter, "{letter}"))
    }
}

/// A value, and the currency that was written beside it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InCurrency<T> {
    /// The value, counted in that currency.
    pub value: T,
    /// The currency; none where the number stood alone.
    pub currency: Option<Currency>,
}

/// What one unit of a currency is worth in the person's own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rate {
    /// The currency.
    pub currency: Currency,
    /// How many units of the own currency one of it is; above zero.
    pub factor: f64,
}

impl Rate {
    /// A price of this currency in the own one.
    pub fn to_own(self, price: UnitPrice) -> UnitPrice {
        times(price, self.factor)
    }

    /// A price of the own currency in this one.
    pub fn from_own(self, price: UnitPrice) -> UnitPrice {
        times(price, 1.0 / self.factor)
    }
}

fn times(price: UnitPrice, factor: f64) -> UnitPrice {
    let litre = LITRE.quantity(1.0);
    // Prices and rates below 1000 stay far from where money ends.
    let amount = Money::new(price.of(litre).amount() * factor).unwrap_or_default();
    UnitPrice::new(amount, litre)
}

/// Whether a word can be a currency: a sign, up to three letters, or both as in
/// `US$`. Units and the E of a fuel's name are none.
fn is_currency(word: &str) -> bool {
    let signs = word.chars().filter(|c| is_symbol(*c)).count();
    let letters = word.chars().filter(|c| c.is_alphabetic()).count();
    let other = VOLUME.named(word, Units::METRIC).is_some()
        || DISTANCE.named(word, Units::METRIC).is_some()
        || matches!(word, "e" | "per" | "mpg" | "ron" | "aki");
    signs + letters == word.chars().count() && signs <= 1 && letters <= 3 && !other
}

/// Whether a character is the sign of a currency, or of its hundredths.
pub(super) fn is_symbol(c: char) -> bool {
    matches!(c, '$' | '¢' | '£' | '¥' | '₠'..='\u{20cf}' | '৳' | '฿' | '៛' | '﷼' | '￡' | '￥')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_one_currency_are_equal() {
        for (one, other) in
            [("€", "eur"), ("$", "USD"), ("US$", "usd"), ("£", "GBP"), ("kr.", "KR"), ("zł", "PLN")]
        {
            assert!(Currency::named(one).is_some(), "{one}");
            assert_eq!(Currency::named(one), Currency::named(other), "{one}");
        }
        for (one, other) in [("€", "$"), ("DKK", "SEK"), ("DKK", "€"), ("CHF", "kr")] {
            assert_ne!(Currency::named(one), Currency::named(other), "{one}");
        }
        for text in ["", "crowns", "5", "l", "km", "$$", "e"] {
            assert_eq!(Currency::named(text), None, "{text}");
        }
    }

    #[test]
    fn short_name_is_the_own_currency_and_never_the_other_way() {
        let named = |text| Currency::named(text).unwrap();
        assert!(named("kr").stands_for(named("SEK")));
        assert!(named("$").stands_for(named("CAD")));
        // Whose counts in kr may be anywhere in the north.
        assert!(!named("DKK").stands_for(named("kr")));
        assert!(!named("kr").stands_for(named("€")));
        assert_eq!(named("€").id(), "u20ac");
        assert_eq!(named("dkk").id(), "DKK");
    }
}
