//! The single fill: what to pour of each fuel on offer, here and now.
//!
//! Every requirement is linear in the litres: the share (`sum (e_j - T) x_j =
//! V0 (T - e0)`), the space, the money, and the octane number by moles. So the
//! best plan is the optimum of a small linear programme ([`CheckedProblem::solve`]),
//! and when there is none, the programme's own proof says which rules
//! contradict each other ([`FillImpossible`]).
//!
//! What is known only within bands enters three times: as the exact worst case
//! of a plan ([`CheckedProblem::worst`]), as the order of pouring that is least
//! sensitive ([`CheckedProblem::orders`]), and as a plan that is safe over the whole
//! box ([`CheckedProblem::robust`]).
//!
//! ```
//! use fillwright::fill::{Aim, Offer, FillObjective, Problem, Solution, StopRule};
//! use fillwright::tank::Tank;
//! use fillwright::fuel::MolarDensity;
//! use fillwright::quantity::{Band, Share, Volume};
//! use uom::si::volume::liter;
//!
//! let share = |percent: f64| Share::from_percent(percent).map(Band::exact);
//! let litres = |value: f64| Volume::new::<liter>(value);
//! let problem = Problem {
//!     tank: Tank {
//!         capacity: litres(60.0),
//!         level: Band::exact(litres(15.0)),
//!         share: share(10.0)?,
//!         ron: None,
//!         reserve: litres(6.0),
//!     },
//!     offers: vec![Offer::new(share(10.0)?), Offer::new(share(85.0)?)],
//!     aim: Aim::share(Share::from_percent(50.0)?),
//!     ron_min: None,
//!     stop: StopRule::Brim,
//!     objective: FillObjective::LeastCost,
//!     molar_density: MolarDensity::default(),
//!     meter_error: 0.0,
//! }
//! .checked()?;
//! let Solution::Plan(plan) = problem.solve() else { unreachable!("E50 is within reach") };
//! assert!((plan.volumes[1].get::<liter>() - 32.0).abs() < 1e-9);
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod check;
pub mod economics;
mod error;
mod extremes;
mod formulas;
mod impossible;
mod linear;
mod octane;
mod order;
mod plan;
mod problem;
mod reach;
mod robust;
mod round;
mod rows;
mod solve;
mod worst;

pub use check::CheckedProblem;
pub use error::FillError;
pub(crate) use formulas::mean_share;
pub use impossible::{BurnDown, Cycles, FillImpossible, Obstacle};
pub use order::Order;
pub use plan::FillPlan;
pub use problem::{Aim, FillObjective, Offer, Problem, StopRule};
pub use robust::{NoRobustPlan, RobustPlan};
pub use rows::FillRule;
pub use solve::Solution;
pub use worst::{PlannedPour, Pours, Worst, WorstCorner};
