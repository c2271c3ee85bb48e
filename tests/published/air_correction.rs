//! Humid air, and power brought to a standard day.

use super::support::{mistaken, near};
use fillwright::power::{AirCorrection, AmbientAir, is_in_usual_range, saturation_vapour_pressure};
use fillwright::quantity::{AbsolutePressure, Pressure, ThermodynamicTemperature};
use uom::si::pressure::kilopascal;
use uom::si::thermodynamic_temperature::{degree_celsius, kelvin};

fn celsius(value: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(value)
}

fn air(temperature: f64, pressure: f64, humidity: f64) -> AmbientAir {
    let pressure = AbsolutePressure::new(Pressure::new::<kilopascal>(pressure));
    AmbientAir::new(celsius(temperature), pressure, humidity).unwrap()
}

fn saturation(temperature: ThermodynamicTemperature) -> f64 {
    saturation_vapour_pressure(temperature).get::<kilopascal>()
}

/// 40 CFR 1065.645(a), worked example: 9.5 degrees Celsius, 1.186581 kPa (read in the
/// test of a program that implements the clause).
#[test]
fn the_regulations_own_example() {
    let published = 1.186_581;
    near(saturation(ThermodynamicTemperature::new::<kelvin>(282.65)), published, 6e-7);
    // The mistake to give degrees Celsius from 273 instead of 273.15.
    mistaken(saturation(ThermodynamicTemperature::new::<kelvin>(282.5)), published, 6e-7);
}

/// IAPWS-95 by CoolProp 8.0.0, in kPa. The regulation's form lies 0.1 % below it.
#[test]
fn vapour_pressure_of_water() {
    for (temperature, published) in
        [(20.0, 2.339_318_2), (25.0, 3.169_929_3), (30.0, 4.246_970_8), (35.0, 5.629_0)]
    {
        near(saturation(celsius(temperature)), published, 0.0012 * published);
        mistaken(saturation(celsius(temperature + 1.0)), published, 0.0012 * published);
    }
}

/// Air A, B and C with the dry pressure by IAPWS-95 (CoolProp 8.0.0) and the factors by
/// the formulas as quoted in secondary texts: SAE J1349 of June 1990, ISO 1585 (from
/// memory), DIN 70020, SAE J607.
const DAYS: [(f64, f64, f64, f64, [f64; 4]); 3] = [
    (30.0, 98.0, 0.5, 95.876_515, [1.048_621_6, 1.049_647_2, 1.051_165, 1.082_934_6]),
    (15.0, 101.3, 0.6, 100.276_52, [0.965_265_1, 0.964_781_2, 0.991_430_9, 1.009_475_4]),
    (20.0, 101.3, 0.0, 101.3, [0.963_492_8, 0.962_989_9, 1.0, 1.007_908_7]),
];

const STANDARDS: [AirCorrection; 4] = [
    AirCorrection::SaeJ1349,
    AirCorrection::Iso1585,
    AirCorrection::Din70020,
    AirCorrection::StandardJ607,
];

#[test]
fn three_days_by_four_standards() {
    for (temperature, pressure, humidity, dry, factors) in DAYS {
        let air = air(temperature, pressure, humidity);
        near(air.dry_pressure().get().get::<kilopascal>(), dry, 0.01);
        for (standard, factor) in STANDARDS.into_iter().zip(factors) {
            near(standard.factor(&air), factor, 2e-4);
        }
        near(AirCorrection::None.factor(&air), 1.0, 0.0);
    }
}

/// At the reference of SAE J1349 and ISO 1585, 25 degrees Celsius and 99 kPa dry, they
/// are one, DIN 70020 reads 3.2 % more and J607 4.0 % more (arithmetic; a page of the
/// trade has about 4 % for J607).
#[test]
fn standards_differ_on_the_same_day() {
    let air = air(25.0, 99.0, 0.0);
    for (standard, factor) in STANDARDS.into_iter().zip([1.0, 1.0, 1.031_926, 1.040_082_8]) {
        near(standard.factor(&air), factor, 1e-4);
    }
}

/// The classic mistakes, on the hot day.
#[test]
fn mistakes_of_the_trade() {
    let (temperature, pressure, _, dry, factors) = DAYS[0];
    let warmth = (temperature + 273.0) / 298.0;
    // The total pressure where the dry one is meant, and the dry one in DIN 70020.
    mistaken(1.18 * (99.0 / pressure) * f64::sqrt(warmth) - 0.18, factors[0], 2e-4);
    mistaken(101.3 / dry * f64::sqrt((temperature + 273.0) / 293.0), factors[2], 2e-4);
    // The correction for compression ignition, at both ends of its exponent.
    let density = (99.0 / dry) * warmth.powf(0.7);
    for exponent in [0.3, 1.2] {
        mistaken(density.powf(exponent), factors[1], 2e-4);
    }
    // 29.92 inches of mercury in SAE J1349 instead of 29.23.
    mistaken(1.18 * (101.325 / dry) * f64::sqrt(warmth) - 0.18, factors[0], 2e-4);
}

/// What the workings say is what is reckoned: exmex 0.21, a general-purpose evaluator.
#[test]
fn the_workings_say_what_is_reckoned() {
    let air = air(30.0, 98.0, 0.5);
    for standard in STANDARDS {
        let working = standard.working(&air).unwrap();
        near(exmex::eval_str::<f64>(&working.numbers).unwrap(), standard.factor(&air), 1e-6);
        assert!(!working.sources.is_empty());
    }
    assert!(AirCorrection::None.working(&air).is_none());
    assert!(AirCorrection::None.source().is_none());
}

/// UN Regulation No. 85: from memory.
#[test]
fn corrections_have_a_usual_range() {
    assert!(is_in_usual_range(0.93) && is_in_usual_range(1.07));
    assert!(
        !is_in_usual_range(0.929) && !is_in_usual_range(1.0829) && !is_in_usual_range(f64::NAN)
    );
}

#[test]
fn corrections_are_stored_by_name() {
    for correction in AirCorrection::ALL {
        assert_eq!(AirCorrection::of_id(correction.id()), Some(correction));
    }
    assert_eq!(AirCorrection::of_id("other"), None);
}
