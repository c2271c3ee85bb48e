//! Texts as people type them at a pump, and what each has to mean. The outcome
//! `None` stands for a refusal.

use super::quantities::{CONSUMPTION, DISTANCE};
use super::{
    IMPERIAL_GALLON, KILOMETRE, LITRE, OctaneFigure, Units, VolumeField, parse_money, parse_octane,
    parse_price, parse_share, parse_share_band, parse_volume,
};
use crate::quantity::Consumption;
use crate::quantity::Share;

/// Whether a reading is what was expected.
fn agrees(read: Option<f64>, expected: Option<f64>) -> bool {
    match (read, expected) {
        (Some(read), Some(expected)) => (read - expected).abs() <= 1e-9 * expected.abs(),
        (read, expected) => read == expected,
    }
}

fn check(read: impl Fn(&str) -> Option<f64>, corpus: &[(&str, Option<f64>)]) {
    for (text, expected) in corpus {
        let value = read(text);
        assert!(agrees(value, *expected), "“{text}” was read as {value:?}, not {expected:?}");
    }
}

#[test]
fn levels_in_a_metric_car() {
    let litre = LITRE;
    let field = VolumeField {
        units: Units::with_volume(litre),
        tank: Some(litre.quantity(52.0)),
        consumption: Consumption::from_litres_per_100_km(8.0).ok(),
        largest: litre.quantity(60.0),
        part_is_usual: true,
    };
    check(
        |text| parse_volume(text, &field).ok().map(|volume| litre.value_of(volume)),
        &[
            ("13", Some(13.0)),
            ("13.", None),
            ("0.75", None),
            (",75", None),
            (".5", None),
            ("0.75 L", Some(0.75)),
            ("13 ", Some(13.0)),
            ("13,5 l", Some(13.5)),
            ("13.5 L", Some(13.5)),
            ("13.5L", Some(13.5)),
            ("13.5l.", Some(13.5)),
            ("13,5 Liter", Some(13.5)),
            ("13.5 litres", Some(13.5)),
            ("1 litre", Some(1.0)),
            ("12.345", Some(12.345)),
            ("12,345 l", Some(12.345)),
            ("0", Some(0.0)),
            ("0 l", Some(0.0)),
            ("60", Some(60.0)),
            ("60.1", None),
            ("-5", None),
            ("5 ltrs", None),
            ("5 kg", None),
            ("5 5", None),
            ("5l 5", None),
            ("~13", None),
            ("about 13", None),
            ("3.5 gal", Some(13.248_941_244)),
            ("3.5 US gal", Some(13.248_941_244)),
            ("3.5gal", Some(13.248_941_244)),
            ("3.5 U.S. gal.", Some(13.248_941_244)),
            ("3.5 gallons", Some(13.248_941_244)),
            ("3 imp gal", Some(13.638_27)),
            ("3 imp. gal.", Some(13.638_27)),
            ("3 UK gal", Some(13.638_27)),
            ("3 gal (UK)", Some(13.638_27)),
            ("3 Imperial gallons", Some(13.638_27)),
            ("1/4", Some(13.0)),
            ("3/8", Some(19.5)),
            ("1 / 2", Some(26.0)),
            ("1⁄2", Some(26.0)),
            ("1/2 tank", Some(26.0)),
            ("1/2 of the tank", Some(26.0)),
            ("½", Some(26.0)),
            ("¼ tank", Some(13.0)),
            ("¾", Some(39.0)),
            ("half", Some(26.0)),
            ("half tank", Some(26.0)),
            ("0.5 tank", Some(26.0)),
            ("2 tanks", None),
            ("25 %", Some(13.0)),
            ("25%", Some(13.0)),
            ("12,5 % of tank", Some(6.5)),
            ("101 %", None),
            ("full", Some(52.0)),
            ("Full", Some(52.0)),
            ("FULL TANK", Some(52.0)),
            ("empty", Some(0.0)),
            ("120 km", Some(9.6)),
            ("120km", Some(9.6)),
            ("80 mi", Some(10.299_801_6)),
            ("80 miles", Some(10.299_801_6)),
            ("751 km", None),
            ("1e1", None),
            ("nan", None),
            ("infinity", None),
            ("１３", None),
            ("١٣", None),
            ("", None),
            ("   ", None),
            ("l", None),
            ("?", None),
        ],
    );
}

#[test]
fn levels_in_an_imperial_car() {
    let gallon = IMPERIAL_GALLON;
    let field = VolumeField {
        units: Units::with_volume(gallon),
        tank: None,
        consumption: None,
        largest: LITRE.quantity(60.0),
        part_is_usual: true,
    };
    check(
        |text| parse_volume(text, &field).ok().map(|volume| gallon.value_of(volume)),
        &[
            ("3", Some(3.0)),
            ("3 gal", Some(3.0)),
            ("13.20", Some(60.0 / 4.546_09)),
            ("4.54609 l", Some(1.0)),
            ("full", None),
            ("100 mi", None),
        ],
    );
}

