use fillwright::logbook::{Answer, Printer};
use fillwright::source::Source;
use leptos::prelude::*;

use crate::app::state::State;

fn cited(source: &Source) -> String {
    match source.caveat() {
        Some(caveat) => format!("{caveat}: {}", source.citation),
        None => source.citation.to_owned(),
    }
}

/// How each number came about, for checking by hand.
#[component]
pub(super) fn Workings() -> impl IntoView {
    let state = State::here();
    let open = RwSignal::new(false);
    // Laid out only while somebody looks.
    let lines = move || {
        if !open.get() {
            return Vec::new();
        }
        state.shown.with(|it| it.answer.as_ref().map(|it| it.workings.clone())).unwrap_or_default()
    };
    let orders = move || {
        let answer = state.shown.with(|it| it.answer.clone()).filter(|_| open.get());
        answer.map(|answer| state.printer.with(|printer| order_rows(&answer, printer)))
    };
    view! {
        <details
            id="workings"
            on:toggle:target=move |event| open.set(event.target().has_attribute("open"))
        >
            <summary>"Workings and sources"</summary>
            {move || {
                lines()
                    .into_iter()
                    .map(|line| {
                        let value = state.printer.with(|it| it.number(line.value, line.decimals));
                        let sources: Vec<String> = line.sources.iter().map(cited).collect();
                        view! {
                            <div class="working">
                                <p>
                                    {line.name} ": "
                                    <strong class="number">{value} "\u{202f}" {line.unit}</strong>
                                </p>
                                <p class="formula">{line.symbol.clone()} " = " {line.formula}</p>
                                <p class="formula">{line.symbol} " = " {line.numbers}</p>
                                <p class="source">"Source: " {sources.join("; ")}</p>
                            </div>
                        }
                    })
                    .collect::<Vec<_>>()
            }}
            <h3>"Orders of pouring"</h3>
            <p class="hint">
                "Topping up to the click with the right fuel takes the gauge's error out of the blend; with the wrong one it makes it worse. The first row is the one proposed."
            </p>
            <table class="orders">
                <thead>
                    <tr>
                        <th scope="col">"Last, to the click"</th>
                        <th scope="col">"Worst case"</th>
                        <th scope="col">"By the gauge alone"</th>
                    </tr>
                </thead>
                <tbody>
                    {move || {
                        orders()
                            .unwrap_or_default()
                            .into_iter()
                            .map(|[last, worst, gauge]| {
                                view! {
                                    <tr>
                                        <th scope="row">{last}</th>
                                        <td>{worst}</td>
                                        <td>{gauge}</td>
                                    </tr>
                                }
                            })
                            .collect::<Vec<_>>()
                    }}
                </tbody>
            </table>
        </details>
    }
}

fn order_rows(answer: &Answer, printer: &Printer) -> Vec<[String; 3]> {
    let percent = |share: fillwright::quantity::Share| printer.number(share.percent(), 1);
    let fixed = answer.asked.problem.fixed_order(&answer.plan);
    let row = |order: &fillwright::fill::Order| {
        let last = order.top_up().map_or_else(
            || "none: fixed volumes".to_owned(),
            |fuel| answer.asked.fuels[fuel].name.clone(),
        );
        let share = order.worst.share;
        let (a, b) = order.from_level;
        let (low, high) = if a < b { (a, b) } else { (b, a) };
        [
            last,
            format!("{} to {}\u{202f}%", percent(share.low()), percent(share.high())),
            format!("{} to {}\u{202f}%", percent(low), percent(high)),
        ]
    };
    let mut rows: Vec<_> = answer.orders.iter().map(row).collect();
    if answer.order.top_up().is_some() {
        rows.push(row(&fixed));
    }
    rows
}
