//! A part of all that could be done, and what follows for it without an LP.
//!
//! A region bounds, for each scenario and leg, the energy at departure and the
//! composition, and says which stops may be used and which calibrations chosen.
//! [`Region::tighten`] carries the bounds along the route and back: what is in the
//! tank after a stop is what was carried there and what is sold there. That alone
//! shows many a route to be impossible, and makes every relaxation tighter.

use super::model::{Model, Scenario, Triple};
use super::rule::{Breach, TripRule};

/// Bounds that miss each other by less than this only do so by rounding.
const ROUNDING: f64 = 1e-9;
/// How often to go along and back: the bounds move little after that.
const ROUNDS: usize = 3;

/// Everything between two numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Range {
    pub(super) low: f64,
    pub(super) high: f64,
}

impl Range {
    pub(super) fn new(low: f64, high: f64) -> Self {
        Self { low, high }
    }

    pub(super) fn width(self) -> f64 {
        self.high - self.low
    }

    fn at_least(&mut self, low: f64) {
        self.low = self.low.max(low);
    }

    fn at_most(&mut self, high: f64) {
        self.high = self.high.min(high);
    }

    fn within(&mut self, other: Self) {
        self.at_least(other.low);
        self.at_most(other.high);
    }

    /// Whether anything is left; an overlap lost to rounding is put right.
    fn settle(&mut self) -> bool {
        if self.low > self.high + slack(self.high) {
            return false;
        }
        if self.low > self.high {
            let middle = f64::midpoint(self.low, self.high);
            *self = Self::new(middle, middle);
        }
        true
    }
}

/// What a leg may start with in one scenario.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct State {
    /// Energy, `H`.
    pub(super) h: Range,
    /// Ethanol per energy, `u`.
    pub(super) u: Range,
    /// Octane surplus per energy, `w`.
    pub(super) w: Range,
}

/// A part of all that could be done.
#[derive(Clone, Debug)]
pub(super) struct Region {
    /// `states[scenario][leg]`.
    pub(super) states: Vec<Vec<State>>,
    /// Whether each stop may be used, and whether it counts as used.
    pub(super) use_of: Vec<Use>,
    /// The choices left for each leg, by their place in the leg's list.
    pub(super) choices: Vec<Vec<usize>>,
}

/// Whether a stop is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Use {
    /// Not decided.
    Open,
    /// Nothing is bought here.
    Never,
    /// It is paid for.
    Always,
}

impl Region {
    /// All that could be done.
    pub(super) fn whole(model: &Model) -> Self {
        let all = model.legs.iter().map(|leg| (0..leg.options.len()).collect());
        let (mut u, mut w) = (Range::new(0.0, 0.0), Range::new(0.0, 0.0));
        for scenario in &model.scenarios {
            for part in scenario.litre.iter().chain([&scenario.start]).filter(|part| part.h > 0.0) {
                u.high = u.high.max(part.e / part.h);
                w.low = w.low.min(part.s / part.h);
                w.high = w.high.max(part.s / part.h);
            }
        }
        let state = State { h: Range::new(0.0, model.capacity), u, w };
        Self {
            states: vec![vec![state; model.legs.len()]; model.scenarios.len()],
            use_of: vec![Use::Open; model.legs.len()],
            choices: all.collect(),
        }
    }

    /// The purchases that this region allows at a stop.
    fn sold<'a>(&'a self, model: &'a Model, stop: usize) -> impl Iterator<Item = usize> + 'a {
        let open = self.use_of[stop] != Use::Never;
        model.at_stop(stop).filter(move |_| open)
    }

