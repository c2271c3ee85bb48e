//! Octane numbers of blends, by moles.
//!
//! The octane number of a blend is taken as linear in the mole fractions of all
//! that burns, `ON = sum of n_i ON_i / sum of n_i`. Measured blends come out as
//! high or higher: 0 to about 6 RON above in paraffinic bases, nearly exact in
//! aromatic ones (Foong et al. 2014, Fuel 115:727; Anderson et al. 2012, SAE
//! 2012-01-1274, abstract). In neat n-heptane MON comes out up to 13 above. So every
//! number here means **at least**.

use thiserror::Error;

use crate::quantity::{AmountOfSubstance, Share, Volume};
use crate::workings::Arithmetic;
use uom::si::amount_of_substance::mole;
use uom::si::f64::MolarConcentration;
use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

use super::constants as c;
use super::constituent::{Compound, ETHANOL, HydrocarbonBase};
use super::mean::Mean;
use super::mixture::{Mixture, MixtureParts};

impl Mixture {
    /// Research octane number, at least:
    /// `RON = sum of n_i RON_i / sum of n_i` over all but the water. None when the
    /// octane of any petrol in it is unknown, or when nothing in it burns.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let base = HydrocarbonBase { ron: Some(91.0), ..HydrocarbonBase::default() };
    /// let e30 = Mixture::splash(Volume::new::<liter>(1.0), Share::from_percent(30.0)?, &base);
    /// assert!(e30.ron().is_some_and(|ron| (ron - 99.96).abs() < 0.01));
    /// assert_eq!(e30.mon(), None);
    /// # Ok::<(), fillwright::quantity::ShareError>(())
    /// ```
    pub fn ron(&self) -> Option<f64> {
        self.octane(self.hydrocarbon.ron_moles?, Compound::ron)
    }

    /// Motor octane number, at least; the rule is that of [`Mixture::ron`].
    pub fn mon(&self) -> Option<f64> {
        self.octane(self.hydrocarbon.mon_moles?, Compound::mon)
    }

    /// Anti-knock index, at least: `AKI = (RON + MON) / 2`; none when either is.
    pub fn aki(&self) -> Option<f64> {
        Some(anti_knock_index(self.ron()?, self.mon()?))
    }

    fn octane(
        &self,
        base: AmountOfSubstance,
        of: impl Fn(&Compound) -> Option<f64>,
    ) -> Option<f64> {
        let base = Mean::of_sums(self.hydrocarbon.moles.get::<mole>(), Some(base.get::<mole>()));
        // What has no number does not burn.
        let burning = self.compounds().into_iter().filter_map(|(compound, mass)| {
            let own: AmountOfSubstance = mass / compound.molar_mass();
            Some(Mean::of(own.get::<mole>(), Some(of(compound)?)))
        });
        std::iter::once(base).chain(burning).sum::<Mean>().value()
    }
}

/// Anti-knock index, `(RON + MON) / 2`.
pub(crate) fn anti_knock_index<A: Arithmetic>(ron: A, mon: A) -> A {
    (ron + mon) / A::literal(2.0)
}

impl HydrocarbonBase {
    /// This base with the octane that makes the finished fuel have the numbers on
    /// the pump, when the pump fuel is base and ethanol only.
    ///
    /// What the pump states as a minimum is a minimum here too. The more ethanol
    /// the fuel holds, the less its octane tells of the base: below E20 this is
    /// sound, of an E85 it is arithmetic only. A share of 1 leaves it unknown.
    ///
    /// ```
    /// use fillwright::fuel::{HydrocarbonBase, Mixture};
    /// use fillwright::quantity::{Share, Volume};
    /// use uom::si::volume::liter;
    /// let share = Share::from_percent(10.0)?;
    /// let base = HydrocarbonBase::default().with_finished_octane(Some(95.0), None, share);
    /// let pump = Mixture::splash(Volume::new::<liter>(1.0), share, &base);
    /// assert!(pump.ron().is_some_and(|ron| (ron - 95.0).abs() < 1e-9));
    /// assert!(base.ron.is_some_and(|ron| ron < 92.0));
    /// # Ok::<(), fillwright::quantity::ShareError>(())
    /// ```
    #[must_use]
    pub fn with_finished_octane(self, ron: Option<f64>, mon: Option<f64>, ethanol: Share) -> Self {
        let parts = MixtureParts::splash(Volume::new::<liter>(1.0), ethanol);
        self.with_finished_octane_of(ron, mon, &parts)
    }

