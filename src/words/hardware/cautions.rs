//! The cautions beside the verdict on a fuel system.

use crate::message::Message;
use crate::message::keys::hardware_said as keys;

/// What stands beside the verdict.
pub const CAUTIONS: [Message; 5] = [
    keys::LEAN,
    keys::RAIL_PRESSURE,
    keys::BEYOND_LIMIT,
    keys::NO_CALIBRATION,
    keys::NO_FIGURE_SAYS,
];

/// Whose word comes first.
pub const RULES_FIRST: Message = keys::RULES_FIRST;

/// What stands where injection fluid is mixed.
pub const FLUID_CAUTIONS: [Message; 3] =
    [keys::FLUID_TOXIC, keys::FLUID_CONTAINER, keys::FLUID_FAIL_SAFE];
