//! Best first, branch and bound: a plan, a bound below which none can be, and the
//! two brought together.
//!
//! At any moment `bound <= best <= plan`: every plan lies in one of the regions that
//! are left or was no better than the plan in hand, the relaxation of a region has
//! all its plans among its points, and the plan in hand holds exactly. Boxes shrink
//! and with them the relaxation's error, so the search ends for any gap above zero.
//! (The standard argument, `Al-Khayyal` and Falk 1983, from memory.)

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use super::branch;
use super::descent::{Candidate, Descended, Descent, Found, used};
use super::model::Model;
use super::neighbours::Neighbours;
use super::objective::{Measure, Target};
use super::region::{Region, Use};
use super::relax::{Relaxed, RelaxedPoint, relax};

/// What rounding may do to a value: a bound of nothing comes out a hair below it.
pub(super) const ROUNDING: f64 = 1e-9;
/// From how many early regions a descent starts, and from every how many later.
const EARLY: u32 = 6;
const EVERY: u32 = 12;

/// A search for the best plan of one model.
#[derive(Debug)]
pub(super) struct Search {
    pub(super) model: Model,
    target: Target,
    /// The relative gap at which to stop.
    gap: f64,
    open: BinaryHeap<Node>,
    best: Option<Found>,
    /// The least bound of regions that cannot be split further.
    settled: f64,
    descent: Option<Box<Descent>>,
    neighbours: Option<Neighbours>,
    regions: u32,
    programmes: u32,
    root_bound: Option<f64>,
}

/// How a search stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Standing {
    /// There is more to do.
    Working,
    /// The plan in hand is as good as asked for.
    Certified,
    /// There is no plan, and that is proved.
    Impossible,
    /// Nothing is left to try, but the LP solver gave up on a part.
    Exhausted,
}

#[derive(Debug)]
struct Node {
    bound: f64,
    order: u32,
    region: Region,
}

impl PartialEq for Node {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Node {}

impl PartialOrd for Node {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Node {
    /// The least bound is the greatest, and of equals the latest, which lies deepest.
    fn cmp(&self, other: &Self) -> Ordering {
        other.bound.total_cmp(&self.bound).then(self.order.cmp(&other.order))
    }
}

impl Search {
    pub(super) fn new(model: Model, target: Target, gap: f64) -> Self {
        let mut whole = Region::whole(&model);
        let mut open = BinaryHeap::new();
        if whole.tighten(&model).is_ok() {
            open.push(Node { bound: f64::NEG_INFINITY, order: 0, region: whole });
        }
        Self {
            model,
            target,
            gap,
            open,
            best: None,
            settled: f64::INFINITY,
            descent: None,
            neighbours: None,
            regions: 0,
            programmes: 0,
            root_bound: None,
        }
    }

    /// Starts a descent from known litres before anything else.
    pub(super) fn with_start(mut self, candidate: Candidate, litres: &[f64]) -> Self {
        let descent = Descent::new(&self.model, &self.target, candidate, litres);
        self.descent = Some(Box::new(descent));
        self
    }

    pub(super) fn best(&self) -> Option<&Found> {
        self.best.as_ref()
    }

    pub(super) fn target(&self) -> Target {
        self.target
    }

    pub(super) fn programmes(&self) -> u32 {
        self.programmes
    }

    /// What no plan can undercut; none before the first relaxation.
    pub(super) fn bound(&self) -> Option<f64> {
        self.root_bound?;
        let open = self.open.peek().map_or(f64::INFINITY, |node| node.bound);
        let best = self.best.as_ref().map_or(f64::INFINITY, |best| best.value);
        let bound = open.min(self.settled).min(best);
        bound.is_finite().then_some(bound)
    }

