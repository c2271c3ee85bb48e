//! A fuel as a sum of amounts.

use std::iter::Sum;
use std::ops::{Add, AddAssign, Mul};

use crate::quantity::{Share, Volume};

use super::constituent::HydrocarbonBase;
use super::hydrocarbon::{Hydrocarbon, NO_VOLUME, amount};

/// An amount of fuel, held as amounts that add up when fuels are poured together:
/// litres at 15 degC of each constituent, and for the petrol base also its mass,
/// moles, elements, energy and octane by moles.
///
/// Filling is `+`; burning is `*` by the fraction that is left. What is not
/// additive (density, air-fuel ratio, octane) is derived when asked for, each on
/// the basis that its physics demands. Volumes are taken as additive: real blends
/// come out up to about 0.4 % larger (from memory), which no gauge shows.
///
/// ```
/// use fillwright::fuel::{HydrocarbonBase, Mixture};
/// use fillwright::quantity::{Share, Volume};
/// use uom::si::volume::liter;
/// let base = HydrocarbonBase::default();
/// let e10 = Mixture::splash(Volume::new::<liter>(10.0), Share::from_percent(10.0)?, &base);
/// let e85 = Mixture::splash(Volume::new::<liter>(10.0), Share::from_percent(85.0)?, &base);
/// let tank = e10 * 0.5 + e85;
/// assert!((tank.volume().get::<liter>() - 15.0).abs() < 1e-9);
/// assert_eq!(tank.ethanol_share(), Some(Share::from_percent(60.0)?));
/// assert_eq!(Mixture::EMPTY.ethanol_share(), None);
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mixture {
    pub(super) hydrocarbon: Hydrocarbon,
    pub(super) ethanol: Volume,
    pub(super) methanol: Volume,
    pub(super) mtbe: Volume,
    pub(super) etbe: Volume,
    pub(super) water: Volume,
}

/// How much of each constituent a fuel holds, as volumes at 15 degC.
///
/// ```
/// use fillwright::fuel::{HydrocarbonBase, Mixture, MixtureParts};
/// use fillwright::quantity::Volume;
/// use uom::si::volume::liter;
/// let hydrous = MixtureParts {
///     ethanol: Volume::new::<liter>(95.0),
///     water: Volume::new::<liter>(5.0),
///     ..MixtureParts::default()
/// };
/// let fuel = Mixture::from_parts(&hydrous, &HydrocarbonBase::default());
/// assert!((fuel.volume().get::<liter>() - 100.0).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MixtureParts {
    /// Volume of the petrol base.
    pub hydrocarbon: Volume,
    /// Volume of ethanol.
    pub ethanol: Volume,
    /// Volume of methanol.
    pub methanol: Volume,
    /// Volume of methyl tert-butyl ether.
    pub mtbe: Volume,
    /// Volume of ethyl tert-butyl ether.
    pub etbe: Volume,
    /// Volume of water.
    pub water: Volume,
}

impl MixtureParts {
    /// The parts of a fuel that is only petrol base and ethanol.
    pub fn splash(volume: Volume, ethanol: Share) -> Self {
        Self {
            hydrocarbon: volume * (1.0 - ethanol.fraction()),
            ethanol: volume * ethanol.fraction(),
            ..Self::default()
        }
    }
}

impl Mixture {
    /// No fuel at all.
    pub const EMPTY: Self = Self {
        hydrocarbon: Hydrocarbon::NONE,
        ethanol: NO_VOLUME,
        methanol: NO_VOLUME,
        mtbe: NO_VOLUME,
        etbe: NO_VOLUME,
        water: NO_VOLUME,
    };

    /// A fuel of petrol base and ethanol, with the volume at 15 degC.
    ///
    /// A negative volume counts as none.
    pub fn splash(volume: Volume, ethanol: Share, base: &HydrocarbonBase) -> Self {
        Self::from_parts(&MixtureParts::splash(volume, ethanol), base)
    }

    /// A fuel from the volume of each constituent at 15 degC.
    ///
    /// A negative volume counts as none.
    pub fn from_parts(parts: &MixtureParts, base: &HydrocarbonBase) -> Self {
        Self {
            hydrocarbon: Hydrocarbon::new(parts.hydrocarbon, base),
            ethanol: amount(parts.ethanol),
            methanol: amount(parts.methanol),
            mtbe: amount(parts.mtbe),
            etbe: amount(parts.etbe),
            water: amount(parts.water),
        }
    }

    /// Volume at 15 degC, `V = sum of V_i`.
    pub fn volume(&self) -> Volume {
        self.hydrocarbon.volume + self.ethanol + self.methanol + self.mtbe + self.etbe + self.water
    }

    /// Whether there is no fuel.
    pub fn is_empty(&self) -> bool {
        self.volume() <= NO_VOLUME
    }

