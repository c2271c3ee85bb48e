//! The parts that typed texts describe: the car, its calibrations, fuels, and
//! what is in the tank.

use crate::message::keys::problems;
use uom::si::volume::liter;

use super::stated_share::ShareOf;
use super::{Optional, Reader};
use crate::answers::problem::FieldProblem;
use crate::calibration::Calibration;
use crate::document::{
    CalibrationForm, CalibrationPart, Car, ContentsForm, ContentsOf, ContentsPart, Field, FuelForm,
    FuelPart, LevelForm,
};
use crate::fill::{Aim, Offer};
use crate::fuel::{Content, Corner, Extras, HydrocarbonBase, Mixture};
use crate::quantity::notation::quantities::CONSUMPTION;
use crate::quantity::notation::{
    Entry, LITRE, LevelText, OctaneFigure, Rate, parse_octane, parse_share,
};
use crate::quantity::{Band, Consumption, Share, Volume};
use crate::tank::{CLICK_ERROR_L, Evidence, LevelReading, RangeDisplay, Vehicle};

/// What is known of the car.
pub(crate) struct Known {
    pub(crate) capacity: Option<Volume>,
    /// `None` where it cannot be: nothing is planned with another one than was meant.
    pub(crate) reserve: Option<Volume>,
    pub(crate) consumption: Option<Consumption>,
    pub(crate) reference: Share,
    /// The fuel in pump, lines and rail.
    pub(crate) line: Option<Volume>,
    /// What the display of the distance left counts down to.
    pub(crate) range_display: RangeDisplay,
}

impl Known {
    /// The car as the tank's estimate needs it.
    pub(crate) fn vehicle(&self) -> Option<Vehicle> {
        Some(Vehicle {
            capacity: self.capacity?,
            consumption: self.consumption,
            reference: self.reference,
        })
    }
}

/// What is in the tank, as stated.
pub(crate) struct Stated {
    pub(crate) level: Band<Volume>,
    pub(crate) share: Band<Share>,
    pub(crate) extras: Extras,
    pub(crate) ron: Option<f64>,
    pub(crate) mon: Option<f64>,
}

/// What is known of a fuel beyond what the fill's rows need.
#[derive(Clone, Debug, PartialEq)]
pub struct FuelRead {
    /// Tells it apart, as in the document.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// Its motor octane number, at least.
    pub mon: Option<f64>,
    /// What it may hold.
    pub content: Content,
    /// The rate of its price, where that was typed in another currency.
    pub rate: Option<Rate>,
    /// One litre of it at 15 degrees Celsius, as expected.
    pub litre: Mixture,
}

