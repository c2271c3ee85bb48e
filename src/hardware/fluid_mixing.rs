//! How to mix an injection fluid from a stronger one and water.

use thiserror::Error;
use uom::si::mass::kilogram;

use crate::quantity::{Mass, Volume};

use super::injection_fluid::MethanolWater;

/// Why a fluid cannot be mixed.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum MixError {
    /// There is nothing to mix.
    Amount {
        /// The amount given, in kg.
        given: f64,
    },
    /// The concentrate is weaker than what is wanted.
    TooWeak {
        /// The strength wanted, by mass.
        given: f64,
        /// The strongest that the concentrate gives, by mass.
        allowed: f64,
    },
}

/// How much fluid is wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wanted {
    /// So much volume when mixed, at 20 degC.
    Volume(Volume),
    /// So much mass.
    Mass(Mass),
}

/// What to pour together, at 20 degC. By mass it comes out right at any temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Recipe {
    /// Volume of the concentrate.
    pub concentrate: Volume,
    /// Mass of the concentrate.
    pub concentrate_mass: Mass,
    /// Volume of water.
    pub water: Volume,
    /// Mass of water.
    pub water_mass: Mass,
    /// By how much the two volumes exceed that of the mixture.
    pub contraction: Volume,
}

/// What to pour together for an amount of fluid of a strength.
///
/// ```
/// use fillwright::hardware::{MethanolWater, Wanted, recipe};
/// use fillwright::quantity::Volume;
/// use uom::si::volume::liter;
/// let ten = Wanted::Volume(Volume::new::<liter>(10.0));
/// let half = MethanolWater::of_volume_share(0.5)?;
/// let recipe = recipe(ten, half, MethanolWater::METHANOL)?;
/// // Five litres of each would fill 9.65 L only.
/// assert!((recipe.concentrate.get::<liter>() - 5.18).abs() < 0.01);
/// assert!((recipe.contraction.get::<liter>() - 0.36).abs() < 0.01);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// When nothing is wanted, or the concentrate is too weak.
pub fn recipe(
    wanted: Wanted,
    strength: MethanolWater,
    concentrate: MethanolWater,
) -> Result<Recipe, MixError> {
    let mass: Mass = match wanted {
        Wanted::Volume(volume) => volume * strength.density(),
        Wanted::Mass(mass) => mass,
    };
    let given = mass.get::<kilogram>();
    if !(given > 0.0 && given.is_finite()) {
        return Err(MixError::Amount { given });
    }
    let (given, allowed) = (strength.mass_share(), concentrate.mass_share());
    if given > allowed {
        return Err(MixError::TooWeak { given, allowed });
    }
    // Water is made of nothing but water, whatever the concentrate.
    let part = if given > 0.0 { given / allowed } else { 0.0 };
    let (concentrate_mass, water_mass) = (mass * part, mass * (1.0 - part));
    let poured = concentrate_mass / concentrate.density();
    let water = water_mass / MethanolWater::WATER.density();
    let contraction = poured + water - mass / strength.density();
    Ok(Recipe { concentrate: poured, concentrate_mass, water, water_mass, contraction })
}
