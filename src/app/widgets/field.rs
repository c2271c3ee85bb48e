//! A field for a line of text.

use fillwright::document::Field;
use fillwright::message::Message;
use fillwright::message::keys::contents as keys;
use leptos::prelude::*;

use super::below::Below;
use crate::app::session::Session;

/// What to say below a field for a level.
pub(crate) const LEVEL_HINT: Message = keys::LEVEL_HINT;

/// What to say below a field for an octane number.
pub(crate) const OCTANE_HINT: Message = keys::OCTANE_HINT;

/// A field for the text that the document holds for it, with its label above, its unit
/// inside, and its hint or what is wrong below.
#[component]
pub(crate) fn TextField(
    field: Field,
    #[prop(into)] label: Signal<String>,
    #[prop(optional)] hint: &'static str,
    /// Whether more than a number is usual here, so that the whole keyboard helps.
    #[prop(optional)]
    words: bool,
    /// Whether the text counts only once the person leaves the field.
    #[prop(optional)]
    when_left: bool,
    /// What is done with a text, where that is more than to take it into the document.
    #[prop(optional)]
    on_text: Option<Callback<String>>,
) -> impl IntoView {
    let session = Session::here();
    let id = field.id();
    let below_id = format!("{id}-below");
    let focused = RwSignal::new(false);
    let value = session.typed(field);
    let on_text = on_text.unwrap_or_else(|| session.type_into(field));
    let below = Below::of(field, hint, focused.into());
    view! {
        <div class=below.class>
            <label for=id.clone()>{label}</label>
            <div class="control">
                <input
                    id=id
                    type="text"
                    inputmode=if words { "text" } else { "decimal" }
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    aria-describedby=below_id.clone()
                    aria-invalid=move || below.wrong.get().then_some("true")
                    prop:value=value
                    on:focus=move |_| {
                        focused.set(true);
                        session.enter_field(field, below.wrong.get_untracked());
                    }
                    on:blur=move |_| {
                        focused.set(false);
                        session.leave_field();
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
                <span class="unit">{session.unit_of(field)}</span>
            </div>
            <p id=below_id class="hint">
                {below.words}
            </p>
        </div>
    }
}
