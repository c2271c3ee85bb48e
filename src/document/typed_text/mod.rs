//! The text of every field: what is typed there, read and written by one table.

#[cfg(test)]
mod each_field;
mod rows;

use super::event::EntryPart;
use super::field::Field;
use super::field_unit::FieldUnit;
use super::file::Document;
use super::fuel::FuelPart;
use crate::quantity::notation::{Entry, Printer, Units};
use rows::{Place, row, row_mut};

/// So many characters of a currency's sign or name are kept.
const LONGEST_CURRENCY: usize = 6;

/// What is typed in a field.
#[derive(Clone, Copy, Debug)]
pub struct Typed<'a> {
    /// The text as it was typed.
    pub text: &'a str,
    /// The entry that it belongs to, where it is kept with the units that it was typed in.
    entry: Option<&'a Entry>,
    /// Its unit.
    pub unit: FieldUnit,
}

impl Typed<'_> {
    /// What to show in the field: what was typed, or its value in the units of today where
    /// it was typed in others.
    pub fn shown(&self, printer: &Printer) -> String {
        match (self.entry, self.unit) {
            (Some(entry), FieldUnit::Measured(measure)) => printer.shown(entry, measure),
            _ => self.text.to_owned(),
        }
    }

    /// The units in which a text that is there was typed, where its meaning depends on them.
    pub fn begun_in(&self) -> Option<Units> {
        self.entry.filter(|entry| !entry.is_blank()).map(|entry| entry.typed_in)
    }

    /// Whether nothing was typed.
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }
}

