//! What an engine asks for, from its power or from its air.

use std::f64::consts::PI;

use uom::si::angular_velocity::{radian_per_second, revolution_per_minute};
use uom::si::available_energy::{joule_per_kilogram, megajoule_per_kilogram};
use uom::si::mass_rate::gram_per_second;
use uom::si::power::kilowatt;
use uom::si::pressure::kilopascal;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::time::second;
use uom::si::volume::liter;

use crate::quantity::{
    AbsolutePressure, AngularVelocity, CrankPower, MassRate, Pressure, SpecificConsumption,
    SpecificEnergy, ThermodynamicTemperature, Time, Volume,
};

use crate::workings::Arithmetic;

use super::constants as c;
use super::fuel_properties::FuelProperties;

/// The trade's name for fuel mass by work at the crank, BSFC.
///
/// It belongs to a fuel: at equal efficiency it grows as the heating value falls.
/// Boosted petrol engines at full load: about 300 to 400 g/kWh (common practice, no
/// source).
pub type BrakeSpecificFuelConsumption = SpecificConsumption;

impl SpecificConsumption {
    /// Brake efficiency with a fuel of this lower heating value,
    /// `eta = 1 / (BSFC H)`.
    pub fn efficiency(self, lower_heating_value: SpecificEnergy) -> f64 {
        let heat = lower_heating_value.get::<joule_per_kilogram>();
        1.0 / (self.kilograms_per_joule() * heat)
    }

    /// The consumption of an engine of this brake efficiency, above 0 to 1:
    /// `BSFC = 1 / (eta H)`.
    pub fn of_efficiency(efficiency: f64, lower_heating_value: SpecificEnergy) -> Self {
        let heat = lower_heating_value.get::<joule_per_kilogram>();
        Self::of_kilograms_per_joule(1.0 / (efficiency * heat))
    }
}

/// Fuel from power: what the engine burns for each unit of work on a reference
/// fuel, carried over to other fuels at equal brake efficiency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PowerRoute {
    /// Consumption on the reference fuel.
    pub consumption: BrakeSpecificFuelConsumption,
    /// The fuel that the consumption belongs to.
    pub reference: FuelProperties,
}

impl PowerRoute {
    /// Fuel for a power at the crank, `m = P BSFC H_ref / H / (1 + gain)`.
    ///
    /// `efficiency_gain` is how much more efficient the engine is on this fuel than
    /// on the reference, relative and above -1: 0.04 is 4 %.
    pub fn fuel_flow(
        &self,
        power: CrankPower,
        fuel: &FuelProperties,
        efficiency_gain: f64,
    ) -> MassRate {
        MassRate::new::<gram_per_second>(self.formula(power, fuel, efficiency_gain))
    }

    /// The same in g/s, as a formula.
    pub(crate) fn formula<A: Arithmetic>(
        &self,
        power: CrankPower,
        fuel: &FuelProperties,
        efficiency_gain: f64,
    ) -> A {
        let heat = |symbol: &str, of: &FuelProperties| {
            A::number(symbol, of.lower_heating_value.get::<megajoule_per_kilogram>())
        };
        A::number("P", power.get().get::<kilowatt>())
            * A::number("b", self.consumption.grams_per_kilowatt_hour())
            / A::literal(3600.0)
            * heat("H_0", &self.reference)
            / heat("H", fuel)
            / (A::literal(1.0) + A::number("g", efficiency_gain))
    }
}

/// Fuel from air: what a four-stroke engine breathes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirRoute {
    /// Swept volume of all cylinders.
    pub displacement: Volume,
    /// Charge drawn in, relative to the displacement filled at the state in the
    /// manifold; 0.95 is 95 %.
    pub volumetric_efficiency: f64,
    /// Pressure in the manifold above vacuum.
    pub manifold: AbsolutePressure,
    /// Temperature in the manifold.
    pub manifold_temperature: ThermodynamicTemperature,
    /// Partial pressure of water in the charge; zero when dry.
    pub vapour: Pressure,
}

impl AirRoute {
    /// Dry air, `m = VE (p - p_w) / (R T) V n / 2`: vapour takes room and burns
    /// nothing. None flows where the vapour is all there is.
    pub fn air_flow(&self, speed: AngularVelocity) -> MassRate {
        MassRate::new::<gram_per_second>(self.formula(speed))
    }

    /// The same in g/s, as a formula.
    pub(crate) fn formula<A: Arithmetic>(&self, speed: AngularVelocity) -> A {
        let dry = (self.manifold.get() - self.vapour).max(Pressure::default());
        A::number("VE", self.volumetric_efficiency)
            * A::number("p_m", dry.get::<kilopascal>())
            * A::number("V_d", self.displacement.get::<liter>())
            * A::number("N", speed.get::<revolution_per_minute>())
            / (c::AIR_GAS_CONSTANT.in_formula::<A>()
                * A::number("T", self.manifold_temperature.get::<kelvin>())
                * A::literal(120.0))
            * A::literal(1000.0)
    }

    /// Fuel for that air at a lambda above zero, `m_f = m_a / (lambda AFR)`.
    pub fn fuel_flow(
        &self,
        speed: AngularVelocity,
        lambda: f64,
        fuel: &FuelProperties,
    ) -> MassRate {
        self.air_flow(speed) / (lambda * fuel.stoichiometric_afr)
    }
}

/// Dry air that a fuel flow is burnt with at a lambda, `m_a = m_f lambda AFR`.
///
/// Set against what an engine can breathe, it tells whether a power is possible at
/// all.
pub fn air_for(fuel_flow: MassRate, lambda: f64, fuel: &FuelProperties) -> MassRate {
    fuel_flow * lambda * fuel.stoichiometric_afr
}

/// The time of one four-stroke cycle, two turns of the crank; endless at standstill.
pub(super) fn cycle_time(speed: AngularVelocity) -> Time {
    Time::new::<second>(4.0 * PI / speed.get::<radian_per_second>())
}
