//! The same solution in WebAssembly, for `tools/bench` to call and to time.

#[path = "case.rs"]
mod case;

use std::hint::black_box;

use wasm_bindgen::prelude::wasm_bindgen;

/// Solves so many times and returns the sum of the results: not a number when
/// anything went wrong.
#[wasm_bindgen]
pub fn solve_times(count: u32) -> f64 {
    let Ok(problem) = case::problem() else { return f64::NAN };
    (0..count).map(|_| case::solve(black_box(&problem))).sum()
}

fn main() {}
