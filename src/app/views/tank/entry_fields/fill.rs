//! The fields of an entry that records a fill.

use fillwright::document::{
    BeforeForm, ContentsForm, ContentsOf, EntryPart, Field, FuelPart, LevelForm, What,
};
use fillwright::message::Message;
use fillwright::message::keys::tank as keys;
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::views::contents::{BlendFields, LevelErrorField, LevelFields};
use crate::app::views::extras::extras_fields;
use crate::app::views::how_sure::how_sure;
use crate::app::widgets::{
    CheckBox, Options, TextField, When, holds, key_of, options, said, value_of,
};

#[derive(Clone, Copy, PartialEq)]
enum Before {
    Nothing,
    Level,
    Contents,
}

const BEFORES: [(Before, &str, Message); 3] = [
    (Before::Nothing, "nothing", keys::ONLY_THE_LOG),
    (Before::Level, "level", keys::THE_LEVEL),
    (Before::Contents, "contents", keys::LEVEL_AND_BLEND),
];

#[component]
pub(super) fn FillFields(ids: Vec<u32>) -> impl IntoView {
    let session = Session::here();
    let clicked = holds(move || {
        session
            .document
            .with(|it| matches!(it.draft_what(), Some(What::Fill(fill)) if fill.clicked))
    });
    let tick = Callback::new(move |clicked| {
        session.document.update(|it| {
            if let Some(What::Fill(fill)) = it.draft_what_mut() {
                fill.clicked = clicked;
            }
        });
    });
    let before = Memo::new(move |_| {
        session.document.with(|it| match it.draft_what() {
            Some(What::Fill(fill)) => match fill.before {
                BeforeForm::Nothing => Before::Nothing,
                BeforeForm::Level(_) => Before::Level,
                BeforeForm::Contents(_) => Before::Contents,
            },
            _ => Before::Nothing,
        })
    });
    let choose = session.set(|it, key| {
        let Some(What::Fill(fill)) = it.draft_what_mut() else { return };
        let level = match std::mem::take(&mut fill.before) {
            BeforeForm::Nothing => LevelForm::default(),
            BeforeForm::Level(form) => form,
            BeforeForm::Contents(form) => form.level,
        };
        fill.before = match value_of(&BEFORES, &key) {
            Some(Before::Level) => BeforeForm::Level(level),
            Some(Before::Contents) => {
                BeforeForm::Contents(ContentsForm { level, ..ContentsForm::default() })
            }
            _ => BeforeForm::Nothing,
        };
    });
    let errors = FieldErrors::here();
    let nothing = said(move || errors.message(Field::Entry(EntryPart::Fuels)));
    let fuels: Vec<AnyView> =
        ids.into_iter().map(|id| PouredFuel(PouredFuelProps { id }).into_any()).collect();
    view! {
        <div
            class="question"
            id=Field::Entry(EntryPart::Fuels).id()
            tabindex="-1"
            role="group"
            aria-label=keys::WHAT_WENT_IN.say()
        >
            <When condition=holds(move || nothing.with(|it| !it.is_empty()))>
                <p class="error">{nothing}</p>
            </When>
            {fuels}
        </div>
        <CheckBox
            label=keys::WAS_FULL.say()
            checked=clicked
            on_tick=tick
        />
        <Options
            legend=keys::KNOWN_BEFORE.say()
            name="before"
            options=options(&BEFORES)
            chosen=said(move || key_of(&BEFORES, &before.get()))
            on_choice=choose
        />
        <When condition=holds(move || before.get() != Before::Nothing)>
            <LevelFields tank=ContentsOf::Entry />
        </When>
        <When condition=holds(move || before.get() == Before::Level)>
            <LevelErrorField tank=ContentsOf::Entry />
        </When>
        <When condition=holds(move || before.get() == Before::Contents)>
            <BlendFields tank=ContentsOf::Entry />
        </When>
    }
}

#[component]
fn PouredFuel(id: u32) -> impl IntoView {
    let session = Session::here();
    let name = session.typed(Field::Poured(id, FuelPart::Name));
    let text = move |part, label| {
        view! { <TextField field=Field::Poured(id, part) label=label words=true /> }.into_any()
    };
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
            <div class="pair">
                <TextField
                    field=Field::Poured(id, FuelPart::Poured)
                    label=keys::PUT_IN.say()
                    hint=keys::PUT_IN_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Poured(id, FuelPart::Price)
                    label=keys::PRICE.say()
                />
            </div>
            <details>
                <summary>{keys::ETHANOL_OCTANE_NAME.say()}</summary>
                <div class="pair">
                    {text(FuelPart::Share, keys::ETHANOL.say())} {text(FuelPart::ShareRange, keys::MAY_BE.say())}
                    {text(FuelPart::Octane, keys::OCTANE.say())}
                    {text(FuelPart::Mon, keys::MON.say())} {text(FuelPart::Name, keys::NAME.say())}
                </div>
                {how_sure(Field::Poured(id, FuelPart::Share))}
                {extras_fields(|part| Field::Poured(id, FuelPart::Extra(part)))}
            </details>
        </fieldset>
    }
}
