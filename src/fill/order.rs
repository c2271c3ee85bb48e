//! In which order to pour. A gauge that is off by some litres spoils a fill of
//! fixed litres; topping up to the click with the right fuel can take that error
//! out, and with the wrong one makes it worse.

use super::check::CheckedProblem;
use super::plan::FillPlan;
use super::problem::{StopRule, in_litres, litres};
use super::worst::{PlannedPour, Worst, doses};
use crate::quantity::{Share, Volume};

/// One way to carry out a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Order {
    /// The pours, first one first.
    pub pours: Vec<PlannedPour>,
    /// How it can end.
    pub worst: Worst,
    /// The share at the lowest and at the highest present level, all else as
    /// expected: what the gauge alone does.
    pub from_level: (Share, Share),
}

impl Order {
    /// The index of the fuel that is poured to the click.
    pub fn top_up(&self) -> Option<usize> {
        self.pours.iter().find(|pour| pour.to_click).map(|pour| pour.fuel)
    }

    /// The distance between the worst cases.
    fn width(&self) -> f64 {
        self.worst.share.high().fraction() - self.worst.share.low().fraction()
    }
}

impl CheckedProblem {
    /// All ways to carry out a plan, the least sensitive one first.
    ///
    /// To the brim, each fuel of the plan can be the one that tops up; with any
    /// other stop rule the litres are fixed and the strongest fuel goes first,
    /// since what is wrong with it can still be put right with petrol.
    pub fn orders(&self, plan: &FillPlan) -> Vec<Order> {
        let fuels = self.still_to_pour(plan);
        let fixed = self.order(plan, &fuels, None);
        if self.stop != StopRule::Brim {
            return vec![fixed];
        }
        let mut orders: Vec<Order> = Vec::new();
        for &top_up in &fuels {
            let order = self.order(plan, &fuels, Some(top_up));
            let place = orders.partition_point(|other| other.width() <= order.width());
            orders.insert(place, order);
        }
        if orders.is_empty() {
            orders.push(fixed);
        }
        orders
    }

    /// The plan with fixed litres: what the orders that top up are compared with.
    pub fn fixed_order(&self, plan: &FillPlan) -> Order {
        self.order(plan, &self.still_to_pour(plan), None)
    }

    /// The fuels of a plan of which some is left to pour, the strongest first.
    pub(super) fn still_to_pour(&self, plan: &FillPlan) -> Vec<usize> {
        let share = |fuel: usize| self.offers[fuel].share.expected();
        let mut fuels: Vec<usize> = Vec::new();
        for fuel in (0..self.offers.len()).filter(|&fuel| self.left(plan, fuel) > 1e-9) {
            let place = fuels.partition_point(|&other| share(other) >= share(fuel));
            fuels.insert(place, fuel);
        }
        fuels
    }

    /// Litres of a fuel of the plan that are not yet in.
    fn left(&self, plan: &FillPlan, fuel: usize) -> f64 {
        in_litres(plan.volumes[fuel]) - in_litres(self.offers[fuel].poured)
    }

    /// A plan poured in this order of fuels, the last one to the click if it is
    /// named.
    pub(super) fn order(&self, plan: &FillPlan, fuels: &[usize], top_up: Option<usize>) -> Order {
        let pour = |fuel: usize| PlannedPour {
            fuel,
            volume: litres(self.left(plan, fuel).max(0.0)),
            to_click: top_up == Some(fuel),
        };
        let mut pours: Vec<PlannedPour> =
            fuels.iter().copied().filter(|&fuel| top_up != Some(fuel)).map(pour).collect();
        pours.extend(top_up.map(pour));
        let worst = self.worst(&pours);
        let from_level = (
            self.share_from(&pours, self.tank.level.low()),
            self.share_from(&pours, self.tank.level.high()),
        );
        Order { pours, worst, from_level }
    }

    /// Another plan carried out in the same order, without what it leaves out.
    pub fn again(&self, plan: &FillPlan, order: &Order) -> Order {
        let is_left = |fuel: &usize| order.top_up() == Some(*fuel) || self.left(plan, *fuel) > 1e-9;
        let fuels: Vec<usize> = order.pours.iter().map(|pour| pour.fuel).filter(is_left).collect();
        self.order(plan, &fuels, order.top_up())
    }

    /// The least and the most of the topping-up fuel that may go in before the
    /// click, over the levels that are possible.
    pub fn top_up_volumes(&self, order: &Order) -> Option<(Volume, Volume)> {
        order.top_up()?;
        let doses = doses(&order.pours);
        let left =
            |level| litres((self.capacity() - in_litres(level) - self.poured() - doses).max(0.0));
        Some((left(self.tank.level.high()), left(self.tank.level.low())))
    }
}
