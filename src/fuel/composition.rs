//! How much of what is in a fuel: volume, mass, moles, elements.

use crate::quantity::{AmountOfSubstance, Mass, Volume};

use super::constants as c;
use super::constituent::{Compound, Constituent, ETBE, ETHANOL, METHANOL, MTBE, WATER};
use super::mixture::Mixture;

/// Amounts of the three elements that take part in burning.
#[derive(Clone, Copy, Debug)]
pub(super) struct Elements {
    pub(super) carbon: AmountOfSubstance,
    pub(super) hydrogen: AmountOfSubstance,
    pub(super) oxygen: AmountOfSubstance,
}

impl Mixture {
    /// Volume of one constituent at 15 degC, `V_i`.
    pub fn volume_of(&self, constituent: Constituent) -> Volume {
        match constituent {
            Constituent::Hydrocarbon => self.hydrocarbon.volume,
            Constituent::Ethanol => self.ethanol,
            Constituent::Methanol => self.methanol,
            Constituent::Mtbe => self.mtbe,
            Constituent::Etbe => self.etbe,
            Constituent::Water => self.water,
        }
    }

    /// Mass of one constituent, `m_i = rho_i V_i`.
    pub fn mass_of(&self, constituent: Constituent) -> Mass {
        match constituent {
            Constituent::Hydrocarbon => self.hydrocarbon.mass,
            Constituent::Ethanol => self.ethanol * ETHANOL.density_15(),
            Constituent::Methanol => self.methanol * METHANOL.density_15(),
            Constituent::Mtbe => self.mtbe * MTBE.density_15(),
            Constituent::Etbe => self.etbe * ETBE.density_15(),
            Constituent::Water => self.water * WATER.density_15(),
        }
    }

    /// Amount of one constituent, `n_i = m_i / M_i`.
    pub fn moles_of(&self, constituent: Constituent) -> AmountOfSubstance {
        let mass = self.mass_of(constituent);
        match constituent {
            Constituent::Hydrocarbon => self.hydrocarbon.moles,
            Constituent::Ethanol => mass / ETHANOL.molar_mass(),
            Constituent::Methanol => mass / METHANOL.molar_mass(),
            Constituent::Mtbe => mass / MTBE.molar_mass(),
            Constituent::Etbe => mass / ETBE.molar_mass(),
            Constituent::Water => mass / WATER.molar_mass(),
        }
    }

    /// Mass, `m = sum of m_i`.
    pub fn mass(&self) -> Mass {
        Constituent::ALL.map(|constituent| self.mass_of(constituent)).into_iter().sum()
    }

    /// Amount of substance, `n = sum of n_i`.
    pub fn moles(&self) -> AmountOfSubstance {
        Constituent::ALL.map(|constituent| self.moles_of(constituent)).into_iter().sum()
    }

    /// Volume fraction at 15 degC, `v_i = V_i / V`; none when empty.
    ///
    /// ```
    /// use fillwright::fuel::{Constituent::Ethanol, HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let share = Share::from_percent(10.0)?;
    /// let e10 = Mixture::splash(Volume::new::<liter>(1.0), share, &HydrocarbonBase::default());
    /// // One tenth by volume is more by mass, and twice as much by moles.
    /// assert!((e10.volume_fraction(Ethanol).unwrap_or_default() - 0.100).abs() < 5e-4);
    /// assert!((e10.mass_fraction(Ethanol).unwrap_or_default() - 0.106).abs() < 5e-4);
    /// assert!((e10.mole_fraction(Ethanol).unwrap_or_default() - 0.204).abs() < 5e-4);
    /// # Ok::<(), fillwright::quantity::ShareError>(())
    /// ```
    pub fn volume_fraction(&self, constituent: Constituent) -> Option<f64> {
        self.unless_empty(|| (self.volume_of(constituent) / self.volume()).into())
    }

    /// Mass fraction, `w_i = m_i / m`; none when empty.
    pub fn mass_fraction(&self, constituent: Constituent) -> Option<f64> {
        self.unless_empty(|| (self.mass_of(constituent) / self.mass()).into())
    }

    /// Mole fraction, `x_i = n_i / n`; none when empty.
    pub fn mole_fraction(&self, constituent: Constituent) -> Option<f64> {
        self.unless_empty(|| (self.moles_of(constituent) / self.moles()).into())
    }

    /// Oxygen by mass, `A_O n_O / m`, that of water included; none when empty.
    pub fn oxygen_mass_fraction(&self) -> Option<f64> {
        let oxygen: Mass = self.elements().oxygen * c::OXYGEN_MASS.molar_mass();
        self.unless_empty(|| (oxygen / self.mass()).into())
    }

    /// Hydrogen atoms for each carbon atom, those of water included; none when
    /// there is no carbon.
    pub fn hydrogen_to_carbon(&self) -> Option<f64> {
        let Elements { carbon, hydrogen, .. } = self.elements();
        (carbon.value > 0.0).then(|| (hydrogen / carbon).into())
    }

    /// Oxygen atoms for each carbon atom, those of water included; none when there
    /// is no carbon.
    pub fn oxygen_to_carbon(&self) -> Option<f64> {
        let Elements { carbon, oxygen, .. } = self.elements();
        (carbon.value > 0.0).then(|| (oxygen / carbon).into())
    }

    /// The pure compounds in it, with the mass of each.
    pub(super) fn compounds(&self) -> [(&'static Compound, Mass); 5] {
        [
            (&ETHANOL, self.mass_of(Constituent::Ethanol)),
            (&METHANOL, self.mass_of(Constituent::Methanol)),
            (&MTBE, self.mass_of(Constituent::Mtbe)),
            (&ETBE, self.mass_of(Constituent::Etbe)),
            (&WATER, self.mass_of(Constituent::Water)),
        ]
    }

    /// Amounts of the elements, summed over the constituents.
    pub(super) fn elements(&self) -> Elements {
        let base = Elements {
            carbon: self.hydrocarbon.carbon,
            hydrogen: self.hydrocarbon.hydrogen,
            oxygen: AmountOfSubstance::default(),
        };
        self.compounds().into_iter().fold(base, |sum, (compound, mass)| {
            let moles: AmountOfSubstance = mass / compound.molar_mass();
            Elements {
                carbon: sum.carbon + moles * compound.carbon,
                hydrogen: sum.hydrogen + moles * compound.hydrogen,
                oxygen: sum.oxygen + moles * compound.oxygen,
            }
        })
    }

    pub(super) fn unless_empty<T>(&self, f: impl FnOnce() -> T) -> Option<T> {
        (!self.is_empty()).then(f)
    }
}
