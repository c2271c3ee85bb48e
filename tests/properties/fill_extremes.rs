//! The worst case of a fill against all that its box holds: the level, every share, and
//! what the pump's meter makes of each dose for itself. The litres are poured here from
//! scratch.

use fillwright::fill::{Aim, PlannedPour, Problem};
use fillwright::quantity::Share;
use proptest::prelude::*;
use uom::si::volume::liter;

use super::fill::{any_pours, any_problem, between, litres, share};

/// Moles per litre, by the densities and molar masses of tests/published.
fn moles(share: f64) -> f64 {
    745.0 / 100.0 * (1.0 - share) + 793.7 / 46.069 * share
}

/// What is in the tank, in order: what was there, what is in already, the doses.
#[derive(Clone, Copy, Debug)]
struct Part {
    /// None for what was there.
    fuel: Option<usize>,
    /// The ends of its litres.
    low: f64,
    high: f64,
    to_click: bool,
}

fn parts(problem: &Problem, pours: &[PlannedPour]) -> Vec<Part> {
    let level = problem.tank.level;
    let present = Part {
        fuel: None,
        low: level.low().get::<liter>(),
        high: level.high().get::<liter>(),
        to_click: false,
    };
    let metered = |fuel: usize, litres: f64, to_click: bool| Part {
        fuel: Some(fuel),
        low: litres * (1.0 - problem.meter_error),
        high: litres * (1.0 + problem.meter_error),
        to_click,
    };
    let already = problem.offers.iter().enumerate();
    let already = already.map(|(fuel, offer)| metered(fuel, offer.poured.get::<liter>(), false));
    let pours = pours.iter().map(|it| metered(it.fuel, it.volume.get::<liter>(), it.to_click));
    std::iter::once(present).chain(already).chain(pours).collect()
}

/// What really goes in of each part; none where more would be in already than fits.
fn poured(problem: &Problem, parts: &[Part], wanted: &[f64]) -> Option<Vec<f64>> {
    let mut free = problem.tank.capacity.get::<liter>();
    let in_already = 1 + problem.offers.len();
    if wanted[..in_already].iter().sum::<f64>() > free + 1e-9 {
        return None;
    }
    let pour = |(part, wanted): (&Part, &f64)| {
        let x = if part.to_click { free } else { wanted.min(free) };
        free -= x;
        x
    };
    Some(parts.iter().zip(wanted).map(pour).collect())
}

/// All choices of one of two ends for each of so many.
fn corners(of: usize) -> impl Iterator<Item = Vec<bool>> {
    (0..1_u32 << of).map(move |bits| (0..of).map(|at| bits >> at & 1 == 1).collect())
}

/// The corners of level and doses, and the points on the edges between them at which a
/// part just fits.
fn vertices(problem: &Problem, parts: &[Part]) -> Vec<Vec<f64>> {
    let capacity = problem.tank.capacity.get::<liter>();
    // What has one value only has no ends.
    let open: Vec<usize> = (0..parts.len()).filter(|&at| parts[at].low < parts[at].high).collect();
    let mut found = Vec::new();
    for ends in corners(open.len()) {
        let mut wanted: Vec<f64> = parts.iter().map(|part| part.low).collect();
        for (&at, high) in open.iter().zip(ends) {
            wanted[at] = if high { parts[at].high } else { parts[at].low };
        }
        for &moved in &open {
            for last in moved..parts.len() {
                let others: f64 = (0..=last).filter(|&at| at != moved).map(|at| wanted[at]).sum();
                let fits = capacity - others;
                if parts[moved].low < fits && fits < parts[moved].high {
                    let mut vertex = wanted.clone();
                    vertex[moved] = fits;
                    found.push(vertex);
                }
            }
        }
        found.push(wanted);
    }
    found
}

