//! The fuels on offer, at the pump and along the trip: offered, kept, closed, removed.

use super::file::Document;
use super::fuel::FuelForm;
use super::trip::TripStopForm;
use crate::fuel::grades::Grade;
use crate::quantity::notation::Entry;

/// Where fuels are on offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfferedAt {
    /// Where the car is filled now.
    Pump,
    /// At the stop of the trip with this number.
    Stop(u32),
}

/// A fuel that is put on offer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NewFuel {
    /// One of those that the owner keeps, by its number.
    Own(u32),
    /// One of the catalogue.
    Grade(&'static Grade),
    /// Another one, to be filled in.
    Other,
}

impl Document {
    /// The fuels that are on offer somewhere.
    pub fn offers(&self, place: OfferedAt) -> &[FuelForm] {
        match place {
            OfferedAt::Pump => &self.here.fill.offers,
            OfferedAt::Stop(id) => self.here.route.stop(id).map_or(&[], |it| &it.fuels),
        }
    }

    /// Puts a fuel on offer; its number, if there is such a place. One without a name, as
    /// those of the catalogue are, gets the one that is made of how many there are then.
    pub fn offer(
        &mut self,
        place: OfferedAt,
        fuel: NewFuel,
        name: impl FnOnce(usize) -> String,
    ) -> Option<u32> {
        let mut form = match fuel {
            NewFuel::Own(id) => self.here.car.own_fuels.iter().find(|it| it.id == id).cloned(),
            NewFuel::Grade(grade) => Some(FuelForm::of_grade(grade)),
            NewFuel::Other => None,
        }
        .unwrap_or_default();
        let id = self.here.next_id();
        form.id = id;
        let fuels = match place {
            OfferedAt::Pump => &mut self.here.fill.offers,
            OfferedAt::Stop(id) => &mut self.here.route.stop_mut(id)?.fuels,
        };
        if form.name.is_empty() {
            form.name = name(fuels.len() + 1);
        }
        fuels.push(form);
        Some(id)
    }

    /// The fuel on offer with this number, at the pump or along the trip.
    pub fn fuel(&self, id: u32) -> Option<&FuelForm> {
        let along = self.here.route.stops.iter().flat_map(|stop| &stop.fuels);
        self.here.fill.offers.iter().chain(along).find(|fuel| fuel.id == id)
    }

    /// The same, to be changed.
    pub fn fuel_mut(&mut self, id: u32) -> Option<&mut FuelForm> {
        let along = self.here.route.stops.iter_mut().flat_map(|stop| &mut stop.fuels);
        self.here.fill.offers.iter_mut().chain(along).find(|fuel| fuel.id == id)
    }

    /// The stop of the trip that a fuel is on offer at; none at the pump.
    pub fn stop_of_fuel(&self, id: u32) -> Option<&TripStopForm> {
        let has = |stop: &&TripStopForm| stop.fuels.iter().any(|fuel| fuel.id == id);
        self.here.route.stops.iter().find(has)
    }

    /// Takes a fuel off the offer, wherever it is.
    pub fn remove_fuel(&mut self, id: u32) {
        self.here.fill.remove_offer(id);
        for stop in &mut self.here.route.stops {
            stop.fuels.retain(|fuel| fuel.id != id);
            stop.closed.retain(|fuel| *fuel != id);
        }
    }

    /// Notes whether a fuel of the trip is not to be had.
    pub fn close_fuel(&mut self, id: u32, closed: bool) {
        let stops = self.here.route.stops.iter_mut();
        for stop in stops.filter(|it| it.fuels.iter().any(|fuel| fuel.id == id)) {
            stop.closed.retain(|fuel| *fuel != id);
            if closed {
                stop.closed.push(id);
            }
        }
    }

    /// Keeps a fuel on offer among the owner's own.
    pub fn keep_fuel(&mut self, id: u32) {
        let Some(fuel) = self.fuel(id).cloned() else { return };
        let own = FuelForm { id: self.here.next_id(), poured: Entry::default(), ..fuel };
        self.here.car.own_fuels.push(own);
    }

    /// Whether a fuel on offer is among the owner's own.
    pub fn keeps_fuel(&self, id: u32) -> bool {
        let own = &self.here.car.own_fuels;
        self.fuel(id).is_some_and(|fuel| {
            own.iter().any(|own| own.name == fuel.name && own.share == fuel.share)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Id;
    use crate::fuel::grades;

    fn document() -> Document {
        let mut document = Document::empty(Id::new("car").unwrap());
        document.here.add_stop("Home");
        document
    }

    #[test]
    fn fuels_are_offered_at_the_pump_and_along_the_trip() {
        let mut document = document();
        let stop = OfferedAt::Stop(document.here.route.stops[0].id);
        let name = |count| format!("Fuel {count}");
        let grade = grades::find("en15293-e85-summer").unwrap();
        let here = document.offer(OfferedAt::Pump, NewFuel::Other, name).unwrap();
        let there = document.offer(stop, NewFuel::Grade(grade), name).unwrap();
        assert_eq!(document.fuel(here).unwrap().name, "Fuel 1");
        assert_eq!(document.fuel(there).unwrap().grade.as_deref(), Some(grade.id));
        assert!(document.stop_of_fuel(here).is_none() && document.stop_of_fuel(there).is_some());
        assert_eq!(document.offer(OfferedAt::Stop(999), NewFuel::Other, name), None);
        assert_eq!((document.offers(OfferedAt::Pump).len(), document.offers(stop).len()), (1, 1));
    }

    #[test]
    fn a_kept_fuel_is_offered_again_without_what_was_poured() {
        let mut document = document();
        let id = document.offer(OfferedAt::Pump, NewFuel::Other, |_| "Mine".into()).unwrap();
        document.fuel_mut(id).unwrap().poured = Entry::metric("12");
        assert!(!document.keeps_fuel(id));
        document.keep_fuel(id);
        assert!(document.keeps_fuel(id));
        let own = document.here.car.own_fuels[0].id;
        let again = document.offer(OfferedAt::Pump, NewFuel::Own(own), |_| String::new()).unwrap();
        let again = document.fuel(again).unwrap();
        assert_eq!((again.name.as_str(), again.poured.text.as_str()), ("Mine", ""));
        assert_ne!(again.id, own);
    }

    #[test]
    fn a_fuel_that_is_removed_is_not_closed_either() {
        let mut document = document();
        let stop = document.here.route.stops[0].id;
        let id = document.offer(OfferedAt::Stop(stop), NewFuel::Other, |_| String::new()).unwrap();
        document.close_fuel(id, true);
        document.close_fuel(id, true);
        assert_eq!(document.here.route.stops[0].closed, [id]);
        document.close_fuel(id, false);
        assert!(document.here.route.stops[0].closed.is_empty());
        document.close_fuel(id, true);
        document.remove_fuel(id);
        let stop = &document.here.route.stops[0];
        assert!(stop.fuels.is_empty() && stop.closed.is_empty());
    }
}
