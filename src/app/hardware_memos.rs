//! What is made of the hardware: its reading, and how the fuel system stands.

use std::sync::Arc;

use fillwright::answers::hardware::{HardwareAnswer, HardwareReading};
use fillwright::document::{Document, HardwareForm, Id};
use fillwright::quantity::notation::Printer;
use leptos::prelude::*;

use super::session::Session;
use super::tank_memos::TankMemos;

/// How the fuel system stands, and the reading of the hardware that it was judged by.
#[derive(Clone)]
pub(crate) struct Judged {
    car: Id,
    pub(crate) reading: Arc<HardwareReading>,
    pub(crate) answer: Arc<HardwareAnswer>,
    /// Whether the texts have since become unreadable.
    pub(crate) stale: bool,
}

/// What is made of the hardware. Nothing of it is worked out before a view asks for it.
#[derive(Clone, Copy)]
pub(crate) struct HardwareMemos {
    document: RwSignal<Document>,
    printer: Memo<Printer>,
    /// The hardware as its texts describe it.
    pub(crate) reading: Memo<Arc<HardwareReading>>,
    /// How its fuel system stands.
    pub(crate) judged: Memo<Option<Judged>>,
}

impl HardwareMemos {
    pub(crate) fn of(session: Session, tank_memos: TankMemos) -> Self {
        let Session { document, printer, .. } = session;
        let history = tank_memos.history;
        let reading = Memo::new_with_compare(
            move |_| {
                let tank = history.with(|it| it.estimate().map(|estimate| estimate.content()));
                Arc::new(
                    document
                        .with(|it| printer.with(|printer| HardwareReading::of(it, tank, printer))),
                )
            },
            |_, _| true,
        );
        let judged = Memo::new_with_compare(
            move |before: Option<&Option<Judged>>| {
                let reading = reading.get();
                let (car, is_empty) =
                    document.with(|it| (it.here.id.clone(), it.here.hardware.curves.is_empty()));
                if let Some(answer) = HardwareAnswer::of(&reading) {
                    return Some(Judged { car, reading, answer: Arc::new(answer), stale: false });
                }
                let before = before.cloned().flatten();
                let before = before.filter(|before| before.car == car && !is_empty);
                before.map(|before| Judged { stale: true, ..before })
            },
            |_, _| true,
        );
        Self { document, printer, reading, judged }
    }

    /// Those around this component.
    pub(crate) fn here() -> Self {
        expect_context()
    }

    /// What is made of the judgement, with the names from the document; nothing while
    /// there is none.
    pub(crate) fn of_judged<T>(
        self,
        make: impl FnOnce(&Judged, &HardwareForm, &Printer) -> T,
    ) -> Option<T> {
        self.judged.with(|judged| {
            let judged = judged.as_ref()?;
            Some(self.document.with(|document| {
                self.printer.with(|printer| make(judged, &document.here.hardware, printer))
            }))
        })
    }
}
