//! Rounding a plan to what a person can pump.

use super::check::CheckedProblem;
use super::order::Order;
use super::plan::FillPlan;
use super::problem::in_litres;
use crate::quantity::{Money, Share, Volume};

/// More fuels than this are not rounded by trying all combinations.
const MOST_FUELS: usize = 10;

impl CheckedProblem {
    /// The plan rounded to the pump's step, for the given order: doses become
    /// whole steps; the fuel poured to the click takes what is left. Of all ways
    /// to round up or down the one closest to the aim is taken, then the one
    /// closest to the plan, then the cheapest. Only what is acceptable counts, so
    /// that rounding cannot break what was promised of the plan; `None` where nothing
    /// is.
    pub fn rounded(
        &self,
        plan: &FillPlan,
        order: &Order,
        step: Volume,
        is_acceptable: impl Fn(&FillPlan) -> bool,
    ) -> Option<FillPlan> {
        let step = in_litres(step);
        let doses: Vec<usize> =
            order.pours.iter().filter(|pour| !pour.to_click).map(|pour| pour.fuel).collect();
        if step <= 0.0 || doses.len() > MOST_FUELS {
            return Some(plan.clone());
        }
        let exact: Vec<f64> = plan.volumes.iter().map(|volume| in_litres(*volume)).collect();
        let mut best: Option<([f64; 3], FillPlan)> = None;
        for ups in 0..1_usize << doses.len() {
            let mut x = exact.clone();
            for (bit, &fuel) in doses.iter().enumerate() {
                let poured = in_litres(self.offers[fuel].poured);
                let steps = (x[fuel] - poured) / step;
                let whole = if ups >> bit & 1 == 1 {
                    (steps - 1e-9).ceil()
                } else {
                    (steps + 1e-9).floor()
                };
                x[fuel] = poured + whole * step;
            }
            if let Some(fuel) = order.top_up() {
                x[fuel] = 0.0;
                x[fuel] = self.capacity() - self.level() - x.iter().sum::<f64>();
            }
            let candidate = self.plan(&x);
            if self.can_pour(&x) && is_acceptable(&candidate) {
                let key = self.distance(plan, &candidate);
                if best.as_ref().is_none_or(|(least, _)| {
                    key.iter()
                        .zip(least)
                        .find(|(a, b)| (*a - *b).abs() > 1e-12)
                        .is_some_and(|(a, b)| a < b)
                }) {
                    best = Some((key, candidate));
                }
            }
        }
        best.map(|(_, rounded)| rounded)
    }

    fn can_pour(&self, x: &[f64]) -> bool {
        let fits = self.level() + x.iter().sum::<f64>() <= self.capacity() + 1e-9;
        fits && self.offers.iter().zip(x).all(|(offer, &x)| {
            let limit = offer.limit.map_or(f64::INFINITY, in_litres);
            x >= in_litres(offer.poured) - 1e-9
                && x <= limit + 1e-9
                && (!offer.use_all || x >= limit - 1e-9)
        })
    }

    /// How bad a rounding is: outside the aim (or short of octane), away from
    /// the plan, cost.
    fn distance(&self, plan: &FillPlan, rounded: &FillPlan) -> [f64; 3] {
        let share = rounded.share.map_or(0.0, Share::fraction);
        let wanted = plan.share.map_or(share, Share::fraction);
        let outside =
            (self.aim.low().fraction() - share).max(share - self.aim.high().fraction()).max(0.0);
        let octane_short = match (self.ron_min, rounded.ron) {
            (Some(least), Some(ron)) => (least - ron).max(0.0),
            _ => 0.0,
        };
        // A point of octane weighs as much as a point of share.
        let cost = rounded.cost.map_or(0.0, Money::amount);
        [outside + octane_short / 100.0, (share - wanted).abs(), cost]
    }
}
