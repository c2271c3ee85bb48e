//! What another currency is worth, as it was typed.

use serde::{Deserialize, Serialize};

/// A rate as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RateForm {
    /// The currency of which one unit is told.
    pub from: String,
    /// The own currency that it is told in.
    pub to: String,
    /// How much of that it is.
    pub rate: String,
    /// The day on which it was typed: `2026-05-03`.
    pub typed_on: String,
}
