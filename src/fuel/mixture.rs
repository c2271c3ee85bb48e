use std::iter::Sum;
use std::ops::{Add, Mul};

use uom::si::available_energy::{kilojoule_per_kilogram, megajoule_per_kilogram};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::volume::liter;

use super::constants as c;
use super::constituent::{Atoms, Constituent, HydrocarbonBase};
use crate::quantity::{Share, Volume};

/// What a constituent adds to a mixture, in units that add up: kg, mol, MJ, kJ.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Part {
    /// Litres at 15 degrees Celsius.
    pub(super) litres: f64,
    pub(super) kilograms: f64,
    pub(super) moles: f64,
    /// Moles of carbon, hydrogen and oxygen atoms.
    pub(super) carbon: f64,
    pub(super) hydrogen: f64,
    pub(super) oxygen: f64,
    /// MJ released when burned, water staying vapour.
    pub(super) heat: f64,
    /// kJ taken up when evaporated.
    pub(super) vaporisation: f64,
    /// Octane numbers weighted by moles; `None` when not known of a part.
    pub(super) ron_moles: Option<f64>,
    pub(super) mon_moles: Option<f64>,
}

impl Part {
    pub(super) const NOTHING: Self = Self {
        litres: 0.0,
        kilograms: 0.0,
        moles: 0.0,
        carbon: 0.0,
        hydrogen: 0.0,
        oxygen: 0.0,
        heat: 0.0,
        vaporisation: 0.0,
        ron_moles: Some(0.0),
        mon_moles: Some(0.0),
    };

    fn hydrocarbon(litres: f64, base: &HydrocarbonBase) -> Self {
        if litres == 0.0 {
            return Self::NOTHING;
        }
        let kilograms = litres * base.density_15.get::<kilogram_per_cubic_meter>() / 1000.0;
        let carbon = kilograms * 1000.0 / base.mass_per_carbon();
        let moles = litres * base.molar_density();
        Self {
            litres,
            kilograms,
            moles,
            carbon,
            hydrogen: carbon * base.hydrogen_to_carbon,
            oxygen: 0.0,
            heat: kilograms * base.lower_heating_value.get::<megajoule_per_kilogram>(),
            vaporisation: kilograms * base.heat_of_vaporisation.get::<kilojoule_per_kilogram>(),
            ron_moles: base.ron.map(|ron| ron * moles),
            mon_moles: base.mon.map(|mon| mon * moles),
        }
    }

    fn molecule(
        litres: f64,
        atoms: Atoms,
        [density, heat, vaporisation]: [f64; 3],
        [ron, mon]: [Option<f64>; 2],
    ) -> Self {
        if litres == 0.0 {
            return Self::NOTHING;
        }
        let kilograms = litres * density / 1000.0;
        let moles = kilograms * 1000.0 / atoms.molar_mass();
        // Water neither burns nor knocks: it carries no octane weight.
        let octane_moles = |number: Option<f64>| Some(number.map_or(0.0, |number| number * moles));
        Self {
            litres,
            kilograms,
            moles,
            carbon: moles * atoms.carbon,
            hydrogen: moles * atoms.hydrogen,
            oxygen: moles * atoms.oxygen,
            heat: kilograms * heat,
            vaporisation: kilograms * vaporisation,
            ron_moles: octane_moles(ron),
            mon_moles: octane_moles(mon),
        }
    }
}

impl Add for Part {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            litres: self.litres + other.litres,
            kilograms: self.kilograms + other.kilograms,
            moles: self.moles + other.moles,
            carbon: self.carbon + other.carbon,
            hydrogen: self.hydrogen + other.hydrogen,
            oxygen: self.oxygen + other.oxygen,
            heat: self.heat + other.heat,
            vaporisation: self.vaporisation + other.vaporisation,
            ron_moles: self.ron_moles.zip(other.ron_moles).map(|(a, b)| a + b),
            mon_moles: self.mon_moles.zip(other.mon_moles).map(|(a, b)| a + b),
        }
    }
}

impl Mul<f64> for Part {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self {
            litres: self.litres * by,
            kilograms: self.kilograms * by,
            moles: self.moles * by,
            carbon: self.carbon * by,
            hydrogen: self.hydrogen * by,
            oxygen: self.oxygen * by,
            heat: self.heat * by,
            vaporisation: self.vaporisation * by,
            ron_moles: self.ron_moles.map(|moles| moles * by),
            mon_moles: self.mon_moles.map(|moles| moles * by),
        }
    }
}

