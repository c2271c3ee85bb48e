//! What would make a calibration usable: something to look up, a reading, so much of which
//! fuel, or, where nothing else is left, a workshop.

use uom::si::volume::liter;

use crate::calibration::{Calibration, Contents, FluidState, Judgement, Reason, Verdict};
use crate::quantity::{Share, Volume};
use crate::tank::{Estimate, Estimator, Evidence, LevelReading, Pour, ShareReading};

/// Something that would make a calibration usable.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Remedy {
    /// A reading of the ethanol share that comes out between these two.
    Reading {
        /// The weakest that would do.
        from: Share,
        /// The strongest that would do.
        to: Share,
    },
    /// At least so much of a fuel.
    Pour {
        /// The index of the fuel among those on offer.
        fuel: usize,
        /// How much.
        volume: Volume,
    },
    /// Driving on until so much is left, and then at least so much of a fuel.
    DriveDown {
        /// What is left then.
        level: Volume,
        /// The index of the fuel among those on offer.
        fuel: usize,
        /// How much.
        volume: Volume,
    },
    /// Having the tank drained, and filled anew.
    Drain {
        /// The index of the fuel that suits by itself; `None` where several have to be
        /// blended.
        fuel: Option<usize>,
    },
    /// A fuel that is not on offer: none of those there are would do, however they are blended.
    OtherFuel,
}

/// Something to look up or put right, without which nothing makes a calibration usable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// To give the octane number of what is in the tank.
    Octane,
    /// To check the injection fluid.
    CheckFluid,
    /// To fill the injection fluid, or mend its system.
    FillFluid,
}

impl Need {
    fn of(reason: Reason) -> Option<Self> {
        match reason {
            Reason::OctaneUnknown => Some(Self::Octane),
            Reason::FluidUnchecked => Some(Self::CheckFluid),
            Reason::FluidAbsent => Some(Self::FillFluid),
            Reason::TooWeak
            | Reason::TooStrong
            | Reason::MaybeTooWeak { .. }
            | Reason::MaybeTooStrong { .. }
            | Reason::OctaneShort { .. }
            | Reason::MaybeOctaneShort { .. } => None,
        }
    }
}

/// What a reason speaks of.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Matter {
    TooWeak,
    TooStrong,
    Octane,
    Fluid,
}

fn matter(reason: Reason) -> Matter {
    match reason {
        Reason::TooWeak | Reason::MaybeTooWeak { .. } => Matter::TooWeak,
        Reason::TooStrong | Reason::MaybeTooStrong { .. } => Matter::TooStrong,
        Reason::OctaneShort { .. } | Reason::MaybeOctaneShort { .. } | Reason::OctaneUnknown => {
            Matter::Octane
        }
        Reason::FluidAbsent | Reason::FluidUnchecked => Matter::Fluid,
    }
}

/// The least volume that a remedy speaks of: less than that nobody pumps.
const LEAST_L: f64 = 0.5;
/// The steps in which a level to drive down to is told.
const LEVEL_STEP_L: f64 = 1.0;

pub(crate) fn contents(estimate: &Estimate) -> Contents {
    Contents { share: estimate.share, extras: estimate.extras, ron: estimate.ron }
}

/// What the tank would be known to hold after a piece of evidence; `None` for what does not
/// fit with the log, which settles nothing.
fn after(before: &Estimator, evidence: &Evidence) -> Option<Estimator> {
    let mut estimator = before.clone();
    estimator.take(evidence).is_none().then_some(estimator)
}

/// The smallest number from 1 on for which something holds that holds from some number on;
/// `None` where it does not even hold for the last one.
fn first(last: u32, holds: impl Fn(u32) -> bool) -> Option<u32> {
    if last == 0 || !holds(last) {
        return None;
    }
    let (mut without, mut with) = (0, last);
    while with - without > 1 {
        let middle = u32::midpoint(without, with);
        if holds(middle) { with = middle } else { without = middle }
    }
    Some(with)
}

/// How many whole steps there are in a volume.
fn steps_in(volume: Volume, step: Volume) -> u32 {
    let steps = (volume / step).get::<uom::si::ratio::ratio>();
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 2000")]
    let whole = (steps + 1e-9).floor().clamp(0.0, 2000.0) as u32;
    whole
}

