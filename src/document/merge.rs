//! Documents that meet: an import, a change taken back, another tab.
//!
//! Whatever happens to the forms, no entry of a log is ever dropped here: what
//! has to go is marked as removed, as a version of its own.

use super::file::{CarFile, Document};
use super::id::Id;
use super::log::Log;
use super::moment::Moment;

/// What a merge does to one car.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CarMerge {
    /// The car's identity.
    pub id: Id,
    /// The car's name.
    pub name: String,
    /// Whether the car was not known.
    pub is_new: bool,
    /// How many entries were not known.
    pub added: usize,
    /// How many entries read otherwise now.
    pub changed: usize,
    /// How many entries stay as they are.
    pub same: usize,
    /// How many of the entries given are removed ones; they are in the other counts
    /// too.
    pub removed: usize,
    /// When the first and the last of the entries given happened.
    pub span: Option<(Moment, Moment)>,
}

impl Document {
    /// Takes in another document: the union of the cars by identity, and of their
    /// entries by identity and revision. The settings, the car in use and the forms
    /// of cars known to both stay as they are, except that a removed car comes back
    /// if it is not removed there. An untouched car that was in use gives way.
    pub fn merge(&mut self, other: Self) -> Vec<CarMerge> {
        let give_way = self.here.is_untouched() && !other.here.removed;
        let in_use = other.here.id.clone();
        let mut merged = Vec::new();
        for car in std::iter::once(other.here).chain(other.others) {
            let mut summary = CarMerge {
                id: car.id.clone(),
                name: car.car.name.clone(),
                is_new: true,
                added: 0,
                changed: 0,
                same: 0,
                removed: car.log.all().iter().filter(|event| event.removed).count(),
                span: car
                    .log
                    .all()
                    .first()
                    .zip(car.log.all().last())
                    .map(|it| (it.0.time, it.1.time)),
            };
            let Some(known) = self.car_mut(&car.id) else {
                summary.added = car.log.all().len();
                merged.push(summary);
                self.others.push(car);
                continue;
            };
            let entries = known.log.by_id();
            for event in car.log.all() {
                *match entries.find(&event.id) {
                    None => &mut summary.added,
                    Some(known) if event.holds_against(known) => &mut summary.changed,
                    Some(_) => &mut summary.same,
                } += 1;
            }
            if summary.added + summary.changed > 0 {
                known.log.merge_all(car.log.all().to_vec());
            }
            known.removed &= car.removed;
            known.last_id = known.last_id.max(car.last_id);
            summary.is_new = false;
            summary.name.clone_from(&known.car.name);
            merged.push(summary);
        }
        if give_way {
            self.choose(&in_use);
            self.others.retain(|car| !car.is_untouched());
        }
        merged
    }

    /// Becomes another document. Cars that it does not have are removed, unless
    /// nothing was ever entered for them, and so are entries; they can be brought
    /// back.
    pub fn replace(&mut self, other: Self) {
        let mut before = std::mem::replace(self, other);
        for car in self.cars_mut() {
            if let Some(known) = before.car_mut(&car.id) {
                let mut log = known.log.clone();
                log.read_as(&car.log);
                car.log = log;
                car.last_id = car.last_id.max(known.last_id);
            }
        }
        self.keep_removed(before, |_| true);
    }

    /// Takes back a change: the forms are again as `before` it, and the entries
    /// that it made or changed too, unless they were changed once more since. Cars
    /// and entries that came from elsewhere in the meantime stay.
    pub fn take_back(&mut self, before: &Self, after: &Self) {
        let mut now = std::mem::replace(self, before.clone());
        for car in self.cars_mut() {
            let Some(current) = now.car_mut(&car.id) else { continue };
            let mut log = current.log.clone();
            if let Some(changed) = after.cars().find(|it| it.id == car.id) {
                let (now, then) = (current.log.by_id(), changed.log.by_id());
                let mut ids = changed.log.changed_since(&car.log);
                ids.retain(|id| now.find(id) == then.find(id));
                log.take_back(&ids, &car.log);
            }
            car.log = log;
            car.last_id = car.last_id.max(current.last_id);
        }
        self.keep_removed(now, |car| after.cars().any(|it| it.id == car.id));
    }

    /// Keeps the cars of another document that this one does not have, some of them
    /// as removed ones.
    fn keep_removed(&mut self, other: Self, removed: impl Fn(&CarFile) -> bool) {
        for mut car in std::iter::once(other.here).chain(other.others) {
            if self.cars().any(|it| it.id == car.id) || car.is_untouched() {
                continue;
            }
            car.removed |= removed(&car);
            self.others.push(car);
        }
    }

    /// Takes in the forms that another tab stored, where they were not changed here
    /// since `base`, which both tabs know. The logs stay; the order of the cars is
    /// that of the other tab, so that two tabs do not go on correcting each other.
    pub(crate) fn adopt(&mut self, base: Option<&Self>, theirs: &Self) {
        fn newer<T: PartialEq>(mine: T, base: Option<&T>, theirs: &mut T) {
            if base != Some(&mine) {
                *theirs = mine;
            }
        }
        let find = |id: &Id| base.and_then(|base| base.cars().find(|car| car.id == *id));
        let mut mine = std::mem::replace(self, theirs.clone());
        newer(mine.settings, base.map(|it| &it.settings), &mut self.settings);
        for car in self.cars_mut() {
            let known = std::iter::once(&mut mine.here).chain(&mut mine.others);
            let Some(known) = known.into_iter().find(|it| it.id == car.id) else { continue };
            let base = find(&car.id);
            let known = std::mem::replace(known, CarFile::new(car.id.clone()));
            newer(known.demo, base.map(|it| &it.demo), &mut car.demo);
            newer(known.removed, base.map(|it| &it.removed), &mut car.removed);
            newer(known.car, base.map(|it| &it.car), &mut car.car);
            newer(known.hardware, base.map(|it| &it.hardware), &mut car.hardware);
            newer(known.route, base.map(|it| &it.route), &mut car.route);
            newer(known.fill, base.map(|it| &it.fill), &mut car.fill);
            newer(known.draft, base.map(|it| &it.draft), &mut car.draft);
            car.last_id = car.last_id.max(known.last_id);
            car.log = known.log;
        }
        // A car that the other tab does not have is new here, or was forgotten there.
        for car in std::iter::once(mine.here).chain(mine.others) {
            let forgotten = || {
                (car.removed || car.is_untouched())
                    && find(&car.id).is_some_and(|base| base.without_log() == car.without_log())
            };
            if self.cars().all(|it| it.id != car.id) && !forgotten() {
                self.others.push(car);
            }
        }
    }

    /// The document without its logs, which are kept apart.
    pub(crate) fn without_logs(&self) -> Self {
        Self {
            schema: self.schema,
            settings: self.settings.clone(),
            here: self.here.without_log(),
            others: self.others.iter().map(CarFile::without_log).collect(),
        }
    }
}

impl CarFile {
    /// Whether nothing was ever entered for it.
    pub fn is_untouched(&self) -> bool {
        *self == Self::new(self.id.clone())
    }

    fn without_log(&self) -> Self {
        Self {
            id: self.id.clone(),
            car: self.car.clone(),
            hardware: self.hardware.clone(),
            route: self.route.clone(),
            fill: self.fill.clone(),
            draft: self.draft.clone(),
            log: Log::default(),
            ..*self
        }
    }
}
