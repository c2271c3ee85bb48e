//! What was done, and what was done with it: short sentences without their full stop.

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
    both(deed).0
}

/// What taking it back did: `Fill taken back`.
pub fn undone(deed: Deed) -> &'static str {
    both(deed).1
}

/// What the button that takes it back is called: `Undo: fill recorded`.
pub fn undo(deed: Deed) -> String {
    let done = done(deed);
    let (first, rest) = done.split_at(done.len().min(1));
    format!("Undo: {}{rest}", first.to_lowercase())
}

fn both(deed: Deed) -> (&'static str, &'static str) {
    match deed {
        Deed::ExampleOpened => ("Example opened", "Example closed"),
        Deed::ExampleLeft => ("Example removed", "Example brought back"),
        Deed::FillRecorded => ("Fill recorded", "Fill taken back"),
        Deed::EntryAdded => ("Entry added", "Entry taken back"),
        Deed::EntryChanged => ("Entry changed", "Entry as before"),
        Deed::EntryRemoved => ("Entry removed", "Entry brought back"),
        Deed::EntryBroughtBack => ("Entry brought back", "Entry removed again"),
        Deed::EntryCancelled => ("Entry cancelled", "Entry brought back"),
        Deed::FuelRemoved | Deed::OwnFuelRemoved => ("Fuel removed", "Fuel brought back"),
        Deed::CalibrationRemoved => ("Calibration removed", "Calibration brought back"),
        Deed::CurveRemoved => ("Curve removed", "Curve brought back"),
        Deed::TableImported => ("Table imported", "Table as before"),
        Deed::PartRemoved => ("Part removed", "Part brought back"),
        Deed::StopRemoved => ("Stop removed", "Stop brought back"),
        Deed::Arrived => ("Trip goes on from here", "Trip and fill as before"),
        Deed::CarAdded => ("Car added", "Car taken back"),
        Deed::CarRemoved => ("Car removed", "Car brought back"),
        Deed::CarBroughtBack => ("Car brought back", "Car removed again"),
        Deed::FileMerged => ("File merged", "Everything as before"),
        Deed::FileReplaced => ("Everything replaced by the file", "Everything as before"),
        Deed::SharedTaken(Kind::Fill) => ("Shared fill in use", "Fill as before"),
        Deed::SharedTaken(Kind::Car) => ("Shared car in use", "Car as before"),
        Deed::SharedTaken(Kind::Trip) => ("Shared trip in use", "Trip as before"),
    }
}
