//! The names of what has a unit of its own.

use crate::quantity::notation::{Choosable, UnitName};

/// What a person chooses a unit for.
pub fn quantity(quantity: Choosable) -> &'static str {
    match quantity {
        Choosable::Volume => "Fuel",
        Choosable::Distance => "Distance",
        Choosable::Consumption => "Consumption",
        Choosable::Pressure => "Fuel pressure, boost",
        Choosable::AirPressure => "Air pressure",
        Choosable::Power => "Power",
        Choosable::Torque => "Torque",
        Choosable::Temperature => "Temperature",
        Choosable::InjectorFlow => "Injector flow",
        Choosable::PumpFlow => "Pump and engine flow",
        Choosable::MassFlow => "Fuel flow by mass",
        Choosable::AirFlow => "Air flow",
        Choosable::Octane => "Octane number",
        Choosable::Mixture => "Mixture",
    }
}

/// A unit in a list of choices: its symbol, and what tells it from one of the same
/// symbol.
pub fn choice(choice: UnitName) -> &'static str {
    match choice.word {
        "us_gallon" => "US gal",
        "miles_per_us_gallon" => "mpg (US)",
        "miles_per_imperial_gallon" => "mpg (imperial)",
        "us_gallons_per_hour" => "US gal/h",
        "aki" => "AKI, (R+M)/2",
        "afr_of_petrol" => "AFR, petrol scale (λ 1 is 14.7)",
        "afr_of_the_blend" => "AFR of the blend at hand",
        _ => choice.symbol,
    }
}