/// The share of what was poured, each part's share so far within its band.
fn share_of(problem: &Problem, parts: &[Part], litres: &[f64], at: &[f64]) -> Option<f64> {
    let (mut total, mut ethanol) = (0.0, 0.0);
    for (part, x) in parts.iter().zip(litres) {
        // The same fuel is equally strong however often it is poured.
        let (band, at) = match part.fuel {
            None => (&problem.tank.share, at[0]),
            Some(fuel) => (&problem.offers[fuel].share, at[fuel + 1]),
        };
        total += x;
        ethanol += x * between(band, at);
    }
    (total > 1e-9).then(|| ethanol / total)
}

prop_compose! {
    /// A fill with a meter that errs, some of it poured already, and pours that may
    /// overflow or end with the click.
    fn any_box()(
        (problem, pours) in any_problem()
            .prop_flat_map(|problem| { let n = problem.offers.len(); (Just(problem), any_pours(n)) }),
        meter_error in prop::sample::select(vec![0.0, 0.005, 0.02]),
        already in prop::collection::vec(prop::option::weighted(0.15, 0.5..6.0_f64), 4),
        to_click in any::<bool>(),
    ) -> (Problem, Vec<PlannedPour>) {
        let mut problem = Problem { meter_error, ..problem };
        let mut pours = pours;
        for (offer, already) in problem.offers.iter_mut().zip(already) {
            offer.poured = litres(already.unwrap_or(0.0));
        }
        if let Some(last) = pours.last_mut() {
            last.to_click = to_click;
        }
        (problem, pours)
    }
}

