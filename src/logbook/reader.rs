//! Reading typed texts, and saying what is wrong with them beside their fields.

use std::fmt::Display;

use super::complaint::{Complaint, Field};
use super::document::Settings;
use super::exchange::Exchange;
use super::forms::Entry;
use super::printer::Printer;
use super::stated_share::{NoShare, ShareOf, together};
use crate::fuel::ron_mon_from_aki;
use crate::quantity::notation::{
    Consumption, LevelText, OctaneFigure, OctaneScale, Units, VolumeField, VolumeUnit, parse_level,
    parse_octane, parse_share_text, parse_volume,
};
use crate::quantity::{Band, Share, Volume};

/// The largest tank, in litres, that a text is taken for.
const LARGEST_TANK_L: f64 = 1000.0;

impl VolumeField {
    /// A field for a volume that knows no tank and asks no question.
    pub(super) fn anywhere(units: Units) -> Self {
        Self {
            units,
            tank: None,
            consumption: None,
            largest: VolumeUnit::Litre.quantity(LARGEST_TANK_L),
            part_is_usual: false,
        }
    }
}

/// A value that may be left blank: `Some(None)` when it is, `None` when what was
/// typed cannot be read.
pub(super) type Optional<T> = Option<Option<T>>;

/// Reads texts and collects what is wrong with them.
pub(super) struct Reader<'a> {
    pub(super) printer: &'a Printer,
    pub(super) complaints: Vec<Complaint>,
    /// How money in other currencies is changed; where it is told alone, it is not.
    pub(super) exchange: Option<Exchange<'a>>,
}

impl<'a> Reader<'a> {
    pub(super) fn new(printer: &'a Printer) -> Self {
        Self { printer, complaints: Vec::new(), exchange: None }
    }

    /// A reader of money that is weighed against other money.
    pub(super) fn of_money(printer: &'a Printer, settings: &'a Settings) -> Self {
        Self { exchange: Some(Exchange::of(settings)), ..Self::new(printer) }
    }

    pub(super) fn complain(&mut self, field: Field, message: impl Display) {
        let message = message.to_string();
        // A sentence begins with a capital letter, whatever the error began with.
        let mut letters = message.chars();
        let first = letters.next().map(|c| c.to_uppercase().to_string()).unwrap_or_default();
        self.complaints.push(Complaint { field, message: first + letters.as_str() });
    }

    pub(super) fn take<T, E: Display>(&mut self, field: Field, read: Result<T, E>) -> Option<T> {
        match read {
            Ok(value) => Some(value),
            Err(error) => {
                self.complain(field, error);
                None
            }
        }
    }

    pub(super) fn optional<T, E: Display>(
        &mut self,
        field: Field,
        text: &str,
        read: impl FnOnce(&str) -> Result<T, E>,
    ) -> Optional<T> {
        if text.trim().is_empty() { Some(None) } else { self.take(field, read(text)).map(Some) }
    }

    pub(super) fn required<T>(
        &mut self,
        field: Field,
        value: Optional<T>,
        what: &str,
    ) -> Option<T> {
        if let Some(None) = value {
            self.complain(field, what);
        }
        value.flatten()
    }

    /// A volume that is not told as a part of the tank as a rule.
    pub(super) fn volume(
        &mut self,
        field: Field,
        entry: &Entry,
        tank: Option<Volume>,
    ) -> Optional<Volume> {
        let form = VolumeField { tank, ..VolumeField::anywhere(entry.typed_in) };
        self.optional(field, &entry.text, |text| parse_volume(text, &form))
    }

    /// A level in the tank, which people tell as a part of it.
    pub(super) fn level_text(
        &mut self,
        field: Field,
        entry: &Entry,
        tank: Option<Volume>,
        consumption: Option<Consumption>,
    ) -> Optional<LevelText> {
        let form = VolumeField {
            tank,
            consumption,
            part_is_usual: true,
            ..VolumeField::anywhere(entry.typed_in)
        };
        self.optional(field, &entry.text, |text| parse_level(text, &form))
    }

    /// A share with its band, from the field for what is expected and the field
    /// for what it may be. Either is enough; where no range was typed, what it is said
    /// `of` decides what is allowed for.
    pub(super) fn share(
        &mut self,
        expected: (Field, &str),
        range: (Field, &str),
        of: ShareOf,
        missing: &str,
    ) -> Option<Band<Share>> {
        let typed = self.optional(expected.0, expected.1, parse_share_text)?;
        let may_be = self.optional(range.0, range.1, parse_share_text)?;
        match together(typed, may_be, of) {
            Ok(band) => self.required(expected.0, Some(band), missing),
            Err(NoShare::Typed(error)) => self.take(expected.0, Err(error)),
            Err(NoShare::Range(error)) => self.take(range.0, Err(error)),
            Err(NoShare::Apart(expected, may_be)) => {
                let message = format!(
                    "{} lies outside the {} given as possible. Correct one of them.",
                    self.printer.grade(expected),
                    self.printer.grade_band(may_be)
                );
                self.complain(range.0, message);
                None
            }
        }
    }

    /// RON and, where only AKI was given, the MON that belongs to it. A number without
    /// its scale is on the one chosen when it was typed.
    pub(super) fn octane(&mut self, field: Field, entry: &Entry) -> Optional<(f64, Option<f64>)> {
        let figure = self.optional(field, &entry.text, parse_octane)?;
        Some(figure.map(|figure| match (figure, entry.typed_in.octane()) {
            (OctaneFigure::Ron(ron), _) | (OctaneFigure::Unmarked(ron), OctaneScale::Ron) => {
                (ron, None)
            }
            (OctaneFigure::Aki(aki), _) | (OctaneFigure::Unmarked(aki), OctaneScale::Aki) => {
                let (ron, mon) = ron_mon_from_aki(aki);
                (ron, Some(mon))
            }
        }))
    }
}
