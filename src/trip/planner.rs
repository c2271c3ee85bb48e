//! The planner: a plan at once, better ones and a better bound while it goes on.

use std::sync::Arc;

use crate::quantity::{Money, Share};

use super::checked::CheckedRoute;
use super::descent::Found;
use super::diagnosis::Diagnosis;
use super::model::Model;
use super::objective::{Measure, Target};
use super::plan::{Bound, Done, PlanWanted, Progress, TripObjective, TripPlan};
use super::robust::worst_point;
use super::rounding::{Rounded, Rounding};
use super::search::{ROUNDING, Search, Standing};

/// Looks for the best plan of a route, step by step.
///
/// Each [`Planner::step`] solves one small linear programme, so that whoever runs it
/// can stop, or show what is there, between any two. It may be stopped at any time:
/// the plan holds exactly and the bound is a bound.
///
/// ```
/// use fillwright::calibration::FluidState;
/// use fillwright::tank::Tank;
/// use fillwright::quantity::Consumption;
/// use fillwright::quantity::{Band, Length, Money, Share, UnitPrice, Volume};
/// use fillwright::fuel::Extras;
/// use fillwright::trip::{BlendModel, Burn, Done, Leg, Planner, Pump, Route, Stop, PlanWanted};
/// use uom::si::{length::kilometer, volume::liter};
///
/// let litres = |value| Volume::new::<liter>(value);
/// let petrol = |price| Money::new(price).map(|price| Pump {
///     share: Band::exact(Share::ZERO),
///     price: UnitPrice::new(price, litres(1.0)),
///     extras: Extras::default(),
///     ron: None,
///     limit: None,
///     closed: false,
/// });
/// let leg = Leg {
///     distance: Length::new::<kilometer>(400.0),
///     factor: 1.0,
///     calibrations: vec![],
///     ron_min: None,
/// };
/// let stop = |pump| Stop { pumps: vec![pump], fixed_cost: Money::default() };
/// let route = Route {
///     tank: Tank {
///         capacity: litres(50.0),
///         level: Band::exact(litres(10.0)),
///         share: Band::exact(Share::ZERO),
///         ron: None,
///         reserve: litres(5.0),
///     },
///     extras: Extras::default(),
///     blend: BlendModel::default(),
///     burn: Burn::Litres(Consumption::from_litres_per_100_km(10.0)?),
///     calibrations: vec![],
///     injection_fluid: FluidState::Unknown,
///     stops: vec![stop(petrol(1.5)?), stop(petrol(1.8)?)],
///     legs: vec![leg.clone(), leg],
///     final_level: None,
/// };
/// let mut planner = Planner::new(route.checked()?, PlanWanted::default());
/// let progress = loop {
///     let progress = planner.step();
///     if progress.done != Done::Working {
///         break progress;
///     }
/// };
/// // 80 km in the tank above the reserve: 40 L fit at 1.50, 35 L are bought at 1.80.
/// let cost = progress.plan.map(|plan| plan.course.cost.amount());
/// assert!(cost.is_some_and(|cost| (cost - 123.0).abs() < 1e-3));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug)]
pub struct Planner {
    route: Arc<CheckedRoute>,
    wish: PlanWanted,
    stage: Stage,
    /// How many stops are needed at least, once they have been counted.
    fewest: Option<u32>,
    /// The best plan so far and what it was made from.
    plan: Option<(Found, TripPlan)>,
    rounded: Option<TripPlan>,
    /// The best bound of a search that is over.
    bound: Option<f64>,
    /// Programmes of searches that are over.
    programmes: u32,
}

#[derive(Debug)]
enum Stage {
    /// The fewest stops are counted.
    Stops(Box<Search>),
    /// The plan is looked for.
    Plan(Box<Search>),
    /// The plan is rounded.
    Rounding(Box<Rounding>, Done),
    /// It is asked why there is no plan.
    Diagnosis(Box<Diagnosis>),
    Over(Done),
}

impl Planner {
    /// A planner that has not begun.
    pub fn new(route: CheckedRoute, wish: PlanWanted) -> Self {
        let model = Model::new(&route, &wish);
        let stage = Self::first_stage(model, &wish, None);
        Self {
            route: Arc::new(route),
            wish,
            stage,
            fewest: None,
            plan: None,
            rounded: None,
            bound: None,
            programmes: 0,
        }
    }

