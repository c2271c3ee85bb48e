//! The section of the limits: what the builder holds safe, and what rules allow.

use fillwright::document::Field;
use fillwright::message::keys::hardware as keys;
use leptos::prelude::*;

use super::part::{adders, ids, names, one};
use super::part_rows::LIMITS;
use super::parts::is_of_limit;
use super::section::need;
use crate::app::widgets::{Section, UndoableRows};

fn is_here(field: Field) -> bool {
    matches!(field, Field::Part(_, slot) if is_of_limit(slot))
}

/// What the builder holds safe, and what rules allow.
#[component]
pub(super) fn LimitsSection() -> impl IntoView {
    view! {
        <Section id="limits" title=keys::LIMITS.say() short=names(&LIMITS) need=need(is_here)>
            <p class="hint">
                {keys::LIMITS_MEAN.say()}
            </p>
            <div class="parts">
                <UndoableRows ids=ids(&LIMITS) row=one />
            </div>
            {adders(&LIMITS)}
        </Section>
    }
}
