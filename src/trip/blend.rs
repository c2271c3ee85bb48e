//! What a litre of a blend is worth on the road and to the octane number.

use uom::si::f64::MolarConcentration;
use uom::si::volume::liter;

use crate::fuel::{EnergyDensity, HydrocarbonBase, Mixture, MolarDensity};
use crate::quantity::{Share, Volume};

/// Energy and moles of a litre of petrol base and of ethanol.
///
/// Both are linear in the ethanol share by volume, so a tank's energy and octane
/// are sums over what was poured. The default follows from the fuel model's
/// constants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BlendModel {
    /// Lower heating value of the petrol base by volume; above zero.
    pub petrol_energy: EnergyDensity,
    /// Lower heating value of ethanol by volume; above zero, at most that of petrol.
    pub ethanol_energy: EnergyDensity,
    /// Moles in a litre of each.
    pub moles: MolarDensity,
    /// The petrol base, for the air that a blend needs.
    pub base: HydrocarbonBase,
}

impl BlendModel {
    /// The fuel model's own figures for this petrol base.
    pub fn of_base(base: HydrocarbonBase) -> Self {
        let energy = |share| {
            let fuel = Mixture::splash(Volume::new::<liter>(1.0), share, &base);
            EnergyDensity::new(fuel.energy(), fuel.volume())
        };
        Self {
            petrol_energy: energy(Share::ZERO),
            ethanol_energy: energy(Share::ONE),
            moles: MolarDensity::of_base(&base),
            base,
        }
    }

    /// Lower heating value by volume, `h(e) = h_g - (h_g - h_e) e`.
    pub fn energy_density(&self, share: Share) -> EnergyDensity {
        let litre = Volume::new::<liter>(1.0);
        let (petrol, ethanol) = (self.petrol_energy.of(litre), self.ethanol_energy.of(litre));
        EnergyDensity::new(petrol - (petrol - ethanol) * share.fraction(), litre)
    }

    /// Moles by volume, `n(e) = n_g (1 - e) + n_e e`.
    pub fn moles_per_volume(&self, share: Share) -> MolarConcentration {
        self.moles.of_share(share)
    }
}

impl Default for BlendModel {
    fn default() -> Self {
        Self::of_base(HydrocarbonBase::default())
    }
}
