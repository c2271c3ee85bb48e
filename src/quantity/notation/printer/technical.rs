//! The technical quantities as the person wants to read them.

use uom::si::mass::kilogram;
use uom::si::temperature_interval::kelvin;

use super::Printer;
use crate::message::keys::notation as keys;
use crate::quantity::notation::field::QuantityField;
use crate::quantity::notation::unit::InSi;
use crate::quantity::notation::{Measure, MixtureScale, PETROL_GAUGE_RATIO, outwards, quantities};
use crate::quantity::{
    AbsolutePressure, Angle, AngularVelocity, Band, CrankPower, ElectricPotential, GaugePressure,
    Length, Mass, MassDensity, MassRate, Power, Pressure, SpecificConsumption, TemperatureInterval,
    Time, Torque, Volume, VolumeRate, WheelPower,
};

/// Narrow no-break space: joins a number to its unit.
const THIN: char = '\u{202f}';

impl Printer {
    /// A technical quantity.
    pub(crate) fn figure<Q: InSi>(&self, field: &QuantityField<Q>, quantity: Q) -> String {
        field.print(quantity, self.units, self.style)
    }

    /// A pressure of fuel, or a difference of two.
    pub fn pressure(&self, pressure: Pressure) -> String {
        self.figure(&quantities::PRESSURE, pressure)
    }

    /// The pressure of the air around.
    pub fn air_pressure(&self, pressure: AbsolutePressure) -> String {
        self.figure(&quantities::AIR_PRESSURE, pressure)
    }

    /// Boost above the air around.
    pub fn boost(&self, boost: GaugePressure) -> String {
        self.figure(&quantities::BOOST, boost)
    }

    /// A power. The word beside it has to say where it is.
    pub fn power(&self, power: Power) -> String {
        self.figure(&quantities::POWER, power)
    }

    /// The low end, the expected value and the high end of a band, each with its unit.
    fn figure_ends<Q: InSi + Copy>(&self, field: &QuantityField<Q>, band: Band<Q>) -> [String; 3] {
        let unit = field.own(self.units);
        let numbers = band.map(|it| unit.value_of(it));
        let told = outwards(numbers, unit.decimals());
        [told.low(), told.expected(), told.high()]
            .map(|it| unit.print(unit.quantity(it), unit.decimals(), self.style))
    }

    /// The low end, the expected value and the high end of a fuel flow by mass.
    pub fn mass_flow_ends(&self, band: Band<MassRate>) -> [String; 3] {
        self.figure_ends(&quantities::MASS_FLOW, band)
    }

    /// The low end, the expected value and the high end of a flow by volume.
    pub fn pump_flow_ends(&self, band: Band<VolumeRate>) -> [String; 3] {
        self.figure_ends(&quantities::PUMP_FLOW, band)
    }

    /// The low end, the expected value and the high end of a power.
    pub fn power_ends(&self, band: Band<Power>) -> [String; 3] {
        self.figure_ends(&quantities::POWER, band)
    }

    /// A power at the crank, and that it is there.
    pub fn crank_power(&self, power: CrankPower) -> String {
        keys::AtTheCrank { power: self.power(power.get()) }.say()
    }

    /// A power at the wheels, and that it is there.
    pub fn wheel_power(&self, power: WheelPower) -> String {
        keys::AtTheWheels { power: self.power(power.get()) }.say()
    }

    /// A torque.
    pub fn torque(&self, torque: Torque) -> String {
        self.figure(&quantities::TORQUE, torque)
    }

    /// Engine speed.
    pub fn engine_speed(&self, speed: AngularVelocity) -> String {
        self.figure(&quantities::ENGINE_SPEED, speed)
    }

    /// An injector's flow by volume.
    pub fn injector_flow(&self, flow: VolumeRate) -> String {
        self.figure(&quantities::INJECTOR_FLOW, flow)
    }

    /// A pump's or an engine's flow by volume.
    pub fn pump_flow(&self, flow: VolumeRate) -> String {
        self.figure(&quantities::PUMP_FLOW, flow)
    }

    /// A fuel flow by mass.
    pub fn mass_flow(&self, flow: MassRate) -> String {
        self.figure(&quantities::MASS_FLOW, flow)
    }

    /// An air flow by mass.
    pub fn air_flow(&self, flow: MassRate) -> String {
        self.figure(&quantities::AIR_FLOW, flow)
    }

    /// A density.
    pub fn density(&self, density: MassDensity) -> String {
        self.figure(&quantities::DENSITY, density)
    }

    /// A small length.
    pub fn length(&self, length: Length) -> String {
        self.figure(&quantities::LENGTH, length)
    }

    /// The length of a line.
    pub fn line_length(&self, length: Length) -> String {
        self.figure(&quantities::LINE_LENGTH, length)
    }

    /// A time within an engine cycle.
    pub fn time(&self, time: Time) -> String {
        self.figure(&quantities::TIME, time)
    }

    /// A voltage.
    pub fn voltage(&self, voltage: ElectricPotential) -> String {
        self.figure(&quantities::VOLTAGE, voltage)
    }

    /// An angle of the crank.
    pub fn angle(&self, angle: Angle) -> String {
        self.figure(&quantities::ANGLE, angle)
    }

    /// Fuel mass for the work done.
    pub fn specific_consumption(&self, consumption: SpecificConsumption) -> String {
        self.figure(&quantities::SPECIFIC_CONSUMPTION, consumption)
    }

