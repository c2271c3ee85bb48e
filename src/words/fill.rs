//! What is said of a fill.

use crate::answers::fill::{FillAnswer, GivenUp, Infeasible, Miss, Promise, YieldingWish};
use crate::fill::{Cycles, FillImpossible, FillRule, Obstacle, StopRule};
use crate::message::keys::{fill_said as keys, notation};
use crate::quantity::notation::{LITRE, Printer};
use crate::quantity::{Share, Volume};
use crate::tank::Estimate;

use super::and;

/// The plan in one line, for the foot of a phone.
///
/// A plan that misses the aim says so in its first word: nobody at a pump reads on.
pub fn in_short(answer: &FillAnswer, printer: &Printer) -> String {
    if answer.asked.as_poured {
        return keys::YOU_HAVE.say().into();
    }
    let steps = steps(answer, |volume, fuel| keys::Step { volume, fuel }.say(), printer);
    let misses = answer.misses();
    let within = misses.is_some();
    let is_begun = answer.asked.problem.offers.iter().any(|it| it.poured > Volume::default());
    let plan = match (steps, is_begun) {
        (Some(steps), _) if answer.given_up.is_some() => keys::ThenStop { steps }.say(),
        (Some(steps), _) => steps,
        (None, true) => keys::NothingLeft { within }.say(),
        (None, false) => keys::NothingToPour { within }.say(),
    };
    match misses {
        Some(Miss::Blend) => keys::Misses { aim: wanted(answer, printer), plan }.say(),
        Some(Miss::Octane) => keys::OctaneTooLow { plan }.say(),
        None => plan,
    }
}

/// What is still to be poured, step by step; nothing where that is nothing.
fn steps(
    answer: &FillAnswer,
    say: impl Fn(String, &String) -> String,
    printer: &Printer,
) -> Option<String> {
    let step = |step: &crate::answers::fill::FillStep| {
        say(printer.volume(step.volume), &answer.asked.fuels[step.fuel].name)
    };
    let steps = answer.steps.iter().map(step).rev();
    steps.reduce(|rest, first| keys::Then { first, rest }.say())
}

/// What is aimed at: `E30`, or `E24 to E40`.
fn wanted(answer: &FillAnswer, printer: &Printer) -> String {
    let aim = answer.asked.problem.aim;
    if aim.low() == aim.high() {
        printer.edge(aim.low())
    } else {
        printer.window(aim.low(), aim.high())
    }
}

/// The plan that keeps the aim, and what the tank would be with what was wished instead.
pub fn given_up(given_up: &GivenUp, answer: &FillAnswer, printer: &Printer) -> String {
    let share = |share: Option<Share>| share.map_or_else(String::new, |it| printer.grade(it));
    let makes = share(answer.blend.as_ref().map(|it| it.share.expected()));
    let steps = steps(answer, |volume, fuel| keys::StepOf { volume, fuel }.say(), printer);
    let is_begun = answer.asked.problem.offers.iter().any(|it| it.poured > Volume::default());
    let act = match (steps, is_begun) {
        (Some(steps), _) => keys::PutInAndStop { steps, blend: makes }.say(),
        (None, true) => keys::StopHere { blend: makes }.say(),
        (None, false) => keys::PutInNothing { blend: makes }.say(),
    };
    let wishes = given_up.wishes.iter().enumerate();
    let wishes: Vec<String> = wishes.map(|(at, it)| wish(*it, at == 0, answer, printer)).collect();
    let wishes = and(&wishes);
    keys::Otherwise { act, wishes, blend: share(given_up.otherwise.share) }.say()
}

fn wish(wish: YieldingWish, leads: bool, answer: &FillAnswer, printer: &Printer) -> String {
    match wish {
        YieldingWish::Level(StopRule::Level(level)) => {
            keys::WishLevel { leads, level: printer.volume(level) }.say()
        }
        YieldingWish::Level(_) => keys::WishFull { leads }.say(),
        YieldingWish::UseAll(fuel) => {
            let limit = answer.asked.problem.offers[fuel].limit.unwrap_or_default();
            let fuel = &answer.asked.fuels[fuel].name;
            keys::WishAll { leads, volume: printer.volume(limit), fuel }.say()
        }
    }
}

/// Whether how far to fill is among what gave way.
pub fn is_level_given_up(given_up: &GivenUp) -> bool {
    given_up.wishes.iter().any(|it| matches!(it, YieldingWish::Level(_)))
}

/// What the log says right after a fill was recorded: `About E30, full.`
pub fn recorded(estimate: &Estimate, capacity: Volume, printer: &Printer) -> String {
    let blend = printer.grade(estimate.share.expected());
    let full = estimate.level.high() >= capacity * FULL_FROM;
    if full {
        return keys::RecordedFull { blend }.say();
    }
    keys::Recorded { blend, level: printer.volume(estimate.level.expected()) }.say()
}