    /// The same for a pump fuel that also holds methanol or water:
    /// `ON_g = (ON (n - n_w) - sum of n_i ON_i) / n_g`.
    #[must_use]
    pub fn with_finished_octane_of(
        self,
        ron: Option<f64>,
        mon: Option<f64>,
        parts: &MixtureParts,
    ) -> Self {
        let infer = |finished: Option<f64>, of: fn(&Mixture) -> Option<f64>| {
            // Octane is linear in that of the base, so two trial bases fix the line.
            let blend = |octane: f64| {
                let trial = Self { ron: Some(octane), mon: Some(octane), ..self };
                of(&Mixture::from_parts(parts, &trial))
            };
            let (at_zero, at_hundred) = (blend(0.0)?, blend(100.0)?);
            let slope = (at_hundred - at_zero) / 100.0;
            (slope > 0.0).then_some((finished? - at_zero) / slope)
        };
        Self { ron: infer(ron, Mixture::ron), mon: infer(mon, Mixture::mon), ..self }
    }
}

/// Why a number is no anti-knock index of a fuel.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct AkiError {
    /// What was given.
    pub given: f64,
    /// The ethanol share of the fuel.
    pub share: Share,
    /// The most that such a fuel can have.
    pub most: f64,
}

/// Anti-knock index of neat ethanol.
pub(crate) fn neat_aki() -> f64 {
    anti_knock_index(c::ETHANOL_RON.value, c::ETHANOL_MON.value)
}

/// RON and MON of a petrol of which only the anti-knock index and the ethanol share
/// are known: `RON = AKI + S / 2`, `MON = AKI - S / 2`.
///
/// The sensitivity follows the molar rule between the usual 8 of a petrol base and the
/// 19 of neat ethanol: `S = (1 - x) S_g + x (RON_e - MON_e)`, x being the mole fraction
/// of ethanol. That of the base is common practice, no source: real ones have S of
/// about 7 to 12, so take the numbers as a floor to plan with.
///
/// ```
/// use fillwright::fuel::ron_mon_from_aki;
/// use fillwright::quantity::Share;
/// let (ron, mon) = ron_mon_from_aki(93.0, Share::from_percent(10.0)?)?;
/// assert!((ron - 98.1).abs() < 0.05 && (mon - 87.9).abs() < 0.05);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// When the index is higher than the molar rule allows: between that of neat toluene,
/// which no petrol base exceeds, and the 99.5 of neat ethanol.
pub fn ron_mon_from_aki(aki: f64, ethanol: Share) -> Result<(f64, f64), AkiError> {
    let moles = MolarDensity::default();
    let between = |base: f64, neat: f64| {
        let part = |share: f64, of: MolarConcentration, number: f64| {
            Mean::of(share * of.get::<mole_per_liter>(), Some(number))
        };
        let petrol = part(1.0 - ethanol.fraction(), moles.hydrocarbon, base);
        petrol.plus(part(ethanol.fraction(), moles.ethanol, neat)).value().unwrap_or(neat)
    };
    let best_base = anti_knock_index(c::TOLUENE_RON.value, c::TOLUENE_MON.value);
    let most = between(best_base, neat_aki());
    if aki > most + 1e-9 {
        return Err(AkiError { given: aki, share: ethanol, most });
    }
    let neat = c::ETHANOL_RON.value - c::ETHANOL_MON.value;
    let half = between(c::PETROL_SENSITIVITY.value, neat) / 2.0;
    Ok((aki + half, aki - half))
}

/// Moles in a litre of petrol base and of ethanol: the weights with which octane
/// blends by volume.
///
/// With `c(s) = s c_e + (1 - s) c_g`, finished fuels of volume `V_i`, share `s_i`
/// and octane `ON_i` blend to `sum of V_i c(s_i) ON_i / sum of V_i c(s_i)`, as
/// long as they share one petrol base (or bases of equal `rho / M`). This is the
/// molar rule again, written for the fuels as they come from the pump.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MolarDensity {
    /// Of the petrol base, `c_g = rho_g / M_g`.
    pub hydrocarbon: MolarConcentration,
    /// Of ethanol, `c_e = rho_e / M_e`.
    pub ethanol: MolarConcentration,
}

