//! Water and methanol, injected beside the fuel.

use thiserror::Error;
use uom::si::available_energy::kilojoule_per_kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::volume::liter;

use crate::fuel::constants::{METHANOL_VAPORISATION, WATER_VAPORISATION};
use crate::fuel::{HydrocarbonBase, Mixture, MixtureParts};
use crate::message::keys::practice as words;
use crate::quantity::{GaugePressure, MassDensity, MassRate, SpecificEnergy, Volume};
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};

use super::nozzle::RatedFlow;
use super::table::locate;

/// Why a number is no share of methanol.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct FluidError {
    /// The share given, as a fraction.
    pub given: f64,
}

/// Densities of methanol in water at 20 degC over the mass share of methanol, in
/// kg/m3. The volumes do not add up: half and half shrinks by 3.5 %.
pub static METHANOL_WATER_DENSITIES: Sourced<&[(f64, f64)]> = Sourced {
    value: &[
        (0.00, 998.21),
        (0.05, 989.45),
        (0.10, 981.54),
        (0.15, 974.11),
        (0.20, 966.79),
        (0.25, 959.29),
        (0.30, 951.48),
        (0.35, 943.25),
        (0.40, 934.57),
        (0.45, 925.41),
        (0.50, 915.72),
        (0.55, 905.42),
        (0.60, 894.36),
        (0.70, 871.5),
        (0.80, 846.9),
        (0.90, 820.2),
        (1.00, 791.01),
    ],
    source: Source {
        kind: SourceKind::FromMemory,
        citation: Citation::WithCaveat(words::METHANOL_WATER_DENSITIES),
        confidence: Confidence::Weak,
    },
};

/// A mixture of methanol and water at 20 degC.
///
/// Its strength may be meant by volume or by mass, which differ: 50 % by volume is
/// 44 % by mass. A volume share counts the volumes before mixing.
///
/// ```
/// use fillwright::hardware::MethanolWater;
/// let fluid = MethanolWater::of_volume_share(0.5)?;
/// assert!((fluid.mass_share() - 0.442).abs() < 1e-3);
/// assert!(MethanolWater::of_mass_share(0.5)?.volume_share() > 0.55);
/// assert!(MethanolWater::of_volume_share(50.0).is_err());
/// # Ok::<(), fillwright::hardware::FluidError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct MethanolWater {
    mass_share: f64,
}

impl MethanolWater {
    /// Water alone.
    pub const WATER: Self = Self { mass_share: 0.0 };
    /// Methanol alone.
    pub const METHANOL: Self = Self { mass_share: 1.0 };

    /// From the share of methanol by mass, 0 to 1.
    ///
    /// # Errors
    /// When the share is outside that range.
    pub fn of_mass_share(share: f64) -> Result<Self, FluidError> {
        checked(share).map(|mass_share| Self { mass_share })
    }

    /// From the share of methanol by volume, both measured before mixing, 0 to 1.
    ///
    /// # Errors
    /// When the share is outside that range.
    pub fn of_volume_share(share: f64) -> Result<Self, FluidError> {
        let share = checked(share)?;
        let methanol = share * kilograms_per_cubic_meter(Self::METHANOL);
        Ok(Self {
            mass_share: methanol
                / (methanol + (1.0 - share) * kilograms_per_cubic_meter(Self::WATER)),
        })
    }

    /// Share of methanol by mass, 0 to 1.
    pub fn mass_share(self) -> f64 {
        self.mass_share
    }

    /// Share of methanol by volume, both measured before mixing, 0 to 1.
    pub fn volume_share(self) -> f64 {
        let methanol = self.mass_share / kilograms_per_cubic_meter(Self::METHANOL);
        methanol / (methanol + (1.0 - self.mass_share) / kilograms_per_cubic_meter(Self::WATER))
    }

    /// Density at 20 degC, with the contraction on mixing.
    pub fn density(self) -> MassDensity {
        MassDensity::new::<kilogram_per_cubic_meter>(kilograms_per_cubic_meter(self))
    }

    /// Heat of combustion of the methanol in each mass of fluid. What the water takes
    /// to evaporate is not taken off: it is counted as cooling.
    pub fn lower_heating_value(self) -> SpecificEnergy {
        let methanol = methanol();
        methanol.energy() / methanol.mass() * self.mass_share
    }

    /// Mass of air that burns the methanol in each mass of fluid.
    pub fn stoichiometric_air(self) -> f64 {
        let methanol = methanol();
        let air: f64 = (methanol.stoichiometric_air() / methanol.mass()).into();
        air * self.mass_share
    }

    /// Heat that evaporates each mass of fluid, at 25 degC.
    pub fn heat_of_vaporisation(self) -> SpecificEnergy {
        let heat = |kilojoules| SpecificEnergy::new::<kilojoule_per_kilogram>(kilojoules);
        heat(METHANOL_VAPORISATION.value) * self.mass_share
            + heat(WATER_VAPORISATION.value) * (1.0 - self.mass_share)
    }
}

fn checked(share: f64) -> Result<f64, FluidError> {
    if (0.0..=1.0).contains(&share) { Ok(share) } else { Err(FluidError { given: share }) }
}

/// Density in kg/m3. A share is always inside the table.
fn kilograms_per_cubic_meter(fluid: MethanolWater) -> f64 {
    let table = METHANOL_WATER_DENSITIES.value;
    locate(table, fluid.mass_share, |row| row.0).map_or(f64::NAN, |(below, above, part)| {
        table[below].1 + (table[above].1 - table[below].1) * part
    })
}

fn methanol() -> Mixture {
    let parts = MixtureParts { methanol: Volume::new::<liter>(1.0), ..MixtureParts::default() };
    Mixture::from_parts(&parts, &HydrocarbonBase::default())
}

/// Nozzles that spray the fluid into the charge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FluidNozzle {
    /// How many.
    pub count: u32,
    /// What one passes.
    pub rated: RatedFlow,
    /// Pressure of the pump.
    pub pump: GaugePressure,
    /// The fluid.
    pub fluid: MethanolWater,
}

impl FluidNozzle {
    /// What all of them pass into a manifold: boost works against the pump.
    pub fn flow(&self, manifold: GaugePressure) -> MassRate {
        let difference = self.pump.get() - manifold.get();
        self.rated.mass_flow(difference, self.fluid.density()) * f64::from(self.count)
    }
}
