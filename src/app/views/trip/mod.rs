//! Which fills, where, and what that makes of the calibrations.

mod answer;
mod compare;
mod lead;
mod leg;
mod legs;
mod sheet;
mod start;
mod stop;
mod stops;
mod strip;
mod wish;

use fillwright::document::{Document, Field};
use fillwright::message::keys::trip as keys;
use fillwright::share::Kind;
use leptos::prelude::*;

use super::share::ShareCard;
use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::stages::{Deferred, Stages};
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{Button, Need, Sheet, When, holds};
use answer::{AnswerCard, is_current};
use compare::CompareCard;
use lead::add_stop;
use legs::LegsCard;
use sheet::Paper;
use start::StartSection;
use stops::StopsCard;
use strip::StripCard;
use wish::WishSection;

/// The Trip view: the question, and the answer beside or below it.
#[component]
pub(crate) fn TripView() -> impl IntoView {
    let session = Session::here();
    let trip_memos = TripMemos::here();
    let some = holds(move || session.document.with(|it| !it.here.route.stops.is_empty()));
    let printing = RwSignal::new(false);
    FieldErrors::provide(move || trip_memos.reading.with(|it| it.field_errors.clone()));
    Stages::here().compute(trip_memos.reading);
    view! {
        <When condition=holds(move || !some.get())>
            <div class="view">
                <Empty />
            </div>
        </When>
        <When condition=some>
            <div class="view two long trip">
                <div class="question">
                    <Deferred>
                        <StartSection />
                    </Deferred>
                    <Deferred>
                        <WishSection />
                    </Deferred>
                    <Deferred>
                        <StopsCard />
                    </Deferred>
                </div>
                <div class="answer">
                    <Deferred>
                        <AnswerCard printing=printing />
                    </Deferred>
                    <Deferred>
                        <CompareCard />
                    </Deferred>
                    <Deferred>
                        <StripCard />
                    </Deferred>
                    <Deferred>
                        <LegsCard />
                    </Deferred>
                    <Deferred>
                        <ShareCard kind=Kind::Trip />
                    </Deferred>
                </div>
            </div>
            <Sheet printing=printing ready=is_current(trip_memos)>
                <Paper />
            </Sheet>
        </When>
    }
}

/// What the view is for, while there is no route.
#[component]
fn Empty() -> impl IntoView {
    let session = Session::here();
    let add = Callback::new(move |()| add_stop(session));
    view! {
        <section class="card" aria-labelledby="trip-empty">
            <h2 id="trip-empty">{keys::EMPTY.say()}</h2>
            <p>
                {keys::EMPTY_MEANS.say()}
            </p>
            <div>
                <Button label=keys::ADD_START.say() look="strong" on_press=add />
            </div>
        </section>
    }
}

/// What these fields need.
fn need(has: fn(Field) -> bool) -> Signal<Need> {
    need_with(move |_, field| has(field))
}

/// The same where it depends on the document which fields are meant.
fn need_with(has: impl Fn(&Document, Field) -> bool + Send + Sync + 'static) -> Signal<Need> {
    let session = Session::here();
    let errors = FieldErrors::here().all();
    let need = Memo::new(move |_| {
        session
            .document
            .with(|document| errors.with(|it| Need::of(it, |field| has(document, field))))
    });
    need.into()
}
