//! The workings of the fuel system, and what was taken where nothing was typed.

use fillwright::answers::hardware::Assumption;
use fillwright::document::{Field, HardwareForm};
use fillwright::message::Message;
use fillwright::message::keys::frame;
use fillwright::message::keys::hardware as keys;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::part_rows::rows_of;
use super::slots::Row;
use super::{engine, load, mix};
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::widgets::{Drawn, working_shown};

/// How each number came about, and what was taken where nothing was typed.
#[component]
pub(super) fn Workings() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let assumptions = Callback::new(move |()| {
        let lines = hardware_memos.reading.with(|reading| {
            session.document.with(|it| {
                let hardware = &it.here.hardware;
                reading.assumptions.iter().map(|it| assumption(it, hardware)).collect::<Vec<_>>()
            })
        });
        lines.into_iter().map(|it| view! { <li>{it}</li> }.into_any()).collect()
    });
    // Laid out only while somebody looks.
    let open = RwSignal::new(false);
    let lines = Callback::new(move |()| {
        if !open.get() {
            return Vec::new();
        }
        let drawn = hardware_memos.of_judged(|judged, _, printer| {
            let lines = judged.answer.workings(&judged.reading);
            lines.iter().map(|line| working_shown(line, printer)).collect()
        });
        drawn.unwrap_or_default()
    });
    view! {
        <details
            id="hardware-workings"
            on:toggle:target=move |event| open.set(event.target().has_attribute("open"))
        >
            <summary>{frame::WORKINGS.say()}</summary>
            <p class="hint">
                <a href="#/methods/demand">{frame::ALL_FORMULAS.say()}</a>
            </p>
            <Drawn what=lines />
        </details>
        <details id="assumptions">
            <summary>{keys::ASSUMPTIONS.say()}</summary>
            <p class="hint">{keys::ASSUMPTIONS_MEAN.say()}</p>
            <ul class="cautions">
                <Drawn what=assumptions />
            </ul>
        </details>
    }
}

/// "High-pressure pump. Use at most: 85 %"
pub(super) fn assumption(assumption: &Assumption, hardware: &HardwareForm) -> String {
    let owner = owner(assumption.field, hardware);
    let field = label(assumption.field, hardware).map_or("", Message::say);
    keys::Assumption { owner, field, taken: hardware::taken(&assumption.taken) }.say()
}

/// Whose field it is.
pub(super) fn owner(field: Field, hardware: &HardwareForm) -> String {
    match field {
        Field::Part(id, _) | Field::PartName(id) => {
            let form = hardware.parts.iter().find(|it| it.id == id);
            form.map_or_else(String::new, hardware::part)
        }
        Field::Curve(id, _) => {
            let form = hardware.curves.iter().find(|it| it.id == id);
            form.map_or_else(String::new, |it| hardware::curve(&it.name))
        }
        Field::Mix(_) => keys::INJECTION_FLUID.say().into(),
        _ => keys::ENGINE.say().into(),
    }
}

/// What the field is called; nothing where it is in no table.
fn label(field: Field, hardware: &HardwareForm) -> Option<Message> {
    let of = |rows: &'static [Row], slot| rows.iter().find(|row| row.slot == slot);
    let row = match field {
        Field::Engine(slot) => {
            let mut all = engine::ALL.iter().chain(load::ALL.iter());
            all.find_map(|rows| of(rows, slot))
        }
        Field::Part(id, slot) => {
            let form = hardware.parts.iter().find(|it| it.id == id);
            form.and_then(|form| of(rows_of(form.kind), slot))
        }
        Field::Mix(slot) => of(&mix::STRENGTHS, slot),
        _ => None,
    };
    row.map(|row| row.label)
}
