//! The fields of the hardware: one widget draws them all, from tables.

use fillwright::document::{CurvePart, Document, Field};
use fillwright::document::{Fields, HardwareField, Mark, PartForm};
use fillwright::quantity::notation::{Entry, Measure, Printer};
use fillwright::words::hardware;
use leptos::prelude::*;

use crate::app::state::State;
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

    /// The texts.
    pub(super) fn texts(self, document: &Document) -> Option<&Fields> {
        let hardware = &document.here.hardware;
        match self {
            Self::Engine => Some(&hardware.engine),
            Self::Part(id) => hardware.parts.iter().find(|it| it.id == id).map(|it| &it.fields),
            Self::Air(id) => hardware.curves.iter().find(|it| it.id == id).map(|it| &it.air),
            Self::Mix => Some(&hardware.mix),
        }
    }

    fn texts_mut(self, document: &mut Document) -> Option<&mut Fields> {
        let hardware = &mut document.here.hardware;
        match self {
            Self::Engine => Some(&mut hardware.engine),
            Self::Part(id) => {
                hardware.parts.iter_mut().find(|it| it.id == id).map(|it| &mut it.fields)
            }
            Self::Air(id) => {
                hardware.curves.iter_mut().find(|it| it.id == id).map(|it| &mut it.air)
            }
            Self::Mix => Some(&mut hardware.mix),
        }
    }
}

