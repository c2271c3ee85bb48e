use fillwright::logbook::{Document, Field, FuelForm, FuelPart, Measure};
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::TextField;

fn find(document: &Document, id: u32) -> Option<&FuelForm> {
    document.fill.offers.iter().find(|offer| offer.id == id)
}

fn find_mut(document: &mut Document, id: u32) -> Option<&mut FuelForm> {
    document.fill.offers.iter_mut().find(|offer| offer.id == id)
}

/// One fuel on offer.
#[component]
pub(super) fn OfferForm(id: u32) -> impl IntoView {
    let state = State::here();
    let text = move |read: fn(&FuelForm) -> &String| state.text(move |it| find(it, id).map(read));
    let set = move |write: fn(&mut FuelForm) -> &mut String| {
        state.set(move |it, text| {
            if let Some(offer) = find_mut(it, id) {
                *write(offer) = text;
            }
        })
    };
    let name = text(|offer| &offer.name);
    let unit =
        Signal::derive(move || state.printer.with(|it| it.system.volume().symbol().to_owned()));
    let per_unit = Signal::derive(move || {
        state.printer.with(|it| format!("{}/{}", it.currency, it.system.volume().symbol()))
    });
    let use_all = move || state.document.with(|it| find(it, id).is_some_and(|offer| offer.use_all));
    let remove = move |_| {
        state.change_undoably(|it| it.fill.offers.retain(|offer| offer.id != id));
    };
    let keep = move |_| {
        state.document.update(|it| {
            if let Some(mut own) = find(it, id).cloned() {
                own.id = it.next_id();
                own.put_in = fillwright::logbook::Entry::default();
                it.car.own_fuels.push(own);
            }
        });
    };
    let kept = move || {
        state.document.with(|it| {
            find(it, id).is_some_and(|offer| {
                it.car
                    .own_fuels
                    .iter()
                    .any(|own| own.name == offer.name && own.share == offer.share)
            })
        })
    };
    let grade_note = move || {
        state.document.with(|it| {
            let grade = find(it, id)?.grade.as_deref()?;
            let grade = fillwright::fuel::grades::CATALOGUE.iter().find(|it| it.id == grade)?;
            Some(format!("{} {} Source: {}.", grade.standard, grade.note, grade.source.citation))
        })
    };
    view! {
        <fieldset class="offer">
            <legend class="legend">{move || name.get()}</legend>
            <div class="pair">
                <TextField
                    field=Field::Fuel(id, FuelPart::Share)
                    label="Ethanol"
                    unit="%"
                    hint="What you expect"
                    value=text(|offer| &offer.share)
                    on_text=set(|offer| &mut offer.share)
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::ShareRange)
                    label="May be"
                    unit="%"
                    hint="From–to: 70–85"
                    words=true
                    value=text(|offer| &offer.share_range)
                    on_text=set(|offer| &mut offer.share_range)
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Octane)
                    label="RON, at least"
                    hint="Or AKI: 93 AKI"
                    words=true
                    value=text(|offer| &offer.octane)
                    on_text=set(|offer| &mut offer.octane)
                />
                <TextField
                    field=Field::Fuel(id, FuelPart::Price)
                    label="Price"
                    unit=per_unit
                    value=state.entry(Measure::Price, move |it| find(it, id).map(|offer| &offer.price))
                    on_text=state.set_entry(move |it| find_mut(it, id).map(|offer| &mut offer.price))
                />
            </div>
            <details>
                <summary>"Name, how much there is, MON"</summary>
                <TextField
                    field=Field::Fuel(id, FuelPart::Name)
                    label="Name"
                    words=true
                    value=name
                    on_text=set(|offer| &mut offer.name)
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
                        value=text(|offer| &offer.mon)
                        on_text=set(|offer| &mut offer.mon)
                    />
                </div>
                <label class="check">
                    <input
                        type="checkbox"
                        prop:checked=use_all
                        on:change:target=move |event| {
                            let all = event.target().checked();
                            state
                                .document
                                .update(|it| {
                                    if let Some(offer) = find_mut(it, id) {
                                        offer.use_all = all;
                                    }
                                });
                        }
                    />
                    "Use all of that"
                </label>
                <p class="hint">{grade_note}</p>
                <div class="buttons">
                    <Show
                        when=kept
                        fallback=move || {
                            view! {
                                <button class="button small" on:click=keep>
                                    "Keep among my fuels"
                                </button>
                            }
                        }
                    >
                        <p class="hint">"Kept among your fuels."</p>
                    </Show>
                    <button class="button small" on:click=remove>
                        "Remove"
                    </button>
                </div>
            </details>
        </fieldset>
    }
}
