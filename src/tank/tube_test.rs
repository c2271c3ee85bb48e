//! The tube test: water takes the ethanol out of a fuel, and the boundary
//! between the two rises.

use serde::{Deserialize, Serialize};
use thiserror::Error;
use uom::si::volume::milliliter;

use super::estimate::{ShareReading, ShareReadingKind};
use crate::message::keys::practice as words;
use crate::quantity::{Share, Volume};
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};
use crate::workings::Arithmetic;

/// What the rise falls short of the ethanol since water and ethanol contract:
/// the middle, and to either side, as fractions of the reading.
pub const CONTRACTION: Sourced<(f64, f64)> = Sourced {
    value: (0.05, 0.05),
    source: Source {
        kind: SourceKind::FromMemory,
        citation: Citation::Words(words::CONTRACTION_SOURCE),
        confidence: Confidence::Weak,
    },
};

/// How well a person reads the boundary: the standard error of the share.
pub const BOUNDARY_ERROR: Sourced<f64> = Sourced {
    value: 0.02,
    source: Source {
        kind: SourceKind::CommonPractice,
        citation: Citation::Words(words::BOUNDARY_ERROR_SOURCE),
        confidence: Confidence::Weak,
    },
};

/// How a tube test is done.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TubeTestMethod {
    /// 50 mL of fuel and salt water (10 % by mass) to 100 mL: ABNT NBR 13992.
    #[default]
    SaltWater,
    /// Any amounts of fuel and plain water.
    PlainWater,
}

/// Why a tube test tells nothing.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum TubeTestError {
    /// There was no fuel.
    NoFuel,
    /// The boundary fell.
    Fell {
        /// The water, in mL.
        water: f64,
        /// The boundary, in mL.
        boundary: f64,
    },
    /// There is more ethanol than fuel.
    TooHigh {
        /// Fuel and water together, in mL.
        all: f64,
        /// The boundary, in mL.
        boundary: f64,
    },
}

/// A tube test: what was poured in and where the boundary stood afterwards.
///
/// The share is the rise over the *fuel*. Dividing by everything in the tube is a
/// published mistake that makes 43 % of 48; here it cannot happen, since only
/// this type knows how to divide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubeTest {
    method: TubeTestMethod,
    fuel: f64,
    water: f64,
    boundary: f64,
}

impl TubeTest {
    /// A test after ABNT NBR 13992, read at the boundary: the volume of the
    /// watery part, 50 to 100 mL.
    ///
    /// # Errors
    /// When the boundary lies outside.
    pub fn with_salt_water(boundary: Volume) -> Result<Self, TubeTestError> {
        let half = Volume::new::<milliliter>(50.0);
        Ok(Self { method: TubeTestMethod::SaltWater, ..Self::with_water(half, half, boundary)? })
    }

    /// A test with any amounts of fuel and plain water. Any unit will do for all
    /// three, as long as it is the same.
    ///
    /// ```
    /// use fillwright::{quantity::Volume, tank::TubeTest};
    /// use uom::si::volume::milliliter;
    /// let ml = |value| Volume::new::<milliliter>(value);
    /// // 90 mL of fuel on 10 mL of water; the boundary then stands at 53.
    /// let test = TubeTest::with_water(ml(90.0), ml(10.0), ml(53.0))?;
    /// assert!((test.rise_over_fuel().percent() - 47.8).abs() < 0.05);
    /// # Ok::<(), fillwright::tank::TubeTestError>(())
    /// ```
    ///
    /// # Errors
    /// When there is no fuel, or the boundary lies below the water or above all.
    pub fn with_water(
        fuel: Volume,
        water: Volume,
        boundary: Volume,
    ) -> Result<Self, TubeTestError> {
        let [fuel, water, boundary] = [fuel, water, boundary].map(|it| it.get::<milliliter>());
        if fuel <= 0.0 {
            return Err(TubeTestError::NoFuel);
        }
        let slack = 1e-9 * (fuel + water);
        if boundary < water - slack {
            return Err(TubeTestError::Fell { water, boundary });
        }
        if boundary > fuel + water + slack {
            return Err(TubeTestError::TooHigh { all: fuel + water, boundary });
        }
        Ok(Self { method: TubeTestMethod::PlainWater, fuel, water, boundary })
    }

    /// The rise of the boundary over the fuel.
    pub fn rise_over_fuel(&self) -> Share {
        Share::clamped(self.rise() / self.fuel)
    }

    fn rise(&self) -> f64 {
        self.boundary - self.water
    }

    /// The ethanol share. With salt water `2 (A - 50) + 1` percent, and 1 % where
    /// the boundary rose by less than half a millilitre (NBR 13992); else the
    /// rise over the fuel, and what contraction hides of it.
    pub fn share(&self) -> Share {
        match self.method {
            TubeTestMethod::SaltWater if self.rise() < 0.5 => Share::clamped(0.01),
            TubeTestMethod::SaltWater | TubeTestMethod::PlainWater => {
                Share::clamped(self.formula())
            }
        }
    }

    /// The share as it is read off, as a formula; volumes in mL.
    pub(crate) fn formula<A: Arithmetic>(&self) -> A {
        let boundary = A::number("A", self.boundary);
        match self.method {
            TubeTestMethod::SaltWater => {
                let rise = boundary - A::literal(self.water);
                (A::literal(2.0) * rise + A::literal(1.0)) / A::literal(100.0)
            }
            TubeTestMethod::PlainWater => {
                let contraction = A::literal(1.0) + A::number("c", CONTRACTION.value.0);
                let rise = boundary - A::number("W", self.water);
                rise / A::number("F", self.fuel) * contraction
            }
        }
    }

    /// What the test tells of the tank, for a tube with marks this far apart.
    ///
    /// The standard error sums reading, half a mark to either side (uniform), and
    /// for plain water the contraction (uniform).
    pub fn reading(&self, step: Volume) -> ShareReading {
        let step = step.get::<milliliter>() / self.fuel;
        let contraction = match self.method {
            TubeTestMethod::SaltWater => 0.0,
            TubeTestMethod::PlainWater => self.rise() / self.fuel * CONTRACTION.value.1,
        };
        let variance =
            BOUNDARY_ERROR.value.powi(2) + step.powi(2) / 12.0 + contraction.powi(2) / 3.0;
        ShareReading {
            share: self.share(),
            standard_error: Share::clamped(variance.sqrt()),
            kind: ShareReadingKind::TubeTest,
        }
    }
}
