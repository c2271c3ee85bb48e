//! Fuels of more than petrol and ethanol: hydrous ethanol, and petrol with ethers.
//!
//! Inputs of the arithmetic, each with its source in `fuel::constants`: petrol 745 kg/m3, AFR
//! 14.571, 43.2 MJ/kg; ethanol 793.7, 9.0025, 26.816; water 999.1 kg/m3 and 2.4417 MJ/kg of
//! vaporisation; MTBE 740.4 and ETBE 747 kg/m3 (from memory).

use super::support::{blend, liters, mistaken, near, parts, percent};
use fillwright::fuel::{
    Constituent, Content, Corner, Extras, HydrocarbonBase, Mixture, MixtureParts, OxygenError,
    ethers_of_oxygen,
};
use fillwright::quantity::{Band, Share};

/// 95.2 % v/v of ethanol and 4.8 % of water.
fn hydrous() -> Mixture {
    parts(0.0, 0.952, 0.0, 0.048)
}

/// The same fuel with its water taken for petrol.
fn water_as_petrol() -> Mixture {
    blend(95.2)
}

fn energy(fuel: &Mixture) -> f64 {
    fuel.energy_density().unwrap().megajoules_per_liter()
}

/// Petrol with so much ether, in percent by volume.
fn petrol_with(ether: f64, of: fn(&mut MixtureParts)) -> Mixture {
    let mut parts = MixtureParts { hydrocarbon: liters(100.0 - ether), ..MixtureParts::default() };
    of(&mut parts);
    Mixture::from_parts(&parts, &HydrocarbonBase::default())
}

fn mtbe(percent: f64) -> Mixture {
    let mut fuel = petrol_with(percent, |_| ());
    let ether = MixtureParts { mtbe: liters(percent), ..MixtureParts::default() };
    fuel += Mixture::from_parts(&ether, &HydrocarbonBase::default());
    fuel
}

fn etbe(percent: f64) -> Mixture {
    let mut fuel = petrol_with(percent, |_| ());
    let ether = MixtureParts { etbe: liters(percent), ..MixtureParts::default() };
    fuel += Mixture::from_parts(&ether, &HydrocarbonBase::default());
    fuel
}

/// By hand: 755.602 kg of ethanol and 47.957 of water in a cubic metre are 94.032 % m/m of
/// ethanol, and water takes no air: 0.94032 * 9.0025 = 8.465. Between 92.5 and 94.6 % m/m
/// (ANP 907/2022, from memory) that is 8.327 to 8.516. Taken for petrol, the water would give
/// 9.254; a mean by volume of the same 8.570.
#[test]
fn hydrous_ethanol_takes_little_air() {
    near(hydrous().stoichiometric_afr().unwrap(), 8.465, 0.001);
    mistaken(water_as_petrol().stoichiometric_afr().unwrap(), 8.465, 0.001);
    mistaken(0.952 * 9.0025, 8.465, 0.001);
}

/// E27: 758.15 kg/m3 and AFR 12.997. Volume at equal air: 12.997 / 8.465 * 758.15 / 803.56 =
/// 1.449. Price parity is that of energy by volume: (755.602 * 26.816 - 47.957 * 2.4417) / 1000 =
/// 20.145 MJ/L over 29.241 is 0.689. The usual rule of thumb of the trade is 0.70 (common
/// practice, no source).
#[test]
fn hydrous_ethanol_against_e27() {
    let e27 = blend(27.0);
    near(hydrous().fuel_volume_multiplier(&e27).unwrap(), 1.449, 0.001);
    mistaken(water_as_petrol().fuel_volume_multiplier(&e27).unwrap(), 1.449, 0.001);
    // Without the densities.
    mistaken(12.997 / 8.465, 1.449, 0.001);
    near(energy(&hydrous()) / energy(&e27), 0.689, 0.0005);
    near(energy(&hydrous()) / energy(&e27), 0.70, 0.02);
    mistaken(energy(&water_as_petrol()) / energy(&e27), 0.689, 0.0005);
}

