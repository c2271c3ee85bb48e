//! What is in the tank, as sums: pouring adds, burning scales.

use uom::si::volume::liter;

use crate::fuel::{Extras, Mean};
use crate::quantity::{Band, Share, Volume};

use super::blend::BlendModel;

/// Litres, litres of ethanol, megajoules, and the octane number by moles.
///
/// Burning takes from all alike, so every ratio stays as it is along a leg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Amounts {
    pub(super) volume: f64,
    pub(super) ethanol: f64,
    pub(super) energy: f64,
    /// Of the octane numbers of the finished fuels, by moles.
    octane: Mean,
    /// What is there beside petrol and ethanol.
    extras: Beside,
}

/// Litres of water, methanol and ethers: at least, as expected and at most.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Beside([[f64; 3]; 3]);

impl Beside {
    fn of(litres: f64, extras: &Extras) -> Self {
        let kind = |band: &Band<Share>| {
            [band.low(), band.expected(), band.high()].map(|share| share.fraction() * litres)
        };
        Self([kind(&extras.water), kind(&extras.methanol), kind(&extras.ethers)])
    }

    fn plus(self, other: Self) -> Self {
        let sum = |a: [f64; 3], b: [f64; 3]| [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
        let (a, b) = (self.0, other.0);
        Self([sum(a[0], b[0]), sum(a[1], b[1]), sum(a[2], b[2])])
    }

    fn times(self, factor: f64) -> Self {
        Self(self.0.map(|kind| kind.map(|litres| litres * factor)))
    }
}

impl Amounts {
    /// So many litres of one fuel.
    pub(super) fn of(
        blend: &BlendModel,
        volume: Volume,
        (share, extras): (Share, &Extras),
        ron: Option<f64>,
    ) -> Self {
        let litres = volume.get::<liter>();
        let moles = litres * blend.moles.per_litre(share.fraction());
        Self {
            volume: litres,
            ethanol: share.fraction() * litres,
            energy: blend.energy_density(share).megajoules_per_liter() * litres,
            octane: Mean::of(moles, ron),
            extras: Beside::of(litres, extras),
        }
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            volume: self.volume + other.volume,
            ethanol: self.ethanol + other.ethanol,
            energy: self.energy + other.energy,
            octane: self.octane.plus(other.octane),
            extras: self.extras.plus(other.extras),
        }
    }

    pub(super) fn times(self, factor: f64) -> Self {
        Self {
            volume: self.volume * factor,
            ethanol: self.ethanol * factor,
            energy: self.energy * factor,
            octane: self.octane.times(factor),
            extras: self.extras.times(factor),
        }
    }

    /// Ethanol by volume; none of an empty tank.
    pub(super) fn share(&self) -> Option<Share> {
        (self.volume > 0.0).then(|| Share::clamped(self.ethanol / self.volume))
    }

    /// What there is beside petrol and ethanol; none of an empty tank.
    pub(super) fn extras(&self) -> Option<Extras> {
        if self.volume <= 0.0 {
            return None;
        }
        let share = |litres: f64| Share::clamped(litres / self.volume);
        let band = |[low, expected, high]: [f64; 3]| {
            Band::at_ends(share(low), share(expected), share(high))
        };
        let [water, methanol, ethers] = self.extras.0.map(band);
        Some(Extras { water, methanol, ethers })
    }

    /// Research octane number, at least: the mean by moles of the finished fuels.
    pub(super) fn ron(&self) -> Option<f64> {
        self.octane.value()
    }
}
