//! What the worker plans follows what the Trip view asks.

use std::sync::Arc;

use fillwright::answers::trip::TripReading;
use leptos::prelude::*;

use super::route::View;
use super::session::Session;
use super::stages::Stages;
use super::trip_memos::TripMemos;

/// Plans whatever route is asked for, as long as the Trip view is open. The worker begins
/// when the view is there: on a small device the two would only get in each other's way.
pub(crate) fn follow(session: Session, trip_memos: TripMemos, stages: Stages) {
    let is_there =
        Memo::new(move |_| session.route.with(|it| it.view == View::Trip) && !stages.busy.get());
    let asked = Memo::new(move |_| {
        is_there
            .get()
            .then(|| trip_memos.reading.with(|it: &TripReading| it.asked.clone()))
            .flatten()
    });
    Effect::new(move |_| {
        let planning = trip_memos.planning;
        match asked.get() {
            Some(asked) => {
                if !planning.has_asked(&asked) {
                    planning.ask(Arc::new(asked));
                }
            }
            None => planning.leave(),
        }
    });
}
