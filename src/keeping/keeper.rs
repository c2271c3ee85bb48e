//! Storing the document, change by change, beside other tabs that do so too.

use super::open::{self, Found, Logs, Opened};
use super::text::{self, Change};
use super::{Refused, Shelf, Trouble, keys};
use crate::document::{Document, DocumentError, Event, Id, Log};

/// After so many stored changes the copy of the whole document is renewed.
const CHANGES_PER_BACKUP: u32 = 500;

/// What one tab knows of the store, in order to store its changes there.
#[derive(Debug)]
pub struct Keeper {
    /// The key under which this tab writes down a change.
    change: String,
    /// The frame's text as it was last seen.
    seen: Option<String>,
    /// The document in it, without logs.
    forms: Option<Document>,
    /// The entries that lie in the store.
    logs: Logs,
    revision: u64,
    /// Changes since the last copy.
    changes: u32,
    /// Whether a change that was written down is still to be made.
    pending: bool,
    /// Whether there is no room for a copy of a text that cannot be read.
    blocked: bool,
}

impl Keeper {
    /// Goes on with what was found in a store: sets right what was cut short, and keeps
    /// aside what cannot be read. `tab` tells this tab apart.
    pub fn open(shelf: &dyn Shelf, tab: &Id, found: Found) -> (Self, Opened) {
        let mut keeper = Self {
            change: format!("{}{tab}", keys::CHANGE),
            forms: found.forms,
            seen: found.frame,
            pending: false,
            logs: found.logs,
            revision: found.revision,
            changes: 0,
            blocked: false,
        };
        let mut troubles = Vec::new();
        if let Some((text, error)) = found.unreadable_frame {
            keeper.seen = Some(text);
            troubles.extend(keeper.keep_frame_aside(shelf, error, found.document.is_some()));
        }
        for key in found.unreadable {
            if let Some(text) = shelf.get(&key) {
                let name = keys::entry_of(&key).map(|(car, id)| format!(".log.{car}.{id}"));
                let kept = keep_aside(shelf, &text, &name.unwrap_or_default());
                if kept.and_then(|()| shelf.remove(&key)).is_err() {
                    keeper.blocked = true;
                }
            }
        }
        if keeper.blocked {
            troubles = vec![Trouble::Blocked];
        }
        if found.lost > 0 {
            troubles.push(Trouble::Entries { count: found.lost, restored: found.restored });
        }
        if let Some(document) = &found.document {
            keeper.backup_of_earlier_version(shelf);
            match keeper.save(shelf, document) {
                Ok(_) => {
                    // What is done with twice does no harm.
                    found.done.iter().for_each(|key| drop(shelf.remove(key)));
                    if troubles.is_empty() {
                        keeper.backup(shelf, document);
                    }
                }
                Err(trouble) => {
                    if !troubles.contains(&trouble) {
                        troubles.push(trouble);
                    }
                }
            }
        }
        (keeper, Opened { document: found.document, troubles })
    }

    /// Stores a document. Returns it as it is then, if other tabs changed it too:
    /// their entries and cars are in it, and their forms where those here are as
    /// they were.
    ///
    /// # Errors
    /// When it could not be stored. What was stored before is still there.
    pub fn save(
        &mut self,
        shelf: &dyn Shelf,
        document: &Document,
    ) -> Result<Option<Document>, Trouble> {
        if self.blocked {
            return Err(Trouble::Blocked);
        }
        let mut merged = None;
        let stored = shelf.get(keys::FRAME);
        match &stored {
            // Somebody emptied the store; everything is written anew.
            None => {
                self.logs = Logs::new();
                self.forms = None;
            }
            Some(text) if stored != self.seen => match text::read(text) {
                Ok(_) => {
                    let mut taken = document.clone();
                    self.adopt(shelf, text, &mut taken);
                    taken.choose(&document.here.id);
                    merged = Some(taken);
                }
                Err(error) => {
                    if let Some(Trouble::Blocked) = self.keep_frame_aside(shelf, error, true) {
                        return Err(Trouble::Blocked);
                    }
                }
            },
            Some(_) => {}
        }
        self.seen = stored;
        let entries = self.entries_to_write(merged.as_ref().unwrap_or(document));
        let mut late = Vec::new();
        let mut to_write = Vec::new();
        for (car, event) in entries {
            match shelf
                .get(&keys::of_entry(&car, &event.id))
                .and_then(|it| text::read_entry(&it, &event.id))
            {
                Some(there) if there.holds_against(&event) => late.push((car, there)),
                _ => to_write.push((car, event)),
            }
        }
        if !late.is_empty() {
            let taken = merged.get_or_insert_with(|| document.clone());
            for (car, event) in late {
                self.logs.entry(car.clone()).or_default().merge(event.clone());
                if let Some(car) = taken.car_mut(&car) {
                    car.log.merge(event);
                }
            }
        }
        let now = merged.as_ref().unwrap_or(document);
        self.write(shelf, now, Change { frame: None, entries: to_write, forgotten: Vec::new() })?;
        Ok(merged)
    }

