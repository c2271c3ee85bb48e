//! The id that tells what is stored apart across devices.

use serde::{Deserialize, Serialize};
use std::fmt;

/// The longest name.
const LONGEST: usize = 40;

/// Why a text tells nothing apart.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error(
    "“{given}” is not an identity: 1 to {LONGEST} small letters, digits and hyphens are, as this \
     app gives them"
)]
pub struct IdError {
    /// The text given.
    pub given: String,
}

/// Tells a car or an entry of a log apart from all others, on every device: a
/// name drawn at random when it is made, and kept for ever.
///
/// ```
/// use fillwright::document::Id;
/// assert!(Id::new("5f0c-91ab").is_ok());
/// assert!(Id::new("a/b").is_err());
/// ```
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Id(String);

impl Id {
    /// An identity from its text: 1 to 40 small letters, digits and hyphens, so
    /// that it can stand in a key or a link.
    ///
    /// # Errors
    /// When there is anything else in it.
    pub fn new(text: &str) -> Result<Self, IdError> {
        let fits = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        if (1..=LONGEST).contains(&text.len()) && text.chars().all(fits) {
            Ok(Self(text.into()))
        } else {
            Err(IdError { given: text.chars().take(LONGEST).collect() })
        }
    }

    /// An identity drawn by chance: 80 bits, so that no two are ever the same.
    pub fn of_chance(bytes: [u8; 10]) -> Self {
        let digits = bytes.iter().flat_map(|byte| [byte >> 4, byte & 15]);
        Self(digits.filter_map(|digit| char::from_digit(digit.into(), 16)).collect())
    }

    /// The identity of what a text stands for, the same wherever it is worked
    /// out. For what was written before there were identities.
    ///
    /// The hash is FNV-1a with 64 bits (Fowler, Noll and Vo).
    pub(crate) fn of_content(text: &str) -> Self {
        let hash = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
        });
        Self(format!("{hash:016x}"))
    }

    /// The text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for Id {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl TryFrom<String> for Id {
    type Error = IdError;

    fn try_from(text: String) -> Result<Self, IdError> {
        Self::new(&text)
    }
}

impl From<Id> for String {
    fn from(id: Id) -> Self {
        id.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Test vector of the algorithm's authors: FNV-1a, 64 bits, of "foobar".
    #[test]
    fn content_has_the_published_hash() {
        assert_eq!(Id::of_content("foobar").as_str(), "85944171f73967e8");
    }

    #[test]
    fn an_identity_fits_into_a_key() {
        for text in ["", "A", "a b", "a.b", "ä", &"x".repeat(41)] {
            assert!(Id::new(text).is_err(), "{text}");
            assert!(serde_json::from_str::<Id>(&format!("\"{text}\"")).is_err());
        }
        assert_eq!(Id::new("0b-9").unwrap().to_string(), "0b-9");
    }
}
