//! The aim is whatever suits a calibration, and then a promise can be made.

use crate::app::{self, Calibration, calibrate, pick, quarter_full, to_car, to_fill};
use crate::hand_arithmetic;
use crate::harness::browse;

const PROMISE: &str = "as long as your ranges are right";
const NO_PROMISE: &str = "No plan stays inside";

/// The doses of E85 that stay inside a window whatever the truth is, poured first
/// and topped up with petrol: from the least to the most. Poured last, E85 varies
/// with the level as well, so no dose is better then.
fn safe_doses(low: f64, high: f64) -> (f64, f64) {
    let (weakest, strongest) = hand_arithmetic::worst(60.0, 1.0, (70.0, 85.0), 10.0);
    // The share above that of the petrol grows in proportion to the dose.
    ((low - 10.0) / (weakest - 10.0), (high - 10.0) / (strongest - 10.0))
}

#[test]
fn a_wide_window_is_kept_for_sure_and_a_narrow_one_is_not() {
    let (least, most) = safe_doses(15.0, 40.0);
    assert!(least < most, "E15 to E40 can be kept: {least} to {most} L");
    let (narrow_least, narrow_most) = safe_doses(29.0, 31.0);
    assert!(narrow_least > narrow_most, "E29 to E31 cannot: {narrow_least}, {narrow_most} L");

    browse(async |page| {
        quarter_full(page).await;
        assert_eq!(app::promise(page).await, "", "one share alone cannot be promised");
        to_car(page).await;
        let wide = Calibration { name: "Wide", weakest: "E15", strongest: "E40", ron: "95" };
        let narrow = Calibration { name: "Narrow", weakest: "E29", strongest: "E31", ron: "95" };
        calibrate(page, 1, wide).await;
        calibrate(page, 2, narrow).await;
        to_fill(page).await;

        pick(page, "Wide").await;
        page.sees(PROMISE).await;
        let promise = app::promise(page).await;
        assert!(promise.contains("inside E15 to E40"), "{promise}");
        assert!(!promise.contains(NO_PROMISE), "{promise}");
        let steps = app::steps(page).await;
        let dose = steps[0].strip_prefix("E85: ").map_or(0.0, app::number);
        // Shown in tenths.
        let shown = (least - 0.05)..=(most + 0.05);
        assert!(shown.contains(&dose), "{dose} L is not from {least} to {most} L");
        let verdict = app::verdict(page, "Wide").await;
        assert!(verdict.starts_with("Wide: usable"), "{verdict}");

        pick(page, "Narrow").await;
        page.sees(NO_PROMISE).await;
        let promise = app::promise(page).await;
        assert!(promise.contains("inside E29 to E31"), "{promise}");
        let verdict = app::verdict(page, "Narrow").await;
        assert!(verdict.starts_with("Narrow: confirm first"), "{verdict}");
        assert_eq!(app::steps(page).await.len(), 2);

        // A calibration that goes away is missed where it was chosen.
        to_car(page).await;
        page.within("group", "Narrow").click("button", app::REMOVE).await;
        to_fill(page).await;
        page.sees("This calibration is incomplete or gone").await;
        pick(page, app::AIM_BLEND).await;
        page.sees("Makes E30").await;
    });
}

#[test]
fn a_promise_holds_for_the_litres_that_are_shown() {
    let (least, most) = safe_doses(15.0, 40.0);

    browse(async |page| {
        quarter_full(page).await;
        to_car(page).await;
        let wide = Calibration { name: "Wide", weakest: "E15", strongest: "E40", ron: "95" };
        calibrate(page, 1, wide).await;
        to_fill(page).await;
        pick(page, "Wide").await;
        page.sees(PROMISE).await;
        let dose = app::steps(page).await[0].strip_prefix("E85: ").map_or(0.0, app::number);
        assert!((least..=most).contains(&dose), "{dose} L is not from {least} to {most} L");

        app::as_planned(page, 0).await;
        app::done(page, 1).await;
        let promise = app::promise(page).await;
        assert!(promise.contains(PROMISE) && !promise.contains(NO_PROMISE), "{promise}");
    });
}
