//! The tables of units against definitions, and texts as people type them.

use super::*;
use crate::quantity::notation::comparable::comparable;
use crate::quantity::notation::field::{FigureTextError, QuantityField};
use crate::quantity::notation::unit::{InSi, Unit};
use crate::quantity::notation::{
    Choosable, DecimalMark, NumberError, Style, Units, parse_factor, parse_fraction, parse_lambda,
};
use crate::words::problems::in_metric;

const SYSTEMS: [Units; 3] = [Units::METRIC, Units::US, Units::IMPERIAL];

/// Calls a function with each field.
macro_rules! for_each_field {
    ($check:ident) => {
        $check(&VOLUME);
        $check(&DISTANCE);
        $check(&CONSUMPTION);
        $check(&PRESSURE);
        $check(&AIR_PRESSURE);
        $check(&BOOST);
        $check(&POWER);
        $check(&TORQUE);
        $check(&ENGINE_SPEED);
        $check(&INJECTOR_FLOW);
        $check(&PUMP_FLOW);
        $check(&MASS_FLOW);
        $check(&AIR_FLOW);
        $check(&DENSITY);
        $check(&LENGTH);
        $check(&LINE_LENGTH);
        $check(&TIME);
        $check(&VOLTAGE);
        $check(&TEMPERATURE);
        $check(&ANGLE);
        $check(&SPECIFIC_CONSUMPTION);
        $check(&BULK_MODULUS);
        $check(&LITRES);
    };
}

/// Reads texts in a system, as numbers of a unit; `None` stands for a refusal.
fn check<Q: InSi>(
    field: &QuantityField<Q>,
    units: Units,
    symbol: &str,
    corpus: &[(&str, Option<f64>)],
) {
    let unit = field.units().find(|unit| unit.symbol() == symbol).unwrap();
    for (text, expected) in corpus {
        let read = field.parse(text, units).ok().map(|quantity| unit.value_of(quantity));
        let agrees = match (read, *expected) {
            (Some(read), Some(expected)) => {
                (read - expected).abs() <= 1e-6 * expected.abs().max(1e-3)
            }
            (read, expected) => read == expected,
        };
        assert!(agrees, "“{text}” was read as {read:?} {symbol}, not {expected:?}");
    }
}

#[test]
fn spellings_are_comparable_and_name_one_unit() {
    fn check<Q: InSi>(field: &QuantityField<Q>) {
        for unit in field.units() {
            for spelling in unit.spellings() {
                assert_eq!(comparable(spelling), *spelling);
                // Two units share a word only where each is at home elsewhere.
                for other in field.units().filter(|it| *it != unit && it.is_spelt(spelling)) {
                    let home =
                        |it: Unit<Q>| SYSTEMS.map(|units| it.name().is_at_home(units.system()));
                    let (here, there) = (home(unit), home(other));
                    assert!(here.contains(&true) && there.contains(&true), "{spelling}");
                    assert!(here.iter().zip(there).all(|(here, there)| !(*here && there)));
                }
            }
            assert!(unit.is_spelt(&comparable(unit.symbol())), "{}", unit.symbol());
        }
        for units in SYSTEMS {
            let own = field.own(units);
            assert_eq!(field.named(own.symbol(), units), Some(own));
        }
        // Each unit that can be chosen is one of the field's, by its symbol.
        for choice in field.choosable.iter().flat_map(|it| it.choices()) {
            let chosen = field.choosable.and_then(|it| Units::METRIC.with(it, choice.word));
            assert_eq!(chosen.map(|units| field.own(units).symbol()), Some(choice.symbol));
        }
    }
    for_each_field!(check);
}

