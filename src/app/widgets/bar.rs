//! The bar with the short answer that stays in sight.

use leptos::prelude::*;

use super::flow::Drawn;
use super::verdict::{Shape, class_of, mark};
use crate::app::signals::said;

/// The short answer that stays in sight: words, and beside them the verdict's mark and
/// colour, both by the one shape.
#[component]
pub(crate) fn Bar(
    /// Where the whole answer stands.
    href: &'static str,
    words: Signal<String>,
    shape: Signal<Shape>,
    /// What following it shows.
    #[prop(optional)]
    aside: &'static str,
    /// The figure that matters most, where there is one.
    #[prop(optional)]
    figure: Signal<String>,
) -> impl IntoView {
    let class = said(move || format!("short {}", class_of(shape.get())));
    let drawn = Callback::new(move |()| vec![mark(shape.get())]);
    view! {
        <a class=class href=href>
            <span class="said">
                <Drawn what=drawn />
                <span>{words}</span>
            </span>
            <small>{aside}</small>
            <span class="number">{figure}</span>
        </a>
    }
}
