//! The card of all stops, and what adds one.

use fillwright::document::{Field, TripPart};
use fillwright::message::keys::trip as keys;
use leptos::prelude::*;

use super::lead::add_stop;
use super::stop::{StopCard, StopCardProps};
use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::widgets::{Button, UndoableRows, When, holds, said};

/// The stops in their order.
#[component]
pub(super) fn StopsCard() -> impl IntoView {
    let session = Session::here();
    let ids = Memo::new(move |_| {
        session.document.with(|it| it.here.route.stops.iter().map(|it| it.id).collect::<Vec<_>>())
    });
    let add = Callback::new(move |()| add_stop(session));
    let under_way = holds(move || session.document.with(|it| it.here.route.here.is_some()));
    let from_start = Callback::new(move |()| {
        session.document.update(|it| it.here.route.begin_again());
    });
    let errors = FieldErrors::here();
    let wrong = said(move || errors.message(Field::Trip(TripPart::Stops)));
    view! {
        <section class="card" aria-labelledby="stops-title">
            <h2 id="stops-title">{keys::STOPS.say()}</h2>
            <When condition=under_way>
                <div>
                    <Button label=keys::FROM_THE_START.say() look="small" on_press=from_start />
                </div>
            </When>
            <When condition=holds(move || wrong.with(|it| !it.is_empty()))>
                <p class="note caution" id=Field::Trip(TripPart::Stops).id() tabindex="-1">
                    {wrong}
                </p>
            </When>
            <div class="halts opens">
                <UndoableRows ids=ids.into() row=|id| StopCard(StopCardProps { id }).into_any() />
            </div>
            <div>
                <Button label=keys::ADD_STOP.say() on_press=add />
            </div>
        </section>
    }
}
