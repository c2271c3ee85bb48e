//! A typed text with the units that were chosen when it was typed.

use serde::{Deserialize, Deserializer, Serialize};

use crate::quantity::notation::Units;

/// A text whose meaning depends on the units that were chosen when it was typed.
///
/// The text stays as it was typed for ever; in other units it is printed anew
/// from there, so that switching to and fro cannot make it drift.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// What was typed.
    pub text: String,
    /// The units chosen when it was typed.
    pub typed_in: Units,
}

impl Entry {
    /// A text typed in metric units.
    pub fn metric(text: &str) -> Self {
        Self { text: text.into(), typed_in: Units::METRIC }
    }

    /// Whether nothing was typed.
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }

    /// For a text that was stored alone before its scale could be chosen. It meant
    /// what it means in metric units.
    pub(crate) fn or_text<'de, D: Deserializer<'de>>(source: D) -> Result<Self, D::Error> {
        #[derive(Deserialize)]
        #[serde(untagged)]
        enum Stored {
            Text(String),
            Entry(Entry),
        }
        Ok(match Stored::deserialize(source)? {
            Stored::Text(text) => Self::metric(&text),
            Stored::Entry(entry) => entry,
        })
    }

    /// Whether nobody ever typed here.
    pub(crate) fn is_untouched(&self) -> bool {
        *self == Self::default()
    }
}
