//! How far off and how sure, over 200 drivers. Run with `--nocapture` to see it.

use super::score::Scores;
use super::truth::{GAUGE_ONLY, SENSOR, SENSOR_AND_TUBE, Scenario};

/// Scores a scenario and prints them.
fn scores(name: &str, scenario: &Scenario) -> Scores {
    let scores = Scores::of(scenario);
    let Scores { share, level, possible_share, possible_level, .. } = &scores;
    println!(
        "{name}\n  share, points: naive {:.2}, careful {:.2}, estimate {:.2} \
         (95 % band holds {:.1} %, {:.1} wide; possible {:.1} %, {:.1} wide)\n  \
         level, litres: naive {:.2}, careful {:.2}, estimate {:.2} \
         (95 % band holds {:.1} %, {:.1} wide; possible {:.1} %); {} doubts",
        scores.naive.rms(),
        scores.careful.rms(),
        share.rms(),
        share.coverage(),
        share.width(),
        possible_share.coverage(),
        possible_share.width(),
        scores.naive_level.rms(),
        scores.careful_level.rms(),
        level.rms(),
        level.coverage(),
        level.width(),
        possible_level.coverage(),
        scores.doubts,
    );
    scores
}

/// What must hold with any instruments.
fn base(name: &str, scenario: &Scenario) -> Scores {
    let scores = scores(name, scenario);
    assert!(scores.possible_share.coverage() >= 99.0);
    assert!(scores.possible_level.coverage() >= 99.0);
    assert!((93.0..=98.0).contains(&scores.level.coverage()));
    assert!(scores.share.rms() < scores.careful.rms());
    assert!(scores.level.rms() < scores.careful_level.rms());
    scores
}

/// A twentieth of the fills is missing from the log, and nobody answers a doubt.
fn forgetful(name: &str, scenario: &Scenario) {
    let scores = scores(
        &format!("{name}, one fill in twenty not logged"),
        &Scenario { forgets: 0.05, ..*scenario },
    );
    assert!(scores.share.coverage() >= 92.0);
    assert!(scores.share.rms() < scores.careful.rms());
}

/// The strong fuel spreads twice as far as its typed band says.
fn doubled(name: &str, scenario: &Scenario) {
    let scores =
        scores(&format!("{name}, strong spread doubled"), &Scenario { spread: 2.0, ..*scenario });
    assert!(scores.share.coverage() >= 90.0);
}

/// The invented lives are as hard on bookkeeping as those of an experiment made
/// apart from this code with another truth: there a naive driver was 6.65 points
/// off and a careful one 2.25.
#[test]
fn bookkeeping_is_as_far_off_as_elsewhere() {
    let scores = Scores::of(&GAUGE_ONLY);
    assert!((6.3..7.0).contains(&scores.naive.rms()));
    assert!((2.1..2.4).contains(&scores.careful.rms()));
}

/// Without sensor or tube test nothing tells how far the pumps spread, so one
/// width has to serve both: bands that still hold 90 % when the spread is doubled
/// hold 99 % when it is not. Too wide is the safe side, so the aim of at most 98 %
/// is missed on purpose.
#[test]
fn with_the_gauge_alone() {
    let scores = base("gauge alone", &GAUGE_ONLY);
    assert!(scores.share.rms() <= 2.1);
    assert!((98.0..=99.7).contains(&scores.share.coverage()));
    forgetful("gauge alone", &GAUGE_ONLY);
    doubled("gauge alone", &GAUGE_ONLY);
}

#[test]
fn with_a_sensor() {
    let scores = base("flex sensor", &SENSOR);
    assert!(scores.share.rms() <= 1.6);
    assert!((93.0..=98.0).contains(&scores.share.coverage()));
    forgetful("flex sensor", &SENSOR);
    doubled("flex sensor", &SENSOR);
}

#[test]
fn with_a_sensor_and_a_tube_test_at_every_fifth_fill() {
    let scores = base("flex sensor and tube test", &SENSOR_AND_TUBE);
    assert!(scores.share.rms() <= 1.6);
    assert!((93.0..=98.0).contains(&scores.share.coverage()));
    forgetful("flex sensor and tube test", &SENSOR_AND_TUBE);
    doubled("flex sensor and tube test", &SENSOR_AND_TUBE);
}
