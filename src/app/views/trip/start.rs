//! The card of what is in the tank where the route begins.

use fillwright::answers::tank::History;
use fillwright::document::{ContentsOf, Field, StartForm, TripPart};
use fillwright::message::Message;
use fillwright::message::keys::trip as keys;
use leptos::prelude::*;

use super::need;
use crate::app::device;
use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::views::contents::{BlendFields, LevelFields};
use crate::app::widgets::{Options, Section, When, holds, key_of, options, said, value_of};

const STARTS: [(StartForm, &str, Message); 2] =
    [(StartForm::Log, "log", keys::FROM_LOG), (StartForm::Typed, "typed", keys::TYPED)];

fn is_here(field: Field) -> bool {
    matches!(field, Field::Trip(TripPart::Start) | Field::Contents(ContentsOf::Trip, _))
}

/// What is in the tank where the route begins.
#[component]
pub(super) fn StartSection() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let chosen = said(move || session.document.with(|it| key_of(&STARTS, &it.here.route.start)));
    let choose = session.set(|it, key| {
        if let Some(start) = value_of(&STARTS, &key) {
            it.here.route.start = start;
        }
    });
    let from_log = holds(move || session.document.with(|it| it.here.route.start == StartForm::Log));
    let by_log = said(move || {
        let as_of = tank_memos.history.with(History::as_of);
        as_of.map_or_else(String::new, |as_of| {
            let date = device::date(as_of.local_minutes(), true);
            keys::AsOf { level: tank_memos.by_the_log(), date }.say()
        })
    });
    let errors = FieldErrors::here();
    let nothing = said(move || errors.message(Field::Trip(TripPart::Start)));
    let short = said(move || {
        if from_log.get() {
            keys::FROM_THE_LOG.say().to_owned()
        } else {
            keys::AS_TYPED.say().to_owned()
        }
    });
    view! {
        <Section id="trip-start" title=keys::START.say() short=short need=need(is_here) open=true>
            <Options
                legend=keys::START_FROM.say()
                name="route-start"
                options=options(&STARTS)
                chosen=chosen
                on_choice=choose
            />
            <When condition=from_log>
                <p class="note">{by_log}</p>
                <When condition=holds(move || nothing.with(|it| !it.is_empty()))>
                    <p class="note caution" id=Field::Trip(TripPart::Start).id() tabindex="-1">
                        {nothing}
                    </p>
                </When>
            </When>
            <When condition=holds(move || !from_log.get())>
                <LevelFields tank=ContentsOf::Trip />
                <BlendFields tank=ContentsOf::Trip />
            </When>
        </Section>
    }
}
