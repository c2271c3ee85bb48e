//! The catalogue of grades as a table.

use fillwright::fuel::Grade;
use fillwright::fuel::grades::CATALOGUE;
use fillwright::quantity::notation::Printer;
use fillwright::words::methods::{least_octane, may_hold};
use leptos::prelude::*;

use super::constants::{drawn_table, source_cells};

/// The catalogue of grades.
pub(super) fn drawn(printer: &Printer) -> Vec<AnyView> {
    let hint = "A standard often sets only the most ethanol. What is expected is reckoned with, the ends bound the worst case; the circle on a European pump names the most, not what is in it.";
    let headings =
        ["Fuel", "Ethanol", "Octane, at least", "Standard", "Note", "Source", "How sure"];
    let rows = CATALOGUE.iter().map(|it| row(it, printer)).collect();
    vec![
        view! { <p class="hint">{hint}</p> }.into_any(),
        drawn_table("Grades by published standard", &headings, rows),
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
