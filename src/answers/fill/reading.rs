//! From typed texts to the fill they describe. All input is checked here, once.

use super::refusal::say;
use crate::answers::field_error::FieldError;
use crate::answers::reading::{FuelRead, Known, Reader};
use crate::calibration::{Calibration, FluidState};
use crate::document::{
    AimForm, ContentsOf, ContentsPart, Document, Field, FillForm, FuelPart, StartForm, StopRuleForm,
};
use crate::fill::{Aim, CheckedProblem, Offer, Problem, StopRule};
use crate::fuel::{Content, Corner, Extras, HydrocarbonBase, Mixture, MolarDensity};
use crate::message::keys::problems;
use crate::quantity::notation::{LITRE, Printer, parse_share};
use crate::quantity::{Band, Consumption, Share, Volume};
use crate::tank::Tank;
use crate::tank::{CLICK_ERROR_L, DISPENSER_ERROR, Doubt, Estimator};

/// The fill that the texts describe.
#[derive(Clone, Debug, PartialEq)]
pub struct FillAsked {
    /// The fill.
    pub problem: CheckedProblem,
    /// The fuels on offer, in the order of the problem's offers.
    pub fuels: Vec<FuelRead>,
    /// What is in the tank beside petrol and ethanol.
    pub tank_extras: Extras,
    /// The motor octane number of what is in the tank.
    pub tank_mon: Option<f64>,
    /// What of a level read now does not fit with the log.
    pub doubt: Option<Doubt>,
    /// The reference fuel for comparisons.
    pub reference: Share,
    /// Consumption on the reference fuel.
    pub consumption: Option<Consumption>,
    /// The calibrations, with their ids.
    pub calibrations: Vec<(u32, Calibration)>,
    /// Whether nothing more is wanted than to know what is in.
    pub as_poured: bool,
    /// Whether the tank is to be filled as far as the stop rule says even where that
    /// breaks the aim.
    pub anyway: bool,
    /// Where an octane number is missing that the aim asks for: the plan then leaves
    /// octane out, and no verdict counts on it.
    pub octane_missing: Vec<Field>,
    /// The injection fluid.
    pub fluid: FluidState,
    /// The step in which a person can stop the pump.
    pub pump_step: Option<Volume>,
}

impl FillAsked {
    /// What is in the tank, as expected.
    pub(crate) fn present(&self) -> Mixture {
        let tank = &self.problem.tank;
        let content = Content { ethanol: tank.share, extras: self.tank_extras };
        let litre = LITRE.quantity(1.0);
        content.litre(Corner::Expected, &HydrocarbonBase::default())
            * (tank.level.expected() / litre).value
    }

    /// These volumes of the fuels on offer, poured together.
    pub(crate) fn mixture_of(&self, volumes: &[Volume]) -> Mixture {
        let litre = LITRE.quantity(1.0);
        let parts = self.fuels.iter().zip(volumes);
        parts.map(|(fuel, volume)| fuel.litre * (*volume / litre).value).sum()
    }
}

/// What the texts mean, and what is wrong with them.
#[derive(Clone, Debug, PartialEq)]
pub struct FillReading {
    /// The fill, when enough of it is understood.
    pub asked: Option<FillAsked>,
    /// What is wrong, in the order of the fields.
    pub field_errors: Vec<FieldError>,
}

/// What a fill starts from.
struct Start {
    tank: Tank,
    extras: Extras,
    mon: Option<f64>,
    doubt: Option<Doubt>,
}

/// Reads the document's texts.
///
/// `log` is what the log tells of the tank, for a fill that starts from there.
pub fn interpret(document: &Document, log: Option<&Estimator>, printer: &Printer) -> FillReading {
    let mut reader = Reader::of_money(printer, &document.settings);
    let asked = reader.asked(document, log);
    FillReading { asked, field_errors: reader.field_errors }
}

