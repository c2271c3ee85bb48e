//! Properties of the single fill, checked with arithmetic written out here.

use fillwright::fill::{
    Aim, FillObjective, Offer, Order, PlannedPour, Problem, Solution, StopRule,
};
use fillwright::fuel::MolarDensity;
use fillwright::quantity::{Band, Money, Share, UnitPrice, Volume};
use fillwright::tank::Tank;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use uom::si::volume::liter;

pub(super) fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

pub(super) fn share(fraction: f64) -> Share {
    Share::new(fraction.clamp(0.0, 1.0)).unwrap()
}

fn share_band(middle: f64, half: f64) -> Band<Share> {
    Band::new(share(middle - half), share(middle), share(middle + half)).unwrap()
}

prop_compose! {
    fn any_offer()(
        middle in 0.0..1.0_f64, half in 0.0..0.1_f64, price in 0.5..3.0_f64,
        limited in prop::option::weighted(0.2, 1.0..40.0_f64),
    ) -> Offer {
        let mut offer = Offer::new(share_band(middle, half));
        offer.price = Some(UnitPrice::new(Money::new(price).unwrap(), litres(1.0)));
        offer.limit = limited.map(litres);
        offer
    }
}

prop_compose! {
    fn any_stop(capacity: f64)(kind in 0..5_u8, part in 0.2..1.0_f64) -> StopRule {
        match kind {
            0 => StopRule::Brim,
            1 => StopRule::Level(litres(capacity * part)),
            2 => StopRule::AtMost(litres(capacity * part)),
            3 => StopRule::Budget(Money::new(capacity * part).unwrap()),
            _ => StopRule::Least,
        }
    }
}

prop_compose! {
    pub(super) fn any_problem()(
        capacity in 30.0..90.0_f64, part in 0.0..0.9_f64, level_error in 0.0..4.0_f64,
        present in 0.0..0.9_f64, present_error in 0.0..0.08_f64,
        offers in prop::collection::vec(any_offer(), 1..5),
        low in 0.0..0.9_f64, width in prop::sample::select(vec![0.0, 0.05, 0.3]),
    )(
        stop in any_stop(capacity),
        capacity in Just(capacity), level in Just(capacity * part), level_error in Just(level_error),
        present in Just(present), present_error in Just(present_error),
        offers in Just(offers), low in Just(low), width in Just(width),
    ) -> Problem {
        Problem {
            tank: Tank {
                capacity: litres(capacity),
                level: Band::new(
                    litres((level - level_error).max(0.0)),
                    litres(level),
                    litres((level + level_error).min(capacity)),
                ).unwrap(),
                share: share_band(present, present_error),
                ron: None,
                reserve: litres(capacity * 0.1),
            },
            offers,
            aim: Aim::window(share(low), share(low + width)).unwrap(),
            ron_min: None,
            stop,
            objective: stop.usual_objective(),
            molar_density: MolarDensity::default(),
            meter_error: 0.0,
        }
    }
}

/// Total litres and ethanol litres, from scratch.
fn tally(level: f64, present: f64, parts: &[(f64, f64)]) -> (f64, f64) {
    parts
        .iter()
        .fold((level, level * present), |(total, ethanol), (x, e)| (total + x, ethanol + x * e))
}

/// Pours an order into a tank, from scratch: litres in, share out; none where the
/// tank stays empty.
fn carry_out(
    order: &[PlannedPour],
    capacity: f64,
    level: f64,
    present: f64,
    shares: &[f64],
) -> Option<f64> {
    let mut total = level;
    let mut ethanol = level * present;
    for pour in order {
        let room = (capacity - total).max(0.0);
        let x = if pour.to_click { room } else { pour.volume.get::<liter>().min(room) };
        total += x;
        ethanol += x * shares[pour.fuel];
    }
    (total > 0.0).then(|| ethanol / total)
}

pub(super) fn between(band: &Band<Share>, at: f64) -> f64 {
    band.low().fraction() + at * (band.high().fraction() - band.low().fraction())
}

/// Where in the box the random points lie: half of them on its corners.
fn random_point(parts: usize) -> impl Strategy<Value = Vec<f64>> {
    let coordinate = prop_oneof![0.0..=1.0_f64, Just(0.0), Just(1.0)];
    prop::collection::vec(coordinate, parts)
}

