//! A route that was checked.

use crate::quantity::Volume;

use super::check::{self, RouteError};
use super::route::{Bought, Route};

impl Route {
    /// The route, checked once for everything that follows.
    ///
    /// # Errors
    /// When something cannot be, or is not known though a rule needs it; the error
    /// says what to do.
    pub fn checked(self) -> Result<CheckedRoute, RouteError> {
        check::check(&self)?;
        Ok(CheckedRoute { route: self })
    }
}

/// A route in which everything fits together.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckedRoute {
    route: Route,
}

impl std::ops::Deref for CheckedRoute {
    type Target = Route;
    fn deref(&self) -> &Route {
        &self.route
    }
}

impl CheckedRoute {
    /// Nothing bought anywhere.
    pub fn nothing_bought(&self) -> Bought {
        self.stops.iter().map(|stop| vec![Volume::default(); stop.pumps.len()]).collect()
    }

    /// The same route, to be changed.
    pub fn into_inner(self) -> Route {
        self.route
    }

    /// What must be left at the end of a leg.
    pub fn least_on_arrival(&self, leg: usize) -> Volume {
        match self.final_level {
            Some(level) if leg + 1 == self.legs.len() && level > self.tank.reserve => level,
            _ => self.tank.reserve,
        }
    }
}
