//! Quantities as printed.

use super::{Decimals, OctaneFigure, Style, Unit, print_number};
use crate::quantity::style::joined;
use crate::quantity::{Band, Money, Share, UnitPrice, Volume};

/// So much of a number's last digits, or of one, is left to the arithmetic that made it.
const ARITHMETIC: f64 = 1e-9;

/// A number rounded to so many decimals by a rule, unless it is there already but for
/// the arithmetic that made it.
fn rounded(value: f64, decimals: usize, rule: fn(f64) -> f64) -> f64 {
    let scale = 10_f64.powi(i32::try_from(decimals).unwrap_or(i32::MAX));
    let nearest = (value * scale).round() / scale;
    if (nearest - value).abs() <= ARITHMETIC * value.abs().max(1.0) {
        nearest
    } else {
        rule(value * scale) / scale
    }
}

/// A number rounded down to so many decimals: for a low end, or what is at least there.
pub fn round_down(value: f64, decimals: usize) -> f64 {
    rounded(value, decimals, f64::floor)
}

/// A number rounded up to so many decimals: for a high end, or what is at most there.
pub fn round_up(value: f64, decimals: usize) -> f64 {
    rounded(value, decimals, f64::ceil)
}

/// A band as it is told with so many decimals: its ends rounded outwards, so that all
/// that is possible lies between the two that are read. The value that is expected is
/// left for the printing to round, which cannot lead out of the band.
///
/// ```
/// use fillwright::quantity::{Band, notation::outwards};
/// let told = outwards(Band::new(23.6, 28.2, 32.47)?, 0);
/// assert_eq!((told.low(), told.high()), (23.0, 33.0));
/// let whole = outwards(Band::exact(29.999_999_999_9), 0);
/// assert_eq!((whole.low(), whole.high()), (30.0, 30.0));
/// # Ok::<(), fillwright::quantity::BandError>(())
/// ```
pub fn outwards(band: Band<f64>, decimals: usize) -> Band<f64> {
    let (low, high) = (round_down(band.low(), decimals), round_up(band.high(), decimals));
    let expected = band.expected().max(low).min(high);
    Band::new(low, expected, high).unwrap_or(band)
}

/// A share in the form of a fuel's name.
///
/// ```
/// use fillwright::quantity::{Share, notation::{Style, print_share}};
/// assert_eq!(print_share(Share::from_percent(30.0)?, 0, Style::default()), "E30");
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
pub fn print_share(share: Share, decimals: impl Into<Decimals>, style: Style) -> String {
    format!("E{}", print_number(share.percent(), decimals, style))
}

/// A share as a percentage.
///
/// ```
/// use fillwright::quantity::{Share, notation::{Style, print_percent}};
/// assert_eq!(print_percent(Share::from_percent(30.0)?, 0, Style::default()), "30\u{202f}%");
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
pub fn print_percent(share: Share, decimals: impl Into<Decimals>, style: Style) -> String {
    joined(&print_number(share.percent(), decimals, style), "%")
}

/// A share with its band: the expected percentage and the range in brackets, or
/// one percentage where the share is exact.
///
/// ```
/// use fillwright::quantity::notation::{
///     Decimals, ShareTextError, Style, parse_share_band, print_share_band,
/// };
/// let band = parse_share_band("82 (70-85)")?;
/// let text = print_share_band(band, Decimals::UpTo(1), Style::default());
/// assert_eq!(text, "82\u{202f}(70–85)\u{202f}%");
/// # Ok::<(), ShareTextError>(())
/// ```
pub fn print_share_band(band: Band<Share>, decimals: impl Into<Decimals>, style: Style) -> String {
    let decimals = decimals.into();
    let print = |share: Share| print_number(share.percent(), decimals, style);
    let expected = print(band.expected());
    if band == Band::exact(band.expected()) {
        return joined(&expected, "%");
    }
    let range = format!("({}–{})", print(band.low()), print(band.high()));
    joined(&joined(&expected, &range), "%")
}

