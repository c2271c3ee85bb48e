//! The document that holds what a person typed, what it means, and the answer
//! to it.
//!
//! Text comes in here and becomes quantities ([`interpret`]); the answer goes
//! out as quantities, verdicts and workings ([`Answer`]). What shows them only
//! has to lay them out.

mod answer;
mod as_planned;
mod car;
mod checked_draft;
mod choice;
mod complaint;
mod csv;
pub mod curve_table;
mod demo;
mod derivation;
mod document;
mod draft;
mod entry;
mod event;
mod evidence;
mod exchange;
mod field;
mod fill_form;
mod fit;
mod forms;
mod fuel;
mod history;
mod id;
mod interpret;
pub mod keeping;
mod log;
mod measure;
mod merge;
pub mod methods;
mod migration;
mod moment;
mod parts;
mod printer;
mod rate;
mod reader;
mod record;
mod refusal;
pub mod road;
mod settle;
pub mod share;
mod stated_share;
mod tank_answer;
pub mod workshop;
mod workshop_printer;

pub use answer::{Answer, Blend, Step};
pub use choice::{GivenUp, Miss, Plight, Promise, Wish};
pub use complaint::{
    CalibrationPart, Complaint, CurvePart, EntryPart, ExtraPart, Field, FuelPart, HaltPart,
    RoutePart,
};
pub use csv::csv;
pub use document::{CarFile, Document, DocumentError, LARGEST_DOCUMENT, SCHEMA, Settings};
pub use event::{
    BeforeForm, ContentsForm, Draft, Event, FillEntry, LevelForm, SensorForm, TripForm,
    TubeTestForm, What,
};
pub use exchange::Exchanged;
pub use fit::Oddity;
pub use forms::{
    AimForm, CalibrationForm, Car, Entry, ExtrasForm, FillForm, FuelForm, StartForm, StopForm,
};
pub use history::{Course, History, OldBlend, Passage};
pub use id::{Id, IdError};
pub use interpret::{Asked, Interpretation, interpret};
pub use log::{ById, Log};
pub use merge::CarMerge;
pub use moment::{Moment, MomentError};
pub use parts::Fuel;
pub use printer::{Measure, Printer};
pub use rate::RateForm;
pub use settle::{Clearing, Need, NoneUsable, Remedy};
pub use tank_answer::{TankAnswer, TankQuestion, TankVerdict};
