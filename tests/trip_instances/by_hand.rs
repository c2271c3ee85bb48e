//! Short trips whose answer follows from a few lines of arithmetic.

use fillwright::calibration::{Calibration, FluidState, Verdict};
use fillwright::fuel::{EnergyDensity, Extras};
use fillwright::tank::Tank;

use fillwright::quantity::Consumption;
use fillwright::quantity::{Band, Energy, Length, Money, Share, UnitPrice, Volume};
use fillwright::trip::{
    BlendModel, Bound, Breach, Burn, Done, Leg, PlanWanted, Planner, Progress, Pump, Route,
    RouteError, Stop, TripObjective, TripRule,
};
use uom::si::energy::megajoule;
use uom::si::length::kilometer;
use uom::si::volume::liter;

fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

fn percent(value: f64) -> Share {
    Share::from_percent(value).unwrap()
}

fn pump(share: f64, price: f64) -> Pump {
    Pump {
        share: Band::exact(percent(share)),
        extras: Extras::default(),
        price: UnitPrice::new(Money::new(price).unwrap(), litres(1.0)),
        ron: Some(if share > 50.0 { 106.0 } else { 95.0 }),
        limit: None,
        closed: false,
    }
}

fn stop(pumps: Vec<Pump>) -> Stop {
    Stop { pumps, fixed_cost: Money::default() }
}

fn leg(kilometres: f64, calibrations: Vec<usize>) -> Leg {
    let distance = Length::new::<kilometer>(kilometres);
    Leg { distance, factor: 1.0, calibrations, ron_min: None }
}

fn window(low: f64, high: f64) -> Calibration {
    Calibration {
        name: format!("E{low:.0}"),
        low: percent(low),
        high: percent(high),
        written_for: percent(low),
        ron_min: None,
        needs_fluid: false,
    }
}

/// 60 L, 10 L of E10 in it, 5 L to be left, 10 L/100 km.
fn route(stops: Vec<Stop>, legs: Vec<Leg>) -> Route {
    Route {
        tank: Tank {
            capacity: litres(60.0),
            level: Band::exact(litres(10.0)),
            share: Band::exact(percent(10.0)),
            ron: Some(95.0),
            reserve: litres(5.0),
        },
        extras: Extras::default(),
        blend: BlendModel::default(),
        burn: Burn::Litres(Consumption::from_litres_per_100_km(10.0).unwrap()),
        calibrations: vec![window(0.0, 15.0), window(50.0, 60.0)],
        injection_fluid: FluidState::Unknown,
        stops,
        legs,
        final_level: None,
    }
}

/// As much energy as of 10 L/100 km of petrol, with 32 MJ/L in petrol and 21.2 in ethanol.
fn by_energy(route: &mut Route) {
    let energy = |value| EnergyDensity::new(Energy::new::<megajoule>(value), litres(1.0));
    route.blend = BlendModel {
        petrol_energy: energy(32.0),
        ethanol_energy: energy(21.2),
        ..BlendModel::default()
    };
    let consumption = Consumption::from_litres_per_100_km(10.0).unwrap();
    route.burn = Burn::Energy { consumption, on: Share::ZERO };
}

fn planned(route: Route, wish: PlanWanted) -> Progress {
    let mut planner = Planner::new(route.checked().unwrap(), wish);
    loop {
        let progress = planner.step();
        if progress.done != Done::Working {
            return progress;
        }
        assert!(planner.programmes() < 20_000, "{progress:?}");
    }
}

fn why_not(route: Route, wish: PlanWanted) -> (usize, Vec<TripRule>) {
    match planned(route, wish).done {
        Done::Impossible(why) => (why.stop, why.rules),
        other => panic!("{other:?}"),
    }
}

