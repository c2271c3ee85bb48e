//! The energy in a fuel.

use crate::quantity::{Energy, SpecificEnergy, Volume};
use uom::si::energy::megajoule;
use uom::si::volume::liter;

use super::mixture::Mixture;

/// Energy for each volume of fuel. A type of its own, because its dimension is
/// that of a pressure and must not be taken for one.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct EnergyDensity {
    megajoules_per_liter: f64,
}

impl EnergyDensity {
    /// The energy spread over the volume.
    pub fn new(energy: Energy, volume: Volume) -> Self {
        Self { megajoules_per_liter: energy.get::<megajoule>() / volume.get::<liter>() }
    }

    /// The value in MJ/L.
    pub fn megajoules_per_liter(self) -> f64 {
        self.megajoules_per_liter
    }

    /// The energy in a volume of this fuel.
    pub fn of(self, volume: Volume) -> Energy {
        Energy::new::<megajoule>(self.megajoules_per_liter * volume.get::<liter>())
    }
}

impl Mixture {
    /// Heat that is set free when all of it burns and the water leaves as vapour,
    /// `Q = sum of H_i m_i`. Water in the fuel takes its heat of vaporisation away.
    pub fn energy(&self) -> Energy {
        self.compounds().into_iter().fold(self.hydrocarbon.energy, |sum, (compound, mass)| {
            sum + mass * compound.lower_heating_value()
        })
    }

    /// Lower heating value by mass, `H = Q / m`; none when empty.
    pub fn lower_heating_value(&self) -> Option<SpecificEnergy> {
        self.unless_empty(|| self.energy() / self.mass())
    }

    /// Lower heating value by volume at 15 degC, `Q / V`; none when empty.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let base = HydrocarbonBase::default();
    /// let petrol = Mixture::splash(Volume::new::<liter>(1.0), Share::ZERO, &base);
    /// let density = petrol.energy_density().map(|density| density.megajoules_per_liter());
    /// assert!(density.is_some_and(|density| (density - 32.184).abs() < 1e-3));
    /// ```
    pub fn energy_density(&self) -> Option<EnergyDensity> {
        self.unless_empty(|| EnergyDensity::new(self.energy(), self.volume()))
    }
}
