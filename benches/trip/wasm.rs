//! The same in WebAssembly, for `tools/bench` to call and to time.

#[path = "case.rs"]
mod case;

use std::hint::black_box;

use wasm_bindgen::prelude::wasm_bindgen;

/// Plans so many times up to the first plan with a bound, and returns what the plans
/// cost: not a number when anything went wrong.
#[wasm_bindgen]
pub fn first_plan_times(count: u32) -> f64 {
    times(count, false, case::first_plans)
}

/// The same up to the certificate of 1 %.
#[wasm_bindgen]
pub fn certificate_times(count: u32) -> f64 {
    times(count, false, case::certificates)
}

/// The same with a fee at every stop.
#[wasm_bindgen]
pub fn certificate_with_fee_times(count: u32) -> f64 {
    times(count, true, case::certificates)
}

fn times(count: u32, has_fee: bool, plan: impl Fn(&[case::Trip]) -> f64) -> f64 {
    let Some(trips) = case::trips(has_fee) else { return f64::NAN };
    (0..count).map(|_| plan(black_box(&trips))).sum()
}

fn main() {}
