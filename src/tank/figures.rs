//! What the estimate computes with, as a list to show.

use super::figure::Figure;
use super::{
    BOUNDARY_ERROR, CLICK_ERROR_L, CONTRACTION, COUNTING_ERROR, DISPENSER_ERROR, DOUBT_GROWS,
    GAUGE_ERROR, PETROL_DOUBT, POSSIBLE_IN_PETROL, POSSIBLE_IN_STRONG, RANGE_ERROR, RANGE_STEP_L,
    SENSOR_ERROR, SENSOR_FAULT_HZ, SENSOR_ZERO_HZ, STRONG_DOUBT, SURE_DOUBT, USUAL_RESERVE,
    estimate,
};
use crate::message::keys::practice as words;

/// Every figure that the tank's readings and its estimate rest on.
pub fn figures() -> Vec<Figure> {
    let mut all = vec![
        Figure::one(words::GAUGE_ERROR, "", GAUGE_ERROR),
        Figure::one(words::COUNTING_ERROR, "", COUNTING_ERROR),
        Figure::one(words::CLICK_ERROR_L, "L", CLICK_ERROR_L),
        Figure::one(words::DISPENSER_ERROR, "", DISPENSER_ERROR),
        Figure::one(words::SENSOR_ZERO_HZ, "Hz", SENSOR_ZERO_HZ),
        Figure::ends(words::SENSOR_FAULT_HZ, "Hz", SENSOR_FAULT_HZ),
        Figure::one(words::SENSOR_ERROR, "", SENSOR_ERROR),
        Figure::ends(words::CONTRACTION, "", CONTRACTION),
        Figure::one(words::BOUNDARY_ERROR, "", BOUNDARY_ERROR),
        Figure::one(words::RANGE_ERROR, "", RANGE_ERROR),
        Figure::one(words::RANGE_STEP_L, "L", RANGE_STEP_L),
        Figure::one(words::USUAL_RESERVE, "", USUAL_RESERVE),
        Figure::one(words::SURE_DOUBT, "", SURE_DOUBT),
        Figure::one(words::PETROL_DOUBT, "", PETROL_DOUBT),
        Figure::one(words::STRONG_DOUBT, "", STRONG_DOUBT),
        Figure::ends(words::DOUBT_GROWS, "", DOUBT_GROWS),
        Figure::ends(words::POSSIBLE_IN_PETROL, "", POSSIBLE_IN_PETROL),
        Figure::ends(words::POSSIBLE_IN_STRONG, "", POSSIBLE_IN_STRONG),
    ];
    all.extend(estimate::figures());
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn the_list_holds_every_figure() {
        let files = [
            include_str!("mod.rs"),
            include_str!("range_display.rs"),
            include_str!("sensor.rs"),
            include_str!("tube_test.rs"),
            include_str!("usual_doubt.rs"),
            include_str!("estimate/prior.rs"),
            include_str!("estimate/envelope.rs"),
            include_str!("estimate/unlogged.rs"),
            include_str!("estimate/reach.rs"),
        ];
        let is_figure = |line: &&str| {
            line.contains("const ") && line.contains(": Sourced<") && !line.contains("fn ")
        };
        let written = files.iter().flat_map(|file| file.lines()).filter(is_figure).count();
        let names: HashSet<_> = figures().iter().map(|figure| figure.name).collect();
        assert_eq!(names.len(), figures().len());
        // The spreads of strong fuels are listed apart from their probabilities.
        assert_eq!(figures().len(), written + 1);
        assert!(figures().iter().all(|it| !it.values.is_empty()));
    }
}
