//! The same in WebAssembly, for `tools/bench` to call and to time.

#[path = "case.rs"]
mod case;

use std::cell::OnceCell;

use case::Trip;
use wasm_bindgen::prelude::wasm_bindgen;

thread_local! {
    static TRIPS: OnceCell<Vec<Trip>> = const { OnceCell::new() };
}

fn with<T>(index: usize, of: impl FnOnce(&Trip) -> T) -> Option<T> {
    TRIPS.with(|it| it.get_or_init(|| case::trips().unwrap_or_default()).get(index).map(of))
}

/// Whether the trip has a fee at every stop; nothing where there is no such trip.
#[wasm_bindgen]
pub fn has_fee(index: usize) -> Option<bool> {
    with(index, |trip| trip.has_fee)
}

/// Plans up to the first plan with a bound; nothing where none was found.
#[wasm_bindgen]
pub fn first_plan(index: usize) -> Option<u32> {
    with(index, Trip::first_plan).flatten()
}

/// The same up to the certificate of 1 %.
#[wasm_bindgen]
pub fn certificate(index: usize) -> Option<u32> {
    with(index, Trip::certificate).flatten()
}

fn main() {}
