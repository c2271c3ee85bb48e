//! The log replayed: what was in the tank after each entry.

use crate::answers::problem::FieldProblem;
use crate::message::keys::problems;
use std::sync::Arc;

use uom::si::volume::liter;

use crate::answers::reading::{Known, Reader};
use crate::document::{Car, CarFile, Event, Id, Log, Moment, What};
use crate::fill::economics;
use crate::fuel::{Corner, Extras, HydrocarbonBase, Mixture};
use crate::quantity::notation::Printer;
use crate::quantity::{Length, Share, Volume};
use crate::tank::{Doubt, Estimate, Estimator, Evidence};

/// What an entry made of the estimate.
///
/// It keeps the estimators themselves: an estimate takes longer to say than to
/// keep up, and of a long log only a part is ever shown.
#[derive(Clone, Debug)]
pub struct Replayed {
    /// The entry.
    pub event: Id,
    /// When it happened.
    pub time: Moment,
    before: Option<Box<Estimator>>,
    after: Option<Box<Estimator>>,
    /// What did not fit.
    pub doubts: Vec<Doubt>,
    /// Why the entry could not be used.
    pub unused: Option<FieldProblem>,
}

impl Replayed {
    /// What was known just before a fill, after the level read then.
    pub fn before(&self) -> Option<Estimate> {
        self.before.as_ref().map(|it| it.estimate())
    }

    /// What was known afterwards; `None` while nothing was.
    pub fn after(&self) -> Option<Estimate> {
        self.after.as_ref().map(|it| it.estimate())
    }

    /// Whether anything was known afterwards.
    pub fn is_known(&self) -> bool {
        self.after.is_some()
    }
}

/// How far the fuel from before a fill still feeds the engine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OldBlend {
    /// Its ethanol share, as expected.
    pub share: Share,
    /// What else it holds, as expected.
    pub extras: Extras,
    /// How far it feeds the engine after the fill.
    pub reach: Length,
    /// What of that is left, by the distances in the log since.
    pub left: Length,
}

/// What all of it depends on: equal inputs have equal histories.
#[derive(Clone, Debug, PartialEq)]
pub struct LogReading {
    log: Log,
    car: Car,
    printer: Printer,
}

impl LogReading {
    /// What the history of this car depends on.
    pub fn of(file: &CarFile, printer: &Printer) -> Self {
        Self { log: file.log.clone(), car: file.car.clone(), printer: printer.clone() }
    }

    pub(crate) fn log(&self) -> &Log {
        &self.log
    }

    pub(crate) fn car(&self) -> &Car {
        &self.car
    }

    pub(crate) fn printer(&self) -> &Printer {
        &self.printer
    }
}

/// The log of a car, replayed.
///
/// It is worked out anew from the entries whenever one of them changes, so that
/// an entry written late or put right counts as if it had always been there.
#[derive(Clone, Debug)]
pub struct History {
    /// What each entry made of the estimate, by time.
    pub replays: Arc<Vec<Replayed>>,
    /// The estimator after the last entry; `None` while nothing is known.
    pub estimator: Option<Estimator>,
    /// The old blend after the last fill.
    pub old_blend: Option<OldBlend>,
    /// What the tank holds, where that is known.
    pub capacity: Option<Volume>,
}

impl History {
    /// Replays the log.
    pub fn of(course: &LogReading) -> Self {
        let mut reader = Reader::new(&course.printer);
        let known = reader.car(&course.car);
        let mut replay = Replay { known, estimator: None, last_fill: None, replays: Vec::new() };
        for event in course.log.events() {
            replay.take(event, course);
        }
        let (old_blend, capacity) = (replay.old_blend(), replay.known.capacity);
        let replays = Arc::new(replay.replays);
        Self { replays, estimator: replay.estimator, old_blend, capacity }
    }

    /// What is in the tank after the last entry.
    pub fn estimate(&self) -> Option<Estimate> {
        self.estimator.as_ref().map(Estimator::estimate)
    }

    /// When the last entry that tells of the tank was made.
    pub fn as_of(&self) -> Option<Moment> {
        self.replays.iter().rev().find(|it| it.is_known()).map(|it| it.time)
    }

    /// What an entry made of the estimate.
    pub fn replayed(&self, event: &Id) -> Option<&Replayed> {
        self.replays.iter().find(|replayed| replayed.event == *event)
    }
}

struct Replay {
    known: Known,
    estimator: Option<Estimator>,
    /// Where among the replayed entries the last fill is, and how far was driven since.
    last_fill: Option<(usize, Length)>,
    replays: Vec<Replayed>,
}

impl Replay {
    fn take(&mut self, event: &Event, course: &LogReading) {
        let mut replayed = Replayed {
            event: event.id.clone(),
            time: event.time,
            before: None,
            after: None,
            doubts: Vec::new(),
            unused: None,
        };
        let mut reader = Reader::new(&course.printer);
        let told = reader.told(&event.what, &self.known, course.car.sensor_scale);
        let vehicle = self.known.vehicle();
        match (vehicle, told) {
            (None, _) => {
                replayed.unused = Some(problems::SIZE_TANK_NOT_KNOWN_SEE.into());
            }
            (_, None) => {
                replayed.unused = reader.field_errors.into_iter().next().map(|it| it.problem);
            }
            (Some(vehicle), Some(told)) => {
                let last = told.evidence.len().saturating_sub(1);
                for (index, evidence) in told.evidence.iter().enumerate() {
                    if self.estimator.is_none() && !tells_anything(evidence) {
                        continue;
                    }
                    let estimator = self.estimator.get_or_insert_with(|| Estimator::new(vehicle));
                    if index == last && matches!(evidence, Evidence::Fill { .. }) {
                        replayed.before = Some(Box::new(estimator.clone()));
                    }
                    replayed.doubts.extend(estimator.take(evidence));
                }
                if let Some((_, driven)) = &mut self.last_fill {
                    *driven += told.driven;
                }
                if matches!(event.what, What::Fill(_)) {
                    self.last_fill = Some((self.replays.len(), Length::default()));
                }
                if !told.evidence.is_empty() {
                    replayed.after = self.estimator.clone().map(Box::new);
                }
            }
        }
        self.replays.push(replayed);
    }

    /// How far the fuel in pump, lines and rail feeds the engine after the last
    /// fill (common practice, no source).
    fn old_blend(&self) -> Option<OldBlend> {
        let (fill, driven) = self.last_fill?;
        let before = self.replays[fill].before()?;
        let base = HydrocarbonBase::default();
        let share = before.share.expected();
        let litre = Volume::new::<liter>(1.0);
        let old =
            before.content().litre(Corner::Expected, &base) * (self.known.line? / litre).value;
        let reference = Mixture::splash(litre, self.known.reference, &base);
        let reach = economics::range(&old, self.known.consumption?, &reference)?;
        let left = if driven < reach { reach - driven } else { Length::default() };
        Some(OldBlend { share, extras: before.extras, reach, left })
    }
}

/// Whether an estimate can begin with this: driving and draining tell nothing of
/// a tank of which nothing is known.
fn tells_anything(evidence: &Evidence) -> bool {
    !matches!(
        evidence,
        Evidence::Drive { .. } | Evidence::Burned { .. } | Evidence::Drain { volume: Some(_) }
    )
}
