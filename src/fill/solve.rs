//! The solution of a fill at the expected values.

use super::check::CheckedProblem;
use super::impossible::FillImpossible;
use super::linear::{Relation, Row, Solved, minimise};
use super::plan::FillPlan;
use super::problem::{FillObjective, Problem, in_litres, litres};
use super::rows::{FillRule, Part};
use crate::quantity::{Money, Volume};

/// What came of a fill.
#[derive(Clone, Debug, PartialEq)]
pub enum Solution {
    /// The aim can be reached.
    Plan(FillPlan),
    /// It cannot, with the reasons and what can be done instead.
    Impossible(Box<FillImpossible>),
}

/// A drop, in litres: less is nothing.
const DROP: f64 = 1e-3;

/// An empty tank that stays empty meets every row about its blend, and has none.
/// So what pours nothing into it counts only where something could be poured too;
/// else the row weights that prove the contrary are returned.
pub(super) fn unless_hollow(
    x: Vec<f64>,
    rows: &mut Vec<Row<FillRule>>,
) -> Result<Vec<f64>, Vec<f64>> {
    if x.iter().sum::<f64>() >= DROP {
        return Ok(x);
    }
    rows.push(Row {
        rule: FillRule::Space,
        coefficients: vec![1.0; x.len()],
        relation: Relation::AtLeast,
        bound: DROP,
    });
    let solved = minimise(&vec![0.0; x.len()], rows);
    rows.pop();
    match solved {
        Solved::Infeasible(mut weights) => {
            weights.pop();
            Err(weights)
        }
        Solved::Optimum(_) | Solved::Unbounded => Ok(x),
    }
}

impl CheckedProblem {
    /// Finds the best plan at the expected values, or says why there is none.
    pub fn solve(&self) -> Solution {
        match self.optimum(&[]) {
            Ok(x) => Solution::Plan(self.plan(&x)),
            Err(weights) => Solution::Impossible(Box::new(self.explain(&weights))),
        }
    }

    /// The best litres of each fuel, or the row weights that prove there are none.
    pub(super) fn optimum(&self, without: &[Part]) -> Result<Vec<f64>, Vec<f64>> {
        let cost = self.cost_vector();
        let mut rows = self.rows(without, false);
        match minimise(&cost, &rows) {
            Solved::Optimum(x) if self.level() <= 0.0 => unless_hollow(x, &mut rows),
            Solved::Optimum(x) => Ok(x),
            Solved::Infeasible(weights) => Err(weights),
            // Every fuel is bounded by the brim.
            Solved::Unbounded => Err(Vec::new()),
        }
    }

    /// What is minimised, per litre of each fuel. The small second part breaks
    /// ties: the same litres for less money, the same money with fewer litres.
    pub(super) fn cost_vector(&self) -> Vec<f64> {
        let prices = self.prices();
        let price = |index: usize| prices.as_ref().map_or(0.0, |prices| prices[index]);
        let dearest = prices.iter().flatten().copied().fold(1.0, f64::max);
        (0..self.offers.len())
            .map(|index| match self.objective {
                FillObjective::LeastCost => price(index),
                FillObjective::LeastVolume => 1.0 + 1e-7 * price(index) / dearest,
                FillObjective::MostVolume => -1.0 + 1e-7 * price(index) / dearest,
            })
            .collect()
    }
}

/// What can be said of litres that are given, whatever else fits together.
impl Problem {
    /// What these litres of each fuel make.
    pub(super) fn plan(&self, x: &[f64]) -> FillPlan {
        let level = self.level();
        let added: f64 = x.iter().sum();
        let total = level + added;
        let share = self.share_of(level, x);
        let volumes: Vec<Volume> = x.iter().map(|&x| litres(x)).collect();
        let cost = self
            .offers
            .iter()
            .zip(&volumes)
            .filter(|(_, volume)| in_litres(**volume) > 0.0)
            .map(|(offer, volume)| offer.price.map(|price| price.of(*volume)))
            .try_fold(Money::default(), |sum, part| part.map(|part| sum + part));
        FillPlan {
            volumes,
            added: litres(added),
            level: litres(total),
            share,
            ron: self.ron_of(x),
            cost,
        }
    }

    /// What is in the tank when these litres of each fuel have been added: the
    /// reverse question.
    pub fn after(&self, volumes: &[Volume]) -> FillPlan {
        self.plan(&volumes.iter().map(|volume| in_litres(*volume)).collect::<Vec<_>>())
    }
}
