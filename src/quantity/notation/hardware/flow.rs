//! The fields for flow, by volume and by mass, with their units.

use super::field::QuantityField;
use super::unit::Unit;
use crate::quantity::notation::UnitSystem::{Imperial, Us};
use crate::quantity::notation::{Choosable, LITRES_PER_IMPERIAL_GALLON, LITRES_PER_US_GALLON};
use crate::quantity::{KILOGRAMS_PER_POUND, MassRate, VolumeRate};

/// Cubic metres in a litre.
const LITRE: f64 = 1e-3;
const MINUTE: f64 = 60.0;
const HOUR: f64 = 3600.0;

const CC_PER_MINUTE: Unit<VolumeRate> = Unit::new(
    "cc/min",
    1e-6 / MINUTE,
    0,
    &["cc/min", "ml/min", "cm3/min", "ccm/min", "cc/minute", "ml/minute"],
);

const LITRES_PER_HOUR: Unit<VolumeRate> = Unit::new(
    "L/h",
    LITRE / HOUR,
    0,
    &["l/h", "lph", "l/hr", "l/hour", "litres/hour", "liters/hour", "litres/h", "liters/h"],
);

const LITRES_PER_MINUTE: Unit<VolumeRate> = Unit::new(
    "L/min",
    LITRE / MINUTE,
    2,
    &["l/min", "lpm", "l/minute", "litres/minute", "liters/minute", "litres/min", "liters/min"],
);

const US_GALLONS_PER_HOUR: Unit<VolumeRate> = Unit::new(
    "gal/h",
    LITRES_PER_US_GALLON * LITRE / HOUR,
    1,
    &["gal/h", "gph", "gal/hr", "gal/hour", "us gal/h", "us gal/hr", "us gph", "gallons/hour"],
)
.at_home(&[Us]);

const IMPERIAL_GALLONS_PER_HOUR: Unit<VolumeRate> = Unit::new(
    "imp gal/h",
    LITRES_PER_IMPERIAL_GALLON * LITRE / HOUR,
    1,
    &[
        "imp gal/h",
        "imp gal/hr",
        "imp gph",
        "uk gal/h",
        "uk gal/hr",
        "uk gph",
        "gal/h",
        "gph",
        "gal/hr",
        "gal/hour",
        "gallons/hour",
    ],
)
.at_home(&[Imperial]);

const US_GALLONS_PER_MINUTE: Unit<VolumeRate> = Unit::new(
    "gal/min",
    LITRES_PER_US_GALLON * LITRE / MINUTE,
    3,
    &["gal/min", "gpm", "us gal/min", "us gpm", "gallons/minute"],
)
.at_home(&[Us]);

const IMPERIAL_GALLONS_PER_MINUTE: Unit<VolumeRate> = Unit::new(
    "imp gal/min",
    LITRES_PER_IMPERIAL_GALLON * LITRE / MINUTE,
    3,
    &["imp gal/min", "imp gpm", "uk gal/min", "uk gpm", "gal/min", "gpm", "gallons/minute"],
)
.at_home(&[Imperial]);

/// An injector's flow by volume: in cc/min everywhere.
pub static INJECTOR_FLOW: QuantityField<VolumeRate> = QuantityField {
    choosable: Some(Choosable::InjectorFlow),
    main: CC_PER_MINUTE,
    others: &[
        LITRES_PER_HOUR,
        LITRES_PER_MINUTE,
        US_GALLONS_PER_HOUR,
        IMPERIAL_GALLONS_PER_HOUR,
        US_GALLONS_PER_MINUTE,
        IMPERIAL_GALLONS_PER_MINUTE,
    ],
    refused: &[],
    low: 20.0 * 1e-6 / MINUTE,
    high: 9990.0 * 1e-6 / MINUTE,
};

/// A pump's or an engine's flow by volume.
pub static PUMP_FLOW: QuantityField<VolumeRate> = QuantityField {
    choosable: Some(Choosable::PumpFlow),
    main: LITRES_PER_HOUR,
    others: &[
        US_GALLONS_PER_HOUR,
        IMPERIAL_GALLONS_PER_HOUR,
        LITRES_PER_MINUTE,
        US_GALLONS_PER_MINUTE,
        IMPERIAL_GALLONS_PER_MINUTE,
        CC_PER_MINUTE,
    ],
    refused: &[],
    low: 5.0 * LITRE / HOUR,
    high: 4990.0 * LITRE / HOUR,
};

const GRAMS_PER_SECOND: Unit<MassRate> = Unit::new("g/s", 1e-3, 2, &["g/s", "g/sec"]);

const KILOGRAMS_PER_SECOND: Unit<MassRate> = Unit::new("kg/s", 1.0, 3, &["kg/s", "kg/sec"]);

const KILOGRAMS_PER_HOUR: Unit<MassRate> =
    Unit::new("kg/h", 1.0 / HOUR, 1, &["kg/h", "kg/hr", "kg/hour"]);

const POUNDS_PER_HOUR: Unit<MassRate> = Unit::new(
    "lb/h",
    KILOGRAMS_PER_POUND / HOUR,
    1,
    &["lb/h", "lb/hr", "lbs/h", "lbs/hr", "pph", "lb/hour", "lbs/hour"],
);

const POUNDS_PER_MINUTE: Unit<MassRate> = Unit::new(
    "lb/min",
    KILOGRAMS_PER_POUND / MINUTE,
    1,
    &["lb/min", "lbs/min", "lb/minute", "lbs/minute"],
);

/// A fuel flow by mass, such as an injector's rating.
pub static MASS_FLOW: QuantityField<MassRate> = QuantityField {
    choosable: Some(Choosable::MassFlow),
    main: GRAMS_PER_SECOND,
    others: &[POUNDS_PER_HOUR, KILOGRAMS_PER_HOUR, KILOGRAMS_PER_SECOND, POUNDS_PER_MINUTE],
    refused: &[],
    low: 0.1e-3,
    high: 999e-3,
};

/// An engine's air flow by mass.
pub static AIR_FLOW: QuantityField<MassRate> = QuantityField {
    choosable: Some(Choosable::AirFlow),
    main: KILOGRAMS_PER_SECOND,
    others: &[POUNDS_PER_MINUTE, GRAMS_PER_SECOND, KILOGRAMS_PER_HOUR, POUNDS_PER_HOUR],
    refused: &[],
    low: 1e-3,
    high: 5.0,
};
