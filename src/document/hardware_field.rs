//! The fields of the hardware: what each one measures, and in which unit.

use serde::{Deserialize, Serialize};

use super::field_unit::{FieldUnit, PERCENT};
use crate::quantity::notation::Measure;

/// A field of a curve, of a part, or of the engine.
///
/// The fields of a part are many, and most are texts that only differ in what
/// they measure. They are therefore kept in a table by this name: see
/// [`Fields`](super::Fields).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HardwareField {
    // The engine and what is asked of it.
    /// Swept volume of all cylinders.
    Displacement,
    /// How many cylinders.
    Cylinders,
    /// Brake specific fuel consumption.
    SpecificConsumption,
    /// How far that may be off, either way.
    ConsumptionError,
    /// The blend for which it is given; blank for petrol without ethanol.
    ConsumptionFuel,
    /// How much better the engine turns E85 into work than that blend.
    EfficiencyGain,
    /// Lambda at full load.
    Lambda,
    /// Boost where a curve does not say it.
    Boost,
    /// The pressure of the air around.
    AmbientPressure,
    /// Volumetric efficiency, referred to the manifold.
    VolumetricEfficiency,
    /// The temperature of the charge in the manifold.
    ManifoldTemperature,
    /// Loss between crank and wheels, as a share of crank power.
    DrivelineLoss,
    /// What that may be.
    DrivelineLossRange,
    /// The reserve that is wanted.
    Reserve,
    /// The ethanol share to compute with, where it is not the tank's.
    BlendShare,
    /// What that may be.
    BlendRange,
    /// The share of fuel that goes through the port injectors, where there are both.
    PortShare,
    // The air in which a curve was measured.
    /// Its temperature.
    AirTemperature,
    /// Its pressure.
    AirPressure,
    /// Its relative humidity.
    Humidity,
    // Parts.
    /// How many there are.
    Count,
    /// The flow of one as rated, by volume.
    RatedFlow,
    /// The flow of one as rated, by mass.
    RatedMassFlow,
    /// The pressure difference at which it was rated.
    RatedPressure,
    /// The density of the fluid with which it was rated.
    TestDensity,
    /// The pressure of the rail: over the manifold, or over the air around.
    RailPressure,
    /// The voltage at the part.
    Voltage,
    /// The time before it opens: one, or a table over voltage.
    DeadTime,
    /// The use beyond which nobody should plan.
    UseLimit,
    /// The pressure in the cylinder during injection.
    BackPressure,
    /// The crank angle in which injection has to be done.
    Window,
    /// The time between command and flow.
    OpeningOffset,
    /// The plunger's diameter.
    Bore,
    /// The plunger's way.
    Lift,
    /// Strokes per turn of the cam.
    Lobes,
    /// Turns of the cam per turn of the crank.
    DriveRatio,
    /// Dead volume over stroke volume.
    DeadVolume,
    /// The fuel's bulk modulus.
    BulkModulus,
    /// Filling and leakage together.
    Efficiency,
    /// What that may be.
    EfficiencyRange,
    /// The pressure before the pump.
    InletPressure,
    /// Flow over pressure and voltage.
    FlowTable,
    /// The length of the line.
    LineLength,
    /// Its inner diameter.
    LineBore,
    /// The roughness of its wall.
    LineRoughness,
    /// How far it rises.
    LineRise,
    /// What filter and fittings take.
    OtherLosses,
    /// The pressure of a pump for injection fluid.
    FluidPressure,
    /// Methanol in the injection fluid.
    Strength,
    // Limits that people set.
    /// The power held safe.
    LimitPower,
    /// The torque held safe.
    LimitTorque,
    /// The air that the compressor is rated for.
    LimitAir,
    /// From which speed a limit holds.
    FromSpeed,
    /// Up to which speed.
    ToSpeed,
    // Mixing injection fluid.
    /// How much is wanted.
    MixAmount,
    /// How strong.
    MixStrength,
    /// The methanol in what it is mixed from.
    MixConcentrate,
}

impl HardwareField {
    /// The unit in which the field is typed.
    pub fn unit(self) -> FieldUnit {
        FieldUnit::Measured(match self {
            Self::Displacement => Measure::EngineVolume,
            Self::SpecificConsumption => Measure::SpecificConsumption,
            Self::Boost => Measure::Boost,
            Self::AmbientPressure | Self::AirPressure => Measure::AirPressure,
            Self::RatedPressure
            | Self::RailPressure
            | Self::BackPressure
            | Self::InletPressure
            | Self::OtherLosses
            | Self::FluidPressure => Measure::Pressure,
            Self::BulkModulus => Measure::BulkModulus,
            Self::ManifoldTemperature | Self::AirTemperature => Measure::Temperature,
            Self::RatedFlow => Measure::InjectorFlow,
            Self::RatedMassFlow => Measure::MassFlow,
            Self::TestDensity => Measure::Density,
            Self::Bore | Self::Lift | Self::LineBore | Self::LineRoughness => Measure::Length,
            Self::LineLength | Self::LineRise => Measure::LineLength,
            Self::OpeningOffset => Measure::Time,
            Self::Voltage => Measure::Voltage,
            Self::Window => Measure::Angle,
            Self::FromSpeed | Self::ToSpeed => Measure::EngineSpeed,
            Self::LimitPower => Measure::Power,
            Self::LimitTorque => Measure::Torque,
            Self::LimitAir => Measure::AirFlow,
            Self::Lambda => Measure::Mixture,
            Self::MixAmount => Measure::Volume,
            Self::FlowTable | Self::DeadTime => return FieldUnit::Lines,
            Self::Cylinders | Self::Count | Self::Lobes | Self::DriveRatio | Self::DeadVolume => {
                return FieldUnit::Bare;
            }
            Self::ConsumptionError
            | Self::ConsumptionFuel
            | Self::EfficiencyGain
            | Self::VolumetricEfficiency
            | Self::DrivelineLoss
            | Self::DrivelineLossRange
            | Self::Reserve
            | Self::BlendShare
            | Self::BlendRange
            | Self::PortShare
            | Self::Humidity
            | Self::UseLimit
            | Self::Efficiency
            | Self::EfficiencyRange
            | Self::Strength
            | Self::MixStrength
            | Self::MixConcentrate => return PERCENT,
        })
    }
}
