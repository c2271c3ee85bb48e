//! The road: what to buy at which stop so that the wanted calibration stays usable,
//! at the least cost, and a proof of how good that is.
//!
//! Burning keeps a blend as it is and a refill moves it, so what is bought today
//! binds every stop after it. The problem is a blending problem with one tank and
//! many periods (a pooling problem; Haverly 1978, from memory; NP-hard already with
//! one pool, Haugland 2016), and plans that cannot be improved by small changes may
//! be far from the best. So a plan here comes with a bound ([`Planner`]): no plan
//! can be better than that, and where there is no plan, that is proved and the stop
//! and the rule are named ([`TripImpossible`]).

mod amounts;
mod blend;
mod branch;
mod check;
mod checked;
mod descent;
mod diagnosis;
mod extremes;
mod lp;
mod message;
mod model;
mod neighbours;
mod objective;
mod plan;
mod planner;
mod points;
mod region;
mod relax;
mod robust;
mod rounding;
mod route;
mod rule;
mod run;
mod search;
mod simulate;
mod track;

pub use blend::BlendModel;
pub use check::RouteError;
pub use checked::CheckedRoute;
pub use message::{Question, Report};
pub use plan::{Bound, Done, PlanWanted, Progress, TripImpossible, TripObjective, TripPlan};
pub use planner::Planner;
pub use route::{Bought, Burn, Leg, Pump, Route, Stop};
pub use rule::{Breach, TripRule};
pub use simulate::{LegCourse, TankState, TripCourse};