    /// Volume share of ethanol alone, `v = V_e / V`, at 15 degC; none when empty.
    pub fn ethanol_share(&self) -> Option<Share> {
        (!self.is_empty()).then(|| Share::clamped((self.ethanol / self.volume()).into()))
    }

    /// The same fuel in another amount; none when empty, as there is nothing to
    /// take the ratios from.
    pub fn resized(self, volume: Volume) -> Option<Self> {
        (!self.is_empty()).then(|| self * f64::from(volume / self.volume()))
    }
}

impl Default for Mixture {
    fn default() -> Self {
        Self::EMPTY
    }
}

impl Add for Mixture {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            hydrocarbon: self.hydrocarbon.plus(other.hydrocarbon),
            ethanol: self.ethanol + other.ethanol,
            methanol: self.methanol + other.methanol,
            mtbe: self.mtbe + other.mtbe,
            etbe: self.etbe + other.etbe,
            water: self.water + other.water,
        }
    }
}

impl AddAssign for Mixture {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl Sum for Mixture {
    fn sum<I: Iterator<Item = Self>>(fuels: I) -> Self {
        fuels.fold(Self::EMPTY, Add::add)
    }
}

impl<'a> Sum<&'a Mixture> for Mixture {
    fn sum<I: Iterator<Item = &'a Self>>(fuels: I) -> Self {
        fuels.copied().sum()
    }
}

/// Keeps every ratio: what is left after burning or draining. The factor is zero
/// or more; a negative one, or one that is not finite, leaves nothing.
impl Mul<f64> for Mixture {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        if factor > 0.0 && factor.is_finite() {
            Self {
                hydrocarbon: self.hydrocarbon.times(factor),
                ethanol: self.ethanol * factor,
                methanol: self.methanol * factor,
                mtbe: self.mtbe * factor,
                etbe: self.etbe * factor,
                water: self.water * factor,
            }
        } else {
            Self::EMPTY
        }
    }
}

#[cfg(test)]
#[allow(clippy::panic)]
mod tests {
    use super::*;
    use uom::si::volume::liter;

    fn liters(volume: f64) -> Volume {
        Volume::new::<liter>(volume)
    }

    fn e30(ron: Option<f64>) -> Mixture {
        let base = HydrocarbonBase { ron, ..HydrocarbonBase::default() };
        Mixture::splash(liters(30.0), Share::clamped(0.3), &base)
    }

    #[test]
    fn nothing_added_changes_nothing() {
        for fuel in [e30(None), e30(Some(91.0)), Mixture::EMPTY] {
            assert_eq!(fuel + Mixture::EMPTY, fuel);
            assert_eq!(Mixture::EMPTY + fuel, fuel);
        }
    }

    #[test]
    fn an_unknown_octane_stays_unknown_until_the_petrol_is_gone() {
        let ethanol = Mixture::splash(liters(5.0), Share::ONE, &HydrocarbonBase::default());
        assert_eq!((e30(None) + e30(Some(91.0))).ron(), None);
        assert!((e30(Some(91.0)) + ethanol).ron().is_some());
        assert_eq!((e30(None) * 0.0 + ethanol).ron(), ethanol.ron());
    }

    #[test]
    fn a_factor_that_makes_no_sense_leaves_nothing() {
        for factor in [-1.0, f64::NAN, f64::INFINITY, 0.0] {
            assert_eq!(e30(None) * factor, Mixture::EMPTY);
        }
    }

    #[test]
    fn a_volume_that_makes_no_sense_counts_as_none() {
        for volume in [-1.0, f64::NAN] {
            let fuel =
                Mixture::splash(liters(volume), Share::clamped(0.3), &HydrocarbonBase::default());
            assert_eq!(fuel, Mixture::EMPTY);
        }
    }

    #[test]
    fn another_amount_keeps_the_ratios() {
        let resized = e30(Some(91.0)).resized(liters(7.0)).map(|fuel| {
            (fuel.volume().get::<liter>(), fuel.ethanol_share().map(Share::percent), fuel.ron())
        });
        let Some((volume, Some(percent), Some(ron))) = resized else { panic!("{resized:?}") };
        assert!((volume - 7.0).abs() < 1e-12);
        assert!((percent - 30.0).abs() < 1e-12);
        assert!((ron - e30(Some(91.0)).ron().unwrap_or_default()).abs() < 1e-9);
        assert_eq!(Mixture::EMPTY.resized(liters(1.0)), None);
    }

    #[test]
    fn nothing_is_known_of_an_empty_tank() {
        let empty = Mixture::EMPTY;
        assert!(empty.is_empty());
        assert_eq!(empty.density_15(), None);
        assert_eq!(empty.lower_heating_value(), None);
        assert_eq!(empty.ron(), None);
        assert_eq!(empty.fuel_volume_multiplier(&e30(None)), None);
        assert_eq!(empty.hydrogen_to_carbon(), None);
    }
}
