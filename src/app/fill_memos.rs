//! What is made of the fill at hand: its reading, and the answer on show.

use std::sync::Arc;

use fillwright::answers::fill::{FillAnswer, FillReading, interpret};
use fillwright::document::{Document, FillForm, Id};
use fillwright::quantity::notation::Printer;
use fillwright::words::tank;
use leptos::prelude::*;

use super::session::Session;
use super::signals::{holds, said};
use super::tank_memos::TankMemos;

/// The answer on show.
#[derive(Clone)]
pub(crate) struct Shown {
    /// The last answer there was.
    pub(crate) answer: Option<Arc<FillAnswer>>,
    /// Whether the texts have since become unreadable.
    pub(crate) stale: bool,
}

/// What is made of the fill at hand.
#[derive(Clone, Copy)]
pub(crate) struct FillMemos {
    document: RwSignal<Document>,
    printer: Memo<Printer>,
    typing: RwSignal<bool>,
    /// The fill as its texts describe it.
    pub(crate) reading: Memo<FillReading>,
    pub(crate) shown: Memo<Shown>,
    /// The last answer that was asked for on purpose, not in passing while typing.
    settled: RwSignal<Option<Arc<FillAnswer>>>,
    /// The car and its fill as they were left by the last record.
    left_by_record: RwSignal<Option<(Id, FillForm)>>,
    /// Whether a fill was just recorded, and nothing entered for the next one yet.
    pub(crate) just_recorded: Signal<bool>,
}

/// Whether nothing was entered since the last fill was recorded.
fn is_left(
    document: RwSignal<Document>,
    left_by_record: RwSignal<Option<(Id, FillForm)>>,
) -> Signal<bool> {
    holds(move || {
        left_by_record.with(|left| {
            let same = |(car, fill): &(Id, FillForm)| {
                document.with(|it| it.here.id == *car && it.here.fill == *fill)
            };
            left.as_ref().is_some_and(same)
        })
    })
}

impl FillMemos {
    pub(crate) fn of(session: Session, tank_memos: TankMemos) -> Self {
        let Session { document, printer, typing, .. } = session;
        // Whether these two really changed is not asked: what is made of them is
        // compared where it is shown, as text.
        let reading = Memo::new_with_compare(
            move |_| {
                tank_memos.history.with(|history| {
                    let log = history.estimator.as_ref();
                    document.with(|it| printer.with(|printer| interpret(it, log, printer)))
                })
            },
            |_, _| true,
        );
        let settled = RwSignal::new(None::<Arc<FillAnswer>>);
        let shown = Memo::new_with_compare(
            move |_| {
                if let Some(asked) = reading.with(|reading| reading.asked.clone()) {
                    return Shown { answer: Some(Arc::new(FillAnswer::of(asked))), stale: false };
                }
                let answer = settled.get_untracked();
                Shown { stale: answer.is_some(), answer }
            },
            |_, _| true,
        );
        let left_by_record = RwSignal::new(None::<(Id, FillForm)>);
        let just_recorded = is_left(document, left_by_record);
        let here = Self {
            document,
            printer,
            typing,
            reading,
            shown,
            settled,
            left_by_record,
            just_recorded,
        };
        session.when_field_left(move || here.settle());
        // The answer for another car is no answer for this one.
        session.when_car_changes(move || settled.set(None));
        here
    }

    /// Those around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// Takes note of answers as they come.
    pub(crate) fn follow(self) {
        // Outside of text fields every change is made on purpose.
        Effect::new(move |_| {
            self.shown.track();
            if !self.typing.get() {
                self.settle();
            }
        });
    }

    /// Takes the answer on show for the one to fall back on.
    fn settle(self) {
        let shown = self.shown.get_untracked();
        if !shown.stale {
            self.settled.set(shown.answer);
        }
    }

    /// Notes that a fill was just recorded.
    pub(crate) fn note_recorded(self) {
        let left = self.document.with_untracked(|it| (it.here.id.clone(), it.here.fill.clone()));
        self.left_by_record.set(Some(left));
    }

    /// The answer on show.
    pub(crate) fn answer(self) -> Option<Arc<FillAnswer>> {
        self.shown.with(|it| it.answer.clone())
    }

    /// A text made of the answer on show.
    pub(crate) fn of_answer(self, words: fn(&FillAnswer, &Printer) -> String) -> Signal<String> {
        said(move || {
            self.answer().map_or_else(String::new, |answer| {
                self.printer.with(|printer| words(&answer, printer))
            })
        })
    }

    /// What does not fit between the log and the level that a fill starts from.
    pub(crate) fn doubt_at_start(self) -> String {
        let doubt = self.reading.with(|it| it.asked.as_ref().and_then(|asked| asked.doubt));
        doubt.map_or_else(String::new, |it| self.printer.with(|printer| tank::doubt(&it, printer)))
    }
}
