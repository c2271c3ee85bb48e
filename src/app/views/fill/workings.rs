//! The workings of a fill, for checking by hand.

use fillwright::answers::fill::FillAnswer;
use fillwright::message::keys::fill as keys;
use fillwright::message::keys::frame;
use fillwright::quantity::notation::Printer;
use fillwright::quantity::{Band, Share};
use leptos::prelude::*;

use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::widgets::{Drawn, working_shown};

/// How each number came about, for checking by hand.
#[component]
pub(super) fn Workings() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    // Laid out only while somebody looks.
    let open = RwSignal::new(false);
    let answer = move || fill_memos.answer().filter(|_| open.get());
    let lines = Callback::new(move |()| {
        let Some(answer) = answer() else { return Vec::new() };
        let lines = answer.workings();
        session
            .printer
            .with(|printer| lines.iter().map(|line| working_shown(line, printer)).collect())
    });
    let orders = Callback::new(move |()| {
        let Some(answer) = answer() else { return Vec::new() };
        let rows = session.printer.with(|printer| order_rows(&answer, printer));
        rows.into_iter()
            .map(|[last, worst, gauge]| {
                view! {
                    <tr>
                        <th scope="row">{last}</th>
                        <td>{worst}</td>
                        <td>{gauge}</td>
                    </tr>
                }
                .into_any()
            })
            .collect()
    });
    view! {
        <details
            id="workings"
            on:toggle:target=move |event| open.set(event.target().has_attribute("open"))
        >
            <summary>{frame::WORKINGS.say()}</summary>
            <p class="hint">
                <a href="#/methods/mixing">{frame::ALL_FORMULAS.say()}</a>
            </p>
            <Drawn what=lines />
            <h3>{keys::ORDERS.say()}</h3>
            <p class="hint">
                {keys::ORDERS_MEAN.say()}
            </p>
            <table class="orders">
                <thead>
                    <tr>
                        <th scope="col">{keys::LAST_TO_CLICK.say()}</th>
                        <th scope="col">{keys::WORST_CASE.say()}</th>
                        <th scope="col">{keys::BY_GAUGE_ALONE.say()}</th>
                    </tr>
                </thead>
                <tbody>
                    <Drawn what=orders />
                </tbody>
            </table>
        </details>
    }
}

fn order_rows(answer: &FillAnswer, printer: &Printer) -> Vec<[String; 3]> {
    let told = |band: Band<Share>| {
        let [low, _, high] = printer.number_ends(band.map(Share::percent), 1);
        keys::Shares { low, high }.say()
    };
    let fixed = answer.asked.problem.fixed_order(&answer.plan);
    let row = |order: &fillwright::fill::Order| {
        let last = order.top_up().map_or_else(
            || keys::FIXED_VOLUMES.say().to_owned(),
            |fuel| answer.asked.fuels[fuel].name.clone(),
        );
        let share = order.worst.share;
        let (one, other) = order.from_level;
        let from_level = Band::enclosing(one, [one, other]).unwrap_or(Band::exact(one));
        [last, told(share), told(from_level)]
    };
    let mut rows: Vec<_> = answer.orders.iter().map(row).collect();
    if answer.order.top_up().is_some() {
        rows.push(row(&fixed));
    }
    rows
}
