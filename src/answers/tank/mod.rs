//! What is in the tank between fills, by the log.

mod answer;
mod draft;
mod evidence;
mod fit;
mod history;
mod settle;
mod workings;

pub use answer::{TankAnswer, TankQuestion, TankVerdict};
pub use fit::Oddity;
pub use history::{History, LogReading, OldBlend, Replayed};
pub use settle::{Clearing, Need, NoneUsable, Remedy};
