//! What no model here covers.

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
    let part = |title: &'static str, lines: AnyView| view! { <h3>{title}</h3> {lines} }.into_any();
    vec![
        part("Fuel and calibration", list(FUEL_CAUTIONS.iter().copied())),
        part("Fuel system", list(CAUTIONS.iter().copied().chain([RULES_FIRST]))),
        part("Injection fluid", list(FLUID_CAUTIONS.iter().copied())),
    ]
}

fn list(lines: impl Iterator<Item = &'static str>) -> AnyView {
    let lines: Vec<AnyView> = lines.map(|it| view! { <li>{it}</li> }.into_any()).collect();
    view! { <ul class="cautions">{lines}</ul> }.into_any()
}
