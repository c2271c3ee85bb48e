//! Which plan is shown, and what is promised of it.
//!
//! The aim is a promise, and how full the tank gets is a wish: where both cannot be had,
//! the plan keeps the aim, unless the person says otherwise.

use super::reading::FillAsked;
use crate::fill::{
    Aim, BurnDown, CheckedProblem, FillImpossible, FillObjective, FillPlan, NoRobustPlan, Obstacle,
    Offer, Order, Solution, StopRule, economics,
};
use crate::fuel::{HydrocarbonBase, Mixture};
use crate::quantity::notation::LITRE;
use crate::quantity::{Length, Volume};

/// What is promised of the plan.
#[derive(Clone, Debug, PartialEq)]
pub enum Promise {
    /// Inside the aim whatever the true level and strengths are.
    Safe,
    /// No plan is: the proofs, and this one strays least. Without a proof, only litres finer
    /// than those that are shown would be.
    NotSafe(Vec<NoRobustPlan>),
    /// The aim is one share, which nothing uncertain can promise.
    Expected,
}

/// Why the aim is not met, and what helps.
#[derive(Clone, Debug, PartialEq)]
pub struct Infeasible {
    /// The obstacle and the ways out.
    pub impossible: FillImpossible,
    /// How far to drive until the tank is down to where the aim can be reached.
    pub burn_distance: Option<Length>,
}

/// A wish that gives way to the aim.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum YieldingWish {
    /// To fill as far as this stop rule says.
    Level(StopRule),
    /// To use all there is of the fuel with this index.
    UseAll(usize),
}

/// What gave way to the aim.
#[derive(Clone, Debug, PartialEq)]
pub struct GivenUp {
    /// The wishes.
    pub wishes: Vec<YieldingWish>,
    /// The plan that comes closest to the aim with all of them.
    pub otherwise: FillPlan,
}

/// In what the plan misses the aim.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Miss {
    /// The blend is outside of it.
    Blend,
    /// The blend is inside, but has too little octane.
    Octane,
}

/// The plan to show, and what can be said for it.
pub(crate) struct Chosen {
    /// What was asked, less what gave way.
    pub(crate) problem: CheckedProblem,
    pub(crate) plan: FillPlan,
    pub(crate) order: Order,
    pub(crate) promise: Option<Promise>,
    pub(crate) infeasible: Option<Infeasible>,
    pub(crate) given_up: Option<GivenUp>,
}

/// A share that misses a single one by less than half a point hits it: that is what
/// rounding to the pump's step leaves, and less than any uncertainty of a fill.
const HALF_A_POINT: f64 = 0.005;

/// What arithmetic and tenths of a litre leave at the edge of a window.
const AT_THE_EDGE: f64 = 0.0005;

/// Whether the expected share of a plan is what was aimed at.
pub(crate) fn hits(aim: Aim, plan: &FillPlan) -> bool {
    let slack = if aim.low() == aim.high() { HALF_A_POINT } else { AT_THE_EDGE };
    plan.share.is_none_or(|share| {
        let share = share.fraction();
        share >= aim.low().fraction() - slack && share <= aim.high().fraction() + slack
    })
}

/// Chooses the plan.
pub(crate) fn choose(asked: &FillAsked) -> Chosen {
    let problem = asked.problem.clone();
    if asked.as_poured {
        let plan = problem.after(&poured(&problem));
        let order = problem.fixed_order(&plan);
        let (promise, infeasible, given_up) = (None, None, None);
        return Chosen { problem, plan, order, promise, infeasible, given_up };
    }
    let impossible = match problem.solve() {
        Solution::Plan(plan) => return keeping(problem, plan),
        Solution::Impossible(impossible) => impossible,
    };
    let closest = impossible.closest.clone();
    let plan = closest.unwrap_or_else(|| problem.after(&poured(&problem)));
    if is_near_enough(&problem, &plan) && impossible.obstacle != Obstacle::Octane {
        let order = best_order(&problem, &plan);
        let promise = Some(Promise::Expected);
        return Chosen { problem, plan, order, promise, infeasible: None, given_up: None };
    }
    if !asked.anyway
        && let Some((wishes, kept)) = less_wished(&problem)
    {
        let given_up = (!wishes.is_empty()).then_some(GivenUp { wishes, otherwise: plan });
        return Chosen { given_up, ..kept };
    }
    let order = best_order(&problem, &plan);
    let burn_distance = impossible.burn_down.as_ref().and_then(|burn| distance(asked, burn));
    let infeasible = Some(Infeasible { impossible: *impossible, burn_distance });
    Chosen { problem, plan, order, promise: None, infeasible, given_up: None }
}

/// The best way to carry a plan out.
fn best_order(problem: &CheckedProblem, plan: &FillPlan) -> Order {
    // At least the order with fixed litres is always there.
    let order = problem.orders(plan).into_iter().next();
    order.unwrap_or_else(|| problem.fixed_order(plan))
}

