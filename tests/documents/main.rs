//! The document's format: its description, what earlier versions wrote, and what
//! is no document.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    reason = "a test fails by panicking"
)]

mod earlier;
mod hostile;
mod mutated;
#[path = "../properties/people.rs"]
mod people;
mod picture;
mod schema;
mod shared;

/// What the app of schema 1 exported when its invented example was in use.
const SCHEMA_1: &str = include_str!("schema_1.json");
const SCHEMA_2: &str = include_str!("schema_2.json");
const SCHEMA_3: &str = include_str!("schema_3.json");
const SCHEMA_4: &str = include_str!("schema_4.json");
const SCHEMA_5: &str = include_str!("schema_5.json");
const SCHEMA_6: &str = include_str!("schema_6.json");
/// Written by hand: the first shape of the document, with texts of all sorts.
const SCHEMA_0: &str = include_str!("schema_0.json");
