//! Storing: a page may end after any write, and others write in between, but
//! nothing that was logged is lost.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use fillwright::document::{Document, Event, Id};
use fillwright::keeping::{Keeper, Opened, Refused, Shelf, Trouble, look, unreadable};
use proptest::prelude::*;

use crate::documents::{document, event};

/// A store in memory, with room for so many characters, that takes no more than so
/// many writes.
struct Memory {
    texts: RefCell<BTreeMap<String, String>>,
    room: Cell<usize>,
    writes_left: Cell<usize>,
}

impl Memory {
    fn new() -> Self {
        Self {
            texts: RefCell::default(),
            room: Cell::new(usize::MAX),
            writes_left: Cell::new(usize::MAX),
        }
    }

    fn of(texts: &BTreeMap<String, String>) -> Self {
        let memory = Self::new();
        memory.texts.borrow_mut().clone_from(texts);
        memory
    }

    fn size(&self) -> usize {
        self.texts.borrow().iter().map(|(key, text)| key.len() + text.len()).sum()
    }

    fn write(&self) -> Result<(), Refused> {
        let left = self.writes_left.get();
        self.writes_left.set(left.saturating_sub(1));
        if left == 0 { Err(Refused::Other("the page has ended".into())) } else { Ok(()) }
    }
}

impl Shelf for Memory {
    fn get(&self, key: &str) -> Option<String> {
        self.texts.borrow().get(key).cloned()
    }

    fn keys(&self) -> Vec<String> {
        self.texts.borrow().keys().cloned().collect()
    }

    fn set(&self, key: &str, text: &str) -> Result<(), Refused> {
        self.write()?;
        let before = self.texts.borrow_mut().insert(key.into(), text.into());
        if self.size() > self.room.get() {
            let mut texts = self.texts.borrow_mut();
            match before {
                Some(before) => texts.insert(key.into(), before),
                None => texts.remove(key),
            };
            return Err(Refused::Full);
        }
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), Refused> {
        self.write()?;
        self.texts.borrow_mut().remove(key);
        Ok(())
    }
}

fn open(memory: &Memory, tab: &str) -> (Keeper, Opened) {
    Keeper::open(memory, &Id::new(tab).unwrap(), look(memory))
}

fn stored(memory: &Memory) -> Opened {
    open(memory, "reader").1
}

/// A change that leaves every entry and car known.
fn changed(before: &Document, other: &Document, kind: u8) -> Document {
    let mut after = before.clone();
    match kind {
        0 => drop(after.merge(other.clone())),
        1 => after.replace(other.clone()),
        2 => {
            after.merge(other.clone());
            let merged = after.clone();
            after.take_back(before, &merged);
        }
        _ => after.here.fill.contents.share.push('1'),
    }
    after
}

