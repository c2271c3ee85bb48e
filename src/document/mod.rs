//! What is stored: the texts as they were typed, so that nothing typed is ever lost or rounded,
//! and every operation on them.

mod car;
mod contents;
mod csv;
mod currencies;
mod demo;
mod draft;
mod event;
mod field;
mod field_unit;
mod file;
mod fill;
mod fuel;
mod fuel_system;
mod hardware;
mod hardware_field;
mod id;
mod json;
mod log;
mod merge;
mod migration;
mod moment;
mod offers;
mod rate;
mod record;
mod stops;
mod tanks;
mod trip;
mod typed_text;

pub use car::{CalibrationForm, CalibrationPart, Car};
pub use contents::{ContentsForm, ContentsPart, LevelForm};
pub use csv::csv;
pub use currencies::Exchanged;
pub(crate) use currencies::{RATES, name_price, name_sum};
pub use event::{
    BeforeForm, Draft, DriveForm, EntryPart, Event, FillEntry, SensorForm, TubeTestForm, What,
};
pub use field::{ContentsOf, Field};
pub use field_unit::FieldUnit;
pub use file::{
    CarFile, Document, DocumentError, DocumentFault, LARGEST_DOCUMENT, SCHEMA, Settings,
};
pub use fill::{AimForm, FillForm, StartForm, StopRuleForm};
pub use fuel::{ExtraPart, ExtrasForm, FuelForm, FuelPart};
pub use hardware::{
    BlendForm, ColumnForm, CurveForm, CurvePart, Fields, HardwareForm, Mark, MeasuredAt, PartForm,
    PartKind, ValueUnit,
};
pub use hardware_field::HardwareField;
pub use id::{Id, IdError};
pub use log::{ById, Log};
pub use merge::CarMerge;
pub use moment::{Moment, MomentError};
pub use offers::{NewFuel, OfferedAt};
pub use rate::RateForm;
pub use stops::{PlannedStop, Shift};
pub use trip::{PreferForm, TripForm, TripPart, TripStopForm, TripStopPart};
pub use typed_text::Typed;