// The messages name limits that can be typed.
#[test]
fn limits_are_short_and_can_be_typed() {
    fn check<Q: InSi>(field: &QuantityField<Q>) {
        for unit in field.units() {
            for limit in <[f64; 2]>::from(field.range(unit)) {
                let text = crate::quantity::notation::print_number(
                    limit,
                    crate::quantity::notation::Decimals::Exact,
                    Style::default(),
                );
                let digits = text.trim_matches(['0', '.', '\u{2212}']).replace('.', "");
                let digits = digits.trim_start_matches('0');
                assert!(digits.len() <= 3, "{limit} {}", unit.symbol());
                let text = format!("{text} {}", unit.symbol());
                let home = SYSTEMS
                    .into_iter()
                    .find(|it| unit.name().is_at_home(it.system()))
                    .unwrap_or(Units::METRIC);
                assert!(field.parse(&text, home).is_ok(), "{text}");
            }
        }
    }
    for_each_field!(check);
}

/// NIST SP 811, appendix B.8: from memory. Its seventh digit is rounded.
#[test]
fn factors_agree_with_sp_811() {
    fn is<Q: InSi>(field: &QuantityField<Q>, symbol: &str, si: f64) {
        let unit = field.units().find(|unit| unit.symbol() == symbol).unwrap();
        approx::assert_relative_eq!(unit.quantity(1.0).si(), si, max_relative = 5e-7);
    }
    is(&PRESSURE, "psi", 6.894_757e3);
    is(&PRESSURE, "inHg", 3.386_389e3);
    is(&PRESSURE, "mmHg", 1.333_224e2);
    is(&PRESSURE, "bar", 1e5);
    is(&POWER, "hp", 7.456_999e2);
    is(&POWER, "PS", 7.354_988e2);
    is(&TORQUE, "lb·ft", 1.355_818);
    is(&TORQUE, "kgf·m", 9.806_65);
    is(&ENGINE_SPEED, "rpm", 1.047_198e-1);
    is(&PUMP_FLOW, "gal/min", 6.309_020e-5);
    is(&MASS_FLOW, "lb/h", 1.259_979e-4);
    is(&AIR_FLOW, "lb/min", 7.559_873e-3);
    is(&LENGTH, "in", 2.54e-2);
    is(&LINE_LENGTH, "ft", 3.048e-1);
    is(&ANGLE, "°", 1.745_329e-2);
    // By definition 75 kgf m/s and 0.3048 m x 4.448 221 615 260 5 N.
    approx::assert_relative_eq!(POWER.units().nth(1).unwrap().quantity(1.0).si(), 735.498_75);
    approx::assert_relative_eq!(
        TORQUE.own(Units::US).quantity(1.0).si(),
        0.3048 * 4.448_221_615_260_5,
        max_relative = 1e-15
    );
}

#[test]
fn pressures_as_people_type_them() {
    check(
        &PRESSURE,
        Units::METRIC,
        "bar",
        &[
            ("3", Some(3.0)),
            ("3,5", Some(3.5)),
            ("3.5 bar", Some(3.5)),
            ("350 kPa", Some(3.5)),
            ("35 MPa", Some(350.0)),
            ("3500mbar", Some(35.0 / 10.0)),
            ("1013 hPa", Some(1.013)),
            // 43.5 psi x 0.068 947 572 9 bar.
            ("43.5 psi", Some(2.999_219_4)),
            ("43.5 PSI", Some(2.999_219_4)),
            ("43.5 lbf/in²", Some(2.999_219_4)),
            ("350.000 kPa", Some(3.5)),
            ("0", Some(0.0)),
            ("1000", None),
            ("-1", None),
            ("3 barg", None),
            ("3 bar abs", None),
            ("3 N", None),
            ("bar", None),
            ("", None),
        ],
    );
    check(&PRESSURE, Units::US, "psi", &[("43.5", Some(43.5)), ("3 bar", Some(43.511_321_3))]);
    check(
        &BOOST,
        Units::METRIC,
        "bar",
        &[("1,4", Some(1.4)), ("-0.6", Some(-0.6)), ("\u{2212}20 kPa", Some(-0.2)), ("-1.1", None)],
    );
    check(
        &AIR_PRESSURE,
        Units::METRIC,
        "hPa",
        // 29.92 inches x 33.863 886 hPa.
        &[
            ("1013", Some(1013.0)),
            ("98 kPa", Some(980.0)),
            ("29.92 inHg", Some(1_013.207_47)),
            ("1.013", Some(1013.0)),
            ("1.013 bar", Some(1013.0)),
            ("101.3", None),
            ("2000", None),
        ],
    );
}

