//! What is said of a route and its plan.

use crate::answers::trip::{TripAnswer, TripAsked};
use crate::document::{PreferForm, TripStopForm};
use crate::quantity::notation::{Printer, Rate};
use crate::quantity::{Money, Volume};
use crate::trip::{Bound, Done, Report, TripImpossible, TripRule};
use uom::si::volume::liter;

use super::hardware::Fact;

/// How what is known stands to the question on the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// The question cannot be read.
    Unreadable,
    /// The worker has said something of it, and no plan for another one is on show.
    Known,
    /// That is still to come.
    Awaited,
    /// That would be still to come, but nothing is done about it.
    Stopped,
}

/// What stands beside the plan.
pub const CAUTIONS: [&str; 5] = [
    "The fuel that a pump gives may differ from its name: confirm the share before you select a calibration.",
    "A plan is no permission: the author of a calibration has the last word, and so does the builder of the fuel system on ethanol above E10.",
    "Fuel vapour burns and static ignites it: touch bare metal before the nozzle, and carry fuel in approved cans only.",
    "Keep a margin: a closed pump or a detour takes more than any plan knows.",
    "Local law on fuel, on carrying it and on what may be driven comes first, in every country on the way.",
];

/// Less than this is not bought.
const NOTHING_L: f64 = 1e-6;

/// What is wanted of a plan above all.
pub const fn preference(prefer: PreferForm) -> &'static str {
    match prefer {
        PreferForm::Cheapest => "Least money",
        PreferForm::FewestStops => "Fewest stops",
        PreferForm::MostEthanol => "Most ethanol",
    }
}

/// The name of a stop.
pub fn stop_name(place: &str, at: usize) -> String {
    match (place.trim(), at) {
        ("", 0) => "Start".into(),
        ("", at) => format!("Stop {}", at + 1),
        (place, _) => place.into(),
    }
}

/// What a stop of a plan is called.
pub fn stop(asked: &TripAsked, at: usize) -> String {
    asked.stops.get(at).map_or_else(|| stop_name("", at), |it| stop_name(&it.place, at))
}

/// The fuels of a stop and how far the next is, in one line.
pub fn stop_in_short(stop: &TripStopForm, printer: &Printer) -> String {
    let name = |id: u32, name: &str| {
        let closed = if stop.closed.contains(&id) { " (not to be had)" } else { "" };
        format!("{name}{closed}")
    };
    let fuels: Vec<String> = stop.fuels.iter().map(|it| name(it.id, &it.name)).collect();
    let fuels = if fuels.is_empty() { "no fuel".to_owned() } else { fuels.join(", ") };
    let distance = printer.told(&stop.distance, crate::quantity::notation::Measure::Distance);
    match distance.trim() {
        "" => fuels,
        way if way.chars().all(|it| it.is_ascii_digit() || ".,".contains(it)) => {
            format!("{fuels}; then {way}\u{202f}{}", printer.units.distance().symbol())
        }
        way => format!("{fuels}; then {way}"),
    }
}

/// What is bought at a stop: how much, and of what.
pub fn bought(plan: &TripAnswer, at: usize, printer: &Printer) -> Vec<(String, String)> {
    let stop = plan.asked.stops.get(at);
    let fuels = stop.map_or(&[][..], |it| &it.fuels);
    let volumes = plan.bought.get(at).map_or(&[][..], |it| it);
    let some = |volume: &Volume| volume.get::<liter>() > NOTHING_L;
    let pairs = fuels.iter().zip(volumes).filter(|(_, volume)| some(volume));
    pairs.map(|(fuel, volume)| (printer.volume(*volume), fuel.name.clone())).collect()
}

/// “24.5 L of E85 and 10.0 L of 98 E5”
pub fn purchase(parts: &[(String, String)]) -> String {
    let parts: Vec<String> =
        parts.iter().map(|(volume, fuel)| format!("{volume} of {fuel}")).collect();
    parts.join(" and ")
}

