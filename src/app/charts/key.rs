//! The key of what was noted.

use leptos::prelude::*;

use super::chart::{Chart, EntryKind};
use super::draw;

const KINDS: [(EntryKind, &str); 4] = [
    (EntryKind::Fill, "fill"),
    (EntryKind::Level, "level read"),
    (EntryKind::ShareReading, "share read"),
    (EntryKind::Other, "other entry"),
];

/// What the shapes stand for, as far as they occur.
pub(super) fn drawn(chart: &Chart) -> Vec<AnyView> {
    let occurs = |kind: EntryKind| chart.entries.iter().any(|it| it.kind == kind);
    let entry = |(kind, words): (EntryKind, &'static str)| {
        view! {
            <li>
                <svg viewBox="-9 -9 18 18" aria-hidden="true">
                    {draw::glyph(kind, 0.0, 0.0)}
                </svg>
                {words}
            </li>
        }
        .into_any()
    };
    KINDS.into_iter().filter(|it| occurs(it.0)).map(entry).collect()
}
