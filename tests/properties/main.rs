//! Properties that hold for all inputs, not for chosen examples.

mod fill;
mod notation;
