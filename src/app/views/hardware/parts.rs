//! The section of the fuel system's parts.

use fillwright::document::{Field, HardwareField};
use fillwright::message::keys::hardware as keys;
use leptos::prelude::*;

use super::part::{adders, ids, names, one};
use super::part_rows::PARTS;
use super::section::need;
use crate::app::widgets::{Section, UndoableRows};

/// Whether a field belongs to a limit.
pub(super) fn is_of_limit(slot: HardwareField) -> bool {
    matches!(
        slot,
        HardwareField::LimitPower
            | HardwareField::LimitTorque
            | HardwareField::LimitAir
            | HardwareField::FromSpeed
            | HardwareField::ToSpeed
    )
}

fn is_here(field: Field) -> bool {
    match field {
        Field::Part(_, slot) => !is_of_limit(slot),
        field => matches!(field, Field::PartName(_)),
    }
}

/// The parts of the fuel system.
#[component]
pub(super) fn PartsSection() -> impl IntoView {
    view! {
        <Section id="parts" title=keys::PARTS.say() short=names(&PARTS) need=need(is_here)>
            <div class="parts">
                <UndoableRows ids=ids(&PARTS) row=one />
            </div>
            {adders(&PARTS)}
        </Section>
    }
}
