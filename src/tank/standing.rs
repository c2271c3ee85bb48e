//! The tank as it stands.

use serde::{Deserialize, Serialize};

use crate::quantity::{Band, Share, Volume};

/// A tank as it stands, before a fill or at the start of a trip.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tank {
    /// What the tank holds to the brim.
    pub capacity: Volume,
    /// What is in it.
    pub level: Band<Volume>,
    /// The ethanol share of what is in it. Not read when the tank is empty.
    pub share: Band<Share>,
    /// The research octane number of what is in it, at least.
    pub ron: Option<f64>,
    /// The level below which nobody should plan to drive.
    pub reserve: Volume,
}
