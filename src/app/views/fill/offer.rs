use fillwright::fuel::grades;
use fillwright::logbook::{Document, Field, FuelForm, FuelPart, Measure};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::{Button, CheckBox, TextField, When, holds, said};

fn find(document: &Document, id: u32) -> Option<&FuelForm> {
    document.here.fill.offers.iter().find(|offer| offer.id == id)
}

fn find_mut(document: &mut Document, id: u32) -> Option<&mut FuelForm> {
    document.here.fill.offers.iter_mut().find(|offer| offer.id == id)
}

/// A text of a fuel.
fn text(id: u32, read: fn(&FuelForm) -> &String) -> Signal<String> {
    State::here().text(move |it| find(it, id).map(read))
}

/// Changes a text of a fuel.
fn set(id: u32, write: fn(&mut FuelForm) -> &mut String) -> Callback<String> {
    State::here().set(move |it, text| {
        if let Some(offer) = find_mut(it, id) {
            *write(offer) = text;
        }
    })
}

/// One fuel on offer.
#[component]
pub(super) fn OfferForm(id: u32) -> impl IntoView {
    let state = State::here();
    let name = text(id, |offer| &offer.name);
    let per_unit = said(move || {
        state.printer.with(|it| format!("{}/{}", it.currency, it.system.volume().symbol()))
    });
    view! {
        <fieldset class="offer">
            <legend class="legend">{name}</legend>
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
                    label="RON, at least"
                    hint="Or AKI: 93 AKI"
                    words=true
                    value=text(id, |offer| &offer.octane)
                    on_text=set(id, |offer| &mut offer.octane)
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Price)
                    label="Price"
                    unit=per_unit
                    value=state.entry(Measure::Price, move |it| find(it, id).map(|offer| &offer.price))
                    on_text=state.set_entry(move |it| find_mut(it, id).map(|offer| &mut offer.price))
                />
            </div>
            <MoreOfOffer id=id />
        </fieldset>
    }
}

/// What is seldom needed of a fuel on offer.
#[component]
fn MoreOfOffer(id: u32) -> impl IntoView {
    let state = State::here();
    let unit = state.volume_unit();
    let use_all =
        holds(move || state.document.with(|it| find(it, id).is_some_and(|offer| offer.use_all)));
    let tick = Callback::new(move |all| {
        state.document.update(|it| {
            if let Some(offer) = find_mut(it, id) {
                offer.use_all = all;
            }
        });
    });
    let remove = Callback::new(move |()| {
        state.change_undoably(|it| it.here.fill.offers.retain(|offer| offer.id != id));
    });
    let keep = Callback::new(move |()| {
        state.document.update(|it| {
            if let Some(mut own) = find(it, id).cloned() {
                own.id = it.here.next_id();
                own.put_in = fillwright::logbook::Entry::default();
                it.here.car.own_fuels.push(own);
            }
        });
    });
    let kept = holds(move || {
        state.document.with(|it| {
            let own = &it.here.car.own_fuels;
            find(it, id).is_some_and(|offer| {
                own.iter().any(|own| own.name == offer.name && own.share == offer.share)
            })
        })
    });
    let grade_note = said(move || {
        let grade = state
            .document
            .with(|it| find(it, id).and_then(|offer| grades::find(offer.grade.as_deref()?)));
        grade.map_or_else(String::new, |grade| {
            format!("{}. {} Source: {}.", grade.standard, grade.note, grade.source.citation)
        })
    });
    view! {
        <details>
            <summary>"Name, how much there is, MON"</summary>
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
                    value=state.entry(Measure::Volume, move |it| find(it, id).map(|offer| &offer.limit))
                    on_text=state.set_entry(move |it| find_mut(it, id).map(|offer| &mut offer.limit))
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Mon)
                    label="MON, at least"
                    value=text(id, |offer| &offer.mon)
                    on_text=set(id, |offer| &mut offer.mon)
                />
            </div>
            <CheckBox label="Use all of that" checked=use_all on_tick=tick />
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
        </details>
    }
}
