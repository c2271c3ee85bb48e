//! The card of the blend that is wanted, and when to stop.

use fillwright::document::{AimForm, Field, StopRuleForm};
use fillwright::message::Message;
use fillwright::message::keys::fill as keys;
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::widgets::{
    Choices, Options, TextField, When, holds, key_of, options, said, value_of,
};

const SHARE: &str = "share";
const AS_POURED: &str = "as-poured";

const STOPS: [(StopRuleForm, &str, Message); 5] = [
    (StopRuleForm::Brim, "brim", keys::TO_THE_CLICK),
    (StopRuleForm::Level, "level", keys::AT_A_LEVEL),
    (StopRuleForm::AtMost, "volume", keys::AFTER_A_VOLUME),
    (StopRuleForm::Budget, "money", keys::AFTER_A_SUM),
    (StopRuleForm::Least, "least", keys::AS_SOON_AS),
];

/// The blend that is wanted, and when to stop.
#[component]
pub(super) fn AimCard() -> impl IntoView {
    let session = Session::here();
    let aims = Memo::new(move |_| {
        session.document.with(|it| {
            let share = (SHARE.to_owned(), keys::A_BLEND.say().to_owned());
            let calibrations = it.here.car.calibrations.iter();
            let calibrations = calibrations.map(|form| (form.id.to_string(), form.name.clone()));
            let as_poured = (AS_POURED.to_owned(), keys::AS_POURED.say().to_owned());
            let ends = std::iter::once(as_poured);
            std::iter::once(share).chain(calibrations).chain(ends).collect::<Vec<_>>()
        })
    });
    let aim = said(move || match session.document.with(|it| it.here.fill.aim) {
        AimForm::Share => SHARE.to_owned(),
        AimForm::Calibration(id) => id.to_string(),
        AimForm::AsPoured => AS_POURED.to_owned(),
    });
    let choose_aim = session.set(|it, key| {
        it.here.fill.aim_anew(|fill| {
            fill.aim = match key.parse() {
                Ok(id) => AimForm::Calibration(id),
                Err(_) if key == AS_POURED => AimForm::AsPoured,
                Err(_) => AimForm::Share,
            };
        });
    });
    let errors = FieldErrors::here();
    let field_error = said(move || errors.message(Field::AimCalibration));
    let by_share = holds(move || aim.with(|aim| aim == SHARE));
    let unfit = holds(move || !by_share.get() && field_error.with(|it| !it.is_empty()));
    let stop = Memo::new(move |_| session.document.with(|it| it.here.fill.stop));
    let stop_key = said(move || key_of(&STOPS, &stop.get()));
    let choose_stop = session.set(|it, key| {
        if let Some(stop) = value_of(&STOPS, &key) {
            it.here.fill.aim_anew(|fill| fill.stop = stop);
        }
    });
    let stops = options(&STOPS);
    let wants_more = holds(move || aim.with(|aim| aim != AS_POURED));
    view! {
        <section class="card" id="aim-calibration" tabindex="-1" aria-labelledby="aim">
            <h2 id="aim">{keys::AIM.say()}</h2>
            <Options
                legend=keys::AIM_FOR.say()
                name="aim"
                options=aims.into()
                chosen=aim
                on_choice=choose_aim
            />
            <When condition=unfit>
                <p class="note caution">{field_error}</p>
            </When>
            <When condition=by_share>
                <TextField
                    field=Field::AimShare
                    label=keys::BLEND_WANTED.say()
                    hint=keys::BLEND_WANTED_HINT.say()
                    words=true
                />
            </When>
            <When condition=wants_more>
                <Choices
                    id="stop"
                    label=keys::HOW_FAR.say()
                    choices=stops
                    chosen=stop_key
                    on_choice=choose_stop
                />
            </When>
            <StopFields stop=stop wants_more=wants_more />
        </section>
    }
}

/// The field that the chosen stop rule needs.
#[component]
fn StopFields(stop: Memo<StopRuleForm>, wants_more: Signal<bool>) -> impl IntoView {
    let stops_at = move |form: StopRuleForm| holds(move || stop.get() == form && wants_more.get());
    view! {
        <When condition=stops_at(StopRuleForm::Level)>
            <TextField
                field=Field::StopLevel
                label=keys::STOP_LEVEL.say()
                hint=keys::STOP_LEVEL_HINT.say()
                words=true
            />
        </When>
        <When condition=stops_at(StopRuleForm::AtMost)>
            <TextField
                field=Field::StopVolume
                label=keys::STOP_VOLUME.say()
                words=true
            />
        </When>
        <When condition=stops_at(StopRuleForm::Budget)>
            <TextField
                field=Field::StopMoney
                label=keys::STOP_MONEY.say()
            />
        </When>
    }
}
