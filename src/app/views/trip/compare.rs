//! The card of the plan in hand beside the new one.

use fillwright::answers::trip::{TripAnswer, Turn};
use fillwright::calibration::Verdict;
use fillwright::message::keys::trip as keys;
use fillwright::quantity::notation::Printer;
use fillwright::trip::Done;
use fillwright::words::{self, trip};
use leptos::prelude::*;

use super::answer::is_current;
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{Button, Drawn, When, holds, said, wide_table};

/// The plan in hand beside the new one.
#[component]
pub(super) fn CompareCard() -> impl IntoView {
    let trip_memos = TripMemos::here();
    let held = holds(move || trip_memos.planning.held.with(Option::is_some));
    let current = is_current(trip_memos);
    let release = Callback::new(move |()| trip_memos.planning.held.set(None));
    let missing = said(move || {
        let impossible =
            trip_memos.report().is_some_and(|it| matches!(it.done, Done::Impossible(_)));
        let words = if impossible { keys::NONE_POSSIBLE.say() } else { keys::NONE_YET.say() };
        words.to_owned()
    });
    let content = Callback::new(move |()| {
        trip_memos.planning.held.with(|held| {
            let Some(held) = held else { return Vec::new() };
            trip_memos.of_plan(|plan, printer| compared(held, plan, printer)).unwrap_or_default()
        })
    });
    view! {
        <When condition=held>
            <section class="card" id="held" aria-labelledby="held-title">
                <h2 id="held-title">{keys::HELD_PLAN.say()}</h2>
                <When condition=current>
                    <Drawn what=content />
                </When>
                <When condition=holds(move || !current.get())>
                    <p>{missing}</p>
                </When>
                <div>
                    <Button label=keys::LET_GO.say() look="small" on_press=release />
                </div>
            </section>
        </When>
    }
}

/// Both plans in figures, and the ways on which a calibration is lost or won.
fn compared(held: &TripAnswer, plan: &TripAnswer, printer: &Printer) -> Vec<AnyView> {
    let headings =
        [keys::OF_PLAN.say(), keys::HELD.say(), keys::NEW.say()].map(str::to_owned).into();
    let pairs = trip::in_short(held, printer).into_iter().zip(trip::in_short(plan, printer));
    let rows = pairs
        .map(|(before, after)| {
            view! {
                <tr>
                    <th scope="row">{before.what}</th>
                    <td>
                        <span class="number">{before.value}</span>
                    </td>
                    <td>
                        <span class="number">{after.value}</span>
                    </td>
                </tr>
            }
            .into_any()
        })
        .collect();
    let caption = keys::HELD_AND_NEW.say().to_owned();
    let mut views = vec![wide_table("readings", caption, headings, rows)];
    let turns = plan.turns_from(held);
    views.push(if turns.is_empty() {
        view! { <p>{keys::NONE_CHANGES.say()}</p> }.into_any()
    } else {
        let items: Vec<AnyView> =
            turns.iter().map(|it| view! { <li>{turn(it, plan)}</li> }.into_any()).collect();
        view! { <ul class="cautions">{items}</ul> }.into_any()
    });
    views
}

/// “After Ferry, Mid blend is lost: do not select; it was usable.”
fn turn(turn: &Turn, plan: &TripAnswer) -> String {
    let at = plan.asked.stops.iter().position(|it| it.id == turn.stop).unwrap_or_default();
    let calibration = plan.asked.calibrations.iter().position(|it| *it == turn.calibration);
    let calibration = calibration.and_then(|it| plan.asked.route.calibrations.get(it));
    let calibration = calibration.map_or("", |it| &it.name);
    let place = trip::stop(&plan.asked, at);
    let (before, after) = (words::verdict(turn.before), words::verdict(turn.after));
    match (turn.before, turn.after) {
        (Verdict::DoNotSelect, _) => {
            keys::CalibrationWon { place, calibration, after, before }.say()
        }
        (_, Verdict::DoNotSelect) => {
            keys::CalibrationLost { place, calibration, after, before }.say()
        }
        (was, is) if is < was => keys::CalibrationSurer { place, calibration, after, before }.say(),
        _ => keys::CalibrationLessSure { place, calibration, after, before }.say(),
    }
}
