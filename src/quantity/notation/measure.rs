//! What a typed text measures.

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