/// From here on a tank is called full: closer than any gauge shows.
const FULL_FROM: f64 = 0.985;

/// What the blend comes to: `E30`, and between what.
pub fn outcome(answer: &FillAnswer, printer: &Printer) -> Option<(String, String)> {
    let share = answer.blend.as_ref()?.share;
    let [low, expected, high] = printer.grade_ends(share);
    let between = if low == high { String::new() } else { notation::Between { low, high }.say() };
    Some((expected, between))
}

/// What is promised of the plan.
pub fn promise(answer: &FillAnswer, printer: &Printer) -> Option<String> {
    let aim = || wanted(answer, printer);
    match answer.promise.as_ref()? {
        Promise::Safe => Some(keys::Safe { aim: aim() }.say()),
        Promise::NotSafe(proofs) if proofs.is_empty() => Some(keys::TooLittle { aim: aim() }.say()),
        Promise::NotSafe(proofs) => {
            let mut rules: Vec<FillRule> = Vec::new();
            for proof in proofs {
                for (rule, _) in &proof.proof {
                    if !rules.contains(rule) {
                        rules.push(*rule);
                    }
                }
            }
            Some(keys::NotSafe { aim: aim(), rules: together(&rules, answer) }.say())
        }
        Promise::Expected => None,
    }
}

/// Rules, as parts of a sentence.
fn together(rules: &[FillRule], answer: &FillAnswer) -> String {
    let names: Vec<String> = rules.iter().map(|rule| rule_name(*rule, answer)).collect();
    if names.is_empty() { keys::THE_RULES.say().into() } else { and(&names) }
}

fn rule_name(rule: FillRule, answer: &FillAnswer) -> String {
    let name = |fuel: usize| &answer.asked.fuels[fuel].name;
    let aim = answer.asked.problem.aim;
    let rule = match rule {
        FillRule::AimLow if aim.low() == aim.high() => keys::BLEND_WANTED,
        FillRule::AimLow => keys::WEAKEST_BLEND,
        FillRule::AimHigh => keys::STRONGEST_BLEND,
        FillRule::Space => keys::SPACE,
        FillRule::FinalLevel => match answer.asked.problem.stop {
            StopRule::Brim => keys::FILLING_TO_BRIM,
            _ => keys::LEVEL_TO_STOP,
        },
        FillRule::AtMost => keys::VOLUME_TO_STOP,
        FillRule::Budget => keys::MONEY_TO_STOP,
        FillRule::Octane => keys::OCTANE_NEEDED,
        FillRule::FuelLimit(fuel) => return keys::HowMuchThereIs { fuel: name(fuel) }.say(),
        FillRule::UseAll(fuel) => return keys::UsingAll { fuel: name(fuel) }.say(),
        FillRule::AlreadyIn(fuel) => return keys::AlreadyIn { fuel: name(fuel) }.say(),
    };
    rule.say().into()
}

/// What stands in the way of the aim, and what helps: sentences.
pub fn infeasible(infeasible: &Infeasible, answer: &FillAnswer, printer: &Printer) -> Vec<String> {
    let impossible = &infeasible.impossible;
    let wanted = wanted(answer, printer);
    let mut lines = vec![obstacle(impossible, &wanted, answer, printer)];
    if let Some((low, high)) = impossible.reachable {
        // Less than a point apart, they are one blend.
        lines.push(if high.fraction() - low.fraction() < 0.01 {
            keys::WithinReachOne { blend: printer.grade(low) }.say()
        } else {
            // What can be reached is a promise, so it is rounded inwards.
            let (low, high) = (printer.grade_at_most(low), printer.grade_at_least(high));
            keys::WithinReach { low, high }.say()
        });
    }
    if let Some((ron, _)) = &impossible.highest_ron {
        lines.push(keys::HighestRon { ron: printer.at_least(*ron, 1) }.say());
    }
    lines.extend(burn_down(infeasible, &wanted, answer, printer));
    lines.extend(impossible.cycles.as_ref().map(|cycles| refills(cycles, answer, printer)));
    match (impossible.obstacle, &impossible.without_limit, &impossible.fullest_at_aim) {
        (Obstacle::StopRule, Some(plan), _) => {
            lines.push(keys::WithoutLimit { volume: printer.volume(plan.added) }.say());
        }
        (Obstacle::FuelLimit, _, Some(plan)) => {
            let level = printer.volume(plan.level);
            lines.push(keys::WorksUpTo { aim: wanted, level }.say());
        }
        _ => {}
    }
    lines
}

