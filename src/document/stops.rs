//! The stops of a trip: added, copied, moved, removed, arrived at.

use super::file::CarFile;
use super::fill::{AimForm, StartForm, StopRuleForm};
use super::fuel::FuelForm;
use super::trip::{TripForm, TripStopForm};
use crate::quantity::notation::Entry;

/// Which way a stop is moved in the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shift {
    /// To be reached before the one that is now before it.
    Earlier,
    /// To be reached after the one that is now after it.
    Later,
}

/// The tank that a plan wants after a stop.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlannedStop {
    /// Its ethanol share.
    pub share: String,
    /// Its level.
    pub level: Entry,
}

impl TripForm {
    /// The stop with this number.
    pub fn stop(&self, id: u32) -> Option<&TripStopForm> {
        self.stops.iter().find(|it| it.id == id)
    }

    /// The stop with this number, to be changed.
    pub fn stop_mut(&mut self, id: u32) -> Option<&mut TripStopForm> {
        self.stops.iter_mut().find(|it| it.id == id)
    }

    /// The place in the list of the stop with this number, from 0.
    pub fn place_of(&self, id: u32) -> Option<usize> {
        self.stops.iter().position(|it| it.id == id)
    }

    /// Removes a stop. The car stays where it is, unless that was there.
    pub fn remove_stop(&mut self, id: u32) {
        self.stops.retain(|it| it.id != id);
        self.here = self.here.filter(|here| *here != id);
    }

    /// Moves a stop by one place, as far as there is one.
    pub fn shift_stop(&mut self, id: u32, shift: Shift) {
        let Some(at) = self.place_of(id) else { return };
        let to = match shift {
            Shift::Earlier => at.checked_sub(1),
            Shift::Later => Some(at + 1).filter(|to| *to < self.stops.len()),
        };
        if let Some(to) = to {
            self.stops.swap(at, to);
        }
    }

    /// Begins the trip again: all stops lie ahead.
    pub fn begin_again(&mut self) {
        self.here = None;
        self.filled = false;
    }
}

impl TripStopForm {
    /// Notes whether a calibration has to stay usable on the leg after the stop.
    pub fn keep_calibration(&mut self, calibration: u32, keep: bool) {
        self.calibrations.retain(|it| *it != calibration);
        if keep {
            self.calibrations.push(calibration);
        }
    }
}

impl CarFile {
    /// Adds a stop at the end, the first one under the name of where trips start; its
    /// number.
    pub fn add_stop(&mut self, home: &str) -> u32 {
        let id = self.next_id();
        let place = if self.route.stops.is_empty() { home.to_owned() } else { String::new() };
        self.route.stops.push(TripStopForm { id, place, ..TripStopForm::default() });
        id
    }

    /// Adds a copy of a stop right behind it; the number of the copy.
    pub fn copy_stop(&mut self, id: u32) -> Option<u32> {
        let at = self.route.place_of(id)?;
        let mut stop = self.route.stops[at].clone();
        stop.id = self.next_id();
        for fuel in &mut stop.fuels {
            let new = self.next_id();
            for closed in stop.closed.iter_mut().filter(|closed| **closed == fuel.id) {
                *closed = new;
            }
            fuel.id = new;
        }
        let id = stop.id;
        self.route.stops.insert(at + 1, stop);
        Some(id)
    }

