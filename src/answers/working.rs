//! What the workings of all features share.

use uom::si::volume::liter;

use crate::fuel::Constant;
use crate::message::keys::practice as words;
use crate::quantity::Volume;
use crate::source::Source;
use crate::workings::Expression;
pub(super) use crate::workings::letter;

pub(super) const CONSERVATION: Source = Source::derived(words::CONSERVATION);

pub(super) fn litres(volume: Volume) -> f64 {
    volume.get::<liter>()
}

/// A constant under its own symbol.
pub(super) fn constant(constant: &Constant) -> Expression {
    constant.in_formula()
}