/// A calibration written for E85 (AFR 9.7942, 786.39 kg/m3): 9.7942 / 8.465 times the root of
/// 786.39 / 803.56 is 1.1446, so that lambda 0.80 becomes 0.916. With the water taken for
/// petrol it is 1.0550, and 0.844 is shown: an engine taken for rich that runs lean.
#[test]
fn hydrous_ethanol_leans_an_engine_written_for_e85() {
    let e85 = blend(85.0);
    let ratio = hydrous().open_loop_lambda_ratio(&e85).unwrap();
    near(ratio, 1.1445, 0.0005);
    near(0.80 * ratio, 0.916, 0.0005);
    let mistake = 0.80 * water_as_petrol().open_loop_lambda_ratio(&e85).unwrap();
    near(mistake, 0.844, 0.0005);
    mistaken(mistake, 0.916, 0.0005);
}

/// Exact mass balance: MTBE C5H12O 18.149 % and ETBE C6H14O 15.659 % m/m oxygen, AFR 11.762 and
/// 12.177 with Heywood's air; 35.1 and 36.3 MJ/kg from memory, where this project takes 35.22
/// and 36.24 from enthalpies of formation (0.5 %). The mistake to weigh by volume gives
/// 14.290 for 10 % of MTBE, which is as near as the densities are; so the oxygen is the check
/// that can fail: weighed by moles it is 2.0 for 1.805.
#[test]
fn ethers_in_petrol() {
    for (fuel, oxygen, ratio, heat) in [
        (mtbe(10.0), 1.805, 14.292, 31.56),
        (mtbe(15.0), 2.708, 14.152, 31.26),
        (etbe(10.0), 1.570, 14.331, 31.68),
        (etbe(22.0), 3.452, 14.043, 31.07),
    ] {
        near(100.0 * fuel.oxygen_mass_fraction().unwrap(), oxygen, 0.005);
        near(fuel.stoichiometric_afr().unwrap(), ratio, 0.002);
        near(energy(&fuel), heat, 0.02);
        // As if it were petrol.
        mistaken(energy(&blend(0.0)), heat, 0.02);
        mistaken(14.571, ratio, 0.002);
    }
    let moles = mtbe(10.0).mole_fraction(Constituent::Mtbe).unwrap();
    mistaken(moles * 18.149, 1.805, 0.005);
}

/// Mass balance: 2.7 % m/m oxygen are reached with 14.95 % v/v of MTBE or 17.2 % of ETBE. Which
/// of the two it is nobody knows, so half of each is taken: between them. AFR then 14.15, as
/// with either.
#[test]
fn oxygen_tells_of_ethers() {
    for (fuel, percent) in [(mtbe(14.95), 2.7), (etbe(17.2), 2.7)] {
        near(100.0 * fuel.oxygen_mass_fraction().unwrap(), percent, 0.01);
        near(fuel.stoichiometric_afr().unwrap(), 14.15, 0.01);
    }
    let ethers = ethers_of_oxygen(0.027, Share::ZERO, Share::ZERO).unwrap();
    assert!((14.95..17.2).contains(&ethers.percent()), "{}", ethers.percent());
    let extras = Extras { ethers: Band::exact(ethers), ..Extras::default() };
    let petrol = Content { ethanol: Band::exact(Share::ZERO), extras };
    let litre = petrol.litre(Corner::Expected, &HydrocarbonBase::default());
    near(100.0 * litre.oxygen_mass_fraction().unwrap(), 2.7, 1e-6);
    near(litre.stoichiometric_afr().unwrap(), 14.15, 0.01);
    let band = petrol.over(Mixture::stoichiometric_afr).unwrap();
    assert!(band.low() < 14.15 && 14.15 < band.high(), "{band:?}");
    // Divided by the oxygen of the ethers alone, as if volumes were masses, all in one.
    mistaken(2.7 / 0.18149, 17.2, 0.1);
}

/// E5 with all of its 5 % brings 1.844 % m/m (arithmetic): less cannot be, and 0.856 % are left
/// for 4.7 % v/v of MTBE or 5.5 % of ETBE.
#[test]
fn oxygen_counts_that_of_ethanol() {
    let e5 = percent(5.0);
    let ethers = ethers_of_oxygen(0.027, e5, Share::ZERO).unwrap();
    assert!((4.7..5.5).contains(&ethers.percent()), "{}", ethers.percent());
    let less = ethers_of_oxygen(0.010, e5, Share::ZERO).unwrap_err();
    assert!(matches!(less, OxygenError::Less { least, .. } if (least - 1.844).abs() < 0.002));
    assert!(matches!(
        ethers_of_oxygen(0.30, e5, Share::ZERO),
        Err(OxygenError::More { most, .. }) if most > 15.6 && most < 18.2
    ));
}
