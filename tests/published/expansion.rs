//! Thermal expansion: ASTM D1250-80 / API 2540, Table 54B for petrol; CoolProp 8.0.0
//! for ethanol.

use super::support::{blend, blend_of, density, mistaken, near, parts};
use fillwright::fuel::{
    DensityError, HydrocarbonBase, petrol_expansion, petrol_volume_correction_factor,
};
use fillwright::quantity::ThermodynamicTemperature;
use uom::si::thermodynamic_temperature::degree_celsius;

fn celsius(celsius: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(celsius)
}

/// ASTM D1250-80, Table 54B: `alpha = 346.4228 / rho^2 + 0.4388 / rho` at 15 degC:
/// 720, 735, 745, 750 kg/m3 (arithmetic). Half the last digit.
#[test]
fn coefficients() {
    for (kilograms, published) in
        [(720.0, 0.001_278), (735.0, 0.001_238), (745.0, 0.001_213), (750.0, 0.001_201)]
    {
        near(petrol_expansion(density(kilograms)), published, 1e-6);
    }
}

/// The same table: `VCF = exp(-alpha dT (1 + 0.8 alpha dT))` for 745 kg/m3 at -20, 0,
/// 25, 30 and 40 degC (arithmetic). The straight `1 - alpha dT` must not pass away
/// from 15 degC.
#[test]
fn volume_correction_factors_of_petrol() {
    for (degrees, published) in
        [(-20.0, 1.04187), (0.0, 1.01809), (25.0, 0.98783), (30.0, 0.98171), (40.0, 0.96941)]
    {
        let factor = petrol_volume_correction_factor(density(745.0), celsius(degrees)).unwrap();
        near(factor, published, 1e-5);
        mistaken(1.0 - 0.001_213 * (degrees - 15.0), published, 1e-5);
    }
}

/// CoolProp 8.0.0: density of ethanol over that at 15 degC, and blends of it with the
/// petrol above by volume (arithmetic). 1e-4 for reading a table with straight lines.
#[test]
fn volume_correction_factors_of_blends() {
    let published = [
        (-20.0, 1.04142, 1.03804, 1.03737),
        (0.0, 1.01789, 1.01634, 1.01603),
        (25.0, 0.98796, 0.98901, 0.98922),
        (30.0, 0.98191, 0.98347, 0.98378),
        (40.0, 0.96975, 0.97228, 0.97279),
    ];
    for (degrees, e10, e85, neat) in published {
        for (ethanol, factor) in [(10.0, e10), (85.0, e85), (100.0, neat)] {
            near(blend(ethanol).volume_correction_factor(celsius(degrees)).unwrap(), factor, 1e-4);
        }
    }
}

/// CoolProp 8.0.0, isobaric expansion at 15 degC: ethanol 0.001073, methanol 0.001175 1/K.
/// 2 %, as it is taken from a difference over 2 K. Water, 0.000151, is held to 15 %:
/// straight lines over 5 K blur its bend.
#[test]
fn expansion_of_the_alcohols() {
    let pure = [
        (blend(100.0), 0.001_073, 0.02),
        (parts(0.0, 0.0, 1.0, 0.0), 0.001_175, 0.02),
        (parts(0.0, 0.0, 0.0, 1.0), 0.000_151, 0.15),
    ];
    for (fuel, published, relative) in pure {
        let [cold, warm] = [14.0, 16.0].map(|at| fuel.volume_at(celsius(at)).unwrap());
        let expansion = f64::from((warm - cold) / fuel.volume()) / 2.0;
        near(expansion / published, 1.0, relative);
    }
}

/// ASTM D1250-80, Table 54B ends at 653 and 770 kg/m3: what lies outside is refused.
#[test]
fn what_the_table_does_not_cover_is_refused() {
    for kilograms in [652.0, 771.0, f64::NAN] {
        let base = HydrocarbonBase { density_15: density(kilograms), ..HydrocarbonBase::default() };
        let answer = blend_of(&base, 10.0).density_at(celsius(20.0));
        assert!(matches!(answer, Err(DensityError::PetrolDensity { .. })), "{answer:?}");
    }
    for degrees in [-25.0, 61.0, f64::NAN] {
        for ethanol in [0.0, 10.0, 100.0] {
            let answer = blend(ethanol).density_at(celsius(degrees));
            assert!(matches!(answer, Err(DensityError::Temperature { .. })), "{answer:?}");
        }
    }
    // Water has no liquid density below freezing; the fuel without it has.
    assert!(parts(0.0, 9.0, 0.0, 1.0).density_at(celsius(-5.0)).is_err());
    assert!(parts(0.0, 9.0, 0.0, 0.0).density_at(celsius(-5.0)).is_ok());
}
