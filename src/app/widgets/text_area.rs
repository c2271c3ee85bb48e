//! A field for several lines.

use fillwright::document::Field;
use leptos::prelude::*;

use super::below::Below;
use crate::app::session::Session;

/// A field for several lines, as a table that is pasted has them, with its label
/// above and its hint or what is wrong below.
#[component]
pub(crate) fn TextArea(
    field: Field,
    label: &'static str,
    #[prop(optional)] hint: &'static str,
    /// How many lines are in sight.
    #[prop(default = 8)]
    rows: u32,
) -> impl IntoView {
    let session = Session::here();
    let id = field.id();
    let below_id = format!("{id}-below");
    let focused = RwSignal::new(false);
    let on_text = session.type_into(field);
    let below = Below::of(field, hint, focused.into());
    view! {
        <div class=below.class>
            <label for=id.clone()>{label}</label>
            <div class="control">
                <textarea
                    id=id
                    rows=rows.to_string()
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    aria-describedby=below_id.clone()
                    aria-invalid=move || below.wrong.get().then_some("true")
                    prop:value=session.typed(field)
                    on:focus=move |_| {
                        focused.set(true);
                        session.enter_field(field, below.wrong.get_untracked());
                    }
                    on:blur=move |_| {
                        focused.set(false);
                        session.leave_field();
                    }
                    on:input:target=move |event| on_text.run(event.target().value())
                ></textarea>
            </div>
            <p id=below_id class="hint">
                {below.words}
            </p>
        </div>
    }
}
