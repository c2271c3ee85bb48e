//! Properties that hold for all inputs, not for chosen examples.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod documents;
mod fill;
mod hardware;
mod headroom;
mod keeping;
mod logbook;
mod notation;
mod outwards;
mod people;
mod sharing;
mod switching;
mod table;
mod trip;
mod workshop;
