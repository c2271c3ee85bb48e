//! What is said of a fill.

use crate::answers::fill::{FillAnswer, GivenUp, Infeasible, Miss, Promise, YieldingWish};
use crate::fill::{Cycles, FillImpossible, FillRule, Obstacle, StopRule};
use crate::quantity::notation::{LITRE, Printer};
use crate::quantity::{Share, Volume};
use crate::tank::Estimate;

/// The plan in one line, for the foot of a phone.
///
/// A plan that misses the aim says so in its first word: nobody at a pump reads on.
pub fn in_short(answer: &FillAnswer, printer: &Printer) -> String {
    if answer.asked.as_poured {
        return "You have".into();
    }
    let steps = steps(answer, printer, "");
    let is_begun = answer.asked.problem.offers.iter().any(|it| it.poured > Volume::default());
    let what = match (steps.is_empty(), is_begun) {
        (false, _) if answer.given_up.is_some() => format!("{steps}, then stop"),
        (false, _) => steps,
        (true, true) => "Nothing left to pour".into(),
        (true, false) => "Nothing to pour".into(),
    };
    match answer.misses() {
        Some(Miss::Blend) => format!("Misses {}: {}", wanted(answer, printer), lower(&what)),
        Some(Miss::Octane) => format!("Too little octane: {}", lower(&what)),
        None => what,
    }
}

/// What is still to be poured: `16.0 L of E85, then 29.0 L of Petrol`, with the word between
/// the litres and the fuel.
fn steps(answer: &FillAnswer, printer: &Printer, of: &str) -> String {
    let step = |step: &crate::answers::fill::FillStep| {
        let name = &answer.asked.fuels[step.fuel].name;
        format!("{} {of}{name}", printer.volume(step.volume))
    };
    answer.steps.iter().map(step).collect::<Vec<_>>().join(", then ")
}

/// In the middle of a sentence.
fn lower(text: &str) -> String {
    text.replacen("Nothing", "nothing", 1)
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
    let steps = steps(answer, printer, "of ");
    let is_begun = answer.asked.problem.offers.iter().any(|it| it.poured > Volume::default());
    let act = match (steps.is_empty(), is_begun) {
        (false, _) => format!("Put in {steps} and stop: {makes}."),
        (true, true) => format!("Stop here: {makes}."),
        (true, false) => format!("Put in nothing: the tank holds {makes}."),
    };
    let wishes: Vec<String> = given_up.wishes.iter().map(|it| wish(*it, answer, printer)).collect();
    let wishes = wishes.join(" and ");
    format!("{act} {} it would be {}.", capital(&wishes), share(given_up.otherwise.share))
}

fn wish(wish: YieldingWish, answer: &FillAnswer, printer: &Printer) -> String {
    match wish {
        YieldingWish::Level(StopRule::Level(level)) => format!("at {}", printer.volume(level)),
        YieldingWish::Level(_) => "full".into(),
        YieldingWish::UseAll(fuel) => {
            let limit = answer.asked.problem.offers[fuel].limit.unwrap_or_default();
            format!("with all {} of {}", printer.volume(limit), answer.asked.fuels[fuel].name)
        }
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|c| c.to_uppercase().to_string()).unwrap_or_default();
    first + letters.as_str()
}

/// Whether how far to fill is among what gave way.
pub fn is_level_given_up(given_up: &GivenUp) -> bool {
    given_up.wishes.iter().any(|it| matches!(it, YieldingWish::Level(_)))
}

/// What the log says right after a fill was recorded: `About E30, full.`
pub fn recorded(estimate: &Estimate, capacity: Volume, printer: &Printer) -> String {
    let blend = printer.grade(estimate.share.expected());
    let full = estimate.level.high() >= capacity * FULL_FROM;
    let level = if full { "full".to_owned() } else { printer.volume(estimate.level.expected()) };
    format!("About {blend}, {level}.")
}

/// From here on a tank is called full: closer than any gauge shows.
const FULL_FROM: f64 = 0.985;

/// What the blend comes to: `E30`, and between what.
pub fn outcome(answer: &FillAnswer, printer: &Printer) -> Option<(String, String)> {
    let share = answer.blend.as_ref()?.share;
    let [low, expected, high] = printer.grade_ends(share);
    let between = if low == high { String::new() } else { format!("between {low} and {high}") };
    Some((expected, between))
}

/// What is promised of the plan.
pub fn promise(answer: &FillAnswer, printer: &Printer) -> Option<String> {
    let window = || wanted(answer, printer);
    match answer.promise.as_ref()? {
        Promise::Safe => Some(format!(
            "Poured in this order, the blend lies inside {} as long as your ranges are right.",
            window()
        )),
        Promise::NotSafe(proofs) if proofs.is_empty() => Some(format!(
            "There is too little in the tank to be sure of {} with litres that a pump can give. Measure afterwards.",
            window()
        )),
        Promise::NotSafe(proofs) => {
            let mut rules: Vec<FillRule> = Vec::new();
            for proof in proofs {
                for (rule, _) in &proof.proof {
                    if !rules.contains(rule) {
                        rules.push(*rule);
                    }
                }
            }
            let rules = together(&rules, answer);
            Some(format!(
                "No plan stays inside {} whatever the true level and strengths are: {rules} cannot all hold in every case. This one strays least. Narrow what you gave as possible, or measure afterwards.",
                window()
            ))
        }
        Promise::Expected => None,
    }
}

/// Rules, as parts of a sentence.
fn together(rules: &[FillRule], answer: &FillAnswer) -> String {
    let names: Vec<String> = rules.iter().map(|rule| rule_name(*rule, answer)).collect();
    match names.split_last() {
        None => "the rules".into(),
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
    }
}

