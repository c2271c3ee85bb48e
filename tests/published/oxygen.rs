//! Oxygen limits of the standards.

use super::support::{blend, blend_of, density, mistaken, near};
use fillwright::fuel::HydrocarbonBase;

fn oxygen(base_density: f64, ethanol: f64) -> f64 {
    let base = HydrocarbonBase { density_15: density(base_density), ..HydrocarbonBase::default() };
    100.0 * blend_of(&base, ethanol).oxygen_mass_fraction().unwrap()
}

/// EN 228:2012+A1:2017 as stated in Fuels 2021, 2(4), 501: E10 holds at most 10 % v/v
/// ethanol and 3.7 % m/m oxygen; the two limits meet within the densities that the
/// standard allows (720 to 775 kg/m3, from memory). 0.05 is half the last digit.
#[test]
fn e10_meets_its_oxygen_limit() {
    near(oxygen(740.0, 10.0), 3.7, 0.05);
    assert!(oxygen(720.0, 10.0) > 3.7 && oxygen(775.0, 10.0) < 3.7);
    // The share by volume times the oxygen of ethanol is 3.47.
    mistaken(0.10 * 34.728, 3.7, 0.05);
}

/// Arithmetic on the same limits: exactly 3.7 % m/m at 10.005 % v/v in a base of 740
/// kg/m3, 9.76 in one of 720, 10.43 in one of 775.
#[test]
fn the_share_that_reaches_the_limit() {
    for (base, ethanol) in [(740.0, 10.005), (720.0, 9.76), (775.0, 10.43)] {
        near(oxygen(base, ethanol), 3.7, 0.004);
    }
}

/// Directive 98/70/EC, Article 3(3): the protection grade holds at most 2.7 % m/m
/// oxygen and 5 % v/v ethanol. The second binds first: 2.7 % is only reached at
/// 7.333 % v/v in a base of 745 kg/m3 (arithmetic).
#[test]
fn e5_leaves_room_for_ethers() {
    assert!(oxygen(745.0, 5.0) < 2.7);
    near(oxygen(745.0, 7.333), 2.7, 0.004);
}

/// CEN/TS 18227, scope: petrol of 3.7 to 8.0 % m/m oxygen holds up to 20 % v/v ethanol.
#[test]
fn e20_is_within_its_oxygen_range() {
    for base in [720.0, 745.0, 775.0] {
        assert!((3.7..=8.0).contains(&oxygen(base, 20.0)));
    }
}

/// Arithmetic, 34.728 % of the mass share: E5 1.844, E10 3.676, E30 10.886, E85 29.793 % m/m.
#[test]
fn blends() {
    for (ethanol, published) in [(5.0, 1.844), (10.0, 3.676), (30.0, 10.886), (85.0, 29.793)] {
        near(100.0 * blend(ethanol).oxygen_mass_fraction().unwrap(), published, 0.002);
        mistaken(ethanol * 0.347_28, published, 0.002);
    }
}
