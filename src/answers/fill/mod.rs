//! A fill: what to pour, what that makes, and how sure that is.

mod answer;
mod as_planned;
mod choice;
mod reading;
mod refusal;
mod workings;

pub use answer::{Answer, Blend, Step};
pub use choice::{GivenUp, Miss, Plight, Promise, Wish};
pub use reading::{Asked, Interpretation, interpret};
