//! The fields of one part of the fuel system, or of one limit.

use fillwright::document::{Field, Fields, Mark, PartForm, PartKind};
use fillwright::message::keys::hardware as keys;
use fillwright::words::deeds::Deed;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::part_rows::{marks_of, rows_of};
use super::section::need;
use super::slots::{Owner, SlotField};
use crate::app::session::Session;
use crate::app::stages::Folded;
use crate::app::undo::{Act, Spot};
use crate::app::widgets::{Button, CheckBox, NeedInShort, TextField, When, holds, said};

/// The name of a part that is added.
fn name_of(kind: PartKind, count: usize) -> String {
    let name = hardware::kind(kind);
    if count == 1 {
        name.to_owned()
    } else {
        keys::Numbered { part: name, number: count.to_string() }.say()
    }
}

/// The numbers of the parts of some kinds, kept up to date.
pub(super) fn ids(kinds: &'static [PartKind]) -> Signal<Vec<u32>> {
    let session = Session::here();
    Memo::new(move |_| {
        session.document.with(|it| {
            let parts = it.here.hardware.parts.iter();
            parts.filter(|it| kinds.contains(&it.kind)).map(|it| it.id).collect::<Vec<_>>()
        })
    })
    .into()
}

/// The names of the parts of some kinds, in one line.
pub(super) fn names(kinds: &'static [PartKind]) -> Signal<String> {
    let session = Session::here();
    said(move || {
        session.document.with(|it| {
            let parts = it.here.hardware.parts.iter().filter(|it| kinds.contains(&it.kind));
            let name = |form: &PartForm| {
                let part = hardware::part(form);
                if form.is(Mark::SetAside) { keys::SetAsideShort { part }.say() } else { part }
            };
            parts.map(name).collect::<Vec<_>>().join(", ")
        })
    })
}

/// The buttons that add parts of some kinds.
pub(super) fn adders(kinds: &'static [PartKind]) -> AnyView {
    let session = Session::here();
    let button = |kind: PartKind| {
        let press =
            Callback::new(move |()| session.document.update(|it| it.here.add_part(kind, name_of)));
        view! { <Button label=hardware::kind(kind) look="small" on_press=press /> }.into_any()
    };
    let buttons: Vec<AnyView> = kinds.iter().map(|kind| button(*kind)).collect();
    view! {
        <div role="group" aria-label=keys::ADD.say()>
            <p class="legend">{keys::ADD.say()}</p>
            <div class="buttons">{buttons}</div>
        </div>
    }
    .into_any()
}

/// A part of the fuel system, or a limit.
pub(super) fn one(id: u32) -> AnyView {
    view! { <OnePart id=id /> }.into_any()
}

#[component]
fn OnePart(id: u32) -> impl IntoView {
    let session = Session::here();
    let form = session.document.with_untracked(|it| it.here.hardware.part(id).cloned());
    // The row of a part goes only when the part has gone.
    let Some(PartForm { kind, fields, .. }) = form else { return ().into_any() };
    let title = said(move || {
        session
            .document
            .with(|it| it.here.hardware.part(id).map_or_else(String::new, hardware::part))
    });
    let is = move |mark| {
        holds(move || {
            session.document.with(|it| it.here.hardware.part(id).is_some_and(|form| form.is(mark)))
        })
    };
    let tick = move |mark| {
        Callback::new(move |on| {
            session.document.update(|it| {
                if let Some(form) = it.here.hardware.part_mut(id) {
                    form.mark(mark, on);
                }
            });
        })
    };
    let need =
        need(move |field| matches!(field, Field::Part(of, _) | Field::PartName(of) if of == id));
    let remove = Callback::new(move |()| {
        let act = Act::at(Spot::Row(id), Deed::PartRemoved);
        session.change_undoably(act, |it| it.here.hardware.parts.retain(|form| form.id != id));
    });
    let drawn: Vec<AnyView> = rows_of(kind)
        .iter()
        .map(|row| {
            let shown = holds(move || {
                session
                    .document
                    .with(|it| it.here.hardware.part(id).is_some_and(|form| row.is_of(form)))
            });
            view! {
                <When condition=shown>
                    <SlotField owner=Owner::Part(id) row=row />
                </When>
            }
            .into_any()
        })
        .collect();
    let boxes: Vec<AnyView> = marks_of(kind)
        .iter()
        .map(|(mark, label)| {
            view! { <CheckBox label=label.say() checked=is(*mark) on_tick=tick(*mark) /> }
                .into_any()
        })
        .collect();
    let aside = is(Mark::SetAside);
    let summary = view! {
        <span>{title}</span>
        <When condition=aside>
            <span class="in-short">{keys::SET_ASIDE.say()}</span>
        </When>
        <NeedInShort need=need />
    };
    view! {
        <Folded class="part" open=fields == Fields::default() summary=summary.into_any()>
            <div class="inside" role="group" aria-label=title>
                <TextField
                    field=Field::PartName(id)
                    label=keys::NAME.say()
                    words=true
                />
                <div class="pair">{drawn}</div>
                {boxes}
                <CheckBox
                    label=keys::SET_ASIDE_BOX.say()
                    checked=aside
                    on_tick=tick(Mark::SetAside)
                />
                <div>
                    <Button
                        label=keys::REMOVE.say()
                        look="small"
                        name=Signal::derive(move || Some(keys::RemoveIt { what: title.get() }.say()))
                        on_press=remove
                    />
                </div>
            </div>
        </Folded>
    }
    .into_any()
}
