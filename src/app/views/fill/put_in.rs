use fillwright::logbook::{
    Answer, Complaint, Document, Entry, Field, FuelForm, FuelPart, Measure, Printer,
};
use fillwright::quantity::{Band, Volume};
use leptos::prelude::*;

use super::results::Results;
use super::workings::Workings;
use crate::app::charts::SightGlass;
use crate::app::device;
use crate::app::route::View;
use crate::app::stages::Folded;
use crate::app::state::State;
use crate::app::widgets::{
    Button, CheckBox, Drawn, PrintButton, Rows, Spoken, TextField, ToMend, When, count, holds,
    in_a_sentence, said,
};
use crate::app::wording;

/// What has to be filled in or put right before there is an answer.
fn complaints(state: State) -> Signal<Vec<Complaint>> {
    Memo::new(move |_| state.reading.with(|it| it.complaints.clone())).into()
}

/// Whether there is an answer to what is entered now.
pub(super) fn is_current(state: State) -> Signal<bool> {
    holds(move || state.shown.with(|it| it.answer.is_some() && !it.stale))
}

/// What to put in, and what that makes.
#[component]
pub(super) fn PutInCard(printing: RwSignal<bool>) -> impl IntoView {
    let state = State::here();
    let has_answer = holds(move || state.shown.with(|it| it.answer.is_some()));
    let stale = holds(move || state.shown.with(|it| it.stale));
    let lead = said(move || if stale.get() { "Not updated: " } else { "" }.to_owned());
    let class = said(move || if stale.get() { "stale-answer" } else { "" }.to_owned());
    let recorded = RwSignal::new(String::new());
    view! {
        <section class="card" id="put-in" aria-labelledby="put-in-title">
            <div class="head">
                <h2 id="put-in-title">"Put in"</h2>
                <PrintButton printing=printing ready=is_current(state) />
            </div>
            <When condition=holds(move || recorded.with(|it| !it.is_empty()))>
            <p class="note" id="recorded" role="status">
                {recorded}
                " "
                <a href="#/tank">"See Tank."</a>
            </p>
        </When>
            <ToMend id="fill-to-mend" view=View::Fill complaints=complaints(state) lead=lead />
            <When condition=has_answer>
                <div class=class>
                    <Outcome />
                    <div class="put-in">
                        <SightGlass />
                        <Steps />
                    </div>
                </div>
                <Afterwards recorded=recorded />
                <Cautions />
                <Results />
                <Workings />
            </When>
        </section>
    }
}

/// The blend, what is promised of it, or why it is not what was wanted.
#[component]
fn Outcome() -> impl IntoView {
    let state = State::here();
    let of_answer = move |words: fn(&Answer, &Printer) -> String| {
        said(move || {
            state.answer().map_or_else(String::new, |answer| {
                state.printer.with(|printer| words(&answer, printer))
            })
        })
    };
    let lead = of_answer(|answer, _| {
        if answer.plight.is_some() {
            "Closest: "
        } else if answer.asked.as_poured {
            "You have "
        } else {
            "Makes "
        }
        .to_owned()
    });
    let blend = of_answer(|answer, printer| {
        wording::outcome(answer, printer).map(|(blend, _)| blend).unwrap_or_default()
    });
    let between = of_answer(|answer, printer| {
        wording::outcome(answer, printer).map(|(_, between)| between).unwrap_or_default()
    });
    let promise =
        of_answer(|answer, printer| wording::promise(answer, printer).unwrap_or_default());
    let plight = Callback::new(move |()| {
        let Some(answer) = state.answer() else { return Vec::new() };
        let Some(plight) = &answer.plight else { return Vec::new() };
        let lines = state.printer.with(|printer| wording::plight(plight, &answer, printer));
        lines.into_iter().map(|line| view! { <p>{line}</p> }.into_any()).collect()
    });
    let in_plight = holds(move || state.answer().is_some_and(|answer| answer.plight.is_some()));
    view! {
        <When condition=in_plight>
            <div class="note caution" id="plight">
                <Drawn what=plight />
            </div>
        </When>
        <p class="outcome" id="outcome">
            {lead}
            <span class="number">{blend}</span>
            " "
            <small>{between}</small>
        </p>
        <When condition=holds(move || promise.with(|it| !it.is_empty()))>
            <p class="note" id="promise">
                {promise}
            </p>
        </When>
    }
}

/// One step as it is shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Shown {
    pub(super) name: String,
    pub(super) number: String,
    pub(super) aside: String,
    /// What to enter when it went as planned.
    planned: String,
    to_click: bool,
    done: bool,
}

/// Fuels in the order of the steps; first those that are in and done with. When
/// only what was put in counts, all that can have been.
pub(super) fn step_ids(answer: &Answer) -> Vec<u32> {
    let id = |fuel: usize| answer.asked.fuels[fuel].id;
    if answer.asked.as_poured {
        return (0..answer.asked.fuels.len()).map(id).collect();
    }
    let to_pour = |fuel: usize| answer.steps.iter().any(|step| step.fuel == fuel);
    let done = (0..answer.asked.fuels.len()).filter(|&fuel| {
        answer.asked.problem.offers[fuel].poured > Volume::default() && !to_pour(fuel)
    });
    done.chain(answer.steps.iter().map(|step| step.fuel)).map(id).collect()
}

