//! Trips of which every quantity lies at its edge: what can be driven is not called
//! impossible.

use fillwright::calibration::{Calibration, FluidState};
use fillwright::fuel::Extras;
use fillwright::tank::Tank;

use fillwright::quantity::Consumption;
use fillwright::quantity::{Band, Length, Money, Share, UnitPrice, Volume};
use fillwright::trip::{
    BlendModel, Burn, CheckedRoute, Done, Leg, PlanWanted, Planner, Progress, Pump, Route, Stop,
    TripObjective,
};
use proptest::prelude::*;
use uom::si::energy::megajoule;
use uom::si::length::kilometer;
use uom::si::molar_concentration::mole_per_liter;
use uom::si::volume::liter;

/// A planner that takes more than this here is stopped; what it has then counts.
const MOST_PROGRAMMES: u32 = 400;

/// Rounding, in litres and in octane numbers.
const ROUNDING: f64 = 1e-9;

fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

fn share(fraction: f64) -> Share {
    Share::new(fraction).unwrap()
}

/// Ethanol share and octane number of the fuels on the way.
const FUELS: [(f64, f64); 4] = [(0.1, 95.0), (0.0, 98.0), (0.85, 106.0), (1.0, 109.0)];

/// Windows of which the ends are the shares of these fuels.
const WINDOWS: [(f64, f64, Option<f64>); 5] = [
    (0.1, 0.1, None),
    (0.0, 0.1, Some(95.0)),
    (0.1, 1.0, None),
    (0.0, 0.0, Some(98.0)),
    (0.85, 0.85, Some(106.0)),
];

/// How far a leg is, as a part of what a full tank of E10 covers down to the reserve, or
/// in kilometres.
#[derive(Clone, Copy, Debug)]
enum Way {
    Range(f64),
    Kilometres(f64),
}

prop_compose! {
    fn any_pump(only: Option<usize>)(
        any in 0..FUELS.len(),
        price in prop::sample::select(vec![0.0, 1.5, 1.5, 1.8]),
        limit in prop::option::weighted(0.15, prop::sample::select(vec![0.0, 10.0, 55.0])),
        closed in prop::bool::weighted(0.1),
    ) -> Pump {
        let (ethanol, ron) = FUELS[only.unwrap_or(any)];
        Pump {
            share: Band::exact(share(ethanol)),
            extras: Extras::default(),
            price: UnitPrice::new(Money::new(price).unwrap(), litres(1.0)),
            ron: Some(ron),
            limit: limit.map(litres),
            closed,
        }
    }
}

/// A stop and what is asked of the leg after it.
fn any_part(only: Option<usize>) -> impl Strategy<Value = (Stop, (Way, Vec<usize>, Option<f64>))> {
    let pumps = prop::collection::vec(any_pump(only), 0..3);
    let fee = prop::sample::select(vec![0.0, 0.0, 2.0]);
    let stop =
        (pumps, fee).prop_map(|(pumps, fee)| Stop { pumps, fixed_cost: Money::new(fee).unwrap() });
    let way = prop_oneof![
        Just(Way::Range(1.0)),
        Just(Way::Range(0.5)),
        Just(Way::Kilometres(0.0)),
        (10.0..400.0_f64).prop_map(Way::Kilometres),
    ];
    let calibrations = prop::sample::select(vec![
        vec![],
        vec![],
        vec![],
        vec![0],
        vec![1],
        vec![2],
        vec![0, 3],
        vec![3, 4],
    ]);
    let ron_min = prop::option::weighted(0.2, prop::sample::select(vec![90.0, 95.0, 98.0]));
    (stop, (way, calibrations, ron_min))
}

prop_compose! {
    fn any_route()(
        only in prop::option::weighted(0.6, 0..FUELS.len()),
    )(
        parts in prop::collection::vec(any_part(only), 1..5),
        of_tank in 0..FUELS.len(), same in prop::bool::weighted(0.6), only in Just(only),
        level in prop::sample::select(vec![0.0, 0.0, 0.2, 0.7, 1.0]),
        reserve in prop::sample::select(vec![0.0, 0.0, 5.0]),
        at_end in prop::option::weighted(0.1, prop::sample::select(vec![0.0, 20.0, 55.0])),
        by_energy in any::<bool>(),
    ) -> Route {
        let capacity = 55.0;
        let consumption = Consumption::from_litres_per_100_km(10.0).unwrap();
        let kilometres = |way| match way {
            Way::Range(part) => part * (capacity - reserve) * 10.0,
            Way::Kilometres(far) => far,
        };
        let leg = |(way, calibrations, ron_min)| Leg {
            distance: Length::new::<kilometer>(kilometres(way)),
            factor: 1.0,
            calibrations,
            ron_min,
        };
        let (stops, legs): (Vec<_>, Vec<_>) = parts.into_iter().unzip();
        let (ethanol, ron) = FUELS[if same { only.unwrap_or(of_tank) } else { of_tank }];
        let window = |&(low, high, ron_min): &(f64, f64, Option<f64>)| Calibration {
            name: format!("E{:.0} to E{:.0}", low * 100.0, high * 100.0),
            low: share(low),
            high: share(high),
            written_for: share(low),
            ron_min,
            needs_fluid: false,
        };
        Route {
            tank: Tank {
                capacity: litres(capacity),
                level: Band::exact(litres(level * capacity)),
                share: Band::exact(share(ethanol)),
                ron: Some(ron),
                reserve: litres(reserve),
            },
            extras: Extras::default(),
            blend: BlendModel::default(),
            burn: if by_energy {
                Burn::Energy { consumption, on: share(0.1) }
            } else {
                Burn::Litres(consumption)
            },
            calibrations: WINDOWS.iter().map(window).collect(),
            injection_fluid: FluidState::Unknown,
            stops,
            legs: legs.into_iter().map(leg).collect(),
            final_level: at_end.map(litres),
        }
    }
}

