use fillwright::logbook::Field;
use leptos::prelude::*;

use super::flow::{When, holds, said};
use crate::app::state::State;

/// A text field with its label above, its unit inside, and its hint or what is
/// wrong below. What is wrong is said when the person leaves the field, and
/// withdrawn as soon as it is put right.
#[component]
pub(crate) fn TextField(
    field: Field,
    label: &'static str,
    value: Signal<String>,
    on_text: Callback<String>,
    #[prop(optional)] hint: &'static str,
    #[prop(optional, into)] unit: Signal<String>,
    /// Whether more than a number is usual here, so that the whole keyboard helps.
    #[prop(optional)]
    words: bool,
    /// Whether the text counts only once the person leaves the field.
    #[prop(optional)]
    when_left: bool,
) -> impl IntoView {
    let state = State::here();
    let id = field.id();
    let below = format!("{id}-below");
    let focused = RwSignal::new(false);
    let complaint = Memo::new(move |before: Option<&Option<String>>| {
        let now = state.complaint(field);
        let already = before.is_some_and(Option::is_some);
        if focused.get() && !already { None } else { now }
    });
    let wrong = holds(move || complaint.with(Option::is_some));
    let class = said(move || if wrong.get() { "field wrong" } else { "field" }.to_owned());
    let kind = said(move || if wrong.get() { "error" } else { "hint" }.to_owned());
    let invalid = move || wrong.get().then_some("true");
    let words_below = said(move || complaint.get().unwrap_or_else(|| hint.to_owned()));
    view! {
        <div class=class>
            <label for=id.clone()>{label}</label>
            <div class="control">
                <input
                    id=id
                    type="text"
                    inputmode=if words { "text" } else { "decimal" }
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    aria-describedby=below.clone()
                    aria-invalid=invalid
                    prop:value=value
                    on:focus=move |_| {
                        focused.set(true);
                        state.typing.set(true);
                    }
                    on:blur=move |_| {
                        focused.set(false);
                        state.leave_field();
                    }
                    on:input:target=move |event| {
                        if !when_left {
                            on_text.run(event.target().value());
                        }
                    }
                    on:change:target=move |event| {
                        if when_left {
                            on_text.run(event.target().value());
                        }
                    }
                />
                <When condition=holds(move || unit.with(|unit| !unit.is_empty()))>
                    <span class="unit">{unit}</span>
                </When>
            </div>
            <p id=below class=kind>
                {words_below}
            </p>
        </div>
    }
}