pub(super) fn step_shown(answer: &Answer, printer: &Printer, id: u32) -> Option<Shown> {
    let fuel = answer.asked.fuels.iter().position(|fuel| fuel.id == id)?;
    let name = answer.asked.fuels[fuel].name.clone();
    let poured = answer.asked.problem.offers[fuel].poured;
    let Some(step) = answer.steps.iter().find(|step| step.fuel == fuel) else {
        let number = printer.volume_number(poured);
        let aside = if answer.asked.as_poured { "Put in." } else { "Done." }.to_owned();
        return Some(Shown { name, number, aside, done: true, ..Shown::default() });
    };
    let on_top = if poured > Volume::default() {
        format!("More, on top of the {} in it. ", printer.volume(poured))
    } else {
        String::new()
    };
    let to_click = match step.range {
        _ if !step.to_click => String::new(),
        None => "Fill until the nozzle clicks off.".to_owned(),
        Some((least, most)) => {
            let range = Band::enclosing(least, [least, most]).unwrap_or(Band::exact(least));
            let range = printer.volume_band(range);
            format!("Fill until the nozzle clicks off: {range}, as the level really is.")
        }
    };
    let aside = on_top + &to_click;
    Some(Shown {
        name,
        number: printer.volume_number(step.volume),
        aside,
        planned: printer.volume_number(poured + step.volume),
        to_click: step.to_click,
        done: false,
    })
}

/// The steps at the pump.
#[component]
fn Steps() -> impl IntoView {
    let state = State::here();
    let ids = Memo::new(move |_| state.answer().map_or_else(Vec::new, |answer| step_ids(&answer)));
    view! {
        <ol class="steps">
            <Rows ids=ids.into() row=|id| StepItem(StepItemProps { id }).into_any() />
        </ol>
    }
}

/// What comes after the steps.
#[component]
fn Afterwards(recorded: RwSignal<String>) -> impl IntoView {
    let state = State::here();
    let nothing_left = holds(move || {
        state.answer().is_some_and(|answer| answer.is_done() && !answer.asked.as_poured)
    });
    let some_in = holds(move || {
        state.answer().is_some_and(|answer| {
            let mut offers = answer.asked.problem.offers.iter();
            offers.any(|offer| offer.poured > Volume::default())
        })
    });
    let clicked = holds(move || state.document.with(|it| it.here.fill.clicked));
    let tick =
        Callback::new(move |clicked| state.document.update(|it| it.here.fill.clicked = clicked));
    let can_record = holds(move || {
        let to_pour = state.answer().is_some_and(|answer| answer.leaves_something_to_pour());
        (to_pour || some_in.get()) && state.shown.with(|it| !it.stale)
    });
    let write = move |planned: bool| {
        let Some(answer) = state.answer() else { return };
        let printer = state.printer.get_untracked();
        let mut next = state.document.get_untracked();
        if planned {
            next.here.pour_as_planned(&answer, &printer);
        }
        let Ok(time) = device::this_moment() else { return };
        if next.here.record(device::new_id(), time) {
            state.replace_undoably(next);
            recorded.set(format!("Recorded. {}", untrack(|| state.by_the_log())));
        }
    };
    let record = Callback::new(move |()| write(false));
    let as_planned = Callback::new(move |()| write(true));
    view! {
        <When condition=nothing_left>
            <p role="status">"Nothing left to pour."</p>
        </When>
        <When condition=some_in>
            <div>
                <CheckBox
                    label="The nozzle clicked off: the tank is full"
                    checked=clicked
                    on_tick=tick
                />
            </div>
        </When>
        <When condition=can_record>
            <div class="record">
                <TextField
                    field=Field::Place
                    label="Place, for the log"
                    words=true
                    value=state.text(|it| Some(&it.here.fill.place))
                    on_text=state.set(|it, text| it.here.fill.place = text)
                />
                <div class="buttons">
                    <When condition=some_in>
                        <Button label="Record" look="strong" on_press=record />
                    </When>
                    <When condition=holds(move || !some_in.get())>
                        <Button label="Record as planned" look="strong" on_press=as_planned />
                    </When>
                </div>
            </div>
        </When>
    }
}

fn put_in(document: &mut Document, id: u32) -> Option<&mut Entry> {
    let offer =
        document.here.fill.offers.iter_mut().find(|offer: &&mut FuelForm| offer.id == id)?;
    Some(&mut offer.put_in)
}

