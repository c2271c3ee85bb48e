//! What a store holds, put together again.

use std::collections::BTreeMap;

use super::text::{self, Change, Stored};
use super::{Shelf, Trouble, keys};
use crate::document::{CarFile, Document, DocumentError, Event, Id, Log};

/// What came back from a store.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Opened {
    /// The document, if any was stored.
    pub document: Option<Document>,
    /// What a person has to know.
    pub troubles: Vec<Trouble>,
}

/// A text that could not be read and was kept aside.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unreadable {
    /// The key under which it lies.
    pub key: String,
    /// The text.
    pub text: String,
}

/// All texts that could not be read and were kept aside.
pub fn unreadable(shelf: &dyn Shelf) -> Vec<Unreadable> {
    let mut keys = shelf.keys();
    keys.sort();
    let aside = keys.into_iter().filter(|key| key.starts_with(keys::UNREADABLE));
    aside.filter_map(|key| shelf.get(&key).map(|text| Unreadable { key, text })).collect()
}

/// The entries of each car's log that lie in a store.
pub(super) type Logs = BTreeMap<Id, Log>;

/// What was found in a store, and what remains to be done about it there.
#[derive(Debug, Default)]
pub struct Found {
    pub(super) document: Option<Document>,
    /// The text of the frame, if it can be read.
    pub(super) frame: Option<String>,
    /// The document in it, without logs, if this version wrote it.
    pub(super) forms: Option<Document>,
    /// The highest revision found.
    pub(super) revision: u64,
    /// The entries as they lie there.
    pub(super) logs: Logs,
    /// The frame's text, if it cannot be read.
    pub(super) unreadable_frame: Option<(String, DocumentError)>,
    /// Keys of other texts that cannot be read.
    pub(super) unreadable: Vec<String>,
    /// Keys that are done with, once the document is stored again.
    pub(super) done: Vec<String>,
    /// How many entries cannot be read.
    pub(super) lost: usize,
    /// For how many of them a copy stands in.
    pub(super) restored: usize,
}

/// Looks through a store, without changing it.
pub fn look(shelf: &dyn Shelf) -> Found {
    let mut keys = shelf.keys();
    keys.sort();
    let mut found = Found::default();
    let mut stored: Option<Stored> = None;
    if let Some(frame) = shelf.get(keys::FRAME) {
        found.revision = text::split(&frame).0;
        match text::read(&frame) {
            Ok(read) => {
                found.forms = (read.revision > 0).then(|| read.document.without_logs());
                stored = Some(read);
                found.frame = Some(frame);
            }
            Err(error) => found.unreadable_frame = Some((frame, error)),
        }
    }
    let mut lost = Vec::new();
    let mut entries: BTreeMap<Id, Vec<Event>> = BTreeMap::new();
    for key in &keys {
        let Some((car, id)) = keys::entry_of(key) else { continue };
        let event = shelf.get(key).and_then(|text| text::read_entry(&text, &id));
        if let Some(event) = event {
            entries.entry(car).or_default().push(event);
        } else {
            lost.push((car, id));
            found.unreadable.push(key.clone());
        }
    }
    found.logs =
        entries.into_iter().map(|(car, events)| (car, events.into_iter().collect())).collect();
    let mut logs = found.logs.clone();
    // What an earlier version could not read this one perhaps can.
    for key in &keys {
        let Some((car, id)) = keys::unreadable_entry_of(key) else { continue };
        if let Some(event) = shelf.get(key).and_then(|text| text::read_entry(&text, &id)) {
            logs.entry(car).or_default().merge(event);
            found.done.push(key.clone());
        }
    }
    let mut forgotten = Vec::new();
    for key in keys.iter().filter(|key| key.starts_with(keys::CHANGE)) {
        let change = shelf.get(key).and_then(|text| serde_json::from_str::<Change>(&text).ok());
        let Some(change) = change else {
            found.unreadable.push(key.clone());
            continue;
        };
        found.done.push(key.clone());
        forgotten.extend(change.forgotten);
        for (car, event) in change.entries {
            logs.entry(car).or_default().merge(event);
        }
        if let Some(Ok(frame)) = change.frame.as_deref().map(text::read) {
            found.revision = found.revision.max(frame.revision);
            stored = Some(later(stored, frame));
        }
    }

    let mut copies: Vec<Stored> = Vec::new();
    if stored.is_none() || !lost.is_empty() {
        for key in keys::BACKUPS {
            match shelf.get(key).map(|text| text::read(&text)) {
                Some(Ok(copy)) => copies.push(copy),
                Some(Err(_)) => found.unreadable.push(key.into()),
                None => {}
            }
        }
        copies.sort_by_key(|copy| std::cmp::Reverse(copy.revision));
    }
    found.lost = lost.len();
    for (car, id) in lost {
        let mut copies = copies.iter().flat_map(|copy| copy.document.cars());
        let copy = copies.find_map(|it| it.log.find(&id).filter(|_| it.id == car));
        if let Some(event) = copy {
            found.restored += 1;
            logs.entry(car).or_default().merge(event.clone());
        }
    }
    let mut document = stored.map(|stored| stored.document).or_else(|| rebuilt(copies, &logs));
    if let Some(document) = &mut document {
        forget(document, &mut logs, &forgotten);
        put_back(document, logs);
    }
    let gone = forgotten.into_iter().filter(|(car, id)| {
        let mut cars = document.iter().flat_map(Document::cars);
        cars.all(|it| it.id != *car || it.log.find(id).is_none())
    });
    found.done.extend(gone.map(|(car, id)| keys::of_entry(&car, &id)));
    found.document = document;
    found
}

/// Of two frames the later one. A car that only the other one has may be one that
/// another tab added at the same time.
fn later(stored: Option<Stored>, frame: Stored) -> Stored {
    let Some(mut stored) = stored else { return frame };
    if frame.revision > stored.revision {
        return frame;
    }
    for car in frame.document.cars() {
        if stored.document.cars().all(|it| it.id != car.id) {
            stored.document.others.push(car.clone());
        }
    }
    stored
}

/// The document from the latest copy and what else there is.
fn rebuilt(copies: Vec<Stored>, logs: &Logs) -> Option<Document> {
    let mut copies = copies.into_iter().map(|copy| copy.document);
    let fullest = || logs.iter().max_by_key(|(_, log)| log.all().len()).map(|(car, _)| car);
    let mut document =
        copies.next().or_else(|| fullest().map(|car| Document::empty(car.clone())))?;
    for copy in copies {
        document.merge(copy);
    }
    Some(document)
}

/// Drops what a change forgot, unless it was brought back since.
fn forget(document: &mut Document, logs: &mut Logs, forgotten: &[(Id, Id)]) {
    for (car, id) in forgotten {
        let is_known = document.cars().any(|it| it.id == *car);
        let Some(log) = logs.get_mut(car) else { continue };
        if !is_known || log.find(id).is_some_and(|event| event.removed) {
            log.forget(std::slice::from_ref(id));
        }
        if log.all().is_empty() {
            logs.remove(car);
        }
    }
}

/// Puts entries into the logs of their cars.
pub(super) fn put_back(document: &mut Document, logs: Logs) {
    for (id, log) in logs {
        if let Some(car) = document.car_mut(&id) {
            car.log.merge_all(log.all().to_vec());
        } else {
            document.others.push(CarFile { log, ..CarFile::new(id) });
        }
    }
}
