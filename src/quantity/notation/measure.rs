//! What a typed text measures.

use super::field::AnyField;
use super::figure::MixtureInField;
use super::money::PriceInField;
use super::octane::OctaneInField;
use super::quantities;
use super::volume::VolumeInField;

/// What an entry measures, for printing it in other units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// A volume.
    Volume,
    /// A level in the tank: a volume that people tell as a part of the tank too.
    Level,
    /// A price per volume.
    Price,
    /// Fuel over distance.
    Consumption,
    /// A distance.
    Distance,
    /// A pressure of fuel, or a difference of two.
    Pressure,
    /// The pressure of the air around.
    AirPressure,
    /// Boost above the air around.
    Boost,
    /// A power.
    Power,
    /// A torque.
    Torque,
    /// Engine speed.
    EngineSpeed,
    /// An injector's flow by volume.
    InjectorFlow,
    /// A pump's flow by volume.
    PumpFlow,
    /// A fuel flow by mass.
    MassFlow,
    /// An air flow by mass.
    AirFlow,
    /// A density.
    Density,
    /// A small length.
    Length,
    /// The length of a line.
    LineLength,
    /// A time within an engine cycle.
    Time,
    /// A voltage.
    Voltage,
    /// A temperature.
    Temperature,
    /// An angle of the crank.
    Angle,
    /// Fuel mass for the work done.
    SpecificConsumption,
    /// A bulk modulus.
    BulkModulus,
    /// What an engine displaces.
    EngineVolume,
    /// An octane number.
    Octane,
    /// Lambda, or the air-fuel ratio that tells it.
    Mixture,
}

impl Measure {
    /// How it is read and shown.
    pub(super) fn field(self) -> &'static dyn AnyField {
        match self {
            Self::Volume => &VolumeInField { part_is_usual: false },
            Self::Level => &VolumeInField { part_is_usual: true },
            Self::Price => &PriceInField,
            Self::Consumption => &quantities::CONSUMPTION,
            Self::Distance => &quantities::DISTANCE,
            Self::Pressure => &quantities::PRESSURE,
            Self::AirPressure => &quantities::AIR_PRESSURE,
            Self::Boost => &quantities::BOOST,
            Self::Power => &quantities::POWER,
            Self::Torque => &quantities::TORQUE,
            Self::EngineSpeed => &quantities::ENGINE_SPEED,
            Self::InjectorFlow => &quantities::INJECTOR_FLOW,
            Self::PumpFlow => &quantities::PUMP_FLOW,
            Self::MassFlow => &quantities::MASS_FLOW,
            Self::AirFlow => &quantities::AIR_FLOW,
            Self::Density => &quantities::DENSITY,
            Self::Length => &quantities::LENGTH,
            Self::LineLength => &quantities::LINE_LENGTH,
            Self::Time => &quantities::TIME,
            Self::Voltage => &quantities::VOLTAGE,
            Self::Temperature => &quantities::TEMPERATURE,
            Self::Angle => &quantities::ANGLE,
            Self::SpecificConsumption => &quantities::SPECIFIC_CONSUMPTION,
            Self::BulkModulus => &quantities::BULK_MODULUS,
            Self::EngineVolume => &quantities::LITRES,
            Self::Octane => &OctaneInField,
            Self::Mixture => &MixtureInField,
        }
    }
}
