//! What stands below a field: its hint, what to fill in, or what is wrong.

use fillwright::answers::FieldError;
use fillwright::document::Field;
use fillwright::words::problems::problem;
use leptos::prelude::*;

use crate::app::field_errors::FieldErrors;
use crate::app::session::Session;
use crate::app::signals::{holds, said};

/// What stands below a field: its hint, what to fill in, or what is wrong.
#[derive(Clone, Copy)]
pub(super) struct Below {
    pub(super) words: Signal<String>,
    /// The class of the field.
    pub(super) class: Signal<String>,
    pub(super) wrong: Signal<bool>,
}

impl Below {
    /// What is wrong is said when the person leaves the field, and withdrawn as soon
    /// as it is put right. What is still to be filled in is no fault: it takes the place of
    /// the hint.
    pub(super) fn of(field: Field, hint: &'static str, focused: Signal<bool>) -> Self {
        let errors = FieldErrors::here();
        let field_error = Memo::new(move |before: Option<&Option<FieldError>>| {
            let now = errors.of(field);
            let is_wrong = |it: &Option<FieldError>| it.as_ref().is_some_and(|it| !it.is_missing);
            let already = before.is_some_and(is_wrong);
            if focused.get() && !already && is_wrong(&now) { None } else { now }
        });
        let session = Session::here();
        let message = move || {
            let said =
                |it: &FieldError| session.printer.with(|printer| problem(&it.problem, printer));
            field_error.with(|it| it.as_ref().map(said))
        };
        let wrong =
            holds(move || field_error.with(|it| it.as_ref().is_some_and(|it| !it.is_missing)));
        Self {
            words: said(move || message().unwrap_or_else(|| hint.to_owned())),
            class: said(move || if wrong.get() { "field wrong" } else { "field" }.to_owned()),
            wrong,
        }
    }
}
