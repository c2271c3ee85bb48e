//! How far a share or an octane number can go: from the worst of some points to worse
//! ones.
//!
//! A level needs no such search. On every leg more ethanol leaves less and a fuller tank
//! leaves more, so the levels are furthest apart at corners of the box. The share is not
//! like that: more ethanol bought early means less of it left later. So each thing that is
//! not known for sure is moved by itself, to where the share or the octane number is
//! furthest out, until nothing moves it any further.

use uom::si::volume::liter;

use crate::quantity::Share;

use super::checked::CheckedRoute;
use super::points::Point;
use super::route::Bought;
use super::run::{Passed, litres_of};

/// How often to go through all that is not known.
const ROUNDS: u32 = 4;
/// A gain smaller than this, as a share or as an octane number, is the end.
const SMALLEST_GAIN: f64 = 1e-7;

/// What is to be as high as it can be.
type Worth = fn(&Passed) -> Option<f64>;

const WORTHS: [Worth; 3] = [
    |at| at.departure.share().map(Share::fraction),
    |at| at.departure.share().map(|share| -share.fraction()),
    |at| at.departure.ron().map(|ron| -ron),
];

/// Points at which a leg's share is higher or lower, or its octane number lower, than at
/// any of those given, where the route goes as in `runs`.
pub(super) fn beyond(
    route: &CheckedRoute,
    bought: &Bought,
    points: &[Point],
    runs: &[Vec<Passed>],
) -> Vec<Point> {
    let mut found = Vec::new();
    for leg in 0..route.legs.len() {
        let unknowns = Unknown::before(route, bought, leg);
        for worth in WORTHS {
            let known =
                points.iter().zip(runs).filter_map(|(point, run)| Some((point, worth(&run[leg])?)));
            if let Some((start, most)) = known.max_by(|a, b| a.1.total_cmp(&b.1)) {
                let climb = Climb { route, bought, leg, worth, unknowns: &unknowns };
                found.extend(climb.from(start.clone(), most));
            }
        }
    }
    found
}

/// One thing that is not known for sure.
#[derive(Clone, Copy, Debug)]
enum Unknown {
    Level,
    Share,
    /// The share of a pump's fuel, by stop and pump.
    Pump(usize, usize),
}

impl Unknown {
    /// Those that matter on a leg.
    fn before(route: &CheckedRoute, bought: &Bought, leg: usize) -> Vec<Self> {
        let pumps = (0..=leg).flat_map(|stop| {
            let pumps = 0..route.stops[stop].pumps.len();
            pumps.map(move |pump| Self::Pump(stop, pump))
        });
        let is_bought = |it: &Self| match *it {
            Self::Pump(stop, pump) => litres_of(bought, stop, pump).get::<liter>() > 0.0,
            Self::Level | Self::Share => true,
        };
        let all = [Self::Level, Self::Share].into_iter().chain(pumps.filter(is_bought));
        all.filter(|it| it.ends(route).0 < it.ends(route).1).collect()
    }

    fn ends(self, route: &CheckedRoute) -> (f64, f64) {
        let band = match self {
            Self::Level => {
                let level = route.tank.level;
                return (level.low().get::<liter>(), level.high().get::<liter>());
            }
            Self::Share => route.tank.share,
            Self::Pump(stop, pump) => route.stops[stop].pumps[pump].share,
        };
        (band.low().fraction(), band.high().fraction())
    }

    /// Puts it at a value; returns what it was before.
    fn put(self, point: &mut Point, value: f64) -> f64 {
        let share = match self {
            Self::Level => return std::mem::replace(&mut point.level, value),
            Self::Share => &mut point.share,
            Self::Pump(stop, pump) => &mut point.pumps[stop][pump],
        };
        std::mem::replace(share, Share::clamped(value)).fraction()
    }
}

struct Climb<'a> {
    route: &'a CheckedRoute,
    bought: &'a Bought,
    leg: usize,
    worth: Worth,
    unknowns: &'a [Unknown],
}

impl Climb<'_> {
    /// The point that is reached, if it lies further out than the start.
    fn from(&self, mut point: Point, start: f64) -> Option<Point> {
        let mut most = start;
        for _ in 0..ROUNDS {
            let before = most;
            for &unknown in self.unknowns {
                most = self.move_one(&mut point, unknown, most);
            }
            if most < before + SMALLEST_GAIN {
                break;
            }
        }
        (most > start + SMALLEST_GAIN).then_some(point)
    }

    /// Moves one unknown to where the worth is highest: to an end, or between the ends to
    /// the top of the parabola through them and the middle.
    fn move_one(&self, point: &mut Point, unknown: Unknown, most: f64) -> f64 {
        let (low, high) = unknown.ends(self.route);
        let middle = f64::midpoint(low, high);
        let mut best = (most, None);
        let mut try_at = |value: f64| {
            let before = unknown.put(point, value);
            let worth = self.worth_of(point);
            unknown.put(point, before);
            if worth > best.0 {
                best = (worth, Some(value));
            }
            worth
        };
        let (at_low, at_middle, at_high) = (try_at(low), try_at(middle), try_at(high));
        let bend = at_low - 2.0 * at_middle + at_high;
        if bend < 0.0 {
            let top = (at_low - at_high) / (2.0 * bend);
            try_at(middle + top.clamp(-1.0, 1.0) * (high - low) / 2.0);
        }
        if let (_, Some(value)) = best {
            unknown.put(point, value);
        }
        best.0
    }

    fn worth_of(&self, point: &Point) -> f64 {
        let run = self.route.run_to(self.bought, point, self.leg);
        run.last().and_then(|at| (self.worth)(at)).unwrap_or(f64::NEG_INFINITY)
    }
}
