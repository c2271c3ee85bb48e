//! Why something stored, a link or a code cannot be read or made.

use crate::document::{DocumentError, DocumentFault, LARGEST_DOCUMENT, SCHEMA};
use crate::keeping::Trouble;
use crate::message::keys::files;
use crate::share::{
    BoundsError, Kind, LARGEST_PAYLOAD, LINK_FORM, LONGEST_LINK, LinkError, MOST_IN_A_LIST,
    PictureError,
};

/// What a person has to know about what is stored: sentences.
pub fn trouble(trouble: &Trouble) -> String {
    match trouble {
        Trouble::Unavailable => files::STORAGE_UNAVAILABLE.say().into(),
        Trouble::Full => files::STORAGE_FULL.say().into(),
        Trouble::Refused(reason) => files::StorageRefused { reason }.say(),
        Trouble::Unreadable(error) => files::StoredUnreadable { reason: document(error) }.say(),
        Trouble::Rebuilt(error) => files::StoredRebuilt { reason: document(error) }.say(),
        Trouble::Blocked => files::STORED_BLOCKED.say().into(),
        Trouble::Entries { count, restored } => {
            files::EntriesUnreadable { count: *count, restored: *restored }.say()
        }
    }
}

/// Why a stored document cannot be read; neither a capital nor a full stop.
pub fn document(error: &DocumentError) -> String {
    match error {
        DocumentError::TooNew { found } => {
            files::DocumentTooNew { found: *found, read: SCHEMA }.say()
        }
        DocumentError::TooLarge { bytes } => {
            files::DocumentTooLarge { bytes: *bytes, most: LARGEST_DOCUMENT }.say()
        }
        DocumentError::Unreadable { reason } => files::NoDocument { reason: fault(reason) }.say(),
    }
}

fn fault(fault: &DocumentFault) -> String {
    match fault {
        DocumentFault::Form(reason) => reason.clone(),
        DocumentFault::Number(number) => files::NoNumber { number: *number }.say(),
        DocumentFault::SameIdentity(id) => files::SameIdentity { identity: id.to_string() }.say(),
    }
}

/// Why something cannot be shared, or a link not be read, likewise.
pub fn link(error: &LinkError) -> String {
    match error {
        LinkError::LinkTooLong { length } => {
            files::LinkTooLong { length: *length, most: LONGEST_LINK }.say()
        }
        LinkError::TooMuch { length } => {
            files::TooMuchForALink { length: *length, most: LONGEST_LINK }.say()
        }
        LinkError::NoKind => files::LINK_OF_NO_KIND.say().into(),
        LinkError::TooNew { found } => files::LinkTooNew { found: *found, read: LINK_FORM }.say(),
        LinkError::Damaged => files::LINK_DAMAGED.say().into(),
        LinkError::PayloadTooLarge => files::LinkPayloadTooLarge { most: LARGEST_PAYLOAD }.say(),
        LinkError::Document(error) => document(error),
        LinkError::Bounds(error) => bounds(error),
        LinkError::MoreThanSaid { kind } => files::LinkHoldsMore { kind: choice(*kind) }.say(),
        LinkError::Blank { kind } => files::LinkBlank { kind: choice(*kind) }.say(),
        LinkError::UnknownContents => files::LINK_FROM_THE_LOG.say().into(),
    }
}

/// The variant of a message that a kind chooses.
fn choice(kind: Kind) -> &'static str {
    match kind {
        Kind::Fill => "fill",
        Kind::Car => "car",
        Kind::Trip => "trip",
    }
}

fn bounds(error: &BoundsError) -> String {
    match error {
        BoundsError::TextTooLong { quoted, length, most } => {
            files::TextTooLong { quoted, length: *length, most: *most }.say()
        }
        BoundsError::Control { quoted, code } => {
            files::ControlCharacter { quoted, code: format!("{code:04X}") }.say()
        }
        BoundsError::ListTooLong { length } => {
            files::ListTooLong { length: *length, most: MOST_IN_A_LIST }.say()
        }
    }
}

/// Why there is no QR code, likewise.
pub fn picture(error: &PictureError) -> String {
    let PictureError::TooLong { bytes } = error;
    files::PictureTooLong { bytes: *bytes }.say()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_cannot_be_read_is_said_with_why() {
        let newer = DocumentError::TooNew { found: 99 };
        let why = format!(
            "this was written by a later version (schema 99); this version reads schema {SCHEMA}: \
             update, or keep the text"
        );
        assert_eq!(
            trouble(&Trouble::Unreadable(newer.clone())),
            format!("What was stored cannot be read: {why}. It is kept aside.")
        );
        assert_eq!(link(&LinkError::Document(newer)), why);
        let reason = DocumentFault::Number(u32::MAX);
        assert_eq!(
            document(&DocumentError::Unreadable { reason }),
            "this is not a stored document: 4294967295 is no number of a fuel or a part"
        );
        assert_eq!(
            trouble(&Trouble::Entries { count: 3, restored: 1 }),
            "3 of the stored entries cannot be read and are kept aside; of 1 an earlier copy is on \
             show."
        );
    }

    #[test]
    fn a_link_names_its_kind_and_its_bounds() {
        assert_eq!(
            link(&LinkError::Blank { kind: Kind::Fill }),
            "there is no fill in it yet: enter one first"
        );
        assert_eq!(
            link(&LinkError::MoreThanSaid { kind: Kind::Trip }),
            "the link says that it holds a trip, but holds a log or other cars too: do not use it"
        );
        let hidden = BoundsError::Control { quoted: "E30".into(), code: 0x7f };
        assert_eq!(
            link(&LinkError::Bounds(hidden)),
            "a text holds the control character U+007F, which could hide what it says: type the \
             text “E30” anew"
        );
        assert_eq!(
            link(&LinkError::TooMuch { length: 9000 }),
            "this takes a link of 9000 characters, and at most 8000 arrive everywhere: send the \
             file instead that “Export everything” under Car makes"
        );
    }
}