fn rule_name(rule: FillRule, answer: &FillAnswer) -> String {
    let name = |fuel: usize| answer.asked.fuels[fuel].name.clone();
    match rule {
        FillRule::AimLow if answer.asked.problem.aim.low() == answer.asked.problem.aim.high() => {
            "the blend wanted".into()
        }
        FillRule::AimLow => "the weakest blend allowed".into(),
        FillRule::AimHigh => "the strongest blend allowed".into(),
        FillRule::Space => "the space in the tank".into(),
        FillRule::FinalLevel => match answer.asked.problem.stop {
            StopRule::Brim => "filling to the brim".into(),
            _ => "the level to stop at".into(),
        },
        FillRule::AtMost => "the volume to stop after".into(),
        FillRule::Budget => "the money to stop after".into(),
        FillRule::Octane => "the octane number needed".into(),
        FillRule::FuelLimit(fuel) => format!("how much there is of {}", name(fuel)),
        FillRule::UseAll(fuel) => format!("using all of {}", name(fuel)),
        FillRule::AlreadyIn(fuel) => format!("the {} already put in", name(fuel)),
    }
}

/// What stands in the way of the aim, and what helps: sentences.
pub fn infeasible(infeasible: &Infeasible, answer: &FillAnswer, printer: &Printer) -> Vec<String> {
    let impossible = &infeasible.impossible;
    let wanted = wanted(answer, printer);
    let mut lines = vec![obstacle(impossible, &wanted, answer, printer)];
    if let Some((low, high)) = impossible.reachable {
        // Less than a point apart, they are one blend.
        lines.push(if high.fraction() - low.fraction() < 0.01 {
            format!("Within reach: only {}.", printer.grade(low))
        } else {
            // What can be reached is a promise, so it is rounded inwards.
            let (low, high) = (printer.grade_at_most(low), printer.grade_at_least(high));
            format!("Within reach: {low} to {high}.")
        });
    }
    if let Some((ron, _)) = &impossible.highest_ron {
        lines.push(format!("The highest RON inside the window is {}.", printer.at_least(*ron, 1)));
    }
    lines.extend(burn_down(infeasible, &wanted, answer, printer));
    lines.extend(impossible.cycles.as_ref().map(|cycles| refills(cycles, answer, printer)));
    match (impossible.obstacle, &impossible.without_limit, &impossible.fullest_at_aim) {
        (Obstacle::StopRule, Some(plan), _) => {
            lines.push(format!("Without that limit it takes {}.", printer.volume(plan.added)));
        }
        (Obstacle::FuelLimit, _, Some(plan)) => {
            let level = printer.volume(plan.level);
            lines.push(format!("{wanted} works up to {level} in the tank."));
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
        Obstacle::TooWeakEver(limit) => format!(
            "{wanted} cannot be reached with these fuels: the strongest is {}. A stronger fuel is needed.",
            printer.grade(limit)
        ),
        Obstacle::TooStrongEver(limit) => format!(
            "{wanted} cannot be reached with these fuels: the weakest is {}. A weaker fuel is needed.",
            printer.grade(limit)
        ),
        Obstacle::TooFull => match those(|rule| matches!(rule, FillRule::AlreadyIn(_))) {
            Some(already) => format!("{wanted} cannot be reached any more, because of {already}."),
            None => format!("{wanted} cannot be reached now: the tank is too full."),
        },
        Obstacle::StopRule => format!(
            "{wanted} cannot be reached with so little: {}.",
            together(&impossible.binding, answer)
        ),
        Obstacle::FuelLimit => {
            let limits = those(|rule| matches!(rule, FillRule::FuelLimit(_) | FillRule::UseAll(_)));
            let limits = limits.unwrap_or_else(|| "a limit".into());
            format!("{wanted} cannot be reached: {limits} does not allow it.")
        }
        Obstacle::Overshoots => {
            let share = answer.blend.as_ref().map(|it| printer.grade(it.share.expected()));
            let level = printer.volume(answer.plan.level);
            let becomes = share.unwrap_or_default();
            match &impossible.fullest_at_aim {
                Some(plan) => format!(
                    "Filled to {level} it becomes {becomes}. For {wanted} stop at {}.",
                    printer.volume(plan.level)
                ),
                None => format!("Filled to {level} it becomes {becomes}."),
            }
        }
        Obstacle::Octane => {
            format!("{wanted} can be reached, but not with the octane number needed.")
        }
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
    let distance = infeasible
        .burn_distance
        .map(|distance| format!(" (about {})", printer.distance(distance)))
        .unwrap_or_default();
    let then: Vec<String> = burn
        .then
        .iter()
        .zip(&answer.asked.fuels)
        .filter(|(volume, _)| printer.units.volume().value_of(**volume) > 0.05)
        .map(|(volume, fuel)| format!("{} {}", printer.volume(*volume), fuel.name))
        .collect();
    let then = if then.is_empty() { "nothing more".into() } else { then.join(" and ") };
    let caveat = if burn.below_reserve { " That is below the reserve." } else { "" };
    let level = printer.volume(burn.level);
    let drain = if is_worth_draining(infeasible, answer) {
        format!(", or have {} drained by a workshop", printer.volume(burn.away))
    } else {
        String::new()
    };
    Some(format!(
        "Drive the tank down to {level}{distance}{drain}; then {then} makes {wanted}.{caveat}"
    ))
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
    format!(
        "Without going below the reserve: burn down to it and fill up with {}, {} {}. The blend after each fill: {}.",
        answer.asked.fuels[cycles.fuel].name,
        cycles.shares.len(),
        if cycles.shares.len() == 1 { "time" } else { "times" },
        shares.join(", ")
    )
}
