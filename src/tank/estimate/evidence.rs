//! What tells of the tank's contents.

use super::super::LevelReading;
use crate::fuel::Extras;
use crate::quantity::{Band, Length, Share, Volume};

/// Something that tells of the tank's contents. Evidence is taken in the order in
/// which it happened.
#[derive(Clone, Debug, PartialEq)]
pub enum Evidence {
    /// A fill at one stop.
    Fill {
        /// What was poured in, in this order.
        pours: Vec<Pour>,
        /// Whether the nozzle clicked off at the end: the tank is then full.
        clicked: bool,
    },
    /// A reading of the level.
    Level {
        /// What was read.
        level: Volume,
        /// How.
        reading: LevelReading,
        /// The error to either side that the person gave, in place of the
        /// reading's own.
        error: Option<Volume>,
    },
    /// A reading of the ethanol share.
    Share(ShareReading),
    /// A distance driven.
    Drive {
        /// How far.
        distance: Length,
    },
    /// Fuel burned, as the trip computer counted it.
    Burned {
        /// How much.
        volume: Volume,
    },
    /// Fuel taken out of the tank.
    Drain {
        /// How much; none when it was drained until nothing came.
        volume: Option<Volume>,
    },
    /// A correction: it replaces what was thought of the contents, and of their
    /// octane.
    State {
        /// The level.
        level: Band<Volume>,
        /// The ethanol share.
        share: Band<Share>,
        /// What there is beside petrol and ethanol.
        extras: Extras,
        /// Research octane number, at least; none when unknown.
        ron: Option<f64>,
        /// Motor octane number, at least; none when unknown.
        mon: Option<f64>,
    },
}

/// A fuel poured into the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pour {
    /// What the dispenser showed.
    pub volume: Volume,
    /// The ethanol share of the fuel.
    pub share: Band<Share>,
    /// What it holds beside petrol and ethanol.
    pub extras: Extras,
    /// Research octane number, at least; none when unknown.
    pub ron: Option<f64>,
    /// Motor octane number, at least; none when unknown.
    pub mon: Option<f64>,
}

/// A reading of the ethanol share of what is in the tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShareReading {
    /// What was read.
    pub share: Share,
    /// The standard error of one reading, apart from what the instrument always
    /// reads too high or too low.
    pub standard_error: Share,
    /// The instrument.
    pub kind: ShareReadingKind,
}

/// How the ethanol share was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShareReadingKind {
    /// By a flex-fuel sensor in the line, which may always read a little off: that
    /// is learnt.
    Sensor,
    /// By shaking a sample with water in a tube.
    TubeTest,
}
