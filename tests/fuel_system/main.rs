//! The workshop: what typed curves, engines and parts come to.
//!
//! Expected values are worked out by hand beside each check, from the facts cited
//! there. Cars and parts are invented.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod answers;
mod curves;
mod field_errors;
mod support;
