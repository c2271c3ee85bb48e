//! The fuels and units that the worked chains of the fuel system share.
//!
//! The fuels are fixed here and are not the core's own, so that a chain checks the
//! formula and not the petrol: E0 745.0 kg/m3, 14.60, 43.0 MJ/kg (a convention);
//! ethanol 789.4 kg/m3 (CoolProp 8.0.0), 9.005 (measured dry air), 26.82 MJ/kg
//! (chemicals 1.5.2). Blends: density by volume, the other two by mass.

use fillwright::hardware::{FuelProperties, OperatingPoint};
use fillwright::quantity::{
    AngularVelocity, CrankPower, DynamicViscosity, GaugePressure, MassDensity, MassRate, Power,
    Pressure, SpecificEnergy, Time, VolumeRate,
};
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::available_energy::megajoule_per_kilogram;
use uom::si::dynamic_viscosity::millipascal_second;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::watt;
use uom::si::pressure::bar as bars;
use uom::si::time::millisecond;
use uom::si::volume_rate::liter_per_minute;

/// 550 ft lbf/s in W (definition).
pub(crate) const HORSEPOWER: f64 = 745.699_871_582_270_2;

/// n-heptane at 20 degC in kg/m3 (CoolProp 8.0.0).
pub(crate) const N_HEPTANE: f64 = 683.82;

/// A blend of the reference set, from its ethanol in percent by volume.
pub(crate) fn fuel(ethanol: f64) -> FuelProperties {
    let share = ethanol / 100.0;
    let density = share * 789.4 + (1.0 - share) * 745.0;
    let mass_share = share * 789.4 / density;
    let by_mass = |petrol: f64, ethanol: f64| mass_share * ethanol + (1.0 - mass_share) * petrol;
    FuelProperties {
        density: MassDensity::new::<kilogram_per_cubic_meter>(density),
        stoichiometric_afr: by_mass(14.60, 9.005),
        lower_heating_value: SpecificEnergy::new::<megajoule_per_kilogram>(by_mass(43.0, 26.82)),
        // Read by line losses alone, which bring their own.
        viscosity: DynamicViscosity::new::<millipascal_second>(0.44),
    }
}

pub(crate) fn at(rpm: f64, boost: f64, fuel: &FuelProperties) -> OperatingPoint<'_> {
    OperatingPoint { speed: speed(rpm), manifold: gauge(boost), fuel }
}

pub(crate) fn speed(rpm: f64) -> AngularVelocity {
    AngularVelocity::new::<revolution_per_minute>(rpm)
}

pub(crate) fn crank(watts: f64) -> CrankPower {
    CrankPower::new(Power::new::<watt>(watts))
}

pub(crate) fn bar(pressure: f64) -> Pressure {
    Pressure::new::<bars>(pressure)
}

pub(crate) fn gauge(pressure: f64) -> GaugePressure {
    GaugePressure::new(bar(pressure))
}

pub(crate) fn milliseconds(time: f64) -> Time {
    Time::new::<millisecond>(time)
}

pub(crate) fn mass_rate(grams_per_second: f64) -> MassRate {
    MassRate::new::<gram_per_second>(grams_per_second)
}

pub(crate) fn grams_per_second(flow: MassRate) -> f64 {
    flow.get::<gram_per_second>()
}

pub(crate) fn liters_per_hour(flow: VolumeRate) -> f64 {
    60.0 * flow.get::<liter_per_minute>()
}

pub(crate) fn cc_per_minute(flow: VolumeRate) -> f64 {
    1000.0 * flow.get::<liter_per_minute>()
}

pub(crate) fn volume_rate(liters_per_hour: f64) -> VolumeRate {
    VolumeRate::new::<liter_per_minute>(liters_per_hour / 60.0)
}

/// The set itself, by hand: E10, E50 and E85. Averaging the air-fuel ratio by volume
/// gives 9.844 for E85 and must not pass.
#[test]
fn blends_of_the_reference_set() {
    use super::support::{mistaken, near};
    for (ethanol, density, afr, heat) in
        [(10.0, 749.4, 14.011, 41.296), (50.0, 767.2, 11.722, 34.676), (85.0, 782.7, 9.804, 29.130)]
    {
        let fuel = fuel(ethanol);
        near(fuel.density.get::<kilogram_per_cubic_meter>(), density, 0.05);
        near(fuel.stoichiometric_afr, afr, 1e-3);
        near(fuel.lower_heating_value.get::<megajoule_per_kilogram>(), heat, 1e-3);
    }
    mistaken(0.85 * 9.005 + 0.15 * 14.60, fuel(85.0).stoichiometric_afr, 0.01);
}
