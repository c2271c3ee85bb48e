//! Entries of the log: what happened, as it was typed.

use serde::{Deserialize, Serialize};

use super::contents::{ContentsForm, LevelForm};
use super::fuel::FuelForm;
use super::id::Id;
use super::moment::Moment;
use crate::quantity::notation::Entry;
use crate::tank::TubeTestMethod;

/// What was known just before a fill.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[allow(clippy::large_enum_variant, reason = "a log holds few, and hands none about")]
pub enum BeforeForm {
    /// No more than the log told.
    #[default]
    Nothing,
    /// The level was read.
    Level(LevelForm),
    /// What was in the tank was stated.
    Contents(ContentsForm),
}

/// A fill.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct FillEntry {
    /// What was known just before.
    pub before: BeforeForm,
    /// The fuels, each with what of it was put in.
    pub fuels: Vec<FuelForm>,
    /// Whether the nozzle clicked off: the tank was full then.
    pub clicked: bool,
}

/// A reading of the ethanol-content sensor.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct SensorForm {
    /// The share it shows, or its frequency.
    pub reading: String,
    /// The width of its pulse, which tells the fuel's temperature.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub pulse: String,
    /// Whether it was read before the fuel in the tank had reached it.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub old_fuel: bool,
}

/// A test with water in a graduated tube.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct TubeTestForm {
    /// How it was done.
    pub method: TubeTestMethod,
    /// The fuel poured in.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub fuel: String,
    /// The water poured in.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub water: String,
    /// Where the boundary stood afterwards: the volume of the watery part.
    pub boundary: String,
    /// The step of the tube's marks.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub step: String,
}

/// What the trip computer showed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct DriveForm {
    /// The distance.
    pub distance: Entry,
    /// The mean consumption over it.
    pub consumption: Entry,
}

/// What happened.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// Fuel went in.
    Fill(FillEntry),
    /// The level was read.
    Level(LevelForm),
    /// The sensor was read.
    Sensor(SensorForm),
    /// A tube test was made.
    TubeTest(TubeTestForm),
    /// The car was driven so far.
    Drive(Entry),
    /// The trip computer was read.
    Trip(DriveForm),
    /// Fuel was drained: so much, or, left blank, all of it.
    Drain(Entry),
    /// What was in the tank was stated.
    Correction(ContentsForm),
    /// Nothing that bears on the tank.
    Note,
}

impl What {
    /// A blank one of each kind, the most usual first.
    pub fn blank_ones() -> [Self; 9] {
        [
            Self::Level(LevelForm::default()),
            Self::Sensor(SensorForm::default()),
            Self::TubeTest(TubeTestForm::default()),
            Self::Drive(Entry::default()),
            Self::Trip(DriveForm::default()),
            Self::Fill(FillEntry::default()),
            Self::Drain(Entry::default()),
            Self::Correction(ContentsForm::default()),
            Self::Note,
        ]
    }
}

/// An entry of the log.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// Tells it apart from all others.
    pub id: Id,
    /// How often it was changed: of two versions the later one holds.
    pub revision: u32,
    /// Its place among entries of the same minute: the order in which they were
    /// written. The log gives it.
    #[serde(default)]
    pub sequence: u32,
    /// Whether it was removed. It is kept, so that it can be brought back and so
    /// that no other device brings it back unasked.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub removed: bool,
    /// When it happened.
    pub time: Moment,
    /// Where it happened.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub place: String,
    /// What the person noted.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// What happened.
    pub what: What,
}

impl Event {
    /// This entry as the next version after the one that is known.
    pub(crate) fn after(self, known: Option<&Self>) -> Self {
        let revision = known.map_or(1, |known| known.revision.saturating_add(1));
        let sequence = known.map_or(self.sequence, |known| known.sequence);
        Self { revision, sequence, ..self }
    }

    /// Whether this version holds against another of the same entry: the later
    /// one does; of two changes made at the same time without knowledge of each
    /// other, the same one on every device.
    pub fn holds_against(&self, other: &Self) -> bool {
        let text = |event: &Self| serde_json::to_string(event).unwrap_or_default();
        self.revision > other.revision
            || self.revision == other.revision && self != other && text(self) > text(other)
    }
}

/// An entry that is being written or changed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Draft {
    /// The entry's identity: a new one, or that of the entry to change.
    pub id: Id,
    /// Whether it changes an entry that exists.
    pub changes: bool,
    /// When it happened, as typed: `2026-05-03T17:40`.
    pub time: String,
    /// How many minutes that clock was ahead of UTC.
    pub minutes_ahead: i32,
    /// Where it happened.
    pub place: String,
    /// What the person noted.
    pub note: String,
    /// Of a drain, whether the tank was drained completely. A volume left blank does not say
    /// so here: it may have been forgotten.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub drained_completely: bool,
    /// What happened.
    pub what: What,
}

/// A part of an entry of the log.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum EntryPart {
    /// When it happened.
    Time,
    /// Where.
    Place,
    /// What the person noted.
    Note,
    /// What the sensor shows.
    Sensor,
    /// The width of its pulse.
    Pulse,
    /// The fuel in a tube.
    TubeFuel,
    /// The water in a tube.
    TubeWater,
    /// The boundary in a tube.
    Boundary,
    /// The step of a tube's marks.
    TubeStep,
    /// A distance.
    Distance,
    /// A consumption.
    Consumption,
    /// A volume drained.
    Drained,
    /// The list of fuels.
    Fuels,
}

impl EntryPart {
    /// A name for it within the ids of its fields.
    pub(super) fn id(self) -> &'static str {
        match self {
            Self::Time => "time",
            Self::Place => "place",
            Self::Note => "note",
            Self::Sensor => "sensor",
            Self::Pulse => "pulse",
            Self::TubeFuel => "tube-fuel",
            Self::TubeWater => "tube-water",
            Self::Boundary => "boundary",
            Self::TubeStep => "tube-step",
            Self::Distance => "distance",
            Self::Consumption => "consumption",
            Self::Drained => "drained",
            Self::Fuels => "fuels",
        }
    }
}
