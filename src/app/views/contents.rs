//! The fields of what is in a tank: before a fill, in an entry of the log, at the start of
//! a trip.

use fillwright::document::{ContentsForm, ContentsOf, ContentsPart, Document, Field, LevelForm};
use fillwright::quantity::notation::{Entry, Measure};
use leptos::prelude::*;

use super::LEVEL_READINGS;
use super::extras::extras_fields;
use super::how_sure::how_sure;
use crate::app::stages::Folded;
use crate::app::state::State;
use crate::app::widgets::{
    Button, LEVEL_HINT, OCTANE_HINT, Options, TextField, key_of, options, said, value_of,
};

/// Levels that a gauge shows, for one tap.
const MARKS: [(&str, &str); 5] =
    [("0", "Empty"), ("1/4", "¼"), ("1/2", "½"), ("3/4", "¾"), ("full", "Full")];

/// Where in the document the form of a tank stands.
#[derive(Clone, Copy)]
pub(super) struct TankForm {
    /// Which tank it is.
    pub(super) of: ContentsOf,
    /// Its level.
    pub(super) level: fn(&Document) -> Option<&LevelForm>,
    pub(super) level_mut: fn(&mut Document) -> Option<&mut LevelForm>,
    /// All that is in it.
    pub(super) contents: fn(&Document) -> Option<&ContentsForm>,
    pub(super) contents_mut: fn(&mut Document) -> Option<&mut ContentsForm>,
}

impl TankForm {
    fn field(self, part: ContentsPart) -> Field {
        Field::Contents(self.of, part)
    }

    /// The name of a group of choices that belong to this tank.
    fn name(self, of: &str) -> String {
        let tank = match self.of {
            ContentsOf::Fill => "tank",
            ContentsOf::Entry => "entry",
            ContentsOf::Trip => "trip-tank",
        };
        format!("{tank}-{of}")
    }
}

/// How much is in the tank, and how that was read.
#[component]
pub(super) fn LevelFields(form: TankForm) -> impl IntoView {
    let state = State::here();
    let reading = said(move || {
        let reading = state.document.with(|it| (form.level)(it).map(|level| level.reading));
        reading.map_or_else(String::new, |it| key_of(&LEVEL_READINGS, &it))
    });
    let choose = state.set(move |it, key| {
        let typed_in = it.settings.units;
        if let (Some(level), Some(reading)) =
            ((form.level_mut)(it), value_of(&LEVEL_READINGS, &key))
        {
            level.read_as(reading, typed_in);
        }
    });
    let put = state.set_entry(move |it| Some(&mut (form.level_mut)(it)?.level));
    view! {
        <TextField
            field=form.field(ContentsPart::Level)
            label="Level"
            hint=LEVEL_HINT
            words=true
            unit=state.volume_unit()
            value=state.entry(Measure::Level, move |it| Some(&(form.level)(it)?.level))
            on_text=put
        />
        <div class="buttons" role="group" aria-label="Level by the gauge">
            {MARKS
                .map(|(text, name)| {
                    let put = Callback::new(move |()| put.run(text.to_owned()));
                    view! { <Button label=name look="small" on_press=put /> }
                })}
        </div>
        <Options
            legend="How it was read"
            name=form.name("reading")
            options=options(&LEVEL_READINGS)
            chosen=reading
            on_choice=choose
        />
    }
}

/// How far the level may be off.
#[component]
pub(super) fn LevelErrorField(form: TankForm) -> impl IntoView {
    let state = State::here();
    view! {
        <TextField
            field=form.field(ContentsPart::LevelError)
            label="Error of the level, plus or minus"
            hint="Leave empty for the usual error of that reading"
            words=true
            unit=state.volume_unit()
            value=state.entry(Measure::Volume, move |it| Some(&(form.level)(it)?.error))
            on_text=state.set_entry(move |it| Some(&mut (form.level_mut)(it)?.error))
        />
    }
}

/// What it is that is in the tank, beside how much.
#[component]
pub(super) fn BlendFields(form: TankForm) -> impl IntoView {
    let state = State::here();
    let text = |read: fn(&ContentsForm) -> &String, write: fn(&mut ContentsForm) -> &mut String| {
        let value = state.text(move |it| (form.contents)(it).map(read));
        let on_text = state.set(move |it, text| {
            if let Some(contents) = (form.contents_mut)(it) {
                *write(contents) = text;
            }
        });
        (value, on_text)
    };
    let (share, put_share) = text(|it| &it.share, |it| &mut it.share);
    let (range, put_range) = text(|it| &it.share_range, |it| &mut it.share_range);
    let (mon, put_mon) = text(|it| &it.mon, |it| &mut it.mon);
    let octane = state
        .entry(Measure::Octane, move |it| -> Option<&Entry> { Some(&(form.contents)(it)?.octane) });
    view! {
        <div class="pair">
            <TextField
                field=form.field(ContentsPart::Share)
                label="Ethanol in it"
                unit="%"
                hint="What you expect"
                value=share
                on_text=put_share
            />
            <TextField
                field=form.field(ContentsPart::ShareRange)
                label="May be"
                unit="%"
                hint="From–to: 8–12"
                words=true
                value=range
                on_text=put_range
            />
        </div>
        {how_sure(
            form.name("how-sure"),
            move |it| {
                let contents = (form.contents)(it)?;
                Some((contents.how_sure, contents.share_assumed()?))
            },
            move |it| Some(&mut (form.contents_mut)(it)?.how_sure),
        )}
        <Folded summary="Octane and gauge error".into_any()>
            <div class="pair">
                <TextField
                    field=form.field(ContentsPart::Octane)
                    label="Octane, at least"
                    hint=OCTANE_HINT
                    unit=state.octane_unit()
                    words=true
                    value=octane
                    on_text=state.set_entry(move |it| Some(&mut (form.contents_mut)(it)?.octane))
                />
                <TextField
                    field=form.field(ContentsPart::Mon)
                    label="MON, at least"
                    value=mon
                    on_text=put_mon
                />
            </div>
            {extras_fields(
                move |part| form.field(ContentsPart::Extra(part)),
                move |it| Some(&(form.contents)(it)?.extras),
                move |it| Some(&mut (form.contents_mut)(it)?.extras),
            )}
            <LevelErrorField form=form />
        </Folded>
    }
}
