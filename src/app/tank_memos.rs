//! What is made of the log: the course of the tank, what is in it now, and what is wrong with
//! the entry that is being written.

use std::sync::Arc;

use fillwright::answers::FieldError;
use fillwright::answers::tank::{History, LogReading, TankAnswer, TankQuestion};
use fillwright::quantity::notation::Printer;
use fillwright::words::tank;
use leptos::prelude::*;

use super::session::Session;

/// What is made of the log.
#[derive(Clone, Copy)]
pub(crate) struct TankMemos {
    printer: Memo<Printer>,
    /// What the log's replay depends on.
    pub(crate) course: Memo<LogReading>,
    /// The log of the car in use, replayed.
    pub(crate) history: Memo<History>,
    /// What is in its tank, by the log, and what that means.
    pub(crate) answer: Memo<Option<Arc<TankAnswer>>>,
    /// What is wrong with the entry that is being written.
    draft_errors: Memo<Vec<FieldError>>,
    /// Whether the person tried to keep that entry: only then is anything wrong.
    pub(crate) tried: RwSignal<bool>,
}

impl TankMemos {
    pub(crate) fn of(session: Session) -> Self {
        let Session { document, printer, .. } = session;
        // A replay costs more than a look at what it depends on.
        let course = Memo::new(move |_| {
            document.with(|it| printer.with(|printer| LogReading::of(&it.here, printer)))
        });
        let history = Memo::new_with_compare(move |_| course.with(History::of), |_, _| true);
        let question =
            Memo::new(move |_| document.with(|it| printer.with(|p| TankQuestion::of(it, p))));
        let answer = Memo::new_with_compare(
            move |_| {
                let answer =
                    history.with(|history| question.with(|it| TankAnswer::of(it, history)));
                answer.map(Arc::new)
            },
            |_, _| true,
        );
        let draft_errors = Memo::new(move |_| {
            document.with(|it| printer.with(|printer| it.here.draft_errors(printer)))
        });
        let tried = RwSignal::new(false);
        session.when_car_changes(move || tried.set(false));
        Self { printer, course, history, answer, draft_errors, tried }
    }

    /// Those around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// What is wrong with the entry being written, once the person tried to keep it.
    pub(crate) fn wrong_in_draft(self) -> Vec<FieldError> {
        if self.tried.get() { self.draft_errors.get() } else { Vec::new() }
    }

    /// What the log says of the tank, in a sentence; nothing while it says nothing.
    pub(crate) fn by_the_log(self) -> String {
        self.history.with(|history| {
            history.estimate().map_or_else(String::new, |estimate| {
                self.printer.with(|printer| tank::estimate(&estimate, printer))
            })
        })
    }
}
