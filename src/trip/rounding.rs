//! A plan in whole steps of the pump.
//!
//! Stop after stop the amounts are rounded up or down in every combination, and all
//! that is bought later is worked out anew for each, so that what rounding did to
//! the blend is put right further on. The cheapest that holds exactly stays.

use std::collections::VecDeque;

use uom::si::volume::liter;

use crate::quantity::Volume;

use super::descent::{Candidate, Descended, Descent, Found};
use super::model::Model;
use super::objective::Target;

/// More combinations than this are not tried at a stop.
const MOST_COMBINATIONS: usize = 64;
/// Amounts this near to a whole step are whole.
const WHOLE: f64 = 1e-6;

/// A plan on its way to whole steps.
#[derive(Debug)]
pub(super) struct Rounding {
    model: Model,
    target: Target,
    step: f64,
    /// The plan in which the stops before this one are in whole steps.
    base: Found,
    stop: usize,
    waiting: VecDeque<Candidate>,
    descent: Option<Box<Descent>>,
    best: Option<Found>,
    /// How many steps to each side are tried.
    reach: usize,
    programmes: u32,
}

/// How far the rounding is.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Rounded {
    Working,
    /// Litres in whole steps that hold.
    Plan(Vec<f64>),
    /// None was found.
    None,
}

impl Rounding {
    pub(super) fn new(model: Model, target: Target, plan: &Found, step: Volume) -> Self {
        let mut rounding = Self {
            model,
            target,
            step: step.get::<liter>(),
            base: plan.clone(),
            stop: 0,
            waiting: VecDeque::new(),
            descent: None,
            best: None,
            reach: 1,
            programmes: 0,
        };
        rounding.waiting = rounding.combinations();
        rounding
    }

    pub(super) fn model(&self) -> &Model {
        &self.model
    }

    pub(super) fn programmes(&self) -> u32 {
        self.programmes
    }

    /// Solves one linear programme.
    pub(super) fn step(&mut self) -> Rounded {
        if self.step <= 0.0 {
            return Rounded::None;
        }
        if let Some(descent) = self.descent.take() {
            self.programmes += 1;
            match descent.step(&self.model, &self.target) {
                Descended::Working(descent) => self.descent = Some(descent),
                Descended::Plan(found) => {
                    if self.best.as_ref().is_none_or(|best| found.value < best.value) {
                        self.best = Some(found);
                    }
                }
                Descended::Stuck => {}
            }
            return Rounded::Working;
        }
        if let Some(candidate) = self.waiting.pop_front() {
            let start = &self.base.litres;
            let descent = Descent::new(&self.model, &self.target, candidate, start);
            self.descent = Some(Box::new(descent));
            return Rounded::Working;
        }
        match self.best.take() {
            Some(best) => {
                self.base = best;
                self.stop += 1;
                self.reach = 1;
                if self.stop == self.model.legs.len() {
                    return Rounded::Plan(self.whole(&self.base.litres));
                }
            }
            None if self.reach == 1 => self.reach = 2,
            None => return Rounded::None,
        }
        self.waiting = self.combinations();
        Rounded::Working
    }

    /// The amounts of the present stop rounded in every way; the later ones free.
    fn combinations(&self) -> VecDeque<Candidate> {
        let mut found = vec![self.base.candidate.clone()];
        for k in self.model.at_stop(self.stop) {
            let steps = self.base.litres[k] / self.step;
            let most = (self.model.purchases[k].most / self.step + WHOLE).floor();
            let down = (steps + WHOLE).floor();
            let mut ways = Vec::new();
            if steps < WHOLE {
                ways.push(0.0);
            } else {
                for away in 0..self.reach {
                    let away = f64::from(u32::try_from(away).unwrap_or_default());
                    ways.extend([down - away, (steps - WHOLE).ceil() + away]);
                }
            }
            ways.retain(|&way| (0.0..=most).contains(&way));
            ways.dedup();
            if found.len() * ways.len() > MOST_COMBINATIONS {
                ways.truncate(1);
            }
            found = found
                .iter()
                .flat_map(|candidate| {
                    ways.iter().map(|way| {
                        let mut candidate = candidate.clone();
                        candidate.fixed[k] = Some(way * self.step);
                        candidate
                    })
                })
                .collect();
        }
        found.into()
    }

    fn whole(&self, litres: &[f64]) -> Vec<f64> {
        litres.iter().map(|x| (x / self.step).round() * self.step).collect()
    }
}