/// Corners are not always the worst: 5 L of E10, 30 L of a fuel of e, then 22 L of
/// petrol's worth of energy burnt, then 40 L of E10. More ethanol means less of it
/// left. With `c = 1 - 21.2 / 32`, `V = 35`, `E = 0.5 + 30 e`, `H = V - c E`, the share
/// is `((1 - 22 / H) E + 4) / ((1 - 22 / H) V + 40)`: 17.89, 18.02, 18.05 and 17.94 %
/// at 70, 75, 80 and 85 %.
#[test]
fn a_stronger_fuel_can_end_in_a_weaker_blend() {
    let after = |strong: f64| {
        let stops = vec![stop(vec![pump(strong, 1.0)]), stop(vec![pump(10.0, 1.0)])];
        let mut route = route(stops, vec![leg(220.0, vec![]), leg(0.0, vec![])]);
        route.tank.level = Band::exact(litres(5.0));
        route.tank.reserve = litres(0.0);
        by_energy(&mut route);
        let bought = vec![vec![litres(30.0)], vec![litres(40.0)]];
        let course = route.checked().unwrap().simulate(&bought);
        assert!(course.breaches.is_empty(), "{:?}", course.breaches);
        course.legs[1].departure.share.unwrap().expected().percent()
    };
    for (strong, expected) in [(70.0, 17.89), (75.0, 18.02), (80.0, 18.05), (85.0, 17.94)] {
        let share = after(strong);
        assert!((share - expected).abs() < 0.005, "{strong}: {share}");
    }
}

/// 10 L, 35 L of E85 at 1 and 15 L of E10 at 2 bought: full at
/// `(1 + 29.75 + 1.5) / 60 = 53.75 %`, in the window; 300 km leave 30 L.
#[test]
fn the_course_is_as_worked_out_by_hand() {
    let route =
        route(vec![stop(vec![pump(85.0, 1.0), pump(10.0, 2.0)])], vec![leg(300.0, vec![1])]);
    let course = route.checked().unwrap().simulate(&vec![vec![litres(35.0), litres(15.0)]]);
    let leg = &course.legs[0];
    let close = |volume: Band<Volume>, wanted: f64| {
        (volume.expected().get::<liter>() - wanted).abs() < 1e-9
    };
    assert!(close(leg.departure.level, 60.0) && close(leg.arrival, 30.0));
    let share = leg.departure.share.unwrap().expected();
    assert!((share.percent() - 53.75).abs() < 1e-9);
    assert_eq!(leg.verdicts[0].verdict, Verdict::DoNotSelect);
    assert_eq!(leg.verdicts[1].verdict, Verdict::Usable);
    assert!((course.cost.amount() - 65.0).abs() < 1e-9);
    assert!((course.ethanol_part - 0.5375).abs() < 1e-9);
    assert!(course.breaches.is_empty());
}

#[test]
fn each_rule_that_a_plan_breaks_is_named() {
    let stops = vec![stop(vec![Pump { limit: Some(litres(40.0)), ..pump(85.0, 1.0) }])];
    let route = route(stops, vec![Leg { ron_min: Some(110.0), ..leg(600.0, vec![1]) }]);
    let route = route.checked().unwrap();
    let rules = |bought: f64| {
        let course = route.simulate(&vec![vec![litres(bought)]]);
        course.breaches.iter().map(|&Breach { rule, .. }| rule).collect::<Vec<_>>()
    };
    // 61 L at 72.7 %, of which the leg takes 60.
    assert_eq!(
        rules(51.0),
        [
            TripRule::Limit,
            TripRule::Brim,
            TripRule::Calibration,
            TripRule::Octane,
            TripRule::Reserve
        ]
    );
    // 25 L at 55 %.
    assert_eq!(rules(15.0), [TripRule::Octane, TripRule::Reserve]);
}

