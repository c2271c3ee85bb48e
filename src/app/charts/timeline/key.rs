//! The key.

use leptos::prelude::*;

use super::{MarkKind, Timeline, draw};
use crate::app::widgets::Drawn;

/// What the lines and shapes stand for, as far as they occur.
#[component]
pub(super) fn Key(timeline: Signal<Timeline>) -> impl IntoView {
    const MARKS: [(MarkKind, &str); 4] = [
        (MarkKind::Fill, "fill"),
        (MarkKind::Level, "level read"),
        (MarkKind::ShareReading, "share read"),
        (MarkKind::Other, "other entry"),
    ];
    let entries = Callback::new(move |()| {
        let occurs = |kind: MarkKind| timeline.with(|it| it.marks.iter().any(|m| m.kind == kind));
        let line = view! { <path class="expected" d="M-8 0H8"></path> }.into_any();
        let band = view! { <path class="bound" d="M-8-5H8M-8 5H8"></path> }.into_any();
        let marks = MARKS.into_iter().filter(|(kind, _)| occurs(*kind));
        let marks = marks.map(|(kind, words)| (draw::glyph(kind, 0.0, 0.0), words));
        let lines = [(line, "expected"), (band, "low and high")];
        lines.into_iter().chain(marks).map(entry).collect()
    });
    view! {
        <ul class="key plain">
            <Drawn what=entries />
        </ul>
    }
}

fn entry((shape, words): (AnyView, &'static str)) -> AnyView {
    view! {
        <li>
            <svg viewBox="-9 -9 18 18" aria-hidden="true">
                {shape}
            </svg>
            {words}
        </li>
    }
    .into_any()
}