/// What to buy next, and what comes after that.
pub fn next(plan: &TripAnswer, printer: &Printer) -> (String, Option<String>) {
    let count = plan.asked.stops.len();
    let buys = |from: usize| {
        (from..count).find_map(|at| {
            let parts = bought(plan, at, printer);
            (!parts.is_empty()).then(|| (at, purchase(&parts)))
        })
    };
    let Some((at, what)) = buys(0) else {
        return ("Nothing to buy".into(), Some("What is in the tank takes you to the end.".into()));
    };
    let place = |at: usize| stop(&plan.asked, at);
    let then = match buys(at + 1) {
        Some((next, what)) => format!("Then at {}: {what}.", place(next)),
        None => "After that nothing more is needed.".into(),
    };
    (format!("At {}: {what}", place(at)), Some(then))
}

/// How good the plan is at least.
pub fn quality(plan: &TripAnswer, report: &Report, printer: &Printer) -> Option<String> {
    let bound = report.bound.as_ref()?;
    // Rounded up: it must not look better than it is.
    let percent = |gap: f64| {
        let tenths = (gap * 1000.0 - 1e-9).ceil().max(1.0);
        format!("{}\u{202f}%", printer.number(tenths / 10.0, 1))
    };
    let away = plan.away_from(bound).map(percent);
    match (bound, away) {
        (Bound::Cost(_), Some(away)) => Some(format!("At most {away} above the best possible.")),
        (Bound::StopsThenCost(stops, _), Some(away)) => {
            Some(format!("{}; with no more, at most {away} above the least cost.", needed(*stops)))
        }
        (Bound::Stops(stops), _) => Some(at_least(*stops, &report.done)),
        (Bound::EthanolPart(_), Some(away)) => {
            Some(format!("At most {away} less ethanol than the best possible."))
        }
        (Bound::EthanolPart(_), None) => Some(format!(
            "Before it was rounded, at most {} less ethanol than the best possible.",
            percent(report.gap?)
        )),
        (Bound::Cost(_) | Bound::StopsThenCost(..), None) => None,
    }
}

/// How many stops are needed.
fn needed(stops: u32) -> String {
    match stops {
        1 => "1 stop is needed".to_owned(),
        stops => format!("{stops} stops are needed"),
    }
}

/// How many stops are needed at least, while they are counted and where that stays open.
fn at_least(stops: u32, done: &Done) -> String {
    let rest = match done {
        Done::Working => "the cost is looked at after that",
        _ => "whether so few are enough is not settled",
    };
    format!("At least {}; {rest}.", needed(stops))
}

/// That the margin had to go, if it had.
pub fn on_the_edge(plan: &TripAnswer, report: &Report, printer: &Printer) -> Option<String> {
    let wished = plan.asked.wish.margin;
    (report.margin < wished).then(|| {
        format!(
            "No plan stays {}\u{202f}% inside the windows, so this one goes to their edge: measure the share at every stop.",
            printer.number(wished.percent(), 1)
        )
    })
}

/// How the search stands: said at its start, at the first plan and at its end.
pub fn standing(report: Option<&Report>, running: bool) -> &'static str {
    let has_plan = report.is_some_and(|it| it.bought.is_some());
    match (running, has_plan, report.map(|it| &it.done)) {
        (true, false, _) => "Looking for a plan.",
        (true, true, _) => "A plan is found. The search for a better one goes on.",
        (false, _, Some(Done::Certified)) => "The plan is settled.",
        (false, _, Some(Done::Impossible(_))) => "There is no plan, and that is proved.",
        (false, true, Some(Done::Unsettled)) => {
            "The search is over: the plan holds, but a better one is not ruled out further."
        }
        (false, false, Some(Done::Unsettled)) => {
            "The search is over without a plan, and without a proof that there is none."
        }
        (false, true, Some(Done::Working)) => "Stopped. The plan holds, but may not be the best.",
        (false, false, Some(Done::Working)) => "Stopped before a plan was found.",
        (false, _, None) => "Nothing is planned.",
    }
}

