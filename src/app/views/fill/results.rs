//! The figures of a fill's answer.

use fillwright::answers::fill::FillAnswer;
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
    let aside = if low == high { String::new() } else { format!("{low} to {high}") };
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
        push("In the tank then", printer.volume(blend.level.expected()), String::new());
        let at_least = |band: Band<f64>| {
            let worst = format!("{} at worst", printer.at_least(band.low(), 1));
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
                    push(what, "not known".into(), "give it of the tank and of each fuel".into());
                }
            }
        }
        if let Some(extras) = beside_ethanol(&blend.extras, printer) {
            push("Beside petrol and ethanol", extras, String::new());
        }
        if let Some(afr) = blend.stoichiometric_afr {
            let (value, aside) = banded(afr, 2, printer);
            push("Stoichiometric AFR", value, aside);
        }
        if let Some(multiplier) = blend.volume_multiplier {
            let (value, aside) = banded(multiplier, 3, printer);
            let reference = printer.grade(answer.asked.reference);
            let aside = if aside.is_empty() { aside } else { format!("{aside}, ") };
            push(
                "Fuel volume at equal air",
                format!("× {value}"),
                format!("{aside}against {reference}"),
            );
        }
    }
    match answer.cost {
        Some(cost) => push("Cost", printer.money(cost), elsewhere(answer, cost, printer)),
        None => push("Cost", "not known".into(), "a price is missing".into()),
    }
    if let Some(per_kilometre) = answer.cost_per_kilometre {
        let (unit, factor) = printer.cost_distance();
        let money =
            format!("{}\u{202f}{}", printer.number(per_kilometre * factor, 2), printer.currency);
        push(
            "Cost on the road",
            money.trim_end().to_owned(),
            format!("per {unit}, of what is added"),
        );
    }
    if let Some((range, with_reference)) = answer.range {
        let reference = printer.grade(answer.asked.reference);
        let aside = format!("{} on {reference}", printer.distance(with_reference));
        push("Range then", printer.distance(range), aside);
    }
    if let Some((strong, weak, price)) = answer.break_even {
        let names = &answer.asked.fuels;
        let aside = format!(
            "below that, {} costs less per distance than {}",
            names[strong].name, names[weak].name
        );
        push(
            &format!("{} is worth it below", names[strong].name),
            printer.price_below(price),
            aside,
        );
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
            <h3 id="verdicts-title">"Which calibration may be selected then"</h3>
            <NoCalibration condition=none />
            <ul class="verdicts" id="verdicts">
                <Drawn what=verdicts />
            </ul>
            <OctaneMissing
                id="octane-missing"
                words="To judge octane, give that of:"
                condition=octane_missing
            />
        </section>
        <section aria-labelledby="facts-title">
            <h3 id="facts-title">"The blend"</h3>
            <dl class="facts" id="facts">
                <Drawn what=facts />
            </dl>
            <p class="hint">
                "Octane is given as at least: measured values lie up to about 6 RON higher with paraffinic petrol."
            </p>
        </section>
    }
}
