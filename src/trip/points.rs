//! Points of the box of what is possible: start level, start share, pump shares.

use uom::si::volume::liter;

use crate::quantity::{Band, Share};

use super::checked::CheckedRoute;

/// How many points beside the expected one and the corners.
const WITHIN: u32 = 192;

/// One possible truth: start level in litres, and the true shares.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Point {
    pub(super) level: f64,
    pub(super) share: Share,
    pub(super) pumps: Vec<Vec<Share>>,
}

/// The expected point, then, where anything is uncertain, the corners and points
/// within. Half of the latter are vertices of the box, the others lie anywhere; the
/// sequence is Kronecker's, `frac(i alpha)` with the roots of primes, which fills a
/// box evenly and needs no chance.
pub(super) fn of(route: &CheckedRoute) -> Vec<Point> {
    let mut points = vec![at(route, Band::expected, Band::expected)];
    if is_certain(route) {
        return points;
    }
    points.extend(corners(route));
    for index in 1..=WITHIN {
        let mut coordinates = Roots::new();
        let mut place = |low: f64, high: f64| {
            let part = (f64::from(index) * coordinates.next_root()).fract();
            let part = if index % 2 == 0 { part.round() } else { part };
            low + (high - low) * part
        };
        let level = route.tank.level;
        let level = place(level.low().get::<liter>(), level.high().get::<liter>());
        let mut share = |band: Band<Share>| {
            Share::clamped(place(band.low().fraction(), band.high().fraction()))
        };
        let start = share(route.tank.share);
        let pumps = route
            .stops
            .iter()
            .map(|stop| stop.pumps.iter().map(|pump| share(pump.share)).collect())
            .collect();
        points.push(Point { level, share: start, pumps });
    }
    points
}

/// The four corners: level low or high, all shares low or all high. Those that
/// coincide are named once.
pub(super) fn corners(route: &CheckedRoute) -> Vec<Point> {
    type End = fn(&Band<Share>) -> Share;
    let mut corners: Vec<Point> = Vec::with_capacity(4);
    for level in [Band::low, Band::high] {
        for share in [Band::low as End, Band::high as End] {
            let corner = at(route, level, share);
            if !corners.contains(&corner) {
                corners.push(corner);
            }
        }
    }
    corners
}

/// The expected point alone.
pub(super) fn expected(route: &CheckedRoute) -> Point {
    at(route, Band::expected, Band::expected)
}

fn at(
    route: &CheckedRoute,
    level: impl Fn(&Band<crate::quantity::Volume>) -> crate::quantity::Volume,
    share: impl Fn(&Band<Share>) -> Share,
) -> Point {
    Point {
        level: level(&route.tank.level).get::<liter>(),
        share: share(&route.tank.share),
        pumps: route
            .stops
            .iter()
            .map(|stop| stop.pumps.iter().map(|pump| share(&pump.share)).collect())
            .collect(),
    }
}

fn is_certain(route: &CheckedRoute) -> bool {
    let known = |band: &Band<Share>| band.low() >= band.high();
    route.tank.level.low() >= route.tank.level.high()
        && known(&route.tank.share)
        && route.stops.iter().flat_map(|stop| &stop.pumps).all(|pump| known(&pump.share))
}

/// The fractional parts of the roots of the primes, one after the other.
struct Roots {
    last: u32,
}

impl Roots {
    fn new() -> Self {
        Self { last: 1 }
    }

    fn next_root(&mut self) -> f64 {
        let is_prime = |n: u32| (2..n).take_while(|d| d * d <= n).all(|d| !n.is_multiple_of(d));
        loop {
            self.last += 1;
            if is_prime(self.last) {
                return f64::from(self.last).sqrt().fract();
            }
        }
    }
}
