//! From typed texts to the fill they describe. All input is checked here, once.

use std::fmt::Display;

use super::complaint::{CalibrationPart, Complaint, Field, FuelPart};
use super::document::Document;
use super::forms::{AimForm, CalibrationForm, Entry, FuelForm, StopForm};
use super::printer::Printer;
use super::refusal::say;
use crate::calibration::{Calibration, FluidState};
use crate::fill::{Aim, Offer, Problem, Stop, Tank};
use crate::fuel::{HydrocarbonBase, Mixture, MolarDensity, ron_mon_from_aki};
use crate::quantity::notation::{
    Consumption, OctaneFigure, VolumeField, VolumeUnit, parse_consumption, parse_money,
    parse_octane, parse_price, parse_share, parse_share_band, parse_volume,
};
use crate::quantity::{Band, Share, Volume};
use crate::tank::{CLICK_ERROR_L, DISPENSER_ERROR, LevelReading};

/// The largest tank, in litres, that a text is taken for.
pub(super) const LARGEST_TANK_L: f64 = 1000.0;

/// What is known of a fuel beyond what the fill's rows need.
#[derive(Clone, Debug, PartialEq)]
pub struct Fuel {
    /// Tells it apart, as in the document.
    pub id: u32,
    /// Its name.
    pub name: String,
    /// Its motor octane number, at least.
    pub mon: Option<f64>,
    /// One litre of it at 15 degrees Celsius, as expected.
    pub litre: Mixture,
}

/// The fill that the texts describe.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// The fill.
    pub problem: Problem,
    /// The fuels on offer, in the order of the problem's offers.
    pub fuels: Vec<Fuel>,
    /// The motor octane number of what is in the tank.
    pub tank_mon: Option<f64>,
    /// The reference fuel for comparisons.
    pub reference: Share,
    /// Consumption on the reference fuel.
    pub consumption: Option<Consumption>,
    /// The calibrations, with their ids.
    pub calibrations: Vec<(u32, Calibration)>,
    /// Whether nothing more is wanted than to know what is in.
    pub as_poured: bool,
    /// The injection fluid.
    pub fluid: FluidState,
    /// The step in which a person can stop the pump.
    pub pump_step: Option<Volume>,
}

impl Asked {
    /// These volumes of the fuels on offer, poured together.
    pub(super) fn mixture_of(&self, volumes: &[Volume]) -> Mixture {
        let litre = VolumeUnit::Litre.quantity(1.0);
        let parts = self.fuels.iter().zip(volumes);
        parts.map(|(fuel, volume)| fuel.litre * (*volume / litre).value).sum()
    }
}

/// What the texts mean, and what is wrong with them.
#[derive(Clone, Debug, PartialEq)]
pub struct Interpretation {
    /// The fill, when enough of it is understood.
    pub asked: Option<Asked>,
    /// What is wrong, in the order of the fields.
    pub complaints: Vec<Complaint>,
}

/// Reads the document's texts.
pub fn interpret(document: &Document, printer: &Printer) -> Interpretation {
    let mut reader = Reader { document, printer, complaints: Vec::new() };
    let asked = reader.asked();
    Interpretation { asked, complaints: reader.complaints }
}

struct Reader<'a> {
    document: &'a Document,
    printer: &'a Printer,
    complaints: Vec<Complaint>,
}

/// A value that may be left blank: `Some(None)` when it is, `None` when what was
/// typed cannot be read.
type Optional<T> = Option<Option<T>>;

