//! Why what was typed makes no fuel, no fill, no route and no reading.

use crate::fill::FillError;
use crate::fuel::{AkiError, OxygenError, neat_aki};
use crate::message::keys::problems as keys;
use crate::quantity::notation::{Printer, print_number_short};
use crate::tank::{SENSOR_FAULT_HZ, SensorError, TubeTestError};
use crate::trip::RouteError;

pub(super) fn oxygen_error(error: &OxygenError, printer: &Printer) -> String {
    match error {
        OxygenError::Less { given, least } => {
            keys::OxygenLess { given: printer.number(*given, 2), least: printer.number(*least, 2) }
                .say()
        }
        OxygenError::More { given, most } => {
            keys::OxygenMore { given: printer.number(*given, 2), most: printer.number(*most, 2) }
                .say()
        }
    }
}

pub(super) fn aki_error(error: &AkiError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    keys::Aki {
        share: printer.number(error.share.percent(), 0),
        given: short(error.given),
        neat: printer.number(neat_aki(), 1),
        most: printer.number(error.most, 1),
    }
    .say()
}

pub(super) fn sensor_error(error: &SensorError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    match error {
        SensorError::Fault { given } => keys::SensorFault {
            given: short(*given),
            low: short(SENSOR_FAULT_HZ.value.0),
            high: short(SENSOR_FAULT_HZ.value.1),
        }
        .say(),
        SensorError::Pulse { given } => keys::SensorPulse { given: short(*given) }.say(),
    }
}

pub(super) fn tube_test_error(error: &TubeTestError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    match error {
        TubeTestError::NoFuel => keys::TUBE_TEST_NO_FUEL.say().to_owned(),
        TubeTestError::Fell { water, boundary } => {
            keys::TubeTestFell { water: short(*water), boundary: short(*boundary) }.say()
        }
        TubeTestError::TooHigh { all, boundary } => {
            keys::TubeTestTooHigh { all: short(*all), boundary: short(*boundary) }.say()
        }
    }
}

pub(super) fn fill_error(error: &FillError, printer: &Printer) -> String {
    match error {
        FillError::NoCapacity => keys::FILL_NO_CAPACITY.say().to_owned(),
        FillError::Overfull { level_l, capacity_l } => keys::FillOverfull {
            level: printer.number(*level_l, 1),
            capacity: printer.number(*capacity_l, 1),
        }
        .say(),
        FillError::Overpoured { poured_l, free_l } => keys::FillOverpoured {
            poured: printer.number(*poured_l, 1),
            free: printer.number(*free_l, 1),
        }
        .say(),
        FillError::NoOffer => keys::FILL_NO_OFFER.say().to_owned(),
        FillError::AboveLevel { level_l, wanted_l } => keys::FillAboveLevel {
            level: printer.number(*level_l, 1),
            wanted: printer.number(*wanted_l, 1),
        }
        .say(),
        FillError::LevelAboveBrim { wanted_l, capacity_l } => keys::FillLevelAboveBrim {
            wanted: printer.number(*wanted_l, 1),
            capacity: printer.number(*capacity_l, 1),
        }
        .say(),
        FillError::WindowReversed { low, high } => keys::FillWindowReversed {
            low: printer.number(low.percent(), 0),
            high: printer.number(high.percent(), 0),
        }
        .say(),
        FillError::PriceMissing { index } => {
            keys::FillPriceMissing { index: (index + 1).to_string() }.say()
        }
        FillError::OctaneMissing { index } => {
            keys::FillOctaneMissing { index: (index + 1).to_string() }.say()
        }
        FillError::TankOctaneMissing => keys::FILL_TANK_OCTANE_MISSING.say().to_owned(),
        FillError::AmountMissing { index } => {
            keys::FillAmountMissing { index: (index + 1).to_string() }.say()
        }
    }
}

pub(super) fn route_error(error: &RouteError, printer: &Printer) -> String {
    let short = |value: f64| print_number_short(value, 4, printer.style);
    match error {
        RouteError::NoCapacity => keys::ROUTE_NO_CAPACITY.say().to_owned(),
        RouteError::Overfull { level_l, capacity_l } => keys::RouteOverfull {
            level: printer.number(*level_l, 1),
            capacity: printer.number(*capacity_l, 1),
        }
        .say(),
        RouteError::ReserveAboveBrim { level_l, capacity_l } => keys::RouteReserveAboveBrim {
            level: printer.number(*level_l, 1),
            capacity: printer.number(*capacity_l, 1),
        }
        .say(),
        RouteError::Blend => keys::ROUTE_BLEND.say().to_owned(),
        RouteError::NoLeg => keys::ROUTE_NO_LEG.say().to_owned(),
        RouteError::StopsAndLegs { stops, legs } => {
            keys::RouteStopsAndLegs { stops: stops.to_string(), legs: legs.to_string() }.say()
        }
        RouteError::Distance { leg } => keys::RouteDistance { leg: (leg + 1).to_string() }.say(),
        RouteError::Factor { leg, given } => {
            keys::RouteFactor { leg: (leg + 1).to_string(), given: short(*given) }.say()
        }
        RouteError::UnknownCalibration { leg } => {
            keys::RouteUnknownCalibration { leg: (leg + 1).to_string() }.say()
        }
        RouteError::FluidNeeded { leg } => {
            keys::RouteFluidNeeded { leg: (leg + 1).to_string() }.say()
        }
        RouteError::WindowReversed { calibration } => {
            keys::RouteWindowReversed { calibration: (calibration + 1).to_string() }.say()
        }
        RouteError::Octane { given } => keys::RouteOctane { given: short(*given) }.say(),
        RouteError::TankOctaneMissing { leg } => {
            keys::RouteTankOctaneMissing { leg: (leg + 1).to_string() }.say()
        }
        RouteError::PumpOctaneMissing { stop, pump } => keys::RoutePumpOctaneMissing {
            pump: (pump + 1).to_string(),
            stop: (stop + 1).to_string(),
        }
        .say(),
        RouteError::Limit { stop, pump } => {
            keys::RouteLimit { pump: (pump + 1).to_string(), stop: (stop + 1).to_string() }.say()
        }
        RouteError::Price { stop, pump } => {
            keys::RoutePrice { pump: (pump + 1).to_string(), stop: (stop + 1).to_string() }.say()
        }
    }
}
