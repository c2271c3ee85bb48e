//! The fields of the hardware: one widget draws them all, from tables.

use fillwright::document::{CurvePart, Document, Field, HardwareField, Mark, PartForm};
use fillwright::message::Message;
use fillwright::message::keys::hardware as keys;
use fillwright::quantity::notation::{Measure, Printer};
use fillwright::words::hardware;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{TextArea, TextField, said};

/// Whose fields they are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Owner {
    /// The engine's.
    Engine,
    /// Of a part, or of a limit.
    Part(u32),
    /// The air in which a curve was measured.
    Air(u32),
    /// Injection fluid to be mixed.
    Mix,
}

impl Owner {
    /// The field of a slot.
    pub(super) fn field(self, slot: HardwareField) -> Field {
        match self {
            Self::Engine => Field::Engine(slot),
            Self::Part(id) => Field::Part(id, slot),
            Self::Air(id) => Field::Curve(id, CurvePart::Air(slot)),
            Self::Mix => Field::Mix(slot),
        }
    }
}

/// What a field takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    /// A number.
    Figure,
    /// Something that takes the whole keyboard.
    Words,
    /// A small table of so many lines in sight, whose first may be all of it.
    Lines(u32),
}

/// One row of a form: a field, what is asked there, and how.
#[derive(Debug)]
pub(super) struct Row {
    pub(super) slot: HardwareField,
    pub(super) label: Message,
    hint: Option<Message>,
    kind: Kind,
    /// The field is there only if this is ticked, or not.
    only: Option<(Mark, bool)>,
}

impl Row {
    const fn of(slot: HardwareField, label: Message, kind: Kind) -> Self {
        Self { slot, label, hint: None, kind, only: None }
    }

    /// A number, whose unit the slot knows.
    pub(super) const fn figure(slot: HardwareField, label: Message) -> Self {
        Self::of(slot, label, Kind::Figure)
    }

    /// A range, or a blend.
    pub(super) const fn words(slot: HardwareField, label: Message) -> Self {
        Self::of(slot, label, Kind::Words)
    }

    /// A small table.
    pub(super) const fn lines(slot: HardwareField, label: Message, rows: u32) -> Self {
        Self::of(slot, label, Kind::Lines(rows))
    }

    /// The same with something to say below it.
    pub(super) const fn hint(mut self, hint: Message) -> Self {
        self.hint = Some(hint);
        self
    }

    /// The same, there only if this is ticked, or not.
    pub(super) const fn only(mut self, mark: Mark, on: bool) -> Self {
        self.only = Some((mark, on));
        self
    }

    /// Whether the field belongs to a part as it is ticked.
    pub(super) fn is_of(&self, form: &PartForm) -> bool {
        self.only.is_none_or(|(mark, on)| form.is(mark) == on)
    }

    /// What was typed, with its unit, as it reads now; nothing where it is blank.
    pub(super) fn typed(
        &self,
        document: &Document,
        owner: Owner,
        printer: &Printer,
    ) -> Option<String> {
        let typed = document.typed(owner.field(self.slot)).filter(|it| !it.is_blank())?;
        Some(hardware::with_unit(&typed.shown(printer), &typed.unit.symbol(printer)))
    }
}

/// A field.
#[component]
pub(super) fn SlotField(owner: Owner, row: &'static Row) -> impl IntoView {
    let field = owner.field(row.slot);
    let label = row.label.say();
    let hint = row.hint.map_or("", Message::say);
    match row.kind {
        Kind::Lines(rows) => {
            let session = Session::here();
            let units = said(move || table_units(field, row.slot, session));
            view! {
                <div class="whole">
                    <TextArea field=field label=label hint=hint rows=rows />
                    <p class="hint">{units}</p>
                </div>
            }
            .into_any()
        }
        kind => {
            let words = kind == Kind::Words;
            view! { <TextField field=field label=label hint=hint words=words /> }.into_any()
        }
    }
}

/// The units in which bare numbers of a table are read.
fn table_units(field: Field, slot: HardwareField, session: Session) -> String {
    let columns = match slot {
        HardwareField::FlowTable => [Measure::Pressure, Measure::PumpFlow],
        HardwareField::DeadTime => [Measure::Voltage, Measure::Time],
        _ => return String::new(),
    };
    session.printer.with(|printer| {
        // A table is read in the units in which it was begun.
        let begun = session.document.with(|it| it.typed(field).and_then(|typed| typed.begun_in()));
        let printer = Printer { units: begun.unwrap_or(printer.units), ..printer.clone() };
        let [first, second] = columns.map(|measure| printer.unit(measure));
        keys::BareNumbers { first, second }.say()
    })
}

/// The fields of a table, two beside each other.
pub(super) fn fields(owner: Owner, rows: &'static [Row]) -> AnyView {
    let drawn: Vec<AnyView> =
        rows.iter().map(|row| view! { <SlotField owner=owner row=row /> }.into_any()).collect();
    view! { <div class="pair">{drawn}</div> }.into_any()
}
