//! Octane numbers by the linear molar rule.
//!
//! `ON = sum x_i ON_i` over moles, without water. It is stated as "at least":
//! measured blends lie 0 to about 6 RON above it for paraffinic petrol and on it
//! for aromatic petrol (Foong et al. 2014 and the FACE gasolines), and it
//! explains most of the non-linearity seen by volume (SAE 2012-01-1274,
//! abstract).

use super::constants as c;
use super::constituent::{Atoms, HydrocarbonBase};
use super::mixture::Mixture;
use crate::quantity::Share;
use crate::source::{Confidence, Source, SourceKind, Sourced};

/// RON minus MON that is taken where only their mean was given.
pub const USUAL_SENSITIVITY: Sourced<f64> = Sourced {
    value: 8.0,
    source: Source {
        kind: SourceKind::CommonPractice,
        citation: "pump petrol has a RON 8 to 12 above its MON; the lower end keeps the RON cautious",
        confidence: Confidence::Weak,
    },
};

/// Where the molar rule comes from.
pub const MOLAR_RULE: Source = Source {
    kind: SourceKind::Paper,
    citation: "Anderson et al., SAE 2012-01-1274 (abstract): the linear molar rule explains most of the non-linearity, measured values are somewhat greater",
    confidence: Confidence::Secondary,
};

/// RON and MON from the anti-knock index `(RON + MON) / 2`.
pub fn ron_mon_from_aki(aki: f64) -> (f64, f64) {
    let half = USUAL_SENSITIVITY.value / 2.0;
    (aki + half, aki - half)
}

/// Moles of ethanol per litre.
pub(super) fn ethanol_molar_density() -> f64 {
    c::ETHANOL_DENSITY.value / Atoms::ETHANOL.molar_mass()
}

/// Moles per litre of the parts of a petrol-ethanol blend.
///
/// With it the molar rule can be written over litres of *finished* fuels, which
/// is the same as over their bases and ethanol: both are sums over moles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MolarDensity {
    /// Of the petrol base, in mol/L.
    pub hydrocarbon: f64,
    /// Of ethanol, in mol/L.
    pub ethanol: f64,
}

impl Default for MolarDensity {
    fn default() -> Self {
        Self {
            hydrocarbon: HydrocarbonBase::default().molar_density(),
            ethanol: ethanol_molar_density(),
        }
    }
}

impl MolarDensity {
    /// Moles per litre of a blend: `n = n_g (1 - e) + n_e e`.
    pub fn of_share(&self, ethanol: Share) -> f64 {
        let e = ethanol.fraction();
        self.hydrocarbon * (1.0 - e) + self.ethanol * e
    }
}

impl Mixture {
    /// The research octane number, at least; `None` when that of a part is not
    /// known.
    pub fn ron(&self) -> Option<f64> {
        let total = self.total();
        self.by_moles(total.ron_moles)
    }

    /// The motor octane number, at least.
    pub fn mon(&self) -> Option<f64> {
        let total = self.total();
        self.by_moles(total.mon_moles)
    }

    /// The anti-knock index `(RON + MON) / 2`, at least.
    pub fn aki(&self) -> Option<f64> {
        Some(f64::midpoint(self.ron()?, self.mon()?))
    }

    fn by_moles(&self, octane_moles: Option<f64>) -> Option<f64> {
        let moles = self.total().moles - self.water.moles;
        octane_moles.filter(|_| moles > 0.0).map(|octane| octane / moles)
    }
}
