use fillwright::logbook::Field;
use leptos::prelude::*;

use super::flow::{holds, said};
use crate::app::state::State;

/// What stands below a field: its hint, or what is wrong.
#[derive(Clone, Copy)]
pub(super) struct Below {
    pub(super) words: Signal<String>,
    /// The class of the field.
    pub(super) class: Signal<String>,
    pub(super) wrong: Signal<bool>,
}

impl Below {
    /// What is wrong is said when the person leaves the field, and withdrawn as soon
    /// as it is put right.
    pub(super) fn of(field: Field, hint: &'static str, focused: Signal<bool>) -> Self {
        let state = State::here();
        let complaint = Memo::new(move |before: Option<&Option<String>>| {
            let now = state.complaint(field);
            let already = before.is_some_and(Option::is_some);
            if focused.get() && !already { None } else { now }
        });
        let wrong = holds(move || complaint.with(Option::is_some));
        Self {
            words: said(move || complaint.get().unwrap_or_else(|| hint.to_owned())),
            class: said(move || if wrong.get() { "field wrong" } else { "field" }.to_owned()),
            wrong,
        }
    }
}
