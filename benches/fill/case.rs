//! The fill that is timed: a part-full tank read by the gauge, an E85 known only
//! within a range, petrol that itself holds ethanol, a calibration's window.

use fillwright::fill::{
    Aim, CheckedProblem, FillError, FillObjective, Offer, Problem, Solution, StopRule,
};
use fillwright::fuel::MolarDensity;
use fillwright::quantity::{Band, Money, Share, UnitPrice, Volume};
use fillwright::tank::Tank;
use uom::si::volume::liter;

/// The fill, as checked input.
pub(crate) fn problem() -> Result<CheckedProblem, Box<dyn std::error::Error>> {
    let litres = |value: f64| Volume::new::<liter>(value);
    let share = |low: f64, expected: f64, high: f64| -> Result<_, Box<dyn std::error::Error>> {
        let [low, expected, high] = [low, expected, high].map(Share::from_percent);
        Ok(Band::new(low?, expected?, high?)?)
    };
    let offer = |band: Band<Share>, price: f64, ron: f64| -> Result<Offer, _> {
        let price = Money::new(price).map(|money| UnitPrice::new(money, litres(1.0)))?;
        Ok::<_, fillwright::quantity::MoneyError>(Offer {
            price: Some(price),
            ron: Some(ron),
            ..Offer::new(band)
        })
    };
    let problem = Problem {
        tank: Tank {
            capacity: litres(60.0),
            level: Band::new(litres(12.0), litres(15.0), litres(18.0))?,
            share: share(8.0, 10.0, 12.0)?,
            ron: Some(95.0),
            reserve: litres(6.0),
        },
        offers: vec![
            offer(share(70.0, 82.0, 85.0)?, 1.2, 104.0)?,
            offer(share(5.0, 9.5, 10.0)?, 1.7, 95.0)?,
            offer(share(0.0, 4.5, 5.0)?, 1.9, 98.0)?,
        ],
        aim: Aim::window(Share::from_percent(24.0)?, Share::from_percent(36.0)?)?,
        ron_min: Some(98.0),
        stop: StopRule::Brim,
        objective: FillObjective::LeastCost,
        molar_density: MolarDensity::default(),
        meter_error: 0.005,
    };
    Ok(problem.checked().map_err(|error: FillError| error)?)
}

/// A full solution: the cheapest plan, every order of pouring with its exact
/// worst case, and the robust plan. Returns a number that depends on all of it.
pub(crate) fn solve(problem: &CheckedProblem) -> f64 {
    let planned = match problem.solve() {
        Solution::Plan(plan) => {
            problem.orders(&plan).iter().map(|order| order.worst.share.low().fraction()).sum()
        }
        Solution::Impossible(_) => f64::NAN,
    };
    let robust =
        problem.robust().map_or(f64::NAN, |robust| robust.order.worst.share.high().fraction());
    planned + robust
}
