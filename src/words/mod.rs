//! Every sentence that a person reads, by feature, as messages with names.
//!
//! The files of a language stand in a folder with its tag (`en/`), in the open Fluent
//! syntax; a build step (`tools/words`) checks them and makes the names in [`messages`].
//! What is said follows from values: text is made here, and nowhere below.

mod argument;
mod language;
mod pattern;

pub use argument::Argument;
pub use language::{Language, PluralRule, english_plural, speak, spoken};

/// The messages by file: a constant for each without arguments, a structure with a
/// field for each argument for the others.
///
/// ```
/// use fillwright::words::messages::shared;
/// assert_eq!(shared::Entries { count: 1 }.say(), "1 entry");
/// assert_eq!(shared::Entries { count: 2 }.say(), "2 entries");
/// ```
pub mod messages {
    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}

/// A message without arguments.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Message(usize);

impl Message {
    /// The message, in the language that is spoken.
    pub fn say(self) -> &'static str {
        spoken().text(self.0)
    }
}

/// A message with its arguments put in.
fn say(message: usize, arguments: &[Argument<'_>]) -> String {
    spoken().fill_in(message, arguments)
}
