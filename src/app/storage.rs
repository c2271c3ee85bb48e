//! The document in the browser's own storage, beside other tabs that use it too.

use fillwright::document::{Document, Id};
use fillwright::keeping::{
    FRAME, Found, Keeper, Opened, Refused, Shelf, Trouble, Unreadable, look, unreadable,
};
use fillwright::words::deeds::Deed;
use gloo_storage::{LocalStorage, Storage as _};
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, Storage};

use super::device;
use super::session::Session;

/// The storage of this page, if the browser lets it have one; some do not in
/// private windows.
struct Local(Storage);

impl Local {
    fn here() -> Option<Self> {
        // Asking for the raw storage where there is none would be a panic.
        let is_there = matches!(window().local_storage(), Ok(Some(_)));
        is_there.then(|| Self(LocalStorage::raw()))
    }
}

impl Shelf for Local {
    fn get(&self, key: &str) -> Option<String> {
        self.0.get_item(key).ok().flatten()
    }

    fn keys(&self) -> Vec<String> {
        let count = self.0.length().unwrap_or_default();
        (0..count).filter_map(|at| self.0.key(at).ok().flatten()).collect()
    }

    fn set(&self, key: &str, text: &str) -> Result<(), Refused> {
        self.0.set_item(key, text).map_err(|error| refused(&error))
    }

    fn remove(&self, key: &str) -> Result<(), Refused> {
        self.0.remove_item(key).map_err(|error| refused(&error))
    }
}

fn refused(error: &JsValue) -> Refused {
    let name = error.dyn_ref::<DomException>().map(DomException::name);
    match name {
        Some(name) if name == "QuotaExceededError" => Refused::Full,
        Some(name) => Refused::Other(name),
        None => Refused::Other(String::from(js_sys::Object::from(error.clone()).to_string())),
    }
}

/// What keeps the document, where there is storage, and what was found there.
pub(crate) type Stored = (Option<Keeper>, Opened);

/// Reads what is stored, if there is storage.
pub(crate) fn found() -> Option<Found> {
    Local::here().map(|local| look(&local))
}

/// Goes on with what was found there.
pub(crate) fn open(found: Option<Found>) -> Stored {
    let Some((local, found)) = Local::here().zip(found) else {
        return (None, Opened { document: None, troubles: vec![Trouble::Unavailable] });
    };
    let (keeper, opened) = Keeper::open(&local, &device::new_id(), found);
    (Some(keeper), opened)
}

/// The texts that were kept aside.
pub(crate) fn aside() -> Vec<Unreadable> {
    Local::here().map(|local| unreadable(&local)).unwrap_or_default()
}

/// Does something with the keeper, where there is storage.
fn with_keeper<T>(session: Session, act: impl FnOnce(&mut Keeper, &Local) -> T) -> Option<T> {
    let local = Local::here()?;
    session.keeper.try_update_value(|keeper| keeper.as_mut().map(|keeper| act(keeper, &local)))?
}

/// Stores every change, and takes in those of other tabs.
pub(crate) fn keep(session: Session) {
    Effect::new(move |_| save(session));
    let handle = window_event_listener(ev::storage, move |event| {
        if let Some(key) = event.key() {
            hear(session, &key);
        }
    });
    on_cleanup(move || handle.remove());
    // What another tab did to the forms has to wait while somebody types here.
    Effect::new(move |_| {
        if !session.typing.get() {
            hear(session, FRAME);
        }
    });
    // A page that the browser had put to sleep did not hear anything.
    let handle = window_event_listener(ev::pageshow, move |event| {
        if event.persisted() && session.unsaved.get_untracked().is_none() {
            // Not to be read anew is no harm: changes are merged all the same.
            let _ = window().location().reload();
        }
    });
    on_cleanup(move || handle.remove());
    Effect::new(move |asked: Option<bool>| {
        let recorded = session.document.with(|it| it.cars().any(|car| !car.log.all().is_empty()));
        let asked = asked.unwrap_or_default();
        if recorded && !asked {
            // The browser may refuse, or not know of it: then the storage is what it was.
            let _ = window().navigator().storage().persist();
        }
        asked || recorded
    });
}

/// Stores the document, once there is one to store.
fn save(session: Session) {
    let document = session.document.get();
    if session.is_new.get() {
        return;
    }
    let saved = with_keeper(session, |keeper, local| keeper.save(local, &document));
    let unsaved = match saved {
        Some(Ok(merged)) => {
            if let Some(merged) = merged {
                session.show(merged);
            }
            None
        }
        Some(Err(trouble)) => Some(trouble),
        None => None,
    };
    if session.unsaved.with_untracked(|it| *it != unsaved) {
        session.unsaved.set(unsaved);
    }
}

/// Takes in what another tab did to a key.
fn hear(session: Session, key: &str) {
    if key == FRAME && session.typing.get_untracked() {
        return;
    }
    if session.is_new.get_untracked() {
        if key == FRAME
            && let (Some(keeper), Opened { document: Some(document), .. }) = open(found())
        {
            session.keeper.set_value(Some(keeper));
            session.show(document);
            session.is_new.set(false);
        }
        return;
    }
    let document = session.document.get_untracked();
    let taken = with_keeper(session, |keeper, local| keeper.take_in(local, key, &document));
    if let Some(Some(taken)) = taken {
        session.show(taken);
    }
}

/// Drops cars for good that the document does not have any more.
pub(crate) fn forget_cars(session: Session, cars: &[Id]) {
    if cars.is_empty() {
        return;
    }
    let document = session.document.get_untracked();
    let forgotten =
        with_keeper(session, |keeper, local| keeper.forget_cars(local, &document, cars));
    if let Some(Err(trouble)) = forgotten {
        session.unsaved.set(Some(trouble));
    }
}

/// Drops for good what was removed and what was kept aside.
pub(crate) fn forget(session: Session) {
    let document = session.document.get_untracked();
    let rest = with_keeper(session, |keeper, local| keeper.forget(local, &document));
    match rest {
        Some(Ok(rest)) => {
            // What is gone for good cannot be brought back.
            session.undoing.clear();
            session.troubles.set(Vec::new());
            session.show(rest);
        }
        Some(Err(trouble)) => session.unsaved.set(Some(trouble)),
        None => {}
    }
    session.aside.set(aside().len());
}

/// Starts with the example or with an empty car. An example that was in use goes
/// without a trace in what is stored; in this sitting it can be brought back.
pub(crate) fn start(session: Session, demo: bool) {
    let before = session.document.get_untracked();
    let mut next = if demo { Document::demo() } else { Document::empty(device::new_id()) };
    next.settings.units = before.settings.units;
    next.settings.decimal = before.settings.decimal;
    if session.is_new.get_untracked() {
        session.show(next);
        session.is_new.set(false);
    } else {
        let (examples, cars) = before.cars().cloned().partition::<Vec<_>, _>(|car| car.demo);
        next.others = cars;
        session.replace_undoably(if demo { Deed::ExampleOpened } else { Deed::ExampleLeft }, next);
        let examples: Vec<Id> = examples.into_iter().map(|car| car.id).collect();
        forget_cars(session, &examples);
    }
}
