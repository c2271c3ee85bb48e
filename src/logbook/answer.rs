//! The answer to a fill: what to pour, what that makes, and how sure that is.

use super::interpret::Asked;
use crate::calibration::{Contents, Judgement};
use crate::fill::{
    BurnDown, Impossible, NoRobustPlan, Obstacle, Order, Plan, Problem, Solution, Stop, economics,
};
use crate::fuel::{Content, Extras, HydrocarbonBase, Mixture};
use crate::quantity::{Band, Length, Money, Share, UnitPrice, Volume};
use crate::workings::Working;

/// One thing to do at the pump.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The fuel's place among the offers.
    pub fuel: usize,
    /// What is still to pour.
    pub volume: Volume,
    /// What is already in.
    pub poured: Volume,
    /// Whether the pump is left to click off, whatever the volume.
    pub to_click: bool,
    /// The least and the most that may go in before the click.
    pub range: Option<(Volume, Volume)>,
}

/// What is promised of the plan.
#[derive(Clone, Debug, PartialEq)]
pub enum Promise {
    /// Inside the aim whatever the true level and strengths are.
    Safe,
    /// No plan is: the proofs, and this one strays least.
    NotSafe(Vec<NoRobustPlan>),
    /// The aim is one share, which nothing uncertain can promise.
    Expected,
}

/// Why the aim is not met, and what helps.
#[derive(Clone, Debug, PartialEq)]
pub struct Plight {
    /// The obstacle and the ways out.
    pub impossible: Impossible,
    /// How far to drive until the tank is down to where the aim can be reached.
    pub burn_distance: Option<Length>,
}

/// What the tank holds afterwards.
#[derive(Clone, Debug, PartialEq)]
pub struct Blend {
    /// The level.
    pub level: Band<Volume>,
    /// The ethanol share: as expected, and the worst cases.
    pub share: Band<Share>,
    /// What there is beside petrol and ethanol, likewise.
    pub extras: Extras,
    /// The research octane number, at least: as expected and over the box.
    pub ron: Option<Band<f64>>,
    /// The motor octane number, likewise.
    pub mon: Option<Band<f64>>,
    /// The stoichiometric air-fuel ratio, over the bands of what it may hold.
    pub stoichiometric_afr: Option<Band<f64>>,
    /// Fuel volume at equal air and lambda over that of the reference fuel.
    pub volume_multiplier: Option<Band<f64>>,
    /// The contents at the expected values.
    pub mixture: Mixture,
}

impl Blend {
    /// What it may be made of.
    pub fn content(&self) -> Content {
        Content { ethanol: self.share, extras: self.extras }
    }

    /// The anti-knock index, at least.
    pub fn aki(&self) -> Option<Band<f64>> {
        let (ron, mon) = (self.ron?, self.mon?);
        let mean = f64::midpoint;
        let ends = [mean(ron.low(), mon.low()), mean(ron.high(), mon.high())];
        Band::enclosing(mean(ron.expected(), mon.expected()), ends)
    }
}

/// The answer to a fill.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// What was asked.
    pub asked: Asked,
    /// The plan shown: what was asked for, or the closest to it.
    pub plan: Plan,
    /// How to carry it out.
    pub order: Order,
    /// The other orders, for comparison, the given one first.
    pub orders: Vec<Order>,
    /// What to do at the pump, first step first.
    pub steps: Vec<Step>,
    /// What is promised; `None` where the aim is not met.
    pub promise: Option<Promise>,
    /// Why the aim is not met.
    pub plight: Option<Plight>,
    /// What the tank holds afterwards; `None` when it stays empty.
    pub blend: Option<Blend>,
    /// The verdict on each calibration, with its id.
    pub verdicts: Vec<(u32, Judgement)>,
    /// What this fill costs.
    pub cost: Option<Money>,
    /// What the added fuel costs per kilometre driven.
    pub cost_per_kilometre: Option<f64>,
    /// How far the tank goes, and how far it would with the reference fuel.
    pub range: Option<(Length, Length)>,
    /// The price of the strongest fuel at which it is as dear per kilometre as
    /// the weakest: the indices of the two fuels and the price.
    pub break_even: Option<(usize, usize, UnitPrice)>,
}

