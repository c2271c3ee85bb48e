//! What is said of results: short sentences, in the person's units.

pub(crate) mod hardware;
pub(crate) mod methods;
pub(crate) mod shared;
pub(crate) mod tank;
pub(crate) mod trip;
pub(crate) mod units;

use fillwright::calibration::{Calibration, Judgement, Reason, Verdict};
use fillwright::fill::{Cycles, Impossible, Obstacle, Rule, Stop};
use fillwright::logbook::Exchanged;
use fillwright::logbook::{Answer, CarFile, Plight, Printer, Promise};
use fillwright::quantity::notation::print_number_short;

/// The word for a verdict.
pub(crate) fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Usable => "usable",
        Verdict::ConfirmFirst => "confirm first",
        Verdict::DoNotSelect => "do not select",
    }
}

/// Why a calibration gets its verdict.
pub(crate) fn reasons(
    judgement: &Judgement,
    calibration: &Calibration,
    printer: &Printer,
) -> String {
    if judgement.reasons.is_empty() {
        let octane = if calibration.ron_min.is_some() { ", octane included" } else { "" };
        return format!(
            "The whole band lies inside {}{octane}.",
            printer.window(calibration.low, calibration.high)
        );
    }
    let sentences: Vec<String> =
        judgement.reasons.iter().map(|reason| sentence(*reason, calibration, printer)).collect();
    sentences.join(" ")
}

fn sentence(reason: Reason, calibration: &Calibration, printer: &Printer) -> String {
    let low = printer.edge(calibration.low);
    let high = printer.edge(calibration.high);
    let octane = |ron: f64| printer.at_least(ron, 1);
    // As finely as it was typed, since a figure is told to be below it.
    let needed = calibration
        .ron_min
        .map_or_else(String::new, |ron| print_number_short(ron, 3, printer.style));
    match reason {
        Reason::TooWeak => format!("All of the band is below its window, which begins at {low}."),
        Reason::TooStrong => format!("All of the band is above its window, which ends at {high}."),
        Reason::MaybeTooWeak { expected_outside: false } => {
            format!("The low end of the band is below its window, which begins at {low}: measure.")
        }
        Reason::MaybeTooWeak { expected_outside: true } => format!(
            "The blend is likely below its window, which begins at {low}: only if a measurement says otherwise."
        ),
        Reason::MaybeTooStrong { expected_outside: false } => {
            format!("The high end of the band is above its window, which ends at {high}: measure.")
        }
        Reason::MaybeTooStrong { expected_outside: true } => format!(
            "The blend is likely above its window, which ends at {high}: only if a measurement says otherwise."
        ),
        Reason::OctaneShort { at_least } => {
            format!("It needs RON {needed}; only {} can be counted on.", octane(at_least))
        }
        Reason::MaybeOctaneShort { at_least } => format!(
            "It needs RON {needed}; in the worst case only {} can be counted on.",
            octane(at_least)
        ),
        Reason::OctaneUnknown => {
            format!("It needs RON {needed}, and the octane of a part is not given.")
        }
        Reason::FluidAbsent => "It counts on injection fluid, and there is none.".into(),
        Reason::FluidUnchecked => {
            "It counts on injection fluid: check the level and that it flows.".into()
        }
    }
}

/// What lambda does when the calibration meters fuel open loop.
pub(crate) fn lambda(judgement: &Judgement, printer: &Printer) -> Option<String> {
    let band = judgement.open_loop_lambda?;
    let off = |ratio: f64| {
        let percent = (ratio - 1.0) * 100.0;
        let direction = if percent > 0.0 { "leaner" } else { "richer" };
        format!("{}\u{202f}% {direction}", printer.at_most(percent.abs(), 1))
    };
    // Half a per cent is less than any lambda sensor tells.
    let is_off = |ratio: f64| (ratio - 1.0).abs() >= 0.005;
    let (richest, leanest) = (band.low(), band.high());
    let how_far = match (is_off(richest), is_off(leanest)) {
        (false, false) => return None,
        (true, true) if richest < 1.0 && leanest > 1.0 => {
            format!("from {} to {}", off(richest), off(leanest))
        }
        (true, true) if leanest < 1.0 => format!("up to {}", off(richest)),
        (true, false) => format!("up to {}", off(richest)),
        _ => format!("up to {}", off(leanest)),
    };
    Some(format!("Open loop, {how_far} than it was written for."))
}

