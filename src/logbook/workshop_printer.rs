//! The quantities of the workshop as the person wants to read them.

use super::printer::Printer;
use crate::quantity::notation::{InSi, QuantityField, workshop};
use crate::quantity::{
    AbsolutePressure, Angle, AngularVelocity, CrankPower, ElectricPotential, GaugePressure, Length,
    MassDensity, MassRate, Power, Pressure, SpecificConsumption, Time, Torque, VolumeRate,
    WheelPower,
};

impl Printer {
    /// A quantity of the workshop.
    pub(super) fn figure<Q: InSi>(&self, field: &QuantityField<Q>, quantity: Q) -> String {
        field.print(quantity, self.system, self.style)
    }

    /// A pressure of fuel, or a difference of two.
    pub fn pressure(&self, pressure: Pressure) -> String {
        self.figure(&workshop::PRESSURE, pressure)
    }

    /// The pressure of the air around.
    pub fn air_pressure(&self, pressure: AbsolutePressure) -> String {
        self.figure(&workshop::AIR_PRESSURE, pressure)
    }

    /// Boost above the air around.
    pub fn boost(&self, boost: GaugePressure) -> String {
        self.figure(&workshop::BOOST, boost)
    }

    /// A power. The word beside it has to say where it is.
    pub fn power(&self, power: Power) -> String {
        self.figure(&workshop::POWER, power)
    }

    /// A power at the crank, and that it is there.
    pub fn crank_power(&self, power: CrankPower) -> String {
        format!("{} at the crank", self.power(power.get()))
    }

    /// A power at the wheels, and that it is there.
    pub fn wheel_power(&self, power: WheelPower) -> String {
        format!("{} at the wheels", self.power(power.get()))
    }

    /// A torque.
    pub fn torque(&self, torque: Torque) -> String {
        self.figure(&workshop::TORQUE, torque)
    }

    /// Engine speed.
    pub fn engine_speed(&self, speed: AngularVelocity) -> String {
        self.figure(&workshop::ENGINE_SPEED, speed)
    }

    /// An injector's flow by volume.
    pub fn injector_flow(&self, flow: VolumeRate) -> String {
        self.figure(&workshop::INJECTOR_FLOW, flow)
    }

    /// A pump's or an engine's flow by volume.
    pub fn pump_flow(&self, flow: VolumeRate) -> String {
        self.figure(&workshop::PUMP_FLOW, flow)
    }

    /// A fuel flow by mass.
    pub fn mass_flow(&self, flow: MassRate) -> String {
        self.figure(&workshop::MASS_FLOW, flow)
    }

    /// An air flow by mass.
    pub fn air_flow(&self, flow: MassRate) -> String {
        self.figure(&workshop::AIR_FLOW, flow)
    }

    /// A density.
    pub fn density(&self, density: MassDensity) -> String {
        self.figure(&workshop::DENSITY, density)
    }

    /// A small length.
    pub fn length(&self, length: Length) -> String {
        self.figure(&workshop::LENGTH, length)
    }

    /// The length of a line.
    pub fn line_length(&self, length: Length) -> String {
        self.figure(&workshop::LINE_LENGTH, length)
    }

    /// A time within an engine cycle.
    pub fn time(&self, time: Time) -> String {
        self.figure(&workshop::TIME, time)
    }

    /// A voltage.
    pub fn voltage(&self, voltage: ElectricPotential) -> String {
        self.figure(&workshop::VOLTAGE, voltage)
    }

    /// An angle of the crank.
    pub fn angle(&self, angle: Angle) -> String {
        self.figure(&workshop::ANGLE, angle)
    }

    /// Fuel mass for the work done.
    pub fn specific_consumption(&self, consumption: SpecificConsumption) -> String {
        self.figure(&workshop::SPECIFIC_CONSUMPTION, consumption)
    }
}
