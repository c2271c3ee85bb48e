//! What was typed, read, asked and answered: a folder for each feature, with the same parts in
//! each.
//!
//! `reading` turns texts into what is asked, `answer` answers it, `workings` show each number
//! of the answer to be checked by hand.

mod field_error;
pub mod fill;
pub mod hardware;
pub mod problem;
pub(crate) mod reading;
pub mod tank;
pub mod trip;
mod working;

pub use field_error::FieldError;
