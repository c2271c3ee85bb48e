//! After the last step: the click, and the record in the log.

use fillwright::answers::fill::FillAnswer;
use fillwright::document::Field;
use fillwright::message::keys::fill as keys;
use fillwright::quantity::Volume;
use fillwright::words::deeds::Deed;
use fillwright::words::fill;
use leptos::prelude::*;

use crate::app::device;
use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{Button, CheckBox, TextField, UndoLine, When, holds, said};

/// What comes after the steps.
#[component]
pub(super) fn Afterwards() -> impl IntoView {
    let fill_memos = FillMemos::here();
    let recorded = fill_memos.just_recorded;
    view! {
        <UndoLine spot=Spot::Poured />
        <When condition=recorded>
            <Recorded />
        </When>
        <When condition=holds(move || {
            !recorded.get() && fill_memos.shown.with(|it| it.answer.is_some())
        })>
            <ToRecord />
        </When>
    }
}

/// That the fill was recorded, and the way to take that back: nothing else, until something
/// is entered for the next.
#[component]
fn Recorded() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let words = said(move || {
        tank_memos
            .history
            .with(|history| {
                let estimate = history.estimate()?;
                let capacity = history.capacity?;
                Some(session.printer.with(|printer| fill::recorded(&estimate, capacity, printer)))
            })
            .unwrap_or_default()
    });
    view! {
        <p class="note" id="recorded">
            {words}
            " "
            <a href="#/tank">{keys::SEE_TANK.say()}</a>
        </p>
    }
}

/// The click, the place, and the button that writes it all down.
#[component]
fn ToRecord() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let nothing_left = holds(move || {
        fill_memos.answer().is_some_and(|answer| answer.is_done() && !answer.asked.as_poured)
    });
    let some_in = holds(move || fill_memos.answer().is_some_and(|answer| some_is_in(&answer)));
    let clicked = holds(move || session.document.with(|it| it.here.fill.clicked));
    let tick =
        Callback::new(move |clicked| session.document.update(|it| it.here.fill.clicked = clicked));
    let can_record = holds(move || {
        let to_pour = fill_memos.answer().is_some_and(|answer| answer.leaves_something_to_pour());
        (to_pour || some_in.get()) && fill_memos.shown.with(|it| !it.stale)
    });
    let write = move |planned: bool| {
        let Some(answer) = fill_memos.answer() else { return };
        let printer = session.printer.get_untracked();
        let mut next = session.document.get_untracked();
        if planned {
            next.here.pour_as_planned(&answer, &printer);
        }
        let Ok(time) = device::this_moment() else { return };
        let id = device::new_id();
        if next.here.record(id.clone(), time) {
            session.replace_undoably(Act::at(Spot::Poured, Deed::FillRecorded).on(id), next);
            fill_memos.note_recorded();
        }
    };
    let record = Callback::new(move |()| write(false));
    let as_planned = Callback::new(move |()| write(true));
    view! {
        <When condition=nothing_left>
            <p role="status">{keys::NOTHING_LEFT.say()}</p>
        </When>
        <When condition=some_in>
            <div>
                <CheckBox
                    label=keys::CLICKED_OFF.say()
                    checked=clicked
                    on_tick=tick
                />
            </div>
        </When>
        <When condition=can_record>
            <div class="record">
                <TextField
                    field=Field::Place
                    label=keys::PLACE.say()
                    words=true
                />
                <div class="buttons">
                    <When condition=some_in>
                        <Button label=keys::RECORD.say() look="strong" on_press=record />
                    </When>
                    <When condition=holds(move || !some_in.get())>
                        <Button label=keys::RECORD_AS_PLANNED.say() look="strong" on_press=as_planned />
                    </When>
                </div>
            </div>
        </When>
    }
}

/// Whether anything was put in yet.
pub(super) fn some_is_in(answer: &FillAnswer) -> bool {
    answer.asked.problem.offers.iter().any(|offer| offer.poured > Volume::default())
}
