//! The card of the calibrations and what their author allows.

use fillwright::document::{CalibrationPart, Field};
use fillwright::message::keys::car as keys;
use fillwright::words::deeds::Deed;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{Button, CheckBox, OCTANE_HINT, TextField, UndoableRows, holds};

/// The calibrations and what their author allows.
#[component]
pub(super) fn CalibrationsCard() -> impl IntoView {
    let session = Session::here();
    let ids = Memo::new(move |_| {
        session
            .document
            .with(|it| it.here.car.calibrations.iter().map(|form| form.id).collect::<Vec<_>>())
    });
    let add = Callback::new(move |()| {
        session.document.update(|it| {
            it.here.add_calibration(|count| keys::Calibration { number: count.to_string() }.say());
        });
    });
    view! {
        <section class="card" id="calibrations" aria-labelledby="calibrations-title">
            <h2 id="calibrations-title">{keys::CALIBRATIONS.say()}</h2>
            <p class="hint">{keys::CALIBRATIONS_HINT.say()}</p>
            <UndoableRows ids=ids.into() row=|id| OneCalibration(OneCalibrationProps { id }).into_any() />
            <div>
                <Button label=keys::ADD_A_CALIBRATION.say() on_press=add />
            </div>
        </section>
    }
}

#[component]
fn OneCalibration(id: u32) -> impl IntoView {
    let session = Session::here();
    let name = session.typed(Field::Calibration(id, CalibrationPart::Name));
    let needs_fluid = holds(move || {
        session.document.with(|it| it.here.car.calibration(id).is_some_and(|form| form.needs_fluid))
    });
    let tick = Callback::new(move |needed| {
        session.document.update(|it| {
            if let Some(form) = it.here.car.calibration_mut(id) {
                form.needs_fluid = needed;
            }
        });
    });
    let remove = Callback::new(move |()| {
        let act = Act::at(Spot::Row(id), Deed::CalibrationRemoved);
        session.change_undoably(act, |it| it.here.car.calibrations.retain(|form| form.id != id));
    });
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
            <TextField
                field=Field::Calibration(id, CalibrationPart::Name)
                label=keys::CALIBRATION_NAME.say()
                words=true
            />
            <div class="pair">
                <TextField
                    field=Field::Calibration(id, CalibrationPart::Low)
                    label=keys::WEAKEST.say()
                    hint=keys::WEAKEST_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Calibration(id, CalibrationPart::High)
                    label=keys::STRONGEST.say()
                    hint=keys::STRONGEST_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Calibration(id, CalibrationPart::WrittenFor)
                    label=keys::WRITTEN_FOR.say()
                    hint=keys::WRITTEN_FOR_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Calibration(id, CalibrationPart::RonMin)
                    label=keys::OCTANE_NEEDED.say()
                    hint=OCTANE_HINT.say()
                    words=true
                />
            </div>
            <CheckBox label=keys::COUNTS_ON_FLUID.say() checked=needs_fluid on_tick=tick />
            <div>
                <Button label=keys::REMOVE.say() look="small" on_press=remove />
            </div>
        </fieldset>
    }
}