    /// Notes that the car is at a stop, and puts its fuels on offer for the fill, with
    /// what the plan wants there as the aim. `has_log` tells whether the log knows what
    /// is in the tank: typed contents are those of another place.
    pub fn arrive(&mut self, id: u32, planned: Option<PlannedStop>, has_log: bool) {
        let Some(stop) = self.route.stop(id).cloned() else { return };
        self.route.here = Some(id);
        self.route.filled = false;
        if has_log {
            self.route.start = StartForm::Log;
            self.fill.start = StartForm::Log;
        }
        let had = |fuel: &FuelForm| !stop.closed.contains(&fuel.id);
        let mut offers: Vec<FuelForm> = stop.fuels.iter().filter(|it| had(it)).cloned().collect();
        for fuel in &mut offers {
            fuel.id = self.next_id();
        }
        let fill = &mut self.fill;
        fill.offers = offers;
        fill.place.clone_from(&stop.place);
        fill.contents.level.level.text.clear();
        fill.clicked = false;
        if let Some(planned) = planned {
            fill.aim = AimForm::Share;
            fill.aim_share = planned.share;
            fill.stop = StopRuleForm::Level;
            fill.stop_level = planned.level;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Id;

    fn car() -> CarFile {
        let mut car = CarFile::new(Id::new("car").unwrap());
        for (place, fuels) in [("Home", 2), ("Ferry", 1), ("Hill", 0)] {
            let id = car.add_stop("");
            let fuels = (0..fuels).map(|_| FuelForm { id: car.next_id(), ..FuelForm::default() });
            let fuels: Vec<_> = fuels.collect();
            let stop = car.route.stops.last_mut().unwrap();
            assert_eq!(stop.id, id);
            stop.place = place.into();
            stop.closed = fuels.iter().skip(1).map(|it| it.id).collect();
            stop.fuels = fuels;
        }
        car
    }

    fn places(car: &CarFile) -> Vec<&str> {
        car.route.stops.iter().map(|it| it.place.as_str()).collect()
    }

    #[test]
    fn a_copy_stands_behind_its_stop_with_numbers_of_its_own() {
        let mut car = car();
        let home = car.route.stops[0].id;
        let id = car.copy_stop(home).unwrap();
        assert_eq!(places(&car), ["Home", "Home", "Ferry", "Hill"]);
        let [first, second] = [&car.route.stops[0], &car.route.stops[1]];
        assert_eq!(second.id, id);
        assert_eq!(second.closed, [second.fuels[1].id]);
        let mut numbers: Vec<u32> = car.route.stops.iter().map(|it| it.id).collect();
        numbers.extend(first.fuels.iter().chain(&second.fuels).map(|it| it.id));
        let count = numbers.len();
        numbers.sort_unstable();
        numbers.dedup();
        assert_eq!(numbers.len(), count);
    }

    #[test]
    fn a_stop_moves_within_the_list() {
        let mut car = car();
        let home = car.route.stops[0].id;
        car.route.shift_stop(home, Shift::Earlier);
        assert_eq!(places(&car), ["Home", "Ferry", "Hill"]);
        car.route.shift_stop(home, Shift::Later);
        car.route.shift_stop(home, Shift::Later);
        car.route.shift_stop(home, Shift::Later);
        assert_eq!(places(&car), ["Ferry", "Hill", "Home"]);
        car.route.shift_stop(home, Shift::Earlier);
        assert_eq!(places(&car), ["Ferry", "Home", "Hill"]);
    }

    #[test]
    fn who_stands_at_a_removed_stop_stands_at_the_start_again() {
        let mut car = car();
        let [home, ferry] = [car.route.stops[0].id, car.route.stops[1].id];
        car.route.here = Some(ferry);
        car.route.remove_stop(home);
        assert_eq!(car.route.here, Some(ferry));
        car.route.remove_stop(ferry);
        assert_eq!((car.route.here, places(&car)), (None, vec!["Hill"]));
    }

    #[test]
    fn fill_offers_what_is_to_be_had_where_the_car_is() {
        let mut car = car();
        let home = car.route.stops[0].clone();
        let planned = PlannedStop { share: "31.2".into(), level: Entry::metric("44.5") };
        car.arrive(home.id, Some(planned), true);
        assert_eq!(car.route.here, Some(home.id));
        assert_eq!((car.route.start, car.fill.start), (StartForm::Log, StartForm::Log));
        assert_eq!(car.fill.offers.len(), 1, "the second is not to be had");
        assert!(home.fuels.iter().all(|it| it.id != car.fill.offers[0].id));
        assert_eq!((car.fill.place.as_str(), car.fill.aim_share.as_str()), ("Home", "31.2"));
        assert_eq!(
            (car.fill.stop, car.fill.stop_level.text.as_str()),
            (StopRuleForm::Level, "44.5")
        );
    }

    #[test]
    fn without_a_plan_the_aim_stays() {
        let mut car = car();
        car.fill.aim_share = "E30".into();
        let home = car.route.stops[0].id;
        car.arrive(home, None, false);
        assert_eq!((car.fill.aim_share.as_str(), car.fill.start), ("E30", StartForm::Typed));
    }
}
