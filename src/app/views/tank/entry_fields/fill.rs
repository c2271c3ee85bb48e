//! The fields of an entry that records a fill.

use fillwright::document::{
    BeforeForm, ContentsForm, Document, EntryPart, Field, FuelForm, FuelPart, LevelForm, What,
};
use fillwright::quantity::notation::Measure;
use leptos::prelude::*;

use super::contents::TANK;
use super::{what, what_mut};
use crate::app::state::State;
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

const BEFORES: [(Before, &str, &str); 3] = [
    (Before::Nothing, "nothing", "Only the log"),
    (Before::Level, "level", "The level"),
    (Before::Contents, "contents", "Level and blend"),
];

fn fuel(document: &Document, id: u32) -> Option<&FuelForm> {
    document.here.draft.as_ref()?.fuels().iter().find(|fuel| fuel.id == id)
}

fn fuel_mut(document: &mut Document, id: u32) -> Option<&mut FuelForm> {
    document.here.draft.as_mut()?.fuel_mut(id)
}

#[component]
pub(super) fn FillFields(ids: Vec<u32>) -> impl IntoView {
    let state = State::here();
    let clicked = holds(move || {
        state.document.with(|it| matches!(what(it), Some(What::Fill(fill)) if fill.clicked))
    });
    let tick = Callback::new(move |clicked| {
        state.document.update(|it| {
            if let Some(What::Fill(fill)) = what_mut(it) {
                fill.clicked = clicked;
            }
        });
    });
    let before = Memo::new(move |_| {
        state.document.with(|it| match what(it) {
            Some(What::Fill(fill)) => match fill.before {
                BeforeForm::Nothing => Before::Nothing,
                BeforeForm::Level(_) => Before::Level,
                BeforeForm::Contents(_) => Before::Contents,
            },
            _ => Before::Nothing,
        })
    });
    let choose = state.set(|it, key| {
        let Some(What::Fill(fill)) = what_mut(it) else { return };
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
    let nothing = said(move || state.message(Field::Entry(EntryPart::Fuels)));
    let fuels: Vec<AnyView> =
        ids.into_iter().map(|id| PouredFuel(PouredFuelProps { id }).into_any()).collect();
    view! {
        <div
            class="question"
            id=Field::Entry(EntryPart::Fuels).id()
            tabindex="-1"
            role="group"
            aria-label="What went in"
        >
            <When condition=holds(move || nothing.with(|it| !it.is_empty()))>
                <p class="error">{nothing}</p>
            </When>
            {fuels}
        </div>
        <CheckBox
            label="The nozzle clicked off: the tank was full"
            checked=clicked
            on_tick=tick
        />
        <Options
            legend="Known just before it"
            name="before"
            options=options(&BEFORES)
            chosen=said(move || key_of(&BEFORES, &before.get()))
            on_choice=choose
        />
        <When condition=holds(move || before.get() != Before::Nothing)>
            <LevelFields form=TANK />
        </When>
        <When condition=holds(move || before.get() == Before::Level)>
            <LevelErrorField form=TANK />
        </When>
        <When condition=holds(move || before.get() == Before::Contents)>
            <BlendFields form=TANK />
        </When>
    }
}

#[component]
fn PouredFuel(id: u32) -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let name = state.text(move |it| Some(&fuel(it, id)?.name));
    let per_unit = said(move || {
        state.printer.with(|it| format!("{}/{}", it.currency, it.units.volume().symbol()))
    });
    let text = move |part,
                     label,
                     unit: &'static str,
                     read: fn(&mut FuelForm) -> &mut String,
                     get: fn(&FuelForm) -> &String| {
        view! {
            <TextField
                field=Field::Poured(id, part)
                label=label
                unit=unit
                words=true
                value=state.text(move |it| fuel(it, id).map(get))
                on_text=state
                    .set(move |it, text| {
                        if let Some(fuel) = fuel_mut(it, id) {
                            *read(fuel) = text;
                        }
                    })
            />
        }
        .into_any()
    };
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
            <div class="pair">
                <TextField
                    field=Field::Poured(id, FuelPart::Poured)
                    label="Put in"
                    hint="Leave empty if none"
                    unit=unit
                    words=true
                    value=state.entry(Measure::Volume, move |it| fuel(it, id).map(|it| &it.poured))
                    on_text=state.set_entry(move |it| fuel_mut(it, id).map(|it| &mut it.poured))
                />
                <TextField
                    field=Field::Poured(id, FuelPart::Price)
                    label="Price"
                    unit=per_unit
                    value=state.entry(Measure::Price, move |it| fuel(it, id).map(|it| &it.price))
                    on_text=state.set_entry(move |it| fuel_mut(it, id).map(|it| &mut it.price))
                />
            </div>
            <details>
                <summary>"Ethanol, octane, name"</summary>
                <div class="pair">
                    {text(FuelPart::Share, "Ethanol", "%", |it| &mut it.share, |it| &it.share)}
                    {text(
                        FuelPart::ShareRange,
                        "May be",
                        "%",
                        |it| &mut it.share_range,
                        |it| &it.share_range,
                    )}
                    <TextField
                        field=Field::Poured(id, FuelPart::Octane)
                        label="Octane, at least"
                        unit=state.octane_unit()
                        words=true
                        value=state.entry(Measure::Octane, move |it| fuel(it, id).map(|it| &it.octane))
                        on_text=state.set_entry(move |it| fuel_mut(it, id).map(|it| &mut it.octane))
                    />
                    {text(FuelPart::Mon, "MON, at least", "", |it| &mut it.mon, |it| &it.mon)}
                    {text(FuelPart::Name, "Name", "", |it| &mut it.name, |it| &it.name)}
                </div>
                {how_sure(
                    format!("poured-{id}-how-sure"),
                    move |it| {
                        let fuel = fuel(it, id)?;
                        Some((fuel.how_sure, fuel.share_assumed()?))
                    },
                    move |it| Some(&mut fuel_mut(it, id)?.how_sure),
                )}
                {extras_fields(
                    |part| Field::Poured(id, FuelPart::Extra(part)),
                    move |it| fuel(it, id).map(|it| &it.extras),
                    move |it| fuel_mut(it, id).map(|it| &mut it.extras),
                )}
            </details>
        </fieldset>
    }
}