fn obstacle(
    impossible: &FillImpossible,
    wanted: &str,
    answer: &FillAnswer,
    printer: &Printer,
) -> String {
    let those = |is_meant: fn(&FillRule) -> bool| {
        let rules: Vec<FillRule> = impossible.binding.iter().copied().filter(is_meant).collect();
        (!rules.is_empty()).then(|| together(&rules, answer))
    };
    match impossible.obstacle {
        Obstacle::TooWeakEver(limit) => {
            keys::TooWeak { aim: wanted, blend: printer.grade(limit) }.say()
        }
        Obstacle::TooStrongEver(limit) => {
            keys::TooStrong { aim: wanted, blend: printer.grade(limit) }.say()
        }
        Obstacle::TooFull => match those(|rule| matches!(rule, FillRule::AlreadyIn(_))) {
            Some(rules) => keys::BecauseOf { aim: wanted, rules }.say(),
            None => keys::TooFull { aim: wanted }.say(),
        },
        Obstacle::StopRule => {
            keys::WithSoLittle { aim: wanted, rules: together(&impossible.binding, answer) }.say()
        }
        Obstacle::FuelLimit => {
            let limits = those(|rule| matches!(rule, FillRule::FuelLimit(_) | FillRule::UseAll(_)));
            let rules = limits.unwrap_or_else(|| keys::A_LIMIT.say().into());
            keys::NotAllowed { aim: wanted, rules }.say()
        }
        Obstacle::Overshoots => {
            let share = answer.blend.as_ref().map(|it| printer.grade(it.share.expected()));
            let level = printer.volume(answer.plan.level);
            let blend = share.unwrap_or_default();
            match &impossible.fullest_at_aim {
                Some(plan) => {
                    let stop = printer.volume(plan.level);
                    keys::BecomesStopAt { level, blend, aim: wanted, stop }.say()
                }
                None => keys::Becomes { level, blend }.say(),
            }
        }
        Obstacle::Octane => keys::NotWithOctane { aim: wanted }.say(),
    }
}

fn burn_down(
    infeasible: &Infeasible,
    wanted: &str,
    answer: &FillAnswer,
    printer: &Printer,
) -> Option<String> {
    let burn = infeasible.impossible.burn_down.as_ref()?;
    // Less than a gauge shows is no advice.
    if LITRE.value_of(burn.away) < LEAST_TO_BURN_L {
        return None;
    }
    let then: Vec<String> = burn
        .then
        .iter()
        .zip(&answer.asked.fuels)
        .filter(|(volume, _)| printer.units.volume().value_of(**volume) > 0.05)
        .map(|(volume, fuel)| {
            keys::Step { volume: printer.volume(*volume), fuel: &fuel.name }.say()
        })
        .collect();
    let then = if then.is_empty() { keys::NOTHING_MORE.say().into() } else { and(&then) };
    let (level, aim) = (printer.volume(burn.level), wanted);
    let distance = infeasible.burn_distance.map(|distance| printer.distance(distance));
    let volume = is_worth_draining(infeasible, answer).then(|| printer.volume(burn.away));
    let act = match (distance, volume) {
        (None, None) => keys::DriveDown { level, then, aim }.say(),
        (Some(distance), None) => keys::DriveDownAbout { level, distance, then, aim }.say(),
        (None, Some(volume)) => keys::DriveOrDrain { level, volume, then, aim }.say(),
        (Some(distance), Some(volume)) => {
            keys::DriveAboutOrDrain { level, distance, volume, then, aim }.say()
        }
    };
    Some(if burn.below_reserve { format!("{act} {}", keys::BELOW_RESERVE.say()) } else { act })
}

/// So much less in the tank, in litres, is the least that a driver can aim at.
const LEAST_TO_BURN_L: f64 = 0.5;

/// Whether a miss is worth the danger and the trouble of draining a tank: at least three
/// points of blend, and more than what no gauge shows.
fn is_worth_draining(infeasible: &Infeasible, answer: &FillAnswer) -> bool {
    const POINTS: f64 = 0.03;
    const LITRES: f64 = 1.0;
    let aim = answer.asked.problem.aim;
    let away = infeasible.impossible.burn_down.as_ref().map(|it| it.away);
    let litres = away.map_or(0.0, |it| LITRE.value_of(it));
    let missed = answer.plan.share.map_or(0.0, |share| {
        let share = share.fraction();
        (aim.low().fraction() - share).max(share - aim.high().fraction())
    });
    missed >= POINTS && litres >= LITRES
}

fn refills(cycles: &Cycles, answer: &FillAnswer, printer: &Printer) -> String {
    let shares: Vec<String> = cycles.shares.iter().map(|share| printer.grade(*share)).collect();
    keys::Refills {
        count: shares.len(),
        fuel: &answer.asked.fuels[cycles.fuel].name,
        blends: shares.join(", "),
    }
    .say()
}