#[component]
fn StepItem(id: u32) -> impl IntoView {
    let state = State::here();
    let shown = Memo::new(move |_| {
        let answer = state.answer()?;
        state.printer.with(|printer| step_shown(&answer, printer, id))
    });
    let part = move |read: fn(&Shown) -> &String| {
        said(move || shown.with(|shown| shown.as_ref().map(read).cloned().unwrap_or_default()))
    };
    let to_do = holds(move || shown.with(|shown| shown.as_ref().is_some_and(|shown| !shown.done)));
    let unit = state.volume_unit();
    let set_put_in = state.set_entry(move |it| put_in(it, id));
    let as_planned = Callback::new(move |()| {
        if let Some(shown) = shown.get_untracked() {
            set_put_in.run(shown.planned);
            if shown.to_click {
                state.document.update(|it| it.here.fill.clicked = true);
            }
        }
    });
    let name = part(|shown| &shown.name);
    let put_in_now = state.entry(Measure::Volume, move |it| {
        it.here.fill.offers.iter().find(|offer| offer.id == id).map(|offer| &offer.put_in)
    });
    let entering =
        view! { "Enter what went in" <span class="visually-hidden">" for " {name}</span> };
    view! {
        <li class="step">
            <p class="what">{name}</p>
            <p class="volume number">
                {part(|shown| &shown.number)}
                <span class="unit">"\u{202f}" {unit}</span>
            </p>
            <p class="aside">{part(|shown| &shown.aside)}</p>
            <When condition=to_do>
                <div>
                    <Button
                        label="Poured as planned"
                        look="small"
                        name=said(move || format!("Poured as planned: {}", name.get()))
                        on_press=as_planned
                    />
                </div>
            </When>
            <Folded class="put-in-field" summary=entering.into_any()>
                <TextField
                    field=Field::Fuel(id, FuelPart::PutIn)
                    label="Actually put in, in all"
                    hint="The rest is worked out anew"
                    unit=unit
                    words=true
                    when_left=true
                    value=put_in_now
                    on_text=set_put_in
                />
            </Folded>
        </li>
    }
}

pub(super) const VAPOUR: &str =
    "Fuel vapour burns and static ignites it: engine off, no flame, touch bare metal first.";

/// Cautions for a blend that may hold more ethanol than pump petrol does.
pub(super) const ABOVE_TEN: [&str; 2] = [
    "More than 10 % ethanol belongs only in a fuel system whose every part is rated for it, and local law decides whether it may.",
    "The old blend still feeds the engine for a while. Under boost a lean mixture destroys it: no full load on a stronger calibration before the new blend has arrived and been confirmed.",
];

pub(super) const LAST_WORD: &str =
    "This is an estimate. The author of your calibration has the last word.";

/// Whether the blend may hold more ethanol than pump petrol does.
pub(super) fn may_be_above_ten(answer: &Answer) -> bool {
    answer.blend.as_ref().is_some_and(|blend| blend.share.high().percent() > 10.5)
}

/// The cautions where the decision is made.
#[component]
fn Cautions() -> impl IntoView {
    let state = State::here();
    let strong = holds(move || state.answer().is_some_and(|answer| may_be_above_ten(&answer)));
    view! {
        <ul class="cautions note caution" aria-label="Cautions">
            <li>{VAPOUR}</li>
            <When condition=strong>{ABOVE_TEN.map(|it| view! { <li>{it}</li> })}</When>
            <li>{LAST_WORD}</li>
        </ul>
    }
}

/// The plan in one line at the foot of a phone, or how much is missing for one; and what
/// is said of both.
#[component]
pub(super) fn ShortAnswer() -> impl IntoView {
    let state = State::here();
    let complaints = complaints(state);
    let stale = holds(move || state.shown.with(|it| it.stale));
    let plan = said(move || {
        state.answer().map_or_else(String::new, |answer| {
            state.printer.with(|printer| wording::in_short(&answer, printer))
        })
    });
    let has_answer = holds(move || state.shown.with(|it| it.answer.is_some()));
    let has_wrong = holds(move || complaints.with(|it| !it.is_empty()));
    let line = said(move || match (has_answer.get(), stale.get()) {
        (false, _) => complaints.with(|it| count(it)),
        (true, true) => format!("Not updated: {}", plan.get()),
        (true, false) => plan.get(),
    });
    let blend = said(move || {
        let answer = state.answer();
        let words = answer
            .and_then(|answer| state.printer.with(|printer| wording::outcome(&answer, printer)));
        words.map(|(blend, _)| blend).unwrap_or_default()
    });
    let spoken = said(move || {
        let wrong = complaints.with(|it| in_a_sentence(it));
        if !wrong.is_empty() {
            return wrong;
        }
        let plight = state.answer().and_then(|answer| {
            let plight = answer.plight.as_ref()?;
            state.printer.with(|it| wording::plight(plight, &answer, it).into_iter().next())
        });
        let parts = [plight.unwrap_or_default(), plan.get(), blend.get(), state.doubt_at_start()];
        parts.into_iter().filter(|it| !it.is_empty()).collect::<Vec<_>>().join(". ")
    });
    let class = said(move || if stale.get() { "short stale" } else { "short" }.to_owned());
    view! {
        <Spoken words=spoken />
        <When condition=holds(move || has_answer.get() || has_wrong.get())>
            <a class=class href="#/fill/put-in">
                <span>{line}</span>
                <span class="number">{blend}</span>
            </a>
        </When>
    }
}
