//! Two plans beside each other, and a plan beside what no plan can be better than.

use super::answer::TripAnswer;
use crate::calibration::Verdict;
use crate::trip::Bound;

/// A calibration that gets another verdict on a way than under another plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Turn {
    /// The number of the stop that the way comes after.
    pub stop: u32,
    /// The number of the calibration.
    pub calibration: u32,
    /// The verdict under the other plan.
    pub before: Verdict,
    /// The verdict under this one.
    pub after: Verdict,
}

impl TripAnswer {
    /// How far the plan is from the bound, as a fraction of the bound: above it in
    /// cost, below it in ethanol. None where the bound speaks of something else, or
    /// where nothing is no measure.
    pub fn away_from(&self, bound: &Bound) -> Option<f64> {
        let fraction = |miss: f64, of: f64| (of > 0.0).then(|| (miss / of).max(0.0));
        let course = &self.course;
        match *bound {
            Bound::Cost(least) => fraction(course.cost.amount() - least.amount(), least.amount()),
            Bound::StopsThenCost(stops, least)
                if usize::try_from(stops).is_ok_and(|stops| course.stops <= stops) =>
            {
                fraction(course.cost.amount() - least.amount(), least.amount())
            }
            // Over a box the bound is one of the mean of its corners.
            Bound::EthanolPart(most) if !self.asked.wish.is_robust => {
                fraction(most - course.ethanol_part, most)
            }
            Bound::StopsThenCost(..) | Bound::EthanolPart(_) | Bound::Stops(_) => None,
        }
    }

    /// The verdicts that are not what they are under another plan, way by way. What
    /// only one of the two routes has is not compared.
    pub fn turns_from(&self, other: &Self) -> Vec<Turn> {
        let mut turns = Vec::new();
        for (stop, leg) in self.asked.stops.iter().zip(&self.course.legs) {
            let there = other.asked.stops.iter().position(|it| it.id == stop.id);
            let Some(before) = there.and_then(|at| other.course.legs.get(at)) else {
                continue;
            };
            for (calibration, judgement) in self.asked.calibrations.iter().zip(&leg.verdicts) {
                let there = other.asked.calibrations.iter().position(|it| it == calibration);
                let judged = there.and_then(|at| before.verdicts.get(at));
                if let Some(judged) = judged.filter(|it| it.verdict != judgement.verdict) {
                    turns.push(Turn {
                        stop: stop.id,
                        calibration: *calibration,
                        before: judged.verdict,
                        after: judgement.verdict,
                    });
                }
            }
        }
        turns
    }
}

#[cfg(test)]
mod tests {
    use super::super::example::{asked, on_petrol};
    use super::*;
    use crate::quantity::Money;

    #[test]
    fn a_plan_is_measured_by_what_its_bound_speaks_of() {
        let plan = on_petrol(asked());
        let cost = plan.course.cost.amount();
        assert!(cost > 0.0);
        let bound = Money::new(cost / 1.25).unwrap();
        let close = |a: Option<f64>, b: f64| assert!(a.is_some_and(|a| (a - b).abs() < 1e-9));
        close(plan.away_from(&Bound::Cost(bound)), 0.25);
        let stops = u32::try_from(plan.course.stops).unwrap();
        close(plan.away_from(&Bound::StopsThenCost(stops, bound)), 0.25);
        assert_eq!(plan.away_from(&Bound::StopsThenCost(stops - 1, bound)), None);
        assert_eq!(plan.away_from(&Bound::Stops(stops)), None);
        assert_eq!(plan.away_from(&Bound::Cost(Money::default())), None);
        close(plan.away_from(&Bound::EthanolPart(plan.course.ethanol_part * 2.0)), 0.5);
    }

    #[test]
    fn a_plan_has_no_turns_from_itself() {
        let plan = on_petrol(asked());
        assert_eq!(plan.turns_from(&plan), []);
    }
}
