//! Texts under other units than those that they were typed in, for every kind of field
//! and every pair of units: what is shown means the same, and the way back leads to the
//! text as it was typed.

use fillwright::document::Document;
use fillwright::quantity::Consumption;
use fillwright::quantity::Volume;
use fillwright::quantity::notation::parse_lambda;
use fillwright::quantity::notation::quantities::{CONSUMPTION, DISTANCE};
use fillwright::quantity::notation::{
    Choosable, DecimalMark, Decimals, Entry, Measure, OctaneFigure, OctaneScale, Printer, Style,
    Units, VolumeField, parse_octane, parse_price, parse_volume, print_number, quantities,
};
use proptest::prelude::*;
use proptest::sample::select;
use uom::si::length::kilometer;
use uom::si::volume::liter;

use crate::notation::style;
use crate::people::units;

/// Every kind of field with what it is chosen by, a usual range in metric units, and
/// the decimals that a number shown anew has.
const KINDS: [(Measure, Option<Choosable>, f64, f64); 27] = [
    (Measure::Volume, Some(Choosable::Volume), 1.0, 90.0),
    (Measure::Level, Some(Choosable::Volume), 1.0, 90.0),
    (Measure::Price, Some(Choosable::Volume), 0.3, 30.0),
    (Measure::Consumption, Some(Choosable::Consumption), 3.0, 30.0),
    (Measure::Distance, Some(Choosable::Distance), 1.0, 900.0),
    (Measure::Pressure, Some(Choosable::Pressure), 0.5, 350.0),
    (Measure::AirPressure, Some(Choosable::AirPressure), 600.0, 1050.0),
    (Measure::Boost, Some(Choosable::Pressure), 0.1, 3.0),
    (Measure::Power, Some(Choosable::Power), 40.0, 900.0),
    (Measure::Torque, Some(Choosable::Torque), 60.0, 900.0),
    (Measure::EngineSpeed, None, 700.0, 9000.0),
    (Measure::InjectorFlow, Some(Choosable::InjectorFlow), 150.0, 2200.0),
    (Measure::PumpFlow, Some(Choosable::PumpFlow), 50.0, 600.0),
    (Measure::MassFlow, Some(Choosable::MassFlow), 1.0, 60.0),
    (Measure::AirFlow, Some(Choosable::AirFlow), 0.05, 1.0),
    (Measure::Density, None, 650.0, 900.0),
    (Measure::Length, None, 1.0, 100.0),
    (Measure::LineLength, None, 0.5, 8.0),
    (Measure::Time, None, 0.5, 20.0),
    (Measure::Voltage, None, 9.0, 16.0),
    (Measure::Temperature, Some(Choosable::Temperature), -20.0, 120.0),
    (Measure::Angle, None, 60.0, 700.0),
    (Measure::SpecificConsumption, None, 200.0, 500.0),
    (Measure::BulkModulus, None, 700.0, 1500.0),
    (Measure::EngineVolume, None, 0.8, 6.5),
    (Measure::Octane, Some(Choosable::Octane), 85.0, 110.0),
    (Measure::Mixture, Some(Choosable::Mixture), 0.7, 1.1),
];

/// What a text in a field means, as a number of one fixed unit.
fn meaning(measure: Measure, text: &str, units: Units) -> Option<f64> {
    let volumes = VolumeField {
        units,
        tank: None,
        consumption: None,
        largest: Volume::new::<liter>(500.0),
        part_is_usual: measure == Measure::Level,
    };
    macro_rules! si {
        ($field:ident) => {{
            let metric = quantities::$field.own(Units::METRIC);
            quantities::$field.parse(text, units).ok().map(|it| metric.value_of(it))
        }};
    }
    match measure {
        Measure::Volume | Measure::Level => {
            parse_volume(text, &volumes).ok().map(|it| it.get::<liter>())
        }
        Measure::Price => {
            let litre = Volume::new::<liter>(1.0);
            parse_price(text, units).ok().map(|it| it.value.of(litre).amount())
        }
        Measure::Consumption => {
            CONSUMPTION.parse(text, units).ok().map(Consumption::litres_per_100_km)
        }
        Measure::Distance => DISTANCE.parse(text, units).ok().map(|it| it.get::<kilometer>()),
        Measure::Pressure => si!(PRESSURE),
        Measure::AirPressure => si!(AIR_PRESSURE),
        Measure::Boost => si!(BOOST),
        Measure::Power => si!(POWER),
        Measure::Torque => si!(TORQUE),
        Measure::EngineSpeed => si!(ENGINE_SPEED),
        Measure::InjectorFlow => si!(INJECTOR_FLOW),
        Measure::PumpFlow => si!(PUMP_FLOW),
        Measure::MassFlow => si!(MASS_FLOW),
        Measure::AirFlow => si!(AIR_FLOW),
        Measure::Density => si!(DENSITY),
        Measure::Length => si!(LENGTH),
        Measure::LineLength => si!(LINE_LENGTH),
        Measure::Time => si!(TIME),
        Measure::Voltage => si!(VOLTAGE),
        Measure::Temperature => si!(TEMPERATURE),
        Measure::Angle => si!(ANGLE),
        Measure::SpecificConsumption => si!(SPECIFIC_CONSUMPTION),
        Measure::BulkModulus => si!(BULK_MODULUS),
        Measure::EngineVolume => si!(LITRES),
        // Numbers of different scales are kept apart by far more than any of them is.
        Measure::Octane => match (parse_octane(text).ok()?, units.octane()) {
            (OctaneFigure::Aki(aki), _) | (OctaneFigure::Unmarked(aki), OctaneScale::Aki) => {
                Some(aki + 1000.0)
            }
            (figure, _) => Some(figure.value()),
        },
        Measure::Mixture => parse_lambda(text, units).ok(),
    }
}

