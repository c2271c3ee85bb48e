//! The volume share of ethanol in a fuel.

use serde::{Deserialize, Serialize};
use thiserror::Error;

/// Why a number is not a volume share.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct ShareError {
    /// The number that was given, as a fraction.
    pub given: f64,
}

/// A volume share of ethanol in a fuel: 0 is none, 1 is neat.
///
/// The share is meant at equal temperature of the parts and with ideal
/// (additive) mixing of volumes.
///
/// ```
/// use fillwright::quantity::Share;
/// let e85 = Share::from_percent(85.0)?;
/// assert_eq!(e85.fraction(), 0.85);
/// assert!(Share::new(1.2).is_err());
/// assert!(Share::new(f64::NAN).is_err());
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(try_from = "f64", into = "f64")]
pub struct Share(f64);

impl Share {
    /// No ethanol.
    pub const ZERO: Self = Self(0.0);
    /// Neat ethanol.
    pub const ONE: Self = Self(1.0);

    /// A share from a fraction between 0 and 1.
    ///
    /// # Errors
    /// When the fraction is outside that range or not a number.
    pub fn new(fraction: f64) -> Result<Self, ShareError> {
        if (0.0..=1.0).contains(&fraction) {
            Ok(Self(fraction))
        } else {
            Err(ShareError { given: fraction })
        }
    }

    /// A share from a percentage between 0 and 100.
    ///
    /// # Errors
    /// When the percentage is outside that range or not a number.
    pub fn from_percent(percent: f64) -> Result<Self, ShareError> {
        Self::new(percent / 100.0)
    }

    /// The nearest share to a computed fraction that rounding may have carried
    /// a little outside the range. Not for input: use [`Share::new`] there.
    pub(crate) fn clamped(fraction: f64) -> Self {
        Self(fraction.clamp(0.0, 1.0))
    }

    /// The share as a fraction between 0 and 1.
    pub fn fraction(self) -> f64 {
        self.0
    }

    /// The share as a percentage between 0 and 100.
    pub fn percent(self) -> f64 {
        self.0 * 100.0
    }
}

impl TryFrom<f64> for Share {
    type Error = ShareError;
    fn try_from(fraction: f64) -> Result<Self, ShareError> {
        Self::new(fraction)
    }
}

impl From<Share> for f64 {
    fn from(share: Share) -> Self {
        share.0
    }
}
