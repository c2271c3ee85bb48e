//! A part of the question that opens, with what is in it in short.

use leptos::prelude::*;

use super::need::{Need, NeedInShort};
use crate::app::stages::Folded;

/// A part of the question that opens, with what is in it in short.
#[component]
pub(crate) fn Section(
    id: &'static str,
    title: &'static str,
    short: Signal<String>,
    /// What it needs before there is an answer.
    need: Signal<Need>,
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
        <NeedInShort need=need />
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
