//! The petrol base of a mixture as additive amounts.

use std::marker::PhantomData;

use crate::quantity::{AmountOfSubstance, Energy, Mass, Volume};

use super::constituent::HydrocarbonBase;

pub(super) const NO_VOLUME: Volume =
    Volume { dimension: PhantomData, units: PhantomData, value: 0.0 };
const NO_MASS: Mass = Mass { dimension: PhantomData, units: PhantomData, value: 0.0 };
const NO_MOLES: AmountOfSubstance =
    AmountOfSubstance { dimension: PhantomData, units: PhantomData, value: 0.0 };
const NO_ENERGY: Energy = Energy { dimension: PhantomData, units: PhantomData, value: 0.0 };

/// The additive amounts of the petrol base.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Hydrocarbon {
    pub(super) volume: Volume,
    pub(super) mass: Mass,
    pub(super) moles: AmountOfSubstance,
    pub(super) carbon: AmountOfSubstance,
    pub(super) hydrogen: AmountOfSubstance,
    pub(super) energy: Energy,
    pub(super) vaporisation: Energy,
    /// Moles times RON; none as soon as the octane of any part is unknown.
    pub(super) ron_moles: Option<AmountOfSubstance>,
    /// Moles times MON; none as soon as the octane of any part is unknown.
    pub(super) mon_moles: Option<AmountOfSubstance>,
}

impl Hydrocarbon {
    pub(super) const NONE: Self = Self {
        volume: NO_VOLUME,
        mass: NO_MASS,
        moles: NO_MOLES,
        carbon: NO_MOLES,
        hydrogen: NO_MOLES,
        energy: NO_ENERGY,
        vaporisation: NO_ENERGY,
        ron_moles: Some(NO_MOLES),
        mon_moles: Some(NO_MOLES),
    };

    pub(super) fn new(volume: Volume, base: &HydrocarbonBase) -> Self {
        // No petrol has no octane to know: unknown times nothing is nothing.
        let volume = amount(volume);
        if volume == NO_VOLUME {
            return Self::NONE;
        }
        let mass: Mass = volume * base.density_15;
        let moles: AmountOfSubstance = mass / base.molar_mass;
        let carbon: AmountOfSubstance = mass / base.mass_per_carbon();
        Self {
            volume,
            mass,
            moles,
            carbon,
            hydrogen: carbon * base.hydrogen_to_carbon,
            energy: mass * base.lower_heating_value,
            vaporisation: mass * base.heat_of_vaporisation,
            ron_moles: base.ron.map(|ron| moles * ron),
            mon_moles: base.mon.map(|mon| moles * mon),
        }
    }

    pub(super) fn times(self, factor: f64) -> Self {
        Self {
            volume: self.volume * factor,
            mass: self.mass * factor,
            moles: self.moles * factor,
            carbon: self.carbon * factor,
            hydrogen: self.hydrogen * factor,
            energy: self.energy * factor,
            vaporisation: self.vaporisation * factor,
            ron_moles: self.ron_moles.map(|moles| moles * factor),
            mon_moles: self.mon_moles.map(|moles| moles * factor),
        }
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            volume: self.volume + other.volume,
            mass: self.mass + other.mass,
            moles: self.moles + other.moles,
            carbon: self.carbon + other.carbon,
            hydrogen: self.hydrogen + other.hydrogen,
            energy: self.energy + other.energy,
            vaporisation: self.vaporisation + other.vaporisation,
            ron_moles: self.ron_moles.zip(other.ron_moles).map(|(a, b)| a + b),
            mon_moles: self.mon_moles.zip(other.mon_moles).map(|(a, b)| a + b),
        }
    }
}

/// An amount that cannot be negative; what is not a number counts as none.
pub(super) fn amount(volume: Volume) -> Volume {
    if volume > NO_VOLUME { volume } else { NO_VOLUME }
}