/// A problem that has a plan which keeps the aim, with the plan that is safest.
fn keeping(problem: CheckedProblem, plan: FillPlan) -> Chosen {
    let (infeasible, given_up) = (None, None);
    if problem.aim.low() == problem.aim.high() {
        let order = best_order(&problem, &plan);
        let promise = Some(Promise::Expected);
        return Chosen { problem, plan, order, promise, infeasible, given_up };
    }
    match problem.robust() {
        Ok(robust) => {
            let (plan, order) = (robust.plan, robust.order);
            Chosen { problem, plan, order, promise: Some(Promise::Safe), infeasible, given_up }
        }
        Err(proofs) => {
            let (plan, order) = match problem.least_stray() {
                Some(stray) if hits(problem.aim, &stray.plan) => (stray.plan, stray.order),
                _ => {
                    let plan = in_the_middle(&problem).unwrap_or(plan);
                    let order = best_order(&problem, &plan);
                    (plan, order)
                }
            };
            let promise = Some(Promise::NotSafe(proofs));
            Chosen { problem, plan, order, promise, infeasible, given_up }
        }
    }
}

/// The plan for the middle of a window, which is furthest from both of its ends.
fn in_the_middle(problem: &CheckedProblem) -> Option<FillPlan> {
    match problem.with_aim(Aim::share(problem.aim.middle())).solve() {
        Solution::Plan(plan) => Some(plan),
        Solution::Impossible(_) => None,
    }
}

/// The fill without the wishes that stand against the aim, as few of them as possible,
/// and its plan; `None` where that does not help either.
fn less_wished(problem: &CheckedProblem) -> Option<(Vec<YieldingWish>, Chosen)> {
    let level = |problem: &CheckedProblem| {
        let (stop, room) = (problem.stop, problem.room()?);
        let less = problem.changed(|it| {
            it.stop = StopRule::AtMost(room);
            it.objective = FillObjective::MostVolume;
        });
        Some((vec![YieldingWish::Level(stop)], less.ok()?))
    };
    let all_of_it = |problem: &CheckedProblem| {
        let offers = problem.offers.iter().enumerate().filter(|it| it.1.use_all);
        let wishes: Vec<_> = offers.map(|(index, _)| YieldingWish::UseAll(index)).collect();
        let less = problem.changed(|it| {
            for offer in &mut it.offers {
                offer.use_all = false;
            }
        });
        (!wishes.is_empty()).then_some((wishes, less.ok()?))
    };
    let both = |problem: &CheckedProblem| {
        let (mut wishes, less) = level(problem)?;
        let (more, less) = all_of_it(&less)?;
        wishes.extend(more);
        Some((wishes, less))
    };
    let kept = [level(problem), all_of_it(problem), both(problem)].into_iter().flatten().find_map(
        |(wishes, less)| match less.solve() {
            Solution::Plan(plan) => Some((wishes, keeping(less, plan))),
            Solution::Impossible(_) => None,
        },
    );
    kept.or_else(|| as_it_is(problem))
}

/// The tank as it is, where that is what was aimed at within what rounding leaves: then
/// there is nothing to do, whatever was wished.
fn as_it_is(problem: &CheckedProblem) -> Option<(Vec<YieldingWish>, Chosen)> {
    let plan = problem.after(&poured(problem));
    let is_there = plan.share.is_some() && hits(problem.aim, &plan);
    if !is_there || problem.ron_min.is_some_and(|least| plan.ron < Some(least)) {
        return None;
    }
    let unused = |it: &(usize, &Offer)| it.1.use_all && it.1.limit != Some(it.1.poured);
    let unused = problem.offers.iter().enumerate().filter(unused);
    let wishes = problem.room().map(|_| YieldingWish::Level(problem.stop)).into_iter();
    let wishes = wishes.chain(unused.map(|(fuel, _)| YieldingWish::UseAll(fuel))).collect();
    let order = problem.fixed_order(&plan);
    let problem = problem.clone();
    let (promise, infeasible, given_up) = (Some(Promise::Expected), None, None);
    Some((wishes, Chosen { problem, plan, order, promise, infeasible, given_up }))
}

/// Whether a plan misses a single share by next to nothing.
fn is_near_enough(problem: &CheckedProblem, plan: &FillPlan) -> bool {
    let wanted = match problem.stop {
        StopRule::Brim => problem.tank.capacity,
        StopRule::Level(level) => level,
        StopRule::AtMost(_) | StopRule::Budget(_) | StopRule::Least => return false,
    };
    (in_litres(plan.level) - in_litres(wanted)).abs() < 1e-6
        && problem.aim.low() == problem.aim.high()
        && plan.share.is_some()
        && hits(problem.aim, plan)
}

fn in_litres(volume: Volume) -> f64 {
    LITRE.value_of(volume)
}

/// What is in of each fuel.
pub(crate) fn poured(problem: &CheckedProblem) -> Vec<Volume> {
    problem.offers.iter().map(|offer| offer.poured).collect()
}

fn distance(asked: &FillAsked, burn: &BurnDown) -> Option<Length> {
    let present = tank_mixture(asked)?;
    let share_burned = in_litres(burn.away) / in_litres(present.volume());
    economics::range(&(present * share_burned), asked.consumption?, &reference(asked))
}

/// What is in the tank, with what was already poured.
fn tank_mixture(asked: &FillAsked) -> Option<Mixture> {
    let all = asked.present() + asked.mixture_of(&poured(&asked.problem));
    (in_litres(all.volume()) > 0.0).then_some(all)
}

/// One litre of the reference fuel.
pub(crate) fn reference(asked: &FillAsked) -> Mixture {
    let litre = LITRE.quantity(1.0);
    Mixture::splash(litre, asked.reference, &HydrocarbonBase::default())
}
