//! The tank's estimate against invented lives of which the truth is known.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod bookkeeping;
mod chance;
mod score;
mod truth;

use score::Scores;
use truth::{GAUGE_ONLY, SENSOR, SENSOR_AND_TUBE, Scenario};

fn report(name: &str, scenario: &Scenario) -> Scores {
    let s = Scores::of(scenario);
    println!(
        "{name:32} naive {:5.2} careful {:5.2} | share {:5.2} {:5.1} % {:5.1} | level {:5.2} {:5.1} % (naive {:4.2} careful {:4.2}) | possible {:5.1} % {:5.1}, {:5.1} % | doubts {}",
        s.naive.rms(),
        s.careful.rms(),
        s.share.rms(),
        s.share.coverage(),
        s.share.width(),
        s.level.rms(),
        s.level.coverage(),
        s.naive_level.rms(),
        s.careful_level.rms(),
        s.possible_share.coverage(),
        s.possible_share.width(),
        s.possible_level.coverage(),
        s.doubts
    );
    s
}

#[test]
fn table() {
    for (name, base) in
        [("gauge", GAUGE_ONLY), ("+ sensor", SENSOR), ("+ sensor, tube", SENSOR_AND_TUBE)]
    {
        report(name, &base);
        report(&format!("{name}, forgets"), &Scenario { forgets: 0.05, ..base });
        report(&format!("{name}, doubled"), &Scenario { spread: 2.0, ..base });
    }
}
