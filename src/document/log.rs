//! The entries of a car's log, in the order in which things happened.

use std::cmp::Ordering;
use std::sync::Arc;

use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::event::Event;
use super::id::Id;

/// The entries of a car's log, in the order in which things happened.
///
/// Copies share the entries until one of them changes.
#[derive(Clone, Debug, Default)]
pub struct Log {
    events: Arc<Vec<Event>>,
}

/// The order in which things happened.
fn by_time(a: &Event, b: &Event) -> Ordering {
    (a.time, a.sequence, &a.id).cmp(&(b.time, b.sequence, &b.id))
}

impl PartialEq for Log {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.events, &other.events) || self.events == other.events
    }
}

impl Eq for Log {}

impl Log {
    /// All entries, removed ones too, by time.
    pub fn all(&self) -> &[Event] {
        &self.events
    }

    /// The entries that count, by time.
    pub fn events(&self) -> impl DoubleEndedIterator<Item = &Event> {
        self.events.iter().filter(|event| !event.removed)
    }

    /// An entry, removed or not.
    pub fn find(&self, id: &Id) -> Option<&Event> {
        self.events.iter().find(|event| event.id == *id)
    }

    /// Takes in a version of an entry, if it holds against what is there.
    /// Returns whether anything changed.
    pub fn merge(&mut self, event: Event) -> bool {
        let known = self.events.iter().position(|it| it.id == event.id);
        if known.is_some_and(|at| !event.holds_against(&self.events[at])) {
            return false;
        }
        let events = Arc::make_mut(&mut self.events);
        if let Some(at) = known {
            events.remove(at);
        }
        let at = events.partition_point(|it| by_time(it, &event).is_lt());
        events.insert(at, event);
        true
    }

    /// Takes in versions of many entries, each as [`Log::merge`] would.
    pub fn merge_all(&mut self, events: Vec<Event>) {
        if !events.is_empty() {
            *self = self.events.iter().cloned().chain(events).collect();
        }
    }

    /// Writes an entry: as a new one, or as the next version of the one with this
    /// identity.
    pub fn write(&mut self, event: Event) {
        let last = self.events.iter().map(|known| known.sequence).max().unwrap_or(0);
        let next = Event { sequence: last.saturating_add(1), ..event };
        let known = self.find(&next.id);
        self.merge(next.after(known));
    }

    /// Removes an entry, or brings it back.
    pub fn set_removed(&mut self, id: &Id, removed: bool) {
        if let Some(event) = self.find(id).filter(|event| event.removed != removed) {
            self.write(Event { removed, ..event.clone() });
        }
    }

    /// Takes back what was done to these entries since `before`, as a change of
    /// its own, so that it also holds against copies elsewhere.
    pub fn take_back(&mut self, ids: &[Id], before: &Self) {
        let (now, then) = (self.by_id(), before.by_id());
        let back = ids.iter().filter_map(|id| {
            let now = now.find(id);
            let next = match (then.find(id), now) {
                (Some(event), _) => event.clone(),
                (None, Some(event)) => Event { removed: true, ..event.clone() },
                (None, None) => return None,
            };
            Some(next.after(now))
        });
        let back = back.collect();
        self.merge_all(back);
    }

    /// Makes the entries read as in another log; those that it does not have are
    /// removed. All of that holds against copies elsewhere.
    pub fn read_as(&mut self, other: &Self) {
        let (mine, theirs) = (self.by_id(), other.by_id());
        let changed = other.events.iter().filter_map(|event| match mine.find(&event.id) {
            Some(known) if known == event => None,
            Some(known) if !event.holds_against(known) => Some(event.clone().after(Some(known))),
            _ => Some(event.clone()),
        });
        let gone = self.events().filter(|event| theirs.find(&event.id).is_none());
        let gone = gone.map(|event| Event { removed: true, ..event.clone() }.after(Some(event)));
        let changes = changed.chain(gone).collect();
        self.merge_all(changes);
    }

    /// Drops entries altogether. Copies elsewhere may bring them back.
    pub fn forget(&mut self, ids: &[Id]) {
        if !ids.is_empty() {
            Arc::make_mut(&mut self.events).retain(|event| !ids.contains(&event.id));
        }
    }

    /// The entries in which this log differs from an earlier state of it.
    pub fn changed_since(&self, before: &Self) -> Vec<Id> {
        if Arc::ptr_eq(&self.events, &before.events) {
            return Vec::new();
        }
        let before = before.by_id();
        let changed = self.events.iter().filter(|event| before.find(&event.id) != Some(event));
        changed.map(|event| event.id.clone()).collect()
    }