/// The tank, and what can be poured into it.
pub(crate) struct Station<'a> {
    pub(crate) estimator: &'a Estimator,
    pub(crate) fuels: &'a [Pour],
    pub(crate) capacity: Volume,
    /// The level that nobody goes below.
    pub(crate) reserve: Volume,
    /// The step in which a person can stop the pump.
    pub(crate) step: Volume,
}

/// What the tank would be known to hold after a reading or a pour.
pub(crate) struct Prospects<'a> {
    station: Station<'a>,
    readings: Vec<(Share, Contents)>,
    pours: Vec<Vec<(Volume, Contents)>>,
}

impl<'a> Prospects<'a> {
    /// Tries every reading in whole percents and every pour in whole steps with
    /// the estimator itself, so that what is promised is what will be said.
    pub(crate) fn new(mut station: Station<'a>, reading: impl Fn(Share) -> ShareReading) -> Self {
        let step = station.step.max(Volume::new::<liter>(LEAST_L));
        station.step = step;
        let readings = (0..=100_u8)
            .map(|percent| Share::clamped(f64::from(percent) / 100.0))
            .filter_map(|share| {
                let after = after(station.estimator, &Evidence::Share(reading(share)))?;
                Some((share, contents(&after.estimate())))
            })
            .collect();
        let free = station.free(station.estimator);
        let pours = (0..station.fuels.len()).map(|fuel| {
            let volumes = (1..=free).map(|count| step * f64::from(count));
            let pour = |volume| station.poured(station.estimator, fuel, volume);
            volumes.filter_map(|volume| Some((volume, pour(volume)?))).collect()
        });
        let pours = pours.collect();
        Self { station, readings, pours }
    }

    /// What has to be looked up or put right for this calibration, whatever else is done, and
    /// what would then make it usable, each by itself.
    pub(crate) fn remedies(
        &self,
        calibration: &Calibration,
        judgement: &Judgement,
    ) -> (Vec<Need>, Vec<Remedy>) {
        let needs: Vec<Need> = judgement.reasons.iter().copied().filter_map(Need::of).collect();
        // What is needed anyway is taken for met: an octane number that is not known can turn
        // out well, and so can the fluid.
        let ron_min = calibration.ron_min.filter(|_| !needs.contains(&Need::Octane));
        let rest = Calibration { ron_min, needs_fluid: false, ..calibration.clone() };
        if judge(&rest, &contents(&self.station.estimator.estimate())).is_empty() {
            return (needs, Vec::new());
        }
        let usable = |contents: &Contents| judge(&rest, contents).is_empty();
        let mut readings = self.readings.iter().filter(|it| usable(&it.1)).map(|it| it.0);
        let reading = readings
            .next()
            .map(|from| Remedy::Reading { from, to: readings.next_back().unwrap_or(from) });
        let pours = self.pours.iter().enumerate().filter_map(|(fuel, pours)| {
            let volume = pours.iter().find(|it| usable(&it.1))?.0;
            Some(Remedy::Pour { fuel, volume })
        });
        let pours: Vec<Remedy> = pours.collect();
        let instead = if pours.is_empty() { self.station.drive_down(&rest) } else { None };
        let mut ways: Vec<Remedy> = reading.into_iter().chain(pours).chain(instead).collect();
        if ways.is_empty() {
            ways.push(self.station.anew(&rest));
        }
        (needs, ways)
    }
}

fn judge(calibration: &Calibration, contents: &Contents) -> Vec<Reason> {
    calibration.judge(contents, FluidState::Ready).reasons
}

