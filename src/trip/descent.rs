//! From a rough set of purchases to a plan that holds exactly.
//!
//! Sequential linear programming: the course is worked out exactly, its rules are
//! linearised there, and an LP in the litres alone says where to go, as far as the
//! linearisation is trusted. What a rule misses is paid for dearly, so that a start
//! outside the rules finds its way in. Each call of [`Descent::step`] is one LP.

use super::lp::{Lp, Relation, Solved};
use super::model::Model;
use super::objective::{Measure, Target};
use super::track::{Departure, Track, demands};

/// What may be missed in a finished plan, in litres.
const TOLERANCE: f64 = 5e-7;
/// What the linearised rules keep in hand, so that rounding ends inside them.
const MARGIN: f64 = 1e-7;
/// Amounts below this are nothing.
const NOTHING: f64 = 1e-7;
/// How many steps a descent takes at most before it settles for what holds.
const MOST_STEPS: u32 = 16;
/// How many steps it takes at most to make that hold.
const MOST_RESTORING: u32 = 5;
/// What a missing litre costs while restoring, in litres of way.
const RESTORING_PENALTY: f64 = 1e4;
/// A trusted distance smaller than this, in litres, is the end.
const SMALLEST_RADIUS: f64 = 0.01;
/// A gain smaller than this part of the value is the end.
const SMALLEST_GAIN: f64 = 1e-8;

/// A decision under which the litres are looked for.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Candidate {
    /// The stops at which something may be bought.
    pub(super) open: Vec<bool>,
    /// The choice of calibration on each leg.
    pub(super) choice: Vec<usize>,
    /// Litres that stay as they are.
    pub(super) fixed: Vec<Option<f64>>,
}

/// A plan that holds exactly in every scenario.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Found {
    pub(super) litres: Vec<f64>,
    pub(super) value: f64,
    pub(super) cost: f64,
    pub(super) candidate: Candidate,
}

/// A search for the best litres near a start.
#[derive(Clone, Debug)]
pub(super) struct Descent {
    candidate: Candidate,
    now: Vec<f64>,
    merit: Merit,
    /// How far the linearised rules are trusted, in litres.
    radius: f64,
    /// What a missing litre costs.
    penalty: f64,
    steps: u32,
    /// Steps of restoring, once that has begun.
    restoring: Option<u32>,
}

#[derive(Clone, Copy, Debug)]
struct Merit {
    value: f64,
    missing: f64,
}

/// What an LP is to make small.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Aim {
    /// The target.
    Best,
    /// The way to a plan that holds.
    Nearest,
}

/// How far a descent has come.
#[derive(Clone, Debug)]
pub(super) enum Descended {
    Working(Box<Descent>),
    Plan(Found),
    /// No plan near here.
    Stuck,
}

impl Descent {
    pub(super) fn new(model: &Model, target: &Target, candidate: Candidate, start: &[f64]) -> Self {
        let now: Vec<f64> = model
            .purchases
            .iter()
            .enumerate()
            .map(|(k, purchase)| match candidate.fixed[k] {
                Some(litres) => litres,
                None if candidate.open[purchase.stop] => start[k].clamp(0.0, purchase.most),
                None => 0.0,
            })
            .collect();
        let merit = judge(model, target, &candidate, &now);
        let dearest = model.purchases.iter().map(|p| p.price).fold(0.0, f64::max);
        let penalty = match target.measure {
            Measure::Cost => 20.0 * dearest.max(0.1),
            // A litre moves the mean part by a fraction of one over the tank.
            Measure::LessEthanol => 1.0,
            Measure::Stops => 20.0,
        };
        let radius = model.capacity / 3.0;
        Self { candidate, now, merit, radius, penalty, steps: 0, restoring: None }
    }