    /// Takes in what another tab did to a key, or to all of them. Returns the
    /// document with that, if it changes.
    pub fn take_in(
        &mut self,
        shelf: &dyn Shelf,
        key: &str,
        document: &Document,
    ) -> Option<Document> {
        let mut taken = document.clone();
        if key == keys::FRAME {
            let text = shelf.get(keys::FRAME).filter(|text| self.seen.as_ref() != Some(text))?;
            // One that cannot be read is kept aside when there is something to store.
            text::read(&text).ok()?;
            self.adopt(shelf, &text, &mut taken);
            self.seen = Some(text);
        } else {
            let (car, id) = keys::entry_of(key)?;
            if let Some(text) = shelf.get(key) {
                let event = text::read_entry(&text, &id)?;
                self.logs.entry(car.clone()).or_default().merge(event.clone());
                taken.car_mut(&car)?.log.merge(event);
            } else {
                // Forgotten there; what still counts here is written again.
                self.logs.entry(car.clone()).or_default().forget(std::slice::from_ref(&id));
                let file = taken.car_mut(&car)?;
                if file.removed || file.log.find(&id)?.removed {
                    file.log.forget(&[id]);
                }
            }
        }
        (taken != *document).then_some(taken)
    }

    /// Drops for good what was removed: entries, cars with their logs, and the texts
    /// that could not be read. No copy of them is left.
    ///
    /// # Errors
    /// When the store does not let it.
    pub fn forget(&mut self, shelf: &dyn Shelf, document: &Document) -> Result<Document, Trouble> {
        for aside in open::unreadable(shelf) {
            shelf.remove(&aside.key)?;
        }
        if self.blocked {
            self.blocked = false;
            self.seen = shelf.get(keys::FRAME);
        }
        let mut rest = self.save(shelf, document)?.unwrap_or_else(|| document.clone());
        let mut forgotten = Vec::new();
        rest.others.retain(|car| !car.removed);
        for (car, log) in &self.logs {
            let events = log.all().iter();
            let known = rest.cars().any(|it| it.id == *car);
            let gone = events.filter(|event| event.removed || !known);
            forgotten.extend(gone.map(|event| (car.clone(), event.id.clone())));
        }
        for car in rest.cars_mut() {
            let gone = car.log.all().iter().filter(|event| event.removed);
            let gone: Vec<Id> = gone.map(|event| event.id.clone()).collect();
            car.log.forget(&gone);
        }
        self.write(shelf, &rest, Change { frame: None, entries: Vec::new(), forgotten })?;
        self.renew_backups(shelf, &rest)?;
        Ok(rest)
    }

    /// Drops cars for good with their logs, as if they had never been there. The document
    /// is the one without them.
    ///
    /// # Errors
    /// When the store does not let it.
    pub fn forget_cars(
        &mut self,
        shelf: &dyn Shelf,
        document: &Document,
        cars: &[Id],
    ) -> Result<(), Trouble> {
        self.save(shelf, document)?;
        let mut forgotten = Vec::new();
        for car in cars {
            let log = self.logs.get(car).map(Log::all).unwrap_or_default();
            forgotten.extend(log.iter().map(|event| (car.clone(), event.id.clone())));
        }
        self.write(shelf, document, Change { frame: None, entries: Vec::new(), forgotten })?;
        self.renew_backups(shelf, document)
    }

    /// Leaves one copy of the whole document, and none of anything else.
    fn renew_backups(&mut self, shelf: &dyn Shelf, document: &Document) -> Result<(), Trouble> {
        for key in keys::BACKUPS {
            shelf.remove(key)?;
        }
        self.backup(shelf, document);
        Ok(())
    }

    /// Takes in the frame of another tab.
    fn adopt(&mut self, shelf: &dyn Shelf, text: &str, document: &mut Document) {
        let Ok(theirs) = text::read(text) else { return };
        let known: Vec<Id> = document.cars().map(|car| car.id.clone()).collect();
        document.adopt(self.forms.as_ref(), &theirs.document);
        let is_new = document.cars().any(|car| !known.contains(&car.id));
        if is_new {
            let logs = open::look(shelf).logs;
            self.logs.extend(logs.clone());
            open::put_back(document, logs);
        }
        self.forms = Some(theirs.document.without_logs());
        self.revision = self.revision.max(theirs.revision);
    }

    fn entries_to_write(&self, document: &Document) -> Vec<(Id, Event)> {
        let nothing = Log::default();
        let mut entries = Vec::new();
        for car in document.cars() {
            let stored = self.logs.get(&car.id).unwrap_or(&nothing);
            let changed = car.log.changed_since(stored);
            if !changed.is_empty() {
                let log = car.log.by_id();
                let events = changed.iter().filter_map(|id| log.find(id));
                entries.extend(events.map(|event| (car.id.clone(), event.clone())));
            }
        }
        entries
    }