#[test]
fn powers_name_no_place() {
    check(
        &POWER,
        Units::METRIC,
        "kW",
        &[
            ("300", Some(300.0)),
            ("600 hp", Some(447.419_922_949)),
            ("600 PS", Some(441.299_25)),
            ("600 metric hp", Some(441.299_25)),
            ("550 whp", None),
            ("550 bhp", None),
            ("550 hp at the wheels", None),
            ("0", None),
            ("1.500", None),
        ],
    );
    let words = in_metric(POWER.parse("550 whp", Units::US).unwrap_err());
    assert!(words.starts_with("“550 whp” names where the power was measured"), "{words}");
    assert!(words.contains("switch"), "{words}");
    let words = in_metric(POWER.parse("550 W", Units::US).unwrap_err());
    assert!(words.ends_with("type kW, PS or hp after the number"), "{words}");
    let words = in_metric(POWER.parse("5000 kW", Units::US).unwrap_err());
    assert_eq!(words, "“5000 kW” is out of range: type from 1 to 3000 kW");
}

#[test]
fn torques_in_every_spelling() {
    for text in ["450", "450 Nm", "450 N m", "450 N·m", "450 N-m", "450 N.m", "450NM"] {
        check(&TORQUE, Units::METRIC, "N·m", &[(text, Some(450.0))]);
    }
    for text in [
        "332",
        "332 lb ft",
        "332 lbft",
        "332 lb-ft",
        "332 ft-lb",
        "332 ft lb",
        "332 lb·ft",
        "332 ft·lbf",
        "332 lbs-ft",
    ] {
        check(&TORQUE, Units::US, "lb·ft", &[(text, Some(332.0))]);
        check(&TORQUE, Units::IMPERIAL, "lb·ft", &[(text, Some(332.0))]);
    }
    check(
        &TORQUE,
        Units::METRIC,
        "N·m",
        &[("40 kgf m", Some(392.266)), ("450 Nmm", None), ("450 J", None)],
    );
}

#[test]
fn engine_speeds_in_every_spelling() {
    let texts = [
        "6500",
        "6.500",
        "6,500 rpm",
        "6500 1/min",
        "6500/min",
        "6500 r/min",
        "6500 min-1",
        "6500 min⁻¹",
        "6 500 RPM",
    ];
    for text in texts {
        check(&ENGINE_SPEED, Units::METRIC, "rpm", &[(text, Some(6500.0))]);
    }
    check(&ENGINE_SPEED, Units::METRIC, "rpm", &[("65", None), ("6500 Hz", None), ("6,5", None)]);
}