impl MolarDensity {
    /// Of a petrol base, beside that of ethanol.
    pub fn of_base(base: &HydrocarbonBase) -> Self {
        Self {
            hydrocarbon: (base.density_15 / base.molar_mass).into(),
            ethanol: (ETHANOL.density_15() / ETHANOL.molar_mass()).into(),
        }
    }

    /// Of a fuel of base and ethanol, `c(s) = s c_e + (1 - s) c_g`.
    ///
    /// ```
    /// use fillwright::fuel::MolarDensity;
    /// use fillwright::quantity::Share;
    /// use uom::si::molar_concentration::mole_per_liter;
    /// let petrol = MolarDensity::default().of_share(Share::ZERO);
    /// assert!((petrol.get::<mole_per_liter>() - 7.45).abs() < 1e-9);
    /// ```
    pub fn of_share(&self, ethanol: Share) -> MolarConcentration {
        MolarConcentration::new::<mole_per_liter>(self.per_litre(ethanol.fraction()))
    }

    /// The same in moles per litre, as a formula.
    pub(crate) fn per_litre<A: Arithmetic>(&self, ethanol: A) -> A {
        let of = |symbol: &str, density: MolarConcentration| {
            A::number(symbol, density.get::<mole_per_liter>())
        };
        of("c_g", self.hydrocarbon) * (A::literal(1.0) - ethanol.clone())
            + of("c_e", self.ethanol) * ethanol
    }
}

impl Default for MolarDensity {
    fn default() -> Self {
        Self::of_base(&HydrocarbonBase::default())
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    /// Two pump fuels of one petrol base type, blended by the form that the fill
    /// problem uses and by the sums of the mixture.
    #[test]
    fn finished_fuels_blend_as_base_and_ethanol_do() {
        let weights = MolarDensity::default();
        let fuels = [(12.0, 0.05, 98.0, 88.0), (20.0, 0.10, 95.0, 85.0), (9.0, 0.85, 104.0, 88.0)];
        let (mut tank, mut moles, mut ron, mut mon) = (Mixture::EMPTY, 0.0, 0.0, 0.0);
        for (liters, share, fuel_ron, fuel_mon) in fuels {
            let share = Share::new(share).unwrap();
            let base = HydrocarbonBase::default().with_finished_octane(
                Some(fuel_ron),
                Some(fuel_mon),
                share,
            );
            tank += Mixture::splash(Volume::new::<liter>(liters), share, &base);
            let own = liters * weights.of_share(share).get::<mole_per_liter>();
            moles += own;
            ron += own * fuel_ron;
            mon += own * fuel_mon;
        }
        assert!((tank.ron().unwrap() - ron / moles).abs() < 1e-9);
        assert!((tank.mon().unwrap() - mon / moles).abs() < 1e-9);
        assert!((tank.aki().unwrap() - f64::midpoint(ron, mon) / moles).abs() < 1e-9);
    }

    #[test]
    fn the_base_of_a_fuel_with_methanol_and_water_is_inferred() {
        let part = |liters| Volume::new::<liter>(liters);
        let parts = MixtureParts {
            hydrocarbon: part(24.0),
            ethanol: part(74.7),
            methanol: part(0.5),
            water: part(0.8),
            ..MixtureParts::default()
        };
        let base =
            HydrocarbonBase::default().with_finished_octane_of(Some(105.0), Some(89.0), &parts);
        let fuel = Mixture::from_parts(&parts, &base);
        assert!((fuel.ron().unwrap() - 105.0).abs() < 1e-9);
        assert!((fuel.mon().unwrap() - 89.0).abs() < 1e-9);
    }

    #[test]
    fn neat_ethanol_tells_nothing_of_a_base() {
        let base = HydrocarbonBase::default().with_finished_octane(Some(109.0), None, Share::ONE);
        assert_eq!((base.ron, base.mon), (None, None));
    }
}
