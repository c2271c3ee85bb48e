//! The fuel system's worked chains; their inputs stand in `hardware.py` as well.

use super::{Row, agrees, of};
use fillwright::hardware::constants::N_HEPTANE_DENSITY;
use fillwright::hardware::{
    Arrangement, BrakeSpecificFuelConsumption, DirectInjectors, FluidEffect, FuelLine,
    FuelProperties, MethanolWater, OperatingPoint, PlungerPump, PortInjectors, PowerRoute,
    PumpTable, RatedFlow, Regulator, Supply, leakage,
};
use fillwright::power::DrivelineLoss;
use fillwright::quantity::{
    Angle, AngularVelocity, Band, CrankPower, DynamicViscosity, ElectricPotential, GaugePressure,
    Length, MassDensity, MassRate, Power, Pressure, SpecificEnergy, Time, VolumeRate, WheelPower,
};
use uom::si::angle::degree;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::available_energy::megajoule_per_kilogram;
use uom::si::dynamic_viscosity::millipascal_second;
use uom::si::electric_potential::volt;
use uom::si::length::{meter, micrometer, millimeter};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::{kilowatt, watt};
use uom::si::pressure::{bar as bars, megapascal};
use uom::si::temperature_interval::kelvin;
use uom::si::time::millisecond;
use uom::si::volume_rate::liter_per_minute;

/// 550 ft lbf/s in W (definition).
const HORSEPOWER: f64 = 745.699_871_582_270_2;

fn bar(pressure: f64) -> Pressure {
    Pressure::new::<bars>(pressure)
}

fn gauge(pressure: f64) -> GaugePressure {
    GaugePressure::new(bar(pressure))
}

fn liters_per_hour(flow: VolumeRate) -> f64 {
    60.0 * flow.get::<liter_per_minute>()
}

fn density(density: f64) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(density)
}

/// A blend of the script's reference set: density by volume, the rest by mass.
fn blend(percent: f64) -> FuelProperties {
    let share = percent / 100.0;
    let mixed = share * 789.4 + (1.0 - share) * 745.0;
    let mass_share = share * 789.4 / mixed;
    let by_mass = |petrol: f64, ethanol: f64| mass_share * ethanol + (1.0 - mass_share) * petrol;
    FuelProperties {
        density: density(mixed),
        stoichiometric_afr: by_mass(14.60, 9.005),
        lower_heating_value: SpecificEnergy::new::<megajoule_per_kilogram>(by_mass(43.0, 26.82)),
        viscosity: DynamicViscosity::new::<millipascal_second>(1.016),
    }
}

fn at(rpm: f64, boost: f64, fuel: &FuelProperties) -> OperatingPoint<'_> {
    let speed = AngularVelocity::new::<revolution_per_minute>(rpm);
    OperatingPoint { speed, manifold: gauge(boost), fuel }
}

fn fuel_flow(watts: f64, pounds: f64, fuel: &FuelProperties) -> MassRate {
    let consumption = BrakeSpecificFuelConsumption::of_pounds_per_horsepower_hour(pounds);
    let route = PowerRoute { consumption, reference: blend(0.0) };
    route.fuel_flow(CrankPower::new(Power::new::<watt>(watts)), fuel, 0.0)
}

fn port(count: u32, difference: f64, dead_time: f64) -> PortInjectors {
    let flow = VolumeRate::new::<liter_per_minute>(1.0);
    PortInjectors {
        count,
        rated: RatedFlow::of_volume(flow, bar(3.0), N_HEPTANE_DENSITY.density()).unwrap(),
        regulator: Regulator::Referenced(bar(difference)),
        dead_time: Time::new::<millisecond>(dead_time),
        limit: 0.85,
    }
}

/// The rows of one chain.
fn chain(name: &str) -> Vec<Row> {
    let rows: Vec<_> = of("chain").into_iter().filter(|row| row.fuel == name).collect();
    assert!(!rows.is_empty(), "no row of chain {name}");
    rows
}

/// The last number in a condition, such as 85 in `rating E85`.
fn number(row: &Row) -> f64 {
    let digits = |word: &str| word.trim_start_matches('E').parse().ok();
    row.condition.split(' ').rev().find_map(digits).expect("a number")
}

