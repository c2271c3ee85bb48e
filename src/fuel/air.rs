//! The air that a fuel burns with, and what another fuel does to the mixture.

use uom::si::amount_of_substance::mole;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::molar_mass::gram_per_mole;

use crate::quantity::{AmountOfSubstance, Mass, MolarMass};
use crate::workings::Arithmetic;

use super::composition::Elements;
use super::constants as c;
use super::mixture::Mixture;

/// Mass of air that brings one mole of oxygen, `K = 2 A_O + psi M_N2a`: 138.246
/// g/mol with the air composition of [`constants`](super::constants).
///
/// Another air shifts every stoichiometric ratio alike: 21 % O2 and 79 % N2 gives
/// ratios that are 0.6 % lower (8.95 in place of 9.00 for ethanol).
pub fn air_per_oxygen() -> MolarMass {
    MolarMass::new::<gram_per_mole>(air_for_oxygen())
}

/// The same in g/mol, as a formula.
pub(crate) fn air_for_oxygen<A: Arithmetic>() -> A {
    A::literal(2.0) * c::OXYGEN_MASS.in_formula()
        + c::NITROGEN_PER_OXYGEN.in_formula::<A>() * c::NITROGEN_MOLAR_MASS.in_formula()
}

/// Moles of oxygen that carbon and hydrogen burn with, less those that are brought
/// along: `n_C + n_H / 4 - n_O / 2`.
pub(crate) fn oxygen_needed<A: Arithmetic>(carbon: A, hydrogen: A, oxygen: Option<A>) -> A {
    let needed = carbon + hydrogen / A::literal(4.0);
    match oxygen {
        Some(oxygen) => needed - oxygen / A::literal(2.0),
        None => needed,
    }
}

/// Volume of a fuel for each of a reference at equal air and lambda, from ratio and
/// density of the reference and then of the fuel: `(AFR_ref / AFR) (rho_ref / rho)`.
pub(crate) fn volume_ratio<A: Arithmetic>(reference: (A, A), fuel: (A, A)) -> A {
    reference.0 / fuel.0 * reference.1 / fuel.1
}

/// Lambda over that intended where nothing corrects it, from ratio and density of the
/// fuel intended and then of the one that is there: `(AFR_cal / AFR) sqrt(rho_cal / rho)`.
pub(crate) fn open_loop_ratio<A: Arithmetic>(intended: (A, A), fuel: (A, A)) -> A {
    intended.0 / fuel.0 * (intended.1 / fuel.1).sqrt()
}

impl Mixture {
    /// Mass of air that burns the fuel completely,
    /// `m_a = K (n_C + n_H / 4 - n_O / 2)`.
    pub fn stoichiometric_air(&self) -> Mass {
        let Elements { carbon, hydrogen, oxygen } = self.elements();
        let [carbon, hydrogen, oxygen] =
            [carbon, hydrogen, oxygen].map(|element| element.get::<mole>());
        let needed = oxygen_needed(carbon, hydrogen, Some(oxygen));
        AmountOfSubstance::new::<mole>(needed) * air_per_oxygen()
    }

    /// Stoichiometric air-fuel ratio by mass, `AFR = m_a / m`, in kg of air for
    /// each kg of fuel; none when empty.
    ///
    /// The ratio of a blend is the *mass*-weighted mean of its parts, not the mean
    /// by volume.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let ethanol =
    ///     Mixture::splash(Volume::new::<liter>(1.0), Share::ONE, &HydrocarbonBase::default());
    /// assert!(ethanol.stoichiometric_afr().is_some_and(|afr| (afr - 9.0025).abs() < 1e-4));
    /// assert_eq!(Mixture::EMPTY.stoichiometric_afr(), None);
    /// ```
    pub fn stoichiometric_afr(&self) -> Option<f64> {
        self.unless_empty(|| (self.stoichiometric_air() / self.mass()).into())
    }

    /// Mass of this fuel for each mass of `reference` at equal air and lambda,
    /// `AFR_ref / AFR`; none when either is empty or does not burn.
    pub fn fuel_mass_multiplier(&self, reference: &Self) -> Option<f64> {
        let (own, other) = (self.stoichiometric_afr()?, reference.stoichiometric_afr()?);
        (own > 0.0 && other > 0.0).then(|| other / own)
    }

    /// Volume of this fuel for each volume of `reference` at equal air and lambda,
    /// `(AFR_ref / AFR) (rho_ref / rho)`, both at 15 degC; none when either is
    /// empty or does not burn.
    pub fn fuel_volume_multiplier(&self, reference: &Self) -> Option<f64> {
        Some(volume_ratio(reference.burning()?, self.burning()?))
    }

    /// Air-fuel ratio above zero, and density in kg/m3.
    fn burning(&self) -> Option<(f64, f64)> {
        let ratio = self.stoichiometric_afr().filter(|ratio| *ratio > 0.0)?;
        Some((ratio, self.density_15()?.get::<kilogram_per_cubic_meter>()))
    }

    /// How much leaner (above 1) or richer (below 1) an engine runs on this fuel
    /// than it was set up for, when nothing corrects it:
    /// `lambda / lambda_set = (AFR_cal / AFR) sqrt(rho_cal / rho)`.
    ///
    /// The second factor stands because an injector that opens for a set time at a
    /// set pressure passes a mass that goes with the square root of the density
    /// (incompressible flow through an orifice). Densities at 15 degC. Lambda control
    /// trims the difference out in closed loop only; at full load many engines are
    /// not. None when either fuel is empty or does not burn.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let base = HydrocarbonBase::default();
    /// let litre = Volume::new::<liter>(1.0);
    /// let e10 = Mixture::splash(litre, Share::from_percent(10.0)?, &base);
    /// let e30 = Mixture::splash(litre, Share::from_percent(30.0)?, &base);
    /// assert!(e30.open_loop_lambda_ratio(&e10).is_some_and(|ratio| ratio > 1.08)); // lean
    /// # Ok::<(), fillwright::quantity::ShareError>(())
    /// ```
    pub fn open_loop_lambda_ratio(&self, calibrated_for: &Self) -> Option<f64> {
        Some(open_loop_ratio(calibrated_for.burning()?, self.burning()?))
    }
}
