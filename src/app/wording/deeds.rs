//! What was done, and what was done with it: short sentences without their full stop.

use fillwright::share::Kind;

use crate::app::undo::Deed;

/// What was done: `Fill recorded`.
pub(crate) fn done(deed: Deed) -> &'static str {
    both(deed).0
}

/// What taking it back did: `Fill taken back`.
pub(crate) fn undone(deed: Deed) -> &'static str {
    both(deed).1
}

/// What the button that takes it back is called: `Undo: fill recorded`.
pub(crate) fn undo(deed: Deed) -> String {
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
