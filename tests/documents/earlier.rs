//! What earlier versions wrote is read with every text as it was typed.

use std::collections::BTreeMap;

use fillwright::document::{Document, Id};
use fillwright::keeping::{Keeper, Refused, Shelf, look};
use serde_json::Value;

use crate::{SCHEMA_0, SCHEMA_1, SCHEMA_2, SCHEMA_3, SCHEMA_4, SCHEMA_5, SCHEMA_6};

/// All texts of a document that are not blank, sorted.
fn texts(value: &Value, into: &mut Vec<String>) {
    match value {
        Value::String(text) if !text.is_empty() => into.push(text.clone()),
        Value::Array(values) => values.iter().for_each(|it| texts(it, into)),
        Value::Object(values) => values.values().for_each(|it| texts(it, into)),
        _ => {}
    }
}

fn sorted(json: &str) -> Vec<String> {
    let mut found = Vec::new();
    texts(&serde_json::from_str(json).unwrap(), &mut found);
    // What the units were is said of blank texts too, which newer versions leave out.
    found.retain(|text| !["metric", "us", "imperial"].contains(&text.as_str()));
    found.sort();
    found
}

#[test]
fn every_typed_text_is_kept() {
    for old in [SCHEMA_0, SCHEMA_1, SCHEMA_2, SCHEMA_3, SCHEMA_4, SCHEMA_5, SCHEMA_6] {
        let document = Document::from_json(old).unwrap();
        let mut rest = sorted(&document.to_json().unwrap());
        for text in sorted(old) {
            let at = rest.iter().position(|it| *it == text);
            rest.remove(at.unwrap_or_else(|| panic!("{text:?} is lost")));
        }
    }
    let document = Document::from_json(SCHEMA_0).unwrap();
    assert_eq!(document.here.last_id, 7, "a number would be given twice");
    assert_eq!(document.here.fill.contents.level.level.text, "half-typ");
    let example = Document::from_json(SCHEMA_1).unwrap().here;
    assert!(example.demo && example.log.all().is_empty());
}

#[test]
fn two_copies_of_an_old_document_are_one_car() {
    let mut document = Document::from_json(SCHEMA_1).unwrap();
    let merged = document.merge(Document::from_json(SCHEMA_1).unwrap());
    assert_eq!(merged.len(), 1);
    assert!(!merged[0].is_new && document.others.is_empty());
}

#[derive(Default)]
struct Texts(std::cell::RefCell<BTreeMap<String, String>>);

impl Shelf for Texts {
    fn get(&self, key: &str) -> Option<String> {
        self.0.borrow().get(key).cloned()
    }

    fn keys(&self) -> Vec<String> {
        self.0.borrow().keys().cloned().collect()
    }

    fn set(&self, key: &str, text: &str) -> Result<(), Refused> {
        self.0.borrow_mut().insert(key.into(), text.into());
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), Refused> {
        self.0.borrow_mut().remove(key);
        Ok(())
    }
}

#[test]
fn an_old_storage_is_taken_over_and_its_text_is_kept_as_a_copy() {
    for old in [SCHEMA_0, SCHEMA_1, SCHEMA_2, SCHEMA_3, SCHEMA_4, SCHEMA_5, SCHEMA_6] {
        let shelf = Texts::default();
        shelf.set("fillwright.document", old).unwrap();
        let tab = Id::new("tab").unwrap();
        let (_, opened) = Keeper::open(&shelf, &tab, look(&shelf));
        assert_eq!(opened.document, Some(Document::from_json(old).unwrap()));
        assert!(opened.troubles.is_empty());
        let copy = shelf.get("fillwright.backup.0").unwrap();
        assert!(copy.contains(old), "the old text is not in the copy");
        // From now on it is stored in the new way, and reads the same.
        assert_ne!(shelf.get("fillwright.document").as_deref(), Some(old));
        assert_eq!(Keeper::open(&shelf, &tab, look(&shelf)).1, opened);
    }
}
