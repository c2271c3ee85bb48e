use std::sync::Arc;

use fillwright::logbook::{Answer, Document, Entry, Field, FuelForm, FuelPart, Measure};
use leptos::prelude::*;

use super::results::Results;
use super::workings::Workings;
use crate::app::charts::SightGlass;
use crate::app::state::State;
use crate::app::widgets::TextField;
use crate::app::wording;

/// What to put in, and what that makes.
#[component]
pub(super) fn PutInCard() -> impl IntoView {
    let state = State::here();
    let has_answer = Memo::new(move |_| state.shown.with(|it| it.answer.is_some()));
    let stale = Memo::new(move |_| state.shown.with(|it| it.stale));
    view! {
        <section class="card" id="put-in" aria-labelledby="put-in-title">
            <h2 id="put-in-title">"Put in"</h2>
            <Show when=move || stale.get() || !has_answer.get()>
                <Missing />
            </Show>
            <Show when=move || has_answer.get()>
                <div class:stale-answer=move || stale.get()>
                    <Outcome />
                    <div class="put-in">
                        <SightGlass />
                        <Steps />
                    </div>
                </div>
                <Cautions />
                <Results />
                <Workings />
            </Show>
        </section>
    }
}

/// What has to be filled in or corrected before there is an answer.
#[component]
fn Missing() -> impl IntoView {
    let state = State::here();
    let complaints = Memo::new(move |_| state.reading.with(|it| it.complaints.clone()));
    view! {
        <div class="note caution">
            <p>
                {move || {
                    if state.shown.with(|it| it.stale) {
                        "Not updated: some entries cannot be used."
                    } else {
                        "Some entries are missing."
                    }
                }}
            </p>
            <ul class="cautions">
                <For
                    each=move || complaints.get()
                    key=|complaint| complaint.field
                    children=|complaint| {
                        let view = if complaint.field.is_of_car() { "car" } else { "fill" };
                        let link = format!("#/{view}/{}", complaint.field.id());
                        view! {
                            <li>
                                <a href=link>{complaint.message}</a>
                            </li>
                        }
                    }
                />
            </ul>
        </div>
    }
}

/// The answer that the view was opened for.
fn answer(state: State) -> Option<Arc<Answer>> {
    state.shown.with(|it| it.answer.clone())
}

/// The blend, what is promised of it, or why it is not what was wanted.
#[component]
fn Outcome() -> impl IntoView {
    let state = State::here();
    let outcome = Memo::new(move |_| {
        let answer = answer(state)?;
        state.printer.with(|printer| wording::outcome(&answer, printer))
    });
    let plight = Memo::new(move |_| {
        let answer = answer(state)?;
        let plight = answer.plight.as_ref()?;
        Some(state.printer.with(|printer| wording::plight(plight, &answer, printer)))
    });
    let promise = Memo::new(move |_| {
        let answer = answer(state)?;
        state.printer.with(|printer| wording::promise(&answer, printer))
    });
    view! {
        <Show when=move || plight.with(Option::is_some)>
            <div class="note caution" id="plight">
                <For
                    each=move || plight.get().unwrap_or_default()
                    key=Clone::clone
                    children=|line| view! { <p>{line}</p> }
                />
            </div>
        </Show>
        <p class="outcome" id="outcome">
            {move || {
                let closest = plight.with(Option::is_some);
                outcome
                    .get()
                    .map(|(expected, between)| {
                        let lead = if closest { "Closest: " } else { "Makes " };
                        view! {
                            {lead}
                            <span class="number">{expected}</span>
                            " "
                            <small>{between}</small>
                        }
                    })
            }}
        </p>
        <Show when=move || promise.with(Option::is_some)>
            <p class="note" id="promise">
                {move || promise.get()}
            </p>
        </Show>
    }
}

/// One step as it is shown.
#[derive(Clone, PartialEq)]
struct Shown {
    name: String,
    number: String,
    unit: &'static str,
    aside: String,
    /// What to enter when it went as planned.
    planned: String,
    done: bool,
}

/// Fuels in the order of the steps; first those that are in and done with.
fn step_ids(answer: &Answer) -> Vec<u32> {
    let id = |fuel: usize| answer.asked.fuels[fuel].id;
    let to_pour = |fuel: usize| answer.steps.iter().any(|step| step.fuel == fuel);
    let nothing = fillwright::quantity::Volume::default();
    let done = (0..answer.asked.fuels.len())
        .filter(|&fuel| answer.asked.problem.offers[fuel].poured > nothing && !to_pour(fuel));
    done.chain(answer.steps.iter().map(|step| step.fuel)).map(id).collect()
}

fn step_shown(answer: &Answer, state: State, id: u32) -> Option<Shown> {
    let fuel = answer.asked.fuels.iter().position(|fuel| fuel.id == id)?;
    let name = answer.asked.fuels[fuel].name.clone();
    state.printer.with(|printer| {
        let unit = printer.system.volume().symbol();
        let poured = answer.asked.problem.offers[fuel].poured;
        let Some(step) = answer.steps.iter().find(|step| step.fuel == fuel) else {
            return Some(Shown {
                name,
                number: printer.volume_number(poured),
                unit,
                aside: "Done.".into(),
                planned: String::new(),
                done: true,
            });
        };
        let mut aside = String::new();
        if printer.system.volume().value_of(poured) > 0.0 {
            aside += &format!("More, on top of the {} in it. ", printer.volume(poured));
        }
        if step.to_click {
            aside += "Fill until the nozzle clicks off";
            if let Some((least, most)) = step.range {
                let (least, most) = (printer.volume_number(least), printer.volume(most));
                aside += &format!(": {least} to {most}, as the level really is");
            }
            aside += ".";
        }
        Some(Shown {
            name,
            number: printer.volume_number(step.volume),
            unit,
            aside,
            planned: printer.volume_number(poured + step.volume),
            done: false,
        })
    })
}

