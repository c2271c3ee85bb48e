//! The section of the engine: how much fuel it takes, and what surrounds it.

use fillwright::document::{Field, HardwareField, Mark, PartKind};
use fillwright::words::hardware;
use leptos::prelude::*;

use super::section::need;
use super::slots::{Owner, Row, fields};
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::widgets::{Section, When, holds, said};

/// How much fuel the engine takes.
pub(super) static FUEL: [Row; 5] = [
    Row::figure(
        HardwareField::SpecificConsumption,
        "Fuel per work at full load (BSFC)",
        "330 g/kWh or 0.54 lb/hph, say",
    ),
    Row::figure(HardwareField::ConsumptionError, "Its doubt, either way", "8 % where blank"),
    Row::words(HardwareField::ConsumptionFuel, "It is given for", "The blend; E0 where blank"),
    Row::figure(
        HardwareField::EfficiencyGain,
        "Gain in efficiency at E85",
        "Against that blend; none where blank",
    ),
    Row::figure(HardwareField::Lambda, "Mixture at full load", "λ 0.82, say"),
];

/// What surrounds the engine.
pub(super) static ENGINE: [Row; 4] = [
    Row::figure(HardwareField::Displacement, "Displacement", "For the check by air"),
    Row::figure(HardwareField::Cylinders, "Cylinders", ""),
    Row::figure(HardwareField::Boost, "Boost at full load", "Where a curve has no column of it"),
    Row::figure(
        HardwareField::AmbientPressure,
        "Pressure of the air around",
        "Standard where blank",
    ),
];

/// What the check by air needs.
pub(super) static AIR: [Row; 2] = [
    Row::figure(
        HardwareField::VolumetricEfficiency,
        "Volumetric efficiency",
        "Referred to the manifold",
    ),
    Row::figure(HardwareField::ManifoldTemperature, "Temperature in the manifold", ""),
];

/// What is lost between crank and wheels.
pub(super) static LOSS: [Row; 2] = [
    Row::figure(HardwareField::DrivelineLoss, "Driveline loss, of crank power", "10 %, say"),
    Row::words(HardwareField::DrivelineLossRange, "Loss may be", "From–to; ± 3 where blank"),
];

/// Which way the fuel goes, where there are both ways.
pub(super) static SPLIT: [Row; 1] = [Row::figure(
    HardwareField::PortShare,
    "Fuel through the port injectors",
    "Of all fuel, at full load",
)];

/// All fields of the engine that stand here.
pub(super) static ALL: [&[Row]; 5] = [&FUEL, &ENGINE, &SPLIT, &LOSS, &AIR];

fn is_here(field: Field) -> bool {
    matches!(
        field,
        Field::Engine(slot) if !matches!(slot, HardwareField::BlendShare | HardwareField::BlendRange | HardwareField::Reserve)
    )
}

/// The engine, and how much fuel it takes.
#[component]
pub(super) fn EngineSection() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let short = said(move || {
        session.document.with(|it| {
            let rows = [&ENGINE[0], &FUEL[0], &FUEL[4], &ENGINE[2]];
            session.printer.with(|printer| {
                let typed = rows.iter().filter_map(|row| row.typed(it, Owner::Engine, printer));
                typed.collect::<Vec<_>>().join(", ")
            })
        })
    });
    let both_ways = holds(move || {
        session.document.with(|it| {
            let has = |kinds: &[PartKind]| {
                let mut parts = it.here.hardware.parts.iter();
                parts.any(|part| kinds.contains(&part.kind) && !part.is(Mark::SetAside))
            };
            has(&[PartKind::PortInjectors])
                && has(&[PartKind::DirectInjectors, PartKind::PlungerPump])
        })
    });
    let add_on = said(move || {
        hardware_memos.reading.with(|it| {
            let loss = it.curves.iter().find_map(|curve| curve.loss);
            loss.map_or_else(String::new, |loss| {
                session.printer.with(|printer| hardware::add_on(loss, printer))
            })
        })
    });
    view! {
        <Section id="engine" title="Engine" short=short need=need(is_here)>
            {fields(Owner::Engine, &FUEL)}
            {fields(Owner::Engine, &ENGINE)}
            <When condition=both_ways>{fields(Owner::Engine, &SPLIT)}</When>
            <h3>"Between crank and wheels"</h3>
            {fields(Owner::Engine, &LOSS)}
            <p class="hint">{add_on}</p>
            <h3>"For a check by the air"</h3>
            {fields(Owner::Engine, &AIR)}
        </Section>
    }
}
