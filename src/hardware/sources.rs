//! Where the formulas of the fuel system come from.

use crate::source::{Confidence, Source, SourceKind};

pub(crate) const CYCLE: Source = derived("four strokes: two turns of the crank for each cycle");
pub(crate) const ORIFICE: Source =
    derived("Bernoulli's equation for a nozzle with a constant discharge coefficient");
pub(crate) const BALANCE: Source = derived("balance of fuel and air");
pub(crate) const RESERVE: Source = derived("capacity at the limit over demand, less one");
pub(super) const PLUNGER: Source =
    derived("mass trapped in the bore less what stays there compressed");
pub(super) const MURNAGHAN: Source = Source {
    kind: SourceKind::Paper,
    citation: "F. D. Murnaghan, The Compressibility of Media under Extreme Pressures, 1944 (from \
               memory)",
    confidence: Confidence::Weak,
};
pub(super) const DARCY: Source = Source {
    kind: SourceKind::Handbook,
    citation: "Darcy and Weisbach, friction factor by Colebrook and White",
    confidence: Confidence::Weak,
};

const fn derived(citation: &'static str) -> Source {
    Source { kind: SourceKind::Derivation, citation, confidence: Confidence::Checked }
}