/// What is in a tank: litres, litres of ethanol, moles, and moles times octane number.
#[derive(Clone, Copy, Debug)]
struct Contents {
    litres: f64,
    ethanol: f64,
    moles: f64,
    octane: f64,
}

impl Contents {
    fn of(route: &Route, litres: f64, ethanol: f64, ron: f64) -> Self {
        let per_litre = route.blend.moles_per_volume(share(ethanol)).get::<mole_per_liter>();
        let moles = per_litre * litres;
        Self { litres, ethanol: ethanol * litres, moles, octane: moles * ron }
    }

    fn plus(self, other: Self) -> Self {
        Self {
            litres: self.litres + other.litres,
            ethanol: self.ethanol + other.ethanol,
            moles: self.moles + other.moles,
            octane: self.octane + other.octane,
        }
    }

    /// What is left of it after a leg, if the rules hold and it suffices.
    fn driven(self, route: &CheckedRoute, leg: usize) -> Option<Self> {
        let asked = &route.legs[leg];
        let has_octane = |least: Option<f64>| {
            least.is_none_or(|least| {
                self.litres > ROUNDING && self.octane / self.moles >= least - ROUNDING
            })
        };
        let suits = |&window: &usize| {
            let window = &route.calibrations[window];
            let at = |share: Share| share.fraction() * self.litres;
            self.litres > ROUNDING
                && self.ethanol >= at(window.low) - ROUNDING
                && self.ethanol <= at(window.high) + ROUNDING
                && has_octane(window.ron_min)
        };
        let is_suited = asked.calibrations.is_empty() || asked.calibrations.iter().any(suits);
        if !is_suited || !has_octane(asked.ron_min) {
            return None;
        }
        let hundreds = asked.distance.get::<kilometer>() / 100.0;
        let burnt = match route.burn {
            Burn::Litres(consumption) => consumption.litres_per_100_km() * hundreds,
            Burn::Energy { .. } if self.litres <= 0.0 => {
                if hundreds > 0.0 {
                    return None;
                }
                0.0
            }
            Burn::Energy { consumption, on } => {
                let taken = litres(consumption.litres_per_100_km() * hundreds);
                let of = |share: Share| route.blend.energy_density(share);
                let energy = of(on).of(taken).get::<megajoule>();
                energy / of(share((self.ethanol / self.litres).min(1.0))).megajoules_per_liter()
            }
        };
        let left = self.litres - burnt;
        if left < route.least_on_arrival(leg).get::<liter>() - ROUNDING {
            return None;
        }
        let part = if self.litres > 0.0 { (left / self.litres).max(0.0) } else { 0.0 };
        Some(Self {
            litres: self.litres * part,
            ethanol: self.ethanol * part,
            moles: self.moles * part,
            octane: self.octane * part,
        })
    }
}

/// A way to drive the route: at each stop nothing, or one of its fuels up to the brim;
/// the litres by stop, none where no such way leads to the end.
fn driven_somehow(route: &CheckedRoute, tank: Contents, stop: usize) -> Option<Vec<f64>> {
    if stop == route.legs.len() {
        return Some(Vec::new());
    }
    let go_on = |bought: f64, tank: Contents| {
        let mut rest = driven_somehow(route, tank.driven(route, stop)?, stop + 1)?;
        rest.insert(0, bought);
        Some(rest)
    };
    let free = route.tank.capacity.get::<liter>() - tank.litres;
    let open = route.stops[stop].pumps.iter().filter(|pump| !pump.closed);
    let to_the_brim = open.map(|pump| {
        let bought = pump.limit.map_or(free, |most| free.min(most.get::<liter>()));
        (bought, Contents::of(route, bought, pump.share.expected().fraction(), pump.ron.unwrap()))
    });
    go_on(0.0, tank)
        .or_else(|| to_the_brim.into_iter().find_map(|(x, fuel)| go_on(x, tank.plus(fuel))))
}

fn planned(route: CheckedRoute, wish: PlanWanted) -> Progress {
    let mut planner = Planner::new(route, wish);
    loop {
        let progress = planner.step();
        if progress.done != Done::Working || planner.programmes() > MOST_PROGRAMMES {
            return progress;
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(8000))]

    /// Where filling up somewhere and driving on leads to the end, the route is not called
    /// impossible, and what is said to be proved good is there.
    #[test]
    fn what_can_be_driven_is_not_called_impossible(
        route in any_route(),
        objective in prop::sample::select(vec![
            TripObjective::Cheapest, TripObjective::FewestStops, TripObjective::MostEthanol,
        ]),
        is_robust in any::<bool>(),
        margin in prop::sample::select(vec![0.0, 0.02]),
    ) {
        let checked = route.clone().checked().unwrap();
        let tank = &route.tank;
        let start = Contents::of(
            &route,
            tank.level.expected().get::<liter>(),
            tank.share.expected().fraction(),
            tank.ron.unwrap(),
        );
        let Some(way) = driven_somehow(&checked, start, 0) else { return Ok(()) };
        let wish = PlanWanted {
            objective, is_robust, margin: share(margin), gap: 0.01, ..PlanWanted::default()
        };
        let progress = planned(checked, wish);
        prop_assert!(!matches!(progress.done, Done::Impossible(_)), "{way:?} does it: {progress:?}");
        prop_assert!(progress.done != Done::Certified || progress.plan.is_some(), "{progress:?}");
    }
}
