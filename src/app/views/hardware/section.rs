//! What the sections of the Hardware view share: what their fields need.

use fillwright::document::Field;
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::widgets::Need;

/// What these fields need.
pub(super) fn need(has: impl Fn(Field) -> bool + Send + Sync + 'static) -> Signal<Need> {
    let errors = FieldErrors::here().all();
    Memo::new(move |_| errors.with(|it| Need::of(it, &has))).into()
}
