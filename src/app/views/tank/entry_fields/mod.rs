//! The fields of each kind of entry.

mod drain;
mod fill;
mod readings;

use fillwright::document::{ContentsOf, EntryPart, Field, What};
use fillwright::message::keys::tank as keys;
use leptos::prelude::*;

use crate::app::views::contents::{BlendFields, LevelErrorField, LevelFields};
use crate::app::widgets::TextField;
use drain::DrainField;
use fill::{FillFields, FillFieldsProps};
use readings::{SensorFields, TubeTestFields};

/// The fields of an entry of this kind.
pub(super) fn fields_of(what: &What) -> AnyView {
    match what {
        What::Fill(fill) => {
            let ids = fill.fuels.iter().map(|fuel| fuel.id).collect();
            FillFields(FillFieldsProps { ids }).into_any()
        }
        What::Level(_) => view! {
            <LevelFields tank=ContentsOf::Entry />
            <LevelErrorField tank=ContentsOf::Entry />
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
            <LevelFields tank=ContentsOf::Entry />
            <BlendFields tank=ContentsOf::Entry />
        }
        .into_any(),
        What::Note => ().into_any(),
    }
}

#[component]
fn DistanceField() -> impl IntoView {
    view! {
        <TextField
            field=Field::Entry(EntryPart::Distance)
            label=keys::DISTANCE.say()
            hint=keys::DISTANCE_HINT.say()
            words=true
        />
    }
}

#[component]
fn ConsumptionField() -> impl IntoView {
    view! {
        <TextField
            field=Field::Entry(EntryPart::Consumption)
            label=keys::MEAN_CONSUMPTION.say()
            words=true
        />
    }
}
