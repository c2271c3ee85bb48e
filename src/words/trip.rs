//! What is said of a route and its plan.

use crate::answers::trip::{TripAnswer, TripAsked};
use crate::document::{PreferForm, TripStopForm};
use crate::message::Message;
use crate::message::keys::trip_said as keys;
use crate::quantity::notation::{Printer, Rate};
use crate::quantity::{Money, Volume};
use crate::trip::{Bound, Done, Report, TripImpossible, TripRule};
use uom::si::volume::liter;

use super::and;
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
pub const CAUTIONS: [Message; 5] =
    [keys::CONFIRM_SHARE, keys::NO_PERMISSION, keys::VAPOUR, keys::KEEP_MARGIN, keys::LOCAL_LAW];

/// Less than this is not bought.
const NOTHING_L: f64 = 1e-6;

/// What is wanted of a plan above all.
pub const fn preference(prefer: PreferForm) -> Message {
    match prefer {
        PreferForm::Cheapest => keys::CHEAPEST,
        PreferForm::FewestStops => keys::FEWEST_STOPS,
        PreferForm::MostEthanol => keys::MOST_ETHANOL,
    }
}

/// The name of a stop.
pub fn stop_name(place: &str, at: usize) -> String {
    match (place.trim(), at) {
        ("", 0) => keys::START.say().into(),
        ("", at) => keys::Stop { number: (at + 1).to_string() }.say(),
        (place, _) => place.into(),
    }
}

/// What a stop of a plan is called.
pub fn stop(asked: &TripAsked, at: usize) -> String {
    asked.stops.get(at).map_or_else(|| stop_name("", at), |it| stop_name(&it.place, at))
}

/// The fuels of a stop and how far the next is, in one line.
pub fn stop_in_short(stop: &TripStopForm, printer: &Printer) -> String {
    let name = |id: u32, fuel: &str| {
        if stop.closed.contains(&id) { keys::NotToBeHad { fuel }.say() } else { fuel.to_owned() }
    };
    let fuels: Vec<String> = stop.fuels.iter().map(|it| name(it.id, &it.name)).collect();
    let fuels = if fuels.is_empty() { keys::NO_FUEL.say().to_owned() } else { fuels.join(", ") };
    let distance = printer.told(&stop.distance, crate::quantity::notation::Measure::Distance);
    let distance = distance.trim();
    if distance.is_empty() {
        return fuels;
    }
    let is_number = distance.chars().all(|it| it.is_ascii_digit() || ".,".contains(it));
    let distance = if is_number {
        format!("{distance}\u{202f}{}", printer.units.distance().symbol())
    } else {
        distance.to_owned()
    };
    keys::ThenDistance { fuels, distance }.say()
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
        parts.iter().map(|(volume, fuel)| keys::Portion { volume, fuel }.say()).collect();
    and(&parts)
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
        return (keys::NOTHING_TO_BUY.say().into(), Some(keys::TO_THE_END.say().into()));
    };
    let place = |at: usize| stop(&plan.asked, at);
    let then = match buys(at + 1) {
        Some((next, what)) => keys::ThenAt { place: place(next), what }.say(),
        None => keys::NOTHING_MORE.say().into(),
    };
    (keys::At { place: place(at), what }.say(), Some(then))
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
        (Bound::Cost(_), Some(percent)) => Some(keys::AboveBest { percent }.say()),
        (Bound::StopsThenCost(stops, _), Some(percent)) => {
            let needed = keys::StopsNeeded { count: *stops }.say();
            Some(keys::NeededAndCost { needed, percent }.say())
        }
        (Bound::Stops(stops), _) => Some(match report.done {
            Done::Working => keys::AtLeastWorking { count: *stops }.say(),
            _ => keys::AtLeastUnsettled { count: *stops }.say(),
        }),
        (Bound::EthanolPart(_), Some(percent)) => Some(keys::LessEthanol { percent }.say()),
        (Bound::EthanolPart(_), None) => {
            Some(keys::LessEthanolUnrounded { percent: percent(report.gap?) }.say())
        }
        (Bound::Cost(_) | Bound::StopsThenCost(..), None) => None,
    }
}

/// That the margin had to go, if it had.
pub fn on_the_edge(plan: &TripAnswer, report: &Report, printer: &Printer) -> Option<String> {
    let wished = plan.asked.wish.margin;
    (report.margin < wished)
        .then(|| keys::OnTheEdge { percent: printer.number(wished.percent(), 1) }.say())
}

