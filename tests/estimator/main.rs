//! The tank's estimate against invented lives of which the truth is known.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]
#![allow(clippy::print_stdout, reason = "the figures are printed on demand")]

mod adapting;
mod bookkeeping;
mod by_hand;
mod chance;
mod oracle;
mod particles;
mod properties;
mod score;
mod table;
mod truth;
