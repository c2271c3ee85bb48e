//! The fields of one fuel, at the pump or along the route.

use fillwright::document::{Field, FuelForm, FuelPart};
use fillwright::fuel::grades;
use fillwright::quantity::notation::Measure;
use fillwright::words;
use fillwright::words::deeds::Deed;
use leptos::prelude::*;

use crate::app::stages::Folded;
use crate::app::state::State;
use crate::app::undo::{Act, Spot};
use crate::app::views::extras::extras_fields;
use crate::app::views::how_sure::how_sure;
use crate::app::widgets::{Button, CheckBox, OCTANE_HINT, TextField, When, holds, said};

/// A text of a fuel.
fn text(id: u32, read: fn(&FuelForm) -> &String) -> Signal<String> {
    State::here().text(move |it| it.fuel(id).map(read))
}

/// Changes a text of a fuel.
fn set(id: u32, write: fn(&mut FuelForm) -> &mut String) -> Callback<String> {
    State::here().set(move |it, text| {
        if let Some(offer) = it.fuel_mut(id) {
            *write(offer) = text;
        }
    })
}

/// One fuel on offer, at the pump or along the route.
#[component]
pub(super) fn OfferForm(id: u32) -> impl IntoView {
    let state = State::here();
    let name = text(id, |offer| &offer.name);
    let per_unit = said(move || {
        state.printer.with(|it| format!("{}/{}", it.currency, it.units.volume().symbol()))
    });
    let exchanged = said(move || {
        let exchanged = state
            .document
            .with(|it| it.fuel(id).and_then(|offer| it.settings.exchanged(&offer.price)));
        exchanged.map_or_else(String::new, |it| {
            state.printer.with(|printer| words::exchanged(&it, printer))
        })
    });
    let on_route = holds(move || state.document.with(|it| it.stop_of_fuel(id).is_some()));
    let closed = holds(move || {
        state.document.with(|it| it.stop_of_fuel(id).is_some_and(|stop| stop.closed.contains(&id)))
    });
    let close = Callback::new(move |closed| state.document.update(|it| it.close_fuel(id, closed)));
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
            <When condition=on_route>
                <CheckBox label="Not to be had" checked=closed on_tick=close />
            </When>
            <div class="pair">
                <TextField
                    field=Field::Fuel(id, FuelPart::Share)
                    label="Ethanol"
                    unit="%"
                    hint="What you expect"
                    value=text(id, |offer| &offer.share)
                    on_text=set(id, |offer| &mut offer.share)
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::ShareRange)
                    label="May be"
                    unit="%"
                    hint="From–to: 70–85"
                    words=true
                    value=text(id, |offer| &offer.share_range)
                    on_text=set(id, |offer| &mut offer.share_range)
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Octane)
                    label="Octane, at least"
                    hint=OCTANE_HINT
                    unit=state.octane_unit()
                    words=true
                    value=state.entry(Measure::Octane, move |it| it.fuel(id).map(|it| &it.octane))
                    on_text=state.set_entry(move |it| it.fuel_mut(id).map(|it| &mut it.octane))
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Price)
                    label="Price"
                    unit=per_unit
                    value=state.entry(Measure::Price, move |it| it.fuel(id).map(|offer| &offer.price))
                    on_text=state.set_entry(move |it| it.fuel_mut(id).map(|offer| &mut offer.price))
                />
            </div>
            <When condition=holds(move || exchanged.with(|it| !it.is_empty()))>
                <p class="hint" id=format!("fuel-{id}-exchanged")>
                    {exchanged}
                </p>
            </When>
            {how_sure(
                format!("fuel-{id}-how-sure"),
                move |it| {
                    let fuel = it.fuel(id)?;
                    Some((fuel.how_sure, fuel.share_assumed()?))
                },
                move |it| Some(&mut it.fuel_mut(id)?.how_sure),
            )}
            <MoreOfOffer id=id on_route=on_route />
        </fieldset>
    }
}

/// What is seldom needed of a fuel on offer.
#[component]
fn MoreOfOffer(id: u32, on_route: Signal<bool>) -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let use_all =
        holds(move || state.document.with(|it| it.fuel(id).is_some_and(|offer| offer.use_all)));
    let tick = Callback::new(move |all| {
        state.document.update(|it| {
            if let Some(offer) = it.fuel_mut(id) {
                offer.use_all = all;
            }
        });
    });
    let remove = Callback::new(move |()| {
        state.change_undoably(Act::at(Spot::Row(id), Deed::FuelRemoved), |it| it.remove_fuel(id));
    });
    let keep = Callback::new(move |()| state.document.update(|it| it.keep_fuel(id)));
    let kept = holds(move || state.document.with(|it| it.keeps_fuel(id)));
    let grade_note = said(move || {
        let grade = state
            .document
            .with(|it| it.fuel(id).and_then(|offer| grades::find(offer.grade.as_deref()?)));
        grade.map_or_else(String::new, |grade| {
            format!("{}. {} Source: {}.", grade.standard, grade.note, grade.source.citation)
        })
    });
    view! {
        <Folded summary="Name, how much there is, MON".into_any()>
            <TextField
                field=Field::Fuel(id, FuelPart::Name)
                label="Name"
                words=true
                value=text(id, |offer| &offer.name)
                on_text=set(id, |offer| &mut offer.name)
            />
            <div class="pair">
                <TextField
                    field=Field::Fuel(id, FuelPart::Limit)
                    label="At most"
                    hint="A can, say"
                    words=true
                    unit=unit
                    value=state.entry(Measure::Volume, move |it| it.fuel(id).map(|offer| &offer.limit))
                    on_text=state.set_entry(move |it| it.fuel_mut(id).map(|offer| &mut offer.limit))
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Mon)
                    label="MON, at least"
                    value=text(id, |offer| &offer.mon)
                    on_text=set(id, |offer| &mut offer.mon)
                />
            </div>
            {extras_fields(
                |part| Field::Fuel(id, FuelPart::Extra(part)),
                move |it| it.fuel(id).map(|offer| &offer.extras),
                move |it| it.fuel_mut(id).map(|offer| &mut offer.extras),
            )}
            <When condition=holds(move || !on_route.get())>
                <CheckBox label="Use all of that" checked=use_all on_tick=tick />
            </When>
            <p class="hint">{grade_note}</p>
            <div class="buttons">
                <When condition=holds(move || !kept.get())>
                    <Button label="Keep among my fuels" look="small" on_press=keep />
                </When>
                <When condition=kept>
                    <p class="hint">"Kept among your fuels."</p>
                </When>
                <Button label="Remove" look="small" on_press=remove />
            </div>
        </Folded>
    }
}
