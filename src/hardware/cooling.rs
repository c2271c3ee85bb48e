//! The cooling of the charge by a fuel that evaporates in it.

use uom::si::f64::SpecificHeatCapacity;
use uom::si::specific_heat_capacity::kilojoule_per_kilogram_kelvin;
use uom::si::volume::liter;

use crate::fuel::{Constituent, HydrocarbonBase, Mixture};
use crate::quantity::{Share, SpecificEnergy, TemperatureInterval, Volume};

use super::constants as c;

/// A fuel as it cools the charge by evaporating in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Evaporation {
    /// Heat of vaporisation for each mass of fuel, h.
    pub heat: SpecificEnergy,
    /// Heat capacity of the liquid.
    pub liquid_heat_capacity: SpecificHeatCapacity,
    /// Mass of air for each mass of fuel at lambda 1.
    pub stoichiometric_afr: f64,
}

impl Evaporation {
    /// A blend of the default petrol and ethanol, all averaged by mass.
    pub fn of_share(share: Share) -> Self {
        let litre = Volume::new::<liter>(1.0);
        let blend = Mixture::splash(litre, share, &HydrocarbonBase::default());
        let ethanol: f64 = (blend.mass_of(Constituent::Ethanol) / blend.mass()).into();
        let (of_ethanol, of_petrol) =
            (c::ETHANOL_HEAT_CAPACITY.value, c::PETROL_HEAT_CAPACITY.value);
        Self {
            heat: blend.vaporisation_heat() / blend.mass(),
            liquid_heat_capacity: heat_capacity(ethanol * of_ethanol + (1.0 - ethanol) * of_petrol),
            stoichiometric_afr: (blend.stoichiometric_air() / blend.mass()).into(),
        }
    }

    /// The most by which the fuel can cool the charge, all of it evaporating and all
    /// heat coming from the air: `dT = h / (lambda AFR c_p + c_liquid)`.
    pub fn largest_cooling(&self, lambda: f64) -> TemperatureInterval {
        let air = heat_capacity(c::AIR_HEAT_CAPACITY.value) * (lambda * self.stoichiometric_afr);
        self.heat / (air + self.liquid_heat_capacity)
    }

    /// What engines with direct injection show of it, see
    /// [`COOLING_REALISED`](super::constants::COOLING_REALISED).
    pub fn likely_cooling(&self, lambda: f64) -> TemperatureInterval {
        self.largest_cooling(lambda) * c::COOLING_REALISED.value
    }
}

pub(super) fn heat_capacity(kilojoules: f64) -> SpecificHeatCapacity {
    SpecificHeatCapacity::new::<kilojoule_per_kilogram_kelvin>(kilojoules)
}
