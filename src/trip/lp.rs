//! Linear programmes with bounded variables, solved by `microlp`.

use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};

/// How the sum of a row relates to its bound.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Relation {
    AtMost,
    AtLeast,
    Equal,
}

/// A linear programme that is put together piece by piece.
#[derive(Debug)]
pub(super) struct Lp {
    problem: Problem,
    variables: Vec<Variable>,
    terms: Vec<(Variable, f64)>,
}

/// What came of it.
#[derive(Clone, Debug)]
pub(super) enum Solved {
    /// The least cost and a point that has it.
    Optimum { value: f64, point: Vec<f64> },
    /// No point satisfies all rows.
    Infeasible,
    /// The solver gave up: nothing is known, and nothing may be concluded.
    Unknown,
}

impl Lp {
    pub(super) fn new() -> Self {
        Self {
            problem: Problem::new(OptimizationDirection::Minimize),
            variables: Vec::new(),
            terms: Vec::new(),
        }
    }

    /// Adds a variable and returns its place.
    pub(super) fn variable(&mut self, cost: f64, low: f64, high: f64) -> usize {
        // Bounds that rounding has put the wrong way round are one value.
        let high = high.max(low);
        self.variables.push(self.problem.add_var(cost, (low, high)));
        self.variables.len() - 1
    }

    /// Adds a row of terms, each a variable's place and its coefficient.
    pub(super) fn row(
        &mut self,
        terms: impl IntoIterator<Item = (usize, f64)>,
        relation: Relation,
        bound: f64,
    ) {
        self.terms.clear();
        self.terms.extend(
            terms.into_iter().filter(|(_, a)| *a != 0.0).map(|(v, a)| (self.variables[v], a)),
        );
        let operator = match relation {
            Relation::AtMost => ComparisonOp::Le,
            Relation::AtLeast => ComparisonOp::Ge,
            Relation::Equal => ComparisonOp::Eq,
        };
        self.problem.add_constraint(&self.terms[..], operator, bound);
    }

    pub(super) fn solve(&self) -> Solved {
        match self.problem.solve() {
            Ok(outcome) => match outcome.solution() {
                Some(solution) => Solved::Optimum {
                    value: solution.objective(),
                    point: self.variables.iter().map(|&v| solution.var_value(v)).collect(),
                },
                None => Solved::Unknown,
            },
            Err(microlp::Error::Infeasible) => Solved::Infeasible,
            Err(_) => Solved::Unknown,
        }
    }
}
