//! Messages by name: what is to be said, apart from the words for it.
//!
//! The words stand in `src/words/`, a folder for each language, in the open Fluent syntax;
//! a build step (`tools/words`) checks them and makes the names in [`keys`]. A name can be
//! handed over by any part of the core; only what shows something to a person says it.

mod language;
mod pattern;
mod sentence;
mod wording;

pub use language::{Language, PluralRule, english_plural, speak, spoken};
pub use sentence::{Argument, Sentence};
pub use wording::Wording;

/// The names of messages by file: a constant for each without arguments, a structure with
/// a field for each argument for the others.
///
/// ```
/// use fillwright::message::keys::shared;
/// assert_eq!(shared::Entries { count: 1_usize }.say(), "1 entry");
/// assert_eq!(shared::Entries { count: 2_usize }.say(), "2 entries");
/// ```
pub mod keys {
    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}

/// The name of a message without arguments.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Message(usize);
