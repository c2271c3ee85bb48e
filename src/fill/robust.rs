//! A plan that stays inside the aim whatever the true level, present share and
//! pump shares are, or the proof that there is none.

use super::check::CheckedProblem;
use super::linear::{Relation, Row, Solved, minimise};
use super::order::Order;
use super::plan::FillPlan;
use super::problem::{StopRule, in_litres};
use super::rows::FillRule;
use super::solve::unless_hollow;
use crate::quantity::{Band, Share};

/// A plan that is safe over the whole box.
#[derive(Clone, Debug, PartialEq)]
pub struct RobustPlan {
    /// What it comes to at the expected values.
    pub plan: FillPlan,
    /// How to carry it out: the promise holds for this order only.
    pub order: Order,
}

/// The proof that no plan is safe over the whole box, for one way of pouring.
#[derive(Clone, Debug, PartialEq)]
pub struct NoRobustPlan {
    /// The fuel poured to the click, or none where litres are fixed.
    pub top_up: Option<usize>,
    /// The rules that contradict each other, with the weights under which they
    /// add up to the contradiction.
    pub proof: Vec<(FillRule, f64)>,
}

/// What one litre adds to a row at its worse end, and at its expected value.
type PerLitre<'a> = &'a dyn Fn(&Band<Share>, Option<f64>) -> f64;

impl CheckedProblem {
    /// Finds a plan that reaches the aim over the whole box.
    ///
    /// With a fixed litre count the level errs twice, in the blend and at the
    /// brim; to the brim, each fuel may top up to the click instead, and the
    /// best of these ways is taken.
    ///
    /// # Errors
    /// The proof for each way that was tried.
    pub fn robust(&self) -> Result<RobustPlan, Vec<NoRobustPlan>> {
        let mut best: Option<(f64, RobustPlan)> = None;
        let mut proofs = Vec::new();
        for top_up in self.ways() {
            match self.robust_by(top_up) {
                Ok((cost, plan)) => {
                    if best.as_ref().is_none_or(|(least, _)| cost < *least - 1e-9) {
                        best = Some((cost, plan));
                    }
                }
                Err(proof) => proofs.push(NoRobustPlan { top_up, proof }),
            }
        }
        best.map(|(_, plan)| plan).ok_or(proofs)
    }

    /// The plan whose worst case strays least from the aim, for when none is
    /// safe. Only where the stop rule fixes the level: else pouring nothing may
    /// stray least.
    pub fn least_stray(&self) -> Option<RobustPlan> {
        self.final_level()?;
        let strays = |robust: &RobustPlan| {
            let share = robust.order.worst.share;
            let below = self.aim.low().fraction() - share.low().fraction();
            below.max(share.high().fraction() - self.aim.high().fraction())
        };
        self.ways()
            .into_iter()
            .filter_map(|top_up| {
                let mut rows = self.robust_rows(top_up);
                // One more column: how far both edges of the aim give way, in
                // litres of ethanol.
                for row in &mut rows {
                    let gives = matches!(row.rule, FillRule::AimLow | FillRule::AimHigh);
                    row.coefficients.push(f64::from(u8::from(gives)));
                }
                let mut cost = vec![0.0; self.offers.len()];
                cost.push(1.0);
                let Solved::Optimum(mut x) = minimise(&cost, &rows) else { return None };
                x.pop();
                Some(self.carried_out(x, top_up))
            })
            .min_by(|a, b| strays(a).total_cmp(&strays(b)))
    }

    /// The ways to pour that can be promised: to the brim, each fuel can top up.
    fn ways(&self) -> Vec<Option<usize>> {
        if self.stop == StopRule::Brim {
            (0..self.offers.len()).filter(|&fuel| !self.offers[fuel].use_all).map(Some).collect()
        } else {
            vec![None]
        }
    }

    fn robust_by(&self, top_up: Option<usize>) -> Result<(f64, RobustPlan), Vec<(FillRule, f64)>> {
        let mut rows = self.robust_rows(top_up);
        let mut cost = self.cost_vector();
        // What is dosed more is topped up less.
        let saved = top_up.map_or(0.0, |fuel| cost[fuel]);
        for entry in &mut cost {
            *entry -= saved;
        }
        let stays_empty = self.level() <= 0.0 && top_up.is_none();
        let solved = match minimise(&cost, &rows) {
            Solved::Optimum(x) if stays_empty => match unless_hollow(x, &mut rows) {
                Ok(x) => Solved::Optimum(x),
                Err(weights) => Solved::Infeasible(weights),
            },
            solved => solved,
        };
        match solved {
            Solved::Optimum(x) => {
                let value: f64 = cost.iter().zip(&x).map(|(c, x)| c * x).sum();
                let free = self.capacity() - self.level();
                Ok((value + saved * free, self.carried_out(x, top_up)))
            }
            Solved::Infeasible(weights) => Err(rows
                .iter()
                .zip(weights)
                .filter(|(_, weight)| weight.abs() > 1e-9)
                .map(|(row, weight)| (row.rule, weight))
                .collect()),
            Solved::Unbounded => Err(Vec::new()),
        }
    }

    /// The plan and its order, from the litres that are dosed.
    fn carried_out(&self, mut x: Vec<f64>, top_up: Option<usize>) -> RobustPlan {
        if let Some(fuel) = top_up {
            x[fuel] = 0.0;
            x[fuel] = self.capacity() - self.level() - x.iter().sum::<f64>();
        }
        let plan = self.plan(&x);
        let mut fuels = self.still_to_pour(&plan);
        fuels.retain(|&fuel| Some(fuel) != top_up);
        fuels.extend(top_up);
        let order = self.order(&plan, &fuels, top_up);
        RobustPlan { plan, order }
    }

