//! The fields for dimensions, density, temperature, time and voltage, with their units.

use std::f64::consts::PI;

use super::field::QuantityField;
use super::unit::Unit;
use crate::quantity::notation::Choosable;
use crate::quantity::notation::UnitSystem::{Imperial, Us};
use crate::quantity::{
    Angle, ElectricPotential, Length, MassDensity, ThermodynamicTemperature, Time,
};

/// The ice point in kelvin, exact.
const ICE_POINT: f64 = 273.15;

/// Kelvin in a degree Fahrenheit.
const FAHRENHEIT: f64 = 5.0 / 9.0;

/// The density of a fuel or of a test fluid.
pub static DENSITY: QuantityField<MassDensity> = QuantityField {
    choosable: None,
    main: Unit::new("kg/m³", 1.0, 0, &["kg/m3"]),
    others: &[
        Unit::new("g/cm³", 1e3, 4, &["g/cm3", "g/cc", "g/ml"]),
        Unit::new("kg/L", 1e3, 4, &["kg/l"]),
    ],
    refused: &[],
    low: 500.0,
    high: 1500.0,
};

const MILLIMETRE: Unit<Length> = Unit::new("mm", 1e-3, 2, &["mm", "millimetre", "millimetres"]);

const INCH: Unit<Length> = Unit::new("in", 0.0254, 3, &["in", "inch", "inches", "\"", "″"]);

const CENTIMETRE: Unit<Length> = Unit::new("cm", 1e-2, 2, &["cm"]);

const METRE: Unit<Length> = Unit::new("m", 1.0, 2, &["m", "metre", "metres", "meter", "meters"]);

const MICROMETRE: Unit<Length> = Unit::new("µm", 1e-6, 1, &["µm", "um", "micron", "microns"]);

const FOOT: Unit<Length> = Unit::new("ft", 0.3048, 1, &["ft", "foot", "feet", "′"]);

/// A small length: a bore, a stroke, a gap. In millimetres everywhere, as the
/// makers' sheets are.
pub static LENGTH: QuantityField<Length> = QuantityField {
    choosable: None,
    main: MILLIMETRE,
    others: &[INCH, CENTIMETRE, METRE, MICROMETRE],
    refused: &[],
    low: 0.0,
    high: 0.999,
};

/// The length of a fuel line.
pub static LINE_LENGTH: QuantityField<Length> = QuantityField {
    choosable: None,
    main: METRE,
    others: &[FOOT.at_home(&[Us, Imperial]), INCH, CENTIMETRE, MILLIMETRE],
    refused: &[],
    low: 0.0,
    high: 99.9,
};

/// A time within an engine cycle: a pulse, a dead time.
pub static TIME: QuantityField<Time> = QuantityField {
    choosable: None,
    main: Unit::new("ms", 1e-3, 2, &["ms", "msec", "millisecond", "milliseconds"]),
    others: &[
        Unit::new("µs", 1e-6, 0, &["µs", "us", "usec", "microsecond", "microseconds"]),
        Unit::new("s", 1.0, 4, &["s", "sec", "second", "seconds"]),
    ],
    refused: &[],
    low: 0.0,
    high: 0.999,
};

/// A voltage of a car's supply.
pub static VOLTAGE: QuantityField<ElectricPotential> = QuantityField {
    choosable: None,
    main: Unit::new("V", 1.0, 1, &["v", "volt", "volts"]),
    others: &[],
    refused: &[],
    low: 0.0,
    high: 60.0,
};

/// A temperature of air or fuel.
pub static TEMPERATURE: QuantityField<ThermodynamicTemperature> = QuantityField {
    choosable: Some(Choosable::Temperature),
    main: Unit::new("°C", 1.0, 0, &["°c", "c", "° c", "deg c", "degc", "celsius", "℃"])
        .from(ICE_POINT),
    others: &[
        Unit::new("°F", FAHRENHEIT, 0, &["°f", "f", "° f", "deg f", "degf", "fahrenheit", "℉"])
            // 0 degrees Fahrenheit are 32 below the ice point.
            .from(ICE_POINT - 32.0 * FAHRENHEIT),
        Unit::new("K", 1.0, 1, &["k", "kelvin"]),
    ],
    refused: &[],
    low: ICE_POINT - 60.0,
    high: ICE_POINT + 300.0,
};

/// An angle of the crank.
pub static ANGLE: QuantityField<Angle> = QuantityField {
    choosable: None,
    main: Unit::new(
        "°",
        PI / 180.0,
        0,
        &["°", "deg", "degree", "degrees", "°ca", "° ca", "deg ca", "cad", "degca", "°crank"],
    ),
    others: &[],
    refused: &[],
    low: -4.0 * PI,
    high: 4.0 * PI,
};
