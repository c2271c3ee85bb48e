//! How long trips of twelve stops take to plan, natively: for each, whether it has a
//! fee, the seconds to the first plan with a bound and those to the certificate, as
//! JSON for `tools/bench` to put beside the figures of others. A trip that was given
//! up has no figure.

#![allow(clippy::print_stdout, reason = "this is what it is for")]

mod case;

use std::time::Instant;

use serde_json::json;

fn main() -> Result<(), String> {
    let seconds = |run: &dyn Fn() -> Option<u32>| {
        let began = Instant::now();
        run().map(|_| began.elapsed().as_secs_f64())
    };
    let trips = case::trips()?;
    let times = trips.iter().map(|trip| {
        json!({
            "fee": trip.has_fee,
            "first": seconds(&|| trip.first_plan()),
            "proof": seconds(&|| trip.certificate()),
        })
    });
    println!("{}", times.collect::<serde_json::Value>());
    Ok(())
}
