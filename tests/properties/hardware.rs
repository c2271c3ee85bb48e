//! Properties of the fuel system's parts.

use fillwright::hardware::{
    Arrangement, BrakeSpecificFuelConsumption, DirectInjectors, FuelLine, FuelProperties,
    MethanolWater, OperatingPoint, PlungerPump, PortInjectors, PowerRoute, PumpCurve, RatedFlow,
    Regulator, Supply, Wanted, recipe,
};
use fillwright::quantity::{
    Angle, AngularVelocity, Band, CrankPower, DynamicViscosity, GaugePressure, Length, Mass,
    MassDensity, MassRate, Power, Pressure, Share, Time, VolumeRate,
};
use proptest::prelude::*;
use uom::si::angle::degree;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::dynamic_viscosity::millipascal_second;
use uom::si::length::{meter, micrometer, millimeter};
use uom::si::mass::kilogram;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::kilowatt;
use uom::si::pressure::bar as bars;
use uom::si::time::millisecond;
use uom::si::volume_rate::liter_per_minute;

fn bar(pressure: f64) -> Pressure {
    Pressure::new::<bars>(pressure)
}

fn gauge(pressure: f64) -> GaugePressure {
    GaugePressure::new(bar(pressure))
}

fn density(density: f64) -> MassDensity {
    MassDensity::new::<kilogram_per_cubic_meter>(density)
}

fn per_minute(liters: f64) -> VolumeRate {
    VolumeRate::new::<liter_per_minute>(liters)
}

fn at(rpm: f64, boost: f64, fuel: &FuelProperties) -> OperatingPoint<'_> {
    let speed = AngularVelocity::new::<revolution_per_minute>(rpm);
    OperatingPoint { speed, manifold: gauge(boost), fuel }
}

prop_compose! {
    fn any_fuel()(percent in 0.0..=100.0_f64) -> FuelProperties {
        FuelProperties::of_share(Share::from_percent(percent).unwrap())
    }
}

prop_compose! {
    fn any_rating()(
        flow in 1.0..40.0_f64, difference in 0.5..200.0_f64, fluid in 600.0..1000.0_f64,
    ) -> RatedFlow {
        let flow = MassRate::new::<gram_per_second>(flow);
        RatedFlow::of_mass(flow, bar(difference), density(fluid)).unwrap()
    }
}

prop_compose! {
    /// Flows that fall over rising pressures, in any steps.
    fn any_curve()(
        first in 1.0..4.0_f64, least in 0.0..1.0_f64,
        steps in prop::collection::vec((0.2..2.0_f64, 0.01..1.5_f64), 1..6),
    ) -> PumpCurve {
        let mut pressure = first;
        let mut flow = least + steps.iter().map(|(_, fall)| fall).sum::<f64>();
        let mut pairs = vec![(bar(pressure), per_minute(flow))];
        for (rise, fall) in steps {
            pressure += rise;
            flow -= fall;
            pairs.push((bar(pressure), per_minute(flow.max(0.0))));
        }
        PumpCurve::new(&pairs).unwrap()
    }
}

prop_compose! {
    fn any_line()(
        length in 0.1..8.0_f64, bore in 3.0..16.0_f64, roughness in 0.0..50.0_f64,
        head in -0.5..0.5_f64,
    ) -> FuelLine {
        FuelLine {
            length: Length::new::<meter>(length),
            bore: Length::new::<millimeter>(bore),
            roughness: Length::new::<micrometer>(roughness),
            head: Length::new::<meter>(head),
        }
    }
}