    /// Drops what cannot be.
    ///
    /// # Errors
    /// When nothing is left: the stop and the rule at which the bounds crossed.
    pub(super) fn tighten(&mut self, model: &Model) -> Result<(), Breach> {
        for round in 0..ROUNDS {
            for leg in 0..model.legs.len() {
                for scenario in 0..model.scenarios.len() {
                    self.forward(model, scenario, leg)?;
                }
                self.drop_choices(model, leg)?;
            }
            if round + 1 == ROUNDS {
                break;
            }
            for leg in (1..model.legs.len()).rev() {
                for scenario in 0..model.scenarios.len() {
                    self.backward(model, scenario, leg)?;
                }
            }
        }
        Ok(())
    }

    fn forward(&mut self, model: &Model, scenario: usize, leg: usize) -> Result<(), Breach> {
        let broken = |rule| Breach { stop: leg, rule };
        let truth = &model.scenarios[scenario];
        let before = self.carried(model, truth, scenario, leg);
        let sold = Sold::of(model, truth, self.sold(model, leg));
        let numbers = &model.legs[leg];
        let mut state = self.states[scenario][leg];
        state.h.at_least(before.h.low);
        state.h.at_most(before.h.high + sold.most);
        if !state.h.settle() {
            return Err(broken(TripRule::Brim));
        }
        let kept = kept(before.h, state.h);
        state.u.within(blended(before.u, sold.u, kept));
        state.w.within(blended(before.w, sold.w, kept));
        self.within_choices(model, leg, &mut state);
        if !state.u.settle() || !state.w.settle() {
            return Err(broken(TripRule::Calibration));
        }
        let c = model.energy_deficit;
        state.h.at_most(model.capacity / (1.0 + c * state.u.low));
        state.h.at_least(numbers.takes + numbers.left / (1.0 + c * state.u.high));
        if !state.h.settle() {
            return Err(broken(TripRule::Reserve));
        }
        self.states[scenario][leg] = state;
        Ok(())
    }

    /// What is in the tank on arrival at a stop.
    fn carried(&self, model: &Model, truth: &Scenario, scenario: usize, leg: usize) -> State {
        if leg == 0 {
            let Triple { h, e, s } = truth.start;
            let per = |amount: f64| if h > 0.0 { amount / h } else { 0.0 };
            let exactly = |value: f64| Range::new(value, value);
            return State { h: exactly(h), u: exactly(per(e)), w: exactly(per(s)) };
        }
        let mut state = self.states[scenario][leg - 1];
        let takes = model.legs[leg - 1].takes;
        state.h = Range::new((state.h.low - takes).max(0.0), (state.h.high - takes).max(0.0));
        state
    }

    /// Cuts a state to the hull of what the leg's choices allow.
    fn within_choices(&self, model: &Model, leg: usize, state: &mut State) {
        let choices = || self.choices[leg].iter().map(|&choice| &model.legs[leg].options[choice]);
        let least = choices().map(|choice| choice.u.0).fold(f64::INFINITY, f64::min);
        let most = choices().map(|choice| choice.u.1).fold(0.0, f64::max);
        state.u.within(Range::new(least, most));
        let surplus = |octane: Option<f64>| {
            octane.map_or(f64::NEG_INFINITY, |octane| {
                model
                    .least_surplus(octane, state.u.low)
                    .min(model.least_surplus(octane, state.u.high))
            })
        };
        state
            .w
            .at_least(choices().map(|choice| surplus(choice.octane)).fold(f64::INFINITY, f64::min));
        state.h.at_least(choices().map(|choice| choice.least).fold(f64::INFINITY, f64::min));
    }

    /// Drops the choices that no longer meet the state in one of the scenarios: a
    /// plan has one choice for each leg, whatever turns out to be true.
    fn drop_choices(&mut self, model: &Model, leg: usize) -> Result<(), Breach> {
        let states = &self.states;
        self.choices[leg].retain(|&choice| {
            let option = &model.legs[leg].options[choice];
            states.iter().all(|states| {
                let State { h, u, w } = states[leg];
                let needed = option.octane.map_or(f64::NEG_INFINITY, |octane| {
                    model.least_surplus(octane, u.low).min(model.least_surplus(octane, u.high))
                });
                option.u.0 <= u.high + ROUNDING
                    && option.u.1 >= u.low - ROUNDING
                    && needed <= w.high + slack(w.high)
                    && option.least <= h.high + slack(h.high)
            })
        });
        if self.choices[leg].is_empty() {
            return Err(Breach { stop: leg, rule: TripRule::Calibration });
        }
        Ok(())
    }