/// From 10 L of E10 to E50 with E85: `x (85 - 50) = 10 (50 - 10)`, 11.43 L; 25 L leave
/// the first leg's 10 L and the reserve when `10 + x = 30`, that is 20 L at 60 %:
/// the strong fuel alone would be too strong beyond `x (85 - 60) = 10 (60 - 10)`.
#[test]
fn what_stands_in_the_way_is_named() {
    let to_strong = |last: Leg| {
        let stops = vec![stop(vec![pump(10.0, 2.0)]), stop(vec![pump(10.0, 2.0)])];
        route(stops, vec![leg(100.0, vec![0]), last])
    };
    // No strong fuel at the second stop, where E50 is wanted.
    let (at, rules) = why_not(to_strong(leg(100.0, vec![1])), PlanWanted::default());
    assert_eq!(at, 1);
    assert!(rules.contains(&TripRule::Window) && !rules.contains(&TripRule::Reserve), "{rules:?}");
    // 56 L would leave 4 of a full tank; without the reserve it could be done.
    let (at, rules) = why_not(to_strong(leg(560.0, vec![])), PlanWanted::default());
    assert_eq!(at, 1);
    assert!(rules.contains(&TripRule::Reserve) && rules.contains(&TripRule::Brim), "{rules:?}");
    // 100 L are in no tank of 60.
    let (at, rules) = why_not(to_strong(leg(1000.0, vec![])), PlanWanted::default());
    assert_eq!((at, rules), (1, vec![TripRule::Brim]));
    // 15 L are missing at 2: 30 and no less.
    let wish = |budget: f64| PlanWanted {
        budget: Some(Money::new(budget).unwrap()),
        ..PlanWanted::default()
    };
    let route = || to_strong(leg(100.0, vec![]));
    assert_eq!(why_not(route(), wish(29.9)).0, 1);
    assert!(why_not(route(), wish(29.9)).1.contains(&TripRule::Budget));
    assert_eq!(planned(route(), wish(30.1)).done, Done::Certified);
    // The last pump is out of use, and what fits before it does not last.
    let mut closed = to_strong(leg(560.0, vec![]));
    closed.stops[1].pumps[0].closed = true;
    assert_eq!(why_not(closed, PlanWanted::default()).0, 1);
    // No fuel of so much octane.
    let octane = Leg { ron_min: Some(99.0), ..leg(100.0, vec![]) };
    let (at, rules) = why_not(to_strong(octane), PlanWanted::default());
    assert_eq!(at, 1);
    assert!(rules.contains(&TripRule::Octane), "{rules:?}");
    // More at the end than what is sold.
    let mut last = to_strong(leg(100.0, vec![]));
    last.final_level = Some(litres(50.0));
    last.stops[1].pumps[0].limit = Some(litres(1.0));
    let (at, rules) = why_not(last, PlanWanted::default());
    assert_eq!(at, 1);
    assert!(rules.contains(&TripRule::FinalLevel), "{rules:?}");
}

#[test]
fn a_plan_is_also_given_in_steps_of_the_pump() {
    let pumps = || vec![pump(85.0, 1.13), pump(10.0, 1.79)];
    let stops = vec![stop(pumps()), stop(pumps()), stop(pumps())];
    let legs = vec![leg(270.0, vec![1]), leg(310.0, vec![1]), leg(330.0, vec![1])];
    let step = litres(0.5);
    let progress =
        planned(route(stops, legs), PlanWanted { step: Some(step), ..PlanWanted::default() });
    assert_eq!(progress.done, Done::Certified);
    let (plan, rounded) = (progress.plan.unwrap(), progress.rounded.unwrap());
    assert!(plan.holds(false) && rounded.holds(false));
    assert!(rounded.is_in_steps_of(step) && !plan.is_in_steps_of(step));
    // Three stops of two fuels, half a litre each at most.
    let more = rounded.course.cost.amount() - plan.course.cost.amount();
    assert!(more < 3.0 * (1.13 + 1.79) * 0.5, "{more}");
}

/// Two dear stops that would do against one cheap one with a fee: 20 L are needed;
/// at 1.5 each without a fee 30, at 1.0 with a fee of 15 in all 35.
#[test]
fn fewest_stops_and_least_cost_are_two_things() {
    let cheap_first = |objective| {
        let mut first = stop(vec![pump(10.0, 1.0)]);
        first.fixed_cost = Money::new(15.0).unwrap();
        let small = || Pump { limit: Some(litres(10.0)), ..pump(10.0, 1.5) };
        let stops = vec![first, stop(vec![small()]), stop(vec![small()])];
        let legs = vec![leg(50.0, vec![]), leg(100.0, vec![]), leg(100.0, vec![])];
        planned(route(stops, legs), PlanWanted { objective, ..PlanWanted::default() })
    };
    let cheapest = cheap_first(TripObjective::Cheapest).plan.unwrap().course;
    assert_eq!(cheapest.stops, 2);
    assert!((cheapest.cost.amount() - 30.0).abs() < 0.05, "{:?}", cheapest.cost);
    let fewest = cheap_first(TripObjective::FewestStops).plan.unwrap().course;
    assert_eq!(fewest.stops, 1);
    assert!((fewest.cost.amount() - 35.0).abs() < 0.05, "{:?}", fewest.cost);
}

