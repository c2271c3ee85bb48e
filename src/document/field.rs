//! The fields that a person can fill in, each by a name of its own.

use super::hardware_field::HardwareField;
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

/// A part of what is in a tank.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ContentsPart {
    /// How much.
    Level,
    /// The error of that.
    LevelError,
    /// Its ethanol share.
    Share,
    /// What that may be.
    ShareRange,
    /// What is in it beside petrol and ethanol.
    Extra(ExtraPart),
    /// Its octane number.
    Octane,
    /// Its motor octane number.
    Mon,
}

impl ContentsPart {
    fn id(self) -> &'static str {
        match self {
            Self::Level => "level",
            Self::LevelError => "level-error",
            Self::Share => "share",
            Self::ShareRange => "share-range",
            Self::Extra(part) => part.id(),
            Self::Octane => "octane",
            Self::Mon => "mon",
        }
    }
}

/// What there may be beside petrol and ethanol.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ExtraPart {
    /// Water.
    Water,
    /// Methanol.
    Methanol,
    /// Ethers.
    Ethers,
    /// Oxygen, which tells of ethers.
    Oxygen,
}

impl ExtraPart {
    fn id(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::Methanol => "methanol",
            Self::Ethers => "ethers",
            Self::Oxygen => "oxygen",
        }
    }
}

/// A part of a fuel on offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FuelPart {
    /// Its name.
    Name,
    /// The ethanol share expected.
    Share,
    /// What the share may be.
    ShareRange,
    /// What it holds beside petrol and ethanol.
    Extra(ExtraPart),
    /// The octane number.
    Octane,
    /// The motor octane number.
    Mon,
    /// The price.
    Price,
    /// How much there is.
    Limit,
    /// What was put in.
    Poured,
}

/// A part of a route.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TripPart {
    /// Where the contents of the tank come from.
    Start,
    /// The list of stops.
    Stops,
    /// The most that may be spent.
    Budget,
    /// How far inside the windows the blend has to stay.
    Margin,
    /// What has to be left at the end.
    FinalLevel,
}

/// A part of a stop, or of the way after it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TripStopPart {
    /// Where it is.
    Place,
    /// What it costs to stop there.
    Fee,
    /// How far it is to the next.
    Distance,
    /// How much more that takes.
    Factor,
    /// The calibrations to keep.
    Calibrations,
    /// The least octane number.
    RonMin,
}

/// A part of a power curve.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CurvePart {
    /// Its name.
    Name,
    /// Its table.
    Table,
    /// The column of engine speed.
    SpeedColumn,
    /// The column of torque or power.
    ValueColumn,
    /// The blend that was in the tank.
    Blend,
    /// The air in which it was measured.
    Air(HardwareField),
}

/// A part of an entry of the log.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum EntryPart {
    /// When it happened.
    Time,
    /// Where.
    Place,
    /// What the person noted.
    Note,
    /// What the sensor shows.
    Sensor,
    /// The width of its pulse.
    Pulse,
    /// The fuel in a tube.
    TubeFuel,
    /// The water in a tube.
    TubeWater,
    /// The boundary in a tube.
    Boundary,
    /// The step of a tube's marks.
    TubeStep,
    /// A distance.
    Distance,
    /// A consumption.
    Consumption,
    /// A volume drained.
    Drained,
    /// The list of fuels.
    Fuels,
}

/// A part of a calibration.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CalibrationPart {
    /// Its name.
    Name,
    /// The weakest blend.
    Low,
    /// The strongest blend.
    High,
    /// The blend it was written for.
    WrittenFor,
    /// The least octane number.
    RonMin,
}

impl FuelPart {
    fn id(self) -> &'static str {
        match self {
            Self::Name => "name",
            Self::Share => "share",
            Self::ShareRange => "share-range",
            Self::Extra(part) => part.id(),
            Self::Octane => "octane",
            Self::Mon => "mon",
            Self::Price => "price",
            Self::Limit => "limit",
            Self::Poured => "put-in",
        }
    }
}

impl EntryPart {
    fn id(self) -> &'static str {
        match self {
            Self::Time => "time",
            Self::Place => "place",
            Self::Note => "note",
            Self::Sensor => "sensor",
            Self::Pulse => "pulse",
            Self::TubeFuel => "tube-fuel",
            Self::TubeWater => "tube-water",
            Self::Boundary => "boundary",
            Self::TubeStep => "tube-step",
            Self::Distance => "distance",
            Self::Consumption => "consumption",
            Self::Drained => "drained",
            Self::Fuels => "fuels",
        }
    }
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
            Self::Calibration(id, part) => {
                let part = match part {
                    CalibrationPart::Name => "name",
                    CalibrationPart::Low => "low",
                    CalibrationPart::High => "high",
                    CalibrationPart::WrittenFor => "written-for",
                    CalibrationPart::RonMin => "ron-min",
                };
                format!("calibration-{id}-{part}")
            }
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
