//! The method of the trip.

use super::Topic;
use crate::message::keys::methods_trip as keys;
use crate::message::keys::practice as words;
use crate::message::keys::workings;
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
    title: keys::TITLE_TRIP,
    words: &[keys::TRIP_1, keys::TRIP_2, keys::TRIP_3],
    lines: |_| lines(),
    picks: &[("w_min", None), ("g", None)],
    glossary: &[
        ("V", keys::LEVEL_AFTER_STOP_ENERGY, "MJ"),
        ("e", keys::PART_ETHANOL, ""),
        ("V_min", keys::LEAST_LEVEL_RANGE_LOOKED, "MJ"),
        ("e_min", keys::LEAST_PART_RANGE_LOOKED, ""),
        ("Z", keys::COST_PLAN, ""),
        ("B", keys::COST_NO_PLAN_CAN_UNDERCUT, ""),
    ],
}];

/// Invented figures: 900 MJ of which 0.3 is ethanol, in a range from 600 MJ and 0.2;
/// a plan for 184 with a bound of 182.16.
fn lines() -> Vec<Working> {
    let mut lines = Lines::default();
    let level = || number("V_min", 600.0);
    let part = || number("e_min", 0.2);
    let plane = level() * number("e", 0.3) + part() * number("V", 900.0) - level() * part();
    lines.add(workings::LEAST_ETHANOL_ONE_PLANES, "w_min", &plane, (1, "MJ"), &[ENVELOPE]);
    let plan = || number("Z", 184.0);
    let gap = (plan() - number("B", 182.16)) / plan();
    lines.add(workings::MOST_WHICH_PLAN_CAN_BE_ABOVE, "g", &gap, (4, ""), &[GAP]);
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
