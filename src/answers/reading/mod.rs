//! Reading typed texts, and saying what is wrong with them beside their fields.

mod contents;
mod exchange;
mod stated_share;

pub(crate) use contents::{FuelRead, Known, Stated};
pub(crate) use stated_share::ShareOf;

use super::field_error::FieldError;
use super::problem::FieldProblem;
use crate::document::{ExtraPart, ExtrasForm, Field, Settings};
use crate::fuel::{Content, Extras, ethers_of_oxygen, ron_mon_from_aki};
use crate::message::Message;
use crate::message::keys::problems;
use crate::quantity::notation::{
    Entry, LevelText, OctaneFigure, OctaneScale, Printer, VolumeField, parse_level, parse_octane,
    parse_part_band, parse_share_text, parse_volume,
};
use crate::quantity::{Band, Consumption, Share, Volume};
use exchange::Exchange;
use stated_share::{NoShare, together};

/// A value that may be left blank: `Some(None)` when it is, `None` when what was
/// typed cannot be read.
pub(crate) type Optional<T> = Option<Option<T>>;

/// Reads texts and collects what is wrong with them.
pub(crate) struct Reader<'a> {
    pub(crate) printer: &'a Printer,
    pub(crate) field_errors: Vec<FieldError>,
    /// How money in other currencies is changed; where it is told alone, it is not.
    pub(crate) exchange: Option<Exchange<'a>>,
}

impl<'a> Reader<'a> {
    pub(crate) fn new(printer: &'a Printer) -> Self {
        Self { printer, field_errors: Vec::new(), exchange: None }
    }

    /// A reader of money that is weighed against other money.
    pub(crate) fn of_money(printer: &'a Printer, settings: &'a Settings) -> Self {
        Self { exchange: Some(Exchange::of(settings)), ..Self::new(printer) }
    }

    /// Says that something typed is wrong.
    pub(crate) fn report(&mut self, field: Field, problem: impl Into<FieldProblem>) {
        self.note(field, problem.into(), false);
    }

    /// Says that something is still to be filled in.
    pub(crate) fn ask_for(&mut self, field: Field, problem: impl Into<FieldProblem>) {
        self.note(field, problem.into(), true);
    }

    fn note(&mut self, field: Field, problem: FieldProblem, is_missing: bool) {
        self.field_errors.push(FieldError { field, problem, is_missing });
    }

    pub(crate) fn take<T, E: Into<FieldProblem>>(
        &mut self,
        field: Field,
        read: Result<T, E>,
    ) -> Option<T> {
        match read {
            Ok(value) => Some(value),
            Err(error) => {
                self.report(field, error);
                None
            }
        }
    }

    pub(crate) fn optional<T, E: Into<FieldProblem>>(
        &mut self,
        field: Field,
        text: &str,
        read: impl FnOnce(&str) -> Result<T, E>,
    ) -> Optional<T> {
        if text.trim().is_empty() { Some(None) } else { self.take(field, read(text)).map(Some) }
    }

    pub(crate) fn required<T>(
        &mut self,
        field: Field,
        value: Optional<T>,
        what: Message,
    ) -> Option<T> {
        if let Some(None) = value {
            self.ask_for(field, what);
        }
        value.flatten()
    }

    /// A volume that is not told as a part of the tank as a rule.
    pub(crate) fn volume(
        &mut self,
        field: Field,
        entry: &Entry,
        tank: Option<Volume>,
    ) -> Optional<Volume> {
        let form = VolumeField { tank, ..VolumeField::anywhere(entry.typed_in) };
        self.optional(field, &entry.text, |text| parse_volume(text, &form))
    }

