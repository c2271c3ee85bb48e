//! A field for a date with a time of day.

use fillwright::document::Field;
use leptos::prelude::*;

use super::below::Below;
use crate::app::session::Session;

/// A field for a date with a time of day.
#[component]
pub(crate) fn TimeField(
    field: Field,
    label: &'static str,
    /// What is done with a time: it belongs together with what the clock shows.
    on_text: Callback<String>,
) -> impl IntoView {
    let id = field.id();
    let below_id = format!("{id}-below");
    // A time counts only once it is whole, so there is nothing to wait for.
    let below = Below::of(field, "", Signal::stored(false));
    view! {
        <div class=below.class>
            <label for=id.clone()>{label}</label>
            <div class="control">
                <input
                    id=id
                    type="datetime-local"
                    aria-describedby=below_id.clone()
                    aria-invalid=move || below.wrong.get().then_some("true")
                    prop:value=Session::here().typed(field)
                    on:change:target=move |event| on_text.run(event.target().value())
                />
            </div>
            <p id=below_id class="hint">
                {below.words}
            </p>
        </div>
    }
}
