//! What is in the tank now, and which calibration may be selected on it.

use uom::si::volume::milliliter;

use super::history::{History, LogReading, OldBlend};
use super::settle::{Need, NoneUsable, Prospects, Remedy, Standing, Station, contents};
use crate::answers::reading::Reader;
use crate::calibration::{Calibration, Judgement, Verdict};
use crate::document::{Document, Field, FuelForm, Moment, What};
use crate::quantity::notation::{Entry, Printer};
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
    /// What has to be looked up or put right for it, whatever else is done.
    pub needs: Vec<Need>,
    /// What would then make it usable, each by itself, where it is not.
    pub remedies: Vec<Remedy>,
}

impl TankVerdict {
    fn standing(&self) -> Standing<'_> {
        (&self.calibration, self.judgement.verdict, &self.needs, &self.remedies)
    }
}

/// All that an answer depends on: equal questions have equal answers.
#[derive(Clone, Debug, PartialEq)]
pub struct TankQuestion {
    course: LogReading,
    offers: Vec<FuelForm>,
    step: Entry,
}

impl TankQuestion {
    /// The question that a document asks.
    pub fn of(document: &Document, printer: &Printer) -> Self {
        Self {
            course: LogReading::of(&document.here, printer),
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
    /// What is left where none of them may be selected.
    pub none_usable: Option<NoneUsable>,
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
                let extras = fuel.content.extras;
                let (share, ron) = (offer.share, offer.ron);
                let pour = Pour { volume, share, extras, ron, mon: fuel.mon };
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
        let prospects = (!all_usable).then(|| {
            let (fuels, reserve) = (pours.as_slice(), known.reserve.unwrap_or_default());
            let station = Station { estimator, fuels, capacity, reserve, step };
            Prospects::new(station, reading_of(reading))
        });
        let verdicts: Vec<TankVerdict> = calibrations
            .into_iter()
            .zip(judgements)
            .map(|((id, calibration), judgement)| {
                let (needs, remedies) = prospects
                    .as_ref()
                    .filter(|_| judgement.verdict != Verdict::Usable)
                    .map(|it| it.remedies(&calibration, &judgement))
                    .unwrap_or_default();
                TankVerdict { id, calibration, judgement, needs, remedies }
            })
            .collect();
        let all: Vec<Standing> = verdicts.iter().map(TankVerdict::standing).collect();
        let none_usable = NoneUsable::of(&all, estimate.share.expected());
        Some(Self {
            estimate,
            as_of: history.as_of()?,
            capacity,
            verdicts,
            none_usable,
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
