//! The verdict on the fuel system: whether it holds, what gives first, and what to mind.

use fillwright::answers::hardware::PartStanding;
use fillwright::document::{Field, HardwareForm};
use fillwright::message::keys::frame;
use fillwright::message::keys::hardware as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::workings::owner;
use crate::app::field_errors::FieldErrors;
use crate::app::hardware_memos::{HardwareMemos, Judged};
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::widgets::{
    Bar, Drawn, ErrorSummary, Lead, PrintButton, Shape, Spoken, When, class_of, holds,
    in_a_sentence, mark, said,
};

/// The shape beside the word, which also gives the colour.
fn shape(standing: Option<PartStanding>) -> Shape {
    match standing {
        Some(PartStanding::Enough) => Shape::Disc,
        Some(PartStanding::Tight) => Shape::Half,
        Some(PartStanding::Short) => Shape::Ring,
        Some(PartStanding::NoFigure) | None => Shape::Stroke,
    }
}

/// Whether the fuel system holds, what gives first, and what to mind.
#[component]
pub(super) fn JudgementCard(printing: RwSignal<bool>) -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let known = holds(move || hardware_memos.judged.with(Option::is_some));
    let stale =
        holds(move || hardware_memos.judged.with(|it| it.as_ref().is_some_and(|it| it.stale)));
    let shape = Memo::new(move |_| {
        let judged = hardware_memos.of_judged(|it, _, _| shape(it.answer.overall()));
        judged.unwrap_or(Shape::Stroke)
    });
    let class = said(move || {
        let stale = if stale.get() { " stale-answer" } else { "" };
        format!("judgement {}{stale}", class_of(shape.get()))
    });
    let verdict = Callback::new(move |()| hardware_memos.of_judged(drawn).unwrap_or_default());
    let field_errors = FieldErrors::here().all();
    let lead = Signal::derive(move || if stale.get() { Lead::NotUpdated } else { Lead::Nothing });
    let spoken = said(move || {
        let said = |judged: &Judged, hardware: &HardwareForm, printer: &Printer| {
            let said = hardware::judgement(&judged.answer, hardware, printer);
            format!("{}. {}", said.word, said.more)
        };
        let wrong =
            session.printer.with(|printer| field_errors.with(|it| in_a_sentence(it, printer)));
        if wrong.is_empty() { hardware_memos.of_judged(said).unwrap_or_default() } else { wrong }
    });
    let short = said(move || {
        let word = |judged: &Judged, hardware: &HardwareForm, printer: &Printer| {
            hardware::judgement(&judged.answer, hardware, printer).short
        };
        match (hardware_memos.of_judged(word), stale.get()) {
            (Some(word), false) => word,
            (Some(_), true) => frame::NOT_UPDATED_ALONE.say().to_owned(),
            (None, _) => keys::NOT_JUDGED.say().to_owned(),
        }
    });
    let of_bar = Memo::new(move |_| if stale.get() { Shape::Stroke } else { shape.get() }).into();
    view! {
        <section class="card" id="judgement" tabindex="-1" aria-labelledby="judgement-title">
            <div class="head">
                <h2 id="judgement-title">{keys::HOLDS.say()}</h2>
                <PrintButton printing=printing ready=is_ready(hardware_memos) />
            </div>
            <Spoken words=spoken />
            <ErrorSummary
                id="hardware-to-mend"
                view=View::Hardware
                field_errors=field_errors
                lead=lead
                owner=owner_of
            />
            <div class=class>
                <Drawn what=verdict />
                <When condition=holds(move || !known.get())>
                    <p class="word">{mark(Shape::Stroke)} {keys::NOT_JUDGED.say()}</p>
                </When>
            </div>
            <ul class="cautions note caution" aria-label=keys::CAUTIONS.say()>
                {hardware::CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}
                <li>{hardware::RULES_FIRST.say()}</li>
            </ul>
        </section>
        <Bar href="#/hardware/judgement" words=short shape=of_bar aside=keys::WHY.say() />
    }
}

/// What a field of this view belongs to.
fn owner_of(session: Session, field: Field) -> String {
    session.document.with(|it| owner(field, &it.here.hardware))
}

/// The verdict with its reasons.
fn drawn(judged: &Judged, hardware: &HardwareForm, printer: &Printer) -> Vec<AnyView> {
    let answer = &judged.answer;
    let said = hardware::judgement(answer, hardware, printer);
    let class = if answer.crossed.is_empty() { "word" } else { "word long" };
    let mut lines = vec![
        view! {
            <p class=class>{mark(shape(answer.overall()))} <span>{said.word}</span></p>
            <p class="more">{said.more}</p>
        }
        .into_any(),
    ];
    let reasons = [
        hardware::first_to_give(answer, hardware, printer),
        hardware::limits_of_share(answer, printer),
    ];
    let line = |words: String| view! { <p>{words}</p> }.into_any();
    let warning = |words: String| view! { <p class="note caution">{words}</p> }.into_any();
    lines.extend(reasons.into_iter().flatten().map(line));
    for (is_beyond, words) in answer.air.iter().map(|it| hardware::air(it, hardware, printer)) {
        lines.push(if is_beyond { warning(words) } else { line(words) });
    }
    lines.extend(warnings(judged, hardware, printer).into_iter().map(warning));
    lines
}

/// Limits that the curve crosses, and corrections that go too far.
pub(super) fn warnings(judged: &Judged, hardware: &HardwareForm, printer: &Printer) -> Vec<String> {
    let Some(curve) = judged.reading.curves.get(judged.answer.asked.target) else {
        return Vec::new();
    };
    let crossings = curve.crossings.iter().filter_map(|(form, crossing)| {
        let form = hardware.parts.iter().find(|it| it.id == *form)?;
        Some(hardware::crossing(&hardware::limit(form), crossing, printer))
    });
    let corrections = judged.reading.curves.iter();
    let corrections = corrections.filter_map(|curve| hardware::correction_warning(curve, printer));
    crossings.chain(corrections).collect()
}

/// Whether there is a judgement that can be printed.
pub(super) fn is_ready(hardware_memos: HardwareMemos) -> Signal<bool> {
    holds(move || hardware_memos.judged.with(|it| it.as_ref().is_some_and(|it| !it.stale)))
}