    /// A level in the tank, which people tell as a part of it.
    pub(crate) fn level_text(
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
    pub(crate) fn share(
        &mut self,
        expected: (Field, &str),
        range: (Field, &str),
        of: ShareOf,
        missing: Message,
    ) -> Option<Band<Share>> {
        let typed = self.optional(expected.0, expected.1, parse_share_text)?;
        let may_be = self.optional(range.0, range.1, parse_share_text)?;
        match together(typed, may_be, of) {
            Ok(band) => self.required(expected.0, Some(band), missing),
            Err(NoShare::Typed(error)) => self.take(expected.0, Err(error)),
            Err(NoShare::Range(error)) => self.take(range.0, Err(error)),
            Err(NoShare::Apart(expected, may_be)) => {
                let outside = problems::OutsidePossible {
                    share: self.printer.grade(expected),
                    shares: self.printer.grade_band(may_be),
                };
                self.report(range.0, outside.sentence());
                None
            }
        }
    }

    /// What there is beside petrol and ethanol, in a fuel of this ethanol share.
    pub(crate) fn extras(
        &mut self,
        form: &ExtrasForm,
        ethanol: Option<Band<Share>>,
        field: &dyn Fn(ExtraPart) -> Field,
    ) -> Option<Extras> {
        let none = Band::exact(Share::ZERO);
        let mut part = |part, text: &str| self.optional(field(part), text, parse_part_band);
        let water = part(ExtraPart::Water, &form.water);
        let methanol = part(ExtraPart::Methanol, &form.methanol);
        let ethers = part(ExtraPart::Ethers, &form.ethers);
        let oxygen = part(ExtraPart::Oxygen, &form.oxygen);
        let (water, methanol) = (water?.unwrap_or(none), methanol?.unwrap_or(none));
        let (ethers, oxygen, ethanol) = (ethers?, oxygen?, ethanol?);
        let ethers = match (ethers, oxygen) {
            (Some(_), Some(_)) => {
                let message = problems::GIVE_ETHERS_OR_OXYGEN_LEAVE;
                self.report(field(ExtraPart::Oxygen), message);
                return None;
            }
            (ethers, None) => ethers.unwrap_or(none),
            (None, Some(oxygen)) => {
                let ethers = |oxygen: Share| {
                    let (ethanol, methanol) = (ethanol.expected(), methanol.expected());
                    ethers_of_oxygen(oxygen.fraction(), ethanol, methanol)
                };
                let ends = [ethers(oxygen.low()), ethers(oxygen.high())];
                let read = ethers(oxygen.expected()).and_then(|expected| {
                    let [low, high] = ends;
                    Ok(Band::enclosing(expected, [low?, high?]).unwrap_or(Band::exact(expected)))
                });
                self.take(field(ExtraPart::Oxygen), read)?
            }
        };
        let extras = Extras { water, methanol, ethers };
        if let Some(sum) = (Content { ethanol, extras }).excess() {
            let excess = problems::ComeTo { percent: self.printer.number(sum * 100.0, 1) };
            self.report(field(ExtraPart::Water), excess.sentence());
            return None;
        }
        Some(extras)
    }

    /// RON and, where only AKI was given, the MON that belongs to it at the ethanol
    /// share of the fuel. A number without its scale is on the one chosen when it was
    /// typed. Where the share is not known, an AKI says nothing, and what is wrong is
    /// said beside the share.
    pub(crate) fn octane(
        &mut self,
        field: Field,
        entry: &Entry,
        ethanol: Option<Share>,
    ) -> Optional<(f64, Option<f64>)> {
        let figure = self.optional(field, &entry.text, parse_octane)?;
        let Some(figure) = figure else { return Some(None) };
        match (figure, entry.typed_in.octane()) {
            (OctaneFigure::Ron(ron), _) | (OctaneFigure::Unmarked(ron), OctaneScale::Ron) => {
                Some(Some((ron, None)))
            }
            (OctaneFigure::Aki(aki), _) | (OctaneFigure::Unmarked(aki), OctaneScale::Aki) => {
                let (ron, mon) = self.take(field, ron_mon_from_aki(aki, ethanol?))?;
                Some(Some((ron, Some(mon))))
            }
        }
    }
}
