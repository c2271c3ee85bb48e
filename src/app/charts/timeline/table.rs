//! The chart as a table.

use leptos::prelude::*;

use super::Timeline;
use super::reading::{Noted, Print, Reading};
use crate::app::widgets::Drawn;

/// So many rows are read in a table; the whole log is for a spreadsheet.
const ROWS: usize = 50;

const HEADINGS: [&str; 3] = ["When", "Expected", "Noted"];

/// The points and what was noted at them, newest first.
#[component]
pub(super) fn Table(timeline: Signal<Timeline>, print: Print) -> impl IntoView {
    let opened = RwSignal::new(false);
    let table =
        Callback::new(
            move |()| {
                if opened.get() { timeline.with(|it| drawn(it, print)) } else { Vec::new() }
            },
        );
    view! {
        <details on:toggle:target=move |event| opened.set(event.target().has_attribute("open"))>
            <summary>"As a table"</summary>
            <Drawn what=table />
        </details>
    }
}

fn drawn(timeline: &Timeline, print: Print) -> Vec<AnyView> {
    let count = timeline.points.len();
    let rows: Vec<_> = (0..count)
        .rev()
        .take(ROWS)
        .filter_map(|index| Reading::of(timeline, index, print))
        .map(row)
        .collect();
    let caption = match count.checked_sub(ROWS) {
        Some(older @ 1..) => {
            format!("{}, newest first; {older} older rows are left out", timeline.title)
        }
        _ => format!("{}, newest first", timeline.title),
    };
    let table = view! {
        <table class="readings">
            <caption>{caption}</caption>
            <thead>
                <tr>{HEADINGS.into_iter().map(heading).collect_view()}</tr>
            </thead>
            <tbody>{rows}</tbody>
        </table>
    };
    vec![table.into_any()]
}

fn heading(words: &'static str) -> AnyView {
    view! { <th scope="col">{words}</th> }.into_any()
}

fn row(reading: Reading) -> AnyView {
    let ends = reading.ends();
    view! {
        <tr>
            <th scope="row">{reading.when}</th>
            <td>
                <strong class="number">{reading.value}</strong>
                {ends}
            </td>
            <td>{noted(reading.noted)}</td>
        </tr>
    }
    .into_any()
}

/// What was noted, with links to where the log says so.
pub(super) fn noted(noted: Vec<Noted>) -> Vec<AnyView> {
    let each = |(words, href): Noted| match href {
        Some(href) => view! { <a href=href>{words}</a> }.into_any(),
        None => view! { <span>{words}</span> }.into_any(),
    };
    noted.into_iter().map(each).collect()
}
