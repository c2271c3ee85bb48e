//! The log: what entries make of the tank, however and whenever they are written.
//!
//! Expected values are balances worked out by hand beside each check. Cars and
//! readings are invented.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod entries;
mod fit;
mod history;
mod oxygenates;
mod record;
mod settle;
mod support;
mod typed;
