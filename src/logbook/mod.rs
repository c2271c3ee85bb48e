//! The document that holds what a person typed, what it means, and the answer
//! to it.
//!
//! Text comes in here and becomes quantities ([`interpret`]); the answer goes
//! out as quantities, verdicts and workings ([`Answer`]). What shows them only
//! has to lay them out.

mod answer;
mod complaint;
mod demo;
mod derivation;
mod document;
mod interpret;
mod next_fill;
mod printer;
mod refusal;

pub use answer::{Answer, Blend, Plight, Promise, Step};
pub use complaint::{CalibrationPart, Complaint, Field, FuelPart};
pub use document::{
    AimForm, CalibrationForm, Car, Document, DocumentError, Entry, FillForm, FuelForm,
    LARGEST_DOCUMENT, SCHEMA, Settings, StopForm,
};
pub use interpret::{Asked, Fuel, Interpretation, interpret};
pub use printer::{Measure, Printer};
