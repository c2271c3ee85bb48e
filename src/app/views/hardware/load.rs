//! The section of what is asked of the fuel system: the curve, the blend and the reserve.

use fillwright::document::{BlendForm, Field, HardwareField};
use fillwright::message::Message;
use fillwright::message::keys::hardware as keys;
use fillwright::message::keys::hardware_rows as rows;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::section::need;
use super::slots::{Owner, Row, fields};
use crate::app::field_errors::FieldErrors;
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::tank_memos::TankMemos;
use crate::app::widgets::{
    Choices, Options, Section, When, holds, key_of, options, said, value_of,
};

const BLENDS: [(BlendForm, &str, Message); 2] = [
    (BlendForm::Tank, "tank", keys::WHAT_IS_IN_THE_TANK),
    (BlendForm::Typed, "typed", keys::WHAT_I_TYPE),
];

static TYPED: [Row; 2] = [
    Row::words(HardwareField::BlendShare, rows::BLEND_SHARE).hint(rows::BLEND_SHARE_HINT),
    Row::words(HardwareField::BlendRange, rows::BLEND_RANGE).hint(rows::BLEND_RANGE_HINT),
];

static WANTED: [Row; 1] =
    [Row::figure(HardwareField::Reserve, rows::RESERVE).hint(rows::RESERVE_HINT)];

/// All fields of the engine that stand here.
pub(super) static ALL: [&[Row]; 2] = [&TYPED, &WANTED];

fn is_here(field: Field) -> bool {
    matches!(
        field,
        Field::Engine(
            HardwareField::BlendShare | HardwareField::BlendRange | HardwareField::Reserve
        )
    )
}

/// What is asked of the fuel system: the curve, the blend and the reserve.
#[component]
pub(super) fn LoadSection() -> impl IntoView {
    let session = Session::here();
    let tank_memos = TankMemos::here();
    let hardware_memos = HardwareMemos::here();
    let curves = Memo::new(move |_| {
        session.document.with(|it| {
            let curves = it.here.hardware.curves.iter();
            curves.map(|it| (it.id.to_string(), hardware::curve(&it.name))).collect::<Vec<_>>()
        })
    });
    let several = holds(move || curves.with(|it| it.len() > 1));
    let target = said(move || {
        session.document.with(|it| {
            let hardware = &it.here.hardware;
            let mut ids = hardware.curves.iter().map(|it| it.id);
            let first = hardware.curves.first().map_or(0, |it| it.id);
            ids.find(|id| *id == hardware.target).unwrap_or(first).to_string()
        })
    });
    let choose_target = session.set(|it, key| {
        if let Ok(id) = key.parse() {
            it.here.hardware.target = id;
        }
    });
    let blend = said(move || session.document.with(|it| key_of(&BLENDS, &it.here.hardware.blend)));
    let choose_blend = session.set(|it, key| {
        if let Some(blend) = value_of(&BLENDS, &key) {
            it.here.hardware.blend = blend;
        }
    });
    let is_typed =
        holds(move || session.document.with(|it| it.here.hardware.blend) == BlendForm::Typed);
    let by_the_log = said(move || tank_memos.by_the_log());
    let errors = FieldErrors::here();
    let no_blend = said(move || errors.message(Field::Engine(HardwareField::BlendShare)));
    let nothing_known = holds(move || !is_typed.get() && no_blend.with(|it| !it.is_empty()));
    let short = said(move || {
        hardware_memos.judged.with(|judged| {
            let judged = judged.as_ref().filter(|it| !it.stale);
            judged.map_or_else(String::new, |it| {
                session.printer.with(|printer| hardware::load_in_short(&it.reading, printer))
            })
        })
    });
    view! {
        <Section id="load" title=keys::LOAD.say() short=short need=need(is_here) open=true>
            <When condition=several>
                <Choices
                    id="target-curve"
                    label=keys::CURVE_TO_SERVE.say()
                    choices=curves.into()
                    chosen=target
                    on_choice=choose_target
                />
            </When>
            <Options
                legend=keys::BLEND.say()
                name="blend"
                options=options(&BLENDS)
                chosen=blend
                on_choice=choose_blend
            />
            <When condition=is_typed>{fields(Owner::Engine, &TYPED)}</When>
            <When condition=holds(move || !is_typed.get())>
                <p class="hint">{by_the_log}</p>
            </When>
            <When condition=nothing_known>
                <p
                    class="note caution"
                    id=Field::Engine(HardwareField::BlendShare).id()
                    tabindex="-1"
                >
                    {no_blend}
                </p>
            </When>
            {fields(Owner::Engine, &WANTED)}
        </Section>
    }
}
