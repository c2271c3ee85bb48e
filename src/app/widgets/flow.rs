//! What follows the state: texts, conditions and rows.

use leptos::prelude::*;

/// Shows its children while a condition holds.
#[component]
pub(crate) fn When(condition: Signal<bool>, children: ChildrenFn) -> impl IntoView {
    move || condition.get().then(|| children())
}

/// A row for each id; a row stays what it is while others come and go.
#[component]
pub(crate) fn Rows(ids: Signal<Vec<u32>>, row: fn(u32) -> AnyView) -> impl IntoView {
    view! { <For each=move || ids.get() key=|id| *id children=row /> }
}

/// What is drawn anew whenever something that it shows changes.
#[component]
pub(crate) fn Drawn(what: Callback<(), Vec<AnyView>>) -> impl IntoView {
    move || what.run(())
}
