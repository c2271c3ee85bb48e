//! What is in the tank now, and which calibration may be selected on it.

use uom::si::volume::milliliter;

use super::complaint::Field;
use super::document::Document;
use super::event::What;
use super::forms::{Entry, FuelForm};
use super::history::{Course, History, OldBlend};
use super::moment::Moment;
use super::printer::Printer;
use super::reader::Reader;
use super::settle::{Prospects, Remedy, contents};
use crate::calibration::{Calibration, Judgement, Verdict};
use crate::quantity::{Share, Volume};
use crate::tank::{Estimate, Pour, SENSOR_ERROR, ShareReading, ShareReadingKind, TubeTest};

/// The verdict on a calibration, and what would make it usable.
#[derive(Clone, Debug, PartialEq)]
pub struct TankVerdict {
    /// The calibration's number.
    pub id: u32,
    /// The calibration.
    pub calibration: Calibration,
    /// The verdict.
    pub judgement: Judgement,
    /// What would make it usable, where it is not.
    pub remedies: Vec<Remedy>,
}

/// All that an answer depends on: equal questions have equal answers.
#[derive(Clone, Debug, PartialEq)]
pub struct TankQuestion {
    course: Course,
    offers: Vec<FuelForm>,
    step: Entry,
}

impl TankQuestion {
    /// The question that a document asks.
    pub fn of(document: &Document, printer: &Printer) -> Self {
        Self {
            course: Course::of(&document.here, printer),
            offers: document.here.fuels_to_pour(),
            step: document.settings.pump_step.clone(),
        }
    }
}

/// What can be said of the tank after the last entry of the log.
#[derive(Clone, Debug, PartialEq)]
pub struct TankAnswer {
    /// What the tank holds.
    pub estimate: Estimate,
    /// When that was so.
    pub as_of: Moment,
    /// The size of the tank.
    pub capacity: Volume,
    /// The verdict on each calibration.
    pub verdicts: Vec<TankVerdict>,
    /// The kind of reading that the remedies speak of: a sensor's where the log
    /// shows that there is one, else a tube test.
    pub reading: ShareReadingKind,
    /// The names of the fuels that the remedies speak of.
    pub fuels: Vec<String>,
    /// How far the old blend still feeds the engine, after a fill.
    pub old_blend: Option<OldBlend>,
}

impl TankAnswer {
    /// What can be said of the tank; `None` while nothing is known of it.
    pub fn of(question: &TankQuestion, history: &History) -> Option<Self> {
        let estimator = history.estimator.as_ref()?;
        let estimate = estimator.estimate();
        let course = &question.course;
        let car = course.car();
        let mut reader = Reader::new(course.printer());
        let known = reader.car(car);
        let capacity = known.capacity?;
        let step = reader.volume(Field::PumpStep, &question.step, None).flatten();
        let step = step.unwrap_or_default();
        let (fuels, pours): (Vec<String>, Vec<Pour>) = question
            .offers
            .iter()
            .filter_map(|form| {
                let (offer, fuel) = reader.fuel(form, |part| Field::Fuel(form.id, part), None)?;
                let volume = Volume::default();
                let pour = Pour { volume, share: offer.share, ron: offer.ron, mon: fuel.mon };
                Some((fuel.name, pour))
            })
            .unzip();
        let has_sensor = course.log().events().any(|event| matches!(event.what, What::Sensor(_)));
        let reading =
            if has_sensor { ShareReadingKind::Sensor } else { ShareReadingKind::TubeTest };
        let calibrations = reader.calibrations(&car.calibrations);
        let judgements: Vec<Judgement> = calibrations
            .iter()
            .map(|(_, calibration)| calibration.judge(&contents(&estimate), car.fluid))
            .collect();
        let all_usable = judgements.iter().all(|it| it.verdict == Verdict::Usable);
        let prospects = (!all_usable)
            .then(|| Prospects::new(estimator, reading_of(reading), &pours, capacity, step));
        let verdicts = calibrations
            .into_iter()
            .zip(judgements)
            .map(|((id, calibration), judgement)| {
                let remedies = prospects
                    .as_ref()
                    .filter(|_| judgement.verdict != Verdict::Usable)
                    .map(|it| it.remedies(&calibration, car.fluid))
                    .unwrap_or_default();
                TankVerdict { id, calibration, judgement, remedies }
            })
            .collect();
        Some(Self {
            estimate,
            as_of: history.as_of()?,
            capacity,
            verdicts,
            reading,
            fuels,
            old_blend: history.old_blend,
        })
    }
}

/// The reading that such an instrument would give.
fn reading_of(kind: ShareReadingKind) -> impl Fn(Share) -> ShareReading {
    let standard_error = match kind {
        ShareReadingKind::Sensor => Share::clamped(SENSOR_ERROR.value),
        // With marks a millilitre apart; the error does not depend on the share.
        ShareReadingKind::TubeTest => {
            let ml = |value| Volume::new::<milliliter>(value);
            TubeTest::with_salt_water(ml(50.0)).map_or(Share::clamped(SENSOR_ERROR.value), |test| {
                test.reading(ml(1.0)).standard_error
            })
        }
    };
    move |share| ShareReading { share, standard_error, kind }
}
