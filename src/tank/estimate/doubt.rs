//! Evidence that does not fit with what was known.

use crate::quantity::{Band, Share, Volume};

/// Evidence that does not fit with what was known. Both stay possible in the
/// estimate until a person says what happened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// There is that much more in the tank than the log allows: a fill may be
    /// missing, or the reading is wrong.
    UnloggedFill {
        /// How much more.
        volume: Volume,
    },
    /// There is that much less than the log allows: driving or a drain may be
    /// missing, or the reading is wrong.
    UnloggedUse {
        /// How much less.
        volume: Volume,
    },
    /// A share was read far off what the log allows.
    ShareContradicts {
        /// What was expected of the share in the tank, 95 %.
        expected: Band<Share>,
        /// What was read.
        read: Share,
    },
    /// A fill of more than could fit.
    Overfull {
        /// How much more.
        volume: Volume,
    },
}
