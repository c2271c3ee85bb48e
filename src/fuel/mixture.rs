//! A fuel as a sum of amounts.

use std::iter::Sum;
use std::marker::PhantomData;
use std::ops::{Add, AddAssign, Mul};

use crate::quantity::{AmountOfSubstance, Energy, Mass, Share, Volume};

use super::constituent::HydrocarbonBase;

const NO_VOLUME: Volume = Volume { dimension: PhantomData, units: PhantomData, value: 0.0 };
const NO_MASS: Mass = Mass { dimension: PhantomData, units: PhantomData, value: 0.0 };
const NO_MOLES: AmountOfSubstance =
    AmountOfSubstance { dimension: PhantomData, units: PhantomData, value: 0.0 };
const NO_ENERGY: Energy = Energy { dimension: PhantomData, units: PhantomData, value: 0.0 };

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
    pub(super) water: Volume,
}

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

impl Hydrocarbon {
    const NONE: Self = Self {
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

    fn new(volume: Volume, base: &HydrocarbonBase) -> Self {
        // No petrol has no octane to know: unknown times nothing is nothing.
        if volume <= NO_VOLUME {
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

    fn times(self, factor: f64) -> Self {
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

    fn plus(self, other: Self) -> Self {
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
fn amount(volume: Volume) -> Volume {
    if volume > NO_VOLUME { volume } else { NO_VOLUME }
}

impl Mixture {
    /// No fuel at all.
    pub const EMPTY: Self = Self {
        hydrocarbon: Hydrocarbon::NONE,
        ethanol: NO_VOLUME,
        methanol: NO_VOLUME,
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
            water: amount(parts.water),
        }
    }

    /// Volume at 15 degC, `V = sum of V_i`.
    pub fn volume(&self) -> Volume {
        self.hydrocarbon.volume + self.ethanol + self.methanol + self.water
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
/// or more; a negative one, or one that is not a number, leaves nothing.
impl Mul<f64> for Mixture {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        if factor > 0.0 {
            Self {
                hydrocarbon: self.hydrocarbon.times(factor),
                ethanol: self.ethanol * factor,
                methanol: self.methanol * factor,
                water: self.water * factor,
            }
        } else {
            Self::EMPTY
        }
    }
}
