//! Reading undoes printing, and no text does harm.

use std::error::Error;
use std::ops::RangeInclusive;

use fillwright::quantity::Consumption;
use fillwright::quantity::notation::quantities::{CONSUMPTION, DISTANCE, VOLUME};
use fillwright::quantity::notation::{
    Choosable, Currency, DecimalMark, Decimals, LITRE, MILE, NumberError, OctaneFigure, Printer,
    Style, Unit, Units, VolumeField, parse_money, parse_number, parse_octane, parse_price,
    parse_share, parse_share_band, parse_volume, print_money, print_number, print_octane,
    print_percent, print_price, print_share, print_share_band,
};
use fillwright::quantity::{Band, Money, Share, UnitPrice, Volume};
use fillwright::words::problems::problem;
use proptest::prelude::*;
use proptest::sample::select;

use crate::people::units;

/// How closely a quantity returns, relative to its size.
const CLOSE: f64 = 1e-9;

fn close(left: f64, right: f64) -> bool {
    (left - right).abs() <= CLOSE * right.abs()
}

/// Either decimal mark.
pub(crate) fn style() -> impl Strategy<Value = Style> {
    select(vec![DecimalMark::Point, DecimalMark::Comma]).prop_map(|decimal| Style { decimal })
}

fn volume_unit() -> impl Strategy<Value = Unit<Volume>> {
    select(VOLUME.units().collect::<Vec<_>>())
}

/// Units of which this one is that of volume.
fn units_of(volume: Unit<Volume>) -> Units {
    Units::METRIC.with(Choosable::Volume, volume.name().word).unwrap()
}

/// Numbers of every size in a range, round ones, and those with three decimals,
/// which are the ones that can be mistaken.
fn number(range: RangeInclusive<f64>) -> impl Strategy<Value = f64> {
    let (low, high) = (*range.start(), *range.end());
    prop_oneof![
        range.clone(),
        range.clone().prop_map(|value| (value * 1000.0).round() / 1000.0),
        range.clone().prop_map(f64::round),
        (-3.0..=9.0_f64).prop_map(|exponent| 10.0_f64.powf(exponent)),
        (0..10_000_u32).prop_map(|thousandths| f64::from(thousandths) / 1000.0),
    ]
    .prop_map(move |value| value.clamp(low, high))
}

fn share() -> impl Strategy<Value = Share> {
    number(0.0..=100.0).prop_filter_map("a share", |percent| Share::from_percent(percent).ok())
}

fn field() -> impl Strategy<Value = VolumeField> {
    let litres = 0.5..=500.0_f64;
    let tank = proptest::option::of(litres.clone());
    let consumption = proptest::option::of(0.5..=50.0_f64);
    (units(), tank, consumption, litres).prop_map(|(units, tank, consumption, largest)| {
        VolumeField {
            units,
            tank: tank.map(|litres| LITRE.quantity(litres)),
            consumption: consumption
                .and_then(|value| Consumption::from_litres_per_100_km(value).ok()),
            largest: LITRE.quantity(largest),
            part_is_usual: false,
        }
    })
}

/// Texts that are almost right: the pieces of real ones in any order.
fn near_miss() -> impl Strategy<Value = String> {
    let pieces = vec![
        "0", "1", "2", "5", "9", "12", "123", "234", "000", "999", ".", ",", ".", ",", "'", "’",
        " ", "\u{a0}", "\u{202f}", "\u{2009}", "\u{200b}", "\t", "\n", "-", "−", "–", "±", "+-",
        "+/-", "/", "⁄", "½", "¾", "%", "(", ")", "e", "E", "l", "L", "ℓ", "gal", "US gal", "imp",
        "km", "mi", "mpg", "l/100 km", "tank", "of the", "full", "empty", "half", "to", " to ",
        "per ", "€", "$", "¢", "CHF", "kr.", "RON", "AKI", "MON", "nan", "inf", "１", "٣", "İ",
        "ß",
    ];
    proptest::collection::vec(select(pieces), 0..12).prop_map(|pieces| pieces.concat())
}

/// Any text: arbitrary, long, or almost right.
fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![1 => ".*", 1 => "(?s).{0,80}", 1 => "[0-9.,' −-]{0,12}", 3 => near_miss()]
}

