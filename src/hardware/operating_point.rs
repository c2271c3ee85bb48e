//! The point at which a part of the fuel system is looked at.

use crate::quantity::{AngularVelocity, GaugePressure, Time};

use super::demand::cycle_time;
use super::fuel_properties::FuelProperties;

/// Where a part of the fuel system is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OperatingPoint<'a> {
    /// Speed of the crankshaft.
    pub speed: AngularVelocity,
    /// Pressure in the manifold above the air around: boost.
    pub manifold: GaugePressure,
    /// The fuel.
    pub fuel: &'a FuelProperties,
}

impl OperatingPoint<'_> {
    /// The time of one four-stroke cycle, two turns of the crank; endless at
    /// standstill.
    pub fn cycle_time(&self) -> Time {
        cycle_time(self.speed)
    }
}
