//! The workings of the fuel system, and what was taken where nothing was typed.

use fillwright::answers::hardware::Assumption;
use fillwright::document::{Field, HardwareForm};
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
            <summary>"Workings and sources"</summary>
            <p class="hint">
                <a href="#/methods/demand">"All formulas and constants, with their sources"</a>
            </p>
            <Drawn what=lines />
        </details>
        <details id="assumptions">
            <summary>"Assumptions"</summary>
            <p class="hint">"What was taken where nothing was typed."</p>
            <ul class="cautions">
                <Drawn what=assumptions />
            </ul>
        </details>
    }
}

/// "High-pressure pump, use at most: 85 %"
pub(super) fn assumption(assumption: &Assumption, hardware: &HardwareForm) -> String {
    let owner = owner(assumption.field, hardware);
    let label = lower_first(label(assumption.field, hardware));
    format!("{owner}, {label}: {}", assumption.taken)
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
        Field::Mix(_) => "Injection fluid".into(),
        _ => "Engine".into(),
    }
}

/// What the field is called; empty where it is in no table.
fn label(field: Field, hardware: &HardwareForm) -> &'static str {
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
    row.map_or("", |row| row.label)
}

fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|it| it.to_lowercase().to_string()).unwrap_or_default();
    first + letters.as_str()
}