/// A pump that may hold anything from E70 to E85 and a tank of 8 to 12 L: the plan
/// holds at every corner and at the points in between.
#[test]
fn a_robust_plan_holds_whatever_is_true() {
    let strong = || Pump {
        share: Band::new(percent(75.0), percent(80.0), percent(85.0)).unwrap(),
        ..pump(80.0, 1.0)
    };
    let stops = (0..3).map(|_| stop(vec![strong(), pump(10.0, 2.0)])).collect();
    let mut unsure = route(stops, (0..3).map(|_| leg(200.0, vec![1])).collect());
    unsure.tank.level = Band::new(litres(8.0), litres(10.0), litres(12.0)).unwrap();
    let robust =
        planned(unsure.clone(), PlanWanted { is_robust: true, gap: 0.01, ..PlanWanted::default() });
    let plan = robust.plan.unwrap();
    assert!(plan.holds(true), "{:?}", plan.course.possible_breaches);
    let usable = |leg: &fillwright::trip::LegCourse| leg.verdicts[1].verdict;
    assert!(plan.course.legs.iter().all(|p| usable(p) != Verdict::DoNotSelect));
    // Being sure of less costs more.
    let plain = planned(unsure, PlanWanted::default()).plan.unwrap();
    assert!(plain.holds(false) && !plain.holds(true));
    assert!(plan.course.cost > plain.course.cost);
}

#[test]
fn what_cannot_be_is_refused() {
    let good = || route(vec![stop(vec![pump(10.0, 2.0)])], vec![leg(100.0, vec![0])]);
    assert!(good().checked().is_ok());
    let refused = |change: fn(&mut Route)| {
        let mut route = good();
        change(&mut route);
        route.checked().unwrap_err()
    };
    assert_eq!(refused(|r| r.legs.clear()), RouteError::NoLeg);
    assert_eq!(refused(|r| r.stops.clear()), RouteError::StopsAndLegs { stops: 0, legs: 1 });
    assert_eq!(refused(|r| r.tank.capacity = litres(0.0)), RouteError::NoCapacity);
    assert_eq!(refused(|r| r.legs[0].factor = 0.0), RouteError::Factor { leg: 0, given: 0.0 });
    assert_eq!(
        refused(|r| r.legs[0].calibrations = vec![7]),
        RouteError::UnknownCalibration { leg: 0 }
    );
    assert_eq!(
        refused(|r| r.calibrations[0].needs_fluid = true),
        RouteError::FluidNeeded { leg: 0 }
    );
    assert_eq!(
        refused(|r| {
            r.legs[0].ron_min = Some(95.0);
            r.stops[0].pumps[0].ron = None;
        }),
        RouteError::PumpOctaneMissing { stop: 0, pump: 0 }
    );
    let level = refused(|r| r.tank.level = Band::exact(litres(61.0)));
    assert!(matches!(level, RouteError::Overfull { .. }), "{level:?}");
}

/// 15 L are needed, and E50 in all: `10 % of 10 L + 80 % x + 10 % (15 - x) = 50 % of
/// 25 L` gives 14.29 L of the dear E80; for E51 it is 14.64 L.
#[test]
fn a_margin_is_kept_where_it_can_be() {
    let strong = |limit| Pump { limit, ..pump(80.0, 2.0) };
    let planned = |margin, limit| {
        let stops = vec![stop(vec![strong(limit), pump(10.0, 1.0)])];
        let wish = PlanWanted { margin: percent(margin), gap: 1e-6, ..PlanWanted::default() };
        planned(route(stops, vec![leg(200.0, vec![1])]), wish)
    };
    let of_strong = |progress: &Progress| {
        assert_eq!(progress.done, Done::Certified);
        progress.plan.as_ref().unwrap().bought[0][0].get::<liter>()
    };
    let [none, one] = [planned(0.0, None), planned(1.0, None)];
    assert!((of_strong(&none) - 10.0 / 0.7).abs() < 1e-3);
    assert!((of_strong(&one) - 10.25 / 0.7).abs() < 1e-3);
    assert_eq!((none.margin, one.margin), (percent(0.0), percent(1.0)));
    // Too little of it for the margin, but not for the window.
    let short = planned(1.0, Some(litres(14.5)));
    assert!((of_strong(&short) - 10.0 / 0.7).abs() < 1e-3);
    assert_eq!(short.margin, percent(0.0));
    assert!(matches!(planned(1.0, Some(litres(14.0))).done, Done::Impossible(_)));
}

