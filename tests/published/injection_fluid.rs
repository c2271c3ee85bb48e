//! Water and methanol beside the fuel.

use super::reference_set::{bar, cc_per_minute, fuel, gauge, grams_per_second, mass_rate};
use super::support::{density, liters, mistaken, near};
use fillwright::hardware::{
    FluidEffect, FluidNozzle, MethanolWater, MixError, RatedFlow, Wanted, recipe,
};
use fillwright::quantity::{Mass, VolumeRate};
use uom::si::available_energy::megajoule_per_kilogram;
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::temperature_interval::kelvin;
use uom::si::volume::liter;
use uom::si::volume_rate::liter_per_minute;

fn by_volume(share: f64) -> MethanolWater {
    MethanolWater::of_volume_share(share).unwrap()
}

fn by_mass(share: f64) -> MethanolWater {
    MethanolWater::of_mass_share(share).unwrap()
}

fn kilograms(fluid: MethanolWater) -> f64 {
    fluid.density().get::<kilogram_per_cubic_meter>()
}

/// CoolProp 8.0.0, INCOMP::MMA at 20 degC: 951.48 kg/m3 at 30 % by mass, 926.89 at half and
/// half by volume, 915.72 by mass. 0.05 %. Adding the volumes up gives 894.6 and 882.6.
#[test]
fn density_of_the_mixture() {
    near(kilograms(by_mass(0.30)), 951.48, 0.5);
    near(kilograms(by_volume(0.5)), 926.89, 0.5);
    near(kilograms(by_mass(0.5)), 915.72, 0.5);
    mistaken(f64::midpoint(791.0, 998.2), 926.89, 0.5);
    mistaken(1.0 / (0.5 / 791.0 + 0.5 / 998.2), 915.72, 0.5);
}

/// Perry's Chemical Engineers' Handbook, densities of aqueous methanol at 20 degC (from
/// memory): 10 % 0.9815, 20 % 0.9666, 40 % 0.9345, 60 % 0.8946 g/cm3. 0.05 %: the two tables
/// differ by 0.03 %.
#[test]
fn density_in_a_handbook() {
    for (percent, published) in [(10.0, 0.9815), (20.0, 0.9666), (40.0, 0.9345), (60.0, 0.8946)] {
        near(kilograms(by_mass(percent / 100.0)) / 1000.0, published, 5e-4);
    }
}

/// Half and half by volume is 44.21 % by mass, half and half by mass 55.8 % by volume:
/// arithmetic on 791.0 and 998.2 kg/m3; the last digit.
#[test]
fn two_ways_to_say_half() {
    near(100.0 * by_volume(0.5).mass_share(), 44.21, 0.01);
    near(100.0 * by_mass(0.5).volume_share(), 55.8, 0.05);
    near(by_volume(0.3).volume_share(), 0.3, 1e-12);
    mistaken(50.0, 100.0 * by_volume(0.5).mass_share(), 1.0);
    for share in [-0.1, 1.1, f64::NAN] {
        assert!(MethanolWater::of_volume_share(share).is_err());
        assert!(MethanolWater::of_mass_share(share).is_err());
    }
}

/// Half and half by volume: 8.811 MJ/kg and 2.862 kg of air for each kilogram, by hand on
/// 19.93 MJ/kg and 6.4735 (measured dry air). 0.1 %.
#[test]
fn what_the_methanol_burns() {
    let fluid = by_volume(0.5);
    near(fluid.lower_heating_value().get::<megajoule_per_kilogram>(), 8.811, 0.009);
    near(fluid.stoichiometric_air(), 2.862, 0.003);
    // As if half the mass were methanol.
    mistaken(0.5 * 19.93, 8.811, 0.009);
}

/// Petrol of 45.359 g/s at lambda 0.80 and so much of half and half by volume.
fn sprayed(cc: f64) -> FluidEffect {
    let fluid = by_volume(0.5);
    let flow = VolumeRate::new::<liter_per_minute>(cc / 1000.0) * fluid.density();
    fluid.effect(flow, mass_rate(45.359), 0.80, &fuel(0.0))
}

/// 500 cm3/min: lambda 0.7742, 3.37 % of the heat, at most 27.2 K, 3.34 % of the petrol to
/// spare, and lambda 0.8276 if that is taken and the spray stops. By hand with 2441.7 and
/// 1169.0 kJ/kg, 1.006 kJ/(kg K). 0.2 %.
#[test]
fn effect_of_a_spray() {
    let effect = sprayed(500.0);
    near(effect.lambda_with, 0.7742, 2e-4);
    near(100.0 * effect.energy_share, 3.37, 0.007);
    near(effect.largest_cooling.get::<kelvin>(), 27.23, 0.05);
    near(100.0 * effect.petrol_cut, 3.34, 0.007);
    near(effect.lambda_if_spray_stops, 0.80 / (1.0 - 0.0334), 2e-4);
    // A fluid of nothing but water, or of nothing but methanol.
    mistaken(0.80, effect.lambda_with, 2e-4);
    mistaken(529.8 / (45.359 * 14.6 + 7.724 * 6.4735), effect.lambda_with, 2e-4);
}

/// 250, 1000 and 1500 cm3/min: lambda 0.787, 0.750 and 0.727. By hand; the last digit.
#[test]
fn lambda_over_flow() {
    for (cc, lambda) in [(250.0, 0.787), (1000.0, 0.750), (1500.0, 0.727)] {
        near(sprayed(cc).lambda_with, lambda, 5e-4);
    }
}

