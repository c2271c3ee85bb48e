//! The tables of all constants.

use fillwright::fuel::{self, Constant};
use fillwright::message::Message;
use fillwright::message::keys::methods as keys;
use fillwright::quantity::notation::Printer;
use fillwright::tank::{self, Figure};
use fillwright::words::methods::{as_stated, standing};
use fillwright::words::sources::cited;
use fillwright::{hardware, source::Source};
use leptos::prelude::*;

use crate::app::widgets::wide_table;

/// The tables of all constants.
pub(super) fn drawn(printer: &Printer) -> Vec<AnyView> {
    let of = |caption: Message, constants: &[&Constant]| {
        let headings = [keys::CONSTANT, keys::SYMBOL, keys::VALUE, keys::SOURCE, keys::HOW_SURE];
        let rows = constants.iter().map(|it| constant(it, printer)).collect();
        drawn_table(caption, &headings, rows)
    };
    let figures = tank::figures().iter().map(|it| figure(it, printer)).collect();
    let headings = [keys::FIGURE, keys::VALUE, keys::SOURCE, keys::HOW_SURE];
    vec![
        of(keys::FUELS_AND_AIR, fuel::constants::ALL),
        of(keys::FUEL_SYSTEM, hardware::constants::ALL),
        drawn_table(keys::TANK_AND_READINGS, &headings, figures),
    ]
}

/// A table that is wider than a phone.
pub(super) fn drawn_table(caption: Message, headings: &[Message], rows: Vec<AnyView>) -> AnyView {
    let headings = headings.iter().map(|it| it.say().to_owned()).collect();
    wide_table("readings cites", caption.say().to_owned(), headings, rows)
}

fn constant(it: &Constant, printer: &Printer) -> AnyView {
    let value = as_stated(it.value, if it.unit == "1" { "" } else { it.unit }, printer);
    view! {
        <tr>
            <th scope="row">{it.name.say()}</th>
            <td class="formula">{it.symbol}</td>
            <td>
                <span class="number">{value}</span>
            </td>
            {source_cells(&it.source)}
        </tr>
    }
    .into_any()
}

fn figure(it: &Figure, printer: &Printer) -> AnyView {
    let values: Vec<String> =
        it.values.iter().map(|value| as_stated(*value, it.unit, printer)).collect();
    view! {
        <tr>
            <th scope="row">{it.name.say()}</th>
            <td>
                <span class="number">{values.join(", ")}</span>
            </td>
            {source_cells(&it.source)}
        </tr>
    }
    .into_any()
}

/// The source, and how far it can be relied on.
pub(super) fn source_cells(source: &Source) -> [AnyView; 2] {
    [cited(source), standing(source)]
        .map(|words| view! { <td class="sentence">{words}</td> }.into_any())
}
