//! How much may be in a link, text by text.

use serde_json::Value;

use crate::answers::hardware::curve_table::LONGEST_TABLE;

/// The longest name, figure or other text but a table, in characters.
const LONGEST_TEXT: usize = 200;
/// The most fuels, stops, parts, curves or calibrations in one list.
pub const MOST_IN_A_LIST: usize = 100;
/// Fields whose texts are tables.
const TABLES: [&str; 3] = ["table", "flow_table", "dead_time"];
/// How much of a text is quoted, in characters.
const QUOTED: usize = 20;

/// What of a thing shared is out of bounds.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum BoundsError {
    /// A text is too long.
    TextTooLong {
        /// How it begins.
        quoted: String,
        /// Its length.
        length: usize,
        /// What is allowed.
        most: usize,
    },
    /// A text holds a letter that does not show, or that turns others round.
    Control {
        /// The text without any such character.
        quoted: String,
        /// The character's number.
        code: u32,
    },
    /// A list is too long.
    ListTooLong {
        /// Its length.
        length: usize,
    },
}

/// Whether every text and every list of a written document is within bounds.
///
/// It goes over the document as it is written, so that no field is ever forgotten.
pub(super) fn check(document: &Value) -> Result<(), BoundsError> {
    walk(document, "")
}

/// `owner` is the name of the field that a text stands in.
fn walk(value: &Value, owner: &str) -> Result<(), BoundsError> {
    match value {
        Value::Null | Value::Bool(_) | Value::Number(_) => Ok(()),
        Value::String(text) => check_text(text, owner),
        Value::Array(list) if list.len() > MOST_IN_A_LIST => {
            Err(BoundsError::ListTooLong { length: list.len() })
        }
        Value::Array(list) => list.iter().try_for_each(|it| walk(it, owner)),
        Value::Object(fields) => fields.iter().try_for_each(|(name, it)| {
            // The text of an entry stands in the field that the entry does.
            walk(it, if name == "text" { owner } else { name })
        }),
    }
}

fn check_text(text: &str, owner: &str) -> Result<(), BoundsError> {
    let (length, most) = if TABLES.contains(&owner) {
        (text.len(), LONGEST_TABLE)
    } else {
        (text.chars().count(), LONGEST_TEXT)
    };
    if length > most {
        return Err(BoundsError::TextTooLong { quoted: quoted(text), length, most });
    }
    match text.chars().find(|c| hides(*c)) {
        Some(found) => Err(BoundsError::Control { quoted: quoted(text), code: found.into() }),
        None => Ok(()),
    }
}

fn quoted(text: &str) -> String {
    text.chars().filter(|c| !hides(*c)).take(QUOTED).collect()
}

/// Control characters but tabs and line ends, and those that set the direction of
/// others (Unicode Standard Annex 9, explicit formatting).
fn hides(c: char) -> bool {
    let turns = matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    turns || (c.is_control() && !matches!(c, '\t' | '\n' | '\r'))
}
