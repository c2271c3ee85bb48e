//! A message that is still to be said, and what can be put into it.

use std::borrow::Cow;

use super::Message;

/// A message with its arguments, whatever language it will be said in.
#[derive(Clone, Debug, PartialEq)]
pub struct Sentence {
    message: usize,
    arguments: Vec<Argument<'static>>,
}

impl Sentence {
    /// A message by its place among the names in order, with its arguments in the order of
    /// their names.
    pub(super) fn new(message: usize, arguments: &[Argument<'_>]) -> Self {
        Self { message, arguments: arguments.iter().map(Argument::keep).collect() }
    }

    /// The place of the message, and its arguments.
    pub(super) fn parts(&self) -> (usize, &[Argument<'static>]) {
        (self.message, &self.arguments)
    }
}

impl From<Message> for Sentence {
    fn from(message: Message) -> Self {
        Self { message: message.0, arguments: Vec::new() }
    }
}

/// What is put into a message, or chooses between its variants.
#[derive(Clone, Debug, PartialEq)]
pub enum Argument<'a> {
    /// A text: a name that was typed, or a quantity in the person's units.
    Text(Cow<'a, str>),
    /// How many there are of something: chooses by the rules of the plural.
    Count(usize),
    /// What another message says.
    Sentence(Sentence),
}

impl Argument<'_> {
    /// The same on its own.
    pub(super) fn keep(&self) -> Argument<'static> {
        match self {
            Self::Text(text) => Argument::Text(Cow::Owned(text.to_string())),
            Self::Count(count) => Argument::Count(*count),
            Self::Sentence(sentence) => Argument::Sentence(sentence.clone()),
        }
    }
}

impl<'a> From<&'a str> for Argument<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl<'a> From<&'a String> for Argument<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Argument<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl From<char> for Argument<'_> {
    fn from(letter: char) -> Self {
        Self::Text(Cow::Owned(letter.to_string()))
    }
}

impl From<bool> for Argument<'_> {
    /// Chooses between `[true]` and `[false]`.
    fn from(holds: bool) -> Self {
        Self::Text(Cow::Borrowed(if holds { "true" } else { "false" }))
    }
}

impl From<usize> for Argument<'_> {
    fn from(count: usize) -> Self {
        Self::Count(count)
    }
}

impl From<u32> for Argument<'_> {
    fn from(count: u32) -> Self {
        Self::Count(usize::try_from(count).unwrap_or(usize::MAX))
    }
}

impl From<Sentence> for Argument<'_> {
    fn from(sentence: Sentence) -> Self {
        Self::Sentence(sentence)
    }
}

impl From<Message> for Argument<'_> {
    fn from(message: Message) -> Self {
        Self::Sentence(message.into())
    }
}
