//! Where a constant or a rule comes from.

use crate::message::Message;
use crate::message::keys::practice;

/// What sort of publication a [`Source`] is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SourceKind {
    /// A published standard.
    Standard,
    /// A law or regulation.
    Law,
    /// A paper or technical report.
    Paper,
    /// A handbook or reference book.
    Handbook,
    /// An open data set or a table of measured values.
    Dataset,
    /// Computed by a general-purpose library, named with its version.
    Library,
    /// A definition that needs no measurement.
    Definition,
    /// A rule that follows from other rules by arithmetic alone.
    Derivation,
    /// Common practice of the trade: no publication is known.
    CommonPractice,
    /// Recalled, not looked up.
    FromMemory,
}

/// How far a value can be relied on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Confidence {
    /// Read in the publication itself, computed, or true by definition.
    Checked,
    /// Read in a secondary text that reports the publication.
    Secondary,
    /// Recalled or handed down; use with care.
    Weak,
}

/// What is said of where something comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Citation {
    /// Author, title, year, table or clause: the same in every language.
    Published(&'static str),
    /// Words of our own, be it of a publication.
    Words(Message),
    /// Words of our own that say themselves that nothing was looked up.
    WithCaveat(Message),
}

/// Where a constant or a rule comes from, so that anybody can look it up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// The sort of publication.
    pub kind: SourceKind,
    /// What is said of it.
    pub citation: Citation,
    /// How far it can be relied on.
    pub confidence: Confidence,
}

impl Source {
    /// What follows from other rules, in words of our own.
    pub const fn derived(from: Message) -> Self {
        Self {
            kind: SourceKind::Derivation,
            citation: Citation::Words(from),
            confidence: Confidence::Checked,
        }
    }

    /// What has to be said where the value was not read in a publication.
    pub fn caveat(&self) -> Option<Message> {
        match self.kind {
            SourceKind::CommonPractice => Some(practice::COMMON_PRACTICE),
            SourceKind::FromMemory => Some(practice::FROM_MEMORY),
            _ => None,
        }
    }
}

impl<T> Sourced<T> {
    /// What is common practice, in words of our own.
    pub(crate) const fn common(value: T, words: Message) -> Self {
        let source = Source {
            kind: SourceKind::CommonPractice,
            citation: Citation::Words(words),
            confidence: Confidence::Weak,
        };
        Self { value, source }
    }
}

/// A value that knows where it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// Where it comes from.
    pub source: Source,
}