#[test]
fn from_wheel_power_to_duty() {
    let wheels = WheelPower::new(Power::new::<watt>(550.0 * HORSEPOWER));
    let crank = DrivelineLoss::of_crank(Band::exact(0.12)).unwrap().crank(wheels).expected();
    let fuel = blend(50.0);
    let flow = fuel_flow(crank.get().get::<watt>(), 0.58, &fuel);
    let injectors = port(6, 3.5, 0.95);
    let point = at(6800.0, 1.5, &fuel);
    for row in chain("A") {
        let core = match row.condition {
            "crank power" => crank.get().get::<kilowatt>(),
            "fuel flow" => flow.get::<gram_per_second>(),
            "volume flow" => liters_per_hour(flow / fuel.density),
            "static flow" => injectors.static_flow(&point).get::<gram_per_second>() / 6.0,
            "effective duty" => injectors.effective_duty(flow, &point),
            "commanded duty" => injectors.duty(flow, &point),
            other => panic!("{other}"),
        };
        agrees(&row, core);
    }
}

#[test]
fn size_of_port_injectors() {
    for row in chain("B") {
        let fuel = blend(number(&row));
        let injectors = port(6, 3.0, 0.0);
        let flow = fuel_flow(600.0 * HORSEPOWER, 0.60, &fuel);
        let factor: f64 = (flow / injectors.capacity(0.85, &at(7000.0, 0.0, &fuel))).into();
        let rating = injectors.rated.scaled(factor).rated_volume();
        agrees(&row, 1000.0 * rating.get::<liter_per_minute>());
        // The rating taken for a flow of petrol.
        let as_fuel = flow / fuel.density / 6.0 / 0.85;
        let mistaken = 1000.0 * as_fuel.get::<liter_per_minute>();
        assert!((mistaken - row.value).abs() > 0.02 * row.value);
    }
}

#[test]
fn port_injectors_that_are_too_small() {
    let fuel = blend(85.0);
    let flow = fuel_flow(450.0 * HORSEPOWER, 0.60, &fuel);
    for row in chain("C") {
        let injectors = port(4, number(&row), 1.0);
        let point = at(7000.0, 1.5, &fuel);
        let commanded = row.condition.starts_with("commanded");
        let core = if commanded {
            injectors.duty(flow, &point)
        } else {
            injectors.effective_duty(flow, &point)
        };
        agrees(&row, core);
    }
}

fn direct() -> DirectInjectors {
    let rated = MassRate::new::<gram_per_second>(15.0);
    DirectInjectors {
        count: 4,
        rated: RatedFlow::of_mass(rated, bar(100.0), density(745.0)).unwrap(),
        rail: gauge(200.0),
        back_pressure: gauge(0.0),
        window: Angle::new::<degree>(240.0),
        opening_offset: Time::new::<millisecond>(0.30),
        limit: 0.85,
    }
}

#[test]
fn power_that_direct_injectors_allow() {
    for row in chain("D") {
        let fuel = blend(number(&row));
        let flow = direct().capacity(1.0, &at(6500.0, 0.0, &fuel));
        let power: Power = flow * fuel.lower_heating_value * 0.30;
        agrees(&row, power.get::<kilowatt>());
    }
}

#[test]
fn rail_pressure_that_a_power_needs() {
    for row in chain("E") {
        let fuel = blend(number(&row));
        let flow: MassRate = Power::new::<kilowatt>(250.0) / (fuel.lower_heating_value * 0.30);
        let rail = direct().required_rail(flow, &at(6500.0, 0.0, &fuel), 1.0);
        agrees(&row, rail.get().get::<bars>());
    }
}

#[test]
fn the_window_at_full_load() {
    for row in chain("F") {
        let fuel = blend(number(&row));
        let grams = 4.0 * 1.3003 / (0.80 * fuel.stoichiometric_afr);
        let flow = MassRate::new::<gram_per_second>(grams * 6500.0 / 120.0);
        agrees(&row, direct().window_use(flow, &at(6500.0, 0.0, &fuel)));
    }
}

fn plunger(bulk_modulus: f64, rail: f64) -> PlungerPump {
    PlungerPump {
        bore: Length::new::<millimeter>(10.0),
        lift: Length::new::<millimeter>(5.0),
        lobes: 4,
        drive_ratio: 0.5,
        dead_volume_ratio: 1.0,
        bulk_modulus: Pressure::new::<megapascal>(bulk_modulus),
        efficiency: Band::exact(0.85),
        rail: GaugePressure::new(Pressure::new::<megapascal>(rail)),
        inlet: GaugePressure::new(Pressure::new::<megapascal>(0.6)),
        limit: 0.85,
    }
}

#[test]
fn the_high_pressure_pump() {
    let pump = plunger(PlungerPump::usual_bulk_modulus().get::<megapascal>(), 20.0);
    let petrol = blend(0.0);
    let point = at(6500.0, 0.0, &petrol);
    for row in chain("G") {
        let core = match row.condition {
            "geometric flow" => liters_per_hour(pump.geometric_flow(point.speed)),
            "delivery E0" => pump.delivery(&point).expected().get::<gram_per_second>(),
            "leakage" => {
                let flow = leakage(
                    pump.bore,
                    Length::new::<micrometer>(4.0),
                    Length::new::<millimeter>(15.0),
                    Pressure::new::<megapascal>(20.0),
                    DynamicViscosity::new::<millipascal_second>(0.45),
                );
                liters_per_hour(flow) / 3.6
            }
            other => panic!("{other}"),
        };
        agrees(&row, core);
    }
}

