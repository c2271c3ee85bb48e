//! The answer on a route: what to buy next, how good the plan is, and what to mind.

use fillwright::message::keys::trip as keys;
use fillwright::trip::Done;
use fillwright::words::trip::{self, Standing};
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::stages::deferred;
use crate::app::trip_memos::TripMemos;
use crate::app::widgets::{
    Bar, Button, Drawn, ErrorSummary, Lead, PrintButton, Shape, Spoken, When, facts, holds,
    in_a_sentence, said,
};

/// Whether the plan on show is one for the route as it stands.
pub(super) fn is_current(trip_memos: TripMemos) -> Signal<bool> {
    holds(move || {
        let plan = trip_memos.planning.plan.get();
        plan.is_some_and(|plan| {
            trip_memos.reading.with(|it| it.asked.as_ref() == Some(&plan.asked))
        })
    })
}

/// The class of a card on a plan, which is paler where it is one for another route.
pub(super) fn card(trip_memos: TripMemos) -> Signal<String> {
    let current = is_current(trip_memos);
    said(move || if current.get() { "card" } else { "card stale-answer" }.to_owned())
}

/// Why there is no plan, line by line; empty while that is not proved.
fn impossible(trip_memos: TripMemos) -> Vec<String> {
    trip_memos.reading.with(|trip| {
        let asked = trip.asked.as_ref();
        match (asked, trip_memos.planning.report_on(asked).map(|it| it.done)) {
            (Some(asked), Some(Done::Impossible(why))) => trip::impossible(&why, asked),
            _ => Vec::new(),
        }
    })
}

/// What to buy next, how good the plan is, and what to mind.
#[component]
pub(super) fn AnswerCard(printing: RwSignal<bool>) -> impl IntoView {
    let trip_memos = TripMemos::here();
    let planning = trip_memos.planning;
    let readable = holds(move || trip_memos.reading.with(|it| it.asked.is_some()));
    let why_not = Memo::new(move |_| impossible(trip_memos));
    let current = is_current(trip_memos);
    let stale = holds(move || trip_memos.planning.plan.with(Option::is_some) && !current.get());
    let class =
        said(move || if stale.get() { "judgement stale-answer" } else { "judgement" }.to_owned());
    let headline = said(move || {
        if why_not.with(|it| !it.is_empty()) {
            return keys::IMPOSSIBLE.say().to_owned();
        }
        trip_memos
            .of_plan(|plan, printer| trip::next(plan, printer).0)
            .unwrap_or_else(|| keys::NOT_PLANNED.say().to_owned())
    });
    let then = said(move || {
        if why_not.with(|it| !it.is_empty()) {
            return String::new();
        }
        trip_memos
            .of_plan(|plan, printer| trip::next(plan, printer).1)
            .flatten()
            .unwrap_or_default()
    });
    let quality = said(move || {
        let said = trip_memos.report().and_then(|report| {
            trip_memos.of_plan(|plan, printer| trip::quality(plan, &report, printer)).flatten()
        });
        if current.get() { said.unwrap_or_default() } else { String::new() }
    });
    let edge = said(move || {
        let said = trip_memos.report().and_then(|report| {
            trip_memos.of_plan(|plan, printer| trip::on_the_edge(plan, &report, printer)).flatten()
        });
        if current.get() { said.unwrap_or_default() } else { String::new() }
    });
    let standing = standing(trip_memos, stale);
    let outdated = holds(move || stale.get() && !readable.get());
    // What is on show for another route is not read out as what to do.
    let words = said(move || {
        if stale.get() { standing.get() } else { format!("{} {}", standing.get(), headline.get()) }
    });
    let reasons = Callback::new(move |()| {
        let lines = why_not.get().into_iter();
        lines.map(|it| view! { <li>{it}</li> }.into_any()).collect::<Vec<_>>()
    });
    let figures = Callback::new(move |()| {
        trip_memos.of_plan(|plan, printer| facts(trip::in_short(plan, printer))).unwrap_or_default()
    });
    let has_plan = holds(move || trip_memos.planning.plan.with(Option::is_some));
    let trouble = said(move || planning.trouble.get().unwrap_or_default());
    view! {
        <section class="card" id="trip-answer" tabindex="-1" aria-labelledby="trip-answer-title">
            <div class="head">
                <h2 id="trip-answer-title">{keys::WHAT_TO_BUY.say()}</h2>
                <PrintButton printing=printing ready=current />
            </div>
            <Missing stale=outdated words=words />
            <div class=class id="trip-next">
                <p class="outcome">{headline}</p>
                <When condition=holds(move || then.with(|it| !it.is_empty()))>
                    <p class="more">{then}</p>
                </When>
                <When condition=holds(move || why_not.with(|it| !it.is_empty()))>
                    <ul class="cautions" id="trip-impossible">
                        <Drawn what=reasons />
                    </ul>
                </When>
            </div>
            <p id="trip-quality">{quality}</p>
            <When condition=holds(move || edge.with(|it| !it.is_empty()))>
                <p class="note caution">{edge}</p>
            </When>
            <p class="hint" id="trip-standing">
                {standing}
            </p>
            <When condition=holds(move || trouble.with(|it| !it.is_empty()))>
                <p class="note caution">{trouble}</p>
            </When>
            <PlanButtons readable=readable has_plan=has_plan current=current />
            <When condition=deferred(has_plan)>
                <dl class="facts">
                    <Drawn what=figures />
                </dl>
                <LeftOpen />
            </When>
            <ul class="cautions note caution" aria-label=keys::CAUTIONS.say()>
                {trip::CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}
            </ul>
        </section>
        <AnswerBar
            headline=headline
            impossible=holds(move || why_not.with(|it| !it.is_empty()))
            current=current
        />
    }
}

