//! A fill: what to pour, what that makes, and how sure that is.

mod answer;
mod as_planned;
mod choice;
mod reading;
mod refusal;
mod workings;

pub use answer::{BlendAnswer, FillAnswer, FillStep};
pub use choice::{GivenUp, Infeasible, Miss, Promise, YieldingWish};
pub use reading::{FillAsked, FillReading, interpret};
