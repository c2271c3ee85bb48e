//! The same in WebAssembly, for `tools/bench` to call and to time.

#[path = "case.rs"]
mod case;

use std::hint::black_box;

use wasm_bindgen::prelude::wasm_bindgen;

/// Judges so many times and returns the sum of the results: not a number when
/// anything went wrong.
#[wasm_bindgen]
pub fn headroom_times(count: u32) -> f64 {
    let (document, printer) = case::hardware();
    let Some(asked) = case::asked(&document, &printer) else { return f64::NAN };
    let shares = case::shares();
    (0..count).map(|_| case::sweep(black_box(&asked), &shares)).sum()
}

/// The same from the texts, with the whole answer.
#[wasm_bindgen]
pub fn headroom_typed_times(count: u32) -> f64 {
    let (document, printer) = case::hardware();
    (0..count).map(|_| case::answer(black_box(&document), &printer)).sum()
}

fn main() {}
