//! What to put in: the answer, and how it stands.

use fillwright::answers::fill::FillAnswer;
use fillwright::message::Message;
use fillwright::message::keys::{fill as keys, frame};
use fillwright::words::{fields, fill};
use leptos::prelude::*;

use super::octane_missing::OctaneMissing;
use super::record::Afterwards;
use super::results::Results;
use super::steps::Steps;
use super::workings::Workings;
use crate::app::charts::SightGlass;
use crate::app::field_errors::FieldErrors;
use crate::app::fill_memos::FillMemos;
use crate::app::route::View;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{
    Bar, Button, Drawn, ErrorSummary, Lead, PrintButton, Shape, Spoken, When, holds, in_a_sentence,
    said,
};

/// Whether there is an answer to what is entered now.
pub(super) fn is_current(fill_memos: FillMemos) -> Signal<bool> {
    holds(move || fill_memos.shown.with(|it| it.answer.is_some() && !it.stale))
}

/// What to put in, and what that makes.
#[component]
pub(super) fn PouredCard(printing: RwSignal<bool>) -> impl IntoView {
    let fill_memos = FillMemos::here();
    let has_answer = holds(move || {
        fill_memos.shown.with(|it| it.answer.is_some()) && !fill_memos.just_recorded.get()
    });
    let stale = holds(move || fill_memos.shown.with(|it| it.stale));
    let lead = Signal::derive(move || if stale.get() { Lead::NotUpdated } else { Lead::Nothing });
    let class = said(move || if stale.get() { "stale-answer" } else { "" }.to_owned());
    view! {
        <section class="card" id="put-in" aria-labelledby="put-in-title">
            <div class="head">
                <h2 id="put-in-title">{keys::PUT_IN.say()}</h2>
                <PrintButton printing=printing ready=is_current(fill_memos) />
            </div>
            <ErrorSummary id="fill-to-mend" view=View::Fill field_errors=FieldErrors::here().all() lead=lead />
            <When condition=has_answer>
                <div class=class>
                    <Outcome />
                    <div class="put-in">
                        <SightGlass />
                        <Steps />
                    </div>
                </div>
            </When>
            <Afterwards />
            <When condition=has_answer>
                <Cautions />
                <Results />
                <Workings />
            </When>
        </section>
    }
}

/// The blend, what is promised of it, or why it is not what was wanted.
#[component]
fn Outcome() -> impl IntoView {
    let fill_memos = FillMemos::here();
    let lead = fill_memos.of_answer(|answer, _| {
        if answer.misses().is_some() {
            keys::CLOSEST.say()
        } else if answer.asked.as_poured {
            keys::YOU_HAVE.say()
        } else {
            keys::MAKES.say()
        }
        .to_owned()
    });
    let blend = fill_memos.of_answer(|answer, printer| {
        fill::outcome(answer, printer).map(|(blend, _)| blend).unwrap_or_default()
    });
    let between = fill_memos.of_answer(|answer, printer| {
        fill::outcome(answer, printer).map(|(_, between)| between).unwrap_or_default()
    });
    let promise =
        fill_memos.of_answer(|answer, printer| fill::promise(answer, printer).unwrap_or_default());
    let class = fill_memos.of_answer(|answer, _| {
        if answer.misses().is_some() { "outcome missed" } else { "outcome" }.to_owned()
    });
    view! {
        <Instead />
        <Obstacles />
        <p class=class id="outcome">
            {lead}
            <span class="number">{blend}</span>
            " "
            <small>{between}</small>
        </p>
        <When condition=holds(move || promise.with(|it| !it.is_empty()))>
            <p class="note" id="promise">
                {promise}
            </p>
        </When>
        <OctaneMissing
            id="octane-left-out"
            words=keys::OCTANE_LEFT_OUT.say()
            condition=holds(move || {
                fill_memos.answer().is_some_and(|answer| !answer.asked.octane_missing.is_empty())
            })
        />
    }
}

/// What gave way to the aim, and the choice to have it all the same.
#[component]
fn Instead() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let words = fill_memos.of_answer(|answer, printer| {
        let given_up = answer.given_up.as_ref();
        given_up.map_or_else(String::new, |it| fill::given_up(it, answer, printer))
    });
    let fill_up = Callback::new(move |()| session.document.update(|it| it.here.fill.anyway = true));
    let gave_way = holds(move || words.with(|it| !it.is_empty()));
    let kept_by_level = holds(move || {
        fill_memos
            .answer()
            .is_some_and(|answer| answer.given_up.as_ref().is_some_and(fill::is_level_given_up))
    });
    view! {
        <When condition=gave_way>
            <div class="note" id="instead">
                <p>{words}</p>
                <When condition=kept_by_level>
                    <Button label=keys::FILL_ANYWAY.say() look="small" on_press=fill_up />
                </When>
                <When condition=holds(move || !kept_by_level.get())>
                    <Button label=keys::USE_ALL_ANYWAY.say() look="small" on_press=fill_up />
                </When>
            </div>
        </When>
    }
}

