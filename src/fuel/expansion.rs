//! How the constituents expand with temperature: volume correction factors.
//!
//! A volume correction factor is `VCF(T) = rho(T) / rho(15 degC) = V(15 degC) / V(T)`.

use thiserror::Error;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::quantity::{MassDensity, ThermodynamicTemperature};
use crate::source::{Citation, Confidence, Source, SourceKind};

use super::constants as c;
use super::constituent::Constituent;

/// Why a density at a temperature is not known.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
pub enum DensityError {
    /// There is no fuel.
    #[error("an empty tank has no density: add fuel first")]
    Empty,
    /// The temperature is outside the range of the data.
    #[error(
        "the density of {constituent:?} at {given:.1} degC is not known: give a temperature from \
         {low:.0} to {high:.0} degC"
    )]
    Temperature {
        /// The constituent that has no data.
        constituent: Constituent,
        /// The temperature that was given, in degC.
        given: f64,
        /// The lowest temperature with data, in degC.
        low: f64,
        /// The highest temperature with data, in degC.
        high: f64,
    },
    /// The petrol base is lighter or heavier than the expansion rule is stated for.
    #[error(
        "the thermal expansion of a petrol base of {given:.0} kg/m3 is not known: give a density \
         at 15 degC from {low:.0} to {high:.0} kg/m3"
    )]
    PetrolDensity {
        /// The density that was given, in kg/m3.
        given: f64,
        /// The lowest density of the rule, in kg/m3.
        low: f64,
        /// The highest density of the rule, in kg/m3.
        high: f64,
    },
}

/// Densities of a pure liquid at equal steps of temperature, read with straight
/// lines between them (which costs less than 0.06 kg/m3).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DensityTable {
    /// The liquid.
    pub constituent: Constituent,
    /// Temperature of the first value, in degC.
    pub first: f64,
    /// Step of temperature from value to value, in K.
    pub step: f64,
    /// Densities in kg/m3 at 101.325 kPa.
    pub densities: &'static [f64],
    /// Where they come from.
    pub source: Source,
}

const EQUATION_OF_STATE: Source = Source {
    kind: SourceKind::Library,
    citation: Citation::Published("CoolProp 8.0.0, PropsSI('D', 'T', t, 'P', 101325, fluid)"),
    confidence: Confidence::Checked,
};

/// Densities of ethanol from -20 to 60 degC.
pub static ETHANOL_DENSITIES: DensityTable = DensityTable {
    constituent: Constituent::Ethanol,
    first: -20.0,
    step: 5.0,
    densities: &[
        823.35, 819.11, 814.88, 810.65, 806.41, 802.18, 797.94, 793.69, 789.42, 785.13, 780.82,
        776.47, 772.09, 767.66, 763.19, 758.65, 754.05,
    ],
    source: EQUATION_OF_STATE,
};

/// Densities of methanol from -20 to 60 degC.
pub static METHANOL_DENSITIES: DensityTable = DensityTable {
    constituent: Constituent::Methanol,
    first: -20.0,
    step: 5.0,
    densities: &[
        828.60, 823.86, 819.13, 814.42, 809.73, 805.05, 800.37, 795.69, 791.01, 786.33, 781.63,
        776.91, 772.17, 767.39, 762.58, 757.72, 752.81,
    ],
    source: EQUATION_OF_STATE,
};

/// Densities of water from 0 to 60 degC; the first value is that of the liquid
/// just above freezing.
pub static WATER_DENSITIES: DensityTable = DensityTable {
    constituent: Constituent::Water,
    first: 0.0,
    step: 5.0,
    densities: &[
        999.84, 999.97, 999.70, 999.10, 998.21, 997.05, 995.65, 994.03, 992.22, 990.21, 988.04,
        985.69, 983.20,
    ],
    source: EQUATION_OF_STATE,
};

