//! What is made of the route: its reading, and what is being planned for it.

use std::sync::Arc;

use fillwright::answers::tank::History;
use fillwright::answers::trip::{TripAnswer, TripReading};
use fillwright::quantity::notation::Printer;
use fillwright::trip::Report;
use leptos::prelude::*;

use super::planning::Planning;
use super::session::Session;
use super::tank_memos::TankMemos;

/// What is made of the route.
#[derive(Clone, Copy)]
pub(crate) struct TripMemos {
    printer: Memo<Printer>,
    /// The route as its texts describe it.
    pub(crate) reading: Memo<TripReading>,
    /// What is being planned for it.
    pub(crate) planning: Planning,
}

impl TripMemos {
    pub(crate) fn of(session: Session, tank_memos: TankMemos) -> Self {
        let Session { document, printer, .. } = session;
        let reading = Memo::new(move |_| {
            let estimate = tank_memos.history.with(History::estimate);
            document.with(|it| printer.with(|p| TripReading::of(it, estimate.as_ref(), p)))
        });
        Self { printer, reading, planning: Planning::new() }
    }

    /// Those around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// What the search says of the route as it stands; nothing where it was about another.
    pub(crate) fn report(self) -> Option<Report> {
        self.reading.with(|trip| self.planning.report_on(trip.asked.as_ref()))
    }

    /// What is made of the plan; nothing while there is none.
    pub(crate) fn of_plan<T>(self, make: impl FnOnce(&TripAnswer, &Printer) -> T) -> Option<T> {
        let plan: Arc<TripAnswer> = self.planning.plan.get()?;
        Some(self.printer.with(|printer| make(&plan, printer)))
    }
}
