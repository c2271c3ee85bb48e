//! Advice that is followed: what a plan promises is what the log then says.
//!
//! Fills as people type them, poured as planned and recorded. The log replays them by
//! another way than the plan was made (a bank of filters against a linear programme), so
//! that the two agree is no matter of course.

use fillwright::answers::fill::{FillAnswer, interpret};
use fillwright::answers::tank::{History, LogReading};
use fillwright::document::{Document, Id, Moment};
use fillwright::quantity::Share;
use fillwright::quantity::notation::{DecimalMark, Entry, Printer};
use proptest::prelude::*;
use uom::si::volume::liter;

use crate::fills::{Typed, fill};

/// What the plan and the log may differ by, in points of ethanol.
const HALF_A_POINT: f64 = 0.5;

fn printer(document: &Document) -> Printer {
    document.settings.printer(DecimalMark::Point)
}

fn history(document: &Document) -> History {
    History::of(&LogReading::of(&document.here, &printer(document)))
}

fn answer(document: &Document) -> Option<FillAnswer> {
    let history = history(document);
    let reading = interpret(document, history.estimator.as_ref(), &printer(document));
    reading.asked.map(FillAnswer::of)
}

/// Whether a plan lies so close to the end of what counts as a hit that what plan and log
/// may differ by decides: at the edge of a window, or half a point from a single share.
fn is_at_the_end(plan: &FillAnswer) -> bool {
    let aim = plan.asked.problem.aim;
    let share = plan.plan.share.map_or(0.0, Share::percent);
    let (low, high) = (aim.low().percent(), aim.high().percent());
    if low < high {
        return [low, high].into_iter().any(|end| (share - end).abs() < HALF_A_POINT);
    }
    ((share - low).abs() - HALF_A_POINT).abs() < 0.1
}

proptest! {
    // One fill in five has nothing to pour, or cannot be worked out.
    #![proptest_config(ProptestConfig::with_cases(26_000))]

    /// What was poured as planned and recorded is in the tank, within half a point, and
    /// nothing about it is doubted or regretted.
    #[test]
    fn a_fill_that_went_to_plan_is_what_the_log_then_says(Typed(mut document) in fill()) {
        let Some(plan) = answer(&document) else { return Ok(()) };
        let Some(planned) = plan.blend.as_ref().map(|it| it.share.expected()) else {
            return Ok(());
        };
        let printer = printer(&document);
        document.here.pour_as_planned(&plan, &printer);
        let time = Moment::new("2026-05-03T17:40", 120).unwrap();
        if !document.here.record(Id::new("fill").unwrap(), time) {
            return Ok(());
        }
        let history = history(&document);
        let replayed = &history.replays[0];
        prop_assert_eq!(&replayed.unused, &None);
        prop_assert!(replayed.doubts.is_empty(), "{:?}", replayed.doubts);
        let estimate = history.estimate().unwrap();
        let off = estimate.share.expected().percent() - planned.percent();
        prop_assert!(off.abs() <= HALF_A_POINT, "planned {planned:?}, now {:?}", estimate.share);
        let level = estimate.level.expected().get::<liter>();
        let meant = plan.plan.level.get::<liter>();
        prop_assert!((level - meant).abs() <= 1.0, "planned {meant} L, now {level} L");

        // The next look at the pump finds fault only where the plan did.
        if plan.misses().is_none() && !is_at_the_end(&plan) {
            let reading = interpret(&document, history.estimator.as_ref(), &printer);
            let wrong: Vec<_> = reading.field_errors.iter().filter(|it| !it.is_missing).collect();
            prop_assert!(wrong.is_empty(), "{wrong:?}");
            let next = FillAnswer::of(reading.asked.unwrap());
            prop_assert!(next.asked.doubt.is_none());
            prop_assert!(next.misses().is_none(), "{:?} {:?}", plan.plan, next.infeasible);
        }
    }

    /// A step that was confirmed and taken back leaves the fill as it was, and no tick
    /// where nothing is in.
    #[test]
    fn a_step_taken_back_leaves_nothing_behind(Typed(mut document) in fill()) {
        let before = document.clone();
        let Some(plan) = answer(&document) else { return Ok(()) };
        let printer = printer(&document);
        document.here.pour_as_planned(&plan, &printer);
        let fill = &mut document.here.fill;
        for id in plan.steps.iter().map(|step| plan.asked.fuels[step.fuel].id) {
            fill.note_poured(id, Entry::default());
        }
        prop_assert!(!fill.clicked);
        prop_assert!(fill.offers.iter().all(|it| it.poured.is_blank()));
        prop_assert!(answer(&document) == answer(&before));
    }
}