/// An amount of fuel as a sum of constituents.
///
/// Pouring together is `+`; burning, which keeps the ratio, is `* fraction`.
/// Whatever is asked of a mixture is derived from the sums, each on the basis
/// that its physics demands. Volumes are those at 15 degrees Celsius and are
/// taken as additive: real blends of petrol and ethanol expand by 0.1 to 0.4 %
/// on mixing (from memory), less than any gauge can tell.
///
/// ```
/// use fillwright::fuel::{HydrocarbonBase, Mixture};
/// use fillwright::quantity::{Share, Volume};
/// use uom::si::volume::liter;
/// let base = HydrocarbonBase::default();
/// let litres = |value| Volume::new::<liter>(value);
/// let tank = Mixture::splash(litres(15.0), Share::from_percent(10.0)?, &base)
///     + Mixture::splash(litres(32.0), Share::from_percent(85.0)?, &base)
///     + Mixture::splash(litres(13.0), Share::from_percent(10.0)?, &base);
/// assert!((tank.ethanol_share().unwrap().percent() - 50.0).abs() < 1e-9);
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Mixture {
    pub(super) hydrocarbon: Part,
    pub(super) ethanol: Part,
    pub(super) methanol: Part,
    pub(super) water: Part,
}

/// The volumes of a mixture's constituents at 15 degrees Celsius.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Volumes {
    /// Petrol without oxygenates.
    pub hydrocarbon: Volume,
    /// Ethanol.
    pub ethanol: Volume,
    /// Methanol.
    pub methanol: Volume,
    /// Water.
    pub water: Volume,
}

impl Mixture {
    /// Nothing.
    pub const EMPTY: Self = Self {
        hydrocarbon: Part::NOTHING,
        ethanol: Part::NOTHING,
        methanol: Part::NOTHING,
        water: Part::NOTHING,
    };

    /// Petrol with this share of ethanol.
    pub fn splash(volume: Volume, ethanol: Share, base: &HydrocarbonBase) -> Self {
        let of_ethanol = volume * ethanol.fraction();
        let parts =
            Volumes { hydrocarbon: volume - of_ethanol, ethanol: of_ethanol, ..Volumes::default() };
        Self::of(&parts, base)
    }

    /// A mixture of these volumes. Volumes below zero have no meaning and count
    /// as none.
    pub fn of(volumes: &Volumes, base: &HydrocarbonBase) -> Self {
        let litres = |volume: Volume| volume.get::<liter>().max(0.0);
        Self {
            hydrocarbon: Part::hydrocarbon(litres(volumes.hydrocarbon), base),
            ethanol: Part::molecule(
                litres(volumes.ethanol),
                Atoms::ETHANOL,
                [
                    c::ETHANOL_DENSITY.value,
                    c::ETHANOL_HEATING_VALUE.value,
                    c::ETHANOL_VAPORISATION.value,
                ],
                [Some(c::ETHANOL_RON.value), Some(c::ETHANOL_MON.value)],
            ),
            methanol: Part::molecule(
                litres(volumes.methanol),
                Atoms::METHANOL,
                [
                    c::METHANOL_DENSITY.value,
                    c::METHANOL_HEATING_VALUE.value,
                    c::METHANOL_VAPORISATION.value,
                ],
                [Some(c::METHANOL_RON.value), Some(c::METHANOL_MON.value)],
            ),
            water: Part::molecule(
                litres(volumes.water),
                Atoms::WATER,
                [c::WATER_DENSITY.value, 0.0, c::WATER_VAPORISATION.value],
                [None, None],
            ),
        }
    }

    /// All of it together.
    pub(super) fn total(&self) -> Part {
        self.hydrocarbon + self.ethanol + self.methanol + self.water
    }

    pub(super) fn part(&self, constituent: Constituent) -> &Part {
        match constituent {
            Constituent::Hydrocarbon => &self.hydrocarbon,
            Constituent::Ethanol => &self.ethanol,
            Constituent::Methanol => &self.methanol,
            Constituent::Water => &self.water,
        }
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
            hydrocarbon: self.hydrocarbon + other.hydrocarbon,
            ethanol: self.ethanol + other.ethanol,
            methanol: self.methanol + other.methanol,
            water: self.water + other.water,
        }
    }
}

impl Mul<f64> for Mixture {
    type Output = Self;
    /// So many times as much of it; a factor below zero has no meaning and
    /// counts as none.
    fn mul(self, by: f64) -> Self {
        let by = by.max(0.0);
        Self {
            hydrocarbon: self.hydrocarbon * by,
            ethanol: self.ethanol * by,
            methanol: self.methanol * by,
            water: self.water * by,
        }
    }
}

impl Sum for Mixture {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        parts.fold(Self::EMPTY, Add::add)
    }
}
