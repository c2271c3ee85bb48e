//! The effect of an injected fluid on mixture and charge.

use crate::quantity::{MassRate, TemperatureInterval};

use super::constants as c;
use super::cooling::heat_capacity;
use super::demand::air_for;
use super::fuel_properties::FuelProperties;
use super::injection_fluid::MethanolWater;

/// What an injected fluid does to mixture and charge.
///
/// It may never be counted on as fuel or against knock without a check of its flow
/// and a fall-back that works by itself: [`lambda_if_spray_stops`](Self::lambda_if_spray_stops)
/// says why.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FluidEffect {
    /// Lambda with the fluid added to unchanged fuel.
    pub lambda_with: f64,
    /// The methanol's share of the heat of all that burns.
    pub energy_share: f64,
    /// The most by which the fluid can cool the charge: all of it evaporating, all
    /// heat coming from the air. Moist air may not take up all of it.
    pub largest_cooling: TemperatureInterval,
    /// Share of the fuel, petrol or blend, that can be left out so that lambda stays what it was; 1 and
    /// more when the methanol alone takes all the air.
    pub petrol_cut: f64,
    /// Lambda when so much fuel has been left out and the spray stops; infinite when
    /// no fuel is left.
    pub lambda_if_spray_stops: f64,
}

impl MethanolWater {
    /// What a flow of this fluid does beside a fuel flow, above zero, that runs at a
    /// lambda, above zero, without it.
    pub fn effect(
        self,
        fluid_flow: MassRate,
        fuel_flow: MassRate,
        lambda: f64,
        fuel: &FuelProperties,
    ) -> FluidEffect {
        let air = air_for(fuel_flow, lambda, fuel);
        let needed_by_fuel = air_for(fuel_flow, 1.0, fuel);
        let needed_by_fluid: MassRate = fluid_flow * self.stoichiometric_air();
        let from_fluid = fluid_flow * self.lower_heating_value();
        let from_all = from_fluid + fuel_flow * fuel.lower_heating_value;
        let air_heat = air * heat_capacity(c::AIR_HEAT_CAPACITY.value);
        let petrol_cut: f64 = (needed_by_fluid / needed_by_fuel).into();
        FluidEffect {
            lambda_with: (air / (needed_by_fuel + needed_by_fluid)).into(),
            energy_share: (from_fluid / from_all).into(),
            largest_cooling: fluid_flow * self.heat_of_vaporisation() / air_heat,
            petrol_cut,
            lambda_if_spray_stops: lambda / (1.0 - petrol_cut).max(0.0),
        }
    }
}