impl Station<'_> {
    /// How many whole steps certainly fit into the tank.
    fn free(&self, estimator: &Estimator) -> u32 {
        steps_in(self.capacity - estimator.estimate().level.high(), self.step)
    }

    /// What the tank would hold after so much of a fuel.
    fn poured(&self, before: &Estimator, fuel: usize, volume: Volume) -> Option<Contents> {
        let pours = vec![Pour { volume, ..self.fuels[fuel] }];
        let after = after(before, &Evidence::Fill { pours, clicked: false })?;
        Some(contents(&after.estimate()))
    }

    /// The highest level at which one of the fuels makes a calibration usable: it is driven
    /// down to by the trip computer and read from the gauge.
    fn drive_down(&self, calibration: &Calibration) -> Option<Remedy> {
        let now = self.estimator.estimate().level.expected();
        let step = Volume::new::<liter>(LEVEL_STEP_L);
        let (highest, lowest) = (steps_in(now - self.step, step), steps_in(self.reserve, step) + 1);
        let level = |down: u32| step * f64::from(highest - down + 1);
        let best = |fuel| {
            let at = |down| self.driven_down(level(down), now, fuel, calibration);
            let down = first((highest + 1).saturating_sub(lowest), |down| at(down).is_some())?;
            Some((down, fuel, at(down)?))
        };
        let best = (0..self.fuels.len()).filter_map(best).min_by_key(|it| it.0);
        best.map(|(down, fuel, volume)| Remedy::DriveDown { level: level(down), fuel, volume })
    }

    /// How much of a fuel makes a calibration usable once the tank is down to a level.
    fn driven_down(
        &self,
        level: Volume,
        now: Volume,
        fuel: usize,
        calibration: &Calibration,
    ) -> Option<Volume> {
        let driven = after(self.estimator, &Evidence::Burned { volume: now - level })?;
        let read = Evidence::Level { level, reading: LevelReading::Gauge, error: None };
        let before = after(&driven, &read)?;
        let against: Vec<Matter> =
            judge(calibration, &contents(&before.estimate())).into_iter().map(matter).collect();
        let volume = |count: u32| self.step * f64::from(count);
        let reasons = |count| Some(judge(calibration, &self.poured(&before, fuel, volume(count))?));
        let is_over = |count| {
            reasons(count).is_some_and(|it| it.iter().all(|it| !against.contains(&matter(*it))))
        };
        let count = first(self.free(&before), is_over)?;
        reasons(count)?.is_empty().then(|| volume(count))
    }

    /// What is left where neither a reading nor a fuel on top helps.
    fn anew(&self, calibration: &Calibration) -> Remedy {
        let Some(drained) = after(self.estimator, &Evidence::Drain { volume: None }) else {
            return Remedy::OtherFuel;
        };
        let full = self.step * f64::from(self.free(&drained));
        let reasons: Vec<Vec<Reason>> = (0..self.fuels.len())
            .filter_map(|fuel| Some(judge(calibration, &self.poured(&drained, fuel, full)?)))
            .collect();
        if let Some(fuel) = reasons.iter().position(Vec::is_empty) {
            return Remedy::Drain { fuel: Some(fuel) };
        }
        // Fuels on either side of the window can be blended into it.
        let is_only = |wanted: Matter| {
            let mut all = reasons.iter();
            all.any(|it| !it.is_empty() && it.iter().all(|it| matter(*it) == wanted))
        };
        if is_only(Matter::TooWeak) && is_only(Matter::TooStrong) {
            Remedy::Drain { fuel: None }
        } else {
            Remedy::OtherFuel
        }
    }
}

/// That no calibration may be selected on what is known, and what is left then.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoneUsable {
    /// The index of the calibration whose window is nearest to the blend.
    pub nearest: usize,
    /// The index of the one that can be cleared without pouring, the nearest of those, and
    /// by what.
    pub clears: Option<(usize, Clearing)>,
}

/// What can clear a calibration without pouring.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Clearing {
    /// A reading of the ethanol share.
    Reading,
    /// Something to look up or put right.
    Need(Need),
}

/// What is known of one calibration, to tell which is left.
pub(crate) type Standing<'a> = (&'a Calibration, Verdict, &'a [Need], &'a [Remedy]);

impl NoneUsable {
    /// What is left; `None` where a calibration is usable, or where there is none.
    pub(crate) fn of(all: &[Standing], blend: Share) -> Option<Self> {
        if all.iter().any(|it| it.1 == Verdict::Usable) {
            return None;
        }
        let blend = blend.fraction();
        let distance = |calibration: &Calibration| {
            let outside = (calibration.low.fraction() - blend)
                .max(blend - calibration.high.fraction())
                .max(0.0);
            (outside, (calibration.written_for.fraction() - blend).abs())
        };
        let mut order: Vec<usize> = (0..all.len()).collect();
        order.sort_by(|a, b| {
            let (a, b) = (distance(all[*a].0), distance(all[*b].0));
            a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
        });
        let clears = order.iter().find_map(|&at| Some((at, Clearing::of(all[at].2, all[at].3)?)));
        Some(Self { nearest: *order.first()?, clears })
    }
}

impl Clearing {
    fn of(needs: &[Need], ways: &[Remedy]) -> Option<Self> {
        let by_reading = ways.iter().any(|it| matches!(it, Remedy::Reading { .. }));
        match (needs, ways) {
            ([], _) if by_reading => Some(Self::Reading),
            ([need], []) => Some(Self::Need(*need)),
            _ => None,
        }
    }
}
