//! The fields of an entry that says how much was drained.

use fillwright::document::{EntryPart, Field, What};
use fillwright::message::Message;
use fillwright::message::keys::tank as keys;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{Options, TextField, When, holds, key_of, options, said, value_of};

const HOW_MUCH: [(bool, &str, Message); 2] =
    [(true, "all", keys::ALL_DRAINED), (false, "part", keys::PART_DRAINED)];

/// How much was drained: all of it, or so much. A blank says neither.
#[component]
pub(super) fn DrainField() -> impl IntoView {
    let session = Session::here();
    let completely = holds(move || {
        session.document.with(|it| it.here.draft.as_ref().is_some_and(|it| it.drained_completely))
    });
    let some = holds(move || {
        session.document.with(|it| match it.draft_what() {
            Some(What::Drain(entry)) => !entry.is_blank(),
            _ => false,
        })
    });
    let chosen = said(move || match (completely.get(), some.get()) {
        (false, false) => String::new(),
        (completely, _) => key_of(&HOW_MUCH, &completely),
    });
    let choose = session.set(|it, key| {
        if let (Some(draft), Some(completely)) = (&mut it.here.draft, value_of(&HOW_MUCH, &key)) {
            draft.drained_completely = completely;
        }
    });
    view! {
        <Options
            legend=keys::HOW_MUCH_DRAINED.say()
            name="drained-how-much"
            options=options(&HOW_MUCH)
            chosen=chosen
            on_choice=choose
        />
        <When condition=holds(move || !completely.get())>
            <TextField field=Field::Entry(EntryPart::Drained) label=keys::DRAINED.say() words=true />
        </When>
        <p class="note caution">
            {keys::DRAIN_CAUTION.say()}
        </p>
    }
}
