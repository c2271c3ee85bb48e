//! Writing an entry of the log, or changing one.

use super::event::{Draft, Event, What};
use super::file::{CarFile, Document};
use super::fuel::FuelForm;
use super::id::Id;
use crate::quantity::notation::Entry;

impl Draft {
    /// A new entry, at what the clock shows.
    pub fn new(id: Id, what: What, time: String, minutes_ahead: i32) -> Self {
        Self {
            id,
            changes: false,
            time,
            minutes_ahead,
            place: String::new(),
            note: String::new(),
            drained_completely: false,
            what,
        }
    }

    /// A change of an entry.
    pub fn of(event: &Event) -> Self {
        Self {
            id: event.id.clone(),
            changes: true,
            time: event.time.local(),
            minutes_ahead: event.time.minutes_ahead(),
            place: event.place.clone(),
            note: event.note.clone(),
            drained_completely: matches!(&event.what, What::Drain(entry) if entry.is_blank()),
            what: event.what.clone(),
        }
    }

    /// Notes when it happened, by a clock that is so many minutes ahead of UTC then.
    pub fn happened(&mut self, time: String, minutes_ahead: i32) {
        self.time = time;
        self.minutes_ahead = minutes_ahead;
    }
}

impl Document {
    /// The fuel with this number in the fill of the past that is being written down.
    pub fn poured(&self, id: u32) -> Option<&FuelForm> {
        let What::Fill(fill) = self.draft_what()? else { return None };
        fill.fuels.iter().find(|fuel| fuel.id == id)
    }

    /// The same, to be changed.
    pub fn poured_mut(&mut self, id: u32) -> Option<&mut FuelForm> {
        let What::Fill(fill) = self.draft_what_mut()? else { return None };
        fill.fuels.iter_mut().find(|fuel| fuel.id == id)
    }
}

impl FuelForm {
    /// The same fuel, with nothing of it put in and no limit.
    pub(crate) fn untouched(&self) -> Self {
        let limit = Entry::default();
        Self { limit, use_all: false, poured: Entry::default(), ..self.clone() }
    }
}

impl CarFile {
    /// The fuels that an entry of a fill begins with: those on offer.
    pub fn fuels_to_pour(&self) -> Vec<FuelForm> {
        self.fill.offers.iter().map(FuelForm::untouched).collect()
    }
}