/// With the petrol cut as told lambda is what it was, whatever the fluid.
#[test]
fn the_cut_holds_lambda() {
    for fluid in [by_volume(0.3), MethanolWater::METHANOL] {
        let cut = fluid.effect(mass_rate(10.0), mass_rate(45.0), 0.80, &fuel(30.0)).petrol_cut;
        let left = mass_rate(45.0 * (1.0 - cut));
        // The air is the same, so without the spray the petrol that is left runs lean.
        let without = 0.80 / (1.0 - cut);
        let effect = fluid.effect(mass_rate(10.0), left, without, &fuel(30.0));
        near(effect.lambda_with, 0.80, 1e-9);
    }
    let flooded =
        MethanolWater::METHANOL.effect(mass_rate(500.0), mass_rate(45.0), 0.80, &fuel(0.0));
    assert!(flooded.petrol_cut > 1.0 && flooded.lambda_if_spray_stops.is_infinite());
}

/// A nozzle rated at 7 bar on a pump of 10 bar passes 1.195, 1.102 and 1.069 times as much at
/// 0, 1.5 and 2.0 bar of boost, of the fluid that it was rated with. Arithmetic; the last
/// digit. The boost left out must not pass.
#[test]
fn boost_against_the_nozzle() {
    let fluid = MethanolWater::WATER;
    let rated = VolumeRate::new::<liter_per_minute>(0.5);
    let nozzle = FluidNozzle {
        count: 1,
        rated: RatedFlow::of_volume(rated, bar(7.0), fluid.density()).unwrap(),
        pump: gauge(10.0),
        fluid,
    };
    let ratio = |boost| cc_per_minute(nozzle.flow(gauge(boost)) / fluid.density()) / 500.0;
    for (boost, expected) in [(0.0, 1.195), (1.5, 1.102), (2.0, 1.069)] {
        near(ratio(boost), expected, 5e-4);
    }
    mistaken(ratio(0.0), 1.069, 5e-4);
    near(ratio(11.0), 0.0, 1e-12);

    // Rated with water, fed with the mixture: the root of the densities.
    let half = FluidNozzle { fluid: by_volume(0.5), ..nozzle };
    let mixture: f64 = (half.flow(gauge(0.0)) / nozzle.flow(gauge(0.0))).into();
    near(mixture, (926.89_f64 / 998.21).sqrt(), 5e-4);
    let two = FluidNozzle { count: 2, ..nozzle };
    near(
        grams_per_second(two.flow(gauge(0.0))),
        2.0 * grams_per_second(nozzle.flow(gauge(0.0))),
        1e-9,
    );
}

/// Ten litres of half and half by volume from neat methanol: 9.2689 kg hold 4.0978 kg of
/// methanol (5.1805 L) and 5.1711 kg of water (5.1804 L), 0.361 L more than ten. By hand on
/// CoolProp's densities; 0.1 %. Five litres of each must not pass.
#[test]
fn ten_litres_from_neat_methanol() {
    let recipe =
        recipe(Wanted::Volume(liters(10.0)), by_volume(0.5), MethanolWater::METHANOL).unwrap();
    near(recipe.concentrate_mass.get::<kilogram>(), 4.0978, 0.004);
    near(recipe.concentrate.get::<liter>(), 5.1805, 0.005);
    near(recipe.water_mass.get::<kilogram>(), 5.1711, 0.005);
    near(recipe.water.get::<liter>(), 5.1804, 0.005);
    near(recipe.contraction.get::<liter>(), 0.361, 0.004);
    mistaken(5.0, recipe.concentrate.get::<liter>(), 0.005);
}

/// By mass: 6 kg of 30 % from 60 % is 3 kg of it and 3 kg of water. By hand.
#[test]
fn six_kilograms_from_a_concentrate() {
    let six = Wanted::Mass(Mass::new::<kilogram>(6.0));
    let mixed = recipe(six, by_mass(0.30), by_mass(0.60)).unwrap();
    near(mixed.concentrate_mass.get::<kilogram>(), 3.0, 1e-9);
    near(mixed.water_mass.get::<kilogram>(), 3.0, 1e-9);
    near(mixed.concentrate.get::<liter>(), 3000.0 / 894.36, 0.01);
    let unchanged = recipe(six, by_mass(0.60), by_mass(0.60)).unwrap();
    near(unchanged.water_mass.get::<kilogram>(), 0.0, 1e-9);
    near(unchanged.contraction.get::<liter>(), 0.0, 1e-9);
}

#[test]
fn what_cannot_be_mixed() {
    let ten = Wanted::Volume(liters(10.0));
    let weak = recipe(ten, by_mass(0.50), by_mass(0.30)).unwrap_err();
    assert!(matches!(weak, MixError::TooWeak { .. }));
    for amount in [0.0, -1.0, f64::NAN] {
        let error = recipe(Wanted::Volume(liters(amount)), by_mass(0.3), by_mass(0.5)).unwrap_err();
        assert!(matches!(error, MixError::Amount { .. }));
    }
    let water = recipe(ten, MethanolWater::WATER, MethanolWater::WATER).unwrap();
    near(water.water.get::<liter>(), 10.0, 1e-9);
    near(density(998.21).value / 1000.0 * 10.0, water.water_mass.get::<kilogram>(), 1e-3);
}
