//! What was done, and what was done with it: short sentences without their full stop.

use crate::message::Message;
use crate::message::keys::deeds as keys;
use crate::share::Kind;

/// What a person did. Its words stand beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Deed {
    /// The example was opened.
    ExampleOpened,
    /// An own car took the place of the example.
    ExampleLeft,
    /// Fill recorded.
    FillRecorded,
    /// Entry added.
    EntryAdded,
    /// Entry changed.
    EntryChanged,
    /// Entry removed.
    EntryRemoved,
    /// Entry brought back.
    EntryBroughtBack,
    /// An entry that was being written was given up.
    EntryCancelled,
    /// Fuel removed.
    FuelRemoved,
    /// Own fuel removed.
    OwnFuelRemoved,
    /// Calibration removed.
    CalibrationRemoved,
    /// Curve removed.
    CurveRemoved,
    /// The table of a curve was taken from a file.
    TableImported,
    /// Part removed.
    PartRemoved,
    /// Stop removed.
    StopRemoved,
    /// The journey goes on from a stop.
    Arrived,
    /// Car added.
    CarAdded,
    /// Car removed.
    CarRemoved,
    /// Car brought back.
    CarBroughtBack,
    /// A file was merged into what was there.
    FileMerged,
    /// A file took the place of everything.
    FileReplaced,
    /// What was shared by link was taken in.
    SharedTaken(Kind),
}

/// What was done: `Fill recorded`.
pub fn done(deed: Deed) -> &'static str {
    both(deed).0.say()
}

/// What taking it back did: `Fill taken back`.
pub fn undone(deed: Deed) -> &'static str {
    both(deed).1.say()
}

/// What the button that takes it back is called: `Undo: Fill recorded`.
pub fn undo(deed: Deed) -> String {
    keys::Undo { deed: done(deed) }.say()
}

fn both(deed: Deed) -> (Message, Message) {
    match deed {
        Deed::ExampleOpened => (keys::EXAMPLE_OPENED, keys::EXAMPLE_CLOSED),
        Deed::ExampleLeft => (keys::EXAMPLE_REMOVED, keys::EXAMPLE_BROUGHT_BACK),
        Deed::FillRecorded => (keys::FILL_RECORDED, keys::FILL_TAKEN_BACK),
        Deed::EntryAdded => (keys::ENTRY_ADDED, keys::ENTRY_TAKEN_BACK),
        Deed::EntryChanged => (keys::ENTRY_CHANGED, keys::ENTRY_AS_BEFORE),
        Deed::EntryRemoved => (keys::ENTRY_REMOVED, keys::ENTRY_BROUGHT_BACK),
        Deed::EntryBroughtBack => (keys::ENTRY_BROUGHT_BACK, keys::ENTRY_REMOVED_AGAIN),
        Deed::EntryCancelled => (keys::ENTRY_CANCELLED, keys::ENTRY_BROUGHT_BACK),
        Deed::FuelRemoved | Deed::OwnFuelRemoved => (keys::FUEL_REMOVED, keys::FUEL_BROUGHT_BACK),
        Deed::CalibrationRemoved => (keys::CALIBRATION_REMOVED, keys::CALIBRATION_BROUGHT_BACK),
        Deed::CurveRemoved => (keys::CURVE_REMOVED, keys::CURVE_BROUGHT_BACK),
        Deed::TableImported => (keys::TABLE_IMPORTED, keys::TABLE_AS_BEFORE),
        Deed::PartRemoved => (keys::PART_REMOVED, keys::PART_BROUGHT_BACK),
        Deed::StopRemoved => (keys::STOP_REMOVED, keys::STOP_BROUGHT_BACK),
        Deed::Arrived => (keys::TRIP_GOES_ON_FROM_HERE, keys::TRIP_AND_FILL_AS_BEFORE),
        Deed::CarAdded => (keys::CAR_ADDED, keys::CAR_TAKEN_BACK),
        Deed::CarRemoved => (keys::CAR_REMOVED, keys::CAR_BROUGHT_BACK),
        Deed::CarBroughtBack => (keys::CAR_BROUGHT_BACK, keys::CAR_REMOVED_AGAIN),
        Deed::FileMerged => (keys::FILE_MERGED, keys::EVERYTHING_AS_BEFORE),
        Deed::FileReplaced => (keys::EVERYTHING_REPLACED_BY_THE_FILE, keys::EVERYTHING_AS_BEFORE),
        Deed::SharedTaken(Kind::Fill) => (keys::SHARED_FILL_IN_USE, keys::FILL_AS_BEFORE),
        Deed::SharedTaken(Kind::Car) => (keys::SHARED_CAR_IN_USE, keys::CAR_AS_BEFORE),
        Deed::SharedTaken(Kind::Trip) => (keys::SHARED_TRIP_IN_USE, keys::TRIP_AS_BEFORE),
    }
}