impl Reader<'_> {
    pub(crate) fn car(&mut self, car: &Car) -> Known {
        let capacity = self.volume(Field::Capacity, &car.capacity, None);
        let capacity = self.required(Field::Capacity, capacity, problems::GIVE_SIZE_TANK);
        let reserve = self.reserve(&car.reserve, capacity);
        let units = car.consumption.typed_in;
        let consumption = self
            .optional(Field::Consumption, &car.consumption.text, |text| {
                CONSUMPTION.parse(text, units)
            })
            .flatten();
        let reference = self.optional(Field::Reference, &car.reference, parse_share).flatten();
        let line = self.volume(Field::Line, &car.line, None).flatten();
        let reference = reference.unwrap_or(Share::ZERO);
        Known { capacity, reserve, consumption, reference, line, range_display: car.range_display }
    }

    /// The reserve; nothing where none was given.
    fn reserve(&mut self, reserve: &Entry, capacity: Option<Volume>) -> Option<Volume> {
        let reserve = self.volume(Field::Reserve, reserve, capacity)?.unwrap_or_default();
        match capacity {
            Some(capacity) if reserve > capacity => {
                let too_large = problems::ReserveTooLarge {
                    reserve: self.printer.volume(reserve),
                    tank: self.printer.volume(capacity),
                };
                self.report(Field::Reserve, too_large.sentence());
                None
            }
            _ => Some(reserve),
        }
    }

    /// A level that was read, if one was.
    pub(crate) fn level(
        &mut self,
        form: &LevelForm,
        of: ContentsOf,
        known: &Known,
    ) -> Optional<Evidence> {
        let reading = form.reading;
        let field = Field::Contents(of, ContentsPart::Level);
        let error_field = Field::Contents(of, ContentsPart::LevelError);
        let level = self.level_text(field, &form.level, known.capacity, known.consumption);
        let error = self.volume(error_field, &form.error, known.capacity);
        let Some(level) = level? else { return Some(None) };
        let capacity = known.capacity?;
        let (level, usual) = self.level_of(level, field, known, capacity)?;
        let error = error?.or(usual);
        if level > capacity {
            let overfull = problems::LevelAboveTank {
                level: self.printer.volume(level),
                tank: self.printer.volume(capacity),
            };
            self.report(field, overfull.sentence());
            return None;
        }
        let click = Volume::new::<liter>(CLICK_ERROR_L.value);
        if reading == LevelReading::Brimmed && level < capacity - click * 2.0 {
            let level = self.printer.volume(level);
            self.report(field, problems::NotBrimmed { level }.sentence());
            return None;
        }
        Some(Some(Evidence::Level { level, reading, error }))
    }

    /// The level that a text tells, and its error where it has one of its own.
    fn level_of(
        &mut self,
        text: LevelText,
        field: Field,
        known: &Known,
        capacity: Volume,
    ) -> Option<(Volume, Option<Volume>)> {
        let fuel = match text {
            LevelText::Volume(level) => return Some((level, None)),
            LevelText::Lasting(fuel) => fuel,
        };
        let Some((level, error)) = known.range_display.level(fuel, known.reserve?, capacity) else {
            self.report(field, problems::DISPLAY_COUNTS_DOWN_RESERVE_GIVE);
            return None;
        };
        // A display may promise some more than a full tank gives.
        let level = if level > capacity && level - error <= capacity { capacity } else { level };
        Some((level, Some(error)))
    }

    /// The level at which the display shows a distance, or that is given as it is.
    pub(crate) fn level_wanted(
        &mut self,
        field: Field,
        entry: &Entry,
        known: &Known,
    ) -> Optional<Volume> {
        let level = self.level_text(field, entry, known.capacity, known.consumption)?;
        Some(match level {
            Some(LevelText::Lasting(fuel)) if known.range_display == RangeDisplay::ToReserve => {
                Some(fuel + known.reserve?)
            }
            Some(LevelText::Volume(level) | LevelText::Lasting(level)) => Some(level),
            None => None,
        })
    }

    /// What is in the tank, as stated.
    pub(crate) fn contents(
        &mut self,
        form: &ContentsForm,
        of: ContentsOf,
        known: &Known,
    ) -> Option<Stated> {
        let field = |part| Field::Contents(of, part);
        let level = self.level(&form.level, of, known);
        let level = self.required(
            field(ContentsPart::Level),
            level,
            problems::SAY_WHAT_TANK_VOLUME_FRACTION,
        );
        let Some(Evidence::Level { level, reading, error }) = level else { return None };
        let is_empty = level <= Volume::default()
            && form.share.trim().is_empty()
            && form.share_range.trim().is_empty();
        let share = if is_empty {
            // What a gauge leaves in an empty tank may be anything.
            Band::new(Share::ZERO, Share::ZERO, Share::ONE).ok()
        } else {
            self.share(
                (field(ContentsPart::Share), &form.share),
                (field(ContentsPart::ShareRange), &form.share_range),
                ShareOf::Tank(form.how_sure),
                problems::GIVE_ETHANOL_SHARE_WHAT_TANK,
            )
        };
        let extras = self.extras(&form.extras, share, &|part| field(ContentsPart::Extra(part)));
        let expected = share.map(|share| share.expected());
        let octane = self.octane(field(ContentsPart::Octane), &form.octane, expected);
        let mon = self.optional(field(ContentsPart::Mon), &form.mon, parse_mon);
        let (octane, mon) = (octane?, mon?);
        Some(Stated {
            level: reading.band(level, known.capacity?, error),
            share: share?,
            extras: extras?,
            ron: octane.map(|(ron, _)| ron),
            mon: mon.or(octane.and_then(|(_, mon)| mon)),
        })
    }

    /// A fuel, with the fields that its parts stand in.
    pub(crate) fn fuel(
        &mut self,
        form: &FuelForm,
        field: impl Fn(FuelPart) -> Field,
        capacity: Option<Volume>,
    ) -> Option<(Offer, FuelRead)> {
        let share = self.share(
            (field(FuelPart::Share), &form.share),
            (field(FuelPart::ShareRange), &form.share_range),
            ShareOf::Fuel(form.how_sure, form.grade.as_deref()),
            problems::GIVE_ETHANOL_SHARE_OR_WHAT,
        );
        let extras = self.extras(&form.extras, share, &|part| field(FuelPart::Extra(part)));
        let expected = share.map(|share| share.expected());
        let octane = self.octane(field(FuelPart::Octane), &form.octane, expected);
        let mon = self.optional(field(FuelPart::Mon), &form.mon, parse_mon);
        let units = form.price.typed_in;
        let price = self.price(field(FuelPart::Price), &form.price.text, units);
        let limit = self.volume(field(FuelPart::Limit), &form.limit, capacity);
        let poured = self.volume(field(FuelPart::Poured), &form.poured, capacity);
        let (share, octane, limit, price) = (share?, octane?, limit?, price?);
        let content = Content { ethanol: share, extras: extras? };
        let ron = octane.map(|(ron, _)| ron);
        let mon = mon?.or(octane.and_then(|(_, mon)| mon));
        let litre = LITRE.quantity(1.0);
        let offer = Offer {
            share,
            price: price.map(|(price, _)| price),
            ron,
            limit,
            use_all: form.use_all && limit.is_some(),
            poured: poured?.unwrap_or(litre * 0.0),
        };
        let fuel = FuelRead {
            id: form.id,
            name: form.name.clone(),
            mon,
            rate: price.and_then(|(_, rate)| rate),
            litre: content.litre(Corner::Expected, &HydrocarbonBase::default()),
            content,
        };
        Some((offer, fuel))
    }

    pub(crate) fn calibrations(&mut self, forms: &[CalibrationForm]) -> Vec<(u32, Calibration)> {
        forms.iter().filter_map(|form| Some((form.id, self.calibration(form)?))).collect()
    }

    fn calibration(&mut self, form: &CalibrationForm) -> Option<Calibration> {
        let field = |part| Field::Calibration(form.id, part);
        let low = self.optional(field(CalibrationPart::Low), &form.low, parse_share);
        let low = self.required(
            field(CalibrationPart::Low),
            low,
            problems::GIVE_WEAKEST_BLEND_AUTHOR_ALLOWS,
        );
        let high = self.optional(field(CalibrationPart::High), &form.high, parse_share);
        let high = self.required(
            field(CalibrationPart::High),
            high,
            problems::GIVE_STRONGEST_BLEND_AUTHOR_ALLOWS,
        );
        let written =
            self.optional(field(CalibrationPart::WrittenFor), &form.written_for, parse_share);
        let middle = low
            .zip(high)
            .map(|(low, high)| Share::clamped(f64::midpoint(low.fraction(), high.fraction())));
        let written_for = written.flatten().or(middle);
        let ron_min = self.octane(field(CalibrationPart::RonMin), &form.ron_min, written_for);
        let (low, high) = (low?, high?);
        if let Err(error) = Aim::window(low, high) {
            self.report(field(CalibrationPart::High), error);
            return None;
        }
        Some(Calibration {
            name: form.name.clone(),
            low,
            high,
            written_for: written?.or(middle)?,
            ron_min: ron_min?.map(|(ron, _)| ron),
            needs_fluid: form.needs_fluid,
        })
    }
}

/// A motor octane number: the same notation, never AKI.
fn parse_mon(text: &str) -> Result<f64, FieldProblem> {
    match parse_octane(text)? {
        OctaneFigure::Unmarked(mon) => Ok(mon),
        OctaneFigure::Ron(_) | OctaneFigure::Aki(_) => {
            Err(problems::NotAMon { given: text.trim() }.sentence().into())
        }
    }
}
