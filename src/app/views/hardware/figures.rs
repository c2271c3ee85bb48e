//! The card of the figures behind the verdict on a fuel system, with their graphs.

use fillwright::message::keys::hardware as keys;
use leptos::prelude::*;

use super::fluid::Fluid;
use super::tables::{enough, parts, speeds};
use super::workings::Workings;
use super::{share_chart, use_chart};
use crate::app::charts::{Chart, ChartOnScreen};
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::stages::Deferred;
use crate::app::widgets::{Drawn, When, holds};

/// The use of each part over engine speed.
pub(super) fn use_graph(hardware_memos: HardwareMemos) -> Signal<Chart> {
    Memo::new(move |_| {
        let graph = hardware_memos
            .of_judged(|it, hardware, printer| use_chart::graph(&it.answer, hardware, printer));
        graph.unwrap_or_default()
    })
    .into()
}

/// The power that each part supports over the ethanol share.
pub(super) fn share_graph(session: Session, hardware_memos: HardwareMemos) -> Signal<Chart> {
    Memo::new(move |_| {
        let graph = hardware_memos.of_judged(|it, _, printer| {
            session.document.with(|document| share_chart::graph(it, document, printer))
        });
        graph.unwrap_or_default()
    })
    .into()
}

/// The figures behind the verdict.
#[component]
pub(super) fn FiguresCard() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let known = holds(move || hardware_memos.judged.with(Option::is_some));
    let judged = holds(move || {
        hardware_memos.judged.with(|it| it.as_ref().is_some_and(|it| it.answer.standing.is_some()))
    });
    let part_table = Callback::new(move |()| {
        let tables = hardware_memos.of_judged(|it, hardware, printer| {
            vec![parts(&it.answer, hardware, printer), enough(&it.answer, hardware, printer)]
        });
        tables.unwrap_or_default()
    });
    let speed_table = Callback::new(move |()| {
        hardware_memos.of_judged(|it, _, printer| speeds(it, printer)).into_iter().collect()
    });
    view! {
        <When condition=judged>
            <section class="card" aria-labelledby="use-title">
                <h2 id="use-title">{keys::WHAT_GIVES_FIRST.say()}</h2>
                <ChartOnScreen id="use-chart" chart=use_graph(hardware_memos) />
                <Drawn what=part_table />
            </section>
            <Deferred>
                <section class="card" aria-labelledby="share-title">
                    <h2 id="share-title">{keys::HOW_MUCH_ETHANOL.say()}</h2>
                    <ChartOnScreen id="share-chart" chart=share_graph(session, hardware_memos) />
                </section>
            </Deferred>
        </When>
        <When condition=known>
            <Deferred>
                <Fluid />
                <section class="card" aria-labelledby="demand-title">
                    <h2 id="demand-title">{keys::WHAT_ENGINE_TAKES.say()}</h2>
                    <Drawn what=speed_table />
                    <Workings />
                </section>
            </Deferred>
        </When>
    }
}
