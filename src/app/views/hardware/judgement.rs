use fillwright::logbook::workshop::{Standing, Workshop};
use fillwright::logbook::{Complaint, Printer};
use leptos::prelude::*;

use super::sheet::is_ready;
use super::tables::of_judged;
use super::workings::owner;
use crate::app::state::{Judged, State};
use crate::app::widgets::{Drawn, PrintButton, Shape, When, holds, mark, said};
use crate::app::wording::hardware;

/// So many things that are missing are named at a time.
const NAMED: usize = 6;

/// The shape beside the word.
fn shape(standing: Option<Standing>) -> Shape {
    match standing {
        Some(Standing::Enough) => Shape::Disc,
        Some(Standing::Tight) => Shape::Half,
        Some(Standing::Short) => Shape::Ring,
        Some(Standing::NoFigure) | None => Shape::Stroke,
    }
}

/// Whether the fuel system holds, what gives first, and what to mind.
#[component]
pub(super) fn JudgementCard(printing: RwSignal<bool>) -> impl IntoView {
    let state = State::here();
    let known = holds(move || state.judged.with(Option::is_some));
    let stale = holds(move || state.judged.with(|it| it.as_ref().is_some_and(|it| it.stale)));
    let class =
        said(move || if stale.get() { "judgement stale-answer" } else { "judgement" }.to_owned());
    let verdict = Callback::new(move |()| of_judged(state, drawn).unwrap_or_default());
    let missing = Callback::new(move |()| missing(state));
    let something_missing = holds(move || state.workshop.with(|it| !it.complaints.is_empty()));
    let short = said(move || {
        let word = |judged: &Judged, workshop: &Workshop, printer: &Printer| {
            hardware::judgement(&judged.answer, workshop, printer).word.to_owned()
        };
        match (of_judged(state, word), stale.get()) {
            (Some(word), false) => word,
            (Some(_), true) => "Not updated".to_owned(),
            (None, _) => "Not judged yet".to_owned(),
        }
    });
    view! {
        <section class="card" id="judgement" tabindex="-1" aria-labelledby="judgement-title">
            <div class="head">
                <h2 id="judgement-title">"Does it hold?"</h2>
                <PrintButton printing=printing ready=is_ready(state) />
            </div>
            <When condition=stale>
                <p class="note caution">
                    "Not updated: something that was typed since cannot be read."
                </p>
            </When>
            <div class=class role="status">
                <Drawn what=verdict />
                <When condition=holds(move || !known.get())>
                    <p class="word">{mark(Shape::Stroke)} "Not judged yet"</p>
                </When>
            </div>
            <When condition=something_missing>
                <div id="missing">
                    <h3>"What is missing or wrong"</h3>
                    <ul class="cautions">
                        <Drawn what=missing />
                    </ul>
                </div>
            </When>
            <ul class="cautions note caution" aria-label="Cautions">
                {hardware::CAUTIONS.map(|it| view! { <li>{it}</li> })}
                <li>{hardware::RULES_FIRST}</li>
            </ul>
        </section>
        <a class="short" href="#/hardware/judgement">
            <span>{short}</span>
            <small>"Why"</small>
        </a>
    }
}

/// The verdict with its reasons.
fn drawn(judged: &Judged, workshop: &Workshop, printer: &Printer) -> Vec<AnyView> {
    let answer = &judged.answer;
    let said = hardware::judgement(answer, workshop, printer);
    let mut lines = vec![
        view! {
            <p class="word">{mark(shape(answer.standing))} {said.word}</p>
            <p class="more">{said.more}</p>
        }
        .into_any(),
    ];
    let reasons = [
        hardware::first_to_give(answer, workshop, printer),
        hardware::limits_of_share(answer, printer),
    ];
    let line = |words: String| view! { <p>{words}</p> }.into_any();
    let warning = |words: String| view! { <p class="note caution">{words}</p> }.into_any();
    lines.extend(reasons.into_iter().flatten().map(line));
    for (is_beyond, words) in answer.air.iter().map(|it| hardware::air(it, workshop, printer)) {
        lines.push(if is_beyond { warning(words) } else { line(words) });
    }
    lines.extend(warnings(judged, workshop, printer).into_iter().map(warning));
    lines
}

/// Limits that the curve crosses, and corrections that go too far.
pub(super) fn warnings(judged: &Judged, workshop: &Workshop, printer: &Printer) -> Vec<String> {
    let Some(curve) = judged.reading.curves.get(judged.answer.asked.target) else {
        return Vec::new();
    };
    let crossings = curve.crossings.iter().filter_map(|(form, crossing)| {
        let form = workshop.parts.iter().find(|it| it.id == *form)?;
        Some(hardware::crossing(&hardware::part(form), crossing, printer))
    });
    let corrections = judged.reading.curves.iter();
    let corrections = corrections.filter_map(|curve| hardware::correction_warning(curve, printer));
    crossings.chain(corrections).collect()
}

/// What is missing, each with the way to its field.
fn missing(state: State) -> Vec<AnyView> {
    state.workshop.with(|reading| {
        state.document.with(|it| {
            let item = |complaint: &Complaint| {
                let link = format!("#/hardware/{}", complaint.field.id());
                let owner = owner(complaint.field, &it.here.workshop);
                view! {
                    <li>
                        {owner} ": " <a href=link>{complaint.message.clone()}</a>
                    </li>
                }
                .into_any()
            };
            let all = &reading.complaints;
            let mut items: Vec<AnyView> = all.iter().take(NAMED).map(item).collect();
            if let more @ 1.. = all.len().saturating_sub(NAMED) {
                items.push(view! { <li>{format!("And {more} more.")}</li> }.into_any());
            }
            items
        })
    })
}
