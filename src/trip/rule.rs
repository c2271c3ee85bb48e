//! The rules that a trip may break.

use serde::{Deserialize, Serialize};

/// A rule of the route.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum TripRule {
    /// No more goes in than the tank holds.
    Brim,
    /// A pump gives no more than its limit, and nothing when closed.
    Limit,
    /// The reserve is left at the end of the leg.
    Reserve,
    /// The level asked for is left at the end.
    FinalLevel,
    /// One of the calibrations that the leg allows is usable all along: its
    /// window and its octane number.
    Calibration,
    /// The blend is as strong in ethanol as one of the leg's calibrations asks.
    Window,
    /// The octane number that the leg asks for.
    Octane,
    /// No more is spent than there is.
    Budget,
}

/// A rule that does not hold, and where.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Breach {
    /// The stop, or the leg after it, counted from 0.
    pub stop: usize,
    /// The rule.
    pub rule: TripRule,
}
