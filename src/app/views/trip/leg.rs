//! The fields of a leg: the way from a stop to the next.

use fillwright::document::{Field, TripStopPart};
use fillwright::message::keys::frame;
use fillwright::message::keys::trip as keys;
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::widgets::{CheckBox, Drawn, TextField, When, holds, said};

/// The way from a stop to the next.
#[component]
pub(super) fn LegFields(id: u32) -> impl IntoView {
    view! {
        <div class="pair">
            <TextField
                field=Field::TripStop(id, TripStopPart::Distance)
                label=keys::DISTANCE.say()
                hint=keys::DISTANCE_HINT.say()
                words=true
            />
            <TextField
                field=Field::TripStop(id, TripStopPart::Factor)
                label=keys::FACTOR.say()
                hint=keys::FACTOR_HINT.say()
            />
            <TextField
                field=Field::TripStop(id, TripStopPart::RonMin)
                label=keys::OCTANE_MIN.say()
                hint=keys::OCTANE_MIN_HINT.say()
                words=true
            />
        </div>
        <Kept id=id />
    }
}

/// The calibrations of which one has to stay usable.
#[component]
fn Kept(id: u32) -> impl IntoView {
    let session = Session::here();
    let tick = move |calibration: u32| {
        Callback::new(move |keep| {
            session.document.update(|it| {
                if let Some(stop) = it.here.route.stop_mut(id) {
                    stop.keep_calibration(calibration, keep);
                }
            });
        })
    };
    let kept = move |calibration: u32| {
        holds(move || {
            session.document.with(|it| {
                it.here.route.stop(id).is_some_and(|stop| stop.calibrations.contains(&calibration))
            })
        })
    };
    let names = Memo::new(move |_| {
        session.document.with(|it| {
            // One that is gone from the car can still be asked for here.
            let calibrations = &it.here.car.calibrations;
            let known = calibrations.iter().map(|it| (it.id, it.name.clone()));
            let asked =
                it.here.route.stop(id).map(|it| it.calibrations.clone()).unwrap_or_default();
            let gone = asked.into_iter().filter(|id| calibrations.iter().all(|it| it.id != *id));
            known
                .chain(gone.map(|id| (id, keys::CALIBRATION_GONE.say().to_owned())))
                .collect::<Vec<_>>()
        })
    });
    let boxes = Callback::new(move |()| {
        let boxes = names.get().into_iter().map(|(calibration, name)| {
            view! { <CheckBox label=name checked=kept(calibration) on_tick=tick(calibration) /> }
                .into_any()
        });
        boxes.collect::<Vec<_>>()
    });
    let field = Field::TripStop(id, TripStopPart::Calibrations);
    let errors = FieldErrors::here();
    let wrong = said(move || errors.message(field));
    let some = holds(move || names.with(|it| !it.is_empty()));
    view! {
        <When condition=some>
            <fieldset class="kept" id=field.id() tabindex="-1">
                <legend class="legend">{keys::KEEP_USABLE.say()}</legend>
                <Drawn what=boxes />
                <When condition=holds(move || wrong.with(|it| !it.is_empty()))>
                    <p class="error">{wrong}</p>
                </When>
            </fieldset>
        </When>
        <When condition=holds(move || !some.get())>
            <p class="hint">
                {frame::NO_CALIBRATION.say()} " "
                <a href="#/car/calibrations">{frame::ENTER_YOURS.say()}</a>
            </p>
        </When>
    }
}
