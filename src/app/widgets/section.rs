use leptos::prelude::*;

use super::When;
use crate::app::stages::Folded;

/// A part of the question that opens, with what is in it in short.
#[component]
pub(crate) fn Section(
    id: &'static str,
    title: &'static str,
    short: Signal<String>,
    /// Whether something in it is missing or wrong.
    wrong: Signal<bool>,
    #[prop(optional)] open: bool,
    /// Whether it is open, where more depends on that.
    #[prop(optional)]
    opened: Option<RwSignal<bool>>,
    children: Children,
) -> impl IntoView {
    let title_id = format!("{id}-title");
    let labelled_by = title_id.clone();
    let summary = view! {
        <h2 id=title_id>{title}</h2>
        <span class="in-short">{short}</span>
        <When condition=wrong>
            <span class="in-short missing">"Something is missing or wrong"</span>
        </When>
    };
    let opened = opened.unwrap_or_else(|| RwSignal::new(open));
    view! {
        <section class="card opens" aria-labelledby=labelled_by>
            <Folded id=id open=open opened=opened summary=summary.into_any()>
                <div class="inside">{children()}</div>
            </Folded>
        </section>
    }
}