impl Answer {
    /// Works out the answer.
    pub fn of(asked: Asked) -> Self {
        let problem = &asked.problem;
        let (plan, order, promise, plight) = choose(&asked);
        let (plan, order) = rounded(problem, plan, order, promise.as_ref(), asked.pump_step);
        let mut orders = vec![order.clone()];
        orders.extend(
            problem.orders(&plan).into_iter().filter(|other| other.top_up() != order.top_up()),
        );
        let steps = steps(problem, &order);
        let blend = blend(&asked, &plan, &order);
        let verdicts = blend.as_ref().map_or_else(Vec::new, |blend| {
            let contents = Contents { share: blend.share, extras: blend.extras, ron: blend.ron };
            let judge = |(id, calibration): &(u32, crate::calibration::Calibration)| {
                (*id, calibration.judge(&contents, asked.fluid))
            };
            asked.calibrations.iter().map(judge).collect()
        });
        let cost = plan.cost;
        let reference = reference(&asked);
        let added = asked.mixture_of(&plan.volumes);
        let cost_per_kilometre = asked.consumption.zip(cost).and_then(|(consumption, cost)| {
            economics::cost_per_kilometre(cost, &added, consumption, &reference)
        });
        let range = asked.consumption.zip(blend.as_ref()).and_then(|(consumption, blend)| {
            let full_of_reference = reference * in_litres(blend.mixture.volume());
            Some((
                economics::range(&blend.mixture, consumption, &reference)?,
                economics::range(&full_of_reference, consumption, &reference)?,
            ))
        });
        let break_even = break_even(&asked);
        Self {
            asked,
            plan,
            order,
            orders,
            steps,
            promise,
            plight,
            blend,
            verdicts,
            cost,
            cost_per_kilometre,
            range,
            break_even,
        }
    }

    /// How each number came about.
    pub fn workings(&self) -> Vec<Working> {
        super::derivation::workings(self)
    }

    /// Whether the plan pours more than the last drops before a click.
    pub fn leaves_something_to_pour(&self) -> bool {
        const DROPS_L: f64 = 0.05;
        self.steps.iter().any(|step| in_litres(step.volume) >= DROPS_L)
    }

    /// Whether there is nothing left to pour.
    pub fn is_done(&self) -> bool {
        self.steps.is_empty()
    }
}

fn in_litres(volume: Volume) -> f64 {
    volume.get::<uom::si::volume::liter>()
}

/// The plan to show and what can be said for it.
fn choose(asked: &Asked) -> (Plan, Order, Option<Promise>, Option<Plight>) {
    let problem = &asked.problem;
    let best_order = |plan: &Plan| {
        // At least the order with fixed litres is always there.
        let order = problem.orders(plan).into_iter().next();
        order.unwrap_or_else(|| problem.fixed_order(plan))
    };
    if asked.as_poured {
        let plan = problem.after(&poured(problem));
        let order = problem.fixed_order(&plan);
        return (plan, order, None, None);
    }
    match problem.solve() {
        Solution::Plan(plan) if problem.aim.low() == problem.aim.high() => {
            let order = best_order(&plan);
            (plan, order, Some(Promise::Expected), None)
        }
        Solution::Plan(plan) => match problem.robust() {
            Ok(robust) => (robust.plan, robust.order, Some(Promise::Safe), None),
            Err(proofs) => {
                let (plan, order) = problem.least_stray().map_or_else(
                    || {
                        let order = best_order(&plan);
                        (plan, order)
                    },
                    |robust| (robust.plan, robust.order),
                );
                (plan, order, Some(Promise::NotSafe(proofs)), None)
            }
        },
        Solution::Impossible(impossible) => {
            let closest = impossible.closest.clone();
            let plan = closest.unwrap_or_else(|| problem.after(&poured(problem)));
            let order = best_order(&plan);
            if is_near_enough(problem, &plan) && impossible.obstacle != Obstacle::Octane {
                return (plan, order, Some(Promise::Expected), None);
            }
            let burn_distance =
                impossible.burn_down.as_ref().and_then(|burn| distance(asked, burn));
            (plan, order, None, Some(Plight { impossible: *impossible, burn_distance }))
        }
    }
}

/// Whether a plan misses a single share by less than half a point: what rounding
/// to the pump's step leaves, and less than any uncertainty of a fill.
fn is_near_enough(problem: &Problem, plan: &Plan) -> bool {
    const HALF_A_POINT: f64 = 0.005;
    let wanted = match problem.stop {
        Stop::Brim => problem.tank.capacity,
        Stop::Level(level) => level,
        Stop::AtMost(_) | Stop::Budget(_) | Stop::Least => return false,
    };
    (in_litres(plan.level) - in_litres(wanted)).abs() < 1e-6
        && problem.aim.low() == problem.aim.high()
        && plan.share.is_some_and(|share| {
            (share.fraction() - problem.aim.low().fraction()).abs() <= HALF_A_POINT
        })
}

