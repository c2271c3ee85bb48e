//! What can be put into a message.

use std::borrow::Cow;
use std::fmt;

/// What is put into a message, or chooses between its variants.
#[derive(Clone, Debug, PartialEq)]
pub enum Argument<'a> {
    /// A text: a name that was typed, or a quantity in the person's units.
    Text(Cow<'a, str>),
    /// How many there are of something: chooses by the rules of the plural.
    Count(usize),
}

impl fmt::Display for Argument<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Text(text) => f.write_str(text),
            Self::Count(count) => write!(f, "{count}"),
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
