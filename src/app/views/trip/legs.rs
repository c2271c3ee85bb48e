//! The card of the plan stop by stop.

use fillwright::answers::trip::TripAnswer;
use fillwright::calibration::Judgement;
use fillwright::message::keys::notation;
use fillwright::message::keys::trip as keys;
use fillwright::quantity::notation::Printer;
use fillwright::trip::LegCourse;
use fillwright::words::{self, trip};
use leptos::prelude::*;

use super::answer::card;
use crate::app::stages::deferred;
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{Drawn, When, holds, mark, verdict_shape, wide_table};

/// The plan stop by stop.
#[component]
pub(super) fn LegsCard() -> impl IntoView {
    let trip_memos = TripMemos::here();
    let has_plan = deferred(holds(move || trip_memos.planning.plan.with(Option::is_some)));
    let content = Callback::new(move |()| {
        trip_memos.of_plan(|plan, it| vec![legs(plan, it)]).unwrap_or_default()
    });
    view! {
        <When condition=has_plan>
            <section class=card(trip_memos) id="passages" aria-labelledby="passages-title">
                <h2 id="passages-title">{keys::STOP_BY_STOP.say()}</h2>
                <Drawn what=content />
            </section>
        </When>
    }
}

/// What to buy at every stop, and what comes of it.
pub(super) fn legs(plan: &TripAnswer, printer: &Printer) -> AnyView {
    let calibrations = plan.asked.route.calibrations.iter().map(|it| it.name.clone());
    let before =
        [keys::STOP.say(), keys::BUY.say(), keys::ETHANOL.say()].map(str::to_owned).into_iter();
    let after =
        [keys::RON_AT_LEAST.say(), "AFR", keys::LEVEL_THEN.say(), keys::LEVEL_AT_NEXT.say()]
            .map(str::to_owned);
    let headings = before.chain(calibrations).chain(after).collect();
    let rows = plan.course.legs.iter().enumerate();
    let rows = rows.map(|(at, leg)| row(plan, at, leg, printer)).collect();
    let caption = keys::STOP_BY_STOP_CAPTION.say().to_owned();
    wide_table("readings passages", caption, headings, rows)
}

fn row(plan: &TripAnswer, at: usize, leg: &LegCourse, printer: &Printer) -> AnyView {
    let departure = &leg.departure;
    let parts = trip::bought(plan, at, printer);
    let buy: Vec<AnyView> = parts
        .into_iter()
        .map(|(volume, fuel)| {
            view! {
                <span class="buy">
                    <span class="number">{volume}</span>
                    " "
                    {fuel}
                </span>
            }
            .into_any()
        })
        .collect();
    let nothing = buy.is_empty().then_some(keys::BUY_NOTHING.say());
    let number = |decimals: usize| move |band| printer.number_ends(band, decimals);
    let volume = |it| Some(printer.volume_ends(it));
    let verdicts: Vec<AnyView> = leg.verdicts.iter().map(verdict).collect();
    let place = trip::stop(&plan.asked, at);
    view! {
        <tr>
            <th scope="row">{place}</th>
            <td>{buy} {nothing}</td>
            {banded(departure.share.map(|it| printer.grade_ends(it)))}
            {verdicts}
            {banded(departure.ron.map(number(1)))}
            {banded(departure.air_fuel_ratio.map(number(2)))}
            {banded(volume(plan.level_after(leg)))}
            {banded(volume(leg.arrival))}
        </tr>
    }
    .into_any()
}

fn verdict(judgement: &Judgement) -> AnyView {
    view! {
        <td>
            <span class="cell-verdict">
                {mark(verdict_shape(judgement.verdict))} {words::verdict(judgement.verdict)}
            </span>
        </td>
    }
    .into_any()
}

/// A figure with its ends, where they print differently.
fn banded(ends: Option<[String; 3]>) -> AnyView {
    let Some([low, expected, high]) = ends else { return view! { <td>"—"</td> }.into_any() };
    let ends = (low != high).then(|| notation::Band { low, high }.say());
    view! {
        <td>
            <span class="number">{expected}</span>
            <small>{ends}</small>
        </td>
    }
    .into_any()
}