/// What is typed into a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    /// A quantity, in the unit that the person chose.
    Quantity,
    /// A number with the unit that it always has.
    Number(&'static str),
    /// Something that takes the whole keyboard.
    Words(&'static str),
    /// A small table, whose first line may be all of it.
    Lines(u32),
}

/// One row of a form: a field, what is asked there, and how.
#[derive(Debug)]
pub(super) struct Row {
    pub(super) slot: HardwareField,
    pub(super) label: &'static str,
    hint: &'static str,
    kind: Kind,
    /// The field is there only if this is ticked, or not.
    only: Option<(Mark, bool)>,
}

impl Row {
    const fn of(slot: HardwareField, label: &'static str, hint: &'static str, kind: Kind) -> Self {
        Self { slot, label, hint, kind, only: None }
    }

    /// A quantity, whose unit the slot knows.
    pub(super) const fn quantity(
        slot: HardwareField,
        label: &'static str,
        hint: &'static str,
    ) -> Self {
        Self::of(slot, label, hint, Kind::Quantity)
    }

    /// A percentage.
    pub(super) const fn percent(
        slot: HardwareField,
        label: &'static str,
        hint: &'static str,
    ) -> Self {
        Self::of(slot, label, hint, Kind::Number("%"))
    }

    /// A bare number.
    pub(super) const fn number(
        slot: HardwareField,
        label: &'static str,
        hint: &'static str,
    ) -> Self {
        Self::of(slot, label, hint, Kind::Number(""))
    }

    /// A range of percentages, or a blend.
    pub(super) const fn words(
        slot: HardwareField,
        label: &'static str,
        unit: &'static str,
        hint: &'static str,
    ) -> Self {
        Self::of(slot, label, hint, Kind::Words(unit))
    }

    /// A small table.
    pub(super) const fn lines(
        slot: HardwareField,
        label: &'static str,
        rows: u32,
        hint: &'static str,
    ) -> Self {
        Self::of(slot, label, hint, Kind::Lines(rows))
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
    pub(super) fn typed(&self, texts: &Fields, printer: &Printer) -> Option<String> {
        let entry = texts.get(self.slot).filter(|entry| !entry.is_blank())?;
        let (text, unit) = match (self.slot.measure(), self.kind) {
            (Some(measure), _) => (printer.shown(entry, measure), printer.unit(measure)),
            (None, Kind::Number(unit) | Kind::Words(unit)) => (entry.text.clone(), unit),
            (None, _) => (entry.text.clone(), ""),
        };
        Some(hardware::with_unit(&text, unit))
    }
}

/// Writes a text into a field. A table keeps the units that it was begun in: its
/// lines stay what they were when one of them is changed under other units.
fn write(document: &mut Document, owner: Owner, row: &Row, text: String) {
    let now = document.settings.units;
    let Some(texts) = owner.texts_mut(document) else { return };
    let entry = texts.entry(row.slot);
    let keeps = matches!(row.kind, Kind::Lines(_)) && !entry.is_blank();
    let typed_in = if keeps { entry.typed_in } else { now };
    *entry = Entry { text, typed_in };
}

/// A field.
#[component]
pub(super) fn SlotField(owner: Owner, row: &'static Row) -> impl IntoView {
    let state = State::here();
    let field = owner.field(row.slot);
    let read = move |document: &Document| -> Option<Entry> {
        owner.texts(document)?.get(row.slot).cloned()
    };
    let value = said(move || {
        let entry = state.document.with(read).unwrap_or_default();
        match row.slot.measure() {
            Some(measure) => state.printer.with(|it| it.shown(&entry, measure)),
            None => entry.text,
        }
    });
    let on_text = state.set(move |it, text| write(it, owner, row, text));
    match row.kind {
        Kind::Lines(rows) => {
            let units = said(move || table_units(row.slot, state.document.with(read), state));
            view! {
                <div class="whole">
                    <TextArea
                        field=field
                        label=row.label
                        hint=row.hint
                        rows=rows
                        value=value
                        on_text=on_text
                    />
                    <p class="hint">{units}</p>
                </div>
            }
            .into_any()
        }
        kind => {
            let measure = row.slot.measure();
            let unit = said(move || match (measure, kind) {
                (Some(measure), _) => state.printer.with(|it| it.unit(measure).to_owned()),
                (None, Kind::Number(unit) | Kind::Words(unit)) => unit.to_owned(),
                (None, _) => String::new(),
            });
            view! {
                <TextField
                    field=field
                    label=row.label
                    hint=row.hint
                    unit=unit
                    words=matches!(kind, Kind::Words(_))
                    value=value
                    on_text=on_text
                />
            }
            .into_any()
        }
    }
}

/// The units in which bare numbers of a table are read.
fn table_units(slot: HardwareField, entry: Option<Entry>, state: State) -> String {
    let columns: &[Measure] = match slot {
        HardwareField::FlowTable => &[Measure::Pressure, Measure::PumpFlow],
        HardwareField::DeadTime => &[Measure::Voltage, Measure::Time],
        _ => return String::new(),
    };
    state.printer.with(|printer| {
        // A table is read in the units in which it was begun.
        let begun = entry.filter(|it| !it.is_blank()).map_or(printer.units, |it| it.typed_in);
        let printer = Printer { units: begun, ..printer.clone() };
        let units: Vec<_> = columns.iter().map(|measure| printer.unit(*measure)).collect();
        format!("Bare numbers are {}.", units.join(" and "))
    })
}

/// The fields of a table, two beside each other.
pub(super) fn fields(owner: Owner, rows: &'static [Row]) -> AnyView {
    let drawn: Vec<AnyView> =
        rows.iter().map(|row| view! { <SlotField owner=owner row=row /> }.into_any()).collect();
    view! { <div class="pair">{drawn}</div> }.into_any()
}

#[cfg(test)]
mod tests {
    use fillwright::document::{Id, PartKind};
    use fillwright::quantity::notation::Units;

    use super::*;

    static TABLE: Row = Row::lines(HardwareField::FlowTable, "Flow", 3, "");
    static STROKE: Row = Row::quantity(HardwareField::Lift, "Stroke", "");

    fn document() -> Document {
        let mut document = Document::empty(Id::of_chance([7; 10]));
        document.here.hardware.parts.push(PartForm::new(1, PartKind::SupplyPump));
        document
    }

    fn typed_in(document: &Document, slot: HardwareField) -> Option<Units> {
        Owner::Part(1).texts(document)?.get(slot).map(|it| it.typed_in)
    }

    #[test]
    fn a_table_keeps_the_units_that_it_was_begun_in() {
        let mut document = document();
        write(&mut document, Owner::Part(1), &TABLE, "3 150".into());
        document.settings.units = Units::US;
        write(&mut document, Owner::Part(1), &TABLE, "3 150\n4 138".into());
        assert_eq!(typed_in(&document, HardwareField::FlowTable), Some(Units::METRIC));
        // Emptied, it is begun anew.
        write(&mut document, Owner::Part(1), &TABLE, String::new());
        write(&mut document, Owner::Part(1), &TABLE, "43 40".into());
        assert_eq!(typed_in(&document, HardwareField::FlowTable), Some(Units::US));
    }

    #[test]
    fn a_figure_is_in_the_units_of_the_moment() {
        let mut document = document();
        write(&mut document, Owner::Part(1), &STROKE, "5".into());
        document.settings.units = Units::US;
        write(&mut document, Owner::Part(1), &STROKE, "0.2".into());
        assert_eq!(typed_in(&document, HardwareField::Lift), Some(Units::US));
    }
}
