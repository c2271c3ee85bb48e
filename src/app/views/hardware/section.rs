use fillwright::logbook::Field;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::{When, holds};

/// A part of the question that opens, with what is in it in short.
#[component]
pub(super) fn Section(
    id: &'static str,
    title: &'static str,
    short: Signal<String>,
    /// Which fields stand in it.
    has: fn(Field) -> bool,
    #[prop(optional)] open: bool,
    children: Children,
) -> impl IntoView {
    let state = State::here();
    let wrong = holds(move || {
        state.workshop.with(|it| it.complaints.iter().any(|complaint| has(complaint.field)))
    });
    let title_id = format!("{id}-title");
    let labelled_by = title_id.clone();
    view! {
        <section class="card opens" aria-labelledby=labelled_by>
            <details id=id open=open>
                <summary>
                    <h2 id=title_id>{title}</h2>
                    <span class="in-short">{short}</span>
                    <When condition=wrong>
                        <span class="in-short missing">"Something is missing or wrong"</span>
                    </When>
                </summary>
                <div class="inside">{children()}</div>
            </details>
        </section>
    }
}
