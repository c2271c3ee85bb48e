//! Where a constant or a rule comes from.

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

/// Where a constant or a rule comes from, so that anybody can look it up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// The sort of publication.
    pub kind: SourceKind,
    /// Author, title, year, table or clause.
    pub citation: &'static str,
    /// How far it can be relied on.
    pub confidence: Confidence,
}

impl Source {
    /// The words that stand before the citation where the value was not read in
    /// a publication.
    pub fn caveat(&self) -> Option<&'static str> {
        match self.kind {
            SourceKind::CommonPractice => Some("common practice, no source"),
            SourceKind::FromMemory => Some("from memory"),
            _ => None,
        }
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
