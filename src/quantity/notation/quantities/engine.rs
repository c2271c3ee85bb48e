//! What an engine does: power, torque, speed, and the fuel that its work takes.

use crate::message::keys::typed;
use std::f64::consts::PI;

use crate::quantity::notation::Choosable;
use crate::quantity::notation::UnitSystem::{Imperial, Us};
use crate::quantity::notation::field::{QuantityField, Refusal, Taken};
use crate::quantity::notation::unit::Unit;
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
    main: Unit::new("kW", 1e3, 0, &["kw", "kilowatt", "kilowatts"]).chosen_as("kilowatt"),
    others: &[
        Unit::new("PS", 75.0 * GRAVITY, 0, &["ps", "cv", "metric hp", "hp (metric)", "hp metric"])
            .chosen_as("metric_horsepower"),
        Unit::new("hp", WATTS_PER_HORSEPOWER, 0, &["hp", "horsepower"])
            .chosen_as("horsepower")
            .at_home(&[Us, Imperial]),
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
        advice: typed::ADVICE_WHERE_MEASURED,
    }],
    taken: Taken::InSi(1e3, 3e6),
};

/// Torque at the crank.
pub static TORQUE: QuantityField<Torque> = QuantityField {
    choosable: Some(Choosable::Torque),
    main: Unit::new("N·m", 1.0, 0, &["n m", "nm", "newton metre", "newton metres"])
        .chosen_as("newton_metre"),
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
        )
        .chosen_as("pound_foot")
        .at_home(&[Us, Imperial]),
        Unit::new("kgf·m", GRAVITY, 1, &["kgf m", "kgfm", "kg m", "kgm"]),
    ],
    refused: &[],
    taken: Taken::InSi(1.0, 5e3),
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
    taken: Taken::InSi(100.0 * PI / 30.0, 25e3 * PI / 30.0),
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
    taken: Taken::InSi(100.0 / 3.6e9, 999.0 / 3.6e9),
};