    /// Solves one LP and goes there, or trusts the linearisation less.
    pub(super) fn step(mut self, model: &Model, target: &Target) -> Descended {
        if let Some(steps) = self.restoring {
            return self.restore(model, target, steps + 1);
        }
        self.steps += 1;
        let Some((next, expected)) = self.linearised(model, target, Aim::Best) else {
            return self.end(model, target);
        };
        let merit = judge(model, target, &self.candidate, &next);
        let before = self.weigh(self.merit);
        let (gain, promised) = (before - self.weigh(merit), before - expected);
        if gain > 0.0 {
            self.now = next;
            self.merit = merit;
        }
        // As usual for trusted regions: three quarters kept is well kept.
        if gain > 0.75 * promised {
            self.radius *= 2.0;
        } else if gain < 0.25 * promised {
            self.radius *= 0.35;
        }
        let small = promised <= SMALLEST_GAIN * (1.0 + self.merit.value.abs());
        if small || self.radius < SMALLEST_RADIUS || self.steps >= MOST_STEPS {
            if self.merit.missing <= TOLERANCE {
                return self.end(model, target);
            }
            self.restoring = Some(0);
        }
        Descended::Working(Box::new(self))
    }

    /// The shortest way to where the linearised rules hold. Close to them that is
    /// Newton's method, which needs two or three steps where a descent along a curved
    /// edge would need many.
    fn restore(mut self, model: &Model, target: &Target, steps: u32) -> Descended {
        self.restoring = Some(steps);
        self.radius = model.capacity;
        let Some((next, _)) = self.linearised(model, target, Aim::Nearest) else {
            return Descended::Stuck;
        };
        let merit = judge(model, target, &self.candidate, &next);
        if merit.missing >= self.merit.missing {
            return Descended::Stuck;
        }
        self.now = next;
        self.merit = merit;
        if merit.missing <= TOLERANCE || steps >= MOST_RESTORING {
            return self.end(model, target);
        }
        Descended::Working(Box::new(self))
    }

    fn weigh(&self, merit: Merit) -> f64 {
        merit.value + self.penalty * merit.missing
    }

    fn end(self, model: &Model, target: &Target) -> Descended {
        if self.merit.missing > TOLERANCE {
            return Descended::Stuck;
        }
        Descended::Plan(Found {
            value: value(model, target, &self.now),
            cost: value(model, &Target::new(Measure::Cost), &self.now),
            litres: self.now,
            candidate: self.candidate,
        })
    }

    /// The best or the nearest litres by the rules as they are linearised here, and
    /// what they are expected to weigh.
    fn linearised(&self, model: &Model, target: &Target, aim: Aim) -> Option<(Vec<f64>, f64)> {
        let tracks: Vec<Track> =
            model.scenarios.iter().map(|truth| Track::run(model, truth, &self.now)).collect();
        let costs = match aim {
            Aim::Best => costs(model, target, &tracks),
            Aim::Nearest => vec![0.0; model.purchases.len()],
        };
        // Besides what a litre costs here, the value has a part that stays: fees, and
        // what a linearisation leaves out.
        let linear: f64 = costs.iter().zip(&self.now).map(|(cost, x)| cost * x).sum();
        let mut lp = Lp::new();
        for (k, purchase) in model.purchases.iter().enumerate() {
            let x = self.now[k];
            let (low, high) = match self.candidate.fixed[k] {
                Some(litres) => (litres, litres),
                None if self.candidate.open[purchase.stop] => {
                    ((x - self.radius).max(0.0), (x + self.radius).min(purchase.most))
                }
                None => (0.0, 0.0),
            };
            lp.variable(costs[k], low, high);
        }
        if aim == Aim::Nearest {
            for (k, x) in self.now.iter().enumerate() {
                let away = lp.variable(1.0, 0.0, f64::INFINITY);
                lp.row([(k, 1.0), (away, -1.0)], Relation::AtMost, *x);
                lp.row([(k, 1.0), (away, 1.0)], Relation::AtLeast, *x);
            }
        }
        let penalty = if aim == Aim::Nearest { RESTORING_PENALTY } else { self.penalty };
        for track in &tracks {
            for (leg, at) in track.legs.iter().enumerate() {
                let missing = lp.variable(penalty, 0.0, f64::INFINITY);
                let takes = model.legs[leg].takes;
                let choice = &model.legs[leg].options[self.candidate.choice[leg]];
                for demand in demands(model, leg, choice) {
                    let mut bound = MARGIN - demand.surplus(at);
                    let mut terms = Vec::with_capacity(at.by_litre.len() + 1);
                    for (k, by) in at.by_litre.iter().enumerate() {
                        let slope = demand.by_litre(at, takes, by);
                        bound += slope * self.now[k];
                        terms.push((k, slope));
                    }
                    terms.push((missing, 1.0));
                    lp.row(terms, Relation::AtLeast, bound);
                }
            }
        }
        if let Some(budget) = model.budget {
            let missing = lp.variable(penalty, 0.0, f64::INFINITY);
            let prices = model.purchases.iter().enumerate().map(|(k, p)| (k, p.price));
            let left = budget - fees(model, &self.now) - MARGIN;
            lp.row(prices.chain([(missing, -1.0)]), Relation::AtMost, left);
        }
        match lp.solve() {
            Solved::Optimum { value, point } => {
                let litres = point[..model.purchases.len()].iter();
                let litres = litres.map(|&x| if x < NOTHING { 0.0 } else { x }).collect();
                Some((litres, self.merit.value + value - linear))
            }
            Solved::Infeasible | Solved::Unknown => None,
        }
    }
}

