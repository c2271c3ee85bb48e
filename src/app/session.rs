//! The session: the one document, how it is kept and what can be undone, where the person is
//! and what they type in.

use fillwright::answers::FieldError;
use fillwright::document::{Document, Field, Id};
use fillwright::keeping::{Keeper, Opened, Trouble};
use fillwright::quantity::notation::{DecimalMark, Printer};
use leptos::prelude::*;

use super::device;
use super::route::Route;
use super::signals::said;
use super::undo::{Act, Undoing};

/// What everything on the page is made of.
#[derive(Clone, Copy)]
pub(crate) struct Session {
    pub(crate) document: RwSignal<Document>,
    pub(crate) printer: Memo<Printer>,
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
    /// Whether somebody is in a text field.
    pub(crate) typing: RwSignal<bool>,
    /// The field that they are in, if it was not wrong when they came.
    untold: RwSignal<Option<Field>>,
    field_left: Occasion,
    car_changes: Occasion,
}

/// Something that happens, with what is done then at once, before any effect runs.
#[derive(Clone, Copy)]
struct Occasion(StoredValue<Vec<Callback<()>>>);

impl Occasion {
    fn new() -> Self {
        Self(StoredValue::new(Vec::new()))
    }

    fn then(self, what: impl Fn() + Send + Sync + 'static) {
        self.0.update_value(|it| it.push(Callback::new(move |()| what())));
    }

    fn happens(self) {
        self.0.get_value().into_iter().for_each(|what| what.run(()));
    }
}

impl Session {
    /// Goes on with what is stored, or starts anew; numbers are written as on this device.
    pub(crate) fn of(
        (keeper, loaded): (Option<Keeper>, Opened),
        aside: usize,
        device: DecimalMark,
    ) -> Self {
        let is_new = loaded.document.is_none();
        let document =
            RwSignal::new(loaded.document.unwrap_or_else(|| Document::empty(device::new_id())));
        Self {
            document,
            printer: Memo::new(move |_| document.with(|it| it.settings.printer(device))),
            undoing: Undoing::new(),
            is_new: RwSignal::new(is_new),
            troubles: RwSignal::new(loaded.troubles),
            unsaved: RwSignal::new(None),
            aside: RwSignal::new(aside),
            keeper: StoredValue::new(keeper),
            route: RwSignal::new(Route::of_location()),
            typing: RwSignal::new(false),
            untold: RwSignal::new(None),
            field_left: Occasion::new(),
            car_changes: Occasion::new(),
        }
    }

    /// The session around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// Has something done whenever a text field was left.
    pub(crate) fn when_field_left(self, what: impl Fn() + Send + Sync + 'static) {
        self.field_left.then(what);
    }

    /// Has something done whenever another car is about to come into use.
    pub(crate) fn when_car_changes(self, what: impl Fn() + Send + Sync + 'static) {
        self.car_changes.then(what);
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
        self.field_left.happens();
    }

    /// What may be said of these: nothing is wrong with a field before it was left.
    pub(crate) fn told(self, field_errors: &[FieldError]) -> Vec<FieldError> {
        let untold = self.untold.get();
        let told = |it: &&FieldError| it.is_missing || Some(it.field) != untold;
        field_errors.iter().filter(told).cloned().collect()
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
            self.car_changes.happens();
        }
        self.document.set(next);
    }

    /// Takes another car into use.
    pub(crate) fn choose(self, id: &Id) {
        let mut next = self.document.get_untracked();
        next.choose(id);
        self.show(next);
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
