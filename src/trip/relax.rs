//! The relaxation whose optimum no plan of a region can undercut.
//!
//! The products `E = H u` and `S = H w` are replaced by the four planes that
//! enclose them over a box (`McCormick` 1976; for branching on them
//! `Al-Khayyal` and Falk 1983; both from memory). Their gap is at most a quarter of the box's area,
//! and both factors are small by nature: `u` by the windows, `H` between what just
//! arrives and what is full. The octane rule is kept as it stands, linear in
//! `(H, E, S)`, and multiplied with both bounds of `H`.

use super::lp::{Lp, Relation, Solved};
use super::model::Model;
use super::objective::Target;
use super::region::{Region, State, Use};

/// What the relaxation of a region says.
#[derive(Clone, Debug)]
pub(super) enum Relaxed {
    /// No plan of the region is better than `bound`; `point` attains it in the
    /// relaxation.
    Bound { bound: f64, point: RelaxedPoint },
    /// No plan lies in the region.
    Empty,
    /// The solver gave up.
    Unknown,
}

/// An optimal point of the relaxation.
#[derive(Clone, Debug)]
pub(super) struct RelaxedPoint {
    /// Litres of each purchase.
    pub(super) litres: Vec<f64>,
    /// How far each stop counts as used, from 0 to 1.
    pub(super) uses: Vec<f64>,
    /// `H, u, E, w, S`, by scenario and leg.
    pub(super) states: Vec<Vec<[f64; 5]>>,
}

const BARE: usize = 3;
const WITH_OCTANE: usize = 5;

struct Layout {
    uses: usize,
    states: usize,
    legs: usize,
    width: usize,
}

impl Layout {
    fn of(model: &Model) -> Self {
        let uses = model.purchases.len();
        let width = if model.has_octane { WITH_OCTANE } else { BARE };
        Self { uses, states: uses + model.legs.len(), legs: model.legs.len(), width }
    }

    /// Where `H` of a leg stands; `u, E, w, S` follow.
    fn state(&self, scenario: usize, leg: usize) -> usize {
        self.states + (scenario * self.legs + leg) * self.width
    }
}

/// Solves the relaxation of a region.
pub(super) fn relax(model: &Model, objective: &Target, region: &Region) -> Relaxed {
    let layout = Layout::of(model);
    let mut lp = Lp::new();
    for (k, purchase) in model.purchases.iter().enumerate() {
        let is_open = region.use_of[purchase.stop] != Use::Never;
        lp.variable(objective.of_litre(model, k), 0.0, if is_open { purchase.most } else { 0.0 });
    }
    for stop in 0..layout.legs {
        let (low, high) = match region.use_of[stop] {
            Use::Open => (0.0, 1.0),
            Use::Never => (0.0, 0.0),
            Use::Always => (1.0, 1.0),
        };
        lp.variable(objective.of_use(model, stop), low, high);
    }
    for states in &region.states {
        for (leg, state) in states.iter().enumerate() {
            add_state(&mut lp, model, objective.of_composition(model, leg), state);
        }
    }
    for scenario in 0..model.scenarios.len() {
        for leg in 0..layout.legs {
            balance(&mut lp, model, &layout, scenario, leg);
            let state = &region.states[scenario][leg];
            levels(&mut lp, model, &layout, scenario, leg);
            product(&mut lp, layout.state(scenario, leg), 1, state.h, state.u);
            if model.has_octane {
                product(&mut lp, layout.state(scenario, leg), 3, state.h, state.w);
                octane(&mut lp, model, &layout, region, scenario, leg);
            }
        }
    }
    if objective.counts_stops(model) {
        uses(&mut lp, model, &layout, region);
    }
    whole_route(&mut lp, model, objective, &layout);
    match lp.solve() {
        Solved::Optimum { value, point } => Relaxed::Bound {
            bound: value,
            point: RelaxedPoint {
                litres: point[..layout.uses].to_vec(),
                uses: point[layout.uses..layout.states].to_vec(),
                states: (0..model.scenarios.len())
                    .map(|scenario| {
                        (0..layout.legs)
                            .map(|leg| {
                                let at = layout.state(scenario, leg);
                                let mut state = [0.0; WITH_OCTANE];
                                state[..layout.width]
                                    .copy_from_slice(&point[at..at + layout.width]);
                                state
                            })
                            .collect()
                    })
                    .collect(),
            },
        },
        Solved::Infeasible => Relaxed::Empty,
        Solved::Unknown => Relaxed::Unknown,
    }
}

fn add_state(lp: &mut Lp, model: &Model, of_composition: f64, state: &State) {
    let State { h, u, w } = *state;
    lp.variable(0.0, h.low, h.high);
    lp.variable(of_composition, u.low, u.high);
    lp.variable(0.0, h.low * u.low, h.high * u.high);
    if model.has_octane {
        lp.variable(0.0, w.low, w.high);
        lp.variable(
            0.0,
            (h.low * w.low).min(h.high * w.low),
            (h.low * w.high).max(h.high * w.high),
        );
    }
}