    /// A volume of what is mixed: hundredths.
    pub fn mixed_volume(&self, volume: Volume) -> String {
        self.units.volume().print(volume, 2, self.style)
    }

    /// A mass of what is mixed.
    pub fn mixed_mass(&self, mass: Mass) -> String {
        format!("{}{THIN}kg", self.number(mass.get::<kilogram>(), 2))
    }

    /// A difference of temperatures.
    pub fn temperature_difference(&self, difference: TemperatureInterval) -> String {
        format!("{}{THIN}K", self.number(difference.get::<kelvin>(), 0))
    }

    /// An air flow in both of the units that compressors are rated in.
    pub fn compressor_air(&self, flow: MassRate) -> String {
        let in_unit = |symbol| {
            let unit = quantities::AIR_FLOW.named(symbol, self.units);
            unit.map_or_else(String::new, |unit| unit.print(flow, unit.decimals(), self.style))
        };
        format!("{} ({})", in_unit("kg/s"), in_unit("lb/min"))
    }

    /// The volume of a stroke.
    pub fn stroke_volume(&self, volume: Volume) -> String {
        let unit = quantities::LITRES.named("cc", self.units);
        unit.map_or_else(String::new, |unit| unit.print(volume, 3, self.style))
    }

    /// A fraction in percent, whole.
    pub fn fraction(&self, fraction: f64) -> String {
        format!("{}{THIN}%", self.number(fraction * 100.0, 0))
    }

    /// A change in percent, with its sign.
    pub fn change(&self, fraction: f64) -> String {
        let sign = if fraction > 0.0 { "+" } else { "" };
        format!("{sign}{}{THIN}%", self.number(fraction * 100.0, 1))
    }

    /// A band of fractions in percent: from one end to the other, or one where they
    /// print alike.
    pub fn fractions(&self, band: Band<f64>) -> String {
        let [low, _, high] = self.number_ends(band.map(|it| it * 100.0), 0);
        if low == high { format!("{low}{THIN}%") } else { keys::BandPercent { low, high }.say() }
    }

    /// A mixture as it was chosen to be told: lambda, or an air-fuel ratio and the one
    /// that belongs to lambda 1 on its scale. `stoichiometric` is that of the blend.
    pub fn mixture(&self, lambda: f64, stoichiometric: f64) -> String {
        let ratio = |one: f64| [lambda * one, one].map(|it| self.number(it, 1));
        match self.units.mixture() {
            MixtureScale::Lambda => format!("λ{THIN}{}", self.number(lambda, 2)),
            MixtureScale::AfrOfPetrol => {
                let [ratio, one] = ratio(PETROL_GAUGE_RATIO);
                keys::AfrOfPetrol { ratio, one }.say()
            }
            MixtureScale::AfrOfTheBlend => {
                let [ratio, one] = ratio(stoichiometric);
                keys::AfrOfBlend { ratio, one }.say()
            }
        }
    }

    /// The symbol of the unit that a bare number has; empty for a price, whose unit
    /// has the currency in it.
    pub fn unit(&self, measure: Measure) -> &'static str {
        measure.field().symbol(self.units)
    }
}

#[cfg(test)]
mod tests {
    use uom::si::power::kilowatt;
    use uom::si::pressure::kilopascal;
    use uom::si::thermodynamic_temperature::degree_celsius;

    use super::*;
    use crate::quantity::ThermodynamicTemperature;
    use crate::quantity::notation::entry::Entry;
    use crate::quantity::notation::{DecimalMark, Measure, Style, Units};

    fn printer(units: Units) -> Printer {
        let style = Style { decimal: DecimalMark::Comma };
        Printer { units, style, currency: String::new() }
    }

    fn typed(text: &str, typed_in: Units) -> Entry {
        Entry { text: text.into(), typed_in }
    }

    // 100 kPa is 14.504 psi, 100 kW is 134.10 hp of 550 ft lbf/s: NIST SP 811, from memory.
    #[test]
    fn quantities_follow_the_system() {
        let [metric, us] = [Units::METRIC, Units::US].map(printer);
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
        assert_eq!(printer(Units::IMPERIAL).temperature(fuel), "25\u{202f}°C");
    }

    // What was typed is stored as typed, so there and back is no way at all.
    #[test]
    fn an_entry_is_shown_in_other_units_and_never_changed() {
        let us = printer(Units::US);
        let entry = typed("3", Units::METRIC);
        assert_eq!(us.shown(&entry, Measure::Pressure), "43,51");
        assert_eq!(printer(Units::METRIC).shown(&entry, Measure::Pressure), "3");
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
            ("0,5", Measure::LineLength, "1,6404"),
            // A slip is shown as it is.
            ("450 whp", Measure::Power, "450 whp"),
            ("", Measure::Power, ""),
        ] {
            let entry = typed(text, Units::METRIC);
            assert_eq!(us.shown(&entry, measure), shown, "{text}");
        }
        let gallons = typed("10 gal/h", Units::US);
        // 10 x 3.785 411 784 / 4.546 09 = 8.326 74.
        let imperial = printer(Units::IMPERIAL);
        assert_eq!(imperial.shown(&gallons, Measure::PumpFlow), "8,3267");
        assert_eq!(imperial.told(&gallons, Measure::PumpFlow), "8,33");
        assert_eq!(us.told(&typed("3/4", Units::METRIC), Measure::Volume), "3/4");
        assert_eq!(us.told(&typed("16,125", Units::US), Measure::Volume), "16,125");
    }
}
