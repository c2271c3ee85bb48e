//! A figure to show.

use crate::message::Message;
use crate::source::{Source, Sourced};

/// A figure of the tank's models, to show.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// What it is.
    pub name: Message,
    /// Its value, or its values in the order in which the name tells them.
    pub values: Vec<f64>,
    /// Their unit; empty for a pure number.
    pub unit: &'static str,
    /// Where it comes from.
    pub source: Source,
}

impl Figure {
    pub(super) fn one(name: Message, unit: &'static str, of: Sourced<f64>) -> Self {
        Self { name, values: vec![of.value], unit, source: of.source }
    }

    pub(super) fn ends(name: Message, unit: &'static str, of: Sourced<(f64, f64)>) -> Self {
        Self { name, values: vec![of.value.0, of.value.1], unit, source: of.source }
    }
}
