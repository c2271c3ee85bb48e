//! What the workings of all features share.

use uom::si::volume::liter;

use crate::fuel::Constant;
use crate::quantity::Volume;
use crate::source::{Confidence, Source, SourceKind};
use crate::workings::{Expression, number};

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
    number(constant.symbol, constant.value)
}

/// The letter of a fuel: a for the first.
pub(super) fn letter(fuel: usize) -> char {
    u8::try_from(fuel).ok().and_then(|fuel| b'a'.checked_add(fuel)).map_or('z', char::from)
}
