//! Every method with its formulas.

use fillwright::message::keys::methods as keys;
use fillwright::methods;
use fillwright::methods::{Formula, Method, Symbol};
use fillwright::quantity::notation::Printer;
use fillwright::source::Source;
use fillwright::words::methods::standing;
use fillwright::words::sources::cited;
use leptos::prelude::*;

/// Whether a part of the view is one of the methods.
pub(super) fn hold(part: &str) -> bool {
    methods::ids().any(|id| id == part)
}

/// Every method with its formulas.
pub(super) fn drawn(printer: &Printer) -> Vec<AnyView> {
    methods::methods().iter().map(|method| of_method(method, printer)).collect()
}

fn of_method(method: &Method, printer: &Printer) -> AnyView {
    let words = method.words.iter().map(|it| view! { <p>{it.say()}</p> }.into_any());
    let formulas = method.formulas.iter().map(|it| of_formula(it, printer));
    let inside: Vec<AnyView> = words.chain(formulas).collect();
    view! {
        <details id=method.id class="method">
            <summary>
                <h3>{method.title.say()}</h3>
            </summary>
            {inside}
        </details>
    }
    .into_any()
}

fn of_formula(formula: &Formula, printer: &Printer) -> AnyView {
    let line = &formula.working;
    let value = printer.number(line.value, line.decimals);
    let symbols: Vec<AnyView> = formula.symbols.iter().map(of_symbol).collect();
    let sources: Vec<AnyView> = line.sources.iter().map(of_source).collect();
    view! {
        <div class="working">
            <h4>{line.name.say()}</h4>
            <p class="formula">{format!("{} = {}", line.symbol, line.formula)}</p>
            <dl class="symbols">{symbols}</dl>
            <p>{keys::EXAMPLE.say()}</p>
            <p class="formula">
                {format!("{} = {} = ", line.symbol, line.numbers)}
                <strong>{format!("{value}\u{202f}{}", line.unit)}</strong>
            </p>
            {sources}
        </div>
    }
    .into_any()
}

fn of_symbol(symbol: &Symbol) -> AnyView {
    let unit = if symbol.unit.is_empty() { String::new() } else { format!(", {}", symbol.unit) };
    view! {
        <dt class="formula">{symbol.symbol.clone()}</dt>
        <dd>{format!("{}{unit}", symbol.meaning.say())}</dd>
    }
    .into_any()
}

fn of_source(source: &Source) -> AnyView {
    let words = keys::SourceOfFormula { source: cited(source), how: standing(source) }.say();
    view! { <p class="source">{words}</p> }.into_any()
}
