//! The app in a real browser: Chromium, driven over `WebDriver`, on the release
//! build in `dist/`. `tools/test` builds that first and says where Chromium and
//! `ChromeDriver` are.

#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    clippy::print_stdout,
    reason = "a test fails by panicking"
)]

mod app;
mod builds;
mod hand_arithmetic;
mod harness;
mod share;
mod states;

mod at_the_pump;
mod by_keys;
mod figures;
mod first_start;
mod fit;
mod for_all;
mod gallery;
mod hardware;
mod harness_itself;
mod keyboard;
mod live;
mod main_job;
mod markup;
mod memory;
mod methods;
mod notations;
mod offline;
mod out_of_reach;
mod oxygenates;
mod policy;
mod preferences;
mod printed;
mod promise;
mod reflow;
mod storage;
mod summary;
mod tab_stops;
mod tank;
mod trip;
mod typed;
mod undo;
mod units;
mod updates;
mod ways;
mod windows;
mod wrong_entries;
