//! What the workings of all features share.

use uom::si::volume::liter;

use crate::fuel::Constant;
use crate::quantity::Volume;
use crate::source::{Confidence, Source, SourceKind};
use crate::workings::Expression;
pub(super) use crate::workings::letter;

pub(super) const CONSERVATION: Source =
    derived("conservation of volume and of ethanol, volumes taken as additive");

pub(super) const fn derived(citation: &'static str) -> Source {
    Source { kind: SourceKind::Derivation, citation, confidence: Confidence::Checked }
}

pub(super) fn litres(volume: Volume) -> f64 {
    volume.get::<liter>()
}

/// A constant under its own symbol.
pub(super) fn constant(constant: &Constant) -> Expression {
    constant.in_formula()
}