/// An amount of money, with the currency's label after it unless that is empty.
///
/// ```
/// use fillwright::quantity::{Money, notation::{DecimalMark, Style, print_money}};
/// let style = Style { decimal: DecimalMark::Comma };
/// assert_eq!(print_money(Money::new(12.5)?, "€", 2, style), "12,50\u{202f}€");
/// # Ok::<(), fillwright::quantity::MoneyError>(())
/// ```
pub fn print_money(
    money: Money,
    currency: &str,
    decimals: impl Into<Decimals>,
    style: Style,
) -> String {
    let number = print_number(money.amount(), decimals, style);
    if currency.is_empty() { number } else { joined(&number, currency) }
}

/// A price per `unit`, with the currency's label unless that is empty.
///
/// ```
/// use fillwright::quantity::notation::{LITRE, MoneyTextError, Style, Units, parse_price, print_price};
/// let price = parse_price("1,679", Units::METRIC)?;
/// let text = print_price(price.value, LITRE, "€", 3, Style::default());
/// assert_eq!(text, "1.679\u{202f}€/L");
/// # Ok::<(), MoneyTextError>(())
/// ```
pub fn print_price(
    price: UnitPrice,
    unit: Unit<Volume>,
    currency: &str,
    decimals: impl Into<Decimals>,
    style: Style,
) -> String {
    let money = price.of(unit.quantity(1.0));
    format!("{}/{}", print_money(money, currency, decimals, style), unit.symbol())
}

/// An octane number with its scale, if that is known.
///
/// ```
/// use fillwright::quantity::notation::{OctaneFigure, Style, print_octane};
/// assert_eq!(print_octane(OctaneFigure::Ron(98.0), 0, Style::default()), "98\u{202f}RON");
/// ```
pub fn print_octane(octane: OctaneFigure, decimals: impl Into<Decimals>, style: Style) -> String {
    let number = print_number(octane.value(), decimals, style);
    match octane {
        OctaneFigure::Ron(_) => joined(&number, "RON"),
        OctaneFigure::Aki(_) => joined(&number, "AKI"),
        OctaneFigure::Unmarked(_) => number,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::notation::DecimalMark;
    use crate::quantity::notation::{IMPERIAL_GALLON, LITRE};
    use crate::quantity::{MoneyError, ShareError};

    const COMMA: Style = Style { decimal: DecimalMark::Comma };

    #[test]
    fn price_without_a_currency_keeps_its_unit() -> Result<(), MoneyError> {
        let unit = IMPERIAL_GALLON;
        let price = UnitPrice::new(Money::new(6.5)?, unit.quantity(1.0));
        assert_eq!(print_price(price, unit, "", 2, COMMA), "6,50/imp gal");
        assert_eq!(print_money(Money::new(6.5)?, "", 2, COMMA), "6,50");
        Ok(())
    }

    #[test]
    fn exact_share_has_no_brackets() -> Result<(), ShareError> {
        let band = Band::exact(Share::from_percent(12.5)?);
        assert_eq!(print_share_band(band, Decimals::UpTo(1), COMMA), "12,5\u{202f}%");
        assert_eq!(print_share(band.expected(), 1, COMMA), "E12,5");
        Ok(())
    }

    #[test]
    fn loss_of_volume_has_a_typographic_minus() {
        let less = LITRE.quantity(-2.0);
        assert_eq!(LITRE.print(less, 1, COMMA), "\u{2212}2,0\u{202f}L");
    }

    #[test]
    fn octane_without_a_scale_is_a_bare_number() {
        assert_eq!(print_octane(OctaneFigure::Unmarked(95.5), Decimals::UpTo(1), COMMA), "95,5");
        assert_eq!(print_octane(OctaneFigure::Aki(93.0), 0, COMMA), "93\u{202f}AKI");
    }
}