#[test]
fn gallons_are_the_persons_own() {
    // A US gallon is 3.785 411 784 L, an imperial one 4.546 09 L.
    check(
        &PUMP_FLOW,
        Units::METRIC,
        "L/h",
        &[
            ("340", Some(340.0)),
            ("340 lph", Some(340.0)),
            ("5 L/min", Some(300.0)),
            ("90 gal/h", Some(340.687_061)),
            ("90 imp gal/h", Some(409.148_1)),
            ("1 gpm", Some(227.124_707)),
            ("6000 cc/min", Some(360.0)),
            ("340 l", None),
        ],
    );
    check(
        &PUMP_FLOW,
        Units::US,
        "L/h",
        &[("90", Some(340.687_061)), ("90 gph", Some(340.687_061))],
    );
    check(
        &PUMP_FLOW,
        Units::IMPERIAL,
        "L/h",
        &[
            ("90", Some(409.148_1)),
            ("90 gph", Some(409.148_1)),
            ("1 gpm", Some(272.765_4)),
            ("90 us gal/h", Some(340.687_061)),
        ],
    );
    for units in SYSTEMS {
        let cases = [
            ("1000", Some(1000.0)),
            ("1.000", Some(1000.0)),
            ("1000 mL/min", Some(1000.0)),
            ("1000 cm³/min", Some(1000.0)),
            ("1000 cc per min", Some(1000.0)),
            ("60 L/h", Some(1000.0)),
            ("5", None),
            ("1000 cc", None),
        ];
        check(&INJECTOR_FLOW, units, "cc/min", &cases);
    }
    check(&INJECTOR_FLOW, Units::IMPERIAL, "cc/min", &[("10 gal/h", Some(757.681_667))]);
}

#[test]
fn masses_densities_and_the_like() {
    check(
        &MASS_FLOW,
        Units::METRIC,
        "g/s",
        // 0.453 592 37 kg / 3600 s.
        &[
            ("16,4", Some(16.4)),
            ("45 kg/h", Some(12.5)),
            ("100 lb/h", Some(12.599_788)),
            ("16 g", None),
        ],
    );
    check(
        &MASS_FLOW,
        Units::US,
        "g/s",
        &[("100", Some(12.599_788)), ("100 lbs/hr", Some(12.599_788))],
    );
    check(
        &AIR_FLOW,
        Units::METRIC,
        "kg/s",
        &[("0.303", Some(0.303)), ("40 lb/min", Some(0.302_394_9))],
    );
    check(&AIR_FLOW, Units::US, "kg/s", &[("40", Some(0.302_394_9)), ("300 g/s", Some(0.3))]);
    check(
        &DENSITY,
        Units::US,
        "kg/m³",
        &[
            ("745", Some(745.0)),
            ("0.745 g/cc", Some(745.0)),
            ("0,745 kg/L", Some(745.0)),
            ("745 kg/m3", Some(745.0)),
            ("0.745 g/cm³", Some(745.0)),
            ("0.745", None),
        ],
    );
    check(
        &LENGTH,
        Units::US,
        "mm",
        &[
            ("10", Some(10.0)),
            ("0.5 in", Some(12.7)),
            ("1 cm", Some(10.0)),
            ("4 µm", Some(0.004)),
            ("4 \u{3bc}m", Some(0.004)),
            ("0,01 m", Some(10.0)),
            ("10 ft", None),
        ],
    );
    check(&LINE_LENGTH, Units::METRIC, "m", &[("4", Some(4.0)), ("13 ft", Some(3.9624))]);
    check(&LINE_LENGTH, Units::US, "m", &[("13", Some(3.9624)), ("400 cm", Some(4.0))]);
    check(
        &TIME,
        Units::US,
        "ms",
        &[("0,95", Some(0.95)), ("950 µs", Some(0.95)), ("950us", Some(0.95))],
    );
    check(&VOLTAGE, Units::US, "V", &[("13.5", Some(13.5)), ("13,5 V", Some(13.5)), ("230", None)]);
    check(
        &ANGLE,
        Units::US,
        "°",
        &[
            ("240", Some(240.0)),
            ("240°", Some(240.0)),
            ("240 deg", Some(240.0)),
            ("240 °CA", Some(240.0)),
            ("-30", Some(-30.0)),
            ("800", None),
        ],
    );
    check(
        &SPECIFIC_CONSUMPTION,
        Units::METRIC,
        "g/kWh",
        // 453.592 37 g / 0.745 699 872 kW.
        &[
            ("365", Some(365.0)),
            ("365 g/(kW·h)", Some(365.0)),
            ("0.6 lb/hph", Some(364.966_433)),
            ("0.6 lb/hp h", Some(364.966_433)),
            ("0.6 lb/(hp·h)", Some(364.966_433)),
            ("0.6", None),
        ],
    );
    check(&SPECIFIC_CONSUMPTION, Units::US, "g/kWh", &[("0,6", Some(364.966_433)), ("60", None)]);
}

