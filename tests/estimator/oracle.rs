//! Beside a filter that approximates nothing but by chance.

use fillwright::tank::Estimator;

use super::particles::Particles;
use super::score::{Score, UNSCORED, take_stop};
use super::truth::{GAUGE_ONLY, SENSOR_AND_TUBE, Scenario, life, vehicle};

const DRIVERS: u64 = 30;
/// Other drivers than those of the table.
const FIRST: u64 = 10_000;

/// The error of the estimate over that of the oracle.
fn ratio(name: &str, scenario: &Scenario) -> f64 {
    let (mut estimate, mut oracle) = (Score::default(), Score::default());
    for driver in FIRST..FIRST + DRIVERS {
        let mut estimator = Estimator::new(vehicle());
        let mut particles = Particles::new(driver);
        for (count, stop) in life(driver, scenario).iter().enumerate() {
            take_stop(&mut estimator, stop);
            particles.take(stop);
            if count >= UNSCORED {
                let add = |score: &mut Score, share: f64| {
                    score.add(share * 100.0, [0.0, 0.0], stop.true_share * 100.0);
                };
                add(&mut estimate, estimator.estimate().share.expected().fraction());
                add(&mut oracle, particles.share());
            }
        }
    }
    println!("{name}: estimate {:.2}, oracle {:.2} points", estimate.rms(), oracle.rms());
    estimate.rms() / oracle.rms()
}

#[test]
fn the_estimate_is_nearly_as_good_as_a_particle_filter_that_knows_the_spreads() {
    assert!(ratio("gauge", &GAUGE_ONLY) < 1.05);
    assert!(ratio("sensor and tube test", &SENSOR_AND_TUBE) < 1.05);
}
