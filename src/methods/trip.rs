//! The method of the trip.

use super::Topic;
use crate::message::keys::practice as words;
use crate::source::{Citation, Confidence, Source, SourceKind};
use crate::workings::{Lines, Working, number};

const ENVELOPE: Source = Source {
    kind: SourceKind::FromMemory,
    citation: Citation::WithCaveat(words::PLANES_AROUND_A_PRODUCT),
    confidence: Confidence::Weak,
};
const GAP: Source = Source {
    kind: SourceKind::Definition,
    citation: Citation::Words(words::RELATIVE_GAP),
    confidence: Confidence::Checked,
};

pub(super) const TOPICS: &[Topic] = &[Topic {
    id: "trip",
    title: "A trip's plan, and how far it can be from the best",
    words: &[
        "What is bought today binds every stop after it. Counted in energy, the only products in the model are level times composition. Each is replaced by the four planes around it, of which one is below: what comes out is a linear programme whose optimum no plan can undercut.",
        "Where the planes are too far off, a range is split in two and both halves are looked at. Every plan is run through the exact course of the route before it is shown. So the search can be stopped at any time: the plan holds, and the bound beside it is true.",
        "That a route is impossible is proved in the same way: no part of any range is left in which a plan could be.",
    ],
    lines: |_| lines(),
    picks: &[("w_min", None), ("g", None)],
    glossary: &[
        ("V", "level after a stop, as energy", "MJ"),
        ("e", "part of it that is ethanol", ""),
        ("V_min", "least level in the range looked at", "MJ"),
        ("e_min", "least part in the range looked at", ""),
        ("Z", "cost of the plan", ""),
        ("B", "cost that no plan can undercut", ""),
    ],
}];

/// Invented figures: 900 MJ of which 0.3 is ethanol, in a range from 600 MJ and 0.2;
/// a plan for 184 with a bound of 182.16.
fn lines() -> Vec<Working> {
    let mut lines = Lines::default();
    let level = || number("V_min", 600.0);
    let part = || number("e_min", 0.2);
    let plane = level() * number("e", 0.3) + part() * number("V", 900.0) - level() * part();
    lines.add("Least ethanol by one of the planes", "w_min", &plane, (1, "MJ"), &[ENVELOPE]);
    let plan = || number("Z", 184.0);
    let gap = (plan() - number("B", 182.16)) / plan();
    lines.add("Most by which the plan can be above the best", "g", &gap, (4, ""), &[GAP]);
    lines.into_vec()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: 600 * 0.3 + 0.2 * 900 - 120 = 240, below the product of 270; and 1.84
    /// of 184 is one in a hundred.
    #[test]
    fn the_plane_lies_below_the_product_and_the_gap_is_one_per_cent() {
        let lines = lines();
        approx::assert_relative_eq!(lines[0].value, 240.0, max_relative = 1e-12);
        assert!(lines[0].value < 0.3 * 900.0);
        approx::assert_relative_eq!(lines[1].value, 0.01, max_relative = 1e-12);
    }
}
