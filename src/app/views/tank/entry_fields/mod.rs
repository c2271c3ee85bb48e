//! The fields of each kind of entry.

mod contents;
mod drain;
mod fill;
mod readings;

use fillwright::document::{Document, EntryPart, Field, What};
use fillwright::quantity::notation::{Entry, Measure};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::views::contents::{BlendFields, LevelErrorField, LevelFields};
use crate::app::widgets::{TextField, said};
use contents::TANK;
use drain::DrainField;
use fill::{FillFields, FillFieldsProps};
use readings::{SensorFields, TubeTestFields};

fn what(document: &Document) -> Option<&What> {
    Some(&document.here.draft.as_ref()?.what)
}

fn what_mut(document: &mut Document) -> Option<&mut What> {
    Some(&mut document.here.draft.as_mut()?.what)
}

/// The fields of an entry of this kind.
pub(super) fn fields_of(what: &What) -> AnyView {
    match what {
        What::Fill(fill) => {
            let ids = fill.fuels.iter().map(|fuel| fuel.id).collect();
            FillFields(FillFieldsProps { ids }).into_any()
        }
        What::Level(_) => view! {
            <LevelFields form=TANK />
            <LevelErrorField form=TANK />
        }
        .into_any(),
        What::Sensor(_) => SensorFields().into_any(),
        What::TubeTest(_) => TubeTestFields().into_any(),
        What::Drive(_) => DistanceField().into_any(),
        What::Trip(_) => view! {
            <DistanceField />
            <ConsumptionField />
        }
        .into_any(),
        What::Drain(_) => DrainField().into_any(),
        What::Correction(_) => view! {
            <LevelFields form=TANK />
            <BlendFields form=TANK />
        }
        .into_any(),
        What::Note => ().into_any(),
    }
}

/// A text of the entry.
#[component]
fn EntryText(
    part: EntryPart,
    label: &'static str,
    read: fn(&What) -> Option<&String>,
    write: fn(&mut What) -> Option<&mut String>,
    #[prop(optional)] hint: &'static str,
    #[prop(optional)] unit: &'static str,
    #[prop(optional)] words: bool,
) -> impl IntoView {
    let state = State::here();
    view! {
        <TextField
            field=Field::Entry(part)
            label=label
            hint=hint
            unit=unit
            words=words
            value=state.text(move |it| read(what(it)?))
            on_text=state
                .set(move |it, text| {
                    if let Some(place) = what_mut(it).and_then(write) {
                        *place = text;
                    }
                })
        />
    }
}

/// A text of the entry whose meaning depends on the units.
#[component]
fn EntryMeasure(
    part: EntryPart,
    label: &'static str,
    measure: Measure,
    unit: Signal<String>,
    read: fn(&What) -> Option<&Entry>,
    write: fn(&mut What) -> Option<&mut Entry>,
    #[prop(optional)] hint: &'static str,
) -> impl IntoView {
    let state = State::here();
    view! {
        <TextField
            field=Field::Entry(part)
            label=label
            hint=hint
            unit=unit
            words=true
            value=state.entry(measure, move |it| read(what(it)?))
            on_text=state.set_entry(move |it| what_mut(it).and_then(write))
        />
    }
}

#[component]
fn DistanceField() -> impl IntoView {
    let state = State::here();
    let unit = said(move || state.printer.with(|it| it.units.distance().symbol().to_owned()));
    view! {
        <EntryMeasure
            part=EntryPart::Distance
            label="Distance"
            hint="Since the entry before"
            measure=Measure::Distance
            unit=unit
            read=|it| match it {
                What::Drive(entry) => Some(entry),
                What::Trip(form) => Some(&form.distance),
                _ => None,
            }
            write=|it| match it {
                What::Drive(entry) => Some(entry),
                What::Trip(form) => Some(&mut form.distance),
                _ => None,
            }
        />
    }
}

#[component]
fn ConsumptionField() -> impl IntoView {
    let state = State::here();
    let unit = said(move || state.printer.with(|it| it.units.consumption().symbol().to_owned()));
    view! {
        <EntryMeasure
            part=EntryPart::Consumption
            label="Mean consumption over it"
            measure=Measure::Consumption
            unit=unit
            read=|it| match it {
                What::Trip(form) => Some(&form.consumption),
                _ => None,
            }
            write=|it| match it {
                What::Trip(form) => Some(&mut form.consumption),
                _ => None,
            }
        />
    }
}