    fn backward(&mut self, model: &Model, scenario: usize, leg: usize) -> Result<(), Breach> {
        let truth = &model.scenarios[scenario];
        let sold = Sold::of(model, truth, self.sold(model, leg));
        let before = self.carried(model, truth, scenario, leg);
        let after = self.states[scenario][leg];
        let takes = model.legs[leg - 1].takes;
        let kept = kept(before.h, after.h);
        let state = &mut self.states[scenario][leg - 1];
        state.h.at_most(after.h.high + takes);
        state.h.at_least(after.h.low - sold.most + takes);
        state.u.within(unblended(after.u, sold.u, kept));
        state.w.within(unblended(after.w, sold.w, kept));
        if !state.h.settle() {
            return Err(Breach { stop: leg, rule: TripRule::Brim });
        }
        if !state.u.settle() || !state.w.settle() {
            return Err(Breach { stop: leg, rule: TripRule::Calibration });
        }
        Ok(())
    }
}

/// What can be bought at a stop: the most energy, and the range of compositions.
struct Sold {
    most: f64,
    u: Option<Range>,
    w: Option<Range>,
}

impl Sold {
    fn of(model: &Model, truth: &Scenario, sold: impl Iterator<Item = usize>) -> Self {
        let mut all = Self { most: 0.0, u: None, w: None };
        let hull = |range: Option<Range>, value: f64| {
            Some(range.map_or(Range::new(value, value), |range| {
                Range::new(range.low.min(value), range.high.max(value))
            }))
        };
        for purchase in sold {
            let Triple { h, e, s } = truth.litre[purchase];
            all.most += h * model.purchases[purchase].most;
            all.u = hull(all.u, e / h);
            all.w = hull(all.w, s / h);
        }
        all
    }
}

/// The part of the energy after a refill that was there before.
fn kept(before: Range, after: Range) -> Range {
    let part = |above: f64, below: f64| if below > 0.0 { (above / below).min(1.0) } else { 1.0 };
    Range::new(part(before.low, after.high), part(before.high, after.low))
}

/// The composition after a refill, `rho u + (1 - rho) f`.
fn blended(before: Range, sold: Option<Range>, kept: Range) -> Range {
    let Some(sold) = sold else { return before };
    let mix = |rho: f64, u: f64, f: f64| rho * u + (1.0 - rho) * f;
    let low = |rho| mix(rho, before.low, sold.low);
    let high = |rho| mix(rho, before.high, sold.high);
    Range::new(low(kept.low).min(low(kept.high)), high(kept.low).max(high(kept.high)))
}

/// The composition before a refill, `f + (u - f) / rho`. Where nothing may have been
/// there before, nothing follows for it.
fn unblended(after: Range, sold: Option<Range>, kept: Range) -> Range {
    let Some(sold) = sold else { return after };
    // The less was there before, the more rounding would tell of it.
    let (least, most) = (after.low - slack(after.low), after.high + slack(after.high));
    let before = |u: f64, f: f64, rho: f64| if rho > 0.0 { Some(f + (u - f) / rho) } else { None };
    let low = if least <= sold.high { kept.low } else { kept.high };
    let high = if most >= sold.low { kept.low } else { kept.high };
    Range::new(
        before(least, sold.high, low).unwrap_or(f64::NEG_INFINITY),
        before(most, sold.low, high).unwrap_or(f64::INFINITY),
    )
}

/// What rounding may do to a bound.
fn slack(bound: f64) -> f64 {
    ROUNDING * (1.0 + bound.abs())
}
