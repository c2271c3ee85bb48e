//! What a fuel system needs to know of a fuel.

use uom::si::dynamic_viscosity::millipascal_second;
use uom::si::volume::liter;

use crate::fuel::{HydrocarbonBase, Mixture};
use crate::quantity::{DynamicViscosity, MassDensity, Share, SpecificEnergy, Volume};

use super::constants as c;

/// What a fuel system needs to know of a fuel.
///
/// ```
/// use fillwright::hardware::FuelProperties;
/// use fillwright::quantity::Share;
/// let petrol = FuelProperties::of_share(Share::ZERO);
/// let e85 = FuelProperties::of_share(Share::from_percent(85.0)?);
/// // Averaged by mass; by volume it would be 0.4 % more.
/// assert!((e85.stoichiometric_afr - 9.78).abs() < 0.02);
/// assert!(e85.viscosity > petrol.viscosity * 2.0);
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FuelProperties {
    /// Density of the liquid, rho.
    pub density: MassDensity,
    /// Mass of air for each mass of fuel at lambda 1.
    pub stoichiometric_afr: f64,
    /// Heat of combustion of the liquid for each mass, the water leaving as vapour.
    pub lower_heating_value: SpecificEnergy,
    /// Dynamic viscosity, mu.
    pub viscosity: DynamicViscosity,
}

impl FuelProperties {
    /// A blend of the default petrol and ethanol: density at 15 degC, air and
    /// heating value by mass from [`Mixture`], viscosity by
    /// [`VISCOSITY_RULE`](super::constants::VISCOSITY_RULE).
    pub fn of_share(share: Share) -> Self {
        let litre = Volume::new::<liter>(1.0);
        Self::of_mixture(&Mixture::splash(litre, share, &HydrocarbonBase::default()))
    }

    /// Of a fuel of any constituents; not of an empty one. The viscosity goes by its
    /// ethanol alone: what else there is beside petrol is little.
    pub fn of_mixture(fuel: &Mixture) -> Self {
        Self {
            density: fuel.mass() / fuel.volume(),
            stoichiometric_afr: (fuel.stoichiometric_air() / fuel.mass()).into(),
            lower_heating_value: fuel.energy() / fuel.mass(),
            viscosity: viscosity(fuel.ethanol_share().unwrap_or_default()),
        }
    }
}

/// `ln mu = v ln mu_e + (1 - v) ln mu_g`.
fn viscosity(share: Share) -> DynamicViscosity {
    let ratio = c::ETHANOL_VISCOSITY.value / c::PETROL_VISCOSITY.value;
    DynamicViscosity::new::<millipascal_second>(
        c::PETROL_VISCOSITY.value * ratio.powf(share.fraction()),
    )
}
