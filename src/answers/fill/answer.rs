//! The answer to a fill: what to pour, what that makes, and how sure that is.

use super::choice::{Chosen, GivenUp, Infeasible, Miss, Promise, choose, hits, reference};
use super::reading::{FillAsked, octane_missing};
use crate::calibration::{Contents, Judgement, Reason};
use crate::document::Field;
use crate::fill::{CheckedProblem, FillPlan, Order, economics};
use crate::fuel::{Content, Extras, Mixture};
use crate::quantity::notation::LITRE;
use crate::quantity::{Band, Length, Money, Share, UnitPrice, Volume};

/// One thing to do at the pump.
#[derive(Clone, Debug, PartialEq)]
pub struct FillStep {
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

/// What the tank holds afterwards.
#[derive(Clone, Debug, PartialEq)]
pub struct BlendAnswer {
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

impl BlendAnswer {
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
pub struct FillAnswer {
    /// What was asked, less what gave way to the aim.
    pub asked: FillAsked,
    /// What gave way to the aim, where something had to.
    pub given_up: Option<GivenUp>,
    /// The plan shown: what was asked for, or the closest to it.
    pub plan: FillPlan,
    /// How to carry it out.
    pub order: Order,
    /// The other orders, for comparison, the given one first.
    pub orders: Vec<Order>,
    /// What to do at the pump, first step first.
    pub steps: Vec<FillStep>,
    /// What is promised; `None` where the aim is not met.
    pub promise: Option<Promise>,
    /// Why the aim is not met.
    pub infeasible: Option<Infeasible>,
    /// What the tank holds afterwards; `None` when it stays empty.
    pub blend: Option<BlendAnswer>,
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

impl FillAnswer {
    /// Works out the answer.
    pub fn of(asked: FillAsked) -> Self {
        let Chosen { problem, plan, order, promise, infeasible, given_up } = choose(&asked);
        let asked = FillAsked { problem, ..asked };
        let problem = &asked.problem;
        let (plan, order, promise) = rounded(problem, plan, &order, promise, asked.pump_step);
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
            given_up,
            plan,
            order,
            orders,
            steps,
            promise,
            infeasible,
            blend,
            verdicts,
            cost,
            cost_per_kilometre,
            range,
            break_even,
        }
    }

    /// In what the plan misses the aim; `None` where it does not, or there is none.
    pub fn misses(&self) -> Option<Miss> {
        if self.asked.as_poured {
            None
        } else if !hits(self.asked.problem.aim, &self.plan) {
            Some(Miss::Blend)
        } else {
            self.infeasible.is_some().then_some(Miss::Octane)
        }
    }

    /// Where an octane number has to be given before a calibration that needs one can be
    /// judged on what the tank then holds.
    pub fn octane_missing(&self) -> Vec<Field> {
        let unknown = |it: &(u32, Judgement)| it.1.reasons.contains(&Reason::OctaneUnknown);
        if !self.asked.octane_missing.is_empty() || !self.verdicts.iter().any(unknown) {
            return self.asked.octane_missing.clone();
        }
        let poured = |fuel: usize| in_litres(self.plan.volumes[fuel]) > 0.0;
        octane_missing(&self.asked.problem.tank, &self.asked.fuels, |fuel| {
            poured(fuel).then(|| self.asked.problem.offers[fuel].ron)
        })
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

/// The step in which litres are shown.
const SHOWN_L: f64 = 0.1;

/// The plan in steps of the pump, so rounded that it still hits the aim and keeps its
/// promise; where that takes finer litres, in those that are shown.
fn rounded(
    problem: &CheckedProblem,
    plan: FillPlan,
    order: &Order,
    promise: Option<Promise>,
    step: Option<Volume>,
) -> (FillPlan, Order, Option<Promise>) {
    let keeps_promise = |candidate: &FillPlan| {
        let worst = problem.again(candidate, order).worst;
        let inside = |share| problem.aim.admits(share);
        promise != Some(Promise::Safe)
            || (worst.fits && inside(worst.share.low()) && inside(worst.share.high()))
    };
    let is_hit = hits(problem.aim, &plan);
    let is_as_good = |it: &FillPlan| keeps_promise(it) && (hits(problem.aim, it) || !is_hit);
    let shown = LITRE.quantity(SHOWN_L);
    let in_steps = [step.unwrap_or(shown), shown]
        .into_iter()
        .find_map(|step| problem.rounded(&plan, order, step, is_as_good));
    // In an all but empty tank a tenth of a litre is too much to hit anything; what is
    // shown is then still what is poured, and no more is promised of it.
    let in_steps = in_steps.or_else(|| problem.rounded(&plan, order, shown, |_| true));
    let plan = in_steps.unwrap_or(plan);
    let promise = if keeps_promise(&plan) { promise } else { Some(Promise::NotSafe(Vec::new())) };
    let order = problem.again(&plan, order);
    (plan, order, promise)
}

fn steps(problem: &CheckedProblem, order: &Order) -> Vec<FillStep> {
    let range = problem.top_up_volumes(order);
    order
        .pours
        .iter()
        .map(|pour| FillStep {
            fuel: pour.fuel,
            volume: pour.volume,
            poured: problem.offers[pour.fuel].poured,
            to_click: pour.to_click,
            range: range.filter(|_| pour.to_click),
        })
        .collect()
}

fn blend(asked: &FillAsked, plan: &FillPlan, order: &Order) -> Option<BlendAnswer> {
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
    Some(BlendAnswer {
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
fn extras_after(asked: &FillAsked, order: &Order) -> Extras {
    let fuels = || asked.fuels.iter().map(|fuel| fuel.content.extras);
    if asked.tank_extras.is_none() && fuels().all(|it| it.is_none()) {
        return Extras::default();
    }
    Extras::each(|of| {
        let shares = fuels().map(|extras| of(&extras));
        let problem = asked.problem.with_shares(of(&asked.tank_extras), shares);
        problem.worst(&order.pours).share
    })
}

/// The strongest fuel against the weakest.
fn break_even(asked: &FillAsked) -> Option<(usize, usize, UnitPrice)> {
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
