//! Density at a temperature other than 15 degrees Celsius.

use thiserror::Error;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::thermodynamic_temperature::degree_celsius;

use super::mixture::{Mixture, Part};
use crate::quantity::{MassDensity, ThermodynamicTemperature};
use crate::source::{Confidence, Source, SourceKind};

/// Petrol: the generalised coefficients.
pub const PETROL_EXPANSION: Source = Source {
    kind: SourceKind::Standard,
    citation: "ASTM D1250-80 / API MPMS 11.1, Table 54B, petrol 653 to 770 kg/m3: K0 346.4228, K1 0.4388",
    confidence: Confidence::Secondary,
};

/// Alcohols and water: tabulated densities.
pub const TABULATED_DENSITY: Source = Source {
    kind: SourceKind::Library,
    citation: "CoolProp 8.0.0, saturated or compressed liquid at 101.325 kPa",
    confidence: Confidence::Checked,
};

const K0: f64 = 346.4228;
const K1: f64 = 0.4388;
const PETROL_DENSITIES: std::ops::RangeInclusive<f64> = 653.0..=770.0;

/// The first temperature of the tables and their step, in degrees Celsius.
const TABLE_FROM: f64 = -20.0;
const TABLE_STEP: f64 = 10.0;
const TABLE_TO: f64 = 40.0;

/// kg/m3 from -20 to 40 degrees Celsius in steps of 10, and at 15 last.
struct Table {
    steps: [f64; 7],
    at_15: f64,
}

static ETHANOL: Table =
    Table { steps: [823.35, 814.88, 806.41, 797.94, 789.42, 780.82, 772.09], at_15: 793.69 };
static METHANOL: Table =
    Table { steps: [828.60, 819.13, 809.73, 800.37, 791.01, 781.63, 772.17], at_15: 795.69 };
static WATER: Table =
    Table { steps: [0.00, 0.00, 999.84, 999.70, 998.21, 995.65, 992.22], at_15: 999.10 };

/// Why a density cannot be given.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
pub enum DensityError {
    /// The temperature is outside the tables.
    #[error("{celsius} degC is outside the {TABLE_FROM} to {TABLE_TO} degC of the tables")]
    Temperature {
        /// The temperature given.
        celsius: f64,
    },
    /// Water freezes.
    #[error(
        "{celsius} degC: water as a separate constituent is tabulated from 0 degC; leave it out"
    )]
    WaterFrozen {
        /// The temperature given.
        celsius: f64,
    },
    /// The petrol base is outside the standard.
    #[error(
        "a petrol base of {density} kg/m3 is outside the 653 to 770 kg/m3 of ASTM D1250 Table 54B"
    )]
    PetrolBase {
        /// Its density at 15 degrees Celsius.
        density: f64,
    },
    /// There is nothing.
    #[error("an empty mixture has no density")]
    Empty,
}

impl Table {
    /// Density over that at 15 degrees Celsius, interpolated.
    fn ratio(&self, celsius: f64) -> f64 {
        let position = (celsius - TABLE_FROM) / TABLE_STEP;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "inside the table"
        )]
        let index = (position.floor() as usize).min(self.steps.len() - 2);
        let part = position - position.floor().min(5.0);
        (self.steps[index] + part * (self.steps[index + 1] - self.steps[index])) / self.at_15
    }
}

/// `VCF = exp(-a dT (1 + 0.8 a dT))`, `a = K0 / rho^2 + K1 / rho`.
fn petrol_ratio(density_15: f64, celsius: f64) -> f64 {
    let alpha = K0 / density_15.powi(2) + K1 / density_15;
    let step = celsius - 15.0;
    (-alpha * step * (1.0 + 0.8 * alpha * step)).exp()
}

impl Mixture {
    /// Density at a temperature from -20 to 40 degrees Celsius, each constituent
    /// expanding by itself.
    ///
    /// # Errors
    /// Outside the range of the tables or of the standard, or when empty.
    pub fn density_at(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<MassDensity, DensityError> {
        let celsius = temperature.get::<degree_celsius>();
        if !(TABLE_FROM..=TABLE_TO).contains(&celsius) {
            return Err(DensityError::Temperature { celsius });
        }
        if self.water.litres > 0.0 && celsius < 0.0 {
            return Err(DensityError::WaterFrozen { celsius });
        }
        let mut litres = 0.0;
        if self.hydrocarbon.litres > 0.0 {
            let density = self.hydrocarbon.kilograms / self.hydrocarbon.litres * 1000.0;
            if !PETROL_DENSITIES.contains(&density) {
                return Err(DensityError::PetrolBase { density });
            }
            litres += self.hydrocarbon.litres / petrol_ratio(density, celsius);
        }
        let expanded = |part: &Part, table: &Table| part.litres / table.ratio(celsius);
        litres += expanded(&self.ethanol, &ETHANOL);
        litres += expanded(&self.methanol, &METHANOL);
        if self.water.litres > 0.0 {
            litres += expanded(&self.water, &WATER);
        }
        if litres > 0.0 {
            let density = self.total().kilograms * 1000.0 / litres;
            Ok(MassDensity::new::<kilogram_per_cubic_meter>(density))
        } else {
            Err(DensityError::Empty)
        }
    }
}
