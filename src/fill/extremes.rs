//! The least and the most that a mean over the contents can come to, exactly.
//!
//! The contents are parts: what was in the tank, what is already in, what is poured.
//! Each is so many litres, known between two ends: the level as the gauge leaves it, a
//! dose as the pump's meter does. A part weighs something per litre, again between two
//! ends, and has a value; wanted is the extreme of the mean of the values by weight. With
//! weights of 1 and ethanol shares as values that is the blend, with moles and octane
//! numbers the blend's octane number.
//!
//! Pours go in one after the other until the tank is full, so the litres lie in one of
//! a few polytopes, one for each pour that may be the one to overflow: there all pours
//! before it are in, and it takes what is left, whatever its meter says. In such a
//! polytope the mean is at least `t` where a sum linear in the litres is at least zero
//! (Dinkelbach 1967, from memory), and its one restriction besides the ends, that what
//! is before the overflow leaves some room but not too much, has the same coefficient
//! for every part. So the largest sum has each part at an end, and where the room asks
//! for something else moves the parts that matter least.

/// A part of what is in the tank after a fill.
#[derive(Clone, Copy, Debug)]
pub(super) struct Part {
    /// The least and the most litres of it, as long as they fit.
    pub(super) litres: (f64, f64),
    /// The least and the most that a litre of it weighs; above zero.
    pub(super) weight: (f64, f64),
    /// Its value.
    pub(super) value: f64,
}

/// All that may be in the tank after a fill.
#[derive(Clone, Debug)]
pub(super) struct Contents {
    /// What the tank holds, in litres.
    pub(super) capacity: f64,
    /// The parts in the order in which they go in.
    pub(super) parts: Vec<Part>,
    /// How many of them are in for certain: of these none overflowed.
    pub(super) within: usize,
    /// Whether the last part takes all that is left, whatever its litres.
    pub(super) to_click: bool,
}

/// An extreme and where it lies.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Extreme {
    pub(super) mean: f64,
    /// Litres of each part.
    pub(super) litres: Vec<f64>,
}

/// What rounding may do to the litres of a full tank.
const ROUNDING: f64 = 1e-9;

impl Contents {
    /// The highest mean; none where the tank stays empty.
    pub(super) fn highest(&self) -> Option<Extreme> {
        let floor = self.parts.iter().map(|part| part.value).fold(f64::INFINITY, f64::min);
        let mut best = self.above(floor)?;
        // Each round is a higher one of a finite number of vertices.
        while let Some(next) = self.above(best.mean).filter(|next| next.mean > best.mean) {
            best = next;
        }
        Some(best)
    }

    /// The lowest mean; none where the tank stays empty.
    pub(super) fn lowest(&self) -> Option<Extreme> {
        let mut mirrored = self.clone();
        for part in &mut mirrored.parts {
            part.value = -part.value;
        }
        mirrored.highest().map(|extreme| Extreme { mean: -extreme.mean, ..extreme })
    }

    /// The contents with the largest sum of weight times what the value is above a
    /// threshold.
    fn above(&self, threshold: f64) -> Option<Extreme> {
        let weight = |part: &Part| {
            if part.value > threshold { part.weight.1 } else { part.weight.0 }
        };
        let worth: Vec<f64> =
            self.parts.iter().map(|part| weight(part) * (part.value - threshold)).collect();
        let overflowing = self.within..self.parts.len();
        let ways = std::iter::once(None).chain(overflowing.map(Some));
        let sum = |of: &dyn Fn(usize) -> f64, litres: &[f64]| -> f64 {
            litres.iter().enumerate().map(|(at, x)| of(at) * x).sum()
        };
        ways.filter_map(|way| self.by(way, &worth))
            .filter(|litres| litres.iter().sum::<f64>() > 0.0)
            .map(|litres| (sum(&|at| worth[at], &litres), litres))
            .reduce(|best, next| if next.0 > best.0 { next } else { best })
            .map(|(_, litres)| {
                let total = sum(&|at| weight(&self.parts[at]), &litres);
                let all = sum(&|at| weight(&self.parts[at]) * self.parts[at].value, &litres);
                Extreme { mean: all / total, litres }
            })
    }

    /// The litres with the largest worth where one part takes what is left, or where all
    /// fit; none where that cannot be.
    fn by(&self, rest: Option<usize>, worth: &[f64]) -> Option<Vec<f64>> {
        let last = self.parts.len() - 1;
        let (before, of_rest, least) = match rest {
            None if self.to_click => return None,
            None => (self.parts.len(), 0.0, 0.0),
            Some(at) if self.to_click && at == last => (at, worth[at], 0.0),
            Some(at) => (at, worth[at], self.capacity - self.parts[at].litres.1),
        };
        // What more of a part changes, where it takes the place of the rest.
        let gain = |at: usize| worth[at] - of_rest;
        let ends = |at: usize| self.parts[at].litres;
        let mut litres: Vec<f64> =
            (0..before).map(|at| if gain(at) >= 0.0 { ends(at).1 } else { ends(at).0 }).collect();
        let mut by_gain: Vec<usize> = (0..before).collect();
        by_gain.sort_by(|&a, &b| gain(a).abs().total_cmp(&gain(b).abs()));
        let mut over = litres.iter().sum::<f64>() - self.capacity;
        let mut under = least - litres.iter().sum::<f64>();
        for at in by_gain {
            if over > 0.0 && gain(at) >= 0.0 {
                let away = over.min(ends(at).1 - ends(at).0);
                litres[at] -= away;
                over -= away;
            }
            if under > 0.0 && gain(at) < 0.0 {
                let more = under.min(ends(at).1 - ends(at).0);
                litres[at] += more;
                under -= more;
            }
        }
        if over.max(under) > ROUNDING * self.capacity {
            return None;
        }
        if rest.is_some() {
            litres.push((self.capacity - litres.iter().sum::<f64>()).max(0.0));
        }
        litres.resize(self.parts.len(), 0.0);
        Some(litres)
    }
}
