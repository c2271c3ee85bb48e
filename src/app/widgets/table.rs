//! Tables of figures.

use leptos::prelude::*;

/// A table with the headings of its columns.
pub(crate) fn table(
    class: &'static str,
    caption: String,
    headings: Vec<String>,
    rows: Vec<AnyView>,
) -> AnyView {
    let heading = |it: String| view! { <th scope="col">{it}</th> }.into_any();
    let headings: Vec<AnyView> = headings.into_iter().map(heading).collect();
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

/// A table that may be wider than the page; it is moved by keys too.
pub(crate) fn wide_table(
    class: &'static str,
    caption: String,
    headings: Vec<String>,
    rows: Vec<AnyView>,
) -> AnyView {
    let label = caption.clone();
    view! {
        <div class="wide" tabindex="0" role="region" aria-label=label>
            {table(class, caption, headings, rows)}
        </div>
    }
    .into_any()
}
