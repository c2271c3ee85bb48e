//! The fields that a person can fill in, each by a name of its own.

use super::car::CalibrationPart;
use super::contents::ContentsPart;
use super::event::EntryPart;
use super::fuel::FuelPart;
use super::hardware::CurvePart;
use super::hardware_field::HardwareField;
use super::trip::{TripPart, TripStopPart};
use crate::quantity::notation::Currency;

/// A field that a person can fill in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    /// The tank's size.
    Capacity,
    /// The reserve.
    Reserve,
    /// The consumption.
    Consumption,
    /// The blend on which the consumption was measured.
    Reference,
    /// The step of the pump.
    PumpStep,
    /// The currency's sign or name.
    Currency,
    /// What another currency is worth in the own one.
    Rate(Currency),
    /// The car's name.
    CarName,
    /// The fuel in lines and rail.
    Line,
    /// Where the fill starts from.
    Start,
    /// A part of what is in a tank.
    Contents(ContentsOf, ContentsPart),
    /// The list of fuels on offer.
    Offers,
    /// The share wanted.
    AimShare,
    /// The calibration to suit.
    AimCalibration,
    /// Where the fill is.
    Place,
    /// When to stop.
    Stop,
    /// The level to stop at.
    StopLevel,
    /// The volume to stop after.
    StopVolume,
    /// The money to stop after.
    StopMoney,
    /// A part of a fuel.
    Fuel(u32, FuelPart),
    /// A part of a calibration.
    Calibration(u32, CalibrationPart),
    /// A part of the entry that is being written.
    Entry(EntryPart),
    /// A part of a fuel in that entry.
    Poured(u32, FuelPart),
    /// The engine, and what is asked of it.
    Engine(HardwareField),
    /// A field of a part of the fuel system, or of a limit.
    Part(u32, HardwareField),
    /// The name of such a part.
    PartName(u32),
    /// A part of a power curve.
    Curve(u32, CurvePart),
    /// Injection fluid to be mixed.
    Mix(HardwareField),
    /// A part of the route.
    Trip(TripPart),
    /// A part of a stop on the route, or of the way after it.
    TripStop(u32, TripStopPart),
}

/// The tank of which something is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ContentsOf {
    /// The tank before the fill.
    Fill,
    /// The tank in the entry of the log that is being written.
    Entry,
    /// The tank at the start of the trip.
    Trip,
}

impl Field {
    /// A name for the field that holds for its label, hint and error alike.
    pub fn id(self) -> String {
        match self {
            Self::Capacity => "capacity".into(),
            Self::Reserve => "reserve".into(),
            Self::Consumption => "consumption".into(),
            Self::Reference => "reference".into(),
            Self::PumpStep => "pump-step".into(),
            Self::Currency => "currency".into(),
            Self::Rate(currency) => format!("rate-{}", currency.id()),
            Self::CarName => "car-name".into(),
            Self::Line => "line".into(),
            Self::Start => "start".into(),
            Self::Contents(ContentsOf::Fill, part) => match part {
                ContentsPart::Level | ContentsPart::LevelError => part.id().into(),
                _ => format!("tank-{}", part.id()),
            },
            Self::Contents(ContentsOf::Entry, part) => format!("entry-{}", part.id()),
            Self::Contents(ContentsOf::Trip, part) => format!("trip-tank-{}", part.id()),
            Self::Offers => "offers".into(),
            Self::AimShare => "aim-share".into(),
            Self::AimCalibration => "aim-calibration".into(),
            Self::Place => "place".into(),
            Self::Stop => "stop".into(),
            Self::StopLevel => "stop-level".into(),
            Self::StopVolume => "stop-volume".into(),
            Self::StopMoney => "stop-money".into(),
            Self::Fuel(id, part) => format!("fuel-{id}-{}", part.id()),
            Self::Poured(id, part) => format!("poured-{id}-{}", part.id()),
            Self::Entry(part) => format!("entry-{}", part.id()),
            Self::Engine(slot) => format!("engine-{slot:?}"),
            Self::Part(id, slot) => format!("part-{id}-{slot:?}"),
            Self::PartName(id) => format!("part-{id}"),
            Self::Curve(id, part) => format!("curve-{id}-{part:?}"),
            Self::Mix(slot) => format!("mix-{slot:?}"),
            Self::Trip(part) => format!("route-{part:?}"),
            Self::TripStop(id, part) => format!("halt-{id}-{part:?}"),
            Self::Calibration(id, part) => format!("calibration-{id}-{}", part.id()),
        }
    }

    /// Whether the field stands in the Car view.
    pub fn is_of_car(self) -> bool {
        matches!(
            self,
            Self::Capacity
                | Self::Reserve
                | Self::Consumption
                | Self::Reference
                | Self::PumpStep
                | Self::Currency
                | Self::Rate(_)
                | Self::CarName
                | Self::Line
                | Self::Calibration(..)
        )
    }
}
