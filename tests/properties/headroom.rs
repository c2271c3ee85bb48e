//! Properties of a whole fuel system: what each part leaves, over speed and share.

use fillwright::fuel::{HydrocarbonBase, Mixture};
use fillwright::hardware::{
    Blend, BrakeSpecificFuelConsumption, Demand, DirectInjectors, FuelProperties, FuelSystem, Load,
    LoadPoint, OperatingPoint, PartOf, PlungerPump, PortInjectors, PowerRoute, RatedFlow,
    Regulator,
};
use fillwright::quantity::{
    Angle, AngularVelocity, Band, CrankPower, GaugePressure, Length, MassDensity, MassRate, Power,
    Pressure, Share, SpecificEnergy, Time, Volume,
};
use proptest::prelude::*;
use uom::si::angle::degree;
use uom::si::angular_velocity::revolution_per_minute;
use uom::si::available_energy::joule_per_kilogram;
use uom::si::length::millimeter;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::mass_rate::gram_per_second;
use uom::si::power::kilowatt;
use uom::si::pressure::bar;
use uom::si::time::millisecond;
use uom::si::volume::liter;

fn gauge(pressure: f64) -> GaugePressure {
    GaugePressure::new(Pressure::new::<bar>(pressure))
}

fn share(fraction: f64) -> Share {
    Share::new(fraction).unwrap()
}

fn rated(grams: f64, pressure: f64) -> RatedFlow {
    RatedFlow::of_mass(
        MassRate::new::<gram_per_second>(grams),
        Pressure::new::<bar>(pressure),
        MassDensity::new::<kilogram_per_cubic_meter>(684.0),
    )
    .unwrap()
}

prop_compose! {
    fn any_port()(
        grams in 3.0..20.0_f64, over in 2.0..6.0_f64, fixed in any::<bool>(),
        dead in 0.0..1.5_f64, limit in 0.5..1.0_f64,
    ) -> PortInjectors {
        let regulator = if fixed {
            Regulator::Fixed(gauge(over + 3.0))
        } else {
            Regulator::Referenced(Pressure::new::<bar>(over))
        };
        let dead_time = Time::new::<millisecond>(dead);
        PortInjectors { count: 4, rated: rated(grams, 3.0), regulator, dead_time, limit }
    }
}

prop_compose! {
    fn any_direct()(
        grams in 8.0..25.0_f64, rail in 100.0..350.0_f64, back in 0.0..15.0_f64,
        window in 150.0..280.0_f64, offset in 0.0..0.4_f64, limit in 0.6..1.0_f64,
    ) -> DirectInjectors {
        DirectInjectors {
            count: 4,
            rated: rated(grams, 100.0),
            rail: gauge(rail),
            back_pressure: gauge(back),
            window: Angle::new::<degree>(window),
            opening_offset: Time::new::<millisecond>(offset),
            limit,
        }
    }
}

prop_compose! {
    fn any_plunger()(
        bore in 7.0..14.0_f64, lift in 3.0..7.0_f64, dead in 0.0..2.0_f64,
        efficiency in 0.6..0.9_f64, doubt in 0.0..0.1_f64, limit in 0.6..1.0_f64,
    ) -> PlungerPump {
        PlungerPump {
            bore: Length::new::<millimeter>(bore),
            lift: Length::new::<millimeter>(lift),
            lobes: 4,
            drive_ratio: 0.5,
            dead_volume_ratio: dead,
            bulk_modulus: PlungerPump::usual_bulk_modulus(),
            efficiency: Band::new(efficiency - doubt, efficiency, efficiency + doubt).unwrap(),
            rail: gauge(200.0),
            inlet: gauge(5.0),
            limit,
        }
    }
}

prop_compose! {
    fn any_system()(
        port in prop::collection::vec(any_port(), 1..3), direct in any_direct(),
        plungers in prop::collection::vec(any_plunger(), 1..3), port_share in 0.05..0.95_f64,
    ) -> FuelSystem {
        FuelSystem { port, direct: Some(direct), port_share, plungers, supply: None }
    }
}

prop_compose! {
    fn any_load()(
        peak in 80.0..500.0_f64, loss in 0.0..0.1_f64, doubt in 0.0..0.2_f64,
        gain in 0.0..0.08_f64, boost in 0.0..2.5_f64, low in 1500.0..3000.0_f64,
    ) -> Load {
        let consumption = BrakeSpecificFuelConsumption::of_grams_per_kilowatt_hour(330.0);
        let point = |step: u32| {
            let part = f64::from(step) / 9.0;
            let power = |factor: f64| {
                CrankPower::new(Power::new::<kilowatt>(peak * (0.3 + 0.7 * part) * factor))
            };
            LoadPoint {
                speed: AngularVelocity::new::<revolution_per_minute>(low + 4500.0 * part),
                power: Band::new(power(1.0 - loss), power(1.0), power(1.0 + loss)).unwrap(),
                manifold: gauge(boost),
            }
        };
        Load {
            points: (0..10).map(point).collect(),
            demand: Demand {
                route: PowerRoute { consumption, reference: FuelProperties::of_share(Share::ZERO) },
                reference: Share::ZERO,
                doubt,
                gain_at_e85: gain,
                lambda: 0.82,
            },
            fluid: None,
        }
    }
}

/// What the reserve would be had the demand been met exactly: 1.
fn held(system: &FuelSystem, load: &Load, at: f64) -> Vec<f64> {
    let at = &system.over_share(load, &[share(at)])[0];
    at.reserves.iter().map(|reserve| 1.0 + reserve.unwrap().expected()).collect()
}