    /// Rows in the litres of each fuel; the column of the fuel that tops up
    /// stays empty, since its litres follow from the level.
    fn robust_rows(&self, top_up: Option<usize>) -> Vec<Row<FillRule>> {
        let (low, high) = (self.aim.low().fraction(), self.aim.high().fraction());
        let mut rows = Vec::new();
        let above = |share: &Band<Share>, _: Option<f64>| share.low().fraction() - low;
        let below = |share: &Band<Share>, _: Option<f64>| high - share.high().fraction();
        self.push_over_box(&mut rows, FillRule::AimLow, top_up, &above);
        self.push_over_box(&mut rows, FillRule::AimHigh, top_up, &below);
        if let Some(ron_min) = self.ron_min {
            let octane = |share: &Band<Share>, ron: Option<f64>| {
                let surplus = ron.map_or(0.0, |ron| ron - ron_min);
                let end = if surplus >= 0.0 { share.low() } else { share.high() };
                self.moles_per_litre(end) * surplus
            };
            self.push_over_box(&mut rows, FillRule::Octane, top_up, &octane);
        }
        let (lowest, highest) =
            (in_litres(self.tank.level.low()), in_litres(self.tank.level.high()));
        let column = |weight: &dyn Fn(usize) -> f64| -> Vec<f64> {
            (0..self.offers.len())
                .map(|fuel| if Some(fuel) == top_up { 0.0 } else { weight(fuel) })
                .collect()
        };
        let mut push = |rule, coefficients, relation, bound| {
            rows.push(Row { rule, coefficients, relation, bound });
        };
        // What is in did fit, however much it was; what is still to come has to.
        let most = 1.0 + self.meter_error;
        let held_back = top_up.map_or(0.0, |fuel| in_litres(self.offers[fuel].poured));
        let free = (self.capacity() - highest - most * self.poured()).max(0.0);
        let bound = free + most * (self.poured() - held_back);
        push(FillRule::Space, column(&|_| most), Relation::AtMost, bound);
        match self.stop {
            StopRule::Level(level) => push(
                FillRule::FinalLevel,
                column(&|_| 1.0),
                Relation::Equal,
                in_litres(level) - self.level(),
            ),
            StopRule::AtMost(most) => {
                push(FillRule::AtMost, column(&|_| 1.0), Relation::AtMost, in_litres(most));
            }
            StopRule::Budget(money) => {
                let prices = self.prices().unwrap_or_default();
                let price = |fuel: usize| prices.get(fuel).copied().unwrap_or(0.0);
                push(FillRule::Budget, column(&price), Relation::AtMost, money.amount());
            }
            StopRule::Brim | StopRule::Least => {}
        }
        for (index, offer) in self.offers.iter().enumerate() {
            let single = column(&|fuel| f64::from(u8::from(fuel == index)));
            let limit = offer.limit.map(in_litres);
            if Some(index) == top_up {
                if let Some(limit) = limit {
                    // At the lowest level and the smallest doses it must not run out before
                    // the click.
                    let bound = self.capacity() - lowest - limit;
                    let least = 1.0 - self.meter_error;
                    push(FillRule::FuelLimit(index), column(&|_| least), Relation::AtLeast, bound);
                }
                continue;
            }
            if let Some(limit) = limit {
                let (rule, relation) = if offer.use_all {
                    (FillRule::UseAll(index), Relation::Equal)
                } else {
                    (FillRule::FuelLimit(index), Relation::AtMost)
                };
                push(rule, single.clone(), relation, limit);
            }
            let poured = in_litres(offer.poured);
            if poured > 0.0 {
                push(FillRule::AlreadyIn(index), single, Relation::AtLeast, poured);
            }
        }
        rows
    }

    /// A row `sum over the contents of (worst per litre) >= 0`, at both ends of
    /// the level: linear in the level, it holds between them too. Nothing overflows, so a
    /// dose displaces what is poured to the click or nothing, and its meter errs to the
    /// worse side of that.
    fn push_over_box(
        &self,
        rows: &mut Vec<Row<FillRule>>,
        rule: FillRule,
        top_up: Option<usize>,
        per_litre: PerLitre<'_>,
    ) {
        let of_tank = per_litre(&self.tank.share, self.tank.ron);
        let of_offer = |fuel: usize| per_litre(&self.offers[fuel].share, self.offers[fuel].ron);
        let of_top_up = top_up.map_or(0.0, of_offer);
        let coefficients: Vec<f64> = (0..self.offers.len())
            .map(|fuel| {
                if Some(fuel) == top_up {
                    return 0.0;
                }
                let a = of_offer(fuel) - of_top_up;
                a * (1.0 - self.meter_error * a.signum())
            })
            .collect();
        let bound = |level: f64| {
            let topped_up = if top_up.is_some() { self.capacity() - level } else { 0.0 };
            -(level * of_tank + topped_up * of_top_up)
        };
        let ends = self.tank.level.map(in_litres);
        // The stricter end implies the other: the coefficients are the same.
        let bound = bound(ends.low()).max(bound(ends.high()));
        rows.push(Row { rule, coefficients, relation: Relation::AtLeast, bound });
    }

    /// The robust plan with the most of one fuel alone, by fixed litres: how far
    /// it can go before the worst case leaves the aim.
    pub fn robust_most_of(&self, fuel: usize) -> Option<FillPlan> {
        self.with_most_of(fuel).robust_by(None).ok().map(|(_, robust)| robust.plan)
    }
}