/// How the search stands where nothing is known yet of the route on the page: a plan that
/// is on show is one for another.
pub fn unanswered(standing: Standing, has_plan: bool) -> &'static str {
    match (standing, has_plan) {
        (Standing::Unreadable, false) => "Nothing is planned until the route is complete.",
        (Standing::Unreadable, true) => {
            "Not updated: this plan is for the route before your change. A new one is planned when the route is complete."
        }
        (Standing::Awaited | Standing::Known, false) => "Looking for a plan.",
        (Standing::Awaited | Standing::Known, true) => {
            "This plan is for the route before your change. Planning anew…"
        }
        (Standing::Stopped, false) => "Stopped before a plan was found.",
        (Standing::Stopped, true) => {
            "This plan is for the route before your change. Stopped before a new one was found."
        }
    }
}

/// The same of a plan for another route, in the bar that stays in sight.
pub fn in_the_bar(standing: Standing) -> &'static str {
    match standing {
        Standing::Awaited | Standing::Known => "Plan before your change. Planning anew…",
        Standing::Unreadable | Standing::Stopped => "Not updated",
    }
}

/// Why there is no plan, and what would help: the first is where.
pub fn impossible(impossible: &TripImpossible, asked: &TripAsked) -> Vec<String> {
    let place = stop(asked, impossible.stop);
    let next = impossible.stop + 1;
    let onwards = if next < asked.stops.len() {
        format!("to {}", stop(asked, next))
    } else {
        "to the end".into()
    };
    let mut lines = vec![format!("Within these rules nothing gets from {place} {onwards}.")];
    if impossible.rules.is_empty() {
        lines.push(
            "No single rule stands in the way: several together do. Make the way shorter, add a stop or a fuel before it, or keep fewer calibrations."
                .into(),
        );
    }
    lines.extend(impossible.rules.iter().map(|rule| in_the_way(*rule, &place)));
    lines
}

fn in_the_way(rule: TripRule, place: &str) -> String {
    match rule {
        TripRule::Brim => format!(
            "What the tank holds stands in the way at {place}: add a stop, or make the way after it shorter."
        ),
        TripRule::Limit => format!(
            "What may be bought at {place} stands in the way: raise “At most” of a fuel, or take one that is marked as not to be had."
        ),
        TripRule::Reserve => format!(
            "The reserve would be used after {place}: add a stop, a fuel before it, or a smaller reserve under Car."
        ),
        TripRule::FinalLevel => {
            "The level at the end stands in the way: ask for less, or add a stop before the end."
                .into()
        }
        TripRule::Calibration => format!(
            "No calibration to keep stays usable after {place}, for its window and its octane number together: tick another one, or add a fuel."
        ),
        TripRule::Window => format!(
            "The blend after {place} cannot be inside the window of a calibration to keep: add a stronger or a weaker fuel there or before, or do not keep it on this way."
        ),
        TripRule::Octane => format!(
            "The octane number after {place} is out of reach: add a fuel of a higher one, or ask for less."
        ),
        TripRule::Budget => "The money to spend stands in the way: allow more.".into(),
    }
}

/// What may fail where everything is as bad as the bands allow, rule by rule.
pub fn left_open(plan: &TripAnswer) -> Vec<String> {
    let open = |rules: &[TripRule]| {
        let mut places: Vec<String> = Vec::new();
        for breach in plan.course.possible_breaches.iter().filter(|it| rules.contains(&it.rule)) {
            let place = stop(&plan.asked, breach.stop);
            if !places.contains(&place) {
                places.push(place);
            }
        }
        (!places.is_empty()).then(|| places.join(", "))
    };
    let line = |rules: &[TripRule], say: fn(String) -> String| open(rules).map(say);
    let lines = [
        line(&[TripRule::Brim], |places| {
            format!("The tank may be full before all of it is in at {places}.")
        }),
        line(&[TripRule::Calibration, TripRule::Window], |places| {
            format!(
                "The blend after {places} may be outside the window of the calibration to keep: measure the share there first."
            )
        }),
        line(&[TripRule::Octane], |places| {
            format!("The octane number after {places} may be too low.")
        }),
        line(&[TripRule::Reserve, TripRule::FinalLevel], |places| {
            format!("The reserve may be used on the way after {places}: watch the gauge.")
        }),
    ];
    lines.into_iter().flatten().collect()
}

