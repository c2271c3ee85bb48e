//! The catalogue of grades as a table.

use fillwright::fuel::Grade;
use fillwright::fuel::grades::catalogue;
use fillwright::message::keys::methods as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::methods::{least_octane, may_hold};
use leptos::prelude::*;

use super::constants::{drawn_table, source_cells};

/// The catalogue of grades.
pub(super) fn drawn(printer: &Printer) -> Vec<AnyView> {
    let headings = [
        keys::FUEL,
        keys::ETHANOL,
        keys::OCTANE,
        keys::STANDARD,
        keys::NOTE,
        keys::SOURCE,
        keys::HOW_SURE,
    ];
    let rows = catalogue().map(|it| row(it, printer)).collect();
    vec![
        view! { <p class="hint">{keys::GRADES_MEAN.say()}</p> }.into_any(),
        drawn_table(keys::GRADES_CAPTION, &headings, rows),
    ]
}

fn row(grade: &Grade, printer: &Printer) -> AnyView {
    view! {
        <tr>
            <th scope="row">
                {grade.name.say()} " " <small>{grade.region.say()}</small>
            </th>
            <td class="sentence">{may_hold(grade, printer)}</td>
            <td class="sentence">{least_octane(grade, printer)}</td>
            <td class="sentence">{grade.standard.say()}</td>
            <td class="sentence">{grade.note.say()}</td>
            {source_cells(&grade.source)}
        </tr>
    }
    .into_any()
}
