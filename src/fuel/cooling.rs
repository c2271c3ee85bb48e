//! The heat that a fuel takes from the charge as it evaporates.

use crate::quantity::{Energy, SpecificEnergy};

use super::mixture::Mixture;

impl Mixture {
    /// Heat that evaporates all of it, `sum of h_i m_i`; mixing heat neglected.
    pub fn vaporisation_heat(&self) -> Energy {
        self.compounds().into_iter().fold(self.hydrocarbon.vaporisation, |sum, (compound, mass)| {
            sum + mass * compound.heat_of_vaporisation()
        })
    }

    /// Heat of vaporisation for each mass of fuel, `h = sum of h_i m_i / m`; none
    /// when empty.
    pub fn heat_of_vaporisation(&self) -> Option<SpecificEnergy> {
        self.unless_empty(|| self.vaporisation_heat() / self.mass())
    }

    /// Heat of vaporisation for each mass of air at lambda 1, `h / AFR`: the
    /// measure of charge cooling. None when empty or when nothing in it burns.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let base = HydrocarbonBase::default();
    /// let litre = Volume::new::<liter>(1.0);
    /// let petrol = Mixture::splash(litre, Share::ZERO, &base).heat_of_vaporisation_per_air();
    /// let ethanol = Mixture::splash(litre, Share::ONE, &base).heat_of_vaporisation_per_air();
    /// let times = petrol.zip(ethanol).map(|(petrol, ethanol)| f64::from(ethanol / petrol));
    /// assert!(times.is_some_and(|times| times > 4.0));
    /// ```
    pub fn heat_of_vaporisation_per_air(&self) -> Option<SpecificEnergy> {
        let air = self.stoichiometric_air();
        (air.value > 0.0).then(|| self.vaporisation_heat() / air)
    }
}