impl DensityTable {
    /// Volume correction factor to 15 degC.
    ///
    /// # Errors
    /// When the temperature is outside the table or not a number.
    pub fn volume_correction_factor(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<f64, DensityError> {
        let celsius = temperature.get::<degree_celsius>();
        // A last place lost between kelvin and Celsius must not shut out the ends.
        let at = (self.read(celsius), self.read(REFERENCE_CELSIUS));
        if let (Some(density), Some(reference)) = at {
            Ok(density / reference)
        } else {
            Err(DensityError::Temperature {
                constituent: self.constituent,
                given: celsius,
                low: self.first,
                high: self.last(),
            })
        }
    }

    /// Temperature of the last value, in degC.
    fn last(&self) -> f64 {
        self.densities.iter().skip(1).fold(self.first, |celsius, _| celsius + self.step)
    }

    fn read(&self, celsius: f64) -> Option<f64> {
        if !(self.first - ROUNDING..=self.last() + ROUNDING).contains(&celsius) {
            return None;
        }
        let mut start = self.first;
        for (low, high) in self.densities.iter().zip(self.densities.iter().skip(1)) {
            if celsius <= start + self.step + ROUNDING {
                return Some(low + (high - low) * (celsius - start) / self.step);
            }
            start += self.step;
        }
        None
    }
}

/// The temperature that volumes are meant at, in degC.
const REFERENCE_CELSIUS: f64 = 15.0;
/// What a temperature may lose on its way through kelvin.
const ROUNDING: f64 = 1e-9;

/// Thermal expansion of petrol at 15 degC, `alpha = K0 / rho^2 + K1 / rho`, in 1/K.
pub fn petrol_expansion(density_15: MassDensity) -> f64 {
    let density = density_15.get::<kilogram_per_cubic_meter>();
    c::EXPANSION_K0.value / (density * density) + c::EXPANSION_K1.value / density
}

/// Volume correction factor of petrol to 15 degC,
/// `VCF = exp(-alpha dT (1 + 0.8 alpha dT))` with `dT = T - 15 degC`.
///
/// For bases of 653 to 770 kg/m3 at 15 degC, from -20 to 60 degC. The coefficients
/// are those for gasolines of ASTM D1250-80 / API 2540, Table 54B; for such
/// densities the table itself begins at about -18 degC (0 degF; from memory), so
/// the lowest two degrees are carried on by the formula.
///
/// ```
/// use fillwright::fuel::petrol_volume_correction_factor;
/// use fillwright::quantity::{MassDensity, ThermodynamicTemperature};
/// use uom::si::{mass_density::kilogram_per_cubic_meter, thermodynamic_temperature::degree_celsius};
/// let density = MassDensity::new::<kilogram_per_cubic_meter>(745.0);
/// let warm = ThermodynamicTemperature::new::<degree_celsius>(30.0);
/// let factor = petrol_volume_correction_factor(density, warm)?;
/// assert!((factor - 0.98171).abs() < 1e-5);
/// # Ok::<(), fillwright::fuel::DensityError>(())
/// ```
///
/// # Errors
/// When the density or the temperature is outside its range, or not a number.
pub fn petrol_volume_correction_factor(
    density_15: MassDensity,
    temperature: ThermodynamicTemperature,
) -> Result<f64, DensityError> {
    let density = density_15.get::<kilogram_per_cubic_meter>();
    let (low, high) = (c::EXPANSION_DENSITY_MIN.value, c::EXPANSION_DENSITY_MAX.value);
    if !(low - ROUNDING..=high + ROUNDING).contains(&density) {
        return Err(DensityError::PetrolDensity { given: density, low, high });
    }
    let celsius = temperature.get::<degree_celsius>();
    let (low, high) = (c::EXPANSION_TEMPERATURE_MIN.value, c::EXPANSION_TEMPERATURE_MAX.value);
    if !(low - ROUNDING..=high + ROUNDING).contains(&celsius) {
        return Err(DensityError::Temperature {
            constituent: Constituent::Hydrocarbon,
            given: celsius,
            low,
            high,
        });
    }
    let rise = petrol_expansion(density_15) * (celsius - REFERENCE_CELSIUS);
    Ok((-rise * (1.0 + c::EXPANSION_SECOND_ORDER.value * rise)).exp())
}
