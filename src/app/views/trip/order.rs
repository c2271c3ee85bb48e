//! Changes to the list of stops.

use fillwright::document::{AimForm, CarFile, Document, FuelForm, StartForm, StopRuleForm};
use fillwright::document::{TripForm, TripStopForm};
use fillwright::quantity::notation::Entry;

/// The stop with this number.
pub(super) fn find(document: &Document, id: u32) -> Option<&TripStopForm> {
    document.here.route.stops.iter().find(|it| it.id == id)
}

pub(super) fn find_mut(document: &mut Document, id: u32) -> Option<&mut TripStopForm> {
    document.here.route.stops.iter_mut().find(|it| it.id == id)
}

/// Where in the list the stop with this number is.
pub(super) fn place_of(route: &TripForm, id: u32) -> Option<usize> {
    route.stops.iter().position(|it| it.id == id)
}

/// Adds a stop at the end; its number. The first is the start, at home.
pub(super) fn add(car: &mut CarFile) -> u32 {
    let id = car.next_id();
    let place = if car.route.stops.is_empty() { "Home".into() } else { String::new() };
    car.route.stops.push(TripStopForm { id, place, ..TripStopForm::default() });
    id
}

/// Adds a copy of a stop right behind it; the number of the copy.
pub(super) fn copy(car: &mut CarFile, id: u32) -> Option<u32> {
    let at = place_of(&car.route, id)?;
    let mut stop = car.route.stops[at].clone();
    stop.id = car.next_id();
    for fuel in &mut stop.fuels {
        let new = car.next_id();
        for closed in stop.closed.iter_mut().filter(|closed| **closed == fuel.id) {
            *closed = new;
        }
        fuel.id = new;
    }
    let id = stop.id;
    car.route.stops.insert(at + 1, stop);
    Some(id)
}

/// Removes a stop. The car stays where it is, unless that was there.
pub(super) fn remove(route: &mut TripForm, id: u32) {
    route.stops.retain(|it| it.id != id);
    route.here = route.here.filter(|here| *here != id);
}

/// Which way a stop is moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way {
    Earlier,
    Deferred,
}

/// Moves a stop by one place, as far as there is one.
pub(super) fn shift(route: &mut TripForm, id: u32, way: Way) {
    let Some(at) = place_of(route, id) else { return };
    let to = match way {
        Way::Earlier => at.checked_sub(1),
        Way::Deferred => Some(at + 1).filter(|to| *to < route.stops.len()),
    };
    if let Some(to) = to {
        route.stops.swap(at, to);
    }
}

/// What a plan wants at a stop.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Planned {
    /// The share after it.
    pub(super) share: String,
    /// The level after it.
    pub(super) level: Entry,
}

/// Notes that the car is at a stop, and puts its fuels on offer under Fill, with
/// what the plan wants there as the aim. `has_log` tells whether the log knows what
/// is in the tank: typed contents are those of another place.
pub(super) fn arrive(car: &mut CarFile, id: u32, planned: Option<Planned>, has_log: bool) {
    let Some(stop) = car.route.stops.iter().find(|it| it.id == id).cloned() else { return };
    car.route.here = Some(id);
    car.route.filled = false;
    if has_log {
        car.route.start = StartForm::Log;
        car.fill.start = StartForm::Log;
    }
    let had = |fuel: &FuelForm| !stop.closed.contains(&fuel.id);
    let mut offers: Vec<FuelForm> = stop.fuels.iter().filter(|it| had(it)).cloned().collect();
    for fuel in &mut offers {
        fuel.id = car.next_id();
    }
    let fill = &mut car.fill;
    fill.offers = offers;
    fill.place.clone_from(&stop.place);
    fill.contents.level.level = Entry { text: String::new(), ..fill.contents.level.level };
    fill.clicked = false;
    if let Some(planned) = planned {
        fill.aim = AimForm::Share;
        fill.aim_share = planned.share;
        fill.stop = StopRuleForm::Level;
        fill.stop_level = planned.level;
    }
}

#[cfg(test)]
mod tests {
    use fillwright::document::Id;

    use super::*;

    fn car() -> CarFile {
        let mut car = CarFile::new(Id::new("car").unwrap());
        for (place, fuels) in [("Home", 2), ("Ferry", 1), ("Hill", 0)] {
            let id = add(&mut car);
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
        let id = copy(&mut car, home).unwrap();
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
        shift(&mut car.route, home, Way::Earlier);
        assert_eq!(places(&car), ["Home", "Ferry", "Hill"]);
        shift(&mut car.route, home, Way::Deferred);
        shift(&mut car.route, home, Way::Deferred);
        shift(&mut car.route, home, Way::Deferred);
        assert_eq!(places(&car), ["Ferry", "Hill", "Home"]);
        shift(&mut car.route, home, Way::Earlier);
        assert_eq!(places(&car), ["Ferry", "Home", "Hill"]);
    }

    #[test]
    fn who_stands_at_a_removed_stop_stands_at_the_start_again() {
        let mut car = car();
        let [home, ferry] = [car.route.stops[0].id, car.route.stops[1].id];
        car.route.here = Some(ferry);
        remove(&mut car.route, home);
        assert_eq!(car.route.here, Some(ferry));
        remove(&mut car.route, ferry);
        assert_eq!((car.route.here, places(&car)), (None, vec!["Hill"]));
    }

    #[test]
    fn fill_offers_what_is_to_be_had_where_the_car_is() {
        let mut car = car();
        let home = car.route.stops[0].clone();
        let planned = Planned { share: "31.2".into(), level: Entry::metric("44.5") };
        arrive(&mut car, home.id, Some(planned), true);
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
        arrive(&mut car, home, None, false);
        assert_eq!((car.fill.aim_share.as_str(), car.fill.start), ("E30", StartForm::Typed));
    }
}
