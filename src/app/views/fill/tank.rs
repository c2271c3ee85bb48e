//! The card of what is in the tank before a fill.

use fillwright::answers::tank::History;
use fillwright::document::{ContentsOf, Field, Id, StartForm};
use fillwright::message::Message;
use fillwright::message::keys::fill as keys;
use leptos::prelude::*;

use crate::app::device;
use crate::app::fill_memos::FillMemos;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::views::contents::{BlendFields, LevelFields};
use crate::app::widgets::{Options, TextField, When, holds, key_of, options, said, value_of};

const STARTS: [(StartForm, &str, Message); 2] =
    [(StartForm::Log, "log", keys::FROM_LOG), (StartForm::Typed, "typed", keys::TYPED)];

/// What is in the tank.
#[component]
pub(super) fn TankCard() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let from_log = holds(move || session.document.with(|it| it.here.fill.start == StartForm::Log));
    let has_log = holds(move || tank_memos.history.with(|it| it.estimator.is_some()));
    // Nothing comes without it, so it is asked for first; once typed here it stays in sight
    // until the view is left.
    let asks_for_size = Memo::new(move |before: Option<&(Id, bool)>| {
        session.document.with(|it| {
            let (car, capacity) = (&it.here.id, &it.here.car.capacity);
            let asked = before.is_some_and(|(id, asked)| id == car && *asked);
            (car.clone(), asked || capacity.is_blank())
        })
    });
    let asks_for_size = holds(move || asks_for_size.with(|it| it.1));
    view! {
        <section class="card" aria-labelledby="in-tank">
            <h2 id="in-tank">{keys::IN_TANK.say()}</h2>
            <When condition=asks_for_size>
                <TextField
                    field=Field::Capacity
                    label=keys::TANK_SIZE.say()
                    words=true
                />
            </When>
            <When condition=holds(move || has_log.get() || from_log.get())>
                <Start />
            </When>
            <LevelFields tank=ContentsOf::Fill />
            <When condition=holds(move || !from_log.get())>
                <BlendFields tank=ContentsOf::Fill />
            </When>
        </section>
    }
}

/// Where the fill starts from, and what the log says.
#[component]
fn Start() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let fill_memos = FillMemos::here();
    let chosen = said(move || session.document.with(|it| key_of(&STARTS, &it.here.fill.start)));
    let choose = session.set(|it, key| {
        if let Some(start) = value_of(&STARTS, &key) {
            it.here.fill.start = start;
        }
    });
    let from_log = holds(move || session.document.with(|it| it.here.fill.start == StartForm::Log));
    let words = said(move || {
        let as_of = tank_memos.history.with(History::as_of);
        as_of.map_or_else(String::new, |as_of| {
            let date = device::date(as_of.local_minutes(), true);
            keys::AsOf { level: tank_memos.by_the_log(), date }.say()
        })
    });
    let doubt = said(move || fill_memos.doubt_at_start());
    view! {
        <div id=Field::Start.id() tabindex="-1">
            <Options
                legend=keys::START_FROM.say()
                name="start"
                options=options(&STARTS)
                chosen=chosen
                on_choice=choose
            />
        </div>
        <When condition=from_log>
            <p class="note" id="by-the-log">{words}</p>
            <p class="hint">
                {keys::GAUGE_SHARPENS.say()}
            </p>
            <When condition=holds(move || doubt.with(|it| !it.is_empty()))>
                <p class="note caution" id="start-doubt">
                    {doubt}
                </p>
            </When>
        </When>
    }
}
