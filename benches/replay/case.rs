//! The log that is replayed: years of driving, gauge readings, fills of two fuels,
//! and a sensor that is read after each.

use fillwright::answers::tank::{History, LogReading};
use fillwright::document::{Document, Event, Id};
use fillwright::fuel::Extras;
use fillwright::quantity::Consumption;
use fillwright::quantity::notation::{DecimalMark, KILOMETRE};
use fillwright::quantity::{Band, Share, Volume};
use fillwright::tank::{
    Estimator, Evidence, LevelReading, Pour, ShareReading, ShareReadingKind, Vehicle,
};
use uom::si::volume::liter;

/// How many pieces of evidence the log holds.
const EVENTS: usize = 5000;

/// A car and its log.
pub(crate) struct Log {
    vehicle: Vehicle,
    evidence: Vec<Evidence>,
    course: LogReading,
}

/// The log, as checked input.
pub(crate) fn log() -> Result<Log, Box<dyn std::error::Error>> {
    let litres = |value: f64| Volume::new::<liter>(value);
    let pour = |volume: f64, ends: [f64; 3]| -> Result<Pour, Box<dyn std::error::Error>> {
        let [low, expected, high] = ends.map(Share::from_percent);
        let share = Band::new(low?, expected?, high?)?;
        let extras = Extras::default();
        Ok(Pour { volume: litres(volume), share, extras, ron: Some(95.0), mon: Some(85.0) })
    };
    let stop = |clicked: bool| -> Result<[Evidence; 4], Box<dyn std::error::Error>> {
        Ok([
            Evidence::Drive { distance: KILOMETRE.quantity(400.0) },
            Evidence::Level { level: litres(15.0), reading: LevelReading::Gauge, error: None },
            Evidence::Fill {
                pours: vec![pour(18.0, [4.5, 9.5, 10.0])?, pour(26.0, [70.0, 77.0, 84.0])?],
                clicked,
            },
            Evidence::Share(ShareReading {
                share: Share::from_percent(if clicked { 49.0 } else { 50.5 })?,
                standard_error: Share::from_percent(2.0)?,
                kind: ShareReadingKind::Sensor,
            }),
        ])
    };
    // A known beginning, or there would be no octane to compute.
    let beginning = Evidence::State {
        level: Band::exact(litres(58.0)),
        share: Band::exact(Share::from_percent(40.0)?),
        extras: Extras::default(),
        ron: Some(98.0),
        mon: Some(86.0),
    };
    let both = [stop(true)?, stop(false)?].concat();
    let stops = both.into_iter().cycle();
    Ok(Log {
        vehicle: Vehicle {
            capacity: litres(60.0),
            consumption: Some(Consumption::from_litres_per_100_km(8.5)?),
            reference: Share::ZERO,
        },
        evidence: std::iter::once(beginning).chain(stops).take(EVENTS).collect(),
        course: course()?,
    })
}

/// A log of as many entries, as people typed them: the example's over and over.
fn course() -> Result<LogReading, Box<dyn std::error::Error>> {
    let mut example = Document::demo();
    let entries = example.here.log.all().to_vec();
    let entry = |number: usize| -> Result<Event, Box<dyn std::error::Error>> {
        let mut event = entries[number % entries.len()].clone();
        event.id = Id::new(&format!("{number}"))?;
        event.sequence = u32::try_from(number)?;
        event.time = entries[0].time;
        Ok(event)
    };
    example.here.log = (0..EVENTS).map(entry).collect::<Result<_, _>>()?;
    let printer = example.settings.printer(DecimalMark::Point);
    Ok(LogReading::of(&example.here, &printer))
}

/// Reads every entry as typed and replays it: what the app does when an entry
/// changes.
pub(crate) fn replay_as_typed(log: &Log) -> f64 {
    let history = History::of(&log.course);
    history.estimate().map_or(f64::NAN, |it| it.share.expected().fraction())
}

/// Replays the log and estimates once at its end.
pub(crate) fn replay(log: &Log) -> f64 {
    let mut estimator = Estimator::new(log.vehicle);
    for evidence in &log.evidence {
        estimator.take(evidence);
    }
    estimator.estimate().share.expected().fraction()
}

/// Replays the log and estimates after every piece of evidence, as a chart of the
/// whole log needs it.
pub(crate) fn replay_with_chart(log: &Log) -> f64 {
    let mut estimator = Estimator::new(log.vehicle);
    let widths = log.evidence.iter().map(|evidence| {
        estimator.take(evidence);
        let share = estimator.estimate().share;
        share.high().fraction() - share.low().fraction()
    });
    widths.sum()
}
