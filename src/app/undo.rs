//! The last change that can be taken back: what was done, where that was, and both states of
//! the document.

use fillwright::document::{Document, Id};
use fillwright::words::deeds::Deed;
use leptos::prelude::*;

/// A place on the page at which the line about a deed can stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Spot {
    /// Beside the steps of a fill.
    Poured,
    /// Below the entry that is being written.
    Entry,
    /// In the log, at the entry or where it stood.
    Log,
    /// In a list of forms, where the one with this number is or was.
    Row(u32),
    /// Beside the table of the curve with this number.
    Table(u32),
    /// Below the choice of a car.
    Cars,
    /// Below the import of a file.
    Import,
}

/// A deed, and where it belongs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Act {
    pub(crate) deed: Deed,
    /// Where the line about it stands, as long as that place is on the page; else it stands
    /// above the view.
    pub(crate) spot: Option<Spot>,
    /// The entry of the log that it concerns, which shows it too.
    pub(crate) entry: Option<Id>,
}

impl Act {
    /// A deed at a place of its own.
    pub(crate) fn at(spot: Spot, deed: Deed) -> Self {
        Self { deed, spot: Some(spot), entry: None }
    }

    /// The same, told at an entry of the log too.
    pub(crate) fn on(self, entry: Id) -> Self {
        Self { entry: Some(entry), ..self }
    }
}

impl From<Deed> for Act {
    /// A deed whose line stands above the view.
    fn from(deed: Deed) -> Self {
        Self { deed, spot: None, entry: None }
    }
}

/// The last act.
#[derive(Clone)]
struct Last {
    act: Act,
    /// The document before and after it; `None` once it was taken back.
    change: Option<(Document, Document)>,
}

/// The last act, and the places that can tell of it.
#[derive(Clone, Copy)]
pub(crate) struct Undoing {
    last: RwSignal<Option<Last>>,
    spots: RwSignal<Vec<Spot>>,
}

impl Undoing {
    pub(crate) fn new() -> Self {
        Self { last: RwSignal::new(None), spots: RwSignal::new(Vec::new()) }
    }

    /// The last act, done or taken back.
    pub(crate) fn act(self) -> Option<Act> {
        self.last.with(|it| it.as_ref().map(|last| last.act.clone()))
    }

    /// Whether it can be taken back.
    pub(crate) fn is_offered(self) -> bool {
        self.last.with(|it| it.as_ref().is_some_and(|last| last.change.is_some()))
    }

    /// Whether the line about it stands at this place.
    pub(crate) fn is_at(self, spot: Spot) -> bool {
        self.last.with(|it| it.as_ref().is_some_and(|last| last.act.spot == Some(spot)))
    }

    /// Whether the place where it belongs is not on the page now.
    pub(crate) fn is_homeless(self) -> bool {
        let spot = self.last.with(|it| it.as_ref().map(|last| last.act.spot));
        spot.is_some_and(|spot| spot.is_none_or(|spot| self.spots.with(|it| !it.contains(&spot))))
    }

    /// Notes that a place is on the page, for as long as what calls this is.
    pub(crate) fn stands_at(self, spot: Spot) {
        self.spots.update(|it| it.push(spot));
        on_cleanup(move || {
            self.spots.try_update(|it| {
                if let Some(at) = it.iter().position(|known| *known == spot) {
                    it.swap_remove(at);
                }
            });
        });
    }

    /// Notes an act, with the document before and after it.
    pub(crate) fn note(self, act: Act, before: Document, after: Document) {
        self.last.set(Some(Last { act, change: Some((before, after)) }));
    }

    /// The document before and after the last act, which is then taken back.
    pub(crate) fn take_back(self) -> Option<(Document, Document)> {
        let Last { act, change } = self.last.get_untracked()?;
        let change = change?;
        self.last.set(Some(Last { act, change: None }));
        Some(change)
    }

    /// Leaves nothing to be taken back.
    pub(crate) fn clear(self) {
        self.last.set(None);
    }

    /// Says no more of an act that was taken back.
    pub(crate) fn settle(self) {
        let is_over = |last: &Last| last.change.is_none();
        if self.last.with_untracked(|it| it.as_ref().is_some_and(is_over)) {
            self.clear();
        }
    }
}
