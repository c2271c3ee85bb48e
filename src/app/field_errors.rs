//! What is missing in the fields of a view, or wrong with them.

use fillwright::answers::FieldError;
use fillwright::document::Field;
use fillwright::words::problems::problem;
use leptos::prelude::*;

use super::session::Session;

/// What is missing or wrong with the fields around a component: of the view that it belongs
/// to, or of the form within that.
#[derive(Clone, Copy)]
pub(crate) struct FieldErrors(Signal<Vec<FieldError>>);

impl FieldErrors {
    /// Has the fields around here find what is missing or wrong with them in these.
    pub(crate) fn provide(all: impl Fn() -> Vec<FieldError> + Send + Sync + 'static) -> Self {
        let here = Self(Memo::new(move |_| all()).into());
        provide_context(here);
        here
    }

    /// Those around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// All of them.
    pub(crate) fn all(self) -> Signal<Vec<FieldError>> {
        self.0
    }

    /// What is missing in a field, or wrong with it.
    pub(crate) fn of(self, field: Field) -> Option<FieldError> {
        self.0.with(|all| all.iter().find(|it| it.field == field).cloned())
    }

    /// What to say of that; nothing where all is well.
    pub(crate) fn message(self, field: Field) -> String {
        let Some(it) = self.of(field) else { return String::new() };
        Session::here().printer.with(|printer| problem(&it.problem, printer))
    }
}
