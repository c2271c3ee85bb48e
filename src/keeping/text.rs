//! The text of a stored document with its revision.

use serde::{Deserialize, Serialize};

use super::Refused;
use crate::document::{Document, DocumentError, Event, Id};

/// A document with the number of times that it was stored: the later one holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Stored {
    pub(super) revision: u64,
    pub(super) document: Document,
}

const BEFORE_REVISION: &str = "{\"revision\":";
const BEFORE_DOCUMENT: &str = ",\"document\":";

/// The text of a document with its revision, from the document's own text.
pub(super) fn write(revision: u64, document: &str) -> String {
    format!("{BEFORE_REVISION}{revision}{BEFORE_DOCUMENT}{document}}}")
}

/// The revision of such a text and the document's own text. What has no revision
/// is a document as versions before this one stored it.
pub(super) fn split(text: &str) -> (u64, &str) {
    let parts = || {
        let (revision, rest) = text.strip_prefix(BEFORE_REVISION)?.split_once(BEFORE_DOCUMENT)?;
        Some((revision.parse().ok()?, rest.strip_suffix('}')?))
    };
    parts().unwrap_or((0, text))
}

/// Reads such a text.
pub(super) fn read(text: &str) -> Result<Stored, DocumentError> {
    let (revision, document) = split(text);
    Ok(Stored { revision, document: Document::from_json(document)? })
}

/// Reads an entry, which has to be the one that its key names.
pub(super) fn read_entry(text: &str, id: &Id) -> Option<Event> {
    serde_json::from_str(text).ok().filter(|event: &Event| event.id == *id)
}

/// A change of more than one key, written down whole before it is made.
#[derive(Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Change {
    /// The text of the frame, if it changes.
    pub(super) frame: Option<String>,
    /// The entries that are written, each with its car.
    pub(super) entries: Vec<(Id, Event)>,
    /// The entries that are forgotten, each with its car.
    pub(super) forgotten: Vec<(Id, Id)>,
}

/// The text of what this program made: that cannot fail, unless by a mistake in it.
pub(super) fn of<T: Serialize>(value: &T) -> Result<String, Refused> {
    serde_json::to_string(value).map_err(|error| Refused::Other(error.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_is_json_and_is_read_as_written() {
        let document = Document::demo();
        let text = write(7, &document.to_json().unwrap());
        let json: serde_json::Value = serde_json::from_str(&text).unwrap();
        assert_eq!(json["revision"], 7);
        assert_eq!(read(&text).unwrap(), Stored { revision: 7, document });
    }

    #[test]
    fn a_text_of_an_earlier_version_has_no_revision() {
        let document = Document::demo();
        let text = document.to_json().unwrap();
        assert_eq!(read(&text).unwrap(), Stored { revision: 0, document });
        for text in ["", "{", "{\"revision\":1,\"document\":}", "{\"revision\":x,\"document\":{}}"]
        {
            assert!(read(text).is_err(), "{text}");
        }
    }
}
