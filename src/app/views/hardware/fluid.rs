//! The answer on injection fluid, which never decides.

use fillwright::message::keys::hardware as keys;
use fillwright::words::hardware;
use leptos::prelude::*;

use super::tables::with_fluid;
use crate::app::hardware_memos::HardwareMemos;
use crate::app::widgets::{Drawn, When, facts, holds};

/// What injection fluid does, which never decides.
#[component]
pub(super) fn Fluid() -> impl IntoView {
    let hardware_memos = HardwareMemos::here();
    let some = holds(move || {
        hardware_memos.judged.with(|it| it.as_ref().is_some_and(|it| it.answer.fluid.is_some()))
    });
    let drawn = Callback::new(move |()| {
        let drawn = hardware_memos.of_judged(|judged, hardware, printer| {
            let answer = &judged.answer;
            let fluid = answer.fluid.as_ref()?;
            let list = hardware::fluid_facts(fluid, answer, printer);
            Some(vec![
                with_fluid(answer, hardware, printer),
                view! { <dl class="facts">{facts(list)}</dl> }.into_any(),
            ])
        });
        drawn.flatten().unwrap_or_default()
    });
    view! {
        <When condition=some>
            <section class="card" aria-labelledby="fluid-title">
                <h2 id="fluid-title">{keys::INJECTION_FLUID.say()}</h2>
                <p class="note caution">
                    {keys::NEVER_COUNTED_ON.say()}
                </p>
                <Drawn what=drawn />
            </section>
        </When>
    }
}