/// Reads a text with every reader, and checks whatever was accepted.
fn read_everywhere(text: &str, field: &VolumeField) -> Result<(), TestCaseError> {
    let finite = |value: f64, range: RangeInclusive<f64>| {
        prop_assert!(range.contains(&value), "{text:?} was read as {value}");
        Ok(())
    };
    for range in [-1e3..=1e3, 0.0..=1e12, 60.0..=130.0] {
        if let Ok(value) = parse_number(text, range.clone()) {
            finite(value, range)?;
        }
    }
    if let Ok(volume) = parse_volume(text, field) {
        let zero = LITRE.quantity(0.0);
        prop_assert!(zero <= volume && volume <= field.largest, "{text:?}: {volume:?}");
    }
    if let Ok(share) = parse_share(text) {
        finite(share.fraction(), 0.0..=1.0)?;
    }
    if let Ok(band) = parse_share_band(text) {
        finite(band.low().fraction(), 0.0..=1.0)?;
        finite(band.high().fraction(), 0.0..=1.0)?;
        prop_assert!(band.contains(band.expected()));
    }
    if let Ok(money) = parse_money(text) {
        finite(money.value.amount(), 0.0..=1e9)?;
    }
    for units in [Units::METRIC, Units::US, Units::IMPERIAL] {
        if let Ok(price) = parse_price(text, units) {
            // The price of the smallest unit, the litre, is the highest per volume.
            finite(price.value.of(LITRE.quantity(1.0)).amount(), 0.0..=1000.0)?;
        }
    }
    if let Ok(octane) = parse_octane(text) {
        finite(octane.value(), 60.0..=130.0)?;
    }
    for units in [Units::METRIC, Units::US] {
        if let Ok(way) = DISTANCE.parse(text, units) {
            finite(MILE.value_of(way), 0.0..=1.0001e7)?;
        }
    }
    if let Ok(car) = CONSUMPTION.parse(text, field.units) {
        finite(car.litres_per_100_km(), 0.1..=3000.0)?;
    }
    Ok(())
}

/// Who reads in litres, with a point before decimals.
fn in_metric() -> Printer {
    let style = Style { decimal: DecimalMark::Point };
    Printer { units: Units::METRIC, style, currency: String::new() }
}

