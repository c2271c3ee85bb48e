//! Properties that hold for all inputs, not for chosen examples.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod fill;
mod logbook;
mod notation;