/// The plan in one line, for the foot of a phone.
pub(crate) fn in_short(answer: &Answer, printer: &Printer) -> String {
    if answer.is_done() {
        return "Nothing left to pour".into();
    }
    let steps: Vec<String> = answer
        .steps
        .iter()
        .map(|step| {
            let name = &answer.asked.fuels[step.fuel].name;
            format!("{} {name}", printer.volume(step.volume))
        })
        .collect();
    steps.join(", then ")
}

/// A price in both currencies, and the rate: `12.90 DKK/L is 1.73 €/L: 1 DKK is 0.134 €,
/// typed on 2026-05-03.`
pub(crate) fn exchanged(it: &Exchanged, printer: &Printer) -> String {
    let factor = print_number_short(it.rate.factor, 6, printer.style);
    format!(
        "{} is {}: 1 {} is {factor}\u{202f}{}, typed on {}.",
        printer.price_in(it.price, it.rate),
        printer.price(it.price),
        it.rate.currency,
        printer.currency,
        it.typed_on
    )
}

/// What the blend comes to: `E30`, and between what.
pub(crate) fn outcome(answer: &Answer, printer: &Printer) -> Option<(String, String)> {
    let share = answer.blend.as_ref()?.share;
    let [low, expected, high] = printer.grade_ends(share);
    let between = if low == high { String::new() } else { format!("between {low} and {high}") };
    Some((expected, between))
}

