//! The fields for pressure, above the air around and absolute, with their units.

use super::field::QuantityField;
use super::unit::Unit;
use crate::quantity::notation::Choosable;
use crate::quantity::{AbsolutePressure, GaugePressure, Pressure};

/// Pascals in a pound-force per square inch: 0.453 592 37 kg x 9.806 65 m/s2 over
/// (0.0254 m)2, all exact. NIST SP 811, appendix B.8, rounds it to 6.894 757 E+03
/// (from memory).
const PASCALS_PER_PSI: f64 = crate::quantity::KILOGRAMS_PER_POUND * 9.806_65 / (0.0254 * 0.0254);

/// Pascals in a conventional inch of mercury: NIST SP 811, appendix B.8, 3.386 389
/// E+03, as 25.4 mm of 13 595.1 kg/m3 under 9.806 65 m/s2 (from memory).
const PASCALS_PER_INCH_OF_MERCURY: f64 = 0.0254 * 13_595.1 * 9.806_65;

const PASCALS_PER_MILLIMETRE_OF_MERCURY: f64 = 0.001 * 13_595.1 * 9.806_65;

const fn bar<Q>() -> Unit<Q> {
    Unit::new("bar", 1e5, 2, &["bar", "bars"])
}

const fn kilopascal<Q>() -> Unit<Q> {
    Unit::new("kPa", 1e3, 1, &["kpa"])
}

const fn megapascal<Q>() -> Unit<Q> {
    Unit::new("MPa", 1e6, 2, &["mpa"])
}

const fn hectopascal<Q>() -> Unit<Q> {
    Unit::new("hPa", 1e2, 0, &["hpa"])
}

const fn millibar<Q>() -> Unit<Q> {
    Unit::new("mbar", 1e2, 0, &["mbar", "millibar", "mb"])
}

const fn psi<Q>() -> Unit<Q> {
    Unit::new("psi", PASCALS_PER_PSI, 1, &["psi", "lbf/in2", "lb/in2", "lbs/in2", "lb/sq in"])
}

const fn inch_of_mercury<Q>() -> Unit<Q> {
    let spellings = &["inhg", "in hg", "\"hg", "\" hg", "inch hg", "inches hg"];
    Unit::new("inHg", PASCALS_PER_INCH_OF_MERCURY, 2, spellings)
}

const fn millimetre_of_mercury<Q>() -> Unit<Q> {
    Unit::new("mmHg", PASCALS_PER_MILLIMETRE_OF_MERCURY, 0, &["mmhg", "mm hg", "torr"])
}

/// Pressures of fuel and the differences between them.
pub static PRESSURE: QuantityField<Pressure> = QuantityField {
    choosable: Some(Choosable::Pressure),
    main: bar(),
    others: &[
        psi(),
        kilopascal(),
        megapascal(),
        hectopascal(),
        millibar(),
        inch_of_mercury(),
        millimetre_of_mercury(),
    ],
    refused: &[],
    low: 0.0,
    high: 99.9e6,
};

/// Boost: a gauge's reading in the inlet, suction below zero.
pub static BOOST: QuantityField<GaugePressure> = QuantityField {
    choosable: Some(Choosable::Pressure),
    main: bar(),
    others: &[
        psi(),
        kilopascal(),
        megapascal(),
        hectopascal(),
        millibar(),
        inch_of_mercury(),
        millimetre_of_mercury(),
    ],
    refused: &[],
    low: -1e5,
    high: 9.99e5,
};

/// The pressure of the air around, above vacuum and not reduced to sea level. A
/// barometer reads in hectopascals, or in inches of mercury in the US.
pub static AIR_PRESSURE: QuantityField<AbsolutePressure> = QuantityField {
    choosable: Some(Choosable::AirPressure),
    main: hectopascal(),
    others: &[
        inch_of_mercury(),
        kilopascal(),
        millibar(),
        bar(),
        psi(),
        millimetre_of_mercury(),
        megapascal(),
    ],
    refused: &[],
    low: 50e3,
    high: 110e3,
};