/// Along isentropes; the row names the bulk modulus at their beginning.
#[test]
fn compression() {
    for row in of("density_ratio") {
        let words: Vec<_> = row.condition.split(' ').collect();
        let [modulus, rail] = [words[0], words[3]].map(|word| word.parse().expect("a number"));
        agrees(&row, plunger(modulus, rail).density_ratio());
        // Without the growth of the modulus the densest liquid would be missed.
        if row.fuel == "n-heptane" && rail > 30.0 {
            let constant = ((rail - 0.6) / modulus).exp();
            assert!((constant / row.value - 1.0).abs() > row.tolerance);
        }
    }
}

fn line(bore: f64) -> FuelLine {
    FuelLine {
        length: Length::new::<meter>(4.0),
        bore: Length::new::<millimeter>(bore),
        roughness: Length::new::<micrometer>(1.5),
        head: Length::new::<meter>(0.0),
    }
}

#[test]
fn line_losses() {
    for row in of("line_loss") {
        let number = |text: &str, index: usize| -> f64 {
            text.split(' ').nth(index).and_then(|word| word.parse().ok()).expect("a number")
        };
        let fuel = FuelProperties {
            density: density(number(row.fuel, 0)),
            viscosity: DynamicViscosity::new::<millipascal_second>(number(row.fuel, 2)),
            ..blend(0.0)
        };
        let flow = VolumeRate::new::<liter_per_minute>(number(row.condition, 2));
        let loss = line(number(row.condition, 0)).pressure_loss(flow, &fuel);
        agrees(&row, loss.get::<bars>());
    }
}

#[test]
fn the_low_pressure_supply() {
    let pressures = [3.0, 4.0, 5.0, 6.0, 7.0].map(bar).to_vec();
    let voltages = [12.0, 13.5].map(ElectricPotential::new::<volt>);
    let rows = [[285.0, 255.0, 225.0, 195.0, 165.0], [340.0, 310.0, 280.0, 250.0, 220.0]];
    let hourly = |liters: f64| VolumeRate::new::<liter_per_minute>(liters / 60.0);
    let flows = rows.map(|row| row.map(hourly).to_vec());
    let table = PumpTable::new(pressures, &voltages, &flows).unwrap();
    let e85 = blend(85.0);
    for row in chain("H") {
        let volts = row.condition.split(' ').nth(1).and_then(|word| word.parse().ok());
        let curve = table.at(ElectricPotential::new::<volt>(volts.expect("a voltage"))).unwrap();
        if row.condition.starts_with("available") {
            agrees(&row, liters_per_hour(curve.flow(bar(6.15)).unwrap()));
        } else {
            let supply = Supply {
                pumps: vec![curve],
                arrangement: Arrangement::Parallel,
                regulator: Regulator::Referenced(bar(4.0)),
                lines: vec![line(8.0)],
                other_losses: bar(0.0),
                limit: 0.85,
            };
            let capacity = supply.capacity(0.85, &at(7000.0, 1.5, &e85)).unwrap();
            agrees(&row, capacity.get::<gram_per_second>());
        }
    }
}

#[test]
fn densities_of_methanol_in_water() {
    for row in of("fluid_density") {
        let share: f64 = row.condition.parse().unwrap();
        let fluid = MethanolWater::of_mass_share(share).unwrap();
        agrees(&row, fluid.density().get::<kilogram_per_cubic_meter>());
        // Volumes that add up.
        let additive = 1.0 / (share / 791.0 + (1.0 - share) / 998.2);
        if share > 0.1 {
            assert!((additive / row.value - 1.0).abs() > row.tolerance, "{share}");
        }
    }
}

#[test]
fn injected_fluid() {
    let fluid = MethanolWater::of_volume_share(0.5).unwrap();
    let petrol = MassRate::new::<gram_per_second>(45.359);
    for row in chain("I") {
        let flow = VolumeRate::new::<liter_per_minute>(number(&row) / 1000.0) * fluid.density();
        let FluidEffect { lambda_with, energy_share, largest_cooling, .. } =
            fluid.effect(flow, petrol, 0.80, &blend(0.0));
        let core = match row.condition.rsplit_once(' ').expect("a flow").0 {
            "lambda" => lambda_with,
            "energy share" => energy_share,
            "cooling" => largest_cooling.get::<kelvin>(),
            other => panic!("{other}"),
        };
        agrees(&row, core);
    }
}
