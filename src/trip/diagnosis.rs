//! At which stop a route without a plan becomes impossible, and by which rule.

use super::model::Model;
use super::objective::{Measure, Target};
use super::plan::TripImpossible;
use super::rule::TripRule;
use super::search::{Search, Standing};

/// A route that takes more than this to decide is taken as undecided.
const MOST_PROGRAMMES: u32 = 3000;
/// A tank this many times the size stands for one without a brim.
const NO_BRIM: f64 = 20.0;

/// A proof that is read step by step: how far the route can be driven, and what
/// would have to give way for the next leg.
#[derive(Debug)]
pub(super) struct Diagnosis {
    model: Model,
    /// The first legs known to be possible, and known to be impossible, together.
    possible: usize,
    impossible: usize,
    asked: Option<(Question, Box<Search>)>,
    waiting: Vec<TripRule>,
    rules: Vec<TripRule>,
    has_listed: bool,
    programmes: u32,
}

#[derive(Clone, Copy, Debug)]
enum Question {
    /// Whether so many legs can be driven.
    Legs(usize),
    /// Whether the leg could be driven without the rule.
    Without(TripRule),
}

impl Diagnosis {
    /// Of a route that is known to have no plan.
    pub(super) fn new(model: Model) -> Self {
        Self {
            impossible: model.legs.len(),
            model,
            possible: 0,
            asked: None,
            waiting: Vec::new(),
            rules: Vec::new(),
            has_listed: false,
            programmes: 0,
        }
    }

    pub(super) fn programmes(&self) -> u32 {
        self.programmes + self.asked.as_ref().map_or(0, |(_, search)| search.programmes())
    }

    /// Solves one linear programme; the answer at the end.
    pub(super) fn step(&mut self) -> Option<TripImpossible> {
        if let Some((question, mut search)) = self.asked.take() {
            search.step();
            let is_possible = search.best().is_some();
            let is_over =
                search.standing() != Standing::Working || search.programmes() > MOST_PROGRAMMES;
            if !is_possible && !is_over {
                self.asked = Some((question, search));
                return None;
            }
            self.programmes += search.programmes();
            let is_proved = search.standing() == Standing::Impossible;
            match (question, is_possible) {
                (Question::Legs(legs), true) => self.possible = legs,
                (Question::Legs(legs), false) if is_proved => self.impossible = legs,
                // What is proved stays: the last legs known to be impossible.
                (Question::Legs(_), false) => self.possible = self.impossible - 1,
                (Question::Without(rule), true) => self.rules.push(rule),
                (Question::Without(_), false) => {}
            }
            return None;
        }
        if self.impossible > self.possible + 1 {
            let legs = usize::midpoint(self.possible, self.impossible);
            self.ask(Question::Legs(legs), first_legs(&self.model, legs));
            return None;
        }
        let stop = self.impossible - 1;
        if !self.has_listed {
            self.has_listed = true;
            self.waiting = rules_of(&self.model, stop);
        }
        if let Some(rule) = self.waiting.pop() {
            let model = without(first_legs(&self.model, self.impossible), stop, rule);
            self.ask(Question::Without(rule), model);
            return None;
        }
        Some(TripImpossible { stop, rules: std::mem::take(&mut self.rules) })
    }

    fn ask(&mut self, question: Question, model: Model) {
        // Any plan will do.
        let search = Search::new(model, Target::new(Measure::Cost), 1.0);
        self.asked = Some((question, Box::new(search)));
    }
}

/// The route up to a leg, where it ends with no more than the reserve.
fn first_legs(model: &Model, legs: usize) -> Model {
    let mut first = model.clone();
    first.legs.truncate(legs);
    first.fees.truncate(legs);
    first.purchases.retain(|purchase| purchase.stop < legs);
    for scenario in &mut first.scenarios {
        scenario.litre.truncate(first.purchases.len());
    }
    first
}

/// The rules that could stand in the way of a leg, the last to be asked first.
fn rules_of(model: &Model, leg: usize) -> Vec<TripRule> {
    let numbers = &model.legs[leg];
    let mut rules = vec![TripRule::Brim];
    if model.at_stop(leg).any(|k| model.purchases[k].most < model.capacity) {
        rules.push(TripRule::Limit);
    }
    if numbers.left > 0.0 {
        let is_final = leg > 0 && numbers.left > model.legs[leg - 1].left;
        rules.push(if is_final { TripRule::FinalLevel } else { TripRule::Reserve });
    }
    let has_window =
        numbers.options.iter().all(|option| option.share.0 > 0.0 || option.share.1 < 1.0);
    let has_octane = numbers.options.iter().all(|option| option.octane.is_some());
    if has_window && has_octane {
        rules.push(TripRule::Calibration);
    }
    if has_octane {
        rules.push(TripRule::Octane);
    }
    if has_window {
        rules.push(TripRule::Window);
    }
    if model.budget.is_some() {
        rules.push(TripRule::Budget);
    }
    rules
}

/// The same route without a rule of its last leg.
fn without(mut model: Model, leg: usize, rule: TripRule) -> Model {
    let any = model.option((0.0, 1.0), None);
    match rule {
        TripRule::Budget => model.budget = None,
        TripRule::Window => {
            for option in &mut model.legs[leg].options {
                (option.u, option.share) = (any.u, any.share);
                if option.octane.is_none() {
                    option.least = any.least;
                }
            }
        }
        TripRule::Octane => {
            for option in &mut model.legs[leg].options {
                option.octane = None;
                if option.share == any.share {
                    option.least = any.least;
                }
            }
        }
        TripRule::Calibration => model.legs[leg].options = vec![any],
        TripRule::Reserve | TripRule::FinalLevel => model.legs[leg].left = 0.0,
        TripRule::Limit => {
            for purchase in model.purchases.iter_mut().filter(|purchase| purchase.stop == leg) {
                purchase.most = model.capacity;
            }
        }
        TripRule::Brim => {
            for purchase in &mut model.purchases {
                if purchase.most >= model.capacity {
                    purchase.most *= NO_BRIM;
                }
            }
            model.capacity *= NO_BRIM;
        }
    }
    model
}