/// What the fuel costs in the currencies that it was priced in, where those are others.
fn elsewhere(plan: &TripAnswer, printer: &Printer) -> String {
    let mut sums: Vec<(Rate, Money)> = Vec::new();
    let stops = plan.asked.stops.iter().zip(&plan.asked.route.stops).zip(&plan.bought);
    for ((known, stop), bought) in stops {
        for ((fuel, pump), volume) in known.fuels.iter().zip(&stop.pumps).zip(bought) {
            let Some(rate) = fuel.rate.filter(|_| *volume > Volume::default()) else { continue };
            let cost = pump.price * *volume;
            match sums.iter_mut().find(|(it, _)| *it == rate) {
                Some((_, sum)) => *sum = *sum + cost,
                None => sums.push((rate, cost)),
            }
        }
    }
    let told: Vec<String> =
        sums.into_iter().map(|(rate, sum)| printer.money_in(sum, rate)).collect();
    if told.is_empty() { String::new() } else { format!("of which {} abroad", told.join(" and ")) }
}

/// A plan in figures.
pub fn in_short(plan: &TripAnswer, printer: &Printer) -> Vec<Fact> {
    let short = plan.in_short();
    let none = || "—".to_owned();
    let grade = |share: Option<_>| share.map_or_else(none, |it| printer.grade(it));
    let fact = |what: &str, value: String| Fact::new(what, value, String::new());
    vec![
        Fact::new("Cost", printer.money(short.cost), elsewhere(plan, printer)),
        fact("Stops to buy at", short.stops.to_string()),
        fact("Weakest blend driven", grade(short.weakest)),
        fact("Strongest blend driven", grade(short.strongest)),
        fact("Least RON driven", short.ron.map_or_else(none, |it| printer.at_least(it, 1))),
    ]
}

#[cfg(test)]
mod tests {
    use crate::quantity::Share;

    use super::*;

    #[test]
    fn a_stop_without_a_name_is_counted() {
        assert_eq!(stop_name(" ", 0), "Start");
        assert_eq!(stop_name("", 2), "Stop 3");
        assert_eq!(stop_name(" Harz ", 2), "Harz");
    }

    #[test]
    fn one_stop_is_and_two_stops_are() {
        assert_eq!(needed(1), "1 stop is needed");
        assert_eq!(needed(2), "2 stops are needed");
        let counting = at_least(1, &Done::Working);
        assert_eq!(counting, "At least 1 stop is needed; the cost is looked at after that.");
        assert_ne!(at_least(1, &Done::Unsettled), counting);
    }

    #[test]
    fn a_plan_for_another_route_is_never_said_to_be_settled() {
        for standing in [Standing::Unreadable, Standing::Awaited, Standing::Stopped] {
            let said = unanswered(standing, true);
            assert!(said.contains("before your change") && !said.contains("settled"), "{said}");
            let said = match standing {
                Standing::Awaited => "before your change",
                _ => "Not updated",
            };
            assert!(in_the_bar(standing).contains(said));
            assert!(!unanswered(standing, false).contains("before your change"));
        }
    }

    #[test]
    fn the_search_is_told_in_a_few_sentences() {
        let report = |bought: bool, done| Report {
            run: 1,
            bought: bought.then(Vec::new),
            is_rounded: false,
            bound: None,
            gap: None,
            margin: Share::ZERO,
            done,
        };
        let working = report(false, Done::Working);
        assert_eq!(standing(None, true), standing(Some(&working), true));
        let better = report(true, Done::Working);
        assert_ne!(standing(Some(&better), true), standing(Some(&working), true));
        assert_ne!(standing(Some(&better), false), standing(Some(&better), true));
    }
}
