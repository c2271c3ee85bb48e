//! Where the formulas of the fuel system come from.

use crate::message::keys::practice as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

pub(crate) const CYCLE: Source = Source::derived(words::FOUR_STROKES);
pub(crate) const ORIFICE: Source = Source::derived(words::ORIFICE);
pub(crate) const BALANCE: Source = Source::derived(words::FUEL_AND_AIR);
pub(crate) const RESERVE: Source = Source::derived(words::RESERVE_OF_CAPACITY);
pub(super) const PLUNGER: Source = Source::derived(words::TRAPPED_MASS);
pub(super) const MURNAGHAN: Source = Source {
    kind: SourceKind::Paper,
    citation: Citation::Words(words::MURNAGHAN),
    confidence: Confidence::Weak,
};
pub(super) const DARCY: Source = Source {
    kind: SourceKind::Handbook,
    citation: Citation::Words(words::DARCY),
    confidence: Confidence::Weak,
};