/// What stands in the way of the aim, and the way back for who went on past it.
#[component]
fn Obstacles() -> impl IntoView {
    let session = Session::here();
    let fill_memos = FillMemos::here();
    let lines = Callback::new(move |()| {
        let Some(answer) = fill_memos.answer() else { return Vec::new() };
        let Some(infeasible) = &answer.infeasible else { return Vec::new() };
        let lines = session.printer.with(|printer| fill::infeasible(infeasible, &answer, printer));
        lines.into_iter().map(|line| view! { <p>{line}</p> }.into_any()).collect()
    });
    let keep_to_aim =
        Callback::new(move |()| session.document.update(|it| it.here.fill.anyway = false));
    let anyway = holds(move || session.document.with(|it| it.here.fill.anyway));
    let is_infeasible =
        holds(move || fill_memos.answer().is_some_and(|answer| answer.infeasible.is_some()));
    view! {
        <When condition=is_infeasible>
            <div class="note caution" id="plight">
                <Drawn what=lines />
                <When condition=anyway>
                    <Button label=keys::KEEP_TO_AIM.say() look="small" on_press=keep_to_aim />
                </When>
            </div>
        </When>
    }
}

pub(super) const VAPOUR: Message = keys::VAPOUR;

/// Cautions for a blend that may hold more ethanol than pump petrol does.
pub(super) const ABOVE_TEN: [Message; 2] = [keys::ABOVE_TEN, keys::OLD_BLEND];

pub(super) const LAST_WORD: Message = keys::LAST_WORD;

/// Whether the blend may hold more ethanol than pump petrol does.
pub(super) fn may_be_above_ten(answer: &FillAnswer) -> bool {
    answer.blend.as_ref().is_some_and(|blend| blend.share.high().percent() > 10.5)
}

/// The cautions where the decision is made.
#[component]
fn Cautions() -> impl IntoView {
    let fill_memos = FillMemos::here();
    let strong = holds(move || fill_memos.answer().is_some_and(|answer| may_be_above_ten(&answer)));
    view! {
        <ul class="cautions note caution" aria-label=keys::CAUTIONS.say()>
            <li>{VAPOUR.say()}</li>
            <When condition=strong>{ABOVE_TEN.map(|it| view! { <li>{it.say()}</li> })}</When>
            <li>{LAST_WORD.say()}</li>
        </ul>
    }
}

/// The plan in one line at the foot of a phone, or what is missing for one; and what
/// is said of both.
#[component]
pub(super) fn ShortAnswer() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let fill_memos = FillMemos::here();
    let field_errors = FieldErrors::here().all();
    let told = Memo::new(move |_| session.told(&field_errors.read()));
    let stale = holds(move || fill_memos.shown.with(|it| it.stale));
    let plan = fill_memos.of_answer(fill::in_short);
    let has_answer = holds(move || fill_memos.shown.with(|it| it.answer.is_some()));
    let recorded = fill_memos.just_recorded;
    let line = said(move || match (recorded.get(), has_answer.get(), stale.get()) {
        (true, ..) => keys::RECORDED.say().to_owned(),
        (_, false, _) => told.with(|it| fields::summary(it)),
        (_, true, true) => match told.with(|it| fields::summary(it)) {
            nothing if nothing.is_empty() => frame::NOT_UPDATED_ALONE.say().to_owned(),
            what => frame::NotUpdated { what }.say(),
        },
        (_, true, false) => plan.get(),
    });
    let shape = Memo::new(move |_| {
        let missed = || fill_memos.answer().is_some_and(|answer| answer.misses().is_some());
        if recorded.get() {
            Shape::Disc
        } else if !has_answer.get() || stale.get() {
            Shape::Stroke
        } else if missed() {
            Shape::Ring
        } else {
            Shape::Disc
        }
    });
    let blend = said(move || {
        if recorded.get() {
            return tank_memos.history.with(|history| {
                let estimate = history.estimate();
                estimate.map_or_else(String::new, |it| {
                    session.printer.with(|printer| printer.grade(it.share.expected()))
                })
            });
        }
        if stale.get() {
            return String::new();
        }
        let answer = fill_memos.answer();
        let words = answer
            .and_then(|answer| session.printer.with(|printer| fill::outcome(&answer, printer)));
        words.map(|(blend, _)| blend).unwrap_or_default()
    });
    let spoken = said(move || {
        if recorded.get() {
            // The line that says so is read by itself.
            return String::new();
        }
        let wrong = session.printer.with(|printer| told.with(|it| in_a_sentence(it, printer)));
        if !wrong.is_empty() {
            return wrong;
        }
        let infeasible = fill_memos.answer().and_then(|answer| {
            let infeasible = answer.infeasible.as_ref()?;
            session.printer.with(|it| fill::infeasible(infeasible, &answer, it).into_iter().next())
        });
        let parts =
            [infeasible.unwrap_or_default(), plan.get(), blend.get(), fill_memos.doubt_at_start()];
        parts.into_iter().filter(|it| !it.is_empty()).collect::<Vec<_>>().join(". ")
    });
    view! {
        <Spoken words=spoken />
        <When condition=holds(move || line.with(|it| !it.is_empty()))>
            <Bar href="#/fill/put-in" words=line shape=shape.into() figure=blend />
        </When>
    }
}