impl Document {
    /// What is typed in a field; nothing where the field takes no text, or what it belongs to
    /// is not there.
    pub fn typed(&self, field: Field) -> Option<Typed<'_>> {
        if let Field::Rate(currency) = field {
            let text = self.settings.rate_of(currency).map_or("", |form| &form.rate);
            return Some(Typed { text, entry: None, unit: FieldUnit::Money });
        }
        let (place, unit) = row(self, field)?;
        Some(match place {
            Place::Text(text) => Typed { text, entry: None, unit },
            Place::Entry(entry) => Typed { text: &entry.text, entry: Some(entry), unit },
        })
    }

    /// Takes what is typed into a field, in the units of the moment, with what follows from
    /// it. A table keeps the units that it was begun in: its lines stay what they were when
    /// one of them is changed under other units.
    ///
    /// Nothing happens where there is no such text. A rate and the time of an entry belong
    /// together with what a clock shows; those are taken by [`Settings::set_rate`] and
    /// [`Draft::happened`].
    ///
    /// [`Settings::set_rate`]: super::Settings::set_rate
    /// [`Draft::happened`]: super::Draft::happened
    pub fn type_into(&mut self, field: Field, typed: String) {
        let now = self.settings.units;
        let mut typed = typed;
        match field {
            Field::Entry(EntryPart::Time) => return,
            Field::Fuel(id, FuelPart::Poured) => {
                return self.here.fill.note_poured(id, Entry { text: typed, typed_in: now });
            }
            Field::AimShare => {
                return self.here.fill.aim_anew(|fill| fill.aim_share = typed);
            }
            Field::Currency => typed = typed.chars().take(LONGEST_CURRENCY).collect(),
            _ => {}
        }
        match row_mut(self, field) {
            Some((Place::Text(text), _)) => *text = typed,
            Some((Place::Entry(entry), unit)) => {
                let goes_on = unit == FieldUnit::Lines && !entry.is_blank();
                let typed_in = if goes_on { entry.typed_in } else { now };
                *entry = Entry { text: typed, typed_in };
            }
            None => {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::{
        ContentsOf, ContentsPart, Draft, HardwareField, Id, PartForm, PartKind, What,
    };
    use crate::quantity::notation::{Currency, DecimalMark};

    #[test]
    fn what_a_clock_belongs_to_is_left_to_those_who_have_one() {
        let mut document = Document::demo();
        let time = "2026-05-03T17:40".to_owned();
        document.here.draft = Some(Draft::new(Id::of_chance([7; 10]), What::Note, time, 120));
        let rate = Field::Rate(Currency::named("EUR").unwrap());
        let before = document.clone();
        for field in [rate, Field::Entry(EntryPart::Time)] {
            assert!(document.typed(field).is_some());
            document.type_into(field, "1".into());
        }
        assert_eq!(document, before);
    }

    fn pump() -> (Document, Field, Field) {
        let mut document = Document::empty(Id::of_chance([7; 10]));
        document.here.hardware.parts.push(PartForm::new(1, PartKind::SupplyPump));
        (document, Field::Part(1, HardwareField::FlowTable), Field::Part(1, HardwareField::Lift))
    }

    fn typed_in(document: &Document, field: Field) -> Option<Units> {
        document.typed(field)?.entry.map(|it| it.typed_in)
    }

    #[test]
    fn a_table_keeps_the_units_that_it_was_begun_in() {
        let (mut document, table, _) = pump();
        document.type_into(table, "3 150".into());
        document.settings.units = Units::US;
        document.type_into(table, "3 150\n4 138".into());
        assert_eq!(typed_in(&document, table), Some(Units::METRIC));
        // Emptied, it is begun anew.
        document.type_into(table, String::new());
        document.type_into(table, "43 40".into());
        assert_eq!(typed_in(&document, table), Some(Units::US));
    }

    #[test]
    fn a_figure_is_in_the_units_of_the_moment() {
        let (mut document, _, stroke) = pump();
        document.type_into(stroke, "5".into());
        document.settings.units = Units::US;
        document.type_into(stroke, "0.2".into());
        assert_eq!(typed_in(&document, stroke), Some(Units::US));
    }

    #[test]
    fn what_follows_from_a_text_follows() {
        let mut document = Document::demo();
        document.here.fill.anyway = true;
        document.type_into(Field::AimShare, "E40".into());
        assert!(!document.here.fill.anyway, "going on past the aim was said of the one before");
        document.here.fill.clicked = true;
        let poured = Field::Fuel(document.here.fill.offers[0].id, FuelPart::Poured);
        document.type_into(poured, "20".into());
        assert!(document.here.fill.clicked);
        document.type_into(poured, " ".into());
        assert!(!document.here.fill.clicked, "the nozzle clicked off at another amount");
        document.type_into(Field::Currency, "kronor of Sweden".into());
        assert_eq!(document.settings.currency, "kronor");
    }

    #[test]
    fn injection_fluid_by_mass_is_the_same_in_all_units() {
        let mut document = Document::demo();
        let amount = Field::Mix(HardwareField::MixAmount);
        document.type_into(amount, "10".into());
        document.settings.units = Units::US;
        let printer = document.settings.printer(DecimalMark::Point);
        let shown = |document: &Document| {
            let typed = document.typed(amount).unwrap();
            (typed.shown(&printer), typed.unit.symbol(&printer))
        };
        document.here.hardware.mix_by_mass = false;
        assert_ne!(shown(&document).0, "10");
        document.here.hardware.mix_by_mass = true;
        assert_eq!(shown(&document), ("10".to_owned(), "kg".to_owned()));
    }

    #[test]
    fn a_unit_follows_what_was_chosen() {
        let mut document = Document::demo();
        let symbol = |document: &Document, field| {
            let printer = document.settings.printer(DecimalMark::Point);
            document.typed(field).unwrap().unit.symbol(&printer)
        };
        let price = Field::Fuel(document.here.fill.offers[0].id, FuelPart::Price);
        let level = Field::Contents(ContentsOf::Fill, ContentsPart::Level);
        let of =
            |document: &Document| [price, level, Field::StopMoney].map(|it| symbol(document, it));
        assert_eq!(of(&document), ["kr/L", "L", "kr"]);
        document.settings.units = Units::US;
        assert_eq!(of(&document), ["kr/gal", "gal", "kr"]);
        let share = Field::Contents(ContentsOf::Fill, ContentsPart::Share);
        assert_eq!([share, Field::AimShare].map(|it| symbol(&document, it)), ["%", ""]);
    }
}
