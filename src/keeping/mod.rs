//! How the document lies in a store of texts under keys, such as a browser's, and
//! comes back from there, so that nothing that was logged is ever lost.
//!
//! | key | text |
//! | --- | --- |
//! | `fillwright.document` | the frame: a revision, and the document without logs |
//! | `fillwright.log.CAR.ENTRY` | one entry of a car's log |
//! | `fillwright.change.TAB` | a change of more than one key, while it is being made |
//! | `fillwright.backup.0`, `.1` | the whole document as it was, with a revision; renewed in turn |
//! | `fillwright.unreadable.N` | a text that could not be read |
//! | `fillwright.unreadable.N.log.CAR.ENTRY` | an entry that could not be read |
//!
//! Each write of one text is whole or not at all, but there is no lock: other tabs
//! write in between, and the page may end after any write. So an entry has a key
//! of its own; a change of several keys is written down whole before it is made,
//! and made again from there if it was cut short; and entries and cars are never
//! removed because somebody does not know of them, but only by name.

mod keeper;
mod keys;
mod open;
mod text;

pub use keeper::Keeper;
pub use keys::{FRAME, PREFIX};
pub use open::{Found, Opened, Unreadable, look, unreadable};

use crate::document::DocumentError;

/// A store of texts under keys. Each call is whole or not at all.
pub trait Shelf {
    /// The text under a key.
    fn get(&self, key: &str) -> Option<String>;
    /// All keys.
    fn keys(&self) -> Vec<String>;
    /// Puts a text under a key.
    ///
    /// # Errors
    /// When the store does not take it; what was under the key is still there then.
    fn set(&self, key: &str, text: &str) -> Result<(), Refused>;
    /// Removes a key.
    ///
    /// # Errors
    /// When the store does not let it.
    fn remove(&self, key: &str) -> Result<(), Refused>;
}

/// Why a store did not take a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refused {
    /// There is no room.
    Full,
    /// For another reason, in the store's words.
    Other(String),
}

/// What a person has to know about what is stored.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum Trouble {
    /// The browser does not let the page store anything.
    Unavailable,
    /// There is no room.
    Full,
    /// The browser gave another reason.
    Refused(String),
    /// The document cannot be read, and nothing else is there.
    Unreadable(DocumentError),
    /// The document cannot be read, and the rest was put together again.
    Rebuilt(DocumentError),
    /// What cannot be read is all there is of it: there is no room for a copy.
    Blocked,
    /// Entries cannot be read.
    Entries {
        /// How many.
        count: usize,
        /// For how many a copy was found.
        restored: usize,
    },
}

impl From<Refused> for Trouble {
    fn from(refused: Refused) -> Self {
        match refused {
            Refused::Full => Self::Full,
            Refused::Other(reason) => Self::Refused(reason),
        }
    }
}