    /// The entries by identity, where many are looked for.
    pub fn by_id(&self) -> ById<'_> {
        let mut events: Vec<&Event> = self.events.iter().collect();
        events.sort_unstable_by_key(|event| &event.id);
        ById(events)
    }
}

/// The entries of a log by identity.
#[derive(Debug)]
pub struct ById<'a>(Vec<&'a Event>);

impl<'a> ById<'a> {
    /// An entry, removed or not.
    pub fn find(&self, id: &Id) -> Option<&'a Event> {
        let at = self.0.binary_search_by_key(&id, |event| &event.id).ok()?;
        Some(self.0[at])
    }
}

impl FromIterator<Event> for Log {
    fn from_iter<T: IntoIterator<Item = Event>>(events: T) -> Self {
        let mut events: Vec<Event> = events.into_iter().collect();
        events.sort_by(|a, b| a.id.cmp(&b.id).then(a.revision.cmp(&b.revision)));
        let mut kept: Vec<Event> = Vec::with_capacity(events.len());
        for event in events {
            match kept.last_mut().filter(|last| last.id == event.id) {
                Some(last) if event.holds_against(last) => *last = event,
                Some(_) => {}
                None => kept.push(event),
            }
        }
        kept.sort_by(by_time);
        Self { events: Arc::new(kept) }
    }
}

impl Serialize for Log {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.events.serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for Log {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Vec::<Event>::deserialize(deserializer).map(Self::from_iter)
    }
}

#[cfg(test)]
mod tests {
    use super::super::event::What;
    use super::super::moment::Moment;
    use super::*;

    fn note(id: &str, time: &str, note: &str) -> Event {
        Event {
            id: Id::new(id).unwrap(),
            revision: 1,
            sequence: 0,
            removed: false,
            time: Moment::new(time, 0).unwrap(),
            place: String::new(),
            note: note.into(),
            what: What::Note,
        }
    }

    fn notes(log: &Log) -> Vec<&str> {
        log.events().map(|event| event.note.as_str()).collect()
    }

    #[test]
    fn a_late_entry_finds_its_place_and_a_new_time_moves_it() {
        let mut log = Log::default();
        log.write(note("a", "2026-05-01T10:00", "first"));
        log.write(note("b", "2026-05-03T10:00", "third"));
        log.write(note("c", "2026-05-02T10:00", "second"));
        assert_eq!(notes(&log), ["first", "second", "third"]);
        log.write(note("a", "2026-05-04T10:00", "moved"));
        assert_eq!(notes(&log), ["second", "third", "moved"]);
        assert_eq!(log.find(&Id::new("a").unwrap()).unwrap().revision, 2);
    }

    #[test]
    fn entries_of_the_same_minute_stay_in_the_order_of_writing() {
        let mut log = Log::default();
        for (id, text) in [("z", "first"), ("a", "second"), ("m", "third")] {
            log.write(note(id, "2026-05-01T10:00", text));
        }
        log.write(note("z", "2026-05-01T10:00", "first, changed"));
        assert_eq!(notes(&log), ["first, changed", "second", "third"]);
        assert_eq!(log.all().iter().cloned().collect::<Log>(), log);
    }

    #[test]
    fn the_later_version_holds_whichever_comes_first() {
        let old = note("a", "2026-05-01T10:00", "old");
        let new = Event { revision: 2, note: "new".into(), ..old.clone() };
        for order in [[&old, &new], [&new, &old]] {
            let mut log = Log::default();
            for event in order {
                log.merge(event.clone());
            }
            assert_eq!(notes(&log), ["new"]);
            assert_eq!(order.into_iter().cloned().collect::<Log>(), log);
        }
    }

    #[test]
    fn removing_keeps_the_entry_and_taking_back_restores_it() {
        let mut log = Log::default();
        log.write(note("a", "2026-05-01T10:00", "kept"));
        let before = log.clone();
        let (a, b) = (Id::new("a").unwrap(), Id::new("b").unwrap());
        log.set_removed(&a, true);
        log.write(note("b", "2026-05-02T10:00", "new"));
        assert_eq!(notes(&log), ["new"]);
        let changed = log.changed_since(&before);
        assert_eq!(changed, [a, b]);
        log.take_back(&changed, &before);
        assert_eq!(notes(&log), ["kept"]);
        assert_eq!(log.all().len(), 2);
    }
}
