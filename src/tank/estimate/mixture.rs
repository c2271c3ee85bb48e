//! A bank of filters, one for each spread that strong fuels may have, weighted by
//! how well each foresaw the shares that were read.

use super::filter::{Filter, LevelRead, ShareRead};
use super::gaussian::Innovation;
use super::normal::{Component, HIGH, LOW, quantile};
use super::prior::SPREADS;
use super::vehicle::Car;
use crate::quantity::Band;

const FILTERS: usize = SPREADS.value.len();

/// What a spread keeps of its weight however badly it did, so that it can return.
const LEAST_WEIGHT: f64 = 1e-6;

/// Filters with their probabilities.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Bank {
    filters: [Filter; FILTERS],
    weights: [f64; FILTERS],
}

impl Bank {
    pub(super) fn new(car: &Car) -> Self {
        Self {
            filters: SPREADS.value.map(|(spread, _)| Filter::new(car, spread)),
            weights: SPREADS.value.map(|(_, weight)| weight),
        }
    }

    /// Does the same to every filter.
    pub(super) fn each(&mut self, step: impl Fn(&mut Filter)) {
        for filter in &mut self.filters {
            step(filter);
        }
    }

    fn mean(&self, of: impl Fn(&Filter) -> f64) -> f64 {
        self.filters.iter().zip(self.weights).map(|(filter, weight)| weight * of(filter)).sum()
    }

    pub(super) fn level(&self) -> f64 {
        self.mean(Filter::level)
    }

    /// The mean and variance of an innovation over all filters.
    fn pooled(&self, of: impl Fn(&Filter) -> Innovation) -> Innovation {
        let each = self.filters.map(|filter| of(&filter));
        let weighted = || each.iter().zip(self.weights);
        let residual: f64 = weighted().map(|(own, weight)| weight * own.residual).sum();
        let variance = weighted()
            .map(|(own, weight)| weight * (own.variance + (own.residual - residual).powi(2)))
            .sum();
        Innovation { residual, variance }
    }

    pub(super) fn level_innovation(&self, read: &LevelRead) -> Innovation {
        self.pooled(|filter| filter.level_innovation(read))
    }

    pub(super) fn share_innovation(&self, read: &ShareRead) -> Innovation {
        self.pooled(|filter| filter.share_innovation(read))
    }

    /// Takes in a share and weighs the filters anew, by Bayes' rule.
    pub(super) fn read_share(&mut self, car: &Car, read: &ShareRead) {
        let mut logs = [0.0; FILTERS];
        for (log, filter) in logs.iter_mut().zip(&mut self.filters) {
            *log = filter.read_share(car, read).log_likelihood();
        }
        let best = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        for (weight, log) in self.weights.iter_mut().zip(logs) {
            *weight = (*weight * (log - best).exp()).max(LEAST_WEIGHT);
        }
        let sum: f64 = self.weights.iter().sum();
        for weight in &mut self.weights {
            *weight /= sum;
        }
    }

    /// The level, 95 %, in litres.
    pub(super) fn level_band(&self, car: &Car) -> Band<f64> {
        self.band(car.capacity, |filter| (filter.level(), filter.level_variance()))
    }

    /// The share, 95 %.
    pub(super) fn share_band(&self) -> Band<f64> {
        self.band(1.0, |filter| (filter.share(), filter.share_variance()))
    }

    /// The band between the quantiles of the mixture, inside 0 and `most`.
    fn band(&self, most: f64, of: impl Fn(&Filter) -> (f64, f64)) -> Band<f64> {
        let mut components = [Component::default(); FILTERS];
        for ((component, filter), weight) in
            components.iter_mut().zip(&self.filters).zip(self.weights)
        {
            let (mean, variance) = of(filter);
            *component = Component { weight, mean, sd: variance.sqrt() };
        }
        let expected = self.mean(|filter| of(filter).0).clamp(0.0, most);
        let ends = [LOW, HIGH].map(|tail| quantile(&components, tail).clamp(0.0, most));
        Band::enclosing(expected, ends).unwrap_or(Band::exact(expected))
    }
}
