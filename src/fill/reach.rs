//! The ends of what can be reached. A share is a ratio of two sums, so each end
//! is a linear-fractional programme; Dinkelbach's iteration solves it by a few
//! linear ones and stops at an exact vertex.

use super::check::CheckedProblem;
use super::linear::{Row, Solved, minimise};
use super::rows::{FillRule, Part};
use crate::quantity::Share;

/// The iteration ends at a vertex after a few steps; more would be a mistake.
const STEPS: usize = 40;

/// A ratio of two affine functions of the litres: `(a + b.x) / (c + d.x)`.
pub(super) struct Ratio {
    pub(super) numerator: (f64, Vec<f64>),
    pub(super) denominator: (f64, Vec<f64>),
}

impl Ratio {
    fn dot(part: &(f64, Vec<f64>), x: &[f64]) -> f64 {
        part.0 + part.1.iter().zip(x).map(|(a, x)| a * x).sum::<f64>()
    }

    pub(super) fn at(&self, x: &[f64]) -> Option<f64> {
        let below = Self::dot(&self.denominator, x);
        (below > 1e-9).then(|| Self::dot(&self.numerator, x) / below)
    }

    /// The point where the ratio is largest (`sign` 1) or smallest (`sign` -1).
    /// `None` where no point satisfies the rows.
    pub(super) fn extreme(&self, rows: &[Row<FillRule>], sign: f64) -> Option<Vec<f64>> {
        let variables = self.numerator.1.len();
        let Solved::Optimum(mut x) = minimise(&vec![0.0; variables], rows) else { return None };
        // With nothing in the tank the ratio is undefined there; any number far
        // on the wrong side starts the search.
        let mut value = self.at(&x).unwrap_or(-sign * 1e6);
        for _ in 0..STEPS {
            let cost: Vec<f64> = self
                .numerator
                .1
                .iter()
                .zip(&self.denominator.1)
                .map(|(n, d)| sign * (value * d - n))
                .collect();
            let Solved::Optimum(next) = minimise(&cost, rows) else { break };
            let Some(better) = self.at(&next) else { break };
            if sign * (better - value) <= 1e-14 * value.abs().max(1.0) {
                break;
            }
            (x, value) = (next, better);
        }
        Some(x)
    }
}

impl CheckedProblem {
    /// The ethanol share after the fill, at the expected values.
    pub(super) fn share_ratio(&self) -> Ratio {
        let shares = self.offers.iter().map(|offer| offer.share.expected().fraction()).collect();
        let level = self.level();
        Ratio {
            numerator: (level * self.tank.share.expected().fraction(), shares),
            denominator: (level, vec![1.0; self.offers.len()]),
        }
    }

    /// The octane number after the fill, at the expected values.
    pub(super) fn ron_ratio(&self) -> Ratio {
        let moles: Vec<f64> =
            self.offers.iter().map(|offer| self.moles_per_litre(offer.share.expected())).collect();
        let octane =
            self.offers.iter().zip(&moles).map(|(offer, n)| n * offer.ron.unwrap_or(0.0)).collect();
        let in_tank = self.level() * self.moles_per_litre(self.tank.share.expected());
        Ratio {
            numerator: (in_tank * self.tank.ron.unwrap_or(0.0), octane),
            denominator: (in_tank, moles),
        }
    }

    /// The litres that bring the weakest and the strongest blend that the stop
    /// rule, the tank and the fuels allow.
    pub(super) fn share_extremes(&self) -> Option<(Vec<f64>, Vec<f64>)> {
        let rows = self.rows(&[Part::Aim, Part::Octane], false);
        let ratio = self.share_ratio();
        Some((ratio.extreme(&rows, -1.0)?, ratio.extreme(&rows, 1.0)?))
    }

    /// The weakest and the strongest blend that the stop rule, the tank and the
    /// fuels allow, at the expected values.
    pub fn reachable(&self) -> Option<(Share, Share)> {
        let (weakest, strongest) = self.share_extremes()?;
        Some((self.plan(&weakest).share?, self.plan(&strongest).share?))
    }
}
