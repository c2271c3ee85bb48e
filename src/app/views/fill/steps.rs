//! The steps at the pump, one at a time.

use fillwright::answers::fill::FillAnswer;
use fillwright::document::{Document, Field, FuelForm, FuelPart};
use fillwright::message::keys::fill as keys;
use fillwright::quantity::notation::{Entry, Printer};
use fillwright::quantity::{Band, Volume};
use leptos::prelude::*;

use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::widgets::{Button, Rows, TextField, When, holds, said};

/// One step as it is shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Shown {
    pub(super) name: String,
    pub(super) number: String,
    pub(super) aside: String,
    /// What to enter when it went as planned.
    planned: String,
    to_click: bool,
    turn: Turn,
}

/// When it is a step's turn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Turn {
    /// It is poured.
    #[default]
    Done,
    /// Now.
    Next,
    /// After the one before.
    Later,
}

/// Fuels in the order of the steps; first those that are in and done with. When
/// only what was put in counts, all that can have been.
pub(super) fn step_ids(answer: &FillAnswer) -> Vec<u32> {
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

pub(super) fn step_shown(answer: &FillAnswer, printer: &Printer, id: u32) -> Option<Shown> {
    let fuel = answer.asked.fuels.iter().position(|fuel| fuel.id == id)?;
    let name = answer.asked.fuels[fuel].name.clone();
    let poured = answer.asked.problem.offers[fuel].poured;
    let place = answer.steps.iter().position(|step| step.fuel == fuel);
    let Some(place) = place else {
        let number = printer.volume_number(poured);
        let aside =
            if answer.asked.as_poured { keys::STEP_PUT_IN.say() } else { keys::STEP_DONE.say() }
                .to_owned();
        return Some(Shown { name, number, aside, ..Shown::default() });
    };
    let step = &answer.steps[place];
    let mut asides = Vec::new();
    if poured > Volume::default() {
        asides.push(keys::MoreOnTop { volume: printer.volume(poured) }.say());
    }
    match step.range {
        _ if !step.to_click => {}
        None => asides.push(keys::TO_CLICK.say().to_owned()),
        Some((least, most)) => {
            let range = Band::enclosing(least, [least, most]).unwrap_or(Band::exact(least));
            asides.push(keys::ToClickExpect { volume: printer.volume_band(range) }.say());
        }
    }
    if answer.given_up.is_some() && place + 1 == answer.steps.len() {
        asides.push(keys::THEN_STOP.say().to_owned());
    }
    Some(Shown {
        name,
        number: printer.volume_number(step.volume),
        aside: asides.join(" "),
        planned: printer.volume_number(poured + step.volume),
        to_click: step.to_click,
        turn: if place == 0 { Turn::Next } else { Turn::Later },
    })
}

/// The steps at the pump.
#[component]
pub(super) fn Steps() -> impl IntoView {
    let fill_memos = FillMemos::here();
    let ids =
        Memo::new(move |_| fill_memos.answer().map_or_else(Vec::new, |answer| step_ids(&answer)));
    view! {
        <ol class="steps">
            <Rows ids=ids.into() row=|id| StepItem(StepItemProps { id }).into_any() />
        </ol>
    }
}

fn offer(document: &Document, id: u32) -> Option<&FuelForm> {
    document.here.fill.offers.iter().find(|offer| offer.id == id)
}

#[component]
fn StepItem(id: u32) -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let shown = Memo::new(move |_| {
        let answer = fill_memos.answer()?;
        session.printer.with(|printer| step_shown(&answer, printer, id))
    });
    let part = move |read: fn(&Shown) -> &String| {
        said(move || shown.with(|shown| shown.as_ref().map(read).cloned().unwrap_or_default()))
    };
    let is_next =
        holds(move || shown.with(|shown| shown.as_ref().is_some_and(|it| it.turn == Turn::Next)));
    // What was entered before the step was confirmed, and whether the nozzle had clicked.
    let before = RwSignal::new(None::<(Entry, bool)>);
    let poured = Field::Fuel(id, FuelPart::Poured);
    let write = Callback::new(move |text: String| {
        before.set(None);
        session.document.update(|it| it.type_into(poured, text));
    });
    let confirm = Callback::new(move |()| {
        let Some(shown) = shown.get_untracked() else { return };
        let earlier = session.document.with_untracked(|it| {
            offer(it, id).map(|offer| (offer.poured.clone(), it.here.fill.clicked))
        });
        before.set(earlier);
        session.document.update(|it| {
            let amount = Entry { text: shown.planned, typed_in: it.settings.units };
            it.here.fill.pour_step(id, amount, shown.to_click);
        });
    });
    let take_back = Callback::new(move |()| {
        let (amount, clicked) = before.get_untracked().unwrap_or_default();
        before.set(None);
        session.document.update(|it| {
            it.here.fill.note_poured(id, amount);
            it.here.fill.clicked &= clicked;
        });
    });
    let name = part(|shown| &shown.name);
    let has_in = holds(move || {
        session.document.with(|it| offer(it, id).is_some_and(|offer| !offer.poured.is_blank()))
    });
    let entering = view! { {keys::ENTER_PUT_IN.say()} <span class="visually-hidden">{said(move || keys::EnterFor { fuel: name.get() }.say())}</span> };
    view! {
        <li class="step">
            <p class="what">{name}</p>
            <p class="volume number">
                {part(|shown| &shown.number)}
                <span class="unit">"\u{202f}" {session.unit_of(poured)}</span>
            </p>
            <p class="aside">{part(|shown| &shown.aside)}</p>
            <When condition=is_next>
                <div>
                    <Button
                        label=keys::POURED_AS_PLANNED.say()
                        look="small"
                        name=said(move || keys::PouredAsPlannedOf { fuel: name.get() }.say())
                        on_press=confirm
                    />
                </div>
            </When>
            <When condition=has_in>
                <div>
                    <Button
                        label=keys::NOT_POURED.say()
                        look="small"
                        name=said(move || keys::NotPouredOf { fuel: name.get() }.say())
                        on_press=take_back
                    />
                </div>
            </When>
            <Folded class="put-in-field" summary=entering.into_any()>
                <TextField
                    field=poured
                    label=keys::PUT_IN_ALL.say()
                    hint=keys::PUT_IN_ALL_HINT.say()
                    words=true
                    when_left=true
                    on_text=write
                />
            </Folded>
        </li>
    }
}