impl Reader<'_> {
    fn complain(&mut self, field: Field, message: impl Display) {
        let message = message.to_string();
        // A sentence begins with a capital letter, whatever the error began with.
        let mut letters = message.chars();
        let first = letters.next().map(|c| c.to_uppercase().to_string()).unwrap_or_default();
        self.complaints.push(Complaint { field, message: first + letters.as_str() });
    }

    fn take<T, E: Display>(&mut self, field: Field, read: Result<T, E>) -> Option<T> {
        match read {
            Ok(value) => Some(value),
            Err(error) => {
                self.complain(field, error);
                None
            }
        }
    }

    fn optional<T, E: Display>(
        &mut self,
        field: Field,
        text: &str,
        read: impl FnOnce(&str) -> Result<T, E>,
    ) -> Optional<T> {
        if text.trim().is_empty() { Some(None) } else { self.take(field, read(text)).map(Some) }
    }

    fn required<T>(&mut self, field: Field, value: Optional<T>, what: &str) -> Option<T> {
        if let Some(None) = value {
            self.complain(field, what);
        }
        value.flatten()
    }

    fn volume(
        &mut self,
        field: Field,
        entry: &Entry,
        tank: Option<Volume>,
        consumption: Option<Consumption>,
    ) -> Optional<Volume> {
        let form = VolumeField {
            unit: entry.typed_in.volume(),
            tank,
            consumption,
            largest: VolumeUnit::Litre.quantity(LARGEST_TANK_L),
        };
        self.optional(field, &entry.text, |text| parse_volume(text, &form))
    }

    fn asked(&mut self) -> Option<Asked> {
        let document = self.document;
        let (car, fill) = (&document.here.car, &document.here.fill);
        let capacity = self.volume(Field::Capacity, &car.capacity, None, None);
        let capacity = self.required(Field::Capacity, capacity, "Give the size of the tank.");
        let reserve = self.volume(Field::Reserve, &car.reserve, capacity, None);
        let unit = car.consumption.typed_in.consumption();
        let consumption = self
            .optional(Field::Consumption, &car.consumption.text, |text| {
                parse_consumption(text, unit)
            })
            .flatten();
        let reference = self.optional(Field::Reference, &car.reference, parse_share).flatten();
        let step = &document.settings.pump_step;
        let pump_step = self.volume(Field::PumpStep, step, None, None).flatten();
        let calibrations = self.calibrations();
        let tank = self.tank(capacity, reserve.flatten(), consumption);
        let tank_mon = self.optional(Field::TankMon, &fill.mon, parse_mon);
        let (offers, fuels) = self.fuels(capacity);
        if fill.offers.is_empty() {
            self.complain(Field::Offers, "No fuel is on offer: add one.");
        }
        let aim = self.aim(&calibrations);
        let stop = self.stop(capacity, consumption);
        let (aim, ron_min) = aim?;
        let stop = stop?;
        // A fuel that could not be read would make the plan wrong, not smaller.
        if offers.len() < fill.offers.len() || offers.is_empty() {
            return None;
        }
        let mut tank = tank?;
        if fill.clicked {
            tank.level = level_by_click(&tank, &offers);
        }
        let is_empty = tank.level.expected() <= tank.capacity * 0.0;
        if is_empty && stop == Stop::Least && fill.aim != AimForm::AsPoured {
            self.complain(
                Field::Stop,
                "An empty tank has no blend to change: choose how much to fill.",
            );
            return None;
        }
        let problem = Problem {
            tank,
            offers,
            aim,
            ron_min,
            stop,
            objective: stop.usual_objective(),
            molar_density: MolarDensity::default(),
            meter_error: DISPENSER_ERROR.value,
        };
        match problem.checked() {
            Ok(problem) => Some(Asked {
                problem,
                fuels,
                tank_mon: tank_mon.flatten(),
                reference: reference.unwrap_or(Share::ZERO),
                consumption,
                calibrations,
                as_poured: fill.aim == AimForm::AsPoured,
                fluid: car.fluid,
                pump_step,
            }),
            Err(error) => {
                let (field, message) = say(&error, &self.document.here.fill.offers, self.printer);
                self.complain(field, message);
                None
            }
        }
    }

    fn tank(
        &mut self,
        capacity: Option<Volume>,
        reserve: Option<Volume>,
        consumption: Option<Consumption>,
    ) -> Option<Tank> {
        let fill = &self.document.here.fill;
        let level = self.volume(Field::Level, &fill.level, capacity, consumption);
        let level = self.required(
            Field::Level,
            level,
            "Say what is in the tank: a volume, a fraction like 1/4, or a distance to empty.",
        );
        let error = self.volume(Field::LevelError, &fill.level_error, capacity, None);
        let nothing = level? * 0.0;
        let is_empty =
            level? <= nothing && fill.share.trim().is_empty() && fill.share_range.trim().is_empty();
        let share = if is_empty {
            // What a gauge leaves in an empty tank may be anything.
            Band::new(Share::ZERO, Share::ZERO, Share::ONE).ok()
        } else {
            self.share(
                (Field::TankShare, &fill.share),
                (Field::TankShareRange, &fill.share_range),
                "Give the ethanol share of what is in the tank, or what it may be.",
            )
        };
        let octane = self.octane(Field::TankOctane, &fill.octane);
        let capacity = capacity?;
        if level? > capacity {
            let message = format!(
                "{} cannot be in a tank of {}. Correct the level, or the tank's size under Car.",
                self.printer.volume(level?),
                self.printer.volume(capacity)
            );
            self.complain(Field::Level, message);
            return None;
        }
        let click = VolumeUnit::Litre.quantity(CLICK_ERROR_L.value);
        if fill.reading == LevelReading::Brimmed && level? < capacity - click * 2.0 {
            let message = format!(
                "{} is not a brimmed tank. Say full, or how the level was read.",
                self.printer.volume(level?)
            );
            self.complain(Field::Level, message);
            return None;
        }
        Some(Tank {
            capacity,
            level: fill.reading.band(level?, capacity, error?),
            share: share?,
            ron: octane?.map(|(ron, _)| ron),
            reserve: reserve.unwrap_or(nothing),
        })
    }

    /// A share with its band, from the field for what is expected and the field
    /// for what it may be. Either is enough.
    fn share(
        &mut self,
        expected: (Field, &str),
        range: (Field, &str),
        missing: &str,
    ) -> Option<Band<Share>> {
        let typed = self.optional(expected.0, expected.1, parse_share_band)?;
        let may_be = self.optional(range.0, range.1, parse_share_band)?;
        match (typed, may_be) {
            (Some(typed), None) => Some(typed),
            (None, Some(may_be)) => Some(may_be),
            (None, None) => {
                self.complain(expected.0, missing);
                None
            }
            (Some(typed), Some(may_be)) => {
                let band = Band::new(may_be.low(), typed.expected(), may_be.high());
                if band.is_err() {
                    let message = format!(
                        "{} lies outside the {} given as possible. Correct one of them.",
                        self.printer.grade(typed.expected()),
                        self.printer.grade_band(may_be)
                    );
                    self.complain(range.0, message);
                }
                band.ok()
            }
        }
    }

    /// RON and, where only AKI was given, the MON that belongs to it.
    fn octane(&mut self, field: Field, text: &str) -> Optional<(f64, Option<f64>)> {
        let figure = self.optional(field, text, parse_octane)?;
        Some(figure.map(|figure| match figure {
            OctaneFigure::Ron(ron) | OctaneFigure::Unmarked(ron) => (ron, None),
            OctaneFigure::Aki(aki) => {
                let (ron, mon) = ron_mon_from_aki(aki);
                (ron, Some(mon))
            }
        }))
    }

    fn fuels(&mut self, capacity: Option<Volume>) -> (Vec<Offer>, Vec<Fuel>) {
        let document = self.document;
        document.here.fill.offers.iter().filter_map(|form| self.fuel(form, capacity)).unzip()
    }

    fn fuel(&mut self, form: &FuelForm, capacity: Option<Volume>) -> Option<(Offer, Fuel)> {
        let field = |part| Field::Fuel(form.id, part);
        let share = self.share(
            (field(FuelPart::Share), &form.share),
            (field(FuelPart::ShareRange), &form.share_range),
            "Give its ethanol share, or what that may be.",
        );
        let octane = self.octane(field(FuelPart::Octane), &form.octane);
        let mon = self.optional(field(FuelPart::Mon), &form.mon, parse_mon);
        let unit = form.price.typed_in.volume();
        let price =
            self.optional(field(FuelPart::Price), &form.price.text, |text| parse_price(text, unit));
        let limit = self.volume(field(FuelPart::Limit), &form.limit, capacity, None);
        let poured = self.volume(field(FuelPart::PutIn), &form.put_in, capacity, None);
        let (share, octane, limit) = (share?, octane?, limit?);
        let ron = octane.map(|(ron, _)| ron);
        let mon = mon?.or(octane.and_then(|(_, mon)| mon));
        let litre = VolumeUnit::Litre.quantity(1.0);
        let base = HydrocarbonBase::default();
        let offer = Offer {
            share,
            price: price?,
            ron,
            limit,
            use_all: form.use_all && limit.is_some(),
            poured: poured?.unwrap_or(litre * 0.0),
        };
        let fuel = Fuel {
            id: form.id,
            name: form.name.clone(),
            mon,
            litre: Mixture::splash(litre, share.expected(), &base),
        };
        Some((offer, fuel))
    }

    fn calibrations(&mut self) -> Vec<(u32, Calibration)> {
        let forms = &self.document.here.car.calibrations;
        forms.iter().filter_map(|form| Some((form.id, self.calibration(form)?))).collect()
    }

    fn calibration(&mut self, form: &CalibrationForm) -> Option<Calibration> {
        let field = |part| Field::Calibration(form.id, part);
        let low = self.optional(field(CalibrationPart::Low), &form.low, parse_share);
        let low = self.required(
            field(CalibrationPart::Low),
            low,
            "Give the weakest blend that its author allows.",
        );
        let high = self.optional(field(CalibrationPart::High), &form.high, parse_share);
        let high = self.required(
            field(CalibrationPart::High),
            high,
            "Give the strongest blend that its author allows.",
        );
        let written =
            self.optional(field(CalibrationPart::WrittenFor), &form.written_for, parse_share);
        let ron_min = self.octane(field(CalibrationPart::RonMin), &form.ron_min);
        let (low, high) = (low?, high?);
        if let Err(error) = Aim::window(low, high) {
            self.complain(field(CalibrationPart::High), error);
            return None;
        }
        let middle = Band::exact(Share::clamped(f64::midpoint(low.fraction(), high.fraction())));
        Some(Calibration {
            name: form.name.clone(),
            low,
            high,
            written_for: written?.unwrap_or(middle.expected()),
            ron_min: ron_min?.map(|(ron, _)| ron),
            needs_fluid: form.needs_fluid,
        })
    }

    fn aim(&mut self, calibrations: &[(u32, Calibration)]) -> Option<(Aim, Option<f64>)> {
        let fill = &self.document.here.fill;
        match fill.aim {
            AimForm::Share => {
                let share = self.optional(Field::AimShare, &fill.aim_share, parse_share);
                let share =
                    self.required(Field::AimShare, share, "Give the blend you want: E30, say.")?;
                Some((Aim::share(share), None))
            }
            // Any blend will do, whatever it turns out to be.
            AimForm::AsPoured => Some((Aim::window(Share::ZERO, Share::ONE).ok()?, None)),
            AimForm::Calibration(wanted) => {
                let found = calibrations.iter().find(|(id, _)| *id == wanted);
                let Some((_, calibration)) = found else {
                    self.complain(
                        Field::AimCalibration,
                        "This calibration is incomplete or gone: see Car, or choose another aim.",
                    );
                    return None;
                };
                let aim = Aim::window(calibration.low, calibration.high).ok()?;
                Some((aim, calibration.ron_min))
            }
        }
    }

    fn stop(&mut self, capacity: Option<Volume>, consumption: Option<Consumption>) -> Option<Stop> {
        let fill = &self.document.here.fill;
        if fill.aim == AimForm::AsPoured {
            return Some(Stop::Least);
        }
        match fill.stop {
            StopForm::Brim => Some(Stop::Brim),
            StopForm::Least => Some(Stop::Least),
            StopForm::Level => {
                let level = self.volume(Field::StopLevel, &fill.stop_level, capacity, consumption);
                self.required(Field::StopLevel, level, "Give the level to stop at: 3/4, say.")
                    .map(Stop::Level)
            }
            StopForm::AtMost => {
                let most = self.volume(Field::StopVolume, &fill.stop_volume, capacity, None);
                self.required(Field::StopVolume, most, "Give the volume to stop after.")
                    .map(Stop::AtMost)
            }
            StopForm::Budget => {
                let money = self.optional(Field::StopMoney, &fill.stop_money, parse_money);
                self.required(Field::StopMoney, money, "Give the sum of money to stop after.")
                    .map(Stop::Budget)
            }
        }
    }
}

/// The level before the fill, told by the click at the end of it: what was put in
/// made the tank full, give or take how well a click repeats.
fn level_by_click(tank: &Tank, offers: &[Offer]) -> Band<Volume> {
    let poured: Volume = offers.iter().map(|offer| offer.poured).sum();
    let nothing = poured * 0.0;
    if poured <= nothing || poured > tank.capacity {
        return tank.level;
    }
    let before = tank.capacity - poured;
    let low = before - VolumeUnit::Litre.quantity(CLICK_ERROR_L.value);
    Band::enclosing(before, [if low > nothing { low } else { nothing }, before])
        .unwrap_or(tank.level)
}

/// A motor octane number: the same notation, never AKI.
fn parse_mon(text: &str) -> Result<f64, String> {
    match parse_octane(text).map_err(|error| error.to_string())? {
        OctaneFigure::Unmarked(mon) => Ok(mon),
        OctaneFigure::Ron(_) | OctaneFigure::Aki(_) => {
            Err(format!("“{}” is not a MON: give the number alone", text.trim()))
        }
    }
}
