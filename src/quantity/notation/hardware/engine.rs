//! The fields for an engine's figures, with their units: power, torque, speed and specific consumption.

use std::f64::consts::PI;

use super::field::{QuantityField, Refusal};
use super::unit::Unit;
use crate::quantity::notation::Choosable;
use crate::quantity::notation::UnitSystem::{Imperial, Us};
use crate::quantity::{
    AngularVelocity, KILOGRAMS_PER_POUND, Power, SpecificConsumption, Torque, WATTS_PER_HORSEPOWER,
};

/// Standard gravity, exact (3rd CGPM, 1901).
const GRAVITY: f64 = 9.806_65;

/// Power, at the crank or at the wheels.
///
/// A metric horsepower is 75 kgf m/s, and the other 550 ft lbf/s: both exact.
pub static POWER: QuantityField<Power> = QuantityField {
    choosable: Some(Choosable::Power),
    main: Unit::new("kW", 1e3, 0, &["kw", "kilowatt", "kilowatts"]),
    others: &[
        Unit::new("hp", WATTS_PER_HORSEPOWER, 0, &["hp", "horsepower"]),
        Unit::new("PS", 75.0 * GRAVITY, 0, &["ps", "cv", "metric hp", "hp (metric)", "hp metric"]),
    ],
    refused: &[Refusal {
        words: &[
            "whp",
            "rwhp",
            "fwhp",
            "awhp",
            "bhp",
            "chp",
            "wkw",
            "bkw",
            "wps",
            "wheel hp",
            "crank hp",
            "brake hp",
            "hp at the wheels",
            "hp at the crank",
        ],
        advice: "names where the power was measured, which is no unit: type hp, kW or PS after the \
                 number, and say with the switch whether it is at the wheels or at the crank",
    }],
    low: 1e3,
    high: 3e6,
};

/// Torque at the crank.
pub static TORQUE: QuantityField<Torque> = QuantityField {
    choosable: Some(Choosable::Torque),
    main: Unit::new("N·m", 1.0, 0, &["n m", "nm", "newton metre", "newton metres"]),
    others: &[
        Unit::new(
            "lb·ft",
            0.3048 * KILOGRAMS_PER_POUND * GRAVITY,
            0,
            &[
                "lb ft",
                "lbft",
                "ft lb",
                "ftlb",
                "lbf ft",
                "lbfft",
                "ft lbf",
                "ftlbf",
                "lbs ft",
                "ft lbs",
                "foot pounds",
                "pound feet",
            ],
        ),
        Unit::new("kgf·m", GRAVITY, 1, &["kgf m", "kgfm", "kg m", "kgm"]),
    ],
    refused: &[],
    low: 1.0,
    high: 5e3,
};

/// The speed of the crankshaft.
pub static ENGINE_SPEED: QuantityField<AngularVelocity> = QuantityField {
    choosable: None,
    main: Unit::new(
        "rpm",
        PI / 30.0,
        0,
        &["rpm", "1/min", "/min", "r/min", "rev/min", "revs/min", "min 1", "min1", "revs"],
    ),
    others: &[],
    refused: &[],
    low: 100.0 * PI / 30.0,
    high: 25e3 * PI / 30.0,
};

/// Fuel mass for the work at the crank.
pub static SPECIFIC_CONSUMPTION: QuantityField<SpecificConsumption> = QuantityField {
    choosable: None,
    main: Unit::new("g/kWh", 1.0 / 3.6e9, 0, &["g/kwh", "g/kw h", "g/(kwh)", "g/(kw h)", "g/kw/h"]),
    others: &[Unit::new(
        "lb/hph",
        KILOGRAMS_PER_POUND / (WATTS_PER_HORSEPOWER * 3600.0),
        3,
        &[
            "lb/hph",
            "lb/hp h",
            "lb/(hp h)",
            "lb/(hph)",
            "lb/hp/h",
            "lb/hp hr",
            "lb/(hp hr)",
            "lb/hp/hr",
            "lb/hphr",
            "lbs/hph",
            "lbs/hp h",
            "lbs/hp hr",
            "lbs/hp/hr",
            "lbs/(hp hr)",
            "lbs/(hp h)",
        ],
    )
    .at_home(&[Us, Imperial])],
    refused: &[],
    low: 100.0 / 3.6e9,
    high: 999.0 / 3.6e9,
};
