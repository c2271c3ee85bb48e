//! Where a new stop leads to.

use fillwright::document::{Field, TripStopPart};

use crate::app::state::State;
use leptos::prelude::*;

/// Adds a stop and leads to it.
pub(super) fn add_stop(state: State) {
    let mut added = 0;
    state.document.update(|it| added = it.here.add_stop("Home"));
    lead_to(state, added);
}

/// Leads to the first field of a stop.
pub(super) fn lead_to(state: State, id: u32) {
    let part = Some(Field::TripStop(id, TripStopPart::Place).id());
    state.route.update(|route| route.part = part);
}
