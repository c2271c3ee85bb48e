//! The one document, and everything derived from it.

use std::sync::Arc;

use fillwright::answers::FieldError;
use fillwright::answers::fill::{FillAnswer, FillReading, interpret};
use fillwright::answers::hardware::{HardwareAnswer, HardwareReading};
use fillwright::answers::tank::{History, LogReading, TankAnswer, TankQuestion};
use fillwright::answers::trip::TripReading;
use fillwright::document::{Document, Field, FillForm, Id};
use fillwright::keeping::{Keeper, Opened, Trouble};
use fillwright::quantity::notation::{DecimalMark, Printer};
use leptos::prelude::*;

use super::device;
use super::planning::Planning;
use super::route::Route;
use super::signals::{holds, said};
use super::undo::{Act, Undoing};
use super::wording::tank;

/// The answer on show.
#[derive(Clone)]
pub(crate) struct Shown {
    /// The last answer there was.
    pub(crate) answer: Option<Arc<FillAnswer>>,
    /// Whether the texts have since become unreadable.
    pub(crate) stale: bool,
}

/// How the fuel system stands, and the reading of the hardware that it was judged by.
#[derive(Clone)]
pub(crate) struct Judged {
    car: Id,
    pub(crate) reading: Arc<HardwareReading>,
    pub(crate) answer: Arc<HardwareAnswer>,
    /// Whether the texts have since become unreadable.
    pub(crate) stale: bool,
}

/// What every view reads. All of it is derived from the document.
#[derive(Clone, Copy)]
pub(crate) struct State {
    pub(crate) document: RwSignal<Document>,
    /// The last change that can be taken back.
    pub(crate) undoing: Undoing,
    /// Whether nothing was stored yet and nothing chosen.
    pub(crate) is_new: RwSignal<bool>,
    /// What was wrong with what was stored.
    pub(crate) troubles: RwSignal<Vec<Trouble>>,
    /// Why the last change could not be stored.
    pub(crate) unsaved: RwSignal<Option<Trouble>>,
    /// How many texts are kept aside since they could not be read.
    pub(crate) aside: RwSignal<usize>,
    /// What stores the document, where there is storage.
    pub(crate) keeper: StoredValue<Option<Keeper>>,
    pub(crate) route: RwSignal<Route>,
    pub(crate) printer: Memo<Printer>,
    /// What the log's replay depends on.
    pub(crate) course: Memo<LogReading>,
    /// The log of the car in use, replayed.
    pub(crate) history: Memo<History>,
    /// What is in its tank, by the log, and what that means.
    pub(crate) tank: Memo<Option<Arc<TankAnswer>>>,
    pub(crate) reading: Memo<FillReading>,
    /// The hardware as its texts describe it.
    pub(crate) hardware: Memo<Arc<HardwareReading>>,
    /// The route as its texts describe it.
    pub(crate) trip: Memo<TripReading>,
    /// What is being planned for it.
    pub(crate) planning: Planning,
    /// How its fuel system stands.
    pub(crate) judged: Memo<Option<Judged>>,
    /// What is wrong with the entry that is being written.
    draft_errors: Memo<Vec<FieldError>>,
    /// Whether the person tried to keep that entry: only then is anything wrong.
    pub(crate) tried: RwSignal<bool>,
    pub(crate) shown: Memo<Shown>,
    /// Whether somebody is in a text field.
    pub(crate) typing: RwSignal<bool>,
    /// The field that they are in, if it was not wrong when they came.
    pub(crate) untold: RwSignal<Option<Field>>,
    /// The last answer that was asked for on purpose, not in passing while typing.
    settled: RwSignal<Option<Arc<FillAnswer>>>,
    /// The car and its fill as they were left by the last record.
    left_by_record: RwSignal<Option<(Id, FillForm)>>,
    /// Whether a fill was just recorded, and nothing entered for the next one yet.
    pub(crate) just_recorded: Signal<bool>,
}

