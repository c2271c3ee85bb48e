//! Why a fill cannot be worked out.

use thiserror::Error;

use crate::quantity::Share;

/// Why a fill cannot be worked out from what was given.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum FillError {
    /// The tank has no size.
    #[error("the tank holds nothing: give its size")]
    NoCapacity,
    /// More is said to be in the tank than it holds.
    #[error(
        "{level_l:.1} L cannot be in a tank of {capacity_l:.1} L: correct the level or the tank's size"
    )]
    Overfull {
        /// The level given, in litres.
        level_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// More has gone in than was free.
    #[error(
        "{poured_l:.1} L cannot have gone in: at the lowest level given, {free_l:.1} L were free; correct the litres or the level"
    )]
    Overpoured {
        /// The litres said to have gone in.
        poured_l: f64,
        /// The free space at the lowest level, in litres.
        free_l: f64,
    },
    /// There is nothing to pour.
    #[error("no fuel is on offer: add one")]
    NoOffer,
    /// The tank is already above the level to fill to.
    #[error(
        "the tank already holds {level_l:.1} L, more than the {wanted_l:.1} L wanted: choose a higher level"
    )]
    AboveLevel {
        /// What is in the tank and what was poured, in litres.
        level_l: f64,
        /// The level wanted, in litres.
        wanted_l: f64,
    },
    /// The level to fill to is above the brim.
    #[error("{wanted_l:.1} L do not fit a tank of {capacity_l:.1} L: choose a lower level")]
    LevelAboveBrim {
        /// The level wanted, in litres.
        wanted_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// The ends of a window are the wrong way round.
    #[error("the window from E{:.0} to E{:.0} is the wrong way round: give the lower share first", low.percent(), high.percent())]
    WindowReversed {
        /// The end given first.
        low: Share,
        /// The end given second.
        high: Share,
    },
    /// A sum of money is to be spent on a fuel without a price.
    #[error("a sum of money needs the price of every fuel: fuel {} has none", index + 1)]
    PriceMissing {
        /// The fuel's place in the list.
        index: usize,
    },
    /// An octane number is wanted, but not known of a fuel.
    #[error("a least octane number needs that of every fuel: fuel {} has none", index + 1)]
    OctaneMissing {
        /// The fuel's place in the list.
        index: usize,
    },
    /// An octane number is wanted, but not known of what is in the tank.
    #[error("a least octane number needs that of what is in the tank: give it")]
    TankOctaneMissing,
    /// All of a fuel is to go in, but not said how much that is.
    #[error("all of fuel {} is to go in: say how much there is", index + 1)]
    AmountMissing {
        /// The fuel's place in the list.
        index: usize,
    },
}
