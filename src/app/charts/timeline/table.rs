//! The log of the chart as a table.

use leptos::prelude::*;

use super::Timeline;
use super::reading::{Noted, Print, Reading};
use crate::app::charts::plot::{ROWS, heading, table};

const HEADINGS: [&str; 3] = ["When", "Expected", "Noted"];

/// The points and what was noted at them, newest first; the whole log is for a
/// spreadsheet.
pub(super) fn drawn(timeline: &Timeline, print: Print) -> Vec<AnyView> {
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
    let headings = HEADINGS.map(|it| heading(it.to_owned())).into();
    vec![table("readings", caption, headings, rows)]
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
