//! Reading the fields of the hardware.

use std::ops::RangeInclusive;

use crate::answers::problem::FieldProblem;
use crate::answers::reading::{Optional, Reader};
use crate::document::{Field, Fields, HardwareField};
use crate::message::keys::hardware_problems;
use crate::message::{Message, Sentence};
use crate::quantity::notation::{InSi, QuantityField, Units, parse_factor, parse_fraction};

/// The texts of one thing, and where each stands on the page.
pub(super) struct Texts<'a> {
    pub(super) fields: &'a Fields,
    pub(super) field: &'a dyn Fn(HardwareField) -> Field,
}

/// What is taken as usual, as it is shown.
#[derive(Clone, Debug, PartialEq)]
pub enum Taken {
    /// A figure with its unit.
    Figure(String),
    /// Something that has words in it.
    Said(Sentence),
}

impl From<String> for Taken {
    fn from(figure: String) -> Self {
        Self::Figure(figure)
    }
}

impl From<&str> for Taken {
    fn from(figure: &str) -> Self {
        Self::Figure(figure.to_owned())
    }
}

impl From<Message> for Taken {
    fn from(message: Message) -> Self {
        Self::Said(message.into())
    }
}

impl From<Sentence> for Taken {
    fn from(sentence: Sentence) -> Self {
        Self::Said(sentence)
    }
}

/// What was taken where a field was left blank.
#[derive(Clone, Debug, PartialEq)]
pub struct Assumption {
    /// The field.
    pub field: Field,
    /// What was taken.
    pub taken: Taken,
}

/// Reads the texts of the hardware, collects what is wrong with them, and notes
/// what is taken for those that were left blank.
pub(super) struct HardwareReader<'a> {
    pub(super) reader: Reader<'a>,
    pub(super) assumptions: Vec<Assumption>,
}

impl HardwareReader<'_> {
    /// The text of a field by whatever reads it.
    pub(super) fn text<T, E: Into<FieldProblem>>(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        read: impl FnOnce(&str, Units) -> Result<T, E>,
    ) -> Optional<T> {
        let Some(entry) = texts.fields.get(slot) else { return Some(None) };
        self.reader.optional((texts.field)(slot), &entry.text, |text| read(text, entry.typed_in))
    }

    pub(super) fn quantity<Q: InSi>(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        kind: &QuantityField<Q>,
    ) -> Optional<Q> {
        self.text(texts, slot, |text, units| kind.parse(text, units))
    }

    /// A percentage as a fraction.
    pub(super) fn fraction(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        allowed: RangeInclusive<f64>,
    ) -> Optional<f64> {
        self.text(texts, slot, |text, _| parse_fraction(text, allowed))
    }

    /// A bare number.
    pub(super) fn factor(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        allowed: RangeInclusive<f64>,
    ) -> Optional<f64> {
        self.text(texts, slot, |text, _| parse_factor(text, allowed))
    }

    /// A whole number from 1.
    pub(super) fn count(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        most: u32,
    ) -> Optional<u32> {
        self.text(texts, slot, |text, _| {
            let value = parse_factor(text, 1.0..=f64::from(most))?;
            // In range, so only a fraction can be lost.
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "in range")]
            let whole = value as u32;
            if f64::from(whole).to_bits() == value.to_bits() {
                Ok::<_, FieldProblem>(whole)
            } else {
                Err(hardware_problems::NotWhole { given: text.trim() }.sentence().into())
            }
        })
    }

    /// A value that has to be given.
    pub(super) fn needed<T>(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        value: Optional<T>,
        missing: Message,
    ) -> Option<T> {
        self.reader.required((texts.field)(slot), value, missing)
    }

    /// A value that is taken as something usual when it is not given.
    pub(super) fn usual<T>(
        &mut self,
        texts: &Texts<'_>,
        slot: HardwareField,
        value: Optional<T>,
        usual: T,
        shown: impl Into<Taken>,
    ) -> Option<T> {
        let given = value?;
        if given.is_none() {
            self.assumptions.push(Assumption { field: (texts.field)(slot), taken: shown.into() });
        }
        Some(given.unwrap_or(usual))
    }
}