/// What is there after a refill: what was there after the last one, less what the
/// leg took at that composition, and what was bought.
fn balance(lp: &mut Lp, model: &Model, layout: &Layout, scenario: usize, leg: usize) {
    let truth = &model.scenarios[scenario];
    let now = layout.state(scenario, leg);
    let bought = |of: fn(&super::model::Triple) -> f64| {
        model.at_stop(leg).map(move |k| (k, -of(&truth.litre[k]))).collect::<Vec<_>>()
    };
    let mut add = |amount: usize, per: Option<usize>, start: f64, bought: Vec<(usize, f64)>| {
        let mut terms = bought;
        terms.push((now + amount, 1.0));
        let mut bound = start;
        if leg > 0 {
            let before = layout.state(scenario, leg - 1);
            let takes = model.legs[leg - 1].takes;
            terms.push((before + amount, -1.0));
            match per {
                None => bound = -takes,
                Some(per) => {
                    terms.push((before + per, takes));
                    bound = 0.0;
                }
            }
        }
        lp.row(terms, Relation::Equal, bound);
    };
    add(0, None, truth.start.h, bought(|t| t.h));
    add(2, Some(1), truth.start.e, bought(|t| t.e));
    if model.has_octane {
        add(4, Some(3), truth.start.s, bought(|t| t.s));
    }
}

/// No more than the tank holds, and enough left on arrival.
fn levels(lp: &mut Lp, model: &Model, layout: &Layout, scenario: usize, leg: usize) {
    let at = layout.state(scenario, leg);
    let c = model.energy_deficit;
    let numbers = &model.legs[leg];
    lp.row([(at, 1.0), (at + 2, c)], Relation::AtMost, model.capacity);
    let least = numbers.left + numbers.takes;
    lp.row([(at, 1.0), (at + 2, c), (at + 1, -c * numbers.takes)], Relation::AtLeast, least);
}

/// The planes that enclose `product = H ratio`; the ratio stands at `offset` from
/// `H`, the product behind it.
fn product(
    lp: &mut Lp,
    at: usize,
    offset: usize,
    h: super::region::Range,
    ratio: super::region::Range,
) {
    for (h_end, ratio_end, relation) in [
        (h.low, ratio.low, Relation::AtLeast),
        (h.high, ratio.high, Relation::AtLeast),
        (h.high, ratio.low, Relation::AtMost),
        (h.low, ratio.high, Relation::AtMost),
    ] {
        lp.row(
            [(at + offset + 1, 1.0), (at + offset, -h_end), (at, -ratio_end)],
            relation,
            -h_end * ratio_end,
        );
    }
}

/// The octane rule, `S >= r (H + k E)` and, for each unit of `H`, `w >= r (1 + k u)`;
/// their difference has one sign between the bounds of `H`.
fn octane(
    lp: &mut Lp,
    model: &Model,
    layout: &Layout,
    region: &Region,
    scenario: usize,
    leg: usize,
) {
    let choices = region.choices[leg].iter().map(|&choice| model.legs[leg].options[choice].octane);
    // The weakest of what is left to choose from; none where one asks for none.
    let Some(r) = choices.reduce(|a, b| Some(a?.min(b?))).flatten() else { return };
    let at = layout.state(scenario, leg);
    let k = model.molar_excess;
    let h = region.states[scenario][leg].h;
    // (S - r H - r k E) - h (w - r - r k u) has the sign of H - h.
    for (end, relation) in [(h.low, Relation::AtLeast), (h.high, Relation::AtMost)] {
        lp.row(
            [(at + 4, 1.0), (at, -r), (at + 2, -r * k), (at + 3, -end), (at + 1, end * r * k)],
            relation,
            -end * r,
        );
    }
    lp.row([(at + 3, 1.0), (at + 1, -r * k)], Relation::AtLeast, r);
}

/// What is bought at a stop is at most what fits, and nothing where it is not used.
fn uses(lp: &mut Lp, model: &Model, layout: &Layout, region: &Region) {
    for stop in 0..layout.legs {
        if region.use_of[stop] != Use::Open {
            continue;
        }
        for (scenario, truth) in model.scenarios.iter().enumerate() {
            let states = &region.states[scenario];
            let before = match stop.checked_sub(1) {
                None => truth.start.h,
                Some(leg) => (states[leg].h.low - model.legs[leg].takes).max(0.0),
            };
            let most = (states[stop].h.high - before).max(0.0);
            let bought = model.at_stop(stop).map(|k| (k, truth.litre[k].h));
            lp.row(bought.chain([(layout.uses + stop, -most)]), Relation::AtMost, 0.0);
        }
    }
}

/// The rules for all stops together.
fn whole_route(lp: &mut Lp, model: &Model, objective: &Target, layout: &Layout) {
    if let Some(budget) = model.budget {
        let fuel = model.purchases.iter().enumerate().map(|(k, purchase)| (k, purchase.price));
        let fees = model.fees.iter().enumerate().map(|(stop, fee)| (layout.uses + stop, *fee));
        lp.row(fuel.chain(fees), Relation::AtMost, budget);
    }
    if let Some(most) = objective.most_stops {
        let all = (0..layout.legs).map(|stop| (layout.uses + stop, 1.0));
        lp.row(all, Relation::AtMost, f64::from(most));
    }
}
