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

#[cfg(test)]
mod tests {
    use uom::si::power::kilowatt;
    use uom::si::pressure::kilopascal;
    use uom::si::thermodynamic_temperature::degree_celsius;

    use super::*;
    use crate::logbook::{Entry, Measure};
    use crate::quantity::ThermodynamicTemperature;
    use crate::quantity::notation::{DecimalMark, Style, UnitSystem};

    fn printer(system: UnitSystem) -> Printer {
        let style = Style { decimal: DecimalMark::Comma };
        Printer { system, style, currency: String::new() }
    }

    fn typed(text: &str, typed_in: UnitSystem) -> Entry {
        Entry { text: text.into(), typed_in }
    }

    // 100 kPa is 14.504 psi, 100 kW is 134.10 hp of 550 ft lbf/s: NIST SP 811, from memory.
    #[test]
    fn quantities_follow_the_system() {
        let [metric, us] = [UnitSystem::Metric, UnitSystem::Us].map(printer);
        let boost = GaugePressure::new(Pressure::new::<kilopascal>(100.0));
        assert_eq!(metric.boost(boost), "1,00\u{202f}bar");
        assert_eq!(us.boost(boost), "14,5\u{202f}psi");
        let power = Power::new::<kilowatt>(100.0);
        assert_eq!(us.power(power), "134\u{202f}hp");
        assert_eq!(us.crank_power(CrankPower::new(power)), "134\u{202f}hp at the crank");
        assert_eq!(metric.wheel_power(WheelPower::new(power)), "100\u{202f}kW at the wheels");
        let air = AbsolutePressure::new(Pressure::new::<kilopascal>(101.325));
        assert_eq!(metric.air_pressure(air), "1013\u{202f}hPa");
        // The standard atmosphere is 29.92 inches of mercury.
        assert_eq!(us.air_pressure(air), "29,92\u{202f}inHg");
        let fuel = ThermodynamicTemperature::new::<degree_celsius>(25.0);
        assert_eq!(us.temperature(fuel), "77\u{202f}°F");
        assert_eq!(printer(UnitSystem::Imperial).temperature(fuel), "25\u{202f}°C");
    }

    // What was typed is stored as typed, so there and back is no way at all.
    #[test]
    fn an_entry_is_shown_in_other_units_and_never_changed() {
        let us = printer(UnitSystem::Us);
        let entry = typed("3", UnitSystem::Metric);
        assert_eq!(us.shown(&entry, Measure::Pressure), "43,51");
        assert_eq!(printer(UnitSystem::Metric).shown(&entry, Measure::Pressure), "3");
        for (text, measure, shown) in [
            // With its unit, and where the unit is the same, it stays as typed.
            ("3 bar", Measure::Pressure, "3 bar"),
            ("6500", Measure::EngineSpeed, "6500"),
            ("1000", Measure::InjectorFlow, "1000"),
            // 450 N m / 1.355 818, 25 degrees, 340 L / 3.785 412 L, 365 / 608.277.
            ("450", Measure::Torque, "331,9"),
            ("25", Measure::Temperature, "77"),
            ("340", Measure::PumpFlow, "89,82"),
            ("365", Measure::SpecificConsumption, "0,6001"),
            ("0,1", Measure::AirFlow, "13,23"),
            ("0,5", Measure::LineLength, "1,64"),
            // A slip is shown as it is.
            ("450 whp", Measure::Power, "450 whp"),
            ("", Measure::Power, ""),
        ] {
            let entry = typed(text, UnitSystem::Metric);
            assert_eq!(us.shown(&entry, measure), shown, "{text}");
        }
        let gallons = typed("10 gal/h", UnitSystem::Us);
        // 10 x 3.785 411 784 / 4.546 09.
        let imperial = printer(UnitSystem::Imperial);
        assert_eq!(imperial.shown(&gallons, Measure::PumpFlow), "8,33");
    }
}
