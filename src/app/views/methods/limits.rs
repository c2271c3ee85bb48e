//! What no model here covers.

use fillwright::message::Message;
use fillwright::message::keys::methods as keys;
use fillwright::quantity::notation::Printer;
use leptos::prelude::*;

use fillwright::words::hardware::{CAUTIONS, FLUID_CAUTIONS, RULES_FIRST};
use fillwright::words::methods::{FUEL_CAUTIONS, LIMITS};

/// What no model here covers.
pub(super) fn drawn(_: &Printer) -> Vec<AnyView> {
    vec![list(LIMITS.iter().copied())]
}

/// The cautions in full.
pub(super) fn cautions(_: &Printer) -> Vec<AnyView> {
    let part = |title: Message, lines: AnyView| view! { <h3>{title.say()}</h3> {lines} }.into_any();
    vec![
        part(keys::CAUTIONS_FUEL, list(FUEL_CAUTIONS.iter().copied())),
        part(keys::CAUTIONS_HARDWARE, list(CAUTIONS.iter().copied().chain([RULES_FIRST]))),
        part(keys::CAUTIONS_FLUID, list(FLUID_CAUTIONS.iter().copied())),
    ]
}

fn list(lines: impl Iterator<Item = Message>) -> AnyView {
    let lines: Vec<AnyView> = lines.map(|it| view! { <li>{it.say()}</li> }.into_any()).collect();
    view! { <ul class="cautions">{lines}</ul> }.into_any()
}
