//! Which question to ask next about a region that is not settled.

use super::model::Model;
use super::objective::{Measure, Target};
use super::region::{Range, Region, Use};
use super::relax::RelaxedPoint;

/// A split nearer to an edge than this part of the range gains little.
const EDGE: f64 = 0.2;
/// What a product counts on the last leg, of what it counts on the first: an error is
/// carried on to every leg after it.
const ON_THE_LAST: f64 = 0.5;
/// What the relaxation may miss, in litres, before it counts as exact.
const EXACT: f64 = 1e-7;

/// The parts of a region, none of its plans left out; none where the relaxed point
/// is as good as a plan. First the calibration of a leg, then whether a stop is
/// used, then the box of the worst product.
pub(super) fn split(
    model: &Model,
    target: &Target,
    region: &Region,
    point: &RelaxedPoint,
) -> Option<Vec<Region>> {
    by_choice(model, region, point)
        .or_else(|| by_use(model, target, region, point))
        .or_else(|| by_box(model, region, point))
}

/// The choice for each leg that a relaxed point comes nearest to.
pub(super) fn nearest_choices(model: &Model, region: &Region, point: &RelaxedPoint) -> Vec<usize> {
    (0..model.legs.len())
        .map(|leg| {
            let miss = |choice: usize| misses(model, leg, choice, point);
            let nearest =
                region.choices[leg].iter().copied().min_by(|&a, &b| miss(a).total_cmp(&miss(b)));
            nearest.unwrap_or_default()
        })
        .collect()
}

/// How far the relaxed point is from a choice's window and octane number, in the
/// worst scenario.
fn misses(model: &Model, leg: usize, choice: usize, point: &RelaxedPoint) -> f64 {
    let option = &model.legs[leg].options[choice];
    point
        .states
        .iter()
        .map(|states| {
            let [_, u, _, w, _] = states[leg];
            let octane = option.octane.map_or(0.0, |octane| model.least_surplus(octane, u) - w);
            (option.u.0 - u).max(u - option.u.1).max(octane * 0.1).max(0.0)
        })
        .fold(0.0, f64::max)
}

fn by_choice(model: &Model, region: &Region, point: &RelaxedPoint) -> Option<Vec<Region>> {
    let least = |leg: usize| {
        let choices = region.choices[leg].iter();
        choices.map(|&choice| misses(model, leg, choice, point)).fold(f64::INFINITY, f64::min)
    };
    let open = (0..model.legs.len()).filter(|&leg| region.choices[leg].len() > 1);
    let (worst, _) = open
        .map(|leg| (leg, least(leg)))
        .filter(|(_, miss)| *miss > 1e-6)
        .max_by(|a, b| a.1.total_cmp(&b.1))?;
    let part = |&choice: &usize| {
        let mut part = region.clone();
        part.choices[worst] = vec![choice];
        part
    };
    Some(region.choices[worst].iter().map(part).collect())
}

fn by_use(
    model: &Model,
    target: &Target,
    region: &Region,
    point: &RelaxedPoint,
) -> Option<Vec<Region>> {
    if !target.counts_stops(model) {
        return None;
    }
    let unpaid = |stop: usize| {
        let weight = match target.measure {
            Measure::Stops => 1.0,
            Measure::Cost | Measure::LessEthanol => {
                model.fees[stop] + if target.most_stops.is_some() { 1.0 } else { 0.0 }
            }
        };
        let is_used = model.at_stop(stop).any(|k| point.litres[k] > EXACT);
        if is_used { weight * (1.0 - point.uses[stop]) } else { 0.0 }
    };
    let (stop, _) = (0..model.legs.len())
        .filter(|&stop| region.use_of[stop] == Use::Open)
        .map(|stop| (stop, unpaid(stop)))
        .filter(|(_, unpaid)| *unpaid > 1e-6)
        .max_by(|a, b| a.1.total_cmp(&b.1))?;
    let part = |decided: Use| {
        let mut part = region.clone();
        part.use_of[stop] = decided;
        part
    };
    Some(vec![part(Use::Never), part(Use::Always)])
}

fn by_box(model: &Model, region: &Region, point: &RelaxedPoint) -> Option<Vec<Region>> {
    let mut worst: Option<(f64, usize, usize, bool)> = None;
    for (scenario, states) in point.states.iter().enumerate() {
        let fall = (1.0 - ON_THE_LAST) / f64::from(u32::try_from(states.len()).unwrap_or(u32::MAX));
        let mut weight = 1.0;
        for (leg, [h, u, e, w, s]) in states.iter().enumerate() {
            // An octane number of a litre counts as a tenth of a litre of ethanol.
            for (error, is_octane) in [(e - h * u, false), ((s - h * w) * 0.1, true)] {
                let error = error.abs();
                let counts = error > EXACT && (!is_octane || model.has_octane);
                if counts && worst.is_none_or(|(most, ..)| error * weight > most) {
                    worst = Some((error * weight, scenario, leg, is_octane));
                }
            }
            weight -= fall;
        }
    }
    let (_, scenario, leg, is_octane) = worst?;
    let state = region.states[scenario][leg];
    let [h, u, _, w, _] = point.states[scenario][leg];
    let whole = Region::whole(model).states[scenario][leg];
    let (ratio, all, at) = if is_octane { (state.w, whole.w, w) } else { (state.u, whole.u, u) };
    let relative = |range: Range, all: Range| range.width() / all.width().max(f64::MIN_POSITIVE);
    let by_energy = relative(state.h, whole.h) > relative(ratio, all);
    let (range, at) = if by_energy { (state.h, h) } else { (ratio, at) };
    let at = at.clamp(range.low + EDGE * range.width(), range.high - EDGE * range.width());
    let part = |range: Range| {
        let mut part = region.clone();
        let state = &mut part.states[scenario][leg];
        match (by_energy, is_octane) {
            (true, _) => state.h = range,
            (false, false) => state.u = range,
            (false, true) => state.w = range,
        }
        part
    };
    Some(vec![part(Range::new(range.low, at)), part(Range::new(at, range.high))])
}
