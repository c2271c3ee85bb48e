//! Messages: what the page says of them, against the reference implementation of their
//! syntax, and the checks that keep languages complete.

#![allow(clippy::expect_used, reason = "a check that cannot go on says why")]

mod catalogue;
#[path = "../../tools/words/compile.rs"]
#[allow(dead_code, unreachable_pub, reason = "the build step uses the rest")]
mod compile;
mod compiled;
mod literals;
