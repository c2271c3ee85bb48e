//! The card of the blend that is wanted, and when to stop.

use fillwright::document::{AimForm, Field, StopRuleForm};
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::widgets::{
    Choices, Options, TextField, When, holds, key_of, options, said, value_of,
};

const SHARE: &str = "share";
const AS_POURED: &str = "as-poured";

const STOPS: [(StopRuleForm, &str, &str); 5] = [
    (StopRuleForm::Brim, "brim", "Full, to the click"),
    (StopRuleForm::Level, "level", "At a level"),
    (StopRuleForm::AtMost, "volume", "After a volume, at most"),
    (StopRuleForm::Budget, "money", "After a sum of money, at most"),
    (StopRuleForm::Least, "least", "As soon as the aim is reached"),
];

/// The blend that is wanted, and when to stop.
#[component]
pub(super) fn AimCard() -> impl IntoView {
    let session = Session::here();
    let aims = Memo::new(move |_| {
        session.document.with(|it| {
            let share = (SHARE.to_owned(), "A blend".to_owned());
            let calibrations = it.here.car.calibrations.iter();
            let calibrations = calibrations.map(|form| (form.id.to_string(), form.name.clone()));
            let as_poured = (AS_POURED.to_owned(), "I have already poured: what is it?".to_owned());
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
            <h2 id="aim">"Aim"</h2>
            <Options
                legend="Aim for"
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
                    label="Blend wanted"
                    hint="E30, 30 or 30 %"
                    words=true
                />
            </When>
            <When condition=wants_more>
                <Choices
                    id="stop"
                    label="How far to fill"
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
                label="Level to stop at"
                hint="3/4, 75 % or a volume"
                words=true
            />
        </When>
        <When condition=stops_at(StopRuleForm::AtMost)>
            <TextField
                field=Field::StopVolume
                label="Volume to stop after"
                words=true
            />
        </When>
        <When condition=stops_at(StopRuleForm::Budget)>
            <TextField
                field=Field::StopMoney
                label="Money to stop after"
            />
        </When>
    }
}
