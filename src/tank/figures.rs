//! What the estimate computes with, as a list to show.

use super::figure::Figure;
use super::{
    BOUNDARY_ERROR, CLICK_ERROR_L, CONTRACTION, COUNTING_ERROR, DISPENSER_ERROR, DOUBT_GROWS,
    GAUGE_ERROR, PETROL_DOUBT, POSSIBLE_IN_PETROL, POSSIBLE_IN_STRONG, RANGE_ERROR, RANGE_STEP_L,
    SENSOR_ERROR, SENSOR_FAULT_HZ, SENSOR_ZERO_HZ, STRONG_DOUBT, SURE_DOUBT, USUAL_RESERVE,
    estimate,
};

/// Every figure that the tank's readings and its estimate rest on.
pub fn figures() -> Vec<Figure> {
    let mut all = vec![
        Figure::one("error of a gauge, of the tank", "", GAUGE_ERROR),
        Figure::one("error of a trip computer, of what it counted", "", COUNTING_ERROR),
        Figure::one("how far two clicks of the nozzle lie apart", "L", CLICK_ERROR_L),
        Figure::one("largest error of a dispenser, of what it shows", "", DISPENSER_ERROR),
        Figure::one("frequency of a flex-fuel sensor without ethanol", "Hz", SENSOR_ZERO_HZ),
        Figure::ends("frequencies beyond which it reports a fault", "Hz", SENSOR_FAULT_HZ),
        Figure::one("standard error of its reading, as a share", "", SENSOR_ERROR),
        Figure::ends(
            "what water and fuel lose in a tube test by contraction, and how far that may be off",
            "",
            CONTRACTION,
        ),
        Figure::one("standard error of a tube test, as a share", "", BOUNDARY_ERROR),
        Figure::one("error of a display of the distance left, of its fuel", "", RANGE_ERROR),
        Figure::one("what the steps of such a display leave open", "L", RANGE_STEP_L),
        Figure::one("usual reserve where none is given, of the tank", "", USUAL_RESERVE),
        Figure::one("doubt about a share that is sure, as a share", "", SURE_DOUBT),
        Figure::one("usual doubt about a petrol's share, as a share", "", PETROL_DOUBT),
        Figure::one("usual doubt about a strong fuel's share, as a share", "", STRONG_DOUBT),
        Figure::ends("shares between which the usual doubt grows evenly", "", DOUBT_GROWS),
        Figure::ends("shares that are possible in petrol", "", POSSIBLE_IN_PETROL),
        Figure::ends("shares that are possible in a strong fuel", "", POSSIBLE_IN_STRONG),
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
        assert!(figures().iter().all(|it| !it.values.is_empty() && !it.source.citation.is_empty()));
    }
}
