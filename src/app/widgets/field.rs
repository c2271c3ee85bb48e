use fillwright::logbook::Field;
use leptos::prelude::*;

use crate::app::state::State;

/// A text field with its label above, its unit inside, and its hint or what is
/// wrong below. What is wrong is said when the person leaves the field, and
/// withdrawn as soon as it is put right.
#[component]
pub(crate) fn TextField(
    field: Field,
    #[prop(into)] label: Signal<String>,
    #[prop(into)] value: Signal<String>,
    on_text: Callback<String>,
    #[prop(optional, into)] hint: Option<&'static str>,
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
    let complaint = state.complaint(field);
    let focused = RwSignal::new(false);
    let shown = Memo::new(move |before: Option<&Option<String>>| {
        let now = complaint.get();
        let already = before.is_some_and(Option::is_some);
        if focused.get() && !already { None } else { now }
    });
    let wrong = move || shown.with(Option::is_some);
    let has_unit = move || unit.with(|unit| !unit.is_empty());
    view! {
        <div class="field" class:wrong=wrong>
            <label for=id.clone()>{move || label.get()}</label>
            <div class="control">
                <input
                    id=id
                    type="text"
                    inputmode=if words { "text" } else { "decimal" }
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    aria-describedby=below.clone()
                    aria-invalid=move || wrong().then_some("true")
                    prop:value=move || value.get()
                    on:focus=move |_| focused.set(true)
                    on:blur=move |_| focused.set(false)
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
                <Show when=has_unit>
                    <span class="unit">{move || unit.get()}</span>
                </Show>
            </div>
            <p id=below class=move || if wrong() { "error" } else { "hint" }>
                {move || shown.get().unwrap_or_else(|| hint.unwrap_or_default().to_owned())}
            </p>
        </div>
    }
}
