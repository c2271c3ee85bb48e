use leptos::prelude::*;

use super::When;

/// A part of the question that opens, with what is in it in short.
#[component]
pub(crate) fn Section(
    id: &'static str,
    title: &'static str,
    short: Signal<String>,
    /// Whether something in it is missing or wrong.
    wrong: Signal<bool>,
    #[prop(optional)] open: bool,
    /// Told whether it is open, where that decides what is laid out in it.
    #[prop(optional)]
    opened: Option<RwSignal<bool>>,
    children: Children,
) -> impl IntoView {
    let title_id = format!("{id}-title");
    let labelled_by = title_id.clone();
    let toggled = move |is_open| {
        if let Some(opened) = opened {
            opened.set(is_open);
        }
    };
    view! {
        <section class="card opens" aria-labelledby=labelled_by>
            <details
                id=id
                open=open
                on:toggle:target=move |event| toggled(event.target().has_attribute("open"))
            >
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
