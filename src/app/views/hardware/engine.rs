//! The section of the engine: how much fuel it takes, and what surrounds it.

use fillwright::document::{Field, HardwareField, Mark, PartKind};
use fillwright::message::keys::hardware as keys;
use fillwright::message::keys::hardware_rows as rows;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::section::need;
use super::slots::{Owner, Row, fields};
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::widgets::{Section, When, holds, said};

/// How much fuel the engine takes.
pub(super) static FUEL: [Row; 5] = [
    Row::figure(HardwareField::SpecificConsumption, rows::SPECIFIC_CONSUMPTION)
        .hint(rows::SPECIFIC_CONSUMPTION_HINT),
    Row::figure(HardwareField::ConsumptionError, rows::CONSUMPTION_ERROR)
        .hint(rows::CONSUMPTION_ERROR_HINT),
    Row::words(HardwareField::ConsumptionFuel, rows::CONSUMPTION_FUEL)
        .hint(rows::CONSUMPTION_FUEL_HINT),
    Row::figure(HardwareField::EfficiencyGain, rows::EFFICIENCY_GAIN)
        .hint(rows::EFFICIENCY_GAIN_HINT),
    Row::figure(HardwareField::Lambda, rows::LAMBDA).hint(rows::LAMBDA_HINT),
];

/// What surrounds the engine.
pub(super) static ENGINE: [Row; 4] = [
    Row::figure(HardwareField::Displacement, rows::DISPLACEMENT).hint(rows::DISPLACEMENT_HINT),
    Row::figure(HardwareField::Cylinders, rows::CYLINDERS),
    Row::figure(HardwareField::Boost, rows::BOOST).hint(rows::BOOST_HINT),
    Row::figure(HardwareField::AmbientPressure, rows::AMBIENT_PRESSURE)
        .hint(rows::AMBIENT_PRESSURE_HINT),
];

/// What the check by air needs.
pub(super) static AIR: [Row; 2] = [
    Row::figure(HardwareField::VolumetricEfficiency, rows::VOLUMETRIC_EFFICIENCY)
        .hint(rows::VOLUMETRIC_EFFICIENCY_HINT),
    Row::figure(HardwareField::ManifoldTemperature, rows::MANIFOLD_TEMPERATURE),
];

/// What is lost between crank and wheels.
pub(super) static LOSS: [Row; 2] = [
    Row::figure(HardwareField::DrivelineLoss, rows::DRIVELINE_LOSS).hint(rows::DRIVELINE_LOSS_HINT),
    Row::words(HardwareField::DrivelineLossRange, rows::DRIVELINE_LOSS_RANGE)
        .hint(rows::DRIVELINE_LOSS_RANGE_HINT),
];

/// Which way the fuel goes, where there are both ways.
pub(super) static SPLIT: [Row; 1] =
    [Row::figure(HardwareField::PortShare, rows::PORT_SHARE).hint(rows::PORT_SHARE_HINT)];

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
        <Section id="engine" title=keys::ENGINE.say() short=short need=need(is_here)>
            {fields(Owner::Engine, &FUEL)}
            {fields(Owner::Engine, &ENGINE)}
            <When condition=both_ways>{fields(Owner::Engine, &SPLIT)}</When>
            <h3>{keys::CRANK_AND_WHEELS.say()}</h3>
            {fields(Owner::Engine, &LOSS)}
            <p class="hint">{add_on}</p>
            <h3>{keys::CHECK_BY_AIR.say()}</h3>
            {fields(Owner::Engine, &AIR)}
        </Section>
    }
}