proptest! {
    #[test]
    fn more_pressure_never_lowers_the_flow(
        rated in any_rating(), pressure in -5.0..300.0_f64, more in 0.0..100.0_f64,
        fuel in any_fuel(),
    ) {
        let flow = |pressure| rated.mass_flow(bar(pressure), fuel.density);
        prop_assert!(flow(pressure + more) >= flow(pressure));
        prop_assert!(flow(pressure) >= MassRate::default());
    }

    #[test]
    fn a_rating_gives_itself_back(rated in any_rating(), factor in 0.1..5.0_f64) {
        let (difference, fluid) = (rated.rated_difference(), rated.rated_density());
        let flow = rated.scaled(factor).volume_flow(difference, fluid);
        let expected = rated.rated_volume() * factor;
        prop_assert!((f64::from(flow / expected) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn more_ethanol_never_lowers_the_demand(
        grams in 200.0..600.0_f64, kilowatts in 10.0..800.0_f64, base in 0.0..=100.0_f64,
        percent in 0.0..=100.0_f64, more in 0.0..=100.0_f64,
    ) {
        let fuel = |percent: f64| {
            FuelProperties::of_share(Share::from_percent(percent.min(100.0)).unwrap())
        };
        let route = PowerRoute {
            consumption: BrakeSpecificFuelConsumption::of_grams_per_kilowatt_hour(grams),
            reference: fuel(base),
        };
        let power = CrankPower::new(Power::new::<kilowatt>(kilowatts));
        let (less, more) = (fuel(percent), fuel(percent + more));
        let mass = |fuel| route.fuel_flow(power, fuel, 0.0);
        prop_assert!(mass(&more) >= mass(&less));
        prop_assert!(mass(&more) / more.density >= mass(&less) / less.density);
    }

    #[test]
    fn port_injectors_capacity_is_the_inverse_of_duty(
        rated in any_rating(), count in 1..12_u32, fuel in any_fuel(), rpm in 500.0..9000.0_f64,
        boost in -0.5..2.0_f64, dead in 0.0..2.0_f64, duty in 0.01..1.2_f64,
        referenced in any::<bool>(),
    ) {
        let regulator = if referenced {
            Regulator::Referenced(bar(3.0))
        } else {
            Regulator::Fixed(gauge(4.0))
        };
        let dead_time = Time::new::<millisecond>(dead);
        let injectors = PortInjectors { count, rated, regulator, dead_time, limit: 0.85 };
        let point = at(rpm, boost, &fuel);
        let capacity = injectors.capacity(duty, &point);
        let dead_share = dead * rpm / 120_000.0;
        prop_assert!((injectors.duty(capacity, &point) - duty.max(dead_share)).abs() < 1e-9);
        prop_assert_eq!(capacity > MassRate::default(), duty > dead_share);
    }

    #[test]
    fn direct_injectors_capacity_is_the_inverse_of_use(
        rated in any_rating(), count in 1..12_u32, fuel in any_fuel(), rpm in 500.0..9000.0_f64,
        rail in 20.0..350.0_f64, back in 0.0..15.0_f64, window in 60.0..300.0_f64,
        offset in 0.0..0.5_f64, used in 0.3..1.2_f64,
    ) {
        let injectors = DirectInjectors {
            count, rated, rail: gauge(rail), back_pressure: gauge(back),
            window: Angle::new::<degree>(window),
            opening_offset: Time::new::<millisecond>(offset), limit: 0.85,
        };
        let point = at(rpm, 1.0, &fuel);
        let offset_share = offset / (window / 6.0 / rpm * 1000.0);
        prop_assume!(used > offset_share + 0.01);
        let capacity = injectors.capacity(used, &point);
        prop_assert!((injectors.window_use(capacity, &point) - used).abs() < 1e-9);
        let required = injectors.required_rail(capacity, &point, used).get().get::<bars>();
        prop_assert!((required - rail).abs() < 1e-6 * rail, "{} for {}", required, rail);
    }

    #[test]
    fn a_line_loses_more_with_more_flow(
        line in any_line(), fuel in any_fuel(), flow in 0.0..12.0_f64, more in 1e-6..6.0_f64,
    ) {
        let loss = |flow| line.pressure_loss(per_minute(flow), &fuel);
        prop_assert!(loss(flow + more) > loss(flow));
    }

    /// The more so where laminar flow turns turbulent.
    #[test]
    fn a_line_loses_more_through_the_transition(
        line in any_line(), reynolds in 2000.0..4500.0_f64, more in 0.01..500.0_f64,
    ) {
        let fuel = FuelProperties {
            viscosity: DynamicViscosity::new::<millipascal_second>(0.5),
            density: density(750.0),
            ..FuelProperties::of_share(Share::ZERO)
        };
        let bore = line.bore.get::<meter>();
        let liters = |reynolds: f64| {
            reynolds * std::f64::consts::PI * bore * 0.5e-3 / (4.0 * 750.0) * 60_000.0
        };
        let loss = |reynolds| line.pressure_loss(per_minute(liters(reynolds)), &fuel);
        prop_assert!(loss(reynolds + more) > loss(reynolds));
    }

    #[test]
    fn a_pump_curve_never_extrapolates(curve in any_curve(), pressure in 0.0..20.0_f64) {
        let (low, high) = curve.pressures();
        let (least, most) = curve.flows();
        let pressure = bar(pressure);
        match curve.flow(pressure) {
            Ok(flow) => {
                prop_assert!(low <= pressure && pressure <= high);
                prop_assert!(least <= flow && flow <= most);
                let back = curve.pressure(flow).unwrap();
                prop_assert!((back - pressure).abs() < bar(1e-6));
            }
            Err(error) => {
                prop_assert!(pressure < low || high < pressure);
                prop_assert_eq!((error.low, error.high), (low.get::<bars>(), high.get::<bars>()));
            }
        }
    }

    /// At the capacity for a use, just that share of what is available is flowing; and
    /// where there is none, the pressure would be outside the tables.
    #[test]
    fn the_supplys_capacity_is_the_inverse_of_use(
        pumps in prop::collection::vec(any_curve(), 1..3), series in any::<bool>(),
        lines in prop::collection::vec(any_line(), 0..3), fuel in any_fuel(),
        base in 1.0..6.0_f64, boost in -0.5..2.0_f64, losses in 0.0..0.5_f64,
        used in 0.05..1.0_f64,
    ) {
        let arrangement = if series { Arrangement::Series } else { Arrangement::Parallel };
        let supply = Supply {
            pumps, arrangement, lines, regulator: Regulator::Referenced(bar(base)),
            other_losses: bar(losses), limit: 0.85,
        };
        let point = at(6000.0, boost, &fuel);
        if let Ok(capacity) = supply.capacity(used, &point) {
            let flow: VolumeRate = capacity / fuel.density;
            // At the very end of a table rounding can put the pressure outside.
            if let Ok(available) = supply.available(flow, &point) {
                let share: f64 = (flow / available).into();
                prop_assert!((share - used).abs() < 1e-6, "{} for {}", share, used);
            }
            if let Ok(less) = supply.capacity(0.9 * used, &point) {
                prop_assert!(less < capacity);
            }
        }
    }

    #[test]
    fn a_pump_delivers_with_its_speed(
        fuel in any_fuel(), rpm in 300.0..9000.0_f64, times in 1.01..3.0_f64,
        dead in 0.0..3.0_f64, rail in 50.0..350.0_f64,
    ) {
        let pump = PlungerPump {
            bore: Length::new::<millimeter>(10.0),
            lift: Length::new::<millimeter>(5.0),
            lobes: 4,
            drive_ratio: 0.5,
            dead_volume_ratio: dead,
            bulk_modulus: PlungerPump::usual_bulk_modulus(),
            efficiency: PlungerPump::usual_efficiency(),
            rail: gauge(rail),
            inlet: gauge(6.0),
            limit: 0.85,
        };
        let delivery = |rpm| pump.delivery(&at(rpm, 1.0, &fuel)).expected();
        prop_assert!((f64::from(delivery(rpm * times) / delivery(rpm)) - times).abs() < 1e-9);
        // Dead volume and pressure can only take away.
        let ideal = PlungerPump { dead_volume_ratio: 0.0, efficiency: Band::exact(1.0), ..pump };
        let swept = ideal.geometric_flow(at(rpm, 1.0, &fuel).speed) * fuel.density;
        prop_assert!(delivery(rpm) < swept);
    }

    #[test]
    fn a_recipe_holds_what_was_asked_for(
        kilograms in 0.1..50.0_f64, strength in 0.0..=1.0_f64, concentrate in 0.0..=1.0_f64,
    ) {
        let fluid = |share| MethanolWater::of_mass_share(share).unwrap();
        let wanted = Wanted::Mass(Mass::new::<kilogram>(kilograms));
        match recipe(wanted, fluid(strength), fluid(concentrate)) {
            Ok(recipe) => {
                let (concentrated, water) = (recipe.concentrate_mass, recipe.water_mass);
                let sum = (concentrated + water).get::<kilogram>();
                prop_assert!((sum - kilograms).abs() < 1e-9);
                let methanol = concentrated.get::<kilogram>() * concentrate;
                prop_assert!((methanol - kilograms * strength).abs() < 1e-9);
                prop_assert!(water >= Mass::default());
            }
            Err(_) => prop_assert!(strength > concentrate),
        }
    }
}