/// The share after an order at one point of the box.
fn share_at(problem: &Problem, order: &Order, point: &[f64]) -> Option<f64> {
    let level = problem.tank.level;
    let (low, high) = (level.low().get::<liter>(), level.high().get::<liter>());
    let shares: Vec<f64> = problem
        .offers
        .iter()
        .zip(&point[2..])
        .map(|(offer, at)| between(&offer.share, *at))
        .collect();
    carry_out(
        &order.pours,
        problem.tank.capacity.get::<liter>(),
        low + point[0] * (high - low),
        between(&problem.tank.share, point[1]),
        &shares,
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn litres_and_ethanol_are_conserved_and_the_tank_holds_them(problem in any_problem()) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let Solution::Plan(plan) = problem.solve() else { return Ok(()) };
        let parts: Vec<(f64, f64)> = plan
            .volumes
            .iter()
            .zip(&problem.offers)
            .map(|(x, offer)| (x.get::<liter>(), offer.share.expected().fraction()))
            .collect();
        let level = problem.tank.level.expected().get::<liter>();
        let (total, ethanol) = tally(level, problem.tank.share.expected().fraction(), &parts);
        let capacity = problem.tank.capacity.get::<liter>();
        prop_assert!((plan.level.get::<liter>() - total).abs() < 1e-9);
        prop_assert!(total <= capacity + 1e-9);
        prop_assert!(parts.iter().all(|(x, _)| *x >= 0.0));
        for (offer, (x, _)) in problem.offers.iter().zip(&parts) {
            prop_assert!(offer.limit.is_none_or(|limit| *x <= limit.get::<liter>() + 1e-9));
        }
        if total > 1e-6 {
            let result = ethanol / total;
            prop_assert!((plan.share.unwrap().fraction() - result).abs() < 1e-9);
            prop_assert!(result >= problem.aim.low().fraction() - 1e-8);
            prop_assert!(result <= problem.aim.high().fraction() + 1e-8);
        }
        match problem.stop {
            StopRule::Brim => prop_assert!((total - capacity).abs() < 1e-9),
            StopRule::Level(wanted) => prop_assert!((total - wanted.get::<liter>()).abs() < 1e-9),
            StopRule::AtMost(most) => prop_assert!(total - level <= most.get::<liter>() + 1e-9),
            StopRule::Budget(most) => {
                prop_assert!(plan.cost.unwrap().amount() <= most.amount() + 1e-9);
            }
            StopRule::Least => {}
        }
    }

    /// What is said to be impossible really is: no point of a fine grid does it.
    #[test]
    fn no_point_of_a_grid_does_what_the_solver_says_cannot_be_done(problem in any_problem()) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let Solution::Impossible(impossible) = problem.solve() else { return Ok(()) };
        prop_assert!(!impossible.binding.is_empty());
        let level = problem.tank.level.expected().get::<liter>();
        let free = problem.tank.capacity.get::<liter>() - level;
        let fuels = problem.offers.len().min(3);
        let mut x = vec![0.0; fuels];
        let steps = 24_u32;
        for index in 0..(steps + 1).pow(u32::try_from(fuels).unwrap()) {
            let mut rest = index;
            for entry in &mut x {
                *entry = f64::from(rest % (steps + 1)) / f64::from(steps) * free;
                rest /= steps + 1;
            }
            prop_assert!(!satisfies(&problem, &x), "{x:?} does it");
        }
    }

    /// The optimum is at least as good as the best point of a fine grid.
    #[test]
    fn the_optimum_beats_a_fine_grid(problem in any_problem()) {
        let mut problem = problem;
        // Volume left open, aim a window: a grid can meet these.
        problem.stop = StopRule::Least;
        problem.objective = FillObjective::LeastCost;
        problem.offers.truncate(2);
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let level = problem.tank.level.expected().get::<liter>();
        let free = problem.tank.capacity.get::<liter>() - level;
        let price = |x: &[f64]| -> f64 {
            let unit = litres(1.0);
            problem.offers.iter().zip(x).map(|(o, x)| o.price.unwrap().of(unit).amount() * x).sum()
        };
        let steps = 200_u32;
        let mut best = f64::INFINITY;
        let grid = |i: u32| f64::from(i) / f64::from(steps) * free;
        for i in 0..=steps {
            for j in 0..=steps {
                let x = [grid(i), grid(j)];
                let x = &x[..problem.offers.len()];
                if satisfies(&problem, x) {
                    best = best.min(price(x));
                }
            }
        }
        if best.is_finite() {
            let Solution::Plan(plan) = problem.solve() else {
                return Err(TestCaseError::fail("a grid point does it"));
            };
            prop_assert!(plan.cost.unwrap().amount() <= best + 1e-7);
        }
    }
}

