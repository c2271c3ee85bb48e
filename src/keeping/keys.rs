//! The keys under which things lie in the browser's storage.

use crate::document::Id;

/// What all keys of this app begin with.
pub const PREFIX: &str = "fillwright.";
/// The key of the frame.
pub const FRAME: &str = "fillwright.document";
/// The keys of the copies.
pub(super) const BACKUPS: [&str; 2] = ["fillwright.backup.0", "fillwright.backup.1"];
/// What the keys of changes that are being made begin with.
pub(super) const CHANGE: &str = "fillwright.change.";
/// What the keys of texts that could not be read begin with.
pub(super) const UNREADABLE: &str = "fillwright.unreadable.";
const LOG: &str = "log.";

/// The key of an entry.
pub(super) fn of_entry(car: &Id, entry: &Id) -> String {
    format!("{PREFIX}{LOG}{car}.{entry}")
}

/// The car and the entry that a key stands for.
pub(super) fn entry_of(key: &str) -> Option<(Id, Id)> {
    names(key.strip_prefix(PREFIX)?)
}

/// The same for the key of an entry that could not be read.
pub(super) fn unreadable_entry_of(key: &str) -> Option<(Id, Id)> {
    names(key.strip_prefix(UNREADABLE)?.split_once('.')?.1)
}

fn names(key: &str) -> Option<(Id, Id)> {
    let (car, entry) = key.strip_prefix(LOG)?.split_once('.')?;
    Some((Id::new(car).ok()?, Id::new(entry).ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_names_its_entry() {
        let (car, entry) = (Id::new("a").unwrap(), Id::new("b-1").unwrap());
        let key = of_entry(&car, &entry);
        assert_eq!(key, "fillwright.log.a.b-1");
        assert_eq!(entry_of(&key), Some((car.clone(), entry.clone())));
        let aside = "fillwright.unreadable.12.log.a.b-1";
        assert_eq!((entry_of(aside), unreadable_entry_of(aside)), (None, Some((car, entry))));
        for key in [
            FRAME,
            "fillwright.unreadable.1",
            "log.a.b",
            "fillwright.log.a",
            "fillwright.log.a.b.c",
        ] {
            assert_eq!((entry_of(key), unreadable_entry_of(key)), (None, None), "{key}");
        }
    }
}
