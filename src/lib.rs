//! What to put in the tank: ethanol and petrol blends, with their uncertainty,
//! their workings and the source of every constant.
//!
//! This library is the core. It knows no browser, clock, storage or random
//! source; the feature `web` adds the app that shows it. The modules depend on
//! each other in one direction only:
//! `words -> (share, keeping, methods) -> answers -> (document, fill, hardware, trip)
//! -> (tank, power, calibration) -> fuel -> workings -> (quantity, source) -> message`;
//! `tools/structure.mjs` holds them to it.

pub mod answers;
pub mod calibration;
pub mod document;
pub mod fill;
pub mod fuel;
pub mod hardware;
pub mod keeping;
pub mod message;
pub mod methods;
pub mod power;
pub mod quantity;
pub mod share;
pub mod source;
pub mod tank;
pub mod trip;
pub mod words;
pub mod workings;
