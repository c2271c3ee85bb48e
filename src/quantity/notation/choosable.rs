//! What has a unit that can be chosen.

/// A quantity whose unit can be chosen apart from the system.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Choosable {
    /// Fuel.
    Volume,
    /// The way driven.
    Distance,
    /// Fuel over distance.
    Consumption,
    /// Pressures of fuel, and boost.
    Pressure,
    /// The pressure of the air around.
    AirPressure,
    /// Power.
    Power,
    /// Torque.
    Torque,
    /// Temperature.
    Temperature,
    /// What an injector passes by volume.
    InjectorFlow,
    /// What a pump or an engine passes by volume.
    PumpFlow,
    /// A fuel flow by mass.
    MassFlow,
    /// An air flow by mass.
    AirFlow,
    /// The scale of an octane number.
    Octane,
    /// How rich or lean the mixture is: the air-fuel ratio over that of burning
    /// without rest, or the ratio itself, of petrol or of the blend at hand.
    Mixture,
}

/// How many quantities have a unit of their own.
pub(super) const COUNT: usize = Choosable::ALL.len();

impl Choosable {
    /// Every one, in the order in which to offer them.
    pub const ALL: [Self; 14] = [
        Self::Volume,
        Self::Distance,
        Self::Consumption,
        Self::Pressure,
        Self::AirPressure,
        Self::Power,
        Self::Torque,
        Self::Temperature,
        Self::InjectorFlow,
        Self::PumpFlow,
        Self::MassFlow,
        Self::AirFlow,
        Self::Octane,
        Self::Mixture,
    ];
}