    pub(super) fn standing(&self) -> Standing {
        let Some(best) = &self.best else {
            let is_over = self.open.is_empty() && self.descent.is_none();
            return match (is_over, self.settled < f64::INFINITY) {
                (false, _) => Standing::Working,
                (true, false) => Standing::Impossible,
                (true, true) => Standing::Exhausted,
            };
        };
        let open = self.open.peek().map_or(f64::INFINITY, |node| node.bound);
        if open.min(self.settled) >= self.cutoff(best.value) {
            Standing::Certified
        } else if self.open.is_empty() && self.descent.is_none() && self.neighbours.is_none() {
            Standing::Exhausted
        } else {
            Standing::Working
        }
    }

    /// The bound from which a region is no longer worth a look.
    fn cutoff(&self, value: f64) -> f64 {
        match self.target.measure {
            // Stops come whole.
            Measure::Stops => value - 1.0 + 1e-6,
            Measure::Cost | Measure::LessEthanol => value - self.gap * value.abs() - ROUNDING,
        }
    }

    /// Solves one LP.
    pub(super) fn step(&mut self) {
        if let Some(descent) = self.descent.take() {
            self.programmes += 1;
            match descent.step(&self.model, &self.target) {
                Descended::Working(descent) => self.descent = Some(descent),
                Descended::Plan(found) => self.offer(found),
                Descended::Stuck => {}
            }
        } else if let Some(mut neighbours) = self.neighbours.take() {
            let next = neighbours.next(&self.model, &self.target, self.best.as_ref());
            if let Some((candidate, start)) = next {
                let descent = Descent::new(&self.model, &self.target, candidate, &start);
                self.descent = Some(Box::new(descent));
                self.neighbours = Some(neighbours);
            }
        } else if let Some(node) = self.open.pop() {
            self.explore(node);
        }
    }

    fn offer(&mut self, found: Found) {
        let key = |found: &Found| (found.value, found.cost);
        let is_better = self.best.as_ref().is_none_or(|best| key(&found) < key(best));
        let fits = self.target.most_stops.is_none_or(|most| {
            let stops = used(&self.model, &found.litres).filter(|used| *used).count();
            u32::try_from(stops).is_ok_and(|stops| stops <= most)
        });
        if is_better && fits {
            self.best = Some(found);
        }
    }

    fn explore(&mut self, node: Node) {
        if self.best.as_ref().is_some_and(|best| node.bound >= self.cutoff(best.value)) {
            self.settled = self.settled.min(node.bound);
            return;
        }
        self.regions += 1;
        self.programmes += 1;
        let Node { bound: parent, region, .. } = node;
        let (bound, point) = match relax(&self.model, &self.target, &region) {
            Relaxed::Bound { bound, point } => (bound.max(parent), point),
            Relaxed::Empty => return,
            Relaxed::Unknown => {
                // What is known of the whole still holds of the part.
                self.settled = self.settled.min(parent);
                return;
            }
        };
        let is_root = self.root_bound.is_none();
        self.root_bound.get_or_insert(bound);
        let parts = branch::split(&self.model, &self.target, &region, &point);
        // What cannot be split is as good as a plan, and must not be passed by.
        if is_root
            || self.regions <= EARLY
            || self.regions.is_multiple_of(EVERY)
            || self.best.is_none()
            || parts.is_none()
        {
            let start = self.candidate(&region, &point);
            let descent = Descent::new(&self.model, &self.target, start, &point.litres);
            self.descent = Some(Box::new(descent));
            if is_root {
                self.neighbours = Neighbours::new(&self.model, &self.target);
            }
        }
        let Some(parts) = parts else {
            self.settled = self.settled.min(bound);
            return;
        };
        for mut part in parts {
            if part.tighten(&self.model).is_ok() {
                let order = self.regions;
                self.open.push(Node { bound, order, region: part });
            }
        }
    }

    fn candidate(&self, region: &Region, point: &RelaxedPoint) -> Candidate {
        let open: Vec<bool> = if self.target.counts_stops(&self.model) {
            used(&self.model, &point.litres).collect()
        } else {
            region.use_of.iter().map(|&decided| decided != Use::Never).collect()
        };
        Candidate {
            open,
            choice: branch::nearest_choices(&self.model, region, point),
            fixed: vec![None; self.model.purchases.len()],
        }
    }
}
