//! The fuel model against what others have published.
//!
//! One file for each family of sources. The source stands beside every check, and
//! the tolerance comes from the precision of the source. Where there is a classic
//! mistake, the mistaken value stands beside the right one and must fail.
//!
//! `from memory` marks a value that was recalled and not looked up; `arithmetic`
//! one that follows from the cited inputs by hand.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]
// Titles and names of libraries are quoted as they are printed.
#![allow(clippy::doc_markdown)]

mod air_correction;
mod air_fuel_ratio;
mod driveline;
mod energy;
mod expansion;
mod grades;
mod hardware_demand;
mod injection_fluid;
mod injectors;
mod mixing;
mod octane;
mod oxygen;
mod oxygenates;
mod properties;
mod pumps;
mod readings;
mod reference_set;
mod supply;
mod support;
mod volatility;