/// How the search stands: said at its start, at the first plan and at its end.
pub fn standing(report: Option<&Report>, running: bool) -> &'static str {
    let has_plan = report.is_some_and(|it| it.bought.is_some());
    match (running, has_plan, report.map(|it| &it.done)) {
        (true, false, _) => keys::LOOKING,
        (true, true, _) => keys::FOUND,
        (false, _, Some(Done::Certified)) => keys::SETTLED,
        (false, _, Some(Done::Impossible(_))) => keys::NO_PLAN_PROVED,
        (false, true, Some(Done::Unsettled)) => keys::OVER_WITH_PLAN,
        (false, false, Some(Done::Unsettled)) => keys::OVER_WITHOUT,
        (false, true, Some(Done::Working)) => keys::STOPPED_WITH_PLAN,
        (false, false, Some(Done::Working)) => keys::STOPPED_BEFORE,
        (false, _, None) => keys::NOTHING_PLANNED,
    }
    .say()
}

/// How the search stands where nothing is known yet of the route on the page: a plan that
/// is on show is one for another.
pub fn unanswered(standing: Standing, has_plan: bool) -> &'static str {
    match (standing, has_plan) {
        (Standing::Unreadable, false) => keys::INCOMPLETE,
        (Standing::Unreadable, true) => keys::INCOMPLETE_WITH_PLAN,
        (Standing::Awaited | Standing::Known, false) => keys::LOOKING,
        (Standing::Awaited | Standing::Known, true) => keys::PLANNING_ANEW,
        (Standing::Stopped, false) => keys::STOPPED_BEFORE,
        (Standing::Stopped, true) => keys::STOPPED_BEFORE_NEW,
    }
    .say()
}

/// The same of a plan for another route, in the bar that stays in sight.
pub fn in_the_bar(standing: Standing) -> &'static str {
    match standing {
        Standing::Awaited | Standing::Known => keys::BAR_PLANNING_ANEW,
        Standing::Unreadable | Standing::Stopped => keys::BAR_NOT_UPDATED,
    }
    .say()
}

/// Why there is no plan, and what would help: the first is where.
pub fn impossible(impossible: &TripImpossible, asked: &TripAsked) -> Vec<String> {
    let place = stop(asked, impossible.stop);
    let next = impossible.stop + 1;
    let mut lines = vec![if next < asked.stops.len() {
        keys::NothingGetsTo { place: &place, next: stop(asked, next) }.say()
    } else {
        keys::NothingGetsToEnd { place: &place }.say()
    }];
    if impossible.rules.is_empty() {
        lines.push(keys::SEVERAL_RULES.say().into());
    }
    lines.extend(impossible.rules.iter().map(|rule| in_the_way(*rule, &place)));
    lines
}

fn in_the_way(rule: TripRule, place: &str) -> String {
    match rule {
        TripRule::Brim => keys::WayBrim { place }.say(),
        TripRule::Limit => keys::WayLimit { place }.say(),
        TripRule::Reserve => keys::WayReserve { place }.say(),
        TripRule::FinalLevel => keys::WAY_FINAL_LEVEL.say().into(),
        TripRule::Calibration => keys::WayCalibration { place }.say(),
        TripRule::Window => keys::WayWindow { place }.say(),
        TripRule::Octane => keys::WayOctane { place }.say(),
        TripRule::Budget => keys::WAY_BUDGET.say().into(),
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
        line(&[TripRule::Brim], |places| keys::OpenBrim { places }.say()),
        line(&[TripRule::Calibration, TripRule::Window], |places| {
            keys::OpenWindow { places }.say()
        }),
        line(&[TripRule::Octane], |places| keys::OpenOctane { places }.say()),
        line(&[TripRule::Reserve, TripRule::FinalLevel], |places| {
            keys::OpenReserve { places }.say()
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
    if told.is_empty() {
        return String::new();
    }
    keys::Abroad { money: and(&told) }.say()
}

/// A plan in figures.
pub fn in_short(plan: &TripAnswer, printer: &Printer) -> Vec<Fact> {
    let short = plan.in_short();
    let none = || "—".to_owned();
    let grade = |share: Option<_>| share.map_or_else(none, |it| printer.grade(it));
    let fact = |what: Message, value: String| Fact::new(what.say(), value, String::new());
    vec![
        Fact::new(keys::COST.say(), printer.money(short.cost), elsewhere(plan, printer)),
        fact(keys::STOPS_TO_BUY, short.stops.to_string()),
        fact(keys::WEAKEST, grade(short.weakest)),
        fact(keys::STRONGEST, grade(short.strongest)),
        fact(keys::LEAST_RON, short.ron.map_or_else(none, |it| printer.at_least(it, 1))),
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
        let needed = |count: u32| keys::StopsNeeded { count }.say();
        assert_eq!(needed(1), "1 stop is needed");
        assert_eq!(needed(2), "2 stops are needed");
        let counting = keys::AtLeastWorking { count: 1_u32 }.say();
        assert_eq!(counting, "At least 1 stop is needed; the cost is looked at after that.");
        assert_ne!(keys::AtLeastUnsettled { count: 1_u32 }.say(), counting);
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
