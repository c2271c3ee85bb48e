//! A plan of a fill.

use super::problem::in_litres;
use crate::quantity::{Money, Share, Volume};

/// What to pour of each fuel, and what that makes at the expected values.
#[derive(Clone, Debug, PartialEq)]
pub struct FillPlan {
    /// Litres of each fuel, in the order of the offers, with what is already in.
    pub volumes: Vec<Volume>,
    /// All that is poured in this fill.
    pub added: Volume,
    /// What is in the tank afterwards.
    pub level: Volume,
    /// The ethanol share afterwards; `None` in a tank that stays empty.
    pub share: Option<Share>,
    /// The octane number afterwards, at least, where it is known of all parts.
    pub ron: Option<f64>,
    /// What it costs, where the price of all that is poured is known.
    pub cost: Option<Money>,
}

impl FillPlan {
    /// Whether there is nothing to pour.
    pub fn is_nothing(&self) -> bool {
        in_litres(self.added) < 1e-9
    }
}