fn printer(units: Units, style: Style) -> Printer {
    let mut settings = Document::demo().settings;
    settings.units = units;
    settings.decimal = Some(style.decimal);
    settings.printer(DecimalMark::Point)
}

/// Somebody types the number of a quantity under some units, and it is shown under
/// others.
fn check(
    (measure, choosable, low, high): (Measure, Option<Choosable>, f64, f64),
    part: f64,
    [then, now]: [Units; 2],
    style: Style,
) -> Result<(), TestCaseError> {
    // A plausible number in metric units, as the unit of then has it.
    let number = print_number(low + (high - low) * part, 2, style);
    let metric = Entry { text: number, typed_in: Units::METRIC };
    let text = printer(then, style).shown(&metric, measure);
    let typed = Entry { text: text.clone(), typed_in: then };
    let meant = meaning(measure, &text, then);
    prop_assert!(meant.is_some(), "{text} is not read as {measure:?} under {then}");

    let shown = printer(now, style).shown(&typed, measure);
    let read = meaning(measure, &shown, now);
    let (Some(meant), Some(read)) = (meant, read) else {
        return Err(TestCaseError::fail(format!("{shown} is not read as {measure:?} under {now}")));
    };
    // What is shown has four digits at least; near zero a temperature has a decimal.
    let step = if measure == Measure::Temperature { 0.051 } else { 0.0 };
    let near = (read - meant).abs() <= (0.000_501 * meant.abs()).max(step);
    prop_assert!(near, "{measure:?}: {text} under {then} became {shown} under {now}");

    // Nothing is written while units change, so that the way back is no conversion.
    prop_assert_eq!(printer(then, style).shown(&typed, measure), text.clone());
    if choosable.is_none_or(|it| then.choice(it) == now.choice(it)) && then.system() == now.system()
    {
        prop_assert_eq!(shown, text);
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn a_text_means_the_same_under_any_units(
        kind in select(KINDS.to_vec()),
        part in 0.0..=1.0_f64,
        then in units(),
        now in units(),
        style in style(),
    ) {
        check(kind, part, [then, now], style)?;
    }

    // Printed with its unit, and exactly, it needs no units chosen to be understood but
    // for the gallon.
    #[test]
    fn what_is_printed_exactly_reads_back(
        kind in select(KINDS.to_vec()),
        part in 0.0..=1.0_f64,
        units in units(),
        style in style(),
    ) {
        let (measure, _, low, high) = kind;
        let metric = Entry {
            text: print_number(low + (high - low) * part, Decimals::UpTo(1), style),
            typed_in: Units::METRIC,
        };
        let shown = printer(units, style).shown(&metric, measure);
        // A level below one has its unit anyway: without it, it could be a part.
        let with_unit = if measure == Measure::Level && shown.contains(char::is_alphabetic) {
            shown.clone()
        } else {
            format!("{shown} {}", printer(units, style).unit(measure))
        };
        let again = meaning(measure, &with_unit, units);
        if measure != Measure::Octane || units.octane() == OctaneScale::Ron {
            prop_assert_eq!(again, meaning(measure, &shown, units), "{}", with_unit);
        }
    }
}

/// Every unit of every quantity against every other, none left to chance.
#[test]
fn every_pair_of_units_of_every_quantity() {
    let mut pairs = 0;
    for kind in KINDS {
        let Some(choosable) = kind.1 else { continue };
        let choices: Vec<_> = choosable.choices().collect();
        for (then, now) in choices.iter().flat_map(|it| choices.iter().map(move |to| (it, to))) {
            let of = |word| Units::METRIC.with(choosable, word).unwrap();
            for part in [0.0, 0.137, 0.5, 0.91, 1.0] {
                for decimal in [DecimalMark::Point, DecimalMark::Comma] {
                    let units = [of(then.word), of(now.word)];
                    check(kind, part, units, Style { decimal }).unwrap();
                }
            }
            pairs += 1;
        }
    }
    assert_eq!(pairs, 149);
}
