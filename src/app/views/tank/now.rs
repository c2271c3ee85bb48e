//! The card of what is in the tank now.

use fillwright::answers::tank::{TankAnswer, TankVerdict};
use fillwright::message::Message;
use fillwright::message::keys::tank as keys;
use fillwright::quantity::notation::Printer;
use fillwright::words::{self, tank};
use leptos::prelude::*;

use super::workings::Workings;
use crate::app::device;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{Drawn, NoCalibration, PrintButton, When, holds, said, verdict_item};

pub(super) const CAUTIONS: [Message; 2] = [keys::LEAN, keys::LAST_WORD];

/// What is said of the tank, kept up to date.
fn of_tank(words: fn(&TankAnswer, &Printer) -> String) -> Signal<String> {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    said(move || {
        let answer = tank_memos.answer.get();
        answer.map_or_else(String::new, |it| session.printer.with(|printer| words(&it, printer)))
    })
}

/// What is in the tank now.
#[component]
pub(super) fn NowCard(printing: RwSignal<bool>) -> impl IntoView {
    let tank_memos = TankMemos::here();
    let known = holds(move || tank_memos.answer.with(Option::is_some));
    let as_of =
        of_tank(|it, _| keys::AsOfNow { date: device::date(it.as_of.local_minutes(), true) }.say());
    view! {
        <section class="card" aria-labelledby="now-title">
            <div class="head">
                <h2 id="now-title">{keys::IN_TANK.say()}</h2>
                <PrintButton printing=printing ready=known />
            </div>
            <When condition=holds(move || !known.get())>
                <p>
                    {keys::NOTHING_YET.say()}
                </p>
            </When>
            <When condition=known>
                <div id="estimate" role="status">
                    <p class="estimate">
                        <span class="about">{keys::ABOUT.say()}</span>
                        <span class="number">{of_tank(|it, p| tank::blend(it.estimate.share, p).0)}</span>
                        " "
                        <small>{of_tank(|it, p| tank::blend(it.estimate.share, p).1)}</small>
                    </p>
                    <p>{of_tank(|it, p| tank::level_and_octane(&it.estimate, p))}</p>
                    <p class="hint">{as_of}</p>
                </div>
                <Doubts />
                <p class="hint">{of_tank(|it, p| tank::possible(&it.estimate, p))}</p>
                <Workings />
            </When>
        </section>
    }
}

/// Questions asked at a time.
const SHOWN: usize = 3;

/// What does not fit in the log, the latest first.
#[component]
fn Doubts() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let doubts = Callback::new(move |()| {
        tank_memos.history.with(|history| {
            let open = history.replays.iter().rev().filter(|it| !it.doubts.is_empty());
            open.take(SHOWN)
                .map(|replayed| {
                    let link = format!("#/tank/event-{}", replayed.event);
                    let when = device::date(replayed.time.local_minutes(), true);
                    let words = session.printer.with(|printer| {
                        replayed
                            .doubts
                            .iter()
                            .map(|it| tank::doubt(it, printer))
                            .collect::<Vec<_>>()
                    });
                    view! {
                        <li>
                            <a href=link>{when}</a>
                            ": "
                            {words.join(" ")}
                        </li>
                    }
                    .into_any()
                })
                .collect()
        })
    });
    let any = holds(move || {
        tank_memos.history.with(|it| it.replays.iter().any(|replayed| !replayed.doubts.is_empty()))
    });
    view! {
        <When condition=any>
            <div class="note caution" id="doubts">
                <h3>{keys::DOES_IT_FIT.say()}</h3>
                <ul class="cautions">
                    <Drawn what=doubts />
                </ul>
            </div>
        </When>
    }
}

/// The verdict on each calibration, with what would make it usable.
pub(super) fn verdicts(answer: &TankAnswer, printer: &Printer) -> Vec<AnyView> {
    let item = |it: &TankVerdict| {
        let why = words::reasons(&it.judgement, &it.calibration, printer);
        let lambda = words::lambda(&it.judgement, printer).unwrap_or_default();
        let remedies = tank::remedies(it, answer, printer);
        let words = [why, lambda, remedies].join(" ");
        verdict_item(&it.calibration.name, it.judgement.verdict, words.trim())
    };
    answer.verdicts.iter().map(item).collect()
}

/// Which calibration may be selected now.
#[component]
pub(super) fn VerdictsCard() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let known = holds(move || tank_memos.answer.with(Option::is_some));
    let none = holds(move || {
        tank_memos.answer.with(|it| it.as_ref().is_some_and(|answer| answer.verdicts.is_empty()))
    });
    let items = Callback::new(move |()| {
        let Some(answer) = tank_memos.answer.get() else { return Vec::new() };
        session.printer.with(|printer| verdicts(&answer, printer))
    });
    let stranded = of_tank(|it, _| tank::none_usable(it).unwrap_or_default());
    let old = of_tank(|it, printer| {
        it.old_blend.and_then(|old| tank::old_blend(old, printer)).unwrap_or_default()
    });
    view! {
        <When condition=known>
            <section class="card" aria-labelledby="tank-verdicts-title">
                <h2 id="tank-verdicts-title">{keys::WHICH.say()}</h2>
                <NoCalibration condition=none />
                <When condition=holds(move || stranded.with(|it| !it.is_empty()))>
                    <p class="note caution" id="none-usable">{stranded}</p>
                </When>
                <ul class="verdicts" id="tank-verdicts">
                    <Drawn what=items />
                </ul>
                <When condition=holds(move || old.with(|it| !it.is_empty()))>
                    <p class="note" id="old-blend">{old}</p>
                </When>
                <ul class="cautions note caution" aria-label=keys::CAUTIONS.say()>
                    {CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}
                </ul>
            </section>
        </When>
    }
}