    /// Makes a change of entries, and of the frame if the forms changed.
    fn write(
        &mut self,
        shelf: &dyn Shelf,
        document: &Document,
        mut change: Change,
    ) -> Result<(), Trouble> {
        let forms = document.without_logs();
        let is_stored = self.seen.is_some() && self.forms.as_ref() == Some(&forms);
        if !is_stored {
            let text = forms.to_json().map_err(|error| Trouble::Refused(error.to_string()))?;
            change.frame = Some(text::write(self.revision + 1, &text));
        }
        let keys = change.entries.len() + change.forgotten.len() + usize::from(!is_stored);
        if keys == 0 {
            return Ok(());
        }
        if keys > 1 {
            let text = text::of(&change)?;
            let written = put(shelf, &self.change, &text);
            self.pending |= written.is_ok();
            match written {
                // Without room for the change as a whole its parts are stored one by
                // one: each is whole in itself, and all of them come before the frame.
                Ok(()) | Err(Refused::Full) => {}
                Err(refused) => return Err(refused.into()),
            }
        }
        let made = make(shelf, &change);
        if made == Err(Refused::Full) && self.pending {
            // The change takes the room that its parts need.
            shelf.remove(&self.change)?;
            self.pending = false;
            make(shelf, &change)?;
        } else {
            made?;
        }
        if self.pending {
            shelf.remove(&self.change)?;
            self.pending = false;
        }
        if change.frame.is_some() {
            self.revision += 1;
            self.seen = change.frame;
            self.forms = Some(forms);
        }
        for car in document.cars() {
            self.logs.insert(car.id.clone(), car.log.clone());
        }
        let is_known = |car: &Id| document.cars().any(|it| it.id == *car);
        for (car, _) in change.forgotten {
            if !is_known(&car) {
                self.logs.remove(&car);
            }
        }
        self.changes += 1;
        if self.changes >= CHANGES_PER_BACKUP {
            self.backup(shelf, document);
        }
        Ok(())
    }

    /// Renews the older of the two copies of the whole document, if there is room.
    fn backup(&mut self, shelf: &dyn Shelf, document: &Document) {
        self.changes = 0;
        let Ok(text) = document.to_json() else { return };
        let copies = copies(shelf);
        let newest = copies.last().map_or("", |copy| &copy.2);
        if text::split(newest).1 != text {
            let number = copies.last().map_or(0, |copy| copy.0) + 1;
            // A copy gives way where there is no room.
            let _ = shelf.set(copies[0].1, &text::write(number, &text));
        }
    }

    /// The text of an earlier version is the first copy.
    fn backup_of_earlier_version(&self, shelf: &dyn Shelf) {
        let Some(text) = self.seen.as_ref().filter(|text| text::split(text).0 == 0) else { return };
        if copies(shelf).iter().all(|copy| copy.2.is_empty()) {
            let _ = shelf.set(keys::BACKUPS[0], &text::write(0, text));
        }
    }

    fn keep_frame_aside(
        &mut self,
        shelf: &dyn Shelf,
        error: DocumentError,
        rebuilt: bool,
    ) -> Option<Trouble> {
        let text = shelf.get(keys::FRAME)?;
        self.blocked = keep_aside(shelf, &text, "").is_err();
        Some(match (self.blocked, rebuilt) {
            (true, _) => Trouble::Blocked,
            (false, true) => Trouble::Rebuilt(error),
            (false, false) => Trouble::Unreadable(error),
        })
    }
}

/// Number, key and text of the copies, the older one first.
fn copies(shelf: &dyn Shelf) -> [(u64, &'static str, String); 2] {
    let mut copies = keys::BACKUPS.map(|key| {
        let text = shelf.get(key).unwrap_or_default();
        (text::split(&text).0, key, text)
    });
    copies.sort_by_key(|copy| (copy.0, !copy.2.is_empty()));
    copies
}

/// Stores a text. Where there is no room, copies give way to it, the older first.
fn put(shelf: &dyn Shelf, key: &str, text: &str) -> Result<(), Refused> {
    let mut result = shelf.set(key, text);
    if result == Err(Refused::Full) {
        for copy in copies(shelf).iter().filter(|copy| !copy.2.is_empty()) {
            shelf.remove(copy.1)?;
            result = shelf.set(key, text);
            if result != Err(Refused::Full) {
                break;
            }
        }
    }
    result
}

/// Writes what a change consists of, the frame last.
fn make(shelf: &dyn Shelf, change: &Change) -> Result<(), Refused> {
    for (car, event) in &change.entries {
        let text = text::of(event)?;
        put(shelf, &keys::of_entry(car, &event.id), &text)?;
    }
    for (car, id) in &change.forgotten {
        shelf.remove(&keys::of_entry(car, id))?;
    }
    change.frame.as_ref().map_or(Ok(()), |frame| put(shelf, keys::FRAME, frame))
}

/// Keeps a text aside, beside those kept before.
fn keep_aside(shelf: &dyn Shelf, text: &str, name: &str) -> Result<(), Refused> {
    let free = (1_u32..).map(|count| format!("{}{count}{name}", keys::UNREADABLE));
    let key = free.into_iter().find(|key| shelf.get(key).is_none_or(|kept| kept == text));
    key.map_or(Ok(()), |key| put(shelf, &key, text))
}
