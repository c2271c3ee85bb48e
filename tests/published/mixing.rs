//! Simple mixes.

use super::support::{liters, mistaken, near, percent};
use fillwright::fuel::{HydrocarbonBase, Mixture};

fn fuel(volume: f64, ethanol: f64) -> Mixture {
    Mixture::splash(liters(volume), percent(ethanol), &HydrocarbonBase::default())
}

fn share(fuel: Mixture) -> f64 {
    fuel.ethanol_share().unwrap().percent()
}

/// Alligation (arithmetic): 10 L of E10 become E50 with 10 (50 - 10) / (85 - 50) = 80/7 L
/// of E85.
#[test]
fn e85_to_add_for_e50() {
    near(share(fuel(10.0, 10.0) + fuel(80.0 / 7.0, 85.0)), 50.0, 1e-9);
}

/// A magazine article on mixing E85 with pump petrol: 5 gal of E10 and 5 gal of E85
/// "computes to E48"; rounded up from 47.5, so half a point.
#[test]
fn equal_parts_of_e10_and_e85() {
    near(share(fuel(5.0, 10.0) + fuel(5.0, 85.0)), 47.5, 1e-9);
    near(share(fuel(5.0, 10.0) + fuel(5.0, 85.0)), 48.0, 0.5);
    // By the name on the pump, E10 forgotten.
    mistaken(share(fuel(5.0, 0.0) + fuel(5.0, 85.0)), 48.0, 0.5);
}

/// Arithmetic (two equations): 15 L of E10 in a tank of 50 L, filled with 20.9375 L of E85
/// and 14.0625 L of E5, is E40; with E5 alone it would be E6.5, with E85 alone E62.5.
#[test]
fn three_fuels_in_a_tank() {
    let tank = fuel(15.0, 10.0);
    near(share(tank + fuel(20.9375, 85.0) + fuel(14.0625, 5.0)), 40.0, 1e-9);
    near(share(tank + fuel(35.0, 5.0)), 6.5, 1e-9);
    near(share(tank + fuel(35.0, 85.0)), 62.5, 1e-9);
    // Half burnt, the share is the same and the next fill counts for more.
    near(share(tank * 0.5), 10.0, 1e-9);
    near(share(tank * 0.5 + fuel(7.5, 85.0)), 47.5, 1e-9);
}