/// 10.7 L of E72.6, of which 2.9 L, 2.4 L and 15.2 L are burnt and 4 L are left: 24.5 L in
/// all, so something has to be bought, and one stop is enough. With 16 L of pure petrol at
/// the first one 26.7 L are `0.726 * 10.7 / 26.7 = 29.1 %`, inside 25 to 55 % all the way;
/// of RON 98 and 98 they are of the 98 that this needs, with nothing to spare.
#[test]
fn one_stop_is_found_where_one_is_enough() {
    let stops = vec![
        stop(vec![Pump { ron: Some(98.0), limit: Some(litres(22.0)), ..pump(0.0, 0.9) }]),
        stop(vec![pump(70.0, 0.9)]),
        stop(vec![pump(0.0, 1.44)]),
    ];
    let legs = vec![leg(49.0, vec![]), leg(40.0, vec![1, 2]), leg(253.9, vec![0, 1])];
    let mut route = route(stops, legs);
    route.tank = Tank {
        capacity: litres(45.0),
        level: Band::exact(litres(10.7)),
        share: Band::exact(percent(72.6)),
        ron: Some(98.0),
        reserve: litres(4.0),
    };
    route.burn = Burn::Litres(Consumption::from_litres_per_100_km(6.0).unwrap());
    let asking = |low, high, ron| Calibration { ron_min: Some(ron), ..window(low, high) };
    route.calibrations =
        vec![asking(0.0, 20.0, 94.0), asking(25.0, 55.0, 98.0), asking(50.0, 85.0, 100.0)];
    let progress = planned(
        route,
        PlanWanted { objective: TripObjective::FewestStops, ..PlanWanted::default() },
    );
    assert_eq!(progress.plan.map(|plan| plan.course.stops), Some(1));
    assert!(matches!(progress.bound, Some(Bound::StopsThenCost(1, _))), "{:?}", progress.bound);
    assert_eq!(progress.done, Done::Certified);
}

/// The litres of [`a_stronger_fuel_can_end_in_a_weaker_blend`] are forced by what has to be
/// left: below 29.9 L of the strong fuel there are not 5.6 L after 220 km, and of E10 no
/// more than 40 L can be had. So after the two the share is 17.89 and 17.94 % at the ends of
/// the strong fuel's band, inside a window up to 17.97, but 18.05 between them. A litre of
/// pure petrol at the third stop makes that `8.39 / 47.5 = 17.7 %`.
#[test]
fn stops_are_counted_for_all_that_may_be_true() {
    let limited = |pump: Pump, most: f64| Pump { limit: Some(litres(most)), ..pump };
    let strong = Band::new(percent(70.0), percent(80.0), percent(85.0)).unwrap();
    let stops = vec![
        stop(vec![limited(Pump { share: strong, ..pump(80.0, 1.0) }, 30.0)]),
        stop(vec![limited(pump(10.0, 1.0), 40.0)]),
        stop(vec![limited(pump(0.0, 1.0), 2.0)]),
    ];
    let legs = vec![leg(220.0, vec![]), leg(0.0, vec![]), leg(0.0, vec![0])];
    let mut route = route(stops, legs);
    route.tank.level = Band::exact(litres(5.0));
    route.tank.reserve = litres(5.6);
    route.final_level = Some(litres(45.6));
    by_energy(&mut route);
    route.calibrations = vec![window(10.0, 17.97)];
    let wish = PlanWanted {
        objective: TripObjective::FewestStops,
        is_robust: true,
        gap: 0.01,
        ..PlanWanted::default()
    };
    let progress = planned(route, wish);
    assert_eq!(progress.plan.map(|plan| plan.course.stops), Some(3), "{:?}", progress.done);
    assert!(matches!(progress.bound, Some(Bound::StopsThenCost(3, _))), "{:?}", progress.bound);
    assert_eq!(progress.done, Done::Certified);
}

