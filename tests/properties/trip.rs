//! Properties of trips and their plans, with the sums written out here.

use fillwright::calibration::{Calibration, FluidState};
use fillwright::fuel::Extras;
use fillwright::tank::Tank;

use fillwright::quantity::Consumption;
use fillwright::quantity::{Band, Length, Money, Share, UnitPrice, Volume};
use fillwright::trip::{
    BlendModel, Bought, Bound, Burn, Done, Leg, PlanWanted, Planner, Progress, Pump, Route, Stop,
    TripObjective,
};
use proptest::prelude::*;
use uom::si::energy::megajoule;
use uom::si::length::kilometer;
use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

/// A planner that takes more than this here is stopped; what it has then counts.
const MOST_PROGRAMMES: u32 = 250;

fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

fn share(fraction: f64) -> Share {
    Share::new(fraction).unwrap()
}

fn calibration(low: f64, high: f64, ron_min: f64) -> Calibration {
    Calibration {
        name: format!("E{:.0}", low * 100.0),
        low: share(low),
        high: share(high),
        written_for: share(low),
        ron_min: Some(ron_min),
        needs_fluid: false,
    }
}

prop_compose! {
    fn any_pump()(
        kind in 0..3_usize, at in 0.0..1.0_f64, price in 0.9..2.1_f64,
        limit in prop::option::weighted(0.1, 5.0..40.0_f64),
    ) -> Pump {
        let (weak, strong, ron) = [(0.0, 0.1, 95.0), (0.0, 0.1, 98.0), (0.7, 0.85, 106.0)][kind];
        Pump {
            share: Band::exact(share(weak + (strong - weak) * at)),
            extras: Extras::default(),
            price: UnitPrice::new(Money::new(price).unwrap(), litres(1.0)),
            ron: Some(ron),
            limit: limit.map(litres),
            closed: false,
        }
    }
}

prop_compose! {
    fn any_stop()(
        pumps in prop::collection::vec(any_pump(), 1..4),
        fee in prop::sample::select(vec![0.0, 0.0, 2.0]),
    ) -> Stop {
        Stop { pumps, fixed_cost: Money::new(fee).unwrap() }
    }
}

prop_compose! {
    fn any_leg()(
        kilometres in 50.0..300.0_f64, factor in 0.8..1.4_f64,
        calibrations in prop::sample::select(vec![
            vec![], vec![], vec![0], vec![1], vec![0, 1], vec![1, 2], vec![2],
        ]),
    ) -> Leg {
        let distance = Length::new::<kilometer>(kilometres);
        Leg { distance, factor, calibrations, ron_min: None }
    }
}

prop_compose! {
    fn any_route()(
        parts in prop::collection::vec((any_stop(), any_leg()), 2..5),
        capacity in 45.0..65.0_f64, level in 8.0..30.0_f64, present in 0.0..0.85_f64,
        used in 6.0..9.0_f64, by_energy in any::<bool>(),
    ) -> Route {
        let (stops, legs) = parts.into_iter().unzip();
        let consumption = Consumption::from_litres_per_100_km(used).unwrap();
        Route {
            tank: Tank {
                capacity: litres(capacity),
                level: Band::exact(litres(level)),
                share: Band::exact(share(present)),
                ron: Some(98.0),
                reserve: litres(4.0),
            },
            extras: Extras::default(),
            blend: BlendModel::default(),
            burn: if by_energy {
                Burn::Energy { consumption, on: share(0.1) }
            } else {
                Burn::Litres(consumption)
            },
            calibrations: vec![
                calibration(0.0, 0.2, 94.0),
                calibration(0.25, 0.55, 98.0),
                calibration(0.5, 0.85, 100.0),
            ],
            injection_fluid: FluidState::Unknown,
            stops,
            legs,
            final_level: None,
        }
    }
}

/// Some litres at every pump.
fn bought_somehow(route: &Route, amounts: &[f64]) -> Bought {
    let mut amounts = amounts.iter().copied().cycle();
    route
        .stops
        .iter()
        .map(|stop| stop.pumps.iter().map(|_| litres(amounts.next().unwrap_or(0.0))).collect())
        .collect()
}