/// Points of the box: of each coordinate half lie at an end.
fn any_points(coordinates: usize, points: usize) -> impl Strategy<Value = Vec<Vec<f64>>> {
    let coordinate = prop_oneof![0.0..=1.0_f64, Just(0.0), Just(1.0)];
    prop::collection::vec(prop::collection::vec(coordinate, coordinates), points)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    /// No point of the box ends outside the extremes, and they are reached.
    #[test]
    fn the_worst_share_is_that_of_the_box(
        (problem, pours) in any_box(),
        points in any_points(13, 60),
    ) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let worst = problem.worst(&pours).share;
        let (low, high) = (worst.low().fraction(), worst.high().fraction());
        let parts = parts(&problem, &pours);
        for point in points {
            let (litres, shares) = point.split_at(8);
            let wanted: Vec<f64> =
                parts.iter().zip(litres).map(|(it, at)| it.low + at * (it.high - it.low)).collect();
            let Some(litres) = poured(&problem, &parts, &wanted) else { continue };
            let Some(share) = share_of(&problem, &parts, &litres, shares) else { continue };
            prop_assert!(share >= low - 1e-9, "{share} below {worst:?}");
            prop_assert!(share <= high + 1e-9, "{share} above {worst:?}");
        }
        let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
        for wanted in vertices(&problem, &parts) {
            let Some(litres) = poured(&problem, &parts, &wanted) else { continue };
            let at = |end| share_of(&problem, &parts, &litres, &[end; 5]);
            least = least.min(at(0.0).unwrap_or(f64::INFINITY));
            most = most.max(at(1.0).unwrap_or(f64::NEG_INFINITY));
        }
        if least.is_finite() {
            prop_assert!((least - low).abs() < 1e-9, "{least} for {worst:?}");
            prop_assert!((most - high).abs() < 1e-9, "{most} for {worst:?}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    /// The same of the octane number, the mean by moles.
    #[test]
    fn the_worst_octane_is_that_of_the_box(
        (problem, pours) in any_box(),
        numbers in prop::collection::vec(80.0..110.0_f64, 5),
        points in any_points(13, 60),
    ) {
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let of_offers: Vec<_> = numbers[1..=problem.offers.len()].iter().copied().map(Some).collect();
        let worst = problem.worst_octane(&pours, Some(numbers[0]), &of_offers);
        let Some(worst) = worst else { return Ok(()) };
        let parts = parts(&problem, &pours);
        let octane = |litres: &[f64], moles_of: &dyn Fn(usize) -> f64| {
            let (mut all, mut octane) = (0.0, 0.0);
            for (at, (part, x)) in parts.iter().zip(litres).enumerate() {
                let n = x * moles_of(at);
                all += n;
                octane += n * numbers[part.fuel.map_or(0, |fuel| fuel + 1)];
            }
            (all > 1e-9).then(|| octane / all)
        };
        let band = |at: usize| match parts[at].fuel {
            None => problem.tank.share,
            Some(fuel) => problem.offers[fuel].share,
        };
        for point in points {
            let (litres, shares) = point.split_at(8);
            let wanted: Vec<f64> =
                parts.iter().zip(litres).map(|(it, at)| it.low + at * (it.high - it.low)).collect();
            let Some(litres) = poured(&problem, &parts, &wanted) else { continue };
            let moles_of = |at: usize| {
                moles(between(&band(at), shares[parts[at].fuel.map_or(0, |fuel| fuel + 1)]))
            };
            let Some(number) = octane(&litres, &moles_of) else { continue };
            prop_assert!(number >= worst.low() - 1e-7, "{number} below {worst:?}");
            prop_assert!(number <= worst.high() + 1e-7, "{number} above {worst:?}");
        }
        let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
        let fuels = problem.offers.len() + 1;
        for wanted in vertices(&problem, &parts) {
            let Some(litres) = poured(&problem, &parts, &wanted) else { continue };
            for ends in corners(fuels) {
                let moles_of = |at: usize| {
                    let high = ends[parts[at].fuel.map_or(0, |fuel| fuel + 1)];
                    moles(between(&band(at), f64::from(u8::from(high))))
                };
                let Some(number) = octane(&litres, &moles_of) else { continue };
                least = least.min(number);
                most = most.max(number);
            }
        }
        if least.is_finite() {
            prop_assert!((least - worst.low()).abs() < 1e-7, "{least} for {worst:?}");
            prop_assert!((most - worst.high()).abs() < 1e-7, "{most} for {worst:?}");
        }
    }

    /// A plan that is promised to be safe ends inside the aim, with the octane number that
    /// is asked for, wherever in the box the truth lies.
    #[test]
    fn a_safe_plan_has_its_worst_case_inside_the_aim(
        (problem, _) in any_box(),
        numbers in prop::collection::vec(90.0..110.0_f64, 5),
        ron_min in prop::option::weighted(0.5, 88.0..98.0_f64),
    ) {
        let mut problem = problem;
        problem.aim = Aim::window(
            share(problem.aim.low().fraction() - 0.1),
            share(problem.aim.high().fraction() + 0.1),
        ).unwrap();
        problem.ron_min = ron_min;
        problem.tank.ron = Some(numbers[0]);
        for (offer, number) in problem.offers.iter_mut().zip(&numbers[1..]) {
            offer.ron = Some(*number);
        }
        let Ok(problem) = problem.checked() else { return Ok(()) };
        let Ok(robust) = problem.robust() else { return Ok(()) };
        let worst = problem.worst(&robust.order.pours).share;
        let inside = |share: Share| problem.aim.admits(share);
        prop_assert!(inside(worst.low()) && inside(worst.high()), "{worst:?}");
        if let Some(least) = ron_min {
            let of_offers: Vec<_> = problem.offers.iter().map(|offer| offer.ron).collect();
            let octane = problem.worst_octane(&robust.order.pours, problem.tank.ron, &of_offers);
            if let Some(octane) = octane {
                prop_assert!(octane.low() >= least - 1e-6, "{octane:?} for {least}");
            }
        }
        // What tops up does not run out before the click.
        if let Some(fuel) = robust.order.top_up() {
            let parts = parts(&problem, &robust.order.pours);
            let limit = problem.offers[fuel].limit.map_or(f64::INFINITY, |it| it.get::<liter>());
            for wanted in vertices(&problem, &parts) {
                let Some(litres) = poured(&problem, &parts, &wanted) else { continue };
                let goes_in: f64 = parts
                    .iter()
                    .zip(&litres)
                    .filter(|(part, _)| part.fuel == Some(fuel))
                    .map(|(_, x)| x)
                    .sum();
                prop_assert!(goes_in <= limit + 1e-6, "{goes_in} L of {limit}");
            }
        }
    }
}
