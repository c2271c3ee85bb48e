//! The key of what was noted.

use fillwright::message::Message;
use fillwright::message::keys::charts as keys;
use leptos::prelude::*;

use super::chart::{Chart, EntryKind};
use super::draw;

const KINDS: [(EntryKind, Message); 4] = [
    (EntryKind::Fill, keys::FILL),
    (EntryKind::Level, keys::LEVEL_READ),
    (EntryKind::ShareReading, keys::SHARE_READ),
    (EntryKind::Other, keys::OTHER_ENTRY),
];

/// What the shapes stand for, as far as they occur.
pub(super) fn drawn(chart: &Chart) -> Vec<AnyView> {
    let occurs = |kind: EntryKind| chart.entries.iter().any(|it| it.kind == kind);
    let entry = |(kind, words): (EntryKind, Message)| {
        view! {
            <li>
                <svg viewBox="-9 -9 18 18" aria-hidden="true">
                    {draw::glyph(kind, 0.0, 0.0)}
                </svg>
                {words.say()}
            </li>
        }
        .into_any()
    };
    KINDS.into_iter().filter(|it| occurs(it.0)).map(entry).collect()
}
