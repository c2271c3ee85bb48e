//! The names of what has a unit of its own.

use crate::message::keys::units as keys;
use crate::quantity::notation::{Choosable, UnitName};

/// What a person chooses a unit for.
pub fn quantity(quantity: Choosable) -> &'static str {
    match quantity {
        Choosable::Volume => keys::VOLUME,
        Choosable::Distance => keys::DISTANCE,
        Choosable::Consumption => keys::CONSUMPTION,
        Choosable::Pressure => keys::PRESSURE,
        Choosable::AirPressure => keys::AIR_PRESSURE,
        Choosable::Power => keys::POWER,
        Choosable::Torque => keys::TORQUE,
        Choosable::Temperature => keys::TEMPERATURE,
        Choosable::InjectorFlow => keys::INJECTOR_FLOW,
        Choosable::PumpFlow => keys::PUMP_FLOW,
        Choosable::MassFlow => keys::MASS_FLOW,
        Choosable::AirFlow => keys::AIR_FLOW,
        Choosable::Octane => keys::OCTANE,
        Choosable::Mixture => keys::MIXTURE,
    }
    .say()
}

/// A unit in a list of choices: its symbol, and what tells it from one of the same
/// symbol.
pub fn choice(choice: UnitName) -> &'static str {
    match choice.word {
        "us_gallon" => keys::US_GALLON,
        "miles_per_us_gallon" => keys::MILES_PER_US_GALLON,
        "miles_per_imperial_gallon" => keys::MILES_PER_IMPERIAL_GALLON,
        "us_gallons_per_hour" => keys::US_GALLONS_PER_HOUR,
        "aki" => keys::AKI,
        "afr_of_petrol" => keys::AFR_OF_PETROL,
        "afr_of_the_blend" => keys::AFR_OF_THE_BLEND,
        _ => return choice.symbol,
    }
    .say()
}