#[test]
fn shares_of_ethanol() {
    check(
        |text| parse_share(text).ok().map(Share::percent),
        &[
            ("E30", Some(30.0)),
            ("e30", Some(30.0)),
            ("E 30", Some(30.0)),
            ("E30 %", Some(30.0)),
            ("30", Some(30.0)),
            ("30 %", Some(30.0)),
            ("30%", Some(30.0)),
            ("30 vol%", Some(30.0)),
            ("30 percent", Some(30.0)),
            ("12,5 %", Some(12.5)),
            ("12.345", Some(12.345)),
            ("0", Some(0.0)),
            ("E0", Some(0.0)),
            ("E100", Some(100.0)),
            ("0,3", None),
            ("0.85", None),
            ("1", None),
            ("1 %", Some(1.0)),
            ("0.5 %", Some(0.5)),
            ("100.1", None),
            ("E850", None),
            ("-5", None),
            ("ethanol", None),
            ("30 L", None),
        ],
    );
    check(
        |text| parse_share_band(text).ok().map(|band| band.expected().percent()),
        &[
            ("70-85", Some(77.5)),
            ("70 - 85", Some(77.5)),
            ("70–85 %", Some(77.5)),
            ("E70-E85", Some(77.5)),
            ("51 to 83", Some(67.0)),
            ("82 (70-85)", Some(82.0)),
            ("82 ±5", Some(82.0)),
            ("82 +-5", Some(82.0)),
            ("82+/-5%", Some(82.0)),
            ("E85", Some(85.0)),
            ("85-70", Some(77.5)),
            ("5..10", Some(7.5)),
            ("5…10", Some(7.5)),
            ("98 ±5", Some(98.0)),
            ("±2", None),
            ("0.7-0.85", None),
            ("70-", None),
        ],
    );
}

#[test]
fn money_and_prices() {
    check(
        |text| parse_money(text).ok().map(|it| it.value.amount()),
        &[
            ("50", Some(50.0)),
            ("50 €", Some(50.0)),
            ("50€", Some(50.0)),
            ("$50", Some(50.0)),
            ("50.00 USD", Some(50.0)),
            ("1.234,50 €", Some(1234.5)),
            ("1,234.50", Some(1234.5)),
            ("1'234.50 CHF", Some(1234.5)),
            ("1 234,50 zł", Some(1234.5)),
            ("500 kr", Some(500.0)),
            ("1.234", None),
            ("50,-", None),
            ("-50", None),
            ("fifty", None),
        ],
    );
    let litre = LITRE;
    check(
        |text| {
            parse_price(text, Units::METRIC)
                .ok()
                .map(|price| price.value.of(litre.quantity(1.0)).amount())
        },
        &[
            ("1.679", Some(1.679)),
            ("1,679", Some(1.679)),
            ("1,679 €/l", Some(1.679)),
            ("1.67 €/L", Some(1.67)),
            ("€1.67/L", Some(1.67)),
            ("1.000", Some(1.0)),
            ("170 ¥/L", Some(170.0)),
            ("3.499/gal", Some(3.499 / 3.785_411_784)),
            ("$3.49 per gal", Some(3.49 / 3.785_411_784)),
            ("$3.49 / gallon", Some(3.49 / 3.785_411_784)),
            ("145.9p", None),
            ("167.9 ct/l", None),
            ("1679", None),
            ("free", None),
        ],
    );
}

#[test]
fn octane_distances_and_consumptions() {
    check(
        |text| parse_octane(text).ok().map(OctaneFigure::value),
        &[
            ("98", Some(98.0)),
            ("98 RON", Some(98.0)),
            ("98ron", Some(98.0)),
            ("93 AKI", Some(93.0)),
            ("95,5", Some(95.5)),
            ("95 E10", None),
            ("985", None),
            ("regular", None),
        ],
    );
    let km = KILOMETRE;
    check(
        |text| DISTANCE.parse(text, Units::METRIC).ok().map(|way| km.value_of(way)),
        &[
            ("450", Some(450.0)),
            ("450 km", Some(450.0)),
            ("123456", Some(123_456.0)),
            ("123 456 km", Some(123_456.0)),
            ("1.123.456 km", Some(1_123_456.0)),
            ("123.456", None),
            ("123.4", Some(123.4)),
            ("100 mi", Some(160.9344)),
            ("100 m", None),
        ],
    );
    check(
        |text| CONSUMPTION.parse(text, Units::METRIC).ok().map(Consumption::litres_per_100_km),
        &[
            ("7.5", Some(7.5)),
            ("7,5 l/100km", Some(7.5)),
            ("7.5 L/100 km", Some(7.5)),
            ("7.5 l / 100", Some(7.5)),
            ("31 mpg", Some(235.214_583_333_333_3 / 31.0)),
            ("31 MPG US", Some(235.214_583_333_333_3 / 31.0)),
            ("37 mpg imp", Some(282.480_936_331_822_2 / 37.0)),
            ("37 mpg (UK)", Some(282.480_936_331_822_2 / 37.0)),
            ("0", None),
            // The reciprocal, and a hundred kilometres.
            ("13 km/l", Some(100.0 / 13.0)),
            ("13 m/l", None),
        ],
    );
}
