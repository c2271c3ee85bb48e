//! The figures of a fill's answer.

use fillwright::answers::fill::FillAnswer;
use fillwright::message::keys::{fill as keys, notation};
use fillwright::quantity::notation::{OctaneScale, Printer};
use fillwright::quantity::{Band, Money, Volume};
use fillwright::words::extras::beside_ethanol;
use fillwright::words::{self, hardware::Fact};
use leptos::prelude::*;

use super::octane_missing::OctaneMissing;
use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::widgets::{Drawn, NoCalibration, facts, holds, verdict_item};

fn banded(band: Band<f64>, decimals: usize, printer: &Printer) -> (String, String) {
    let [low, expected, high] = printer.number_ends(band, decimals);
    let aside = if low == high { String::new() } else { notation::Band { low, high }.say() };
    (expected, aside)
}

/// A cost in the currency that all of what is poured was priced in, if that is another.
fn elsewhere(answer: &FillAnswer, cost: Money, printer: &Printer) -> String {
    let poured = answer.asked.fuels.iter().zip(&answer.plan.volumes);
    let mut rates = poured.filter(|it| *it.1 > Volume::default()).map(|it| it.0.rate);
    let first = rates.next().flatten();
    match first.filter(|_| rates.all(|rate| rate == first)) {
        Some(rate) => printer.money_in(cost, rate),
        None => String::new(),
    }
}

/// The figures of the blend.
pub(super) fn figures(answer: &FillAnswer, printer: &Printer) -> Vec<Fact> {
    let mut facts = Vec::new();
    let mut push =
        |what: &str, value: String, aside: String| facts.push(Fact::new(what, value, aside));
    if let Some(blend) = &answer.blend {
        push(keys::IN_TANK_THEN.say(), printer.volume(blend.level.expected()), String::new());
        let at_least = |band: Band<f64>| {
            let worst = keys::AtWorst { octane: printer.at_least(band.low(), 1) }.say();
            (format!("≥ {}", printer.at_least(band.expected(), 1)), worst)
        };
        let mut octanes = [("RON", blend.ron), ("MON", blend.mon), ("AKI", blend.aki())];
        if printer.units.octane() == OctaneScale::Aki {
            octanes.rotate_right(1);
        }
        for (what, octane) in octanes {
            match octane.map(at_least) {
                Some((value, aside)) => push(what, value, aside),
                None => {
                    push(what, keys::NOT_KNOWN.say().into(), keys::OCTANE_MISSING.say().into());
                }
            }
        }
        if let Some(extras) = beside_ethanol(&blend.extras, printer) {
            push(keys::BESIDE.say(), extras, String::new());
        }
        if let Some(afr) = blend.stoichiometric_afr {
            let (value, aside) = banded(afr, 2, printer);
            push(keys::STOICHIOMETRIC_AFR.say(), value, aside);
        }
        if let Some(multiplier) = blend.volume_multiplier {
            let (value, aside) = banded(multiplier, 3, printer);
            let reference = printer.grade(answer.asked.reference);
            let aside = if aside.is_empty() {
                keys::Against { blend: reference }.say()
            } else {
                keys::BetweenAgainst { between: aside, blend: reference }.say()
            };
            push(keys::FUEL_VOLUME.say(), format!("× {value}"), aside);
        }
    }
    match answer.cost {
        Some(cost) => push(keys::COST.say(), printer.money(cost), elsewhere(answer, cost, printer)),
        None => {
            push(keys::COST.say(), keys::NOT_KNOWN.say().into(), keys::PRICE_MISSING.say().into());
        }
    }
    if let Some(per_kilometre) = answer.cost_per_kilometre {
        let (unit, factor) = printer.cost_distance();
        let money =
            format!("{}\u{202f}{}", printer.number(per_kilometre * factor, 2), printer.currency);
        push(
            keys::COST_ON_ROAD.say(),
            money.trim_end().to_owned(),
            keys::PerDistance { unit }.say(),
        );
    }
    if let Some((range, with_reference)) = answer.range {
        let reference = printer.grade(answer.asked.reference);
        let aside =
            keys::RangeOn { distance: printer.distance(with_reference), blend: reference }.say();
        push(keys::RANGE_THEN.say(), printer.distance(range), aside);
    }
    if let Some((strong, weak, price)) = answer.break_even {
        let names = &answer.asked.fuels;
        let (strong, weak) = (&names[strong].name, &names[weak].name);
        let aside = keys::WorthBelowMeans { strong, weak }.say();
        push(&keys::WorthBelow { strong }.say(), printer.price_below(price), aside);
    }
    facts
}

/// The verdict on each calibration.
pub(super) fn verdicts(answer: &FillAnswer, printer: &Printer) -> Vec<AnyView> {
    let calibration_of = |id: u32| answer.asked.calibrations.iter().find(|(it, _)| *it == id);
    answer
        .verdicts
        .iter()
        .filter_map(|(id, judgement)| {
            let calibration = &calibration_of(*id)?.1;
            let why = words::reasons(judgement, calibration, printer);
            let lambda = words::lambda(judgement, printer).unwrap_or_default();
            Some(verdict_item(&calibration.name, judgement.verdict, &format!("{why} {lambda}")))
        })
        .collect()
}

/// What the fill makes: figures and verdicts.
#[component]
pub(super) fn Results() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let none = holds(move || fill_memos.answer().is_some_and(|answer| answer.verdicts.is_empty()));
    let of_answer = move |words: fn(&FillAnswer, &Printer) -> Vec<AnyView>| {
        Callback::new(move |()| {
            fill_memos.answer().map_or_else(Vec::new, |answer| {
                session.printer.with(|printer| words(&answer, printer))
            })
        })
    };
    let verdicts = of_answer(verdicts);
    let octane_missing = holds(move || {
        fill_memos.answer().is_some_and(|answer| {
            answer.asked.octane_missing.is_empty() && !answer.octane_missing().is_empty()
        })
    });
    let facts = of_answer(|answer, printer| facts(figures(answer, printer)));
    view! {
        <section aria-labelledby="verdicts-title">
            <h3 id="verdicts-title">{keys::WHICH_THEN.say()}</h3>
            <NoCalibration condition=none />
            <ul class="verdicts" id="verdicts">
                <Drawn what=verdicts />
            </ul>
            <OctaneMissing
                id="octane-missing"
                words=keys::JUDGE_OCTANE.say()
                condition=octane_missing
            />
        </section>
        <section aria-labelledby="facts-title">
            <h3 id="facts-title">{keys::THE_BLEND.say()}</h3>
            <dl class="facts" id="facts">
                <Drawn what=facts />
            </dl>
            <p class="hint">
                {keys::OCTANE_MEANS.say()}
            </p>
        </section>
    }
}