/// The steps at the pump.
#[component]
fn Steps() -> impl IntoView {
    let state = State::here();
    let ids = Memo::new(move |_| answer(state).map_or_else(Vec::new, |answer| step_ids(&answer)));
    view! {
        <div>
            <Show when=move || ids.with(Vec::is_empty)>
                <p>"Nothing to pour."</p>
            </Show>
            <ol class="steps">
                <For each=move || ids.get() key=|id| *id let:id>
                    <StepItem id=id />
                </For>
            </ol>
        </div>
    }
}

fn put_in(document: &mut Document, id: u32) -> Option<&mut Entry> {
    let offer = document.fill.offers.iter_mut().find(|offer: &&mut FuelForm| offer.id == id)?;
    Some(&mut offer.put_in)
}

#[component]
fn StepItem(id: u32) -> impl IntoView {
    let state = State::here();
    let shown = Memo::new(move |_| answer(state).and_then(|answer| step_shown(&answer, state, id)));
    let part = move |read: fn(&Shown) -> String| {
        move || shown.with(|shown| shown.as_ref().map(read).unwrap_or_default())
    };
    let done = move || shown.with(|shown| shown.as_ref().is_some_and(|shown| shown.done));
    let unit =
        Signal::derive(move || state.printer.with(|it| it.system.volume().symbol().to_owned()));
    let as_planned = move |_| {
        let planned = shown.with_untracked(|it| it.as_ref().map(|it| it.planned.clone()));
        if let Some(text) = planned {
            state.set_entry(move |it| put_in(it, id)).run(text);
        }
    };
    view! {
        <li class="step" class:done=done>
            <p class="what">{part(|shown| shown.name.clone())}</p>
            <p class="volume number">
                {part(|shown| shown.number.clone())}
                <span class="unit">"\u{202f}" {part(|shown| shown.unit.to_owned())}</span>
            </p>
            <p class="aside">{part(|shown| shown.aside.clone())}</p>
            <details class="put-in-field">
                <summary>"Poured differently?"</summary>
                <TextField
                    field=Field::Fuel(id, FuelPart::PutIn)
                    label="Actually put in, in all"
                    hint="The rest is worked out anew"
                    unit=unit
                    when_left=true
                    value=state
                        .entry(
                            Measure::Volume,
                            move |it| {
                                it.fill.offers.iter().find(|offer| offer.id == id).map(|offer| &offer.put_in)
                            },
                        )
                    on_text=state.set_entry(move |it| put_in(it, id))
                />
            </details>
            <Show when=move || !done()>
                <div>
                    <button class="button small" on:click=as_planned>
                        "Poured as planned"
                    </button>
                </div>
            </Show>
        </li>
    }
}

/// The cautions where the decision is made.
#[component]
fn Cautions() -> impl IntoView {
    let state = State::here();
    let strong = Memo::new(move |_| {
        answer(state).is_some_and(|answer| {
            let above = |share: fillwright::quantity::Share| share.percent() > 10.5;
            answer.blend.as_ref().is_some_and(|blend| above(blend.share.high()))
        })
    });
    view! {
        <ul class="cautions note caution" aria-label="Cautions">
            <li>"Fuel vapour burns and static ignites it: engine off, no flame, touch bare metal first."</li>
            <Show when=move || strong.get()>
                <li>
                    "More than 10 % ethanol belongs only in a fuel system whose every part is rated for it, and local law decides whether it may."
                </li>
                <li>
                    "The old blend still feeds the engine for a while. Under boost a lean mixture destroys it: no full load on a stronger calibration before the new blend has arrived and been confirmed."
                </li>
            </Show>
            <li>"This is an estimate. The author of your calibration has the last word."</li>
        </ul>
    }
}

/// The plan in one line at the foot of a phone.
#[component]
pub(super) fn ShortAnswer() -> impl IntoView {
    let state = State::here();
    let line = Memo::new(move |_| {
        let shown = state.shown.get();
        let answer = shown.answer?;
        let text = state.printer.with(|printer| {
            let blend = wording::outcome(&answer, printer).map(|(expected, _)| expected);
            (wording::in_short(&answer, printer), blend.unwrap_or_default())
        });
        Some((text, shown.stale))
    });
    view! {
        <Show when=move || line.with(Option::is_some)>
            <a
                class="short"
                class:stale=move || line.with(|line| line.as_ref().is_some_and(|line| line.1))
                href="#/fill/put-in"
            >
                <span role="status">
                    {move || line.get().map(|((text, _), stale)| {
                        if stale { format!("Not updated: {text}") } else { text }
                    })}
                </span>
                <span class="number">{move || line.get().map(|((_, blend), _)| blend)}</span>
            </a>
        </Show>
    }
}
