//! Power by the place where it was measured: at the wheels or at the crank.

use super::Power;

/// Power at the driven wheels.
///
/// Wheel and crank power share a unit and differ by what the driveline and the
/// tyres take, so neither is ever given for the other: see
/// [`DrivelineLoss`](crate::power::DrivelineLoss).
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct WheelPower(Power);

/// Power at the crankshaft.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct CrankPower(Power);

impl WheelPower {
    /// Power measured at the wheels.
    pub fn new(power: Power) -> Self {
        Self(power)
    }

    /// The power.
    pub fn get(self) -> Power {
        self.0
    }
}

impl CrankPower {
    /// Power measured at the crankshaft.
    pub fn new(power: Power) -> Self {
        Self(power)
    }

    /// The power.
    pub fn get(self) -> Power {
        self.0
    }
}
