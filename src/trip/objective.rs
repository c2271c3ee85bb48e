//! What a search minimises.

use super::model::Model;

/// What to minimise, and what an earlier search has settled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Target {
    pub(super) measure: Measure,
    /// The most stops that may be used.
    pub(super) most_stops: Option<u32>,
}

/// A number that is to be small.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Measure {
    /// Fuel and stops.
    Cost,
    /// The number of stops.
    Stops,
    /// Minus the mean part of ethanol in what is burnt.
    LessEthanol,
}

impl Target {
    pub(super) fn new(measure: Measure) -> Self {
        Self { measure, most_stops: None }
    }

    /// What a litre of a purchase adds.
    pub(super) fn of_litre(&self, model: &Model, purchase: usize) -> f64 {
        match self.measure {
            Measure::Cost => model.purchases[purchase].price,
            Measure::Stops | Measure::LessEthanol => 0.0,
        }
    }

    /// What using a stop adds.
    pub(super) fn of_use(&self, model: &Model, stop: usize) -> f64 {
        match self.measure {
            Measure::Cost => model.fees[stop],
            Measure::Stops => 1.0,
            Measure::LessEthanol => 0.0,
        }
    }

    /// What the composition `u` on a leg adds, in each scenario: by energy the part
    /// of ethanol is `(1 - c) u`, and the mean over scenarios counts.
    pub(super) fn of_composition(&self, model: &Model, leg: usize) -> f64 {
        match self.measure {
            Measure::Cost | Measure::Stops => 0.0,
            Measure::LessEthanol => {
                let all: f64 = model.legs.iter().map(|leg| leg.takes).sum();
                let part = if all > 0.0 { model.legs[leg].takes / all } else { 0.0 };
                let scenarios = u32::try_from(model.scenarios.len()).unwrap_or(u32::MAX);
                -(1.0 - model.energy_deficit) * part / f64::from(scenarios)
            }
        }
    }

    /// Whether it matters at how many stops something is bought.
    pub(super) fn counts_stops(&self, model: &Model) -> bool {
        let has_fees = model.fees.iter().any(|fee| *fee > 0.0);
        match self.measure {
            Measure::Stops => true,
            Measure::Cost => has_fees || self.most_stops.is_some(),
            Measure::LessEthanol => {
                self.most_stops.is_some() || (model.budget.is_some() && has_fees)
            }
        }
    }
}