/// The route as the document's texts describe it.
fn trip_of(
    document: RwSignal<Document>,
    history: Memo<History>,
    printer: Memo<Printer>,
) -> Memo<TripReading> {
    Memo::new(move |_| {
        let estimate = history.with(History::estimate);
        document.with(|it| printer.with(|p| TripReading::of(it, estimate.as_ref(), p)))
    })
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

impl State {
    /// Goes on with what is stored, or starts anew; numbers are written as on this device.
    pub(crate) fn of(
        (keeper, loaded): (Option<Keeper>, Opened),
        aside: usize,
        device: DecimalMark,
    ) -> Self {
        let is_new = loaded.document.is_none();
        let document =
            RwSignal::new(loaded.document.unwrap_or_else(|| Document::empty(device::new_id())));
        let printer = Memo::new(move |_| document.with(|it| it.settings.printer(device)));
        // A replay costs more than a look at what it depends on.
        let course = Memo::new(move |_| {
            document.with(|it| printer.with(|printer| LogReading::of(&it.here, printer)))
        });
        let history = Memo::new_with_compare(move |_| course.with(History::of), |_, _| true);
        let question =
            Memo::new(move |_| document.with(|it| printer.with(|p| TankQuestion::of(it, p))));
        let tank = Memo::new_with_compare(
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
        // Whether these two really changed is not asked: what is made of them is
        // compared where it is shown, as text.
        let reading = Memo::new_with_compare(
            move |_| {
                history.with(|history| {
                    let log = history.estimator.as_ref();
                    document.with(|it| printer.with(|printer| interpret(it, log, printer)))
                })
            },
            |_, _| true,
        );
        // Nothing of these two is worked out before a view asks for it.
        let hardware = Memo::new_with_compare(
            move |_| {
                let tank = history.with(|it| it.estimate().map(|estimate| estimate.content()));
                Arc::new(
                    document
                        .with(|it| printer.with(|printer| HardwareReading::of(it, tank, printer))),
                )
            },
            |_, _| true,
        );
        let judged = Memo::new_with_compare(
            move |before: Option<&Option<Judged>>| {
                let reading = hardware.get();
                let (car, is_empty) =
                    document.with(|it| (it.here.id.clone(), it.here.hardware.curves.is_empty()));
                if let Some(answer) = HardwareAnswer::of(&reading) {
                    return Some(Judged { car, reading, answer: Arc::new(answer), stale: false });
                }
                let before = before.cloned().flatten();
                let before = before.filter(|before| before.car == car && !is_empty);
                before.map(|before| Judged { stale: true, ..before })
            },
            |_, _| true,
        );
        let left_by_record = RwSignal::new(None::<(Id, FillForm)>);
        let typing = RwSignal::new(false);
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
        Self {
            document,
            undoing: Undoing::new(),
            is_new: RwSignal::new(is_new),
            troubles: RwSignal::new(loaded.troubles),
            unsaved: RwSignal::new(None),
            aside: RwSignal::new(aside),
            keeper: StoredValue::new(keeper),
            route: RwSignal::new(Route::of_location()),
            printer,
            course,
            history,
            tank,
            reading,
            hardware,
            trip: trip_of(document, history, printer),
            planning: Planning::new(),
            judged,
            draft_errors,
            tried: RwSignal::new(false),
            shown,
            typing,
            untold: RwSignal::new(None),
            settled,
            left_by_record,
            just_recorded: is_left(document, left_by_record),
        }
    }

    /// Notes that a fill was just recorded.
    pub(crate) fn note_recorded(self) {
        let left = self.document.with_untracked(|it| (it.here.id.clone(), it.here.fill.clone()));
        self.left_by_record.set(Some(left));
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

    /// Notes that somebody came to a text field.
    pub(crate) fn enter_field(self, field: Field, is_wrong: bool) {
        self.typing.set(true);
        self.untold.set((!is_wrong).then_some(field));
    }

    /// Notes that a text field was left. The next may be entered before any effect
    /// runs, so what was typed is taken at once.
    pub(crate) fn leave_field(self) {
        self.typing.set(false);
        self.untold.set(None);
        self.settle();
    }

    /// What may be said of these: nothing is wrong with a field before it was left.
    pub(crate) fn told(self, field_errors: &[FieldError]) -> Vec<FieldError> {
        let untold = self.untold.get();
        let told = |it: &&FieldError| it.is_missing || Some(it.field) != untold;
        field_errors.iter().filter(told).cloned().collect()
    }

    /// The state of the app around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// Takes back the last act.
    pub(crate) fn undo(self) {
        if let Some((before, after)) = self.undoing.take_back() {
            let mut next = self.document.get_untracked();
            next.take_back(&before, &after);
            self.show(next);
        }
    }

    /// Changes the document in a way that a person may want to take back.
    pub(crate) fn change_undoably(self, act: impl Into<Act>, change: impl FnOnce(&mut Document)) {
        let mut next = self.document.get_untracked();
        change(&mut next);
        self.replace_undoably(act, next);
    }

    /// The same with the document after the change.
    pub(crate) fn replace_undoably(self, act: impl Into<Act>, next: Document) {
        let before = self.document.get_untracked();
        self.undoing.note(act.into(), before, next.clone());
        self.show(next);
    }

    /// Shows a document that comes from elsewhere.
    pub(crate) fn show(self, next: Document) {
        if self.document.with_untracked(|it| it.here.id != next.here.id) {
            // The answer for another car is no answer for this one.
            self.settled.set(None);
            self.tried.set(false);
        }
        self.document.set(next);
    }

    /// Takes another car into use.
    pub(crate) fn choose(self, id: &Id) {
        let mut next = self.document.get_untracked();
        next.choose(id);
        self.show(next);
    }

    /// What is wrong with the entry being written, once the person tried to keep it.
    pub(crate) fn wrong_in_draft(self) -> Vec<FieldError> {
        if self.tried.get() { self.draft_errors.get() } else { Vec::new() }
    }

    /// The answer on show.
    pub(crate) fn answer(self) -> Option<Arc<FillAnswer>> {
        self.shown.with(|it| it.answer.clone())
    }

    /// What the log says of the tank, in a sentence; nothing while it says nothing.
    pub(crate) fn by_the_log(self) -> String {
        self.history.with(|history| {
            history.estimate().map_or_else(String::new, |estimate| {
                self.printer.with(|printer| tank::estimate(&estimate, printer))
            })
        })
    }

    /// What does not fit between the log and the level that a fill starts from.
    pub(crate) fn doubt_at_start(self) -> String {
        let doubt = self.reading.with(|it| it.asked.as_ref().and_then(|asked| asked.doubt));
        doubt.map_or_else(String::new, |it| self.printer.with(|printer| tank::doubt(&it, printer)))
    }

    /// What is typed in a field, as it reads in the units of today.
    pub(crate) fn typed(self, field: Field) -> Signal<String> {
        said(move || {
            self.document.with(|it| {
                let typed = it.typed(field);
                typed.map_or_else(String::new, |it| self.printer.with(|printer| it.shown(printer)))
            })
        })
    }

    /// The symbol of the unit of a field.
    pub(crate) fn unit_of(self, field: Field) -> Signal<String> {
        said(move || {
            let unit = self.document.with(|it| it.typed(field).map(|typed| typed.unit));
            unit.map_or_else(String::new, |it| self.printer.with(|printer| it.symbol(printer)))
        })
    }

    /// Something to do with what is typed into a field: take it into the document.
    pub(crate) fn type_into(self, field: Field) -> Callback<String> {
        self.set(move |it, text| it.type_into(field, text))
    }

    /// Something to do with the key of a choice: change the document by it.
    pub(crate) fn set(
        self,
        write: impl Fn(&mut Document, String) + Send + Sync + 'static,
    ) -> Callback<String> {
        Callback::new(move |text: String| self.document.update(|it| write(it, text)))
    }
}