/// An error of a reader as the failure of a test.
fn failed(error: impl Error) -> TestCaseError {
    TestCaseError::fail(error.to_string())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn no_text_does_harm(text in any_text(), field in field()) {
        read_everywhere(&text, &field)?;
    }

    #[test]
    fn every_refusal_says_something(text in any_text(), field in field()) {
        if let Err(error) = parse_volume(&text, &field) {
            let words = problem(&error.into(), &in_metric());
            prop_assert!(words.contains("type"), "{words}");
        }
        if let Err(error) = parse_share_band(&text) {
            let words = problem(&error.into(), &in_metric());
            prop_assert!(words.contains("ype"), "{words}");
        }
    }

    #[test]
    fn numbers_return(value in number(-1e9..=1e9), minus in any::<bool>(), style in style()) {
        let value = if minus { -value } else { value };
        let text = print_number(value, Decimals::Exact, style);
        let read = parse_number(&text, -2e9..=2e9).map_err(failed)?;
        prop_assert!(close(read, value), "{value} became {text} and {read}");
    }

    #[test]
    fn grouped_numbers_are_read_as_printed(
        groups in proptest::collection::vec(0..1000_u32, 1..4),
        first in 1..1000_u32,
        mark in select(vec![" ", "\u{a0}", "\u{202f}", "'", "’"]),
        decimals in "[0-9]{1,6}",
        point in select(vec![".", ","]),
    ) {
        let rest: Vec<String> = groups.iter().map(|group| format!("{group:03}")).collect();
        // Fifteen digits are read; a text with more is finer than any use.
        let before = format!("{first}{}", rest.concat()).len();
        let decimals = &decimals[..decimals.len().min(15 - before)];
        let value: f64 = format!("{first}{}.{decimals}", rest.concat()).parse().map_err(failed)?;
        let text = format!("{first}{mark}{}{point}{decimals}", rest.join(mark));
        prop_assert_eq!(parse_number(&text, 0.0..=1e15), Ok(value));
        // The other of point and comma groups too, as the last one is decimal.
        let mark = if point == "." { "," } else { "." };
        let text = format!("{first}{mark}{}{point}{decimals}", rest.join(mark));
        prop_assert_eq!(parse_number(&text, 0.0..=1e15), Ok(value));
    }

    #[test]
    fn ambiguity_is_asked_about_or_settled_by_the_range(
        whole in 1..1000_u32,
        thousandths in 0..1000_u32,
        point in select(vec![".", ","]),
        high in 1.0..=2e6_f64,
    ) {
        let text = format!("{whole}{point}{thousandths:03}");
        let decimal = f64::from(whole * 1000 + thousandths) / 1000.0;
        let grouped = f64::from(whole * 1000 + thousandths);
        match parse_number(&text, 0.0..=high) {
            Ok(value) => {
                prop_assert!(close(value, decimal) && decimal <= high && grouped > high);
            }
            Err(NumberError::Ambiguous { .. }) => prop_assert!(grouped <= high),
            Err(NumberError::OutOfRange { .. }) => prop_assert!(decimal > high),
            Err(error) => return Err(failed(error)),
        }
    }

    #[test]
    fn volumes_return(
        field in field(),
        part in prop_oneof![3 => 0.0..=1.0_f64, 1 => Just(1.0)],
        unit in volume_unit(),
        style in style(),
    ) {
        let volume: Volume = field.largest * part;
        let field = VolumeField { units: units_of(unit), ..field };
        let text = unit.print(volume, Decimals::Exact, style);
        let read = parse_volume(&text, &field).map_err(failed)?;
        prop_assert!(close(unit.value_of(read), unit.value_of(volume)), "{text}: {read:?}");
        // Two decimals are near enough for a limit to be typed again.
        if unit.value_of(field.largest) >= 1.0 {
            let text = unit.print(field.largest, 2, style);
            prop_assert!(parse_volume(&text, &field).is_ok(), "{text}");
        }
    }

    #[test]
    fn shares_return(share in share(), style in style()) {
        for text in [
            print_share(share, Decimals::Exact, style),
            print_percent(share, Decimals::Exact, style),
        ] {
            let read = parse_share(&text).map_err(failed)?;
            prop_assert!(close(read.fraction(), share.fraction()), "{text}: {read:?}");
        }
    }

    #[test]
    fn share_bands_return(
        mut shares in [share(), share(), share()],
        exact in any::<bool>(),
        style in style(),
    ) {
        shares.sort_by(|left, right| left.fraction().total_cmp(&right.fraction()));
        let [low, expected, high] = shares;
        let band = if exact {
            Band::exact(expected)
        } else {
            Band::new(low, expected, high).map_err(failed)?
        };
        let text = print_share_band(band, Decimals::Exact, style);
        let read = parse_share_band(&text).map_err(failed)?;
        prop_assert!(close(read.low().fraction(), band.low().fraction()), "{text}");
        prop_assert!(close(read.expected().fraction(), band.expected().fraction()), "{text}");
        prop_assert!(close(read.high().fraction(), band.high().fraction()), "{text}");
    }

    #[test]
    fn money_returns(
        amount in number(0.0..=1e9),
        currency in select(vec!["", "€", "$", "CHF", "kr", "US$"]),
        style in style(),
    ) {
        let money = Money::new(amount).map_err(failed)?;
        let text = print_money(money, currency, Decimals::Exact, style);
        let read = parse_money(&text).map_err(failed)?;
        prop_assert!(close(read.value.amount(), amount), "{text}: {read:?}");
        prop_assert_eq!(read.currency, Currency::named(currency));
    }

    #[test]
    fn prices_return(
        amount in number(0.0..=999.0),
        currency in select(vec!["", "€", "$", "CHF", "kr", "US$"]),
        units in units(),
        style in style(),
    ) {
        let unit = units.volume();
        let one = unit.quantity(1.0);
        let price = UnitPrice::new(Money::new(amount).map_err(failed)?, one);
        let text = print_price(price, unit, currency, Decimals::Exact, style);
        let read = parse_price(&text, units).map_err(failed)?;
        prop_assert!(close(read.value.of(one).amount(), amount), "{text}: {read:?}");
    }

    #[test]
    fn distances_return(
        value in number(0.0..=1e7),
        unit in select(DISTANCE.units().collect::<Vec<_>>()),
        style in style(),
    ) {
        let text = unit.print(unit.quantity(value), Decimals::Exact, style);
        let read = DISTANCE.parse(&text, Units::METRIC).map_err(failed)?;
        prop_assert!(close(unit.value_of(read), value), "{text}: {read:?}");
    }

    #[test]
    fn consumptions_return(
        value in number(0.11..=998.0),
        units in units(),
        style in style(),
    ) {
        let unit = units.consumption();
        let consumption = unit.quantity(value);
        let text = unit.print(consumption, Decimals::Exact, style);
        let read = CONSUMPTION.parse(&text, units).map_err(failed)?;
        prop_assert!(close(read.litres_per_100_km(), consumption.litres_per_100_km()), "{text}");
    }

    #[test]
    fn octane_numbers_return(
        value in number(60.0..=130.0),
        scale in select(vec![OctaneFigure::Ron, OctaneFigure::Aki, OctaneFigure::Unmarked]),
        style in style(),
    ) {
        let text = print_octane(scale(value), Decimals::Exact, style);
        let read = parse_octane(&text).map_err(failed)?;
        prop_assert!(close(read.value(), value), "{text}: {read:?}");
        prop_assert_eq!(std::mem::discriminant(&read), std::mem::discriminant(&scale(value)));
    }
}
