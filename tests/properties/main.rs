//! Properties that hold for all inputs, not for chosen examples.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod content;
mod documents;
mod fill;
mod fill_extremes;
mod fills;
mod followed;
mod hardware;
mod headroom;
mod in_short;
mod keeping;
mod logbook;
mod notation;
mod outwards;
mod people;
mod sharing;
mod switching;
mod table;
mod technical_units;
mod trip;
mod trip_edges;
