//! The mixing of injection fluid: what to pour for it.

use fillwright::document::{Field, HardwareField};
use fillwright::message::Message;
use fillwright::message::keys::hardware as keys;
use fillwright::message::keys::hardware_rows as rows;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::section::need;
use super::slots::{Owner, Row, fields};
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::widgets::{
    Options, Section, TextField, When, facts, holds, key_of, options, said, value_of,
};

const BASES: [(bool, &str, Message); 2] =
    [(false, "volume", keys::BY_VOLUME), (true, "mass", keys::BY_MASS)];

pub(super) static STRENGTHS: [Row; 2] = [
    Row::figure(HardwareField::MixStrength, rows::MIX_STRENGTH).hint(rows::MIX_STRENGTH_HINT),
    Row::figure(HardwareField::MixConcentrate, rows::MIX_CONCENTRATE)
        .hint(rows::MIX_CONCENTRATE_HINT),
];

fn is_here(field: Field) -> bool {
    matches!(field, Field::Mix(_))
}

/// What to pour for injection fluid.
#[component]
pub(super) fn MixSection() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let base =
        said(move || session.document.with(|it| key_of(&BASES, &it.here.hardware.mix_by_mass)));
    let choose = session.set(|it, key| {
        if let Some(by_mass) = value_of(&BASES, &key) {
            it.here.hardware.mix_by_mass = by_mass;
        }
    });
    let recipe = Callback::new(move |()| {
        hardware_memos.reading.with(|it| {
            let recipe = it.mix.as_ref();
            recipe.map_or_else(Vec::new, |recipe| {
                let recipe = session.printer.with(|printer| hardware::recipe(recipe, printer));
                facts(recipe)
            })
        })
    });
    let known = holds(move || hardware_memos.reading.with(|it| it.mix.is_some()));
    let short = said(move || {
        hardware_memos.reading.with(|it| {
            let recipe = it.mix.as_ref();
            recipe.map_or_else(
                || keys::NOTHING_WANTED.say().to_owned(),
                |recipe| session.printer.with(|printer| hardware::recipe_in_short(recipe, printer)),
            )
        })
    });
    view! {
        <Section id="mix" title=keys::MIX.say() short=short need=need(is_here)>
            <Options
                legend=keys::AMOUNT_AND_STRENGTHS.say()
                name="mix-by"
                options=options(&BASES)
                chosen=base
                on_choice=choose
            />
            <TextField
                field=Field::Mix(HardwareField::MixAmount)
                label=keys::AMOUNT_WANTED.say()
                words=true
            />
            {fields(Owner::Mix, &STRENGTHS)}
            <When condition=known>
                <dl class="facts" id="recipe">
                    <crate::app::widgets::Drawn what=recipe />
                </dl>
                <p class="hint">{keys::WEIGHED.say()}</p>
            </When>
            <ul class="cautions note caution" aria-label=keys::FLUID_CAUTIONS.say()>
                {hardware::FLUID_CAUTIONS.map(|it| view! { <li>{it.say()}</li> })}
            </ul>
        </Section>
    }
}
