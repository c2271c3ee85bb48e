use fillwright::logbook::Field;
use leptos::prelude::*;

use super::flow::{holds, said};
use crate::app::state::State;

/// A field for a date with a time of day.
#[component]
pub(crate) fn TimeField(
    field: Field,
    label: &'static str,
    value: Signal<String>,
    on_text: Callback<String>,
) -> impl IntoView {
    let state = State::here();
    let id = field.id();
    let below = format!("{id}-below");
    let complaint = Memo::new(move |_| state.complaint(field));
    let wrong = holds(move || complaint.with(Option::is_some));
    view! {
        <div class=said(move || if wrong.get() { "field wrong" } else { "field" }.to_owned())>
            <label for=id.clone()>{label}</label>
            <div class="control">
                <input
                    id=id
                    type="datetime-local"
                    aria-describedby=below.clone()
                    aria-invalid=move || wrong.get().then_some("true")
                    prop:value=value
                    on:change:target=move |event| on_text.run(event.target().value())
                />
            </div>
            <p id=below class=said(move || if wrong.get() { "error" } else { "hint" }.to_owned())>
                {said(move || complaint.get().unwrap_or_default())}
            </p>
        </div>
    }
}
