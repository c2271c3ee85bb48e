//! A button.

use leptos::prelude::*;

/// A button.
#[component]
pub(crate) fn Button(
    #[prop(into)] label: String,
    on_press: Callback<()>,
    /// Further classes.
    #[prop(optional)]
    look: &'static str,
    /// What a screen reader says instead of the label.
    #[prop(optional, into)]
    name: MaybeProp<String>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class=format!("button {look}")
            aria-label=move || name.get()
            on:click=move |_| on_press.run(())
        >
            {label}
        </button>
    }
}
