//! What a person reads of a row of data: a name that is the same in every language, or
//! a message.

use super::Message;

/// A text that is shown with a row of data.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wording {
    /// A name as it is printed or published, the same in every language.
    Fixed(&'static str),
    /// Words of our own.
    Words(Message),
}

impl Wording {
    /// The text, in the language that is spoken.
    pub fn say(self) -> &'static str {
        match self {
            Self::Fixed(text) => text,
            Self::Words(message) => message.say(),
        }
    }
}