/// Whether these litres do all that is asked, from scratch. A grid never meets
/// an exact share or an exact level, so those are given a hair's breadth.
fn satisfies(problem: &Problem, x: &[f64]) -> bool {
    let offers = &problem.offers[..x.len()];
    let parts: Vec<(f64, f64)> =
        x.iter().zip(offers).map(|(x, o)| (*x, o.share.expected().fraction())).collect();
    let level = problem.tank.level.expected().get::<liter>();
    let (total, ethanol) = tally(level, problem.tank.share.expected().fraction(), &parts);
    let cost: f64 =
        x.iter().zip(offers).map(|(x, o)| o.price.unwrap().of(litres(*x)).amount()).sum();
    let hair = -1e-7;
    let stop = match problem.stop {
        StopRule::Brim => (total - problem.tank.capacity.get::<liter>()).abs() < 1e-9,
        StopRule::Level(wanted) => (total - wanted.get::<liter>()).abs() < 1e-9,
        StopRule::AtMost(most) => total - level <= most.get::<liter>() + hair,
        StopRule::Budget(most) => cost <= most.amount() + hair,
        StopRule::Least => true,
    };
    stop && total > 0.0
        && total <= problem.tank.capacity.get::<liter>() + 1e-9
        && ethanol / total >= problem.aim.low().fraction() - hair
        && ethanol / total <= problem.aim.high().fraction() + hair
        && x.iter()
            .zip(offers)
            .all(|(x, o)| o.limit.is_none_or(|limit| *x <= limit.get::<liter>() + hair))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// The corner rule: 10,000 random points of each box stay inside the worst
    /// case, and its ends are reached.
    #[test]
    fn ten_thousand_points_stay_inside_the_worst_case(
        problem in any_problem(),
        seed in any::<[u8; 32]>(),
    ) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let plan = match problem.solve() {
            Solution::Plan(plan) => plan,
            Solution::Impossible(impossible) => match impossible.closest {
                Some(plan) => plan,
                None => return Ok(()),
            },
        };
        let mut points = proptest::test_runner::TestRunner::new_with_rng(
            ProptestConfig::default(),
            proptest::test_runner::TestRng::from_seed(
                proptest::test_runner::RngAlgorithm::ChaCha, &seed),
        );
        let orders = problem.orders(&plan);
        let per_order = 10_000 / orders.len().max(1);
        for order in orders {
            let worst = order.worst.share;
            let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
            for _ in 0..per_order {
                let point = random_point(problem.offers.len() + 2)
                    .new_tree(&mut points)
                    .map_err(TestCaseError::fail)?
                    .current();
                let Some(share) = share_at(&problem, &order, &point) else { continue };
                least = least.min(share);
                most = most.max(share);
            }
            prop_assert!(least >= worst.low().fraction() - 1e-9, "{least} below {worst:?}");
            prop_assert!(most <= worst.high().fraction() + 1e-9, "{most} above {worst:?}");
            if order.worst.fits && least.is_finite() {
                // With every pour in full, the ends are corners, and half the
                // coordinates were corners.
                prop_assert!(least <= worst.low().fraction() + 1e-6, "{least} never near {worst:?}");
                prop_assert!(most >= worst.high().fraction() - 1e-6, "{most} never near {worst:?}");
            }
        }
    }

    /// A robust plan stays inside the aim at random points of the box.
    #[test]
    fn a_robust_plan_keeps_its_promise(
        problem in any_problem(),
        points in prop::collection::vec(random_point(6), 500),
    ) {
        let mut problem = problem;
        problem.aim = Aim::window(
            share(problem.aim.low().fraction() - 0.1),
            share(problem.aim.high().fraction() + 0.1),
        ).unwrap();
        let Ok(problem) = problem.checked() else { return Ok(()) };
        match problem.robust() {
            Ok(robust) => {
                for point in points {
                    let share = share_at(&problem, &robust.order, &point);
                    let Some(share) = share else { continue };
                    prop_assert!(share >= problem.aim.low().fraction() - 1e-9);
                    prop_assert!(share <= problem.aim.high().fraction() + 1e-9);
                }
            }
            Err(proofs) => {
                // The nominal plan, poured in any order, leaves the aim somewhere.
                if let Solution::Plan(plan) = problem.solve() {
                    for order in problem.orders(&plan) {
                        let worst = order.worst;
                        prop_assert!(
                            !worst.fits
                                || worst.share.low() < problem.aim.low()
                                || worst.share.high() > problem.aim.high()
                                || order.top_up().is_some_and(|fuel| problem.offers[fuel].limit.is_some()),
                            "{worst:?} is safe, yet {proofs:?}"
                        );
                    }
                }
            }
        }
    }
}