fn poured(problem: &Problem) -> Vec<Volume> {
    problem.offers.iter().map(|offer| offer.poured).collect()
}

fn distance(asked: &Asked, burn: &BurnDown) -> Option<Length> {
    let present = tank_mixture(asked)?;
    let share_burned = in_litres(burn.away) / in_litres(present.volume());
    economics::range(&(present * share_burned), asked.consumption?, &reference(asked))
}

/// What is in the tank, with what was already poured.
fn tank_mixture(asked: &Asked) -> Option<Mixture> {
    let all = asked.present() + asked.mixture_of(&poured(&asked.problem));
    (in_litres(all.volume()) > 0.0).then_some(all)
}

/// One litre of the reference fuel.
fn reference(asked: &Asked) -> Mixture {
    let litre = crate::quantity::notation::VolumeUnit::Litre.quantity(1.0);
    Mixture::splash(litre, asked.reference, &HydrocarbonBase::default())
}

/// The plan in steps of the pump, so rounded that the promise still holds.
fn rounded(
    problem: &Problem,
    plan: Plan,
    order: Order,
    promise: Option<&Promise>,
    step: Option<Volume>,
) -> (Plan, Order) {
    let Some(step) = step else { return (plan, order) };
    let keeps_promise = |candidate: &Plan| {
        let worst = problem.again(candidate, &order).worst;
        let inside = |share| problem.aim.admits(share);
        promise != Some(&Promise::Safe)
            || (worst.fits && inside(worst.share.low()) && inside(worst.share.high()))
    };
    let plan = problem.rounded(&plan, &order, step, keeps_promise);
    let order = problem.again(&plan, &order);
    (plan, order)
}

fn steps(problem: &Problem, order: &Order) -> Vec<Step> {
    let range = problem.top_up_volumes(order);
    order
        .pours
        .iter()
        .map(|pour| Step {
            fuel: pour.fuel,
            volume: pour.volume,
            poured: problem.offers[pour.fuel].poured,
            to_click: pour.to_click,
            range: range.filter(|_| pour.to_click),
        })
        .collect()
}

fn blend(asked: &Asked, plan: &Plan, order: &Order) -> Option<Blend> {
    let problem = &asked.problem;
    let tank = &problem.tank;
    let mixture = asked.present() + asked.mixture_of(&plan.volumes);
    if in_litres(mixture.volume()) <= 0.0 {
        return None;
    }
    let reference = reference(asked);
    let (share, extras) = (order.worst.share, extras_after(asked, order));
    let content = Content { ethanol: share, extras };
    let ron: Vec<Option<f64>> = problem.offers.iter().map(|offer| offer.ron).collect();
    let mon: Vec<Option<f64>> = asked.fuels.iter().map(|fuel| fuel.mon).collect();
    Some(Blend {
        level: order.worst.level,
        share,
        extras,
        ron: problem.worst_octane(&order.pours, tank.ron, &ron),
        mon: problem.worst_octane(&order.pours, asked.tank_mon, &mon),
        stoichiometric_afr: content.over(Mixture::stoichiometric_afr),
        volume_multiplier: content.over(|fuel| fuel.fuel_volume_multiplier(&reference)),
        mixture,
    })
}

/// What there is beside petrol and ethanol after the pours. Each kind mixes as ethanol
/// does, so its worst cases are found in the same way.
fn extras_after(asked: &Asked, order: &Order) -> Extras {
    let fuels = || asked.fuels.iter().map(|fuel| fuel.content.extras);
    if asked.tank_extras.is_none() && fuels().all(|it| it.is_none()) {
        return Extras::default();
    }
    Extras::each(|of| {
        let mut problem = asked.problem.clone();
        problem.tank.share = of(&asked.tank_extras);
        for (offer, extras) in problem.offers.iter_mut().zip(fuels()) {
            offer.share = of(&extras);
        }
        problem.worst(&order.pours).share
    })
}

/// The strongest fuel against the weakest.
fn break_even(asked: &Asked) -> Option<(usize, usize, UnitPrice)> {
    let share = |index: &usize| asked.problem.offers[*index].share.expected().fraction();
    let indices = 0..asked.fuels.len();
    let strongest = indices.clone().max_by(|a, b| share(a).total_cmp(&share(b)))?;
    let weakest = indices.min_by(|a, b| share(a).total_cmp(&share(b)))?;
    if share(&strongest) <= share(&weakest) {
        return None;
    }
    let price = asked.problem.offers[weakest].price?;
    let even =
        economics::break_even(price, &asked.fuels[weakest].litre, &asked.fuels[strongest].litre)?;
    Some((strongest, weakest, even))
}
