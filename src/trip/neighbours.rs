//! Plans near a plan: one stop fewer, one stop moved, another calibration.

use super::descent::{Candidate, Found, used};
use super::model::Model;
use super::objective::Target;

/// How often to start again from a better plan.
const ROUNDS: u32 = 8;

/// The neighbours of the best plan, one after the other; again from the start
/// whenever one of them was better.
#[derive(Clone, Debug)]
pub(super) struct Neighbours {
    centre: Option<f64>,
    waiting: Vec<Candidate>,
    rounds: u32,
}

impl Neighbours {
    /// None where no plan has neighbours: nothing is decided but litres.
    pub(super) fn new(model: &Model, target: &Target) -> Option<Self> {
        let has_choice = model.legs.iter().any(|leg| leg.options.len() > 1);
        (has_choice || target.counts_stops(model)).then_some(Self {
            centre: None,
            waiting: Vec::new(),
            rounds: 0,
        })
    }

    /// The next neighbour to try, and where to start from.
    pub(super) fn next(
        &mut self,
        model: &Model,
        target: &Target,
        best: Option<&Found>,
    ) -> Option<(Candidate, Vec<f64>)> {
        let best = best?;
        let is_better = self.centre.is_none_or(|value| best.value < value - 1e-6 * value.abs());
        if is_better && self.rounds < ROUNDS {
            self.centre = Some(best.value);
            self.rounds += 1;
            self.waiting = around(model, target, best);
        }
        let candidate = self.waiting.pop()?;
        Some((candidate, best.litres.clone()))
    }
}

/// The neighbours, the most promising last.
fn around(model: &Model, target: &Target, best: &Found) -> Vec<Candidate> {
    let used: Vec<bool> = used(model, &best.litres).collect();
    let mut found = Vec::new();
    for (leg, numbers) in model.legs.iter().enumerate() {
        for choice in 0..numbers.options.len() {
            if choice != best.candidate.choice[leg] {
                let mut candidate = best.candidate.clone();
                candidate.choice[leg] = choice;
                found.push(candidate);
            }
        }
    }
    if !target.counts_stops(model) {
        return found;
    }
    let stops = |open: Vec<bool>| Candidate { open, ..best.candidate.clone() };
    for stop in (0..used.len()).filter(|&stop| used[stop]) {
        for other in [stop.checked_sub(1), Some(stop + 1)].into_iter().flatten() {
            if used.get(other) == Some(&false) && model.at_stop(other).next().is_some() {
                let mut open = used.clone();
                (open[stop], open[other]) = (false, true);
                found.push(stops(open));
            }
        }
    }
    for stop in (0..used.len()).filter(|&stop| used[stop]) {
        let mut open = used.clone();
        open[stop] = false;
        found.push(stops(open));
    }
    found
}
