//! The text of every field: what is typed there, read and written by one table.

mod rows;
#[cfg(test)]
mod tests;

use super::field::{EntryPart, Field, FuelPart};
use super::field_unit::FieldUnit;
use super::file::Document;
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
