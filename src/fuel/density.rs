//! Density and volume, at 15 degC and at the temperature of the day.

use crate::quantity::{MassDensity, ThermodynamicTemperature, Volume};

use super::constituent::{Constituent, ETBE, MTBE};
use super::expansion::{
    DensityError, ETHANOL_DENSITIES, METHANOL_DENSITIES, WATER_DENSITIES,
    petrol_volume_correction_factor,
};
use super::mixture::Mixture;

impl Mixture {
    /// Density at 15 degC, `rho = m / V`: the volume-weighted mean of the parts;
    /// none when empty.
    pub fn density_15(&self) -> Option<MassDensity> {
        self.unless_empty(|| self.mass() / self.volume())
    }

    /// Volume at a temperature, `V(T) = sum of V_i / VCF_i(T)`, from -20 to 60 degC
    /// (from 0 degC with water in it). Empty stays zero.
    ///
    /// # Errors
    /// When the temperature, or the density of the petrol base, is outside the
    /// range in which expansion is known.
    pub fn volume_at(&self, temperature: ThermodynamicTemperature) -> Result<Volume, DensityError> {
        let mut volume = Volume::default();
        for constituent in Constituent::ALL {
            let part = self.volume_of(constituent);
            // A range error of something that is not there would only mislead.
            if part > Volume::default() {
                volume += part / self.volume_correction_of(constituent, temperature)?;
            }
        }
        Ok(volume)
    }

    /// Density at a temperature, `rho(T) = m / V(T)`.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, ThermodynamicTemperature, Volume};
    /// use uom::si::{mass_density::kilogram_per_cubic_meter, thermodynamic_temperature::degree_celsius};
    /// use uom::si::volume::liter;
    /// let ethanol =
    ///     Mixture::splash(Volume::new::<liter>(1.0), Share::ONE, &HydrocarbonBase::default());
    /// let warm = ethanol.density_at(ThermodynamicTemperature::new::<degree_celsius>(20.0))?;
    /// assert!((warm.get::<kilogram_per_cubic_meter>() - 789.4).abs() < 0.1);
    /// # Ok::<(), fillwright::fuel::DensityError>(())
    /// ```
    ///
    /// # Errors
    /// When empty, and as [`Mixture::volume_at`].
    pub fn density_at(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<MassDensity, DensityError> {
        if self.is_empty() {
            return Err(DensityError::Empty);
        }
        Ok(self.mass() / self.volume_at(temperature)?)
    }

    /// Volume correction factor to 15 degC, `VCF = V / V(T)`: multiply litres at
    /// the temperature by it to get litres at 15 degC.
    ///
    /// # Errors
    /// When empty, and as [`Mixture::volume_at`].
    pub fn volume_correction_factor(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<f64, DensityError> {
        if self.is_empty() {
            return Err(DensityError::Empty);
        }
        Ok((self.volume() / self.volume_at(temperature)?).into())
    }

    fn volume_correction_of(
        &self,
        constituent: Constituent,
        temperature: ThermodynamicTemperature,
    ) -> Result<f64, DensityError> {
        match constituent {
            Constituent::Hydrocarbon => petrol_volume_correction_factor(
                self.hydrocarbon.mass / self.hydrocarbon.volume,
                temperature,
            ),
            Constituent::Ethanol => ETHANOL_DENSITIES.volume_correction_factor(temperature),
            Constituent::Methanol => METHANOL_DENSITIES.volume_correction_factor(temperature),
            // Petrol's rule at their own density: common practice, no source.
            Constituent::Mtbe => petrol_volume_correction_factor(MTBE.density_15(), temperature),
            Constituent::Etbe => petrol_volume_correction_factor(ETBE.density_15(), temperature),
            Constituent::Water => WATER_DENSITIES.volume_correction_factor(temperature),
        }
    }
}
