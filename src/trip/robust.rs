//! Where a plan fails although it holds at every corner.

use super::checked::CheckedRoute;
use super::model::Model;
use super::plan::PlanWanted;
use super::points::Point;
use super::route::Bought;
use super::simulate::TOLERANCE;
use super::track::{Track, demands};

/// The point of the box at which a plan misses its rules the most, under the choice
/// of calibrations that misses them the least there; none where it holds.
pub(super) fn worst_point(route: &CheckedRoute, bought: &Bought) -> Option<Point> {
    if route.simulate(bought).possible_breaches.is_empty() {
        return None;
    }
    let (points, _) = route.tried(bought);
    let mut model = Model::new(route, &PlanWanted::default());
    model.scenarios.clear();
    for point in &points {
        model.add_scenario(route, point);
    }
    let litres = model.litres(bought);
    let tracks: Vec<Track> =
        model.scenarios.iter().map(|truth| Track::run(&model, truth, &litres)).collect();
    // By leg the choice that is best over the whole box.
    let missing = |leg: usize, choice: usize, track: &Track| {
        let option = &model.legs[leg].options[choice];
        let least = demands(&model, leg, option)
            .iter()
            .map(|demand| demand.surplus(&track.legs[leg]))
            .fold(f64::INFINITY, f64::min);
        (-least).max(0.0)
    };
    let chosen: Vec<usize> = (0..model.legs.len())
        .map(|leg| {
            let worst = |choice: usize| {
                tracks.iter().map(|track| missing(leg, choice, track)).fold(0.0, f64::max)
            };
            (0..model.legs[leg].options.len())
                .min_by(|&a, &b| worst(a).total_cmp(&worst(b)))
                .unwrap_or_default()
        })
        .collect();
    let total = |track: &Track| -> f64 {
        chosen.iter().enumerate().map(|(leg, &choice)| missing(leg, choice, track)).sum()
    };
    points
        .into_iter()
        .zip(&tracks)
        .map(|(point, track)| (point, total(track)))
        .filter(|(_, missing)| *missing > TOLERANCE / 2.0)
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(point, _)| point)
}
