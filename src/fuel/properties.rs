//! What is derived from a mixture. Every property of an empty mixture is
//! undefined.

use uom::si::available_energy::{kilojoule_per_kilogram, megajoule_per_kilogram};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::volume::liter;

use super::constants as c;
use super::constituent::Constituent;
use super::mixture::{Mixture, Part};
use crate::quantity::{EnergyDensity, MassDensity, Share, SpecificEnergy, Volume};

/// A quotient, where there is something to divide by.
fn over(numerator: f64, denominator: f64) -> Option<f64> {
    (denominator > 0.0).then(|| numerator / denominator)
}

impl Mixture {
    /// The volume at 15 degrees Celsius.
    pub fn volume(&self) -> Volume {
        Volume::new::<liter>(self.total().litres)
    }

    /// The ethanol share by volume: `v = V_e / V`.
    pub fn ethanol_share(&self) -> Option<Share> {
        self.volume_share(Constituent::Ethanol).map(Share::clamped)
    }

    /// The share of a constituent by volume, as a fraction.
    pub fn volume_share(&self, of: Constituent) -> Option<f64> {
        over(self.part(of).litres, self.total().litres)
    }

    /// The share of a constituent by mass, as a fraction: `w = v rho_i / rho`.
    pub fn mass_share(&self, of: Constituent) -> Option<f64> {
        over(self.part(of).kilograms, self.total().kilograms)
    }

    /// The share of a constituent by moles, as a fraction.
    pub fn mole_share(&self, of: Constituent) -> Option<f64> {
        over(self.part(of).moles, self.total().moles)
    }

    /// Density at 15 degrees Celsius, weighted by volume: `rho = sum v_i rho_i`.
    pub fn density_15(&self) -> Option<MassDensity> {
        let total = self.total();
        over(total.kilograms * 1000.0, total.litres)
            .map(MassDensity::new::<kilogram_per_cubic_meter>)
    }

    /// Moles of oxygen molecules that burn it completely: `c + h/4 - o/2`.
    fn oxygen_demand(total: &Part) -> f64 {
        total.carbon + total.hydrogen / 4.0 - total.oxygen / 2.0
    }

    /// Kilograms of air that burn it completely.
    fn air(total: &Part) -> f64 {
        Self::oxygen_demand(total) * c::AIR_PER_OXYGEN.value / 1000.0
    }

    /// The stoichiometric air-fuel ratio by mass: `AFR = (c + h/4 - o/2) K / m`,
    /// which is the mean of the constituents' ratios weighted by mass.
    ///
    /// K follows from the composition of air, see
    /// [`AIR_PER_OXYGEN`](super::constants::AIR_PER_OXYGEN).
    pub fn stoichiometric_afr(&self) -> Option<f64> {
        let total = self.total();
        over(Self::air(&total), total.kilograms)
    }

    /// Lower heating value, weighted by mass.
    pub fn lower_heating_value(&self) -> Option<SpecificEnergy> {
        let total = self.total();
        over(total.heat, total.kilograms).map(SpecificEnergy::new::<megajoule_per_kilogram>)
    }

    /// Lower heating value per volume at 15 degrees Celsius.
    pub fn energy_per_volume(&self) -> Option<EnergyDensity> {
        Some(self.lower_heating_value()? * self.density_15()?)
    }

    /// Oxygen by mass, as a fraction.
    pub fn oxygen_by_mass(&self) -> Option<f64> {
        let total = self.total();
        over(total.oxygen * c::OXYGEN.value / 1000.0, total.kilograms)
    }

    /// Heat of vaporisation per mass of fuel, weighted by mass.
    pub fn heat_of_vaporisation(&self) -> Option<SpecificEnergy> {
        let total = self.total();
        over(total.vaporisation, total.kilograms).map(SpecificEnergy::new::<kilojoule_per_kilogram>)
    }

    /// Heat of vaporisation of the stoichiometric fuel for a mass of air.
    pub fn heat_of_vaporisation_per_air(&self) -> Option<SpecificEnergy> {
        Some(self.heat_of_vaporisation()? / self.stoichiometric_afr()?)
    }

    /// Hydrogen atoms per carbon atom.
    pub fn hydrogen_to_carbon(&self) -> Option<f64> {
        let total = self.total();
        over(total.hydrogen, total.carbon)
    }

    /// Oxygen atoms per carbon atom.
    pub fn oxygen_to_carbon(&self) -> Option<f64> {
        let total = self.total();
        over(total.oxygen, total.carbon)
    }

    /// Fuel mass over that of the reference fuel, at equal air and lambda:
    /// `AFR_ref / AFR`.
    pub fn fuel_mass_multiplier(&self, reference: &Self) -> Option<f64> {
        over(reference.stoichiometric_afr()?, self.stoichiometric_afr()?)
    }

    /// Fuel volume over that of the reference fuel, at equal air and lambda:
    /// `(AFR_ref / AFR) (rho_ref / rho)`.
    pub fn fuel_volume_multiplier(&self, reference: &Self) -> Option<f64> {
        let density = (reference.density_15()? / self.density_15()?).value;
        Some(self.fuel_mass_multiplier(reference)? * density)
    }

    /// Lambda over that intended, when fuel quantities written for one fuel are
    /// injected open loop on this one: `(AFR_cal / AFR) sqrt(rho_cal / rho)`.
    ///
    /// At a given pressure and opening time an injector's mass flow goes with
    /// the square root of density (Bernoulli). Above 1 is leaner.
    pub fn open_loop_lambda_ratio(&self, calibrated_for: &Self) -> Option<f64> {
        let density = (calibrated_for.density_15()? / self.density_15()?).value;
        Some(self.fuel_mass_multiplier(calibrated_for)? * density.sqrt())
    }
}