/// Pours that may overflow: litres planned for an expected level that is wrong.
pub(super) fn any_pours(offers: usize) -> impl Strategy<Value = Vec<PlannedPour>> {
    let pour = (0..offers, 0.0..40.0_f64, prop::bool::weighted(0.3));
    prop::collection::vec(pour, 1..4).prop_map(|pours| {
        let last = pours.len() - 1;
        let pour = |(place, (fuel, volume, to_click))| PlannedPour {
            fuel,
            volume: litres(volume),
            to_click: to_click && place == last,
        };
        pours.into_iter().enumerate().map(pour).collect()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// The worst case holds even where the planned pours do not all fit, and
    /// inside the box, not only at its corners.
    #[test]
    fn the_worst_case_holds_when_pours_overflow(
        (problem, pours) in any_problem()
            .prop_flat_map(|problem| { let n = problem.offers.len(); (Just(problem), any_pours(n)) }),
        points in prop::collection::vec(random_point(6), 400),
    ) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let worst = problem.worst(&pours).share;
        let order = Order { pours, worst: problem.worst(&[]), from_level: (Share::ZERO, Share::ZERO) };
        for point in points {
            let Some(share) = share_at(&problem, &order, &point) else { continue };
            prop_assert!(share >= worst.low().fraction() - 1e-9, "{share} below {worst:?}");
            prop_assert!(share <= worst.high().fraction() + 1e-9, "{share} above {worst:?}");
        }
    }

    /// So does the worst octane number: the mean by moles, reckoned from scratch
    /// at points of the box.
    #[test]
    fn the_worst_octane_holds_over_the_box(
        problem in any_problem(),
        numbers in prop::collection::vec(80.0..110.0_f64, 6),
        points in prop::collection::vec(random_point(6), 400),
    ) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let Solution::Plan(plan) = problem.solve() else { return Ok(()) };
        let order = problem.fixed_order(&plan);
        if !order.worst.fits {
            return Ok(());
        }
        let of_offers: Vec<_> = numbers[1..=problem.offers.len()].iter().copied().map(Some).collect();
        let Some(worst) = problem.worst_octane(&order.pours, Some(numbers[0]), &of_offers) else {
            return Ok(());
        };
        // Moles per litre of the bases, by the densities and molar masses of
        // tests/published: 745 / 100 and 793.7 / 46.069.
        let moles = |share: f64| 7.45 * (1.0 - share) + 793.7 / 46.069 * share;
        let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
        for point in points {
            let level = problem.tank.level;
            let (low, high) = (level.low().get::<liter>(), level.high().get::<liter>());
            let in_tank = low + point[0] * (high - low);
            let mut total = moles(between(&problem.tank.share, point[1])) * in_tank;
            let mut octane = total * numbers[0];
            for (fuel, offer) in problem.offers.iter().enumerate() {
                let n = moles(between(&offer.share, point[fuel + 2]))
                    * plan.volumes[fuel].get::<liter>();
                total += n;
                octane += n * numbers[fuel + 1];
            }
            if total > 0.0 {
                least = least.min(octane / total);
                most = most.max(octane / total);
            }
        }
        if least.is_finite() {
            prop_assert!(least >= worst.low() - 1e-3, "{least} below {worst:?}");
            prop_assert!(most <= worst.high() + 1e-3, "{most} above {worst:?}");
        }
    }
}
