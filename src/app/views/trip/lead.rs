//! Where a new stop leads to.

use fillwright::document::{Field, TripStopPart};
use fillwright::message::keys::trip as keys;

use crate::app::session::Session;
use leptos::prelude::*;

/// Adds a stop and leads to it.
pub(super) fn add_stop(session: Session) {
    let mut added = 0;
    session.document.update(|it| added = it.here.add_stop(keys::HOME.say()));
    lead_to(session, added);
}

/// Leads to the first field of a stop.
pub(super) fn lead_to(session: Session, id: u32) {
    let part = Some(Field::TripStop(id, TripStopPart::Place).id());
    session.route.update(|route| route.part = part);
}