    /// Looks for a plan, from one that nearly is where there is one.
    fn first_stage(model: Model, wish: &PlanWanted, start: Option<&Found>) -> Stage {
        let search = |measure| {
            let search = Search::new(model, Target::new(measure), wish.gap);
            Box::new(match start {
                Some(found) => search.with_start(found.candidate.clone(), &found.litres),
                None => search,
            })
        };
        match wish.objective {
            TripObjective::Cheapest => Stage::Plan(search(Measure::Cost)),
            TripObjective::MostEthanol => Stage::Plan(search(Measure::LessEthanol)),
            TripObjective::FewestStops => Stage::Stops(search(Measure::Stops)),
        }
    }

    /// How many linear programmes were solved so far.
    pub fn programmes(&self) -> u32 {
        self.programmes
            + match &self.stage {
                Stage::Stops(search) | Stage::Plan(search) => search.programmes(),
                Stage::Rounding(rounding, _) => rounding.programmes(),
                Stage::Diagnosis(diagnosis) => diagnosis.programmes(),
                Stage::Over(_) => 0,
            }
    }

    /// Goes on by one small linear programme and says how things stand. At the end
    /// it changes nothing.
    pub fn step(&mut self) -> Progress {
        let stage = std::mem::replace(&mut self.stage, Stage::Over(Done::Unsettled));
        self.stage = match stage {
            Stage::Stops(mut search) => {
                search.step();
                self.take(&search);
                self.after_stops(search)
            }
            Stage::Plan(mut search) => {
                search.step();
                self.take(&search);
                self.after_plan(search)
            }
            Stage::Rounding(mut rounding, done) => match rounding.step() {
                Rounded::Working => Stage::Rounding(rounding, done),
                Rounded::Plan(litres) => {
                    let plan =
                        TripPlan::new(&self.route, rounding.model().bought(&self.route, &litres));
                    self.rounded = plan.holds(self.wish.is_robust).then_some(plan);
                    self.programmes += rounding.programmes();
                    Stage::Over(done)
                }
                Rounded::None => {
                    self.programmes += rounding.programmes();
                    Stage::Over(done)
                }
            },
            Stage::Diagnosis(mut diagnosis) => match diagnosis.step() {
                None => Stage::Diagnosis(diagnosis),
                Some(impossible) => {
                    self.programmes += diagnosis.programmes();
                    Stage::Over(Done::Impossible(impossible))
                }
            },
            Stage::Over(done) => Stage::Over(done),
        };
        self.progress()
    }

    /// Takes over a better plan, if it holds by the exact course.
    fn take(&mut self, search: &Search) {
        let Some(found) = search.best() else { return };
        if self.plan.as_ref().is_some_and(|(known, _)| known.litres == found.litres) {
            return;
        }
        let plan = TripPlan::new(&self.route, search.model.bought(&self.route, &found.litres));
        if plan.holds(self.wish.is_robust) {
            self.plan = Some((found.clone(), plan));
        }
    }

    fn after_stops(&mut self, search: Box<Search>) -> Stage {
        match search.standing() {
            Standing::Working => Stage::Stops(search),
            Standing::Impossible => self.diagnose(&search),
            Standing::Certified | Standing::Exhausted => {
                self.programmes += search.programmes();
                let Some(best) = search.best() else { return Stage::Over(Done::Unsettled) };
                let most = whole_stops(best.value);
                // Where the count was left open, fewer may do than were found.
                let is_counted = search.standing() == Standing::Certified;
                self.fewest = if is_counted { Some(most) } else { search.bound().map(whole_stops) };
                let target = Target { measure: Measure::Cost, most_stops: Some(most) };
                let next = Search::new(search.model.clone(), target, self.wish.gap)
                    .with_start(best.candidate.clone(), &best.litres);
                Stage::Plan(Box::new(next))
            }
        }
    }

