//! Power at the wheels and at the crank.

use super::support::{mistaken, near};
use fillwright::power::DrivelineLoss;
use fillwright::quantity::{Band, CrankPower, Power, WheelPower};
use uom::si::power::{horsepower, kilowatt};

fn loss(share: f64) -> DrivelineLoss {
    DrivelineLoss::of_crank(Band::exact(share)).unwrap()
}

fn crank(wheel: f64, loss: DrivelineLoss) -> f64 {
    let wheel = WheelPower::new(Power::new::<horsepower>(wheel));
    loss.crank(wheel).expected().get().get::<horsepower>()
}

/// Pairs of wheel and crank horsepower of one driveline: common practice, no source.
/// They disagree on the share lost, as each was reckoned in another convention.
#[test]
fn pairs_of_the_trade() {
    for (wheel, at_crank, share, add_on) in
        [(600.0, 660.0, 9.09, 10.00), (630.0, 700.0, 10.00, 11.11)]
    {
        let lost: f64 = 1.0 - wheel / at_crank;
        near(100.0 * lost, share, 0.005);
        let driveline = loss(lost);
        near(crank(wheel, driveline), at_crank, 1e-9);
        near(100.0 * driveline.add_on().expected(), add_on, 0.005);
        let back = driveline.wheel(CrankPower::new(Power::new::<horsepower>(at_crank)));
        near(back.expected().get().get::<horsepower>(), wheel, 1e-9);
        // The mistake to take the add-on for the share.
        mistaken(crank(wheel, loss(add_on / 100.0)), at_crank, 5.0);
    }
    // 10 % of the crank is 11.1 % as an add-on: arithmetic.
    near(loss(0.10).add_on().expected(), 1.0 / 9.0, 1e-12);
}

/// 550 at the wheels with 12 % of the crank lost are 625 at the crank: arithmetic.
#[test]
fn a_loss_is_of_the_crank() {
    near(crank(550.0, loss(0.12)), 625.0, 1e-9);
    mistaken(550.0 * 1.12, 625.0, 5.0);
}

/// A band of losses is a band of powers, and a larger loss leaves less at the wheels.
#[test]
fn a_band_stays_in_order() {
    let driveline = DrivelineLoss::of_crank(Band::new(0.10, 0.12, 0.15).unwrap()).unwrap();
    let at_crank = driveline.crank(WheelPower::new(Power::new::<kilowatt>(90.0)));
    near(at_crank.low().get().get::<kilowatt>(), 100.0, 1e-9);
    near(at_crank.high().get().get::<kilowatt>(), 90.0 / 0.85, 1e-9);
    let at_wheels = driveline.wheel(CrankPower::new(Power::new::<kilowatt>(100.0)));
    near(at_wheels.low().get().get::<kilowatt>(), 85.0, 1e-9);
    near(at_wheels.high().get().get::<kilowatt>(), 90.0, 1e-9);
    for share in [-0.01, 0.41, f64::NAN] {
        assert!(DrivelineLoss::of_crank(Band::exact(share)).is_err(), "{share}");
    }
}