/// 55 L without a reserve, 20 L of E10 in it, three stations with E10 alone, 350, 400 and
/// 300 km at 8 L/100 km: 28, 32 and 24 L, each within a tank, so 64 of the 84 L are bought,
/// for 96.00 at 1.50. What was bought is as strong as what was there, and at the second and
/// third station nothing need be there: mistaken, that leaves no blend at all.
#[test]
fn one_fuel_and_no_reserve_is_no_obstacle() {
    for is_by_energy in [false, true] {
        let stops = (0..3).map(|_| stop(vec![pump(10.0, 1.5)])).collect();
        let legs = [350.0, 400.0, 300.0].map(|way| leg(way, vec![])).to_vec();
        let mut route = route(stops, legs);
        route.tank.capacity = litres(55.0);
        route.tank.level = Band::exact(litres(20.0));
        route.tank.reserve = litres(0.0);
        let consumption = Consumption::from_litres_per_100_km(8.0).unwrap();
        route.burn = if is_by_energy {
            Burn::Energy { consumption, on: percent(10.0) }
        } else {
            Burn::Litres(consumption)
        };
        let progress = planned(route, PlanWanted::default());
        assert_eq!(progress.done, Done::Certified);
        let cost = progress.plan.unwrap().course.cost.amount();
        assert!((cost - 96.0).abs() < 1e-3, "{cost}");
    }
}

/// A tank that has run dry, or was never filled, drives nowhere: 100 km at 10 L/100 km are
/// 10 L that are missing, with a reserve of nothing as well. Mistaken: nothing arrives with
/// nothing left, and nothing is what was asked for.
#[test]
fn an_empty_tank_drives_nowhere() {
    let legs = vec![leg(100.0, vec![]), leg(0.0, vec![])];
    let mut route = route(vec![stop(vec![pump(10.0, 1.5)]), Stop::default()], legs);
    route.tank.level = Band::exact(litres(0.0));
    route.tank.reserve = litres(0.0);
    for is_by_energy in [false, true] {
        if is_by_energy {
            by_energy(&mut route);
        }
        let checked = route.clone().checked().unwrap();
        let course = checked.simulate(&checked.nothing_bought());
        assert_eq!(course.breaches, [Breach { stop: 0, rule: TripRule::Reserve }]);
        assert_eq!(planned(route.clone(), PlanWanted::default()).done, Done::Certified);
    }
    // Without any way to go an empty tank will do, unless a blend is asked for.
    route.legs = vec![leg(0.0, vec![]), leg(0.0, vec![0])];
    let progress = planned(route.clone(), PlanWanted::default());
    assert!(progress.plan.is_some_and(|plan| plan.bought[0][0] > litres(0.0)));
    route.stops[0] = Stop::default();
    assert!(matches!(planned(route, PlanWanted::default()).done, Done::Impossible(_)));
}

/// Free fuel beside dear fuel, and a tank to be filled from nothing: 35 L for 300 km and the
/// reserve of 5 L cost nothing, and nothing is no part away from nothing.
#[test]
fn what_costs_nothing_is_proved_to_be_the_best() {
    for objective in [TripObjective::Cheapest, TripObjective::FewestStops] {
        let mut route =
            route(vec![stop(vec![pump(10.0, 0.0), pump(0.0, 1.5)])], vec![leg(300.0, vec![])]);
        route.tank.level = Band::exact(litres(0.0));
        let progress = planned(route, PlanWanted { objective, ..PlanWanted::default() });
        assert_eq!((progress.done, progress.gap), (Done::Certified, Some(0.0)));
        let plan = progress.plan.unwrap();
        assert!(plan.course.cost.amount() < 1e-9 && plan.bought[0][0] >= litres(35.0 - 1e-6));
    }
}