    fn after_plan(&mut self, search: Box<Search>) -> Stage {
        let done = match search.standing() {
            Standing::Working => return Stage::Plan(search),
            Standing::Impossible => return self.diagnose(&search),
            // A plan that holds in the search alone is none.
            Standing::Certified if self.plan.is_some() && self.keeps_to_fewest() => Done::Certified,
            Standing::Certified | Standing::Exhausted => Done::Unsettled,
        };
        self.programmes += search.programmes();
        self.bound = match (self.bound, search.bound()) {
            (Some(a), Some(b)) => Some(a.max(b)),
            (a, b) => a.or(b),
        };
        let Some(best) = search.best() else { return Stage::Over(done) };
        if self.wish.is_robust {
            let bought = search.model.bought(&self.route, &best.litres);
            // The corners are not always the worst: what breaks the plan joins them.
            if let Some(point) = worst_point(&self.route, &bought) {
                let mut model = search.model.clone();
                model.add_scenario(&self.route, &point);
                // Over more points more stops may be needed, so they are counted anew.
                if self.fewest.take().is_some() {
                    self.bound = None;
                }
                return Self::first_stage(model, &self.wish, Some(best));
            }
        }
        match (self.wish.step, &self.plan) {
            (Some(step), Some((found, _))) => {
                let rounding = Rounding::new(search.model.clone(), search.target(), found, step);
                Stage::Rounding(Box::new(rounding), done)
            }
            _ => Stage::Over(done),
        }
    }

    /// Whether the plan in hand has no more stops than are needed, where they count.
    fn keeps_to_fewest(&self) -> bool {
        let stops = self.plan.as_ref().map(|(_, plan)| plan.course.stops);
        self.fewest.zip(stops).is_none_or(|(fewest, stops)| {
            usize::try_from(fewest).is_ok_and(|fewest| stops <= fewest)
        })
    }

    /// What follows where a search has proved that there is no plan.
    fn diagnose(&mut self, search: &Search) -> Stage {
        self.programmes += search.programmes();
        if self.wish.margin > Share::ZERO {
            // The margin is a wish and the window is not: better on its edge than stranded.
            self.wish.margin = Share::ZERO;
            (self.bound, self.fewest) = (None, None);
            return Self::first_stage(Model::new(&self.route, &self.wish), &self.wish, None);
        }
        Stage::Diagnosis(Box::new(Diagnosis::new(search.model.clone())))
    }

    fn progress(&self) -> Progress {
        let done = match &self.stage {
            Stage::Over(done) => done.clone(),
            _ => Done::Working,
        };
        let running = match &self.stage {
            Stage::Plan(search) => search.bound(),
            _ => None,
        };
        let bound = match (self.bound, running) {
            (Some(a), Some(b)) => Some(a.max(b)),
            (a, b) => a.or(b),
        };
        let value = self.plan.as_ref().map(|(found, _)| match self.wish.objective {
            TripObjective::Cheapest | TripObjective::FewestStops => found.cost,
            TripObjective::MostEthanol => found.value,
        });
        let gap = value.zip(bound).map(|(value, bound)| {
            // What costs nothing is no part of nothing away from its bound.
            let away = value - bound;
            if away <= ROUNDING { 0.0 } else { away / value.abs().max(ROUNDING) }
        });
        Progress {
            plan: self.plan.as_ref().map(|(_, plan)| plan.clone()),
            rounded: self.rounded.clone(),
            bound: self.named_bound(bound),
            gap,
            margin: self.wish.margin,
            done,
        }
    }

    fn named_bound(&self, bound: Option<f64>) -> Option<Bound> {
        let money = |amount: f64| Money::new(amount.max(0.0)).ok();
        match self.wish.objective {
            TripObjective::Cheapest => money(bound?).map(Bound::Cost),
            TripObjective::MostEthanol => Some(Bound::EthanolPart(-bound?)),
            TripObjective::FewestStops => match (&self.stage, self.fewest, bound) {
                (_, Some(fewest), Some(bound)) if self.keeps_to_fewest() => {
                    money(bound).map(|money| Bound::StopsThenCost(fewest, money))
                }
                (_, Some(fewest), _) => Some(Bound::Stops(fewest)),
                (Stage::Stops(search), None, _) => {
                    search.bound().map(whole_stops).map(Bound::Stops)
                }
                _ => None,
            },
        }
    }
}

/// The stops that at least so many are: they come whole.
fn whole_stops(bound: f64) -> u32 {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let stops = (bound - 1e-6).ceil().max(0.0) as u32;
    stops
}
