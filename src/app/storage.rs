//! The document in the browser's own storage.

use fillwright::logbook::Document;
use gloo_storage::{LocalStorage, Storage, errors::StorageError};
use leptos::prelude::*;

use super::state::State;

/// Where the document lies.
const DOCUMENT: &str = "fillwright.document";
/// Where texts lie that could not be read, numbered: they are never overwritten,
/// so that nothing stored is lost.
const UNREADABLE: &str = "fillwright.unreadable";

/// What storage held.
pub(crate) struct Loaded {
    pub(crate) document: Option<Document>,
    pub(crate) trouble: Option<String>,
}

/// Whether the browser lets this page store anything; some do not in private
/// windows.
fn is_available() -> bool {
    matches!(window().local_storage(), Ok(Some(_)))
}

const UNAVAILABLE: &str = "This browser does not let the page store anything, so entries last only \
     until it is closed. A normal (not private) window keeps them.";

/// Reads the document. A text that cannot be read is kept aside.
pub(crate) fn load() -> Loaded {
    if !is_available() {
        return Loaded { document: None, trouble: Some(UNAVAILABLE.into()) };
    }
    let text = match LocalStorage::raw().get_item(DOCUMENT) {
        Ok(Some(text)) => text,
        Ok(None) => return Loaded { document: None, trouble: None },
        Err(_) => return Loaded { document: None, trouble: Some(UNAVAILABLE.into()) },
    };
    match Document::from_json(&text) {
        Ok(document) => Loaded { document: Some(document), trouble: None },
        Err(error) => {
            let kept = keep_aside(&text);
            let kept = if kept { "It is kept aside." } else { "It could not be kept aside." };
            Loaded {
                document: None,
                trouble: Some(format!("What was stored cannot be read: {error}. {kept}")),
            }
        }
    }
}

/// Keeps a text that could not be read, beside those kept before.
fn keep_aside(text: &str) -> bool {
    let storage = LocalStorage::raw();
    let key = (1..1000)
        .map(|count| format!("{UNREADABLE}.{count}"))
        .find(|key| !matches!(storage.get_item(key), Ok(Some(kept)) if kept != text));
    key.is_some_and(|key| storage.set_item(&key, text).is_ok())
}

/// Stores the document, once there is one to store.
pub(crate) fn save(state: State) {
    let document = state.document.get();
    if state.is_new.get() || !is_available() {
        return;
    }
    if let Err(error) = LocalStorage::set(DOCUMENT, &document) {
        let reason = match error {
            StorageError::JsError(error) => error.to_string(),
            other => other.to_string(),
        };
        state.trouble.set(Some(format!(
            "The last change could not be stored ({reason}). It holds until the page is closed."
        )));
    }
}
