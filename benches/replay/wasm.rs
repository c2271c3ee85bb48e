//! The same replay in WebAssembly, for `tools/bench` to call and to time.

#[path = "case.rs"]
mod case;

use std::hint::black_box;

use wasm_bindgen::prelude::wasm_bindgen;

/// Replays so many times and returns the sum of the results: not a number when
/// anything went wrong.
#[wasm_bindgen]
pub fn replay_times(count: u32) -> f64 {
    times(count, case::replay)
}

/// The same with an estimate after every piece of evidence.
#[wasm_bindgen]
pub fn chart_times(count: u32) -> f64 {
    times(count, case::replay_with_chart)
}

/// The same from the entries as they were typed.
#[wasm_bindgen]
pub fn typed_times(count: u32) -> f64 {
    times(count, case::replay_as_typed)
}

fn times(count: u32, replay: fn(&case::Log) -> f64) -> f64 {
    let Ok(log) = case::log() else { return f64::NAN };
    (0..count).map(|_| replay(black_box(&log))).sum()
}

fn main() {}