/// What is promised of the plan.
pub(crate) fn promise(answer: &Answer, printer: &Printer) -> Option<String> {
    let aim = answer.asked.problem.aim;
    let window = || printer.window(aim.low(), aim.high());
    match answer.promise.as_ref()? {
        Promise::Safe => Some(format!(
            "Poured in this order, the blend lies inside {} whatever the true level and strengths are, within what you gave as possible.",
            window()
        )),
        Promise::NotSafe(proofs) => {
            let mut rules: Vec<Rule> = Vec::new();
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
fn together(rules: &[Rule], answer: &Answer) -> String {
    let names: Vec<String> = rules.iter().map(|rule| rule_name(*rule, answer)).collect();
    match names.split_last() {
        None => "the rules".into(),
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
    }
}

fn rule_name(rule: Rule, answer: &Answer) -> String {
    let name = |fuel: usize| answer.asked.fuels[fuel].name.clone();
    match rule {
        Rule::AimLow if answer.asked.problem.aim.low() == answer.asked.problem.aim.high() => {
            "the blend wanted".into()
        }
        Rule::AimLow => "the weakest blend allowed".into(),
        Rule::AimHigh => "the strongest blend allowed".into(),
        Rule::Space => "the space in the tank".into(),
        Rule::FinalLevel => match answer.asked.problem.stop {
            Stop::Brim => "filling to the brim".into(),
            _ => "the level to stop at".into(),
        },
        Rule::AtMost => "the volume to stop after".into(),
        Rule::Budget => "the money to stop after".into(),
        Rule::Octane => "the octane number needed".into(),
        Rule::FuelLimit(fuel) => format!("how much there is of {}", name(fuel)),
        Rule::UseAll(fuel) => format!("using all of {}", name(fuel)),
        Rule::AlreadyIn(fuel) => format!("the {} already put in", name(fuel)),
    }
}

/// What stands in the way of the aim, and what helps: sentences.
pub(crate) fn plight(plight: &Plight, answer: &Answer, printer: &Printer) -> Vec<String> {
    let impossible = &plight.impossible;
    let aim = answer.asked.problem.aim;
    let wanted = if aim.low() == aim.high() {
        printer.edge(aim.low())
    } else {
        printer.window(aim.low(), aim.high())
    };
    let mut lines = vec![obstacle(impossible, &wanted, answer, printer)];
    if let Some((low, high)) = impossible.reachable {
        let (low, high) = (printer.grade_at_least(low), printer.grade_at_most(high));
        lines.push(if low == high {
            format!("Within reach: only {low}.")
        } else {
            format!("Within reach: {low} to {high}.")
        });
    }
    if let Some((ron, _)) = &impossible.highest_ron {
        lines.push(format!("The highest RON inside the window is {}.", printer.at_least(*ron, 1)));
    }
    lines.extend(burn_down(plight, &wanted, answer, printer));
    lines.extend(impossible.cycles.as_ref().map(|cycles| refills(cycles, answer, printer)));
    match (impossible.obstacle, &impossible.without_limit, &impossible.fullest_at_aim) {
        (Obstacle::StopRule, Some(plan), _) => {
            lines.push(format!("Without that limit it takes {}.", printer.volume(plan.added)));
        }
        (Obstacle::Overshoots | Obstacle::FuelLimit, _, Some(plan)) => {
            let level = printer.volume(plan.level);
            lines.push(format!("{wanted} can be held up to {level} in the tank."));
        }
        _ => {}
    }
    lines
}

fn obstacle(impossible: &Impossible, wanted: &str, answer: &Answer, printer: &Printer) -> String {
    let those = |is_meant: fn(&Rule) -> bool| {
        let rules: Vec<Rule> = impossible.binding.iter().copied().filter(is_meant).collect();
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
        Obstacle::TooFull => match those(|rule| matches!(rule, Rule::AlreadyIn(_))) {
            Some(already) => format!("{wanted} cannot be reached any more, because of {already}."),
            None => format!("{wanted} cannot be reached now: the tank is too full."),
        },
        Obstacle::StopRule => format!(
            "{wanted} cannot be reached with so little: {}.",
            together(&impossible.binding, answer)
        ),
        Obstacle::FuelLimit => {
            let limits = those(|rule| matches!(rule, Rule::FuelLimit(_) | Rule::UseAll(_)));
            let limits = limits.unwrap_or_else(|| "a limit".into());
            format!("{wanted} cannot be reached: what stands in the way is {limits}.")
        }
        Obstacle::Overshoots => {
            format!("{wanted} is reached on the way, but lost again before the tank is that full.")
        }
        Obstacle::Octane => {
            format!("{wanted} can be reached, but not with the octane number needed.")
        }
    }
}

fn burn_down(plight: &Plight, wanted: &str, answer: &Answer, printer: &Printer) -> Option<String> {
    let burn = plight.impossible.burn_down.as_ref()?;
    let distance = plight
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
    Some(format!(
        "Drive the tank down to {}{distance}, or have {} drained by somebody equipped for it; then {then} makes {wanted}.{caveat}",
        printer.volume(burn.level),
        printer.volume(burn.away),
    ))
}

fn refills(cycles: &Cycles, answer: &Answer, printer: &Printer) -> String {
    let shares: Vec<String> = cycles.shares.iter().map(|share| printer.grade(*share)).collect();
    format!(
        "Without going below the reserve: burn down to it and fill up with {}, {} {}. The blend after each fill: {}.",
        answer.asked.fuels[cycles.fuel].name,
        cycles.shares.len(),
        if cycles.shares.len() == 1 { "time" } else { "times" },
        shares.join(", ")
    )
}

/// What a car is called.
pub(crate) fn car(car: &CarFile) -> String {
    name_or_unnamed(&car.car.name)
}

/// The same from its name.
pub(crate) fn name_or_unnamed(name: &str) -> String {
    let name = name.trim();
    if name.is_empty() { "Unnamed car".into() } else { name.into() }
}

/// “1 entry”, “2 entries”
pub(crate) fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}
