//! The line at the foot of the page never passes over that a plan misses its aim.

use fillwright::answers::fill::{FillAnswer, interpret};
use fillwright::quantity::notation::DecimalMark;
use fillwright::words::fill::in_short;
use proptest::prelude::*;

use crate::fills::{Typed, fill};

proptest! {
    #![proptest_config(ProptestConfig::with_cases(5_000))]

    /// The line at the foot of a phone is all that many read. Whatever is typed, a plan
    /// whose blend is not the one aimed at says so in its first word. The miss is worked
    /// out here from what was typed and from the litres that the line names.
    #[test]
    fn the_foot_never_names_a_plan_that_misses_the_aim_without_saying_so(
        Typed(document) in fill(),
    ) {
        let printer = document.settings.printer(DecimalMark::Point);
        let Some(asked) = interpret(&document, None, &printer).asked else { return Ok(()) };
        let answer = FillAnswer::of(asked);
        let line = in_short(&answer, &printer);
        let number = |text: &str| -> f64 {
            text.trim_start_matches('E').trim_end_matches(['%', 'L', ' ']).parse().unwrap()
        };
        let form = &document.here.fill;
        let level = number(&form.contents.level.level.text);
        let (mut volume, mut ethanol) = (level, level * number(&form.contents.share));
        for (place, offer) in form.offers.iter().enumerate() {
            // Fuels may bear the same name: the plan tells which of them it is.
            let litres: f64 = answer
                .steps
                .iter()
                .filter(|step| step.fuel == place)
                .map(|step| number(&printer.volume_number(step.volume)))
                .sum();
            prop_assert!(litres == 0.0 || line.contains(&format!("{litres:.1}")), "{line}");
            volume += litres;
            ethanol += litres * number(&offer.share);
        }
        let share = ethanol / volume;
        let calibration = document.here.car.calibrations.first();
        let (low, high) = match calibration {
            Some(it) => (number(&it.low), number(&it.high)),
            None => (number(&form.aim_share), number(&form.aim_share)),
        };
        // Half a point, and what the tenths of what is shown leave.
        let slack = 0.5 + 100.0 * 0.05 * 3.0 / volume;
        let misses = share < low - slack || share > high + slack;
        prop_assert!(!misses || line.starts_with("Misses "), "{line}: {share} %");
        prop_assert!(misses || !line.starts_with("Misses ") || share < low || share > high);
    }
}
