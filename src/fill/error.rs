//! Why a fill cannot be worked out.

use thiserror::Error;

use crate::quantity::Share;

/// Why a fill cannot be worked out from what was given.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum FillError {
    /// The tank has no size.
    NoCapacity,
    /// More is said to be in the tank than it holds.
    Overfull {
        /// The level given, in litres.
        level_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// More has gone in than was free.
    Overpoured {
        /// The litres said to have gone in.
        poured_l: f64,
        /// The free space at the lowest level, in litres.
        free_l: f64,
    },
    /// There is nothing to pour.
    NoOffer,
    /// The tank is already above the level to fill to.
    AboveLevel {
        /// What is in the tank and what was poured, in litres.
        level_l: f64,
        /// The level wanted, in litres.
        wanted_l: f64,
    },
    /// The level to fill to is above the brim.
    LevelAboveBrim {
        /// The level wanted, in litres.
        wanted_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// The ends of a window are the wrong way round.
    WindowReversed {
        /// The end given first.
        low: Share,
        /// The end given second.
        high: Share,
    },
    /// A sum of money is to be spent on a fuel without a price.
    PriceMissing {
        /// The fuel's place in the list.
        index: usize,
    },
    /// An octane number is wanted, but not known of a fuel.
    OctaneMissing {
        /// The fuel's place in the list.
        index: usize,
    },
    /// An octane number is wanted, but not known of what is in the tank.
    TankOctaneMissing,
    /// All of a fuel is to go in, but not said how much that is.
    AmountMissing {
        /// The fuel's place in the list.
        index: usize,
    },
}
