//! What a fill must satisfy, as rows of a linear program in the litres of each
//! fuel, at the expected values.

use super::check::CheckedProblem;
use super::linear::{Relation, Row};
use super::problem::{Problem, StopRule, in_litres};

/// What a row of the fill stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FillRule {
    /// The blend must not be weaker than the aim.
    AimLow,
    /// The blend must not be stronger than the aim.
    AimHigh,
    /// The tank holds no more than to the brim.
    Space,
    /// The stop rule fixes the level.
    FinalLevel,
    /// The stop rule limits the litres.
    AtMost,
    /// The stop rule limits the money.
    Budget,
    /// The blend must have the least octane number.
    Octane,
    /// There is no more of the fuel with this index.
    FuelLimit(usize),
    /// All of the fuel with this index has to go in.
    UseAll(usize),
    /// So much of the fuel with this index is already in.
    AlreadyIn(usize),
}

/// A part of the rows that can be left out, to find out which of them stands in
/// the way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Part {
    Aim,
    Octane,
    FuelLimits,
    /// The stop rule; the brim stays.
    Stop,
}

impl CheckedProblem {
    /// The rows at the expected values. With `level_is_free` the level before
    /// the fill is a variable of its own, after those of the fuels.
    pub(super) fn rows(&self, without: &[Part], level_is_free: bool) -> Vec<Row<FillRule>> {
        let builder = Builder { problem: self, level_is_free };
        let mut rows = Vec::with_capacity(2 * self.offers.len() + 5);
        let keep = |part| !without.contains(&part);
        if keep(Part::Aim) {
            let (low, high) = (self.aim.low().fraction(), self.aim.high().fraction());
            // One row instead of two keeps the tableau small where both ends meet.
            let exact = high - low <= f64::EPSILON;
            let relation = if exact { Relation::Equal } else { Relation::AtLeast };
            rows.push(builder.row(FillRule::AimLow, relation, 0.0, |share, _| share - low));
            if !exact {
                rows.push(
                    builder.row(FillRule::AimHigh, Relation::AtMost, 0.0, |share, _| share - high),
                );
            }
        }
        if let (Some(ron_min), true) = (self.ron_min, keep(Part::Octane)) {
            rows.push(builder.octane(ron_min));
        }
        match (self.final_level(), keep(Part::Stop)) {
            (Some(level), true) => {
                rows.push(builder.row(FillRule::FinalLevel, Relation::Equal, level, |_, _| 1.0));
            }
            _ => rows.push(builder.row(
                FillRule::Space,
                Relation::AtMost,
                self.capacity(),
                |_, _| 1.0,
            )),
        }
        if keep(Part::Stop) {
            match self.stop {
                StopRule::AtMost(most) => {
                    rows.push(builder.added(FillRule::AtMost, in_litres(most), |_| 1.0));
                }
                StopRule::Budget(money) => {
                    let prices = self.prices().unwrap_or_default();
                    rows.push(builder.added(FillRule::Budget, money.amount(), |fuel| {
                        prices.get(fuel).copied().unwrap_or(0.0)
                    }));
                }
                StopRule::Brim | StopRule::Level(_) | StopRule::Least => {}
            }
        }
        for (index, offer) in self.offers.iter().enumerate() {
            let mut single = |rule, relation, bound| {
                let mut row = builder.added(rule, bound, |fuel| f64::from(u8::from(fuel == index)));
                row.relation = relation;
                rows.push(row);
            };
            if let (Some(limit), true) = (offer.limit, keep(Part::FuelLimits)) {
                if offer.use_all {
                    single(FillRule::UseAll(index), Relation::Equal, in_litres(limit));
                } else {
                    single(FillRule::FuelLimit(index), Relation::AtMost, in_litres(limit));
                }
            }
            let poured = in_litres(offer.poured);
            if poured > 0.0 {
                single(FillRule::AlreadyIn(index), Relation::AtLeast, poured);
            }
        }
        rows
    }
}

/// Writes rows over the fuels and the level before the fill, which is either a
/// number (and moves to the right-hand side) or one more variable.
struct Builder<'a> {
    problem: &'a Problem,
    level_is_free: bool,
}

impl Builder<'_> {
    /// A row over the whole contents: `weight(ethanol share, index)` per litre.
    fn row(
        &self,
        rule: FillRule,
        relation: Relation,
        bound: f64,
        weight: impl Fn(f64, Option<usize>) -> f64,
    ) -> Row<FillRule> {
        let offers = self.problem.offers.iter().enumerate();
        let mut coefficients: Vec<f64> = offers
            .map(|(index, offer)| weight(offer.share.expected().fraction(), Some(index)))
            .collect();
        let of_tank = weight(self.problem.tank.share.expected().fraction(), None);
        let mut bound = bound;
        if self.level_is_free {
            coefficients.push(of_tank);
        } else {
            bound -= of_tank * self.problem.level();
        }
        Row { rule, coefficients, relation, bound }
    }

    /// A row over what is added only, at most `bound`.
    fn added(&self, rule: FillRule, bound: f64, weight: impl Fn(usize) -> f64) -> Row<FillRule> {
        let mut coefficients: Vec<f64> = (0..self.problem.offers.len()).map(weight).collect();
        if self.level_is_free {
            coefficients.push(0.0);
        }
        Row { rule, coefficients, relation: Relation::AtMost, bound }
    }

    /// Octane by moles: `sum n_j (RON_j - r) x_j >= 0` over the whole contents.
    fn octane(&self, ron_min: f64) -> Row<FillRule> {
        let problem = self.problem;
        self.row(FillRule::Octane, Relation::AtLeast, 0.0, |_, index| {
            let (share, ron) = match index {
                Some(index) => (problem.offers[index].share, problem.offers[index].ron),
                None => (problem.tank.share, problem.tank.ron),
            };
            // An unknown octane number was refused by the check, except that of
            // an empty tank, whose weight is then multiplied by nothing.
            ron.map_or(0.0, |ron| problem.moles_per_litre(share.expected()) * (ron - ron_min))
        })
    }
}
