//! What a plan makes of the route.

use super::reading::TripAsked;
use crate::quantity::{Band, Length, Money, Share, Volume};
use crate::trip::{Bought, LegCourse, TripCourse};

/// A plan for a route, worked out exactly.
#[derive(Clone, Debug, PartialEq)]
pub struct TripAnswer {
    /// What it is for.
    pub asked: TripAsked,
    /// Litres by stop and fuel.
    pub bought: Bought,
    /// What comes of it.
    pub course: TripCourse,
}

/// The tank at a place of the route.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TankAtPlace {
    /// How far it is from the start.
    pub distance: Length,
    /// How much is in the tank.
    pub level: Band<Volume>,
    /// Its ethanol share; none of an empty tank.
    pub share: Option<Band<Share>>,
}

/// A plan in a few figures, to be compared with another one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InShort {
    /// What fuel and stops cost.
    pub cost: Money,
    /// At how many stops something is bought.
    pub stops: usize,
    /// The weakest blend that is driven, as expected.
    pub weakest: Option<Share>,
    /// The strongest.
    pub strongest: Option<Share>,
    /// The least octane number that is driven, as expected.
    pub ron: Option<f64>,
}

impl TripAnswer {
    /// What these litres make of the route.
    pub fn of(asked: TripAsked, bought: Bought) -> Self {
        let course = asked.route.simulate(&bought);
        Self { asked, bought, course }
    }

    /// The level after a stop. What does not go in is no part of it.
    pub fn level_after(&self, leg: &LegCourse) -> Band<Volume> {
        let full = self.asked.route.tank.capacity;
        leg.departure.level.map(|level| if level < full { level } else { full })
    }

    /// The tank before and after each stop, and at the end.
    pub fn places(&self) -> Vec<TankAtPlace> {
        let tank = &self.asked.route.tank;
        let mut places = vec![TankAtPlace {
            distance: Length::default(),
            level: tank.level,
            share: Some(tank.share),
        }];
        let mut distance = Length::default();
        for (driven, leg) in self.course.legs.iter().zip(&self.asked.route.legs) {
            let departure = &driven.departure;
            let level = self.level_after(driven);
            places.push(TankAtPlace { distance, level, share: departure.share });
            distance += leg.distance;
            places.push(TankAtPlace { distance, level: driven.arrival, share: departure.share });
        }
        places
    }

    /// The plan in a few figures.
    pub fn in_short(&self) -> InShort {
        let departures = || self.course.legs.iter().map(|it| &it.departure);
        let shares = || departures().filter_map(|it| it.share.map(|share| share.expected()));
        let lesser = |a: Share, b: Share| if b < a { b } else { a };
        let greater = |a: Share, b: Share| if b > a { b } else { a };
        let rons = departures().map(|it| it.ron.map(|ron| ron.expected()));
        InShort {
            cost: self.course.cost,
            stops: self.course.stops,
            weakest: shares().reduce(lesser),
            strongest: shares().reduce(greater),
            // One blend without a figure leaves the whole without.
            ron: rons.reduce(|a, b| Some(a?.min(b?))).flatten(),
        }
    }
}
