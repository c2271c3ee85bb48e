//! The views.

mod calibrations;
mod car;
mod fill;
mod welcome;

pub(crate) use car::CarView;
pub(crate) use fill::FillView;
pub(crate) use welcome::Welcome;
