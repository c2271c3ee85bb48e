//! What is in the tank, as sums: pouring adds, burning scales.

use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

use crate::quantity::{Share, Volume};

use super::blend::BlendModel;

/// Litres, litres of ethanol, megajoules, moles, and moles times octane number.
///
/// Burning takes from all alike, so every ratio stays as it is along a leg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Amounts {
    pub(super) volume: f64,
    pub(super) ethanol: f64,
    pub(super) energy: f64,
    pub(super) moles: f64,
    /// None as soon as the octane number of a part is unknown.
    pub(super) octane: Option<f64>,
}

impl Amounts {
    /// So many litres of one fuel.
    pub(super) fn of(blend: &BlendModel, volume: Volume, share: Share, ron: Option<f64>) -> Self {
        let litres = volume.get::<liter>();
        let moles = blend.moles_per_volume(share).get::<mole_per_liter>() * litres;
        // Nothing of an unknown octane number makes nothing unknown.
        let octane = if litres > 0.0 { ron.map(|ron| ron * moles) } else { Some(0.0) };
        Self {
            volume: litres,
            ethanol: share.fraction() * litres,
            energy: blend.energy_density(share).megajoules_per_liter() * litres,
            moles,
            octane,
        }
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            volume: self.volume + other.volume,
            ethanol: self.ethanol + other.ethanol,
            energy: self.energy + other.energy,
            moles: self.moles + other.moles,
            octane: self.octane.zip(other.octane).map(|(a, b)| a + b),
        }
    }

    pub(super) fn times(self, factor: f64) -> Self {
        Self {
            volume: self.volume * factor,
            ethanol: self.ethanol * factor,
            energy: self.energy * factor,
            moles: self.moles * factor,
            octane: self.octane.map(|octane| octane * factor),
        }
    }

    /// Ethanol by volume; none of an empty tank.
    pub(super) fn share(&self) -> Option<Share> {
        (self.volume > 0.0).then(|| Share::clamped(self.ethanol / self.volume))
    }

    /// Research octane number, at least: the mean by moles of the finished fuels.
    pub(super) fn ron(&self) -> Option<f64> {
        (self.moles > 0.0).then_some(self.octane? / self.moles)
    }
}
