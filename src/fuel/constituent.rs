use uom::si::available_energy::{kilojoule_per_kilogram, megajoule_per_kilogram};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::molar_mass::gram_per_mole;

use super::constants as c;
use crate::quantity::{MassDensity, MolarMass, Share, SpecificEnergy};

/// What a fuel is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Constituent {
    /// Everything in petrol that is no oxygenate.
    Hydrocarbon,
    /// Ethanol.
    Ethanol,
    /// Methanol.
    Methanol,
    /// Water.
    Water,
}

/// A molecule by its atoms.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Atoms {
    pub(super) carbon: f64,
    pub(super) hydrogen: f64,
    pub(super) oxygen: f64,
}

impl Atoms {
    pub(super) const ETHANOL: Self = Self { carbon: 2.0, hydrogen: 6.0, oxygen: 1.0 };
    pub(super) const METHANOL: Self = Self { carbon: 1.0, hydrogen: 4.0, oxygen: 1.0 };
    pub(super) const WATER: Self = Self { carbon: 0.0, hydrogen: 2.0, oxygen: 1.0 };

    /// Molar mass in g/mol.
    pub(super) fn molar_mass(self) -> f64 {
        self.carbon * c::CARBON.value
            + self.hydrogen * c::HYDROGEN.value
            + self.oxygen * c::OXYGEN.value
    }
}

/// The part of a petrol that is no oxygenate.
///
/// The defaults are a typical base; only its octane number differs so much from
/// one petrol to the next that it has none until it is given or inferred.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HydrocarbonBase {
    /// Density at 15 degrees Celsius; 653 to 770 kg/m3 can be corrected for
    /// temperature.
    pub density_15: MassDensity,
    /// Mean molar mass.
    pub molar_mass: MolarMass,
    /// Hydrogen atoms per carbon atom.
    pub hydrogen_to_carbon: f64,
    /// Lower heating value.
    pub lower_heating_value: SpecificEnergy,
    /// Heat of vaporisation.
    pub heat_of_vaporisation: SpecificEnergy,
    /// Research octane number.
    pub ron: Option<f64>,
    /// Motor octane number.
    pub mon: Option<f64>,
}

impl Default for HydrocarbonBase {
    fn default() -> Self {
        Self {
            density_15: MassDensity::new::<kilogram_per_cubic_meter>(c::PETROL_DENSITY.value),
            molar_mass: MolarMass::new::<gram_per_mole>(c::PETROL_MOLAR_MASS.value),
            hydrogen_to_carbon: c::PETROL_HYDROGEN.value,
            lower_heating_value: SpecificEnergy::new::<megajoule_per_kilogram>(
                c::PETROL_HEATING_VALUE.value,
            ),
            heat_of_vaporisation: SpecificEnergy::new::<kilojoule_per_kilogram>(
                c::PETROL_VAPORISATION.value,
            ),
            ron: None,
            mon: None,
        }
    }
}

impl HydrocarbonBase {
    /// Moles per litre.
    pub(super) fn molar_density(&self) -> f64 {
        self.density_15.get::<kilogram_per_cubic_meter>() / self.molar_mass.get::<gram_per_mole>()
    }

    /// Mass of one mole of carbon with its hydrogen, in g.
    pub(super) fn mass_per_carbon(&self) -> f64 {
        c::CARBON.value + self.hydrogen_to_carbon * c::HYDROGEN.value
    }

    /// The base whose blend with this much ethanol has these octane numbers: the
    /// linear molar rule solved for the base.
    ///
    /// Neat ethanol has no base to infer; it keeps none.
    #[must_use]
    pub fn with_finished_octane(self, ron: Option<f64>, mon: Option<f64>, ethanol: Share) -> Self {
        let of_ethanol = ethanol.fraction() * super::octane::ethanol_molar_density();
        let of_base = (1.0 - ethanol.fraction()) * self.molar_density();
        let infer = |finished: Option<f64>, neat: f64| {
            finished
                .filter(|_| of_base > 0.0)
                .map(|finished| (finished * (of_base + of_ethanol) - neat * of_ethanol) / of_base)
        };
        Self {
            ron: infer(ron, c::ETHANOL_RON.value),
            mon: infer(mon, c::ETHANOL_MON.value),
            ..self
        }
    }
}