// 0 degrees Celsius are 32 Fahrenheit and 273.15 K; 100 are 212: by definition.
#[test]
fn temperatures_have_their_own_zeros() {
    check(
        &TEMPERATURE,
        Units::METRIC,
        "°C",
        &[
            ("25", Some(25.0)),
            ("-10", Some(-10.0)),
            ("77 °F", Some(25.0)),
            ("298.15 K", Some(25.0)),
            ("25 ° C", Some(25.0)),
            ("25 C", Some(25.0)),
            ("212F", Some(100.0)),
            ("500", None),
        ],
    );
    check(
        &TEMPERATURE,
        Units::US,
        "°C",
        &[("77", Some(25.0)), ("-40", Some(-40.0)), ("25 °C", Some(25.0))],
    );
    check(&TEMPERATURE, Units::IMPERIAL, "°C", &[("25", Some(25.0))]);
}

#[test]
fn lambda_is_no_air_fuel_ratio() {
    for (text, lambda) in [
        ("0.8", 0.8),
        ("0,80", 0.8),
        ("λ 0.8", 0.8),
        ("0.8 λ", 0.8),
        ("lambda = 0.8", 0.8),
        ("1", 1.0),
    ] {
        assert_eq!(parse_lambda(text, Units::METRIC), Ok(lambda), "{text}");
    }
    for text in ["11.7", "AFR 11.7", "11.7 AFR", "11,7 afr", "11.7:1", "0.8 AFR"] {
        let words = in_metric(parse_lambda(text, Units::METRIC).unwrap_err());
        assert!(words.contains("air-fuel ratio") && words.contains("type lambda"), "{words}");
    }
    let words = in_metric(parse_lambda("0.3", Units::METRIC).unwrap_err());
    assert_eq!(words, "“0.3” is out of range: type from 0.5 to 2");
    for text in ["", "lambda", "80 %", "-0.8", "nan"] {
        assert!(parse_lambda(text, Units::METRIC).is_err(), "{text}");
    }
}

#[test]
fn percentages_and_fractions_are_told_apart() {
    let loss = |text| parse_fraction(text, 0.0..=0.4);
    for (text, fraction) in [("12", 0.12), ("12 %", 0.12), ("12,5%", 0.125), ("0", 0.0)] {
        assert_eq!(loss(text), Ok(fraction), "{text}");
    }
    let words = in_metric(loss("0.12").unwrap_err());
    let asked = "“0.12” may mean 0.12 % or 12 %: which one? Type a percent sign after the number";
    assert_eq!(words, asked);
    // One reading alone is in range.
    assert_eq!(parse_fraction("0.85", 0.5..=1.0), Ok(0.85));
    let words = in_metric(loss("41 %").unwrap_err());
    assert_eq!(words, "“41 %” is out of range: type from 0 to 40 %");
    assert!(loss("12 bar").is_err() && loss("-1").is_err() && loss("%").is_err());
    assert_eq!(parse_factor("1,05", 0.5..=2.0), Ok(1.05));
    assert!(parse_factor("5", 0.5..=2.0).is_err());
}

#[test]
fn quantities_are_printed_in_the_systems_units() {
    let comma = Style { decimal: DecimalMark::Comma };
    let fuel = PRESSURE.parse("3", Units::METRIC).unwrap();
    assert_eq!(PRESSURE.print(fuel, Units::METRIC, comma), "3,00\u{202f}bar");
    assert_eq!(PRESSURE.print(fuel, Units::IMPERIAL, comma), "43,5\u{202f}psi");
    let angle = ANGLE.parse("-30", Units::US).unwrap();
    assert_eq!(ANGLE.print(angle, Units::US, comma), "\u{2212}30°");
    let air = TEMPERATURE.parse("25", Units::METRIC).unwrap();
    assert_eq!(TEMPERATURE.print(air, Units::US, comma), "77\u{202f}°F");
    assert_eq!(format!("{VOLTAGE:?}"), "QuantityField([\"V\"])");
}