/// How the search stands for the route on the page, to which a plan on show need not belong.
fn standing(trip_memos: TripMemos, stale: Signal<bool>) -> Signal<String> {
    let planning = trip_memos.planning;
    said(move || {
        let words = trip_memos.reading.with(|trip| {
            match (planning.standing(trip.asked.as_ref()), &trip.asked) {
                (Standing::Known, Some(asked)) => {
                    let report = planning.report_on(Some(asked));
                    trip::standing(report.as_ref(), planning.is_at(asked))
                }
                (standing, _) => trip::unanswered(standing, stale.get()),
            }
        });
        words.to_owned()
    })
}

/// The plan in short, or that it is one for another route.
#[component]
fn AnswerBar(
    headline: Signal<String>,
    impossible: Signal<bool>,
    current: Signal<bool>,
) -> impl IntoView {
    let trip_memos = TripMemos::here();
    let words = said(move || {
        if current.get() || trip_memos.planning.plan.with(Option::is_none) {
            return headline.get();
        }
        let standing =
            trip_memos.reading.with(|it| trip_memos.planning.standing(it.asked.as_ref()));
        trip::in_the_bar(standing).to_owned()
    });
    let shape = Memo::new(move |_| match (impossible.get(), current.get()) {
        (true, _) => Shape::Ring,
        (false, true) => Shape::Disc,
        (false, false) => Shape::Stroke,
    });
    view! { <Bar href="#/trip/trip-answer" words=words shape=shape.into() aside=keys::PLAN.say() /> }
}

/// What can be done with the plan and the search for it.
#[component]
fn PlanButtons(
    readable: Signal<bool>,
    has_plan: Signal<bool>,
    current: Signal<bool>,
) -> impl IntoView {
    let trip_memos = TripMemos::here();
    let planning = trip_memos.planning;
    let running = holds(move || {
        trip_memos.reading.with(|it| it.asked.as_ref().is_some_and(|asked| planning.is_at(asked)))
    });
    let broke_off = holds(move || {
        let is_over = trip_memos.report().is_some_and(|it| it.done != Done::Working);
        !running.get() && !is_over
    });
    let cancel = Callback::new(move |()| planning.cancel());
    let again = Callback::new(move |()| planning.again());
    let hold = Callback::new(move |()| planning.hold());
    view! {
        <div class="buttons">
            <When condition=running>
                <Button label=keys::CANCEL.say() look="small" on_press=cancel />
            </When>
            <When condition=holds(move || readable.get() && broke_off.get())>
                <Button label=keys::PLAN_AGAIN.say() look="small" on_press=again />
            </When>
            <When condition=holds(move || has_plan.get() && current.get())>
                <Button label=keys::HOLD.say() look="small" on_press=hold />
            </When>
        </div>
    }
}

/// What the plan does not hold for.
#[component]
fn LeftOpen() -> impl IntoView {
    let trip_memos = TripMemos::here();
    let lines =
        Memo::new(move |_| trip_memos.of_plan(|plan, _| trip::left_open(plan)).unwrap_or_default());
    let items = Callback::new(move |()| {
        let lines = lines.get().into_iter();
        lines.map(|it| view! { <li>{it}</li> }.into_any()).collect::<Vec<_>>()
    });
    view! {
        <When condition=holds(move || lines.with(|it| !it.is_empty()))>
            <div id="left-open">
                <h3>{keys::LEFT_OPEN.say()}</h3>
                <ul class="cautions">
                    <Drawn what=items />
                </ul>
            </div>
        </When>
    }
}

/// What is missing or wrong, and what is said of that, or else of the plan.
#[component]
fn Missing(stale: Signal<bool>, words: Signal<String>) -> impl IntoView {
    let session = Session::here();
    let field_errors = FieldErrors::here().all();
    let lead = Signal::derive(move || if stale.get() { Lead::NotUpdated } else { Lead::Nothing });
    let spoken = said(move || {
        let wrong =
            session.printer.with(|printer| field_errors.with(|it| in_a_sentence(it, printer)));
        if wrong.is_empty() { words.get() } else { wrong }
    });
    view! {
        <Spoken words=spoken />
        <ErrorSummary id="trip-to-mend" view=View::Trip field_errors=field_errors lead=lead />
    }
}
