//! After the fill: what was put in becomes an entry of the log.

use super::contents::{ContentsForm, LevelForm};
use super::event::{BeforeForm, Event, FillEntry, What};
use super::file::CarFile;
use super::fill::{AimForm, FillForm, StartForm};
use super::fuel::FuelForm;
use super::id::Id;
use super::moment::Moment;
use crate::quantity::notation::Entry;

impl FillForm {
    fn offer_mut(&mut self, id: u32) -> Option<&mut FuelForm> {
        self.offers.iter_mut().find(|it| it.id == id)
    }

    /// Notes what went in of a fuel. Where that is taken back, so is that the nozzle clicked
    /// off: it did at another amount.
    pub fn note_poured(&mut self, id: u32, amount: Entry) {
        self.clicked &= !amount.is_blank();
        if let Some(offer) = self.offer_mut(id) {
            offer.poured = amount;
        }
    }

    /// Takes it that a step was poured as planned: so much of the fuel is now in, and the
    /// nozzle clicked off where the step ends there.
    pub fn pour_step(&mut self, id: u32, amount: Entry, to_click: bool) {
        if let Some(offer) = self.offer_mut(id) {
            offer.poured = amount;
            self.clicked |= to_click;
        }
    }

    /// Takes a fuel off the list of those on offer, and with it what was put in of it.
    pub fn remove_offer(&mut self, id: u32) {
        self.note_poured(id, Entry::default());
        self.offers.retain(|it| it.id != id);
    }

    /// Notes another aim or another rule for how far to fill. Going on past the aim was said
    /// of the one before.
    pub fn aim_anew(&mut self, change: impl FnOnce(&mut Self)) {
        self.anyway = false;
        change(self);
    }
}

impl CarFile {
    /// Records the fill at hand and makes room for the next, which then starts
    /// from the log. Returns whether there was anything to record.
    pub fn record(&mut self, id: Id, time: Moment) -> bool {
        let fill = &mut self.fill;
        let poured = |offer: &&FuelForm| !offer.poured.is_blank();
        let fuels: Vec<FuelForm> = fill
            .offers
            .iter()
            .filter(poured)
            .map(|offer| FuelForm { poured: offer.poured.clone(), ..offer.untouched() })
            .collect();
        if fuels.is_empty() {
            return false;
        }
        let before = before(fill);
        let entry = FillEntry { before, fuels, clicked: fill.clicked };
        let place = std::mem::take(&mut fill.place);
        self.route.filled |= self.route.stop_here().is_some_and(|it| it.place == place);
        let what = What::Fill(entry);
        let note = String::new();
        self.log.write(Event {
            id,
            revision: 1,
            sequence: 0,
            removed: false,
            time,
            place,
            note,
            what,
        });
        fill.start = StartForm::Log;
        // How the level is read stays as it is chosen.
        let reading = fill.contents.level.reading;
        fill.contents = ContentsForm {
            level: LevelForm { reading, ..LevelForm::default() },
            ..ContentsForm::default()
        };
        fill.clicked = false;
        fill.anyway = false;
        if fill.aim == AimForm::AsPoured {
            fill.aim = AimForm::Share;
        }
        for offer in &mut fill.offers {
            // A can that was to be emptied is empty now.
            offer.use_all &= offer.poured.is_blank();
            offer.poured = Entry::default();
        }
        true
    }
}

/// What was known before the fill.
fn before(fill: &FillForm) -> BeforeForm {
    if fill.contents.level.level.is_blank() {
        return BeforeForm::Nothing;
    }
    match fill.start {
        StartForm::Log => BeforeForm::Level(fill.contents.level.clone()),
        StartForm::Typed => BeforeForm::Contents(fill.contents.clone()),
    }
}