proptest! {
    /// A nozzle passes mass with the square root of the density, a pump volume; the
    /// power of either goes with the heating value (hydrostatics and Bernoulli). With
    /// dead times it is the open time that is shared, which no blend changes.
    #[test]
    fn each_part_scales_by_its_law(
        system in any_system(), load in any_load(), shares in prop::array::uniform2(0.0..=1.0_f64),
    ) {
        let mut load = load;
        load.demand.gain_at_e85 = 0.0;
        let law = |at: f64| {
            let fuel = FuelProperties::of_share(share(at));
            let heat: SpecificEnergy = fuel.lower_heating_value;
            (heat.get::<joule_per_kilogram>(), fuel.density.get::<kilogram_per_cubic_meter>())
        };
        let [(heat_a, density_a), (heat_b, density_b)] = shares.map(law);
        let [a, b] = shares.map(|at| held(&system, &load, at));
        let nozzle = heat_a * density_a.sqrt() / (heat_b * density_b.sqrt());
        let pump = heat_a * density_a / (heat_b * density_b);
        for (part, (a, b)) in system.parts().into_iter().zip(a.into_iter().zip(b)) {
            // Dead time alone may fill the cycle.
            prop_assume!(b > 1e-6);
            let law = if part.id() == PartOf::Plungers { pump } else { nozzle };
            prop_assert!((a / b / law - 1.0).abs() < 1e-9, "{:?}: {} against {law}", part.id(), a / b);
        }
    }

    #[test]
    fn capacity_and_use_undo_each_other(
        system in any_system(), rpm in 1500.0..8000.0_f64, boost in 0.0..2.5_f64,
        at in 0.0..=1.0_f64, used in 0.3..1.0_f64,
    ) {
        let fuel = FuelProperties::of_share(share(at));
        let speed = AngularVelocity::new::<revolution_per_minute>(rpm);
        let at = OperatingPoint { speed, manifold: gauge(boost), fuel: &fuel };
        for part in system.parts() {
            let capacity = part.capacity(used, &at).unwrap().expected();
            prop_assume!(capacity > MassRate::default());
            let back = part.used(capacity, &at).unwrap().expected();
            prop_assert!((back - used).abs() < 1e-9, "{:?}: {back} against {used}", part.id());
        }
    }

    #[test]
    fn more_ethanol_never_leaves_more(
        system in any_system(), load in any_load(), shares in prop::array::uniform2(0.0..=1.0_f64),
    ) {
        let (less, more) = (shares[0].min(shares[1]), shares[0].max(shares[1]));
        let (less, more) = (held(&system, &load, less), held(&system, &load, more));
        for (less, more) in less.into_iter().zip(more) {
            prop_assert!(more <= less * (1.0 + 1e-12));
        }
    }

    /// Whatever the blend, the power and the consumption really are within their
    /// bands, the result lies within its own.
    #[test]
    fn bands_hold_what_they_are_made_of(
        system in any_system(), load in any_load(), blend in prop::array::uniform3(0.0..=1.0_f64),
        power in 0.0..=1.0_f64, doubt in -1.0..=1.0_f64,
    ) {
        let mut blend = blend;
        blend.sort_by(f64::total_cmp);
        let band = Band::new(share(blend[0]), share(blend[1]), share(blend[2])).unwrap();
        let told = system.headroom(&load, &band.map(Blend::of));
        let mut real = load.clone();
        for point in &mut real.points {
            let (low, high) = (point.power.low().get(), point.power.high().get());
            point.power = Band::exact(CrankPower::new(low * (1.0 - power) + high * power));
        }
        let grams = 330.0 * (1.0 + doubt * load.demand.doubt);
        real.demand.doubt = 0.0;
        real.demand.route.consumption =
            BrakeSpecificFuelConsumption::of_grams_per_kilowatt_hour(grams);
        for at in blend {
            let is = system.headroom(&real, &Band::exact(share(at)).map(Blend::of));
            for (told, is) in told.parts.iter().zip(&is.parts) {
                for (told, is) in told.points.iter().zip(&is.points) {
                    let (told, is) = (told.unwrap(), is.unwrap());
                    let (used, left) = (is.used.expected(), is.reserve.expected());
                    let near = 1e-9;
                    prop_assert!(told.used.low() - near <= used && used <= told.used.high() + near);
                    prop_assert!(
                        told.reserve.low() - near <= left && left <= told.reserve.high() + near
                    );
                }
            }
        }
    }

    /// The same pulse with another blend: the mixture drifts as its air-fuel ratio
    /// and its density say, by the fuel's own rule.
    #[test]
    fn lambda_drifts_with_the_air_fuel_ratio(
        injectors in any_port(), shares in prop::array::uniform2(0.0..=1.0_f64),
        rpm in 1500.0..8000.0_f64,
    ) {
        let speed = AngularVelocity::new::<revolution_per_minute>(rpm);
        // The air that a held pulse burns at lambda 1.
        let air = |at: f64| {
            let fuel = FuelProperties::of_share(share(at));
            let point = OperatingPoint { speed, manifold: gauge(1.0), fuel: &fuel };
            injectors.static_flow(&point).get::<gram_per_second>() * fuel.stoichiometric_afr
        };
        let litre = |at: f64| {
            let base = HydrocarbonBase::default();
            Mixture::splash(Volume::new::<liter>(1.0), share(at), &base)
        };
        let [set_for, burnt] = shares;
        let drift = litre(burnt).open_loop_lambda_ratio(&litre(set_for)).unwrap();
        prop_assert!((air(set_for) / air(burnt) / drift - 1.0).abs() < 1e-9);
    }
}
