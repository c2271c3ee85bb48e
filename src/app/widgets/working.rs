//! A number with its formula and its sources, as it is shown.

use fillwright::message::keys::methods as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::sources::cited;
use fillwright::workings::Working;
use leptos::prelude::*;

/// A number with its formula and its sources.
pub(crate) fn working_shown(line: &Working, printer: &Printer) -> AnyView {
    let value = printer.number(line.value, line.decimals);
    let sources: Vec<String> = line.sources.iter().map(cited).collect();
    view! {
        <div class="working">
            <p>
                {format!("{}: ", line.name.say())}
                <strong class="number">{format!("{value}\u{202f}{}", line.unit)}</strong>
            </p>
            <p class="formula">{format!("{} = {}", line.symbol, line.formula)}</p>
            <p class="formula">{format!("{} = {}", line.symbol, line.numbers)}</p>
            <p class="source">{keys::SourcesOfNumber { sources: sources.join("; ") }.say()}</p>
        </div>
    }
    .into_any()
}
