//! Taking in what was shared.

use std::collections::BTreeMap;

use super::{Kind, Shared};
use crate::document::{
    AimForm, CalibrationForm, Car, CarFile, Document, FillForm, FuelForm, Id, TripForm, name_price,
    name_sum,
};

/// New numbers by the numbers that things had where they come from.
type Numbers = BTreeMap<u32, u32>;

impl Document {
    /// Takes in what was shared: a car beside the others and into use, with the
    /// identity given; a fill or a trip in place of that of the car in use. Where
    /// nothing was entered for that car yet, the tank comes along.
    ///
    /// Everything gets new numbers here, whatever numbers it came with.
    pub fn take_shared(&mut self, shared: &Shared, id: Id) {
        if self.settings.currency.is_empty() && self.cars().all(CarFile::is_untouched) {
            shared.currency().clone_into(&mut self.settings.currency);
        }
        match shared.kind() {
            Kind::Car => self.take_car(shared, id),
            Kind::Fill | Kind::Trip => {
                let here = &mut self.here;
                if here.is_untouched() {
                    here.car = shared.car().clone();
                    renumber(
                        &mut here.last_id,
                        here.car.calibrations.iter_mut().map(|it| &mut it.id),
                    );
                }
                let known = known_calibrations(shared, &here.car);
                if shared.kind() == Kind::Fill {
                    here.fill = fill(shared, &known, &mut here.last_id);
                } else {
                    here.route = route(shared.route(), &known, &mut here.last_id);
                }
            }
        }
        self.name_money_of(shared);
    }

    /// Names the sharer's currency beside the money that came along, where it is not the
    /// own one: a bare number would be taken for that.
    fn name_money_of(&mut self, shared: &Shared) {
        let Some(currency) = self.settings.other_than_own(shared.currency()) else { return };
        let here = &mut self.here;
        let (fill, route) = (&mut here.fill, &mut here.route);
        let prices = |fuel: &mut FuelForm| name_price(&mut fuel.price, currency);
        match shared.kind() {
            Kind::Car => here.car.own_fuels.iter_mut().for_each(prices),
            Kind::Fill => {
                fill.offers.iter_mut().for_each(prices);
                name_sum(&mut fill.stop_money, currency);
            }
            Kind::Trip => {
                for stop in &mut route.stops {
                    stop.fuels.iter_mut().for_each(prices);
                    name_sum(&mut stop.fee, currency);
                }
                name_sum(&mut route.budget, currency);
            }
        }
    }

    fn take_car(&mut self, shared: &Shared, id: Id) {
        let mut file = CarFile::new(id);
        file.demo = shared.is_invented();
        file.car = shared.car().clone();
        file.hardware = shared.hardware().clone();
        let (car, hardware, last) = (&mut file.car, &mut file.hardware, &mut file.last_id);
        let calibrations = renumber(last, car.calibrations.iter_mut().map(|it| &mut it.id));
        renumber(last, car.own_fuels.iter_mut().map(|it| &mut it.id));
        renumber(last, hardware.parts.iter_mut().map(|it| &mut it.id));
        let curves = renumber(last, hardware.curves.iter_mut().map(|it| &mut it.id));
        hardware.target = curves.get(&hardware.target).copied().unwrap_or_default();
        let compared = hardware.compared_with.and_then(|it| curves.get(&it).copied());
        hardware.compared_with = compared;
        for curve in &mut hardware.curves {
            curve.calibration = curve.calibration.and_then(|it| calibrations.get(&it).copied());
        }
        if self.here.is_untouched() {
            self.here = file;
        } else {
            self.add(file);
        }
    }
}

/// The calibration of a car that is this one in all but its number.
pub(super) fn same_calibration(car: &Car, wanted: &CalibrationForm) -> Option<u32> {
    let same =
        |it: &&CalibrationForm| CalibrationForm { id: wanted.id, ..(*it).clone() } == *wanted;
    car.calibrations.iter().find(same).map(|it| it.id)
}

/// A car's own numbers of the calibrations that came along and that it has too.
fn known_calibrations(shared: &Shared, car: &Car) -> Numbers {
    let came = shared.car().calibrations.iter();
    came.filter_map(|it| Some((it.id, same_calibration(car, it)?))).collect()
}

/// Gives new numbers.
fn renumber<'a>(last: &mut u32, ids: impl Iterator<Item = &'a mut u32>) -> Numbers {
    let mut numbers = Numbers::new();
    for id in ids {
        *last += 1;
        // Of two things that came with one number, the first is what is meant.
        numbers.entry(*id).or_insert(*last);
        *id = *last;
    }
    numbers
}

fn number_fuels(fuels: &mut [FuelForm], last: &mut u32) -> Numbers {
    renumber(last, fuels.iter_mut().map(|it| &mut it.id))
}

fn fill(shared: &Shared, known: &Numbers, last: &mut u32) -> FillForm {
    let mut fill = shared.fill().clone();
    number_fuels(&mut fill.offers, last);
    if let AimForm::Calibration(wanted) = fill.aim {
        fill.aim = match known.get(&wanted) {
            Some(id) => AimForm::Calibration(*id),
            // Another car's calibration is none of this one; its blend is an aim.
            None => AimForm::Share,
        };
        let calibration = shared.car().calibrations.iter().find(|it| it.id == wanted);
        if let (AimForm::Share, Some(calibration)) = (fill.aim, calibration) {
            calibration.written_for.clone_into(&mut fill.aim_share);
        }
    }
    fill
}

fn route(shared: &TripForm, known: &Numbers, last: &mut u32) -> TripForm {
    let mut route = shared.clone();
    for stop in &mut route.stops {
        let fuels = number_fuels(&mut stop.fuels, last);
        let new = |ids: &[u32], numbers: &Numbers| {
            ids.iter().filter_map(|id| numbers.get(id).copied()).collect::<Vec<_>>()
        };
        stop.closed = new(&stop.closed, &fuels);
        stop.calibrations = new(&stop.calibrations, known);
    }
    let stops = renumber(last, route.stops.iter_mut().map(|it| &mut it.id));
    route.here = route.here.and_then(|here| stops.get(&here).copied());
    route
}
