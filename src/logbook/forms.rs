pub use super::car::{CalibrationForm, Car};
pub use super::entry::Entry;
pub use super::fill_form::{AimForm, FillForm, StartForm, StopForm};
pub use super::fuel::{ExtrasForm, FuelForm};
