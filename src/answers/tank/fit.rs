//! What is odd about an entry that is being written: asked about before it is kept.
//!
//! Nothing of it is refused, since rare things happen and the log may be what is wrong.

use std::ops::Add;

use uom::si::volume::liter;

use super::history::{History, LogReading};
use crate::answers::reading::Reader;
use crate::document::{CarFile, EntryPart, Event, Field, Log, Moment};
use crate::quantity::notation::Printer;
use crate::quantity::{Length, Volume};
use crate::tank::{CLICK_ERROR_L, Doubt, Estimator, Evidence};

/// How far the clocks that are furthest ahead are before UTC, in minutes: those of the Line
/// Islands (IANA time zone database, `Pacific/Kiritimati`, +14).
const FURTHEST_AHEAD: i64 = 14 * 60;

/// Something odd about an entry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Oddity {
    /// It is further than what may have been in the tank can have taken the car.
    Distance {
        /// How far was driven.
        driven: Length,
        /// How far the car can have come.
        farthest: Length,
    },
    /// The trip computer counted more than the tank can have held.
    Burned {
        /// What it counted.
        counted: Volume,
        /// The most that it can have counted.
        most: Volume,
    },
    /// No clock on earth shows that time yet.
    Future {
        /// The time given.
        time: Moment,
    },
    /// More was drained than can have been in the tank.
    Drained {
        /// How much was drained.
        drained: Volume,
        /// The most that can have been in the tank.
        most: Volume,
    },
    /// More went in than there was room for.
    Overfull {
        /// How much more.
        volume: Volume,
    },
}

impl Oddity {
    /// The field to look at again.
    pub fn field(&self) -> Field {
        Field::Entry(match self {
            Self::Distance { .. } => EntryPart::Distance,
            Self::Burned { .. } => EntryPart::Consumption,
            Self::Future { .. } => EntryPart::Time,
            Self::Drained { .. } => EntryPart::Drained,
            Self::Overfull { .. } => EntryPart::Fuels,
        })
    }
}

impl CarFile {
    /// What is odd about the entry being written, by what the log tells of the time before it
    /// and by the clock. Nothing is while something is wrong with it.
    pub fn draft_oddities(&self, printer: &Printer, now: Moment) -> Vec<Oddity> {
        let Ok(Some(event)) = self.checked_draft(printer) else { return Vec::new() };
        let mut odd = Vec::new();
        // A journey may have been written down by the clock of another time zone. Only what
        // is not yet anywhere is in the future.
        if event.time.local_minutes() > now.minutes() + FURTHEST_AHEAD {
            odd.push(Oddity::Future { time: event.time });
        }
        odd.extend(self.against_the_log(&event, printer));
        odd
    }

    /// What of an entry does not fit with what may have been in the tank before it.
    fn against_the_log(&self, event: &Event, printer: &Printer) -> Vec<Oddity> {
        let mut reader = Reader::new(printer);
        let known = reader.car(&self.car);
        let told = reader.told(&event.what, &known, self.car.sensor_scale);
        let (Some(vehicle), Some(told)) = (known.vehicle(), told) else { return Vec::new() };
        let before = self.estimator_before(event, printer);
        let mut before = before.unwrap_or_else(|| Estimator::new(vehicle));
        let farthest = before.farthest();
        let capacity = vehicle.capacity;
        let mut odd = Vec::new();
        if told.driven > farthest {
            odd.push(Oddity::Distance { driven: told.driven, farthest });
        }
        for (at, evidence) in told.evidence.iter().enumerate() {
            match evidence {
                // Before a fill the car may have been driven without an entry, but not
                // between the level that was read at the pump and the pour.
                Evidence::Fill { pours, .. } if at > 0 => {
                    let poured =
                        pours.iter().map(|it| it.volume).fold(Volume::default(), Volume::add);
                    let click = Volume::new::<liter>(CLICK_ERROR_L.value);
                    let room = capacity - before.estimate().possible_level.low();
                    if poured > room + click * 2.0 {
                        odd.push(Oddity::Overfull { volume: poured - room });
                        continue;
                    }
                }
                Evidence::Burned { volume } if *volume > before.most_counted() => {
                    odd.push(Oddity::Burned { counted: *volume, most: before.most_counted() });
                }
                Evidence::Drain { volume: Some(drained) } => {
                    let most = before.estimate().possible_level.high();
                    if *drained > most {
                        odd.push(Oddity::Drained { drained: *drained, most });
                    }
                }
                _ => {}
            }
            if let Some(Doubt::Overfull { volume }) = before.take(evidence) {
                odd.push(Oddity::Overfull { volume });
            }
        }
        odd
    }

    /// What was thought of the tank just before an entry, without what that entry itself says
    /// in the log so far; `None` while nothing was.
    fn estimator_before(&self, event: &Event, printer: &Printer) -> Option<Estimator> {
        // A new entry comes after those of the same minute.
        let sequence = self.log.find(&event.id).map_or(u32::MAX, |known| known.sequence);
        let is_before =
            |it: &&Event| it.id != event.id && (it.time, it.sequence) < (event.time, sequence);
        let log: Log = self.log.events().filter(is_before).cloned().collect();
        History::of(&LogReading::of(&Self { log, ..self.clone() }, printer)).estimator
    }
}
