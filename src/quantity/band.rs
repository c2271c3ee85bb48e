//! A value with its error: the lowest and highest it can be, and the one expected.

use serde::{Deserialize, Serialize};
use thiserror::Error;

/// Why three values do not make a band.
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[error("a band needs low <= expected <= high")]
pub struct BandError;

/// A value with its error: the lowest and highest it can be, and the one that
/// is expected.
///
/// ```
/// use fillwright::quantity::Band;
/// let level = Band::new(12.0, 15.0, 18.0)?;
/// assert!(level.contains(13.0));
/// assert!(Band::new(16.0, 15.0, 18.0).is_err());
/// # Ok::<(), fillwright::quantity::BandError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Band<T> {
    low: T,
    expected: T,
    high: T,
}

impl<T: PartialOrd + Copy> Band<T> {
    /// A band from its three values.
    ///
    /// # Errors
    /// When they are out of order or cannot be compared (not a number).
    pub fn new(low: T, expected: T, high: T) -> Result<Self, BandError> {
        if low <= expected && expected <= high {
            Ok(Self { low, expected, high })
        } else {
            Err(BandError)
        }
    }

    /// The band of what was worked out at the two ends of another band, whichever
    /// way round they come; `None` when the values cannot be compared.
    ///
    /// Where the ends meet, rounding alone can put the expected value outside
    /// them: it then widens the band by that much.
    ///
    /// ```
    /// use fillwright::quantity::Band;
    /// // More ethanol needs less air.
    /// let ratio = Band::enclosing(12.8, [13.2, 12.6]).unwrap();
    /// assert_eq!((ratio.low(), ratio.high()), (12.6, 13.2));
    /// ```
    pub fn enclosing(expected: T, ends: [T; 2]) -> Option<Self> {
        let mut band = Self::exact(expected);
        for end in ends {
            if end < band.low {
                band.low = end;
            } else if end > band.high {
                band.high = end;
            } else if !band.contains(end) {
                return None;
            }
        }
        band.contains(expected).then_some(band)
    }

    /// A value that is known exactly.
    pub fn exact(value: T) -> Self {
        Self { low: value, expected: value, high: value }
    }

    /// Whether a value is possible.
    pub fn contains(&self, value: T) -> bool {
        self.low <= value && value <= self.high
    }
}

impl<T: Copy> Band<T> {
    /// The lowest value that is possible.
    pub fn low(&self) -> T {
        self.low
    }

    /// The value that is expected.
    pub fn expected(&self) -> T {
        self.expected
    }

    /// The highest value that is possible.
    pub fn high(&self) -> T {
        self.high
    }

    /// What was worked out where several bands stand at their low ends, as expected and
    /// at their high ends, as [`Band::map`] does for one.
    pub(crate) fn at_ends(low: T, expected: T, high: T) -> Self {
        Self { low, expected, high }
    }

    /// The band of a quantity that grows with this one.
    pub fn map<U>(&self, f: impl Fn(T) -> U) -> Band<U> {
        Band { low: f(self.low), expected: f(self.expected), high: f(self.high) }
    }
}
