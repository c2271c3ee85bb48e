//! What is printed.

use fillwright::answers::tank::{History, TankAnswer};
use fillwright::document::CarFile;
use fillwright::message::keys::tank as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::tank;
use leptos::prelude::*;

use super::log::Told;
use super::now::{CAUTIONS, verdicts};
use crate::app::device;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{Drawn, sheet_head, sheet_sources, table};

/// So many entries of the log fit on two pages.
const ENTRIES: usize = 60;

/// The sheet.
#[component]
pub(super) fn Paper() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let content = Callback::new(move |()| {
        let Some(answer) = tank_memos.answer.get() else { return Vec::new() };
        let workings = tank_memos
            .course
            .with(|course| tank_memos.history.with(|history| history.workings(course)));
        tank_memos.history.with(|history| {
            session.document.with(|document| {
                session.printer.with(|printer| {
                    let mut content = drawn(&answer, history, &document.here, printer);
                    content.push(sheet_sources(&workings));
                    content
                })
            })
        })
    });
    view! { <Drawn what=content /> }
}

fn drawn(answer: &TankAnswer, history: &History, car: &CarFile, printer: &Printer) -> Vec<AnyView> {
    let as_of = keys::AsOf { date: device::date(answer.as_of.local_minutes(), true) }.say();
    let (blend, between) = tank::blend(answer.estimate.share, printer);
    let old = answer.old_blend.and_then(|old| tank::old_blend(old, printer));
    vec![
        sheet_head(keys::IN_TANK.say(), car, &as_of),
        view! {
            <section>
                <h2>{keys::AboutBlend { blend, between }.say()}</h2>
                <p>{tank::level_and_octane(&answer.estimate, printer)}</p>
                <p>{tank::possible(&answer.estimate, printer)}</p>
            </section>
            <section>
                <h2>{keys::WHICH.say()}</h2>
                <p>{tank::none_usable(answer)}</p>
                <ul class="plain">{verdicts(answer, printer)}</ul>
                <p>{old}</p>
            </section>
            <section>
                <h2>{keys::LOG.say()}</h2>
                {log(history, car, printer)}
            </section>
            <section>
                <h2>{keys::CAUTIONS.say()}</h2>
                <ul>{CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}</ul>
            </section>
        }
        .into_any(),
    ]
}

/// The latest entries, and what each made of the estimate.
fn log(history: &History, car: &CarFile, printer: &Printer) -> AnyView {
    let headings = [keys::WHEN.say(), keys::WHAT.say(), keys::WHERE.say(), keys::TANK_AFTER.say()];
    let headings = headings.map(str::to_owned).into();
    let latest = history.replays.iter().rev().take(ENTRIES);
    let rows: Vec<AnyView> = latest
        .filter_map(|replayed| {
            let told = Told::of(car.log.find(&replayed.event)?, replayed, printer);
            let what = format!("{} {}", told.kind, told.detail);
            let row = view! {
                <tr>
                    <th scope="row">{told.when}</th>
                    <td>{what}</td>
                    <td>{told.place}</td>
                    <td>{told.then} " " {told.trouble}</td>
                </tr>
            };
            Some(row.into_any())
        })
        .collect();
    let (shown, all) = (rows.len(), history.replays.len());
    let caption = if shown < all {
        keys::LatestEntries { shown: shown.to_string(), all: all.to_string() }.say()
    } else {
        keys::ALL_ENTRIES.say().to_owned()
    };
    table("readings", caption, headings, rows)
}
