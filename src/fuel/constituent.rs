//! What a fuel is made of.

use crate::quantity::{MassDensity, MolarMass, SpecificEnergy};

use super::constants::{self as c, Constant};

/// One of the things that a fuel is taken to be made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Constituent {
    /// The petrol base: everything that holds no oxygen.
    Hydrocarbon,
    /// Ethanol, C2H6O.
    Ethanol,
    /// Methanol, CH4O.
    Methanol,
    /// Methyl tert-butyl ether, C5H12O.
    Mtbe,
    /// Ethyl tert-butyl ether, C6H14O.
    Etbe,
    /// Water, H2O.
    Water,
}

impl Constituent {
    /// All of them, in the order in which they are listed.
    pub const ALL: [Self; 6] =
        [Self::Hydrocarbon, Self::Ethanol, Self::Methanol, Self::Mtbe, Self::Etbe, Self::Water];
}

/// A pure compound, whose properties do not depend on the pump.
#[derive(Debug)]
pub(super) struct Compound {
    /// Atoms in a molecule: carbon, hydrogen, oxygen.
    pub(super) carbon: f64,
    pub(super) hydrogen: f64,
    pub(super) oxygen: f64,
    density_15: &'static Constant,
    /// None when the liquid does not burn.
    heating_value: Option<&'static Constant>,
    vaporisation: &'static Constant,
    /// None when octane numbers do not apply.
    ron: Option<&'static Constant>,
    mon: Option<&'static Constant>,
}

pub(super) static ETHANOL: Compound = Compound {
    carbon: 2.0,
    hydrogen: 6.0,
    oxygen: 1.0,
    density_15: &c::ETHANOL_DENSITY,
    heating_value: Some(&c::ETHANOL_HEATING_VALUE),
    vaporisation: &c::ETHANOL_VAPORISATION,
    ron: Some(&c::ETHANOL_RON),
    mon: Some(&c::ETHANOL_MON),
};

pub(super) static METHANOL: Compound = Compound {
    carbon: 1.0,
    hydrogen: 4.0,
    oxygen: 1.0,
    density_15: &c::METHANOL_DENSITY,
    heating_value: Some(&c::METHANOL_HEATING_VALUE),
    vaporisation: &c::METHANOL_VAPORISATION,
    ron: Some(&c::METHANOL_RON),
    mon: Some(&c::METHANOL_MON),
};

pub(super) static MTBE: Compound = Compound {
    carbon: 5.0,
    hydrogen: 12.0,
    oxygen: 1.0,
    density_15: &c::MTBE_DENSITY,
    heating_value: Some(&c::MTBE_HEATING_VALUE),
    vaporisation: &c::MTBE_VAPORISATION,
    ron: Some(&c::MTBE_RON),
    mon: Some(&c::MTBE_MON),
};

pub(super) static ETBE: Compound = Compound {
    carbon: 6.0,
    hydrogen: 14.0,
    oxygen: 1.0,
    density_15: &c::ETBE_DENSITY,
    heating_value: Some(&c::ETBE_HEATING_VALUE),
    vaporisation: &c::ETBE_VAPORISATION,
    ron: Some(&c::ETBE_RON),
    mon: Some(&c::ETBE_MON),
};

pub(super) static WATER: Compound = Compound {
    carbon: 0.0,
    hydrogen: 2.0,
    oxygen: 1.0,
    density_15: &c::WATER_DENSITY,
    heating_value: None,
    vaporisation: &c::WATER_VAPORISATION,
    ron: None,
    mon: None,
};

impl Compound {
    /// Density at 15 degC.
    pub(super) fn density_15(&self) -> MassDensity {
        self.density_15.density()
    }

    /// Molar mass `M = n_C A_C + n_H A_H + n_O A_O`.
    pub(super) fn molar_mass(&self) -> MolarMass {
        c::CARBON_MASS.molar_mass() * self.carbon
            + c::HYDROGEN_MASS.molar_mass() * self.hydrogen
            + c::OXYGEN_MASS.molar_mass() * self.oxygen
    }

    /// Lower heating value of the liquid. A liquid that does not burn leaves the
    /// engine as vapour and takes its heat of vaporisation with it.
    pub(super) fn lower_heating_value(&self) -> SpecificEnergy {
        self.heating_value.map_or_else(|| -self.heat_of_vaporisation(), Constant::heating_value)
    }

    /// Heat of vaporisation.
    pub(super) fn heat_of_vaporisation(&self) -> SpecificEnergy {
        self.vaporisation.vaporisation_heat()
    }

    /// Research octane number of the neat compound.
    pub(super) fn ron(&self) -> Option<f64> {
        self.ron.map(|constant| constant.value)
    }

    /// Motor octane number of the neat compound.
    pub(super) fn mon(&self) -> Option<f64> {
        self.mon.map(|constant| constant.value)
    }
}

/// The petrol that is left when ethanol, methanol, ethers and water are taken out of
/// a pump fuel.
///
/// The default is a middling petrol of unknown octane; its numbers and their
/// sources are in [`constants`](super::constants).
///
/// ```
/// use fillwright::fuel::HydrocarbonBase;
/// let base = HydrocarbonBase { ron: Some(95.0), ..HydrocarbonBase::default() };
/// assert_eq!(base.hydrogen_to_carbon, 1.85);
/// assert_eq!(base.mon, None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HydrocarbonBase {
    /// Density at 15 degC, rho; greater than zero. Pump petrol: about 720 to 775
    /// kg/m3; thermal expansion is known from 653 to 770 kg/m3.
    pub density_15: MassDensity,
    /// Mean molar mass, M; greater than zero. Pump petrol: about 90 to 110 g/mol.
    pub molar_mass: MolarMass,
    /// Hydrogen atoms for each carbon atom, y; zero or more. Pump petrol: about
    /// 1.7 to 2.0; isooctane 2.25.
    pub hydrogen_to_carbon: f64,
    /// Lower heating value, H.
    pub lower_heating_value: SpecificEnergy,
    /// Heat of vaporisation, h.
    pub heat_of_vaporisation: SpecificEnergy,
    /// Research octane number of the base itself, not of the finished fuel; none
    /// when unknown.
    pub ron: Option<f64>,
    /// Motor octane number of the base itself, not of the finished fuel; none when
    /// unknown.
    pub mon: Option<f64>,
}

impl HydrocarbonBase {
    /// Mass of base for each mole of carbon in it, `A_C + y A_H`.
    pub(super) fn mass_per_carbon(&self) -> MolarMass {
        c::CARBON_MASS.molar_mass() + c::HYDROGEN_MASS.molar_mass() * self.hydrogen_to_carbon
    }
}

impl Default for HydrocarbonBase {
    fn default() -> Self {
        Self {
            density_15: c::PETROL_DENSITY.density(),
            molar_mass: c::PETROL_MOLAR_MASS.molar_mass(),
            hydrogen_to_carbon: c::PETROL_HYDROGEN.value,
            lower_heating_value: c::PETROL_HEATING_VALUE.heating_value(),
            heat_of_vaporisation: c::PETROL_VAPORISATION.vaporisation_heat(),
            ron: None,
            mon: None,
        }
    }
}