impl Reader<'_> {
    fn asked(&mut self, document: &Document, log: Option<&Estimator>) -> Option<FillAsked> {
        let (car, fill) = (&document.here.car, &document.here.fill);
        let known = self.car(car);
        let (capacity, consumption) = (known.capacity, known.consumption);
        let step = &document.settings.pump_step;
        let pump_step = self.volume(Field::PumpStep, step, None).flatten();
        let calibrations = self.calibrations(&car.calibrations);
        let start = match fill.start {
            StartForm::Typed => self.typed_start(fill, &known),
            StartForm::Log => self.start_from_log(fill, &known, log),
        };
        let (offers, fuels) = fill
            .offers
            .iter()
            .filter_map(|form| {
                let field = |part| Field::Fuel(form.id, part);
                self.fuel(form, field, capacity)
            })
            .unzip::<_, _, Vec<_>, Vec<_>>();
        if fill.offers.is_empty() {
            self.ask_for(Field::Offers, problems::ADD_FUELS_ON_OFFER_HERE);
        }
        let aim = self.aim(fill, &calibrations);
        let stop = self.stop(fill, &known);
        let (aim, ron_min) = aim?;
        let stop = stop?;
        // A fuel that could not be read would make the plan wrong, not smaller.
        if offers.len() < fill.offers.len() || offers.is_empty() {
            return None;
        }
        let Start { mut tank, extras, mon, doubt } = start?;
        if fill.clicked {
            tank.level = level_by_click(&tank, &offers);
        }
        let is_empty = tank.level.expected() <= tank.capacity * 0.0;
        if is_empty && stop == StopRule::Least && fill.aim != AimForm::AsPoured {
            self.report(Field::Stop, problems::EMPTY_TANK_HAS_NO_BLEND);
            return None;
        }
        let octane_missing = ron_min.map_or_else(Vec::new, |_| {
            octane_missing(&tank, &fuels, |place| Some(offers[place].ron))
        });
        let problem = Problem {
            tank,
            offers,
            aim,
            ron_min: ron_min.filter(|_| octane_missing.is_empty()),
            stop,
            objective: stop.usual_objective(),
            molar_density: MolarDensity::default(),
            meter_error: DISPENSER_ERROR.value,
        };
        match problem.checked() {
            Ok(problem) => Some(FillAsked {
                problem,
                fuels,
                tank_extras: extras,
                tank_mon: mon,
                doubt,
                reference: known.reference,
                consumption,
                calibrations,
                as_poured: fill.aim == AimForm::AsPoured,
                anyway: fill.anyway,
                octane_missing,
                fluid: car.fluid,
                pump_step,
            }),
            Err(error) => {
                let (field, message) = say(&error, &fill.offers, self.printer);
                if error.is_missing() {
                    self.ask_for(field, message);
                } else {
                    self.report(field, message);
                }
                None
            }
        }
    }

    /// What is in the tank, from what was typed.
    fn typed_start(&mut self, fill: &FillForm, known: &Known) -> Option<Start> {
        let contents = self.contents(&fill.contents, ContentsOf::Fill, known)?;
        let tank = Tank {
            capacity: known.capacity?,
            level: contents.level,
            share: contents.share,
            ron: contents.ron,
            reserve: known.reserve?,
        };
        Some(Start { tank, extras: contents.extras, mon: contents.mon, doubt: None })
    }

    /// What is in the tank, from the log and, if one was read just now, the level.
    fn start_from_log(
        &mut self,
        fill: &FillForm,
        known: &Known,
        log: Option<&Estimator>,
    ) -> Option<Start> {
        let level = self.level(&fill.contents.level, ContentsOf::Fill, known)?;
        let Some(log) = log else {
            self.ask_for(Field::Start, problems::LOG_TELLS_NOTHING_TANK_YET);
            return None;
        };
        let mut log = log.clone();
        let doubt = level.and_then(|level| log.take(&level));
        let estimate = log.estimate();
        let tank = Tank {
            capacity: known.capacity?,
            level: estimate.level,
            share: estimate.share,
            ron: estimate.ron.map(|ron| ron.low()),
            reserve: known.reserve?,
        };
        let mon = estimate.mon.map(|mon| mon.low());
        Some(Start { tank, extras: estimate.extras, mon, doubt })
    }

    fn aim(
        &mut self,
        fill: &FillForm,
        calibrations: &[(u32, Calibration)],
    ) -> Option<(Aim, Option<f64>)> {
        match fill.aim {
            AimForm::Share => {
                let share = self.optional(Field::AimShare, &fill.aim_share, parse_share);
                let share =
                    self.required(Field::AimShare, share, problems::GIVE_BLEND_YOU_WANT_SUCH)?;
                Some((Aim::share(share), None))
            }
            // Any blend will do, whatever it turns out to be.
            AimForm::AsPoured => Some((Aim::window(Share::ZERO, Share::ONE).ok()?, None)),
            AimForm::Calibration(wanted) => {
                let found = calibrations.iter().find(|(id, _)| *id == wanted);
                let Some((_, calibration)) = found else {
                    self.report(
                        Field::AimCalibration,
                        problems::THIS_CALIBRATION_INCOMPLETE_OR_GONE,
                    );
                    return None;
                };
                let aim = Aim::window(calibration.low, calibration.high).ok()?;
                Some((aim, calibration.ron_min))
            }
        }
    }

    fn stop(&mut self, fill: &FillForm, known: &Known) -> Option<StopRule> {
        if fill.aim == AimForm::AsPoured {
            return Some(StopRule::Least);
        }
        match fill.stop {
            StopRuleForm::Brim => Some(StopRule::Brim),
            StopRuleForm::Least => Some(StopRule::Least),
            StopRuleForm::Level => {
                let level = self.level_wanted(Field::StopLevel, &fill.stop_level, known);
                self.required(Field::StopLevel, level, problems::GIVE_LEVEL_STOP_SUCH_3)
                    .map(StopRule::Level)
            }
            StopRuleForm::AtMost => {
                let most = self.volume(Field::StopVolume, &fill.stop_volume, known.capacity);
                self.required(Field::StopVolume, most, problems::GIVE_VOLUME_STOP_AFTER)
                    .map(StopRule::AtMost)
            }
            StopRuleForm::Budget => {
                let money = self.money(Field::StopMoney, &fill.stop_money);
                self.required(Field::StopMoney, money, problems::GIVE_SUM_MONEY_STOP_AFTER)
                    .map(StopRule::Budget)
            }
        }
    }
}

/// Where an octane number is missing: of what is in the tank, and of the fuels that count.
/// `octane` tells that of a fuel by its place, or that the fuel does not count.
pub(crate) fn octane_missing(
    tank: &Tank,
    fuels: &[FuelRead],
    octane: impl Fn(usize) -> Option<Option<f64>>,
) -> Vec<Field> {
    let of_tank = tank.ron.is_none() && tank.level.expected() > Volume::default();
    let of_fuels = fuels.iter().enumerate().filter(|(place, _)| octane(*place) == Some(None));
    let of_fuels = of_fuels.map(|(_, fuel)| Field::Fuel(fuel.id, FuelPart::Octane));
    of_tank
        .then_some(Field::Contents(ContentsOf::Fill, ContentsPart::Octane))
        .into_iter()
        .chain(of_fuels)
        .collect()
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
    let low = before - LITRE.quantity(CLICK_ERROR_L.value);
    Band::enclosing(before, [if low > nothing { low } else { nothing }, before])
        .unwrap_or(tank.level)
}
