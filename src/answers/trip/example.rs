//! The route of the example, asked and planned: what the tests of this folder share.

use uom::si::volume::liter;

use crate::answers::tank::{History, LogReading};
use crate::answers::trip::{TripAnswer, TripAsked, TripReading};
use crate::calibration::Verdict;
use crate::document::Document;
use crate::fuel::grades;
use crate::quantity::Volume;
use crate::quantity::notation::DecimalMark;
use crate::trip::{Done, Planner, TripRule};

/// What the route of the example asks.
pub(crate) fn asked() -> TripAsked {
    let demo = Document::demo();
    let printer = demo.settings.printer(DecimalMark::Point);
    let estimate = History::of(&LogReading::of(&demo.here, &printer)).estimate();
    let reading = TripReading::of(&demo, estimate.as_ref(), &printer);
    assert_eq!(reading.field_errors, []);
    reading.asked.unwrap()
}

/// The tank filled to the brim at every stop with its cheapest petrol.
pub(crate) fn on_petrol(asked: TripAsked) -> TripAnswer {
    let mut bought = asked.route.nothing_bought();
    for stop in 0..bought.len() {
        let pumps = &asked.route.stops[stop].pumps;
        let petrol = |pump: &usize| pumps[*pump].share.expected().percent() < 11.0;
        let litre = |pump: usize| pumps[pump].price.of(Volume::new::<liter>(1.0)).amount();
        let cheapest =
            (0..pumps.len()).filter(petrol).min_by(|a, b| litre(*a).total_cmp(&litre(*b))).unwrap();
        // What was bought so far leaves this room; it is bought as a whole litre less.
        let course = asked.route.simulate(&bought);
        let arrival = if stop == 0 {
            asked.route.tank.level.expected()
        } else {
            course.legs[stop - 1].arrival.expected()
        };
        let room = (asked.route.tank.capacity - arrival).get::<liter>().floor();
        bought[stop][cheapest] = Volume::new::<liter>(room);
    }
    TripAnswer::of(asked, bought)
}

fn planned(asked: TripAsked) -> TripAnswer {
    let mut planner = Planner::new(asked.route.clone(), asked.wish);
    let progress = loop {
        let progress = planner.step();
        if progress.done != Done::Working {
            break progress;
        }
    };
    assert_eq!(progress.done, Done::Certified);
    TripAnswer::of(asked, progress.rounded.or(progress.plan).unwrap().bought)
}

/// The verdict on the calibration to keep, way by way.
fn verdicts(plan: &TripAnswer) -> Vec<Verdict> {
    let legs = plan.asked.route.legs.iter().zip(&plan.course.legs);
    legs.map(|(leg, driven)| driven.verdicts[leg.calibrations[0]].verdict).collect()
}

#[test]
fn on_petrol_the_mid_blend_is_lost_and_with_the_plan_it_is_kept() {
    let kept = planned(asked());
    assert!(kept.course.breaches.is_empty(), "{:?}", kept.course.breaches);
    assert!(!verdicts(&kept).contains(&Verdict::DoNotSelect), "{:?}", verdicts(&kept));

    let lost = on_petrol(asked());
    assert!(verdicts(&lost).contains(&Verdict::DoNotSelect), "{:?}", verdicts(&lost));
    let rules: Vec<TripRule> = lost.course.breaches.iter().map(|it| it.rule).collect();
    assert!(!rules.is_empty(), "the car gets there, but not on that calibration");
    assert!(
        rules
            .iter()
            .all(|it| matches!(it, TripRule::Calibration | TripRule::Window | TripRule::Octane)),
        "{rules:?}"
    );
    assert!(!lost.turns_from(&kept).is_empty());
}

#[test]
fn who_only_looks_at_the_price_loses_the_mid_blend() {
    let mut asked = asked();
    let mut route = asked.route.clone().into_inner();
    let wanted: Vec<Vec<usize>> =
        route.legs.iter_mut().map(|leg| std::mem::take(&mut leg.calibrations)).collect();
    asked.route = route.checked().unwrap();
    let cheapest = planned(asked);
    let verdict =
        |(leg, wanted): (usize, &Vec<usize>)| cheapest.course.legs[leg].verdicts[wanted[0]].verdict;
    let verdicts: Vec<Verdict> = wanted.iter().enumerate().map(verdict).collect();
    assert!(verdicts.contains(&Verdict::DoNotSelect), "{verdicts:?}");
}

#[test]
fn every_fuel_of_the_route_is_of_the_catalogue() {
    for fuel in Document::demo().here.route.stops.iter().flat_map(|it| &it.fuels) {
        assert!(grades::find(fuel.grade.as_ref().unwrap()).is_some(), "{fuel:?}");
    }
}
