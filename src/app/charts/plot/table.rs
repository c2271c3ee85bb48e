//! The chart as a table.

use leptos::prelude::*;

use crate::app::widgets::Drawn;

/// So many rows are read in a table.
pub(crate) const ROWS: usize = 50;

/// What opens the table; it is made when it is opened.
#[component]
pub(crate) fn AsTable(what: Callback<(), Vec<AnyView>>) -> impl IntoView {
    let opened = RwSignal::new(false);
    let shown = Callback::new(move |()| if opened.get() { what.run(()) } else { Vec::new() });
    view! {
        <details on:toggle:target=move |event| opened.set(event.target().has_attribute("open"))>
            <summary>"As a table"</summary>
            <Drawn what=shown />
        </details>
    }
}

/// A table with its headings.
pub(crate) fn table(
    class: &'static str,
    caption: String,
    headings: Vec<AnyView>,
    rows: Vec<AnyView>,
) -> AnyView {
    view! {
        <table class=class>
            <caption>{caption}</caption>
            <thead>
                <tr>{headings}</tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
    }
    .into_any()
}

/// The heading of a column.
pub(crate) fn heading(words: String) -> AnyView {
    view! { <th scope="col">{words}</th> }.into_any()
}

/// Room for a table that may be wider than the page; it is moved by keys too.
pub(crate) fn wide(label: String, table: AnyView) -> AnyView {
    view! {
        <div class="wide" tabindex="0" role="region" aria-label=label>
            {table}
        </div>
    }
    .into_any()
}
