//! What is printed.

use fillwright::answers::hardware::HardwareReading;
use fillwright::document::{Document, Mark};
use fillwright::message::keys::hardware as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::hardware::{self, Fact};
use leptos::prelude::*;

use super::figures::{share_graph, use_graph};
use super::part_rows::{LIMITS, marks_of, rows_of};
use super::slots::{Owner, Row};
use super::tables::{enough, parts, speeds, with_fluid};
use super::{engine, gains, judgement, load};
use crate::app::charts::ChartOnPaper;
use crate::app::hardware_memos::{HardwareMemos, Judged};
use crate::app::session::Session;
use crate::app::widgets::{Drawn, facts, sheet_head, sheet_sources};

/// The sheet.
#[component]
pub(super) fn Paper() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let content = Callback::new(move |()| {
        hardware_memos
            .of_judged(|judged, _, printer| {
                session.document.with(|document| drawn(judged, document, printer))
            })
            .unwrap_or_default()
    });
    let sources = Callback::new(move |()| {
        let lines =
            hardware_memos.of_judged(|judged, _, _| judged.answer.workings(&judged.reading));
        vec![sheet_sources(&lines.unwrap_or_default())]
    });
    view! {
        <Drawn what=content />
        <section>
            <ChartOnPaper id="use-on-paper" chart=use_graph(hardware_memos) />
        </section>
        <section>
            <ChartOnPaper id="share-on-paper" chart=share_graph(session, hardware_memos) />
        </section>
        <section>
            <h2>{keys::CAUTIONS.say()}</h2>
            <ul>
                {hardware::CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}
                <li>{hardware::RULES_FIRST.say()}</li>
            </ul>
        </section>
        <Drawn what=sources />
    }
}

/// All but the pictures.
fn drawn(judged: &Judged, document: &Document, printer: &Printer) -> Vec<AnyView> {
    let car = &document.here;
    let (answer, reading, hardware) = (&judged.answer, &judged.reading, &car.hardware);
    let verdict = hardware::judgement(answer, hardware, printer);
    let mut said = vec![verdict.more];
    said.extend(hardware::first_to_give(answer, hardware, printer));
    said.extend(hardware::limits_of_share(answer, printer));
    said.extend(answer.air.iter().map(|it| hardware::air(it, hardware, printer).1));
    said.extend(judgement::warnings(judged, hardware, printer));
    let said: Vec<AnyView> = said.into_iter().map(|it| view! { <p>{it}</p> }.into_any()).collect();
    let load = format!("{}.", hardware::load_in_short(reading, printer));
    let mut views = vec![
        sheet_head(keys::FUEL_SYSTEM.say(), car, &load),
        view! {
            <section>
                <h2>{verdict.word}</h2>
                {said}
            </section>
        }
        .into_any(),
    ];
    for (title, list) in gains::groups(reading, printer) {
        views.push(group(title, list));
    }
    views.push(group(keys::ENGINE.say().into(), engine_facts(document, reading, printer)));
    for form in &hardware.parts {
        let rows = rows_of(form.kind).iter().filter(|row| row.is_of(form));
        let mut list = values(rows, document, Owner::Part(form.id), reading, printer);
        let ticked = marks_of(form.kind).iter().filter(|(mark, _)| form.is(*mark));
        list.extend(
            ticked.map(|(_, label)| Fact::new(label.say(), keys::YES.say().into(), String::new())),
        );
        let part = hardware::part(form);
        let title = match (LIMITS.contains(&form.kind), form.is(Mark::SetAside)) {
            (false, false) => part,
            (false, true) => keys::PartSetAside { part }.say(),
            (true, false) => keys::LimitOfPart { part }.say(),
            (true, true) => keys::LimitSetAside { part }.say(),
        };
        views.push(group(title, list));
    }
    views.push(
        view! {
            <section>
                <h2>{keys::RESULTS.say()}</h2>
                {parts(answer, hardware, printer)} {enough(answer, hardware, printer)}
                {answer.fluid.map(|_| with_fluid(answer, hardware, printer))}
                {speeds(judged, printer)}
            </section>
        }
        .into_any(),
    );
    views
}

/// A group of figures.
fn group(title: String, list: Vec<Fact>) -> AnyView {
    view! {
        <section class="group">
            <h2>{title}</h2>
            <dl>{facts(list)}</dl>
        </section>
    }
    .into_any()
}

fn engine_facts(document: &Document, reading: &HardwareReading, printer: &Printer) -> Vec<Fact> {
    let rows = load::ALL.iter().chain(&engine::ALL).flat_map(|rows| rows.iter());
    let mut list = values(rows, document, Owner::Engine, reading, printer);
    if let Some(loss) = reading.curves.iter().find_map(|curve| curve.loss) {
        let (value, range) = hardware::add_on_figures(loss, printer);
        list.push(Fact::new(keys::LOSS_ADDED.say(), value, range));
    }
    list
}

/// What was typed, and what was taken where nothing was.
fn values<'a>(
    rows: impl Iterator<Item = &'a Row>,
    document: &Document,
    owner: Owner,
    reading: &HardwareReading,
    printer: &Printer,
) -> Vec<Fact> {
    rows.filter_map(|row| {
        if let Some(typed) = row.typed(document, owner, printer) {
            return Some(Fact::new(row.label.say(), typed, String::new()));
        }
        let assumed = reading.assumptions.iter().find(|it| it.field == owner.field(row.slot))?;
        Some(Fact::new(
            row.label.say(),
            hardware::taken(&assumed.taken),
            keys::ASSUMED.say().into(),
        ))
    })
    .collect()
}