/// Runs a planner to its end, or as long as there is time. At each step the bound
/// must be none that the plan undercuts.
fn planned(route: &Route, wish: PlanWanted) -> Result<Progress, TestCaseError> {
    let mut planner = Planner::new(route.clone().checked().unwrap(), wish);
    loop {
        let progress = planner.step();
        if let Some(plan) = &progress.plan {
            let course = &plan.course;
            let cost = course.cost.amount();
            let holds = match progress.bound {
                None => true,
                Some(Bound::Cost(bound)) => bound.amount() <= cost + 1e-6,
                Some(Bound::Stops(stops)) => usize::try_from(stops).unwrap() <= course.stops,
                Some(Bound::StopsThenCost(stops, bound)) => {
                    usize::try_from(stops).unwrap() <= course.stops
                        && (usize::try_from(stops).unwrap() < course.stops
                            || bound.amount() <= cost + 1e-6)
                }
                // Over bands it is one of the mean of their corners, not of what is expected.
                Some(Bound::EthanolPart(part)) => {
                    wish.is_robust || part >= course.ethanol_part - 1e-6
                }
            };
            prop_assert!(holds, "{:?} beside {cost}", progress.bound);
        }
        if progress.done != Done::Working || planner.programmes() > MOST_PROGRAMMES {
            return Ok(progress);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// What is in the tank at each departure is what was left and what was bought:
    /// litres, ethanol, energy, and moles times octane. A leg takes its energy, or its
    /// litres, and leaves the ratios as they are.
    #[test]
    fn nothing_is_lost_on_the_way(
        route in any_route(),
        amounts in prop::collection::vec(0.5..12.0_f64, 6),
    ) {
        let bought = bought_somehow(&route, &amounts);
        let course = route.clone().checked().unwrap().simulate(&bought);
        let heat = |e: f64| route.blend.energy_density(share(e)).megajoules_per_liter();
        let moles = |e: f64| route.blend.moles_per_volume(share(e)).get::<mole_per_liter>();
        let e0 = route.tank.share.expected().fraction();
        let (mut volume, mut e, mut ron) = (route.tank.level.expected().get::<liter>(), e0, 98.0);
        for (index, leg) in course.legs.iter().enumerate() {
            let parts: Vec<(f64, f64, f64)> = route.stops[index]
                .pumps
                .iter()
                .zip(&bought[index])
                .map(|(p, v)| (v.get::<liter>(), p.share.expected().fraction(), p.ron.unwrap()))
                .chain([(volume, e, ron)])
                .collect();
            let sum = |of: &dyn Fn(f64, f64) -> f64| -> f64 {
                parts.iter().map(|&(litres, share, ron)| litres * of(share, ron)).sum()
            };
            let departure = &leg.departure;
            let level = departure.level.expected().get::<liter>();
            prop_assert!((level - sum(&|_, _| 1.0)).abs() < 1e-9);
            e = departure.share.unwrap().expected().fraction();
            prop_assert!((level * e - sum(&|e, _| e)).abs() < 1e-9);
            prop_assert!((level * heat(e) - sum(&|e, _| heat(e))).abs() < 1e-7);
            ron = departure.ron.unwrap().expected();
            prop_assert!((level * moles(e) * ron - sum(&|e, r| moles(e) * r)).abs() < 1e-6);
            volume = leg.arrival.expected().get::<liter>();
            if volume <= 0.0 {
                return Ok(());
            }
            let leg = &route.legs[index];
            let hundreds = leg.distance.get::<kilometer>() * leg.factor / 100.0;
            match route.burn {
                Burn::Litres(used) => {
                    let taken = used.litres_per_100_km() * hundreds;
                    prop_assert!((level - volume - taken).abs() < 1e-9);
                }
                Burn::Energy { consumption, on } => {
                    let of = route.blend.energy_density(on);
                    let taken = of.of(litres(consumption.litres_per_100_km() * hundreds));
                    let burnt = (level - volume) * heat(e);
                    prop_assert!((burnt - taken.get::<megajoule>()).abs() < 1e-6);
                }
            }
        }
    }

    /// Burning keeps the ratio: without a refill the blend, its octane number and its
    /// air-fuel ratio are those of the start.
    #[test]
    fn burning_keeps_the_blend(mut route in any_route()) {
        route.tank.level = Band::exact(route.tank.capacity);
        let checked = route.clone().checked().unwrap();
        let course = checked.simulate(&checked.nothing_bought());
        for (index, leg) in course.legs.iter().enumerate() {
            if index > 0 && course.legs[index - 1].arrival.expected() <= litres(0.0) {
                break;
            }
            let share = leg.departure.share.unwrap().expected().fraction();
            prop_assert!((share - route.tank.share.expected().fraction()).abs() < 1e-12);
            prop_assert!((leg.departure.ron.unwrap().expected() - 98.0).abs() < 1e-9);
            let first = course.legs[0].departure.air_fuel_ratio.unwrap().expected();
            let ratio = leg.departure.air_fuel_ratio.unwrap().expected();
            prop_assert!((ratio - first).abs() < 1e-9);
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// A plan holds exactly, and its bound never passes it ([`planned`]); in steps of
    /// the pump it still holds and is no better than the bound.
    #[test]
    fn a_plan_holds_and_its_bound_is_one(
        route in any_route(),
        objective in prop::sample::select(vec![
            TripObjective::Cheapest, TripObjective::FewestStops, TripObjective::MostEthanol,
        ]),
    ) {
        let step = litres(0.5);
        let wish = PlanWanted { objective, gap: 0.01, step: Some(step), ..PlanWanted::default() };
        let progress = planned(&route, wish)?;
        let checked = route.checked().unwrap();
        for plan in [&progress.plan, &progress.rounded].into_iter().flatten() {
            let course = checked.simulate(&plan.bought);
            prop_assert!(course.breaches.is_empty(), "{:?}", course.breaches);
            prop_assert_eq!(&course, &plan.course);
        }
        if let Some(rounded) = &progress.rounded {
            prop_assert!(rounded.is_in_steps_of(step));
            if let Some(Bound::Cost(bound)) = progress.bound {
                prop_assert!(rounded.course.cost.amount() >= bound.amount() - 1e-6);
            }
        }
        if progress.done == Done::Certified {
            prop_assert!(progress.plan.is_some());
            prop_assert!(progress.gap.is_some_and(|gap| gap <= 0.01 + 1e-9), "{:?}", progress.gap);
        }
        if matches!(progress.done, Done::Impossible(_)) {
            prop_assert!(progress.plan.is_none());
        }
    }

    /// With more money nothing gets worse: what was reached with less stays below the
    /// bound of what is possible with more, and what was possible stays so.
    #[test]
    fn more_money_never_makes_the_best_worse(
        route in any_route(), budget in 40.0..120.0_f64, more in 0.0..60.0_f64,
    ) {
        let with = |budget: f64| {
            let budget = Some(Money::new(budget).unwrap());
            let objective = TripObjective::MostEthanol;
            planned(&route, PlanWanted { objective, budget, gap: 0.01, ..PlanWanted::default() })
        };
        let less = with(budget)?;
        let Some(plan) = less.plan else { return Ok(()) };
        prop_assert!(plan.course.cost.amount() <= budget + 1e-5);
        let rich = with(budget + more)?;
        prop_assert!(!matches!(rich.done, Done::Impossible(_)));
        if let Some(Bound::EthanolPart(part)) = rich.bound {
            prop_assert!(part >= plan.course.ethanol_part - 1e-6);
        }
        if let (Done::Certified, Some(best)) = (&rich.done, &rich.plan) {
            let least = plan.course.ethanol_part * (1.0 - 0.011);
            prop_assert!(best.course.ethanol_part >= least);
        }
    }
}

prop_compose! {
    /// A route of which the gauge, the tank and the strong fuels are known within bands.
    fn any_unsure_route()(
        mut route in any_route(),
        gauge in 0.0..3.0_f64, tank in 0.0..0.1_f64, pumps in 0.0..0.15_f64,
    ) -> Route {
        let level = route.tank.level.expected().get::<liter>();
        let low = litres((level - gauge).max(5.0));
        route.tank.level = Band::new(low, litres(level), litres(level + gauge)).unwrap();
        let around = |expected: Share, width: f64| {
            let expected = expected.fraction();
            let low = share((expected - width).max(0.0));
            Band::new(low, share(expected), share((expected + width / 3.0).min(0.85))).unwrap()
        };
        route.tank.share = around(route.tank.share.expected(), tank);
        for pump in route.stops.iter_mut().flat_map(|stop| &mut stop.pumps) {
            let expected = pump.share.expected();
            pump.share = around(expected, if expected.fraction() > 0.5 { pumps } else { 0.02 });
        }
        route
    }
}

/// The route as it is if everything lies so far within its band, from 0 to 1.
fn in_truth(route: &Route, mut part: impl FnMut() -> f64) -> Route {
    let mut truth = route.clone();
    let (low, high) = (route.tank.level.low(), route.tank.level.high());
    truth.tank.level = Band::exact(low + (high - low) * part());
    let mut known = |band: &mut Band<Share>| {
        let (low, high) = (band.low().fraction(), band.high().fraction());
        *band = Band::exact(share(low + (high - low) * part()));
    };
    known(&mut truth.tank.share);
    for pump in truth.stops.iter_mut().flat_map(|stop| &mut stop.pumps) {
        known(&mut pump.share);
    }
    truth
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// A plan that is to hold whatever is true holds wherever in the bands the truth lies:
    /// no level is missed, and on each leg one calibration stays usable in all of them.
    /// Between the points that a plan is tried at it may miss by what nobody could measure:
    /// 10 mL, and a hundredth of a point of share or of an octane number.
    #[test]
    fn a_robust_plan_holds_wherever_the_truth_lies(
        route in any_unsure_route(),
        objective in prop::sample::select(vec![
            TripObjective::Cheapest, TripObjective::FewestStops, TripObjective::MostEthanol,
        ]),
        parts in prop::collection::vec(
            prop_oneof![Just(0.0), Just(1.0), 0.0..1.0_f64], 40 * 14,
        ),
    ) {
        let wish = PlanWanted { objective, gap: 0.02, is_robust: true, ..PlanWanted::default() };
        let Some(plan) = planned(&route, wish)?.plan else { return Ok(()) };
        let mut parts = parts.into_iter();
        let mut usable: Vec<Vec<usize>> =
            route.legs.iter().map(|leg| leg.calibrations.clone()).collect();
        for _ in 0..40 {
            let truth = in_truth(&route, || parts.next().unwrap_or(0.5));
            let course = truth.checked().unwrap().simulate(&plan.bought);
            for (index, (driven, leg)) in course.legs.iter().zip(&route.legs).enumerate() {
                let level = driven.departure.level.expected();
                prop_assert!(level <= route.tank.capacity + litres(0.01), "{level:?}");
                let left = driven.arrival.expected();
                prop_assert!(left >= route.tank.reserve - litres(0.01), "{left:?}");
                let is = driven.departure.share.unwrap().expected().percent();
                let ron = driven.departure.ron.unwrap().expected();
                usable[index].retain(|&calibration| {
                    let it = &route.calibrations[calibration];
                    is >= it.low.percent() - 0.01
                        && is <= it.high.percent() + 0.01
                        && it.ron_min.is_none_or(|least| ron >= least - 0.01)
                });
                prop_assert!(
                    leg.calibrations.is_empty() || !usable[index].is_empty(),
                    "leg {index}: E{is:.2}, RON {ron:.2}",
                );
            }
        }
    }
}
