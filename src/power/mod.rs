//! What an engine gives: at the crank and at the wheels, in which air, and over
//! engine speed.

mod driveline;

pub use driveline::{DrivelineLoss, DrivelineLossError};
