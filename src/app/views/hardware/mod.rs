//! Whether the fuel system holds, and what gives first.

mod curve;
mod curve_chart;
mod curve_form;
mod curve_table;
mod curves;
mod engine;
mod figures;
mod fluid;
mod gains;
mod judgement;
mod limits;
mod load;
mod mix;
mod part;
mod part_rows;
mod parts;
mod section;
mod share_chart;
mod sheet;
mod slots;
mod tables;
mod use_chart;
mod workings;

use fillwright::message::keys::hardware as keys;
use fillwright::share::Kind;
use leptos::prelude::*;

use super::share::ShareCard;
use crate::app::field_errors::FieldErrors;
use crate::app::hardware_memos::HardwareMemos;
use crate::app::session::Session;
use crate::app::stages::{Deferred, Stages};
use crate::app::widgets::{Button, Sheet, When, holds};
use curve_chart::CurvesCard;
use curves::{CurvesSection, add_curve};
use engine::EngineSection;
use figures::FiguresCard;
use judgement::{JudgementCard, is_ready};
use limits::LimitsSection;
use load::LoadSection;
use mix::MixSection;
use parts::PartsSection;
use sheet::Paper;

/// The Hardware view: the question, and the answer beside or below it.
#[component]
pub(crate) fn HardwareView() -> impl IntoView {
    let session = Session::here();
    let hardware_memos = HardwareMemos::here();
    let some = holds(move || {
        session.document.with(|it| {
            let hardware = &it.here.hardware;
            !hardware.curves.is_empty() || !hardware.parts.is_empty()
        })
    });
    let printing = RwSignal::new(false);
    FieldErrors::provide(move || hardware_memos.reading.with(|it| it.field_errors.clone()));
    Stages::here().compute(hardware_memos.reading);
    Stages::here().compute(hardware_memos.judged);
    view! {
        <When condition=holds(move || !some.get())>
            <div class="view">
                <Empty />
                <MixSection />
            </div>
        </When>
        <When condition=some>
            <div class="view two long hardware">
                <div class="question">
                    <Deferred>
                        <LoadSection />
                    </Deferred>
                    <Deferred>
                        <CurvesSection />
                    </Deferred>
                    <Deferred>
                        <EngineSection />
                    </Deferred>
                    <Deferred>
                        <PartsSection />
                    </Deferred>
                    <Deferred>
                        <LimitsSection />
                    </Deferred>
                    <Deferred><MixSection /></Deferred>
                </div>
                <div class="answer">
                    <Deferred>
                        <JudgementCard printing=printing />
                    </Deferred>
                    <Deferred>
                        <FiguresCard />
                    </Deferred>
                    <Deferred>
                        <CurvesCard />
                    </Deferred>
                    <Deferred>
                        <ShareCard kind=Kind::Car />
                    </Deferred>
                </div>
            </div>
            <Sheet printing=printing ready=is_ready(hardware_memos)>
                <Paper />
            </Sheet>
        </When>
    }
}

/// What the view is for, while nothing was entered.
#[component]
fn Empty() -> impl IntoView {
    let session = Session::here();
    let add = Callback::new(move |()| session.document.update(add_curve));
    view! {
        <section class="card" aria-labelledby="hardware-empty">
            <h2 id="hardware-empty">{keys::EMPTY.say()}</h2>
            <p>
                {keys::EMPTY_MEANS.say()}
            </p>
            <div>
                <Button label=keys::ADD_A_CURVE.say() look="strong" on_press=add />
            </div>
        </section>
    }
}