#[test]
fn distances_name_their_unit_or_not() -> Result<(), FigureTextError> {
    for (text, units, kilometres) in [
        ("120", Units::METRIC, 120.0),
        ("120", Units::US, 193.121_28),
        ("120 km", Units::US, 120.0),
        ("80mi", Units::METRIC, 128.747_52),
        ("123 456 km", Units::METRIC, 123_456.0),
        ("1,234.5 miles", Units::METRIC, 1_986.735_168),
    ] {
        let way = KILOMETRE.value_of(DISTANCE.parse(text, units)?);
        assert!((way - kilometres).abs() <= 1e-12 * kilometres, "{text}: {way}");
    }
    Ok(())
}

#[test]
fn odometer_with_one_separator_is_a_question() {
    let asked = DISTANCE.parse("123.456", Units::METRIC);
    let question = matches!(asked, Err(FigureTextError::Number(NumberError::Ambiguous { .. })));
    assert!(question, "{asked:?}");
}

#[test]
fn consumptions_name_their_unit_or_not() -> Result<(), FigureTextError> {
    for (text, units, same) in [
        ("7.5", Units::METRIC, LITRES_PER_100_KM.quantity(7.5)),
        ("7,5 l/100km", Units::US, LITRES_PER_100_KM.quantity(7.5)),
        ("7.500 L / 100 km", Units::METRIC, LITRES_PER_100_KM.quantity(7.5)),
        // 100 km with 8 L, as every kilometre takes a 12.5th of one.
        ("12,5 km/l", Units::METRIC, LITRES_PER_100_KM.quantity(8.0)),
        ("31", Units::US, MILES_PER_US_GALLON.quantity(31.0)),
        ("31 mpg", Units::METRIC, MILES_PER_US_GALLON.quantity(31.0)),
        ("31 mpg", Units::IMPERIAL, MILES_PER_IMPERIAL_GALLON.quantity(31.0)),
        ("31 mpg US", Units::IMPERIAL, MILES_PER_US_GALLON.quantity(31.0)),
        ("37 mpg imp", Units::METRIC, MILES_PER_IMPERIAL_GALLON.quantity(37.0)),
    ] {
        assert_eq!(CONSUMPTION.parse(text, units)?, same, "{text}");
    }
    Ok(())
}

#[test]
fn other_units_are_refused() {
    for text in ["", "km", "5 l", "5 m", "5 km/h", "km 5", "-5 km", "1e7 km", "10000001"] {
        assert!(DISTANCE.parse(text, Units::METRIC).is_err(), "{text}");
    }
    for text in ["", "mpg", "0", "0 mpg", "-7", "7 l", "1000", "7 l/100 mi"] {
        assert!(CONSUMPTION.parse(text, Units::METRIC).is_err(), "{text}");
    }
}

#[test]
fn gallon_without_a_country_is_the_persons_own() {
    assert_eq!(VOLUME.named("gal", Units::METRIC), Some(US_GALLON));
    assert_eq!(VOLUME.named("gal", Units::IMPERIAL), Some(IMPERIAL_GALLON));
    assert_eq!(VOLUME.named("U.S. gal", Units::IMPERIAL), Some(US_GALLON));
    assert_eq!(VOLUME.named("gl", Units::METRIC), None);
    let british = Units::IMPERIAL.with(Choosable::Consumption, "litres_per_100_km").unwrap();
    assert_eq!(CONSUMPTION.named("mpg", british), Some(MILES_PER_IMPERIAL_GALLON));
}