/// Every entry of `before` is there, in that version or a later one.
fn has_all(now: &Document, before: &Document) -> bool {
    before.cars().all(|car| {
        let now = now.cars().find(|it| it.id == car.id);
        car.log.all().iter().all(|event| {
            let now = now.and_then(|car| car.log.find(&event.id));
            now.is_some_and(|now| now == event || now.revision >= event.revision)
        })
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn what_is_stored_comes_back(document in document(), other in document(), kind in 0..4_u8) {
        let memory = Memory::new();
        let (mut keeper, opened) = open(&memory, "tab");
        prop_assert_eq!(opened, Opened { document: None, troubles: vec![] });
        prop_assert_eq!(keeper.save(&memory, &document), Ok(None));
        let expected = Opened { document: Some(document.clone()), troubles: vec![] };
        prop_assert_eq!(stored(&memory), expected);
        let after = changed(&document, &other, kind);
        prop_assert_eq!(keeper.save(&memory, &after), Ok(None));
        prop_assert_eq!(stored(&memory).document, Some(after));
    }

    /// Wherever the page ends, the old or the new document is there, whole.
    #[test]
    fn a_change_is_stored_whole_or_not_at_all(
        document in document(), other in document(), kind in 0..4_u8,
    ) {
        let memory = Memory::new();
        open(&memory, "tab").0.save(&memory, &document).unwrap();
        // The copy is made when the store is opened.
        let (mut keeper, _) = open(&memory, "tab");
        let texts = memory.texts.borrow().clone();
        let after = changed(&document, &other, kind);
        keeper.save(&memory, &after).unwrap();
        let after = stored(&memory);
        prop_assert!(after.troubles.is_empty());
        for writes in 0.. {
            let memory = Memory::of(&texts);
            let (mut keeper, _) = open(&memory, "tab");
            memory.writes_left.set(writes);
            let result = keeper.save(&memory, &changed(&document, &other, kind));
            memory.writes_left.set(usize::MAX);
            // Setting it right may be cut short as well.
            for again in 0..3 {
                let memory = Memory::of(&memory.texts.borrow());
                memory.writes_left.set(again);
                let _ = stored(&memory);
                memory.writes_left.set(usize::MAX);
                let now = stored(&memory);
                prop_assert_eq!(&now.troubles, &vec![]);
                prop_assert!(
                    now.document.as_ref() == Some(&document) || now == after,
                    "neither the old nor the new after {} writes", writes
                );
                if result.is_ok() {
                    prop_assert_eq!(&now, &after);
                }
            }
            if result.is_ok() {
                break;
            }
        }
    }

    /// Two tabs that take turns, with or without hearing of each other.
    #[test]
    fn two_tabs_lose_no_entry(
        first in document(), turns in prop::collection::vec((any::<bool>(), event(), any::<bool>()), 1..12),
    ) {
        let memory = Memory::new();
        open(&memory, "start").0.save(&memory, &first).unwrap();
        let mut tabs = ["a", "b"].map(|tab| {
            let (keeper, opened) = open(&memory, tab);
            (keeper, opened.document.unwrap())
        });
        let mut written: Vec<Event> = Vec::new();
        for (number, (second, event, hears)) in turns.into_iter().enumerate() {
            let before = memory.texts.borrow().clone();
            let (keeper, document) = &mut tabs[usize::from(second)];
            let event = Event { id: Id::new(&format!("new-{number}")).unwrap(), revision: 1, ..event };
            let id = event.id.clone();
            document.here.log.write(event);
            let event = document.here.log.find(&id).unwrap().clone();
            if number % 3 == 0 {
                document.here.fill.contents.share.push('1');
            }
            if let Some(merged) = keeper.save(&memory, document).unwrap() {
                *document = merged;
            }
            written.push(event);
            if hears {
                let (keeper, document) = &mut tabs[usize::from(!second)];
                for key in memory.keys() {
                    if before.get(&key) != memory.get(&key).as_ref()
                        && let Some(taken) = keeper.take_in(&memory, &key, document)
                    {
                        *document = taken;
                    }
                }
                if number % 3 == 0 {
                    prop_assert_eq!(&tabs[0].1.here.fill, &tabs[1].1.here.fill);
                }
            }
        }
        let now = stored(&memory).document.unwrap();
        prop_assert!(has_all(&now, &first));
        for event in written {
            prop_assert_eq!(now.here.log.find(&event.id), Some(&event));
        }
    }

    /// Any one text can be ruined: the rest is there, and the ruin is kept.
    #[test]
    fn a_ruined_text_is_kept_aside_and_the_rest_is_there(
        document in document(), other in document(), which in any::<prop::sample::Index>(), at in any::<prop::sample::Index>(),
    ) {
        let memory = Memory::new();
        open(&memory, "tab").0.save(&memory, &document).unwrap();
        let (mut keeper, _) = open(&memory, "tab");
        let mut now = document.clone();
        now.merge(other);
        keeper.save(&memory, &now).unwrap();
        let keys = memory.keys();
        let key = which.get(&keys);
        let text = memory.get(key).unwrap();
        let ruin = text[..text.floor_char_boundary(at.index(text.len()))].to_owned();
        memory.texts.borrow_mut().insert(key.clone(), ruin.clone());

        let (_, opened) = open(&memory, "tab");
        let rest = opened.document.unwrap();
        for car in now.cars() {
            for event in car.log.all() {
                if !key.ends_with(&format!("{}.{}", car.id, event.id)) {
                    let log = &rest.cars().find(|it| it.id == car.id).unwrap().log;
                    prop_assert_eq!(log.find(&event.id), Some(event));
                }
            }
        }
        // The copy is renewed, not read, as long as the document can be.
        if !key.starts_with("fillwright.backup") {
            prop_assert_eq!(opened.troubles.len(), 1);
            prop_assert!(unreadable(&memory).iter().any(|it| it.text == ruin));
            prop_assert!(has_all(&rest, &document), "the copy was not used");
        }
        prop_assert_eq!(stored(&memory), Opened { document: Some(rest), troubles: vec![] });
    }

    /// However little room there is, what was stored stays, and a change that is
    /// said to be stored is.
    #[test]
    fn without_room_nothing_is_lost(document in document(), other in document(), room in 0..6000_usize) {
        let memory = Memory::new();
        open(&memory, "tab").0.save(&memory, &document).unwrap();
        let (mut keeper, _) = open(&memory, "tab");
        memory.room.set(memory.size().saturating_sub(2000) + room);
        let mut after = document.clone();
        after.merge(other);
        let result = keeper.save(&memory, &after);
        let now = stored(&memory);
        prop_assert_eq!(&now.troubles.is_empty(), &now.troubles.iter().all(|it| *it != Trouble::Full));
        let now = now.document.unwrap();
        prop_assert!(has_all(&now, &document));
        match result {
            Ok(_) => prop_assert_eq!(now, after),
            Err(trouble) => {
                prop_assert_eq!(trouble, Trouble::Full);
                // With room again, everything is stored.
                memory.room.set(usize::MAX);
                keeper.save(&memory, &after).unwrap();
                let (mut now, mut after) = (stored(&memory).document.unwrap(), after);
                // The reader in between may have met the cars in another order.
                now.others.sort_by(|a, b| a.id.cmp(&b.id));
                after.others.sort_by(|a, b| a.id.cmp(&b.id));
                prop_assert_eq!(now, after);
            }
        }
    }

    #[test]
    fn what_was_removed_can_be_forgotten_without_a_trace(
        document in document(), secret in event(),
    ) {
        let memory = Memory::new();
        let mut document = document;
        document.here.log.write(Event {
            id: Id::new("secret").unwrap(), removed: true, note: "the secret".into(), ..secret
        });
        open(&memory, "tab").0.save(&memory, &document).unwrap();
        memory.set("fillwright.unreadable.1", "the secret").unwrap();
        let (mut keeper, opened) = open(&memory, "tab");
        let mut document = opened.document.unwrap();
        if let Some(draft) = &mut document.here.draft {
            draft.note.clear();
        }
        let rest = keeper.forget(&memory, &document).unwrap();
        prop_assert!(memory.texts.borrow().values().all(|text| !text.contains("the secret")));
        prop_assert!(rest.cars().all(|car| !car.removed));
        let counting = |document: &Document| -> usize {
            document.cars().filter(|car| !car.removed).map(|car| car.log.events().count()).sum()
        };
        prop_assert_eq!(counting(&rest), counting(&document));
        prop_assert_eq!(stored(&memory).document, Some(rest));
    }

    #[test]
    fn merging_keeps_all_and_is_taken_back_by_new_versions(
        document in document(), other in document(), replace in any::<bool>(),
    ) {
        let mut now = document.clone();
        if replace {
            now.replace(other.clone());
            for car in other.cars() {
                let is = now.cars().find(|it| it.id == car.id).unwrap();
                let notes = |log: &fillwright::document::Log| -> Vec<String> {
                    log.events().map(|event| event.note.clone()).collect()
                };
                prop_assert_eq!(notes(&is.log), notes(&car.log));
            }
        } else {
            now.merge(other.clone());
            prop_assert!(has_all(&now, &other));
            // A second time nothing is new.
            let mut twice = now.clone();
            for car in twice.merge(other) {
                prop_assert_eq!((car.is_new, car.added, car.changed), (false, 0, 0));
            }
            prop_assert_eq!(&twice, &now);
        }
        prop_assert!(has_all(&now, &document));
        let mut back = now.clone();
        back.take_back(&document, &now);
        prop_assert!(has_all(&back, &now), "a version was not new");
        for car in back.cars() {
            match document.cars().find(|it| it.id == car.id) {
                Some(before) => {
                    let counting = |log: &fillwright::document::Log| -> Vec<Event> {
                        log.events().map(|event| Event { revision: 1, sequence: 0, ..event.clone() }).collect()
                    };
                    prop_assert_eq!(counting(&car.log), counting(&before.log));
                    prop_assert_eq!(&car.fill, &before.fill);
                }
                None => prop_assert!(car.removed),
            }
        }
    }
}

#[test]
fn copies_give_way_to_entries() {
    let memory = Memory::new();
    let mut document = Document::demo();
    let (mut keeper, _) = open(&memory, "tab");
    keeper.save(&memory, &document).unwrap();
    drop(open(&memory, "tab"));
    assert!(
        memory.get("fillwright.backup.0").is_some() || memory.get("fillwright.backup.1").is_some()
    );
    memory.room.set(memory.size());
    document.here.car.name = "x".repeat(1000);
    assert_eq!(keeper.save(&memory, &document), Ok(None));
    assert_eq!(stored(&memory).document, Some(document));
}

#[test]
fn a_change_to_one_text_is_one_write_whatever_the_log_holds() {
    let memory = Memory::new();
    let mut document = Document::demo();
    document.here.log = (0..5000)
        .map(|number| Event {
            id: Id::new(&format!("entry-{number}")).unwrap(),
            revision: 1,
            sequence: 0,
            removed: false,
            time: fillwright::document::Moment::new("2026-05-03T17:40", 0).unwrap(),
            place: String::new(),
            note: String::new(),
            what: fillwright::document::What::Note,
        })
        .collect();
    let (mut keeper, _) = open(&memory, "tab");
    keeper.save(&memory, &document).unwrap();
    document.here.fill.contents.share = "E31".into();
    memory.writes_left.set(1);
    assert_eq!(keeper.save(&memory, &document), Ok(None));
    // And none, if nothing changed.
    assert_eq!(keeper.save(&memory, &document), Ok(None));
    memory.writes_left.set(usize::MAX);
    assert_eq!(stored(&memory).document, Some(document));
}
