//! The fields of what is in a tank: before a fill, in an entry of the log, at the start of
//! a trip.

use fillwright::document::{ContentsOf, ContentsPart, Field};
use fillwright::message::Message;
use fillwright::message::keys::contents as keys;
use leptos::prelude::*;

use super::LEVEL_READINGS;
use super::extras::extras_fields;
use super::how_sure::how_sure;
use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::widgets::{
    Button, LEVEL_HINT, OCTANE_HINT, Options, TextField, key_of, options, said, value_of,
};

/// Levels that a gauge shows, for one tap.
const MARKS: [(&str, Message); 5] = [
    ("0", keys::EMPTY),
    ("1/4", keys::QUARTER),
    ("1/2", keys::HALF),
    ("3/4", keys::THREE_QUARTERS),
    ("full", keys::FULL),
];

/// The name of a group of choices that belong to a tank.
fn name(tank: ContentsOf, of: &str) -> String {
    let tank = match tank {
        ContentsOf::Fill => "tank",
        ContentsOf::Entry => "entry",
        ContentsOf::Trip => "trip-tank",
    };
    format!("{tank}-{of}")
}

/// How much is in the tank, and how that was read.
#[component]
pub(super) fn LevelFields(tank: ContentsOf) -> impl IntoView {
    let session = Session::here();
    let reading = said(move || {
        let reading = session.document.with(|it| it.level(tank).map(|level| level.reading));
        reading.map_or_else(String::new, |it| key_of(&LEVEL_READINGS, &it))
    });
    let choose = session.set(move |it, key| {
        let typed_in = it.settings.units;
        if let (Some(level), Some(reading)) = (it.level_mut(tank), value_of(&LEVEL_READINGS, &key))
        {
            level.read_as(reading, typed_in);
        }
    });
    let put = session.type_into(Field::Contents(tank, ContentsPart::Level));
    view! {
        <TextField
            field=Field::Contents(tank, ContentsPart::Level)
            label=keys::LEVEL.say()
            hint=LEVEL_HINT.say()
            words=true
        />
        <div class="buttons" role="group" aria-label=keys::LEVEL_BY_GAUGE.say()>
            {MARKS
                .map(|(text, name)| {
                    let put = Callback::new(move |()| put.run(text.to_owned()));
                    view! { <Button label=name.say() look="small" on_press=put /> }
                })}
        </div>
        <Options
            legend=keys::HOW_READ.say()
            name=name(tank, "reading")
            options=options(&LEVEL_READINGS)
            chosen=reading
            on_choice=choose
        />
    }
}

/// How far the level may be off.
#[component]
pub(super) fn LevelErrorField(tank: ContentsOf) -> impl IntoView {
    view! {
        <TextField
            field=Field::Contents(tank, ContentsPart::LevelError)
            label=keys::LEVEL_ERROR.say()
            hint=keys::LEVEL_ERROR_HINT.say()
            words=true
        />
    }
}

/// What it is that is in the tank, beside how much.
#[component]
pub(super) fn BlendFields(tank: ContentsOf) -> impl IntoView {
    view! {
        <div class="pair">
            <TextField
                field=Field::Contents(tank, ContentsPart::Share)
                label=keys::ETHANOL.say()
                hint=keys::ETHANOL_HINT.say()
            />
            <TextField
                field=Field::Contents(tank, ContentsPart::ShareRange)
                label=keys::MAY_BE.say()
                hint=keys::MAY_BE_HINT.say()
                words=true
            />
        </div>
        {how_sure(Field::Contents(tank, ContentsPart::Share))}
        <Folded summary=keys::OCTANE_AND_ERROR.say().into_any()>
            <div class="pair">
                <TextField
                    field=Field::Contents(tank, ContentsPart::Octane)
                    label=keys::OCTANE.say()
                    hint=OCTANE_HINT.say()
                    words=true
                />
                <TextField
                    field=Field::Contents(tank, ContentsPart::Mon)
                    label=keys::MON.say()
                />
            </div>
            {extras_fields(|part| Field::Contents(tank, ContentsPart::Extra(part)))}
            <LevelErrorField tank=tank />
        </Folded>
    }
}