/// What a litre of each purchase costs in terms of the target; where only stops
/// are counted, the cheapest plan of those stops is wanted.
fn costs(model: &Model, target: &Target, tracks: &[Track]) -> Vec<f64> {
    let mut costs: Vec<f64> = model.purchases.iter().map(|p| p.price).collect();
    if target.measure == Measure::LessEthanol {
        costs.fill(0.0);
        for track in tracks {
            for (leg, at) in track.legs.iter().enumerate() {
                let weight = target.of_composition(model, leg);
                let Some(h) = burnt_from(model, leg, at) else { continue };
                for (cost, by) in costs.iter_mut().zip(&at.by_litre) {
                    *cost += weight * (by.e - at.tank.e / h * by.h) / h;
                }
            }
        }
    }
    costs
}

/// The energy from which a leg burns, no less than what it takes; none where it takes
/// nothing, so that the composition does not count.
fn burnt_from(model: &Model, leg: usize, at: &Departure) -> Option<f64> {
    let takes = model.legs[leg].takes;
    (takes > 0.0).then(|| at.tank.h.max(takes))
}

fn judge(model: &Model, target: &Target, candidate: &Candidate, litres: &[f64]) -> Merit {
    let mut missing = 0.0;
    for truth in &model.scenarios {
        let track = Track::run(model, truth, litres);
        for (leg, at) in track.legs.iter().enumerate() {
            let choice = &model.legs[leg].options[candidate.choice[leg]];
            let least = demands(model, leg, choice)
                .iter()
                .map(|demand| demand.surplus(at))
                .fold(f64::INFINITY, f64::min);
            missing += (-least).max(0.0);
        }
    }
    if let Some(budget) = model.budget {
        missing += (value(model, &Target::new(Measure::Cost), litres) - budget).max(0.0);
    }
    // Where stops are counted, the descent itself can only make them cheaper.
    let measure = if target.measure == Measure::Stops { Measure::Cost } else { target.measure };
    Merit { value: value(model, &Target { measure, ..*target }, litres), missing }
}

fn fees(model: &Model, litres: &[f64]) -> f64 {
    used(model, litres).zip(&model.fees).filter(|(used, _)| *used).map(|(_, fee)| fee).sum()
}

/// Whether something is bought, by stop.
pub(super) fn used<'a>(model: &'a Model, litres: &'a [f64]) -> impl Iterator<Item = bool> + 'a {
    (0..model.legs.len()).map(|stop| model.at_stop(stop).any(|k| litres[k] > NOTHING))
}

/// The target's value of a plan, exactly.
pub(super) fn value(model: &Model, target: &Target, litres: &[f64]) -> f64 {
    match target.measure {
        Measure::Cost => {
            let fuel: f64 = model.purchases.iter().zip(litres).map(|(p, x)| p.price * x).sum();
            fuel + fees(model, litres)
        }
        Measure::Stops => {
            let stops = used(model, litres).filter(|used| *used).count();
            f64::from(u32::try_from(stops).unwrap_or(u32::MAX))
        }
        Measure::LessEthanol => model
            .scenarios
            .iter()
            .flat_map(|truth| {
                let track = Track::run(model, truth, litres);
                let part = |(leg, at): (usize, &Departure)| {
                    let h = burnt_from(model, leg, at)?;
                    Some(target.of_composition(model, leg) * at.tank.e / h)
                };
                track.legs.iter().enumerate().filter_map(part).collect::<Vec<_>>()
            })
            .sum(),
    }
}
