use fillwright::logbook::Field;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::holds;

/// Whether something in one of these fields is missing or wrong.
pub(super) fn wrong(has: fn(Field) -> bool) -> Signal<bool> {
    let state = State::here();
    holds(move || {
        state.workshop.with(|it| it.complaints.iter().any(|complaint| has(complaint.field)))
    })
}
