//! What the sections of the Hardware view share: what their fields need.

use fillwright::document::Field;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::Need;

/// What these fields need.
pub(super) fn need(has: impl Fn(Field) -> bool + Send + Sync + 'static) -> Signal<Need> {
    let state = State::here();
    Memo::new(move |_| state.hardware.with(|it| Need::of(&it.field_errors, &has))).into()
}
