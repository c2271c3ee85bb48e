//! The exact course of a trip in the model's numbers, with its derivatives by the
//! litres bought.

use super::model::{Choice, Model, Scenario, Triple};

/// The tank at each departure in one scenario, and how each litre changes it.
#[derive(Clone, Debug)]
pub(super) struct Track {
    pub(super) legs: Vec<Departure>,
}

/// The tank at one departure.
#[derive(Clone, Debug)]
pub(super) struct Departure {
    pub(super) tank: Triple,
    /// The part that the leg leaves.
    pub(super) left: f64,
    /// By a litre of each purchase up to here, in the model's order; those of later
    /// stops change nothing.
    pub(super) by_litre: Vec<Triple>,
}

impl Track {
    pub(super) fn run(model: &Model, truth: &Scenario, litres: &[f64]) -> Self {
        let mut tank = truth.start;
        let mut by_litre: Vec<Triple> = Vec::new();
        let mut legs = Vec::with_capacity(model.legs.len());
        for (index, leg) in model.legs.iter().enumerate() {
            while let Some(purchase) = model.purchases.get(by_litre.len())
                && purchase.stop == index
            {
                let k = by_litre.len();
                tank = tank.plus_times(truth.litre[k], litres[k]);
                by_litre.push(truth.litre[k]);
            }
            // A tank that has run dry leaves nothing, and a little more would still
            // leave nothing: the energy rule alone then says by how much it is short.
            let has = tank.h.max(f64::MIN_POSITIVE);
            let left = (1.0 - leg.takes / has).max(0.0);
            legs.push(Departure { tank, left, by_litre: by_litre.clone() });
            let by_energy = if left > 0.0 { leg.takes / has / has } else { 0.0 };
            for by in &mut by_litre {
                *by = Triple {
                    h: by.h,
                    e: left * by.e + tank.e * by_energy * by.h,
                    s: left * by.s + tank.s * by_energy * by.h,
                };
            }
            tank = Triple { h: tank.h - leg.takes, e: left * tank.e, s: left * tank.s };
        }
        Self { legs }
    }
}

/// A rule that asks for zero or more of this sum over the tank at departure and at
/// arrival: `constant + of . departure + on_arrival . arrival`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Demand {
    pub(super) constant: f64,
    pub(super) of: Triple,
    /// The weight of the level's swelling on arrival.
    pub(super) arriving: f64,
}

/// The rules of a leg under one choice of calibration, all linear in the tank.
pub(super) fn demands(model: &Model, leg: usize, choice: &Choice) -> Vec<Demand> {
    let c = model.energy_deficit;
    let numbers = &model.legs[leg];
    let departing = |constant: f64, h: f64, e: f64, s: f64| Demand {
        constant,
        of: Triple { h, e, s },
        arriving: 0.0,
    };
    let mut demands = vec![
        departing(model.capacity, -1.0, -c, 0.0),
        Demand {
            constant: -numbers.takes - numbers.left,
            of: Triple { h: 1.0, e: 0.0, s: 0.0 },
            arriving: c,
        },
    ];
    if choice.least > 0.0 {
        demands.push(departing(-choice.least, 1.0, 0.0, 0.0));
    }
    if choice.share.0 > 0.0 {
        demands.push(departing(0.0, -choice.u.0, 1.0, 0.0));
    }
    if choice.share.1 < 1.0 {
        demands.push(departing(0.0, choice.u.1, -1.0, 0.0));
    }
    if let Some(octane) = choice.octane {
        // An octane number of a litre is a tenth of what a litre of ethanol adds.
        let scale = 0.1;
        let r = octane * scale;
        demands.push(departing(0.0, -r, -r * model.molar_excess, scale));
    }
    demands
}

impl Demand {
    /// What there is over the demand; below zero by what is missing.
    pub(super) fn surplus(&self, at: &Departure) -> f64 {
        let Triple { h, e, s } = at.tank;
        self.constant + self.of.h * h + self.of.e * e + self.of.s * s + self.arriving * at.left * e
    }

    /// How a litre changes the surplus.
    pub(super) fn by_litre(&self, at: &Departure, takes: f64, by: &Triple) -> f64 {
        let has = at.tank.h.max(f64::MIN_POSITIVE);
        let by_energy = if at.left > 0.0 { takes / has / has } else { 0.0 };
        let arriving = at.left * by.e + at.tank.e * by_energy * by.h;
        self.of.h * by.h + self.of.e * by.e + self.of.s * by.s + self.arriving * arriving
    }
}
