//! A linear program small enough to solve on every keystroke: a handful of
//! fuels, a dozen rows. Dense two-phase simplex with Bland's rule, which cannot
//! cycle; when there is no solution it returns the combination of rows that
//! proves it.

/// Entries smaller than this, in rows scaled to a largest entry of 1, are taken
/// as zero.
const ZERO: f64 = 1e-11;

/// How far a point may miss its rows, in litres, before it is no solution.
const FEASIBLE: f64 = 1e-9;

/// How the sum of a row relates to its bound.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Relation {
    AtMost,
    AtLeast,
    Equal,
}

/// One row: `coefficients . x  (relation)  bound`, named by what it stands for.
#[derive(Clone, Debug)]
pub(super) struct Row<R> {
    pub(super) rule: R,
    pub(super) coefficients: Vec<f64>,
    pub(super) relation: Relation,
    pub(super) bound: f64,
}

/// What came of a linear program over `x >= 0`.
#[derive(Clone, Debug)]
pub(super) enum Solved {
    /// The point of least cost.
    Optimum(Vec<f64>),
    /// No point satisfies all rows. With these weights, one for each row, the
    /// rows add up to a contradiction (Farkas' lemma).
    Infeasible(Vec<f64>),
    /// The cost falls without end.
    Unbounded,
}

/// Minimises `cost . x` over `x >= 0` and the rows.
pub(super) fn minimise<R>(cost: &[f64], rows: &[Row<R>]) -> Solved {
    let mut tableau = Tableau::new(cost.len(), rows);
    // Without artificial columns the start is feasible as it stands.
    if tableau.artificial_from < tableau.width {
        let phase_one: Vec<f64> = (0..tableau.width)
            .map(|column| f64::from(u8::from(column >= tableau.artificial_from)))
            .collect();
        tableau.price(&phase_one);
        // Sums of artificials are bounded below by zero.
        tableau.run(tableau.width);
        if tableau.objective() > FEASIBLE {
            return Solved::Infeasible(tableau.row_weights(&phase_one));
        }
        tableau.expel_artificials();
    }
    let mut phase_two = vec![0.0; tableau.width];
    phase_two[..cost.len()].copy_from_slice(cost);
    tableau.price(&phase_two);
    if tableau.run(tableau.artificial_from) {
        Solved::Optimum(tableau.point(cost.len()))
    } else {
        Solved::Unbounded
    }
}

struct Tableau {
    /// Columns without the right-hand side.
    width: usize,
    /// First column of the artificial variables.
    artificial_from: usize,
    /// Rows of `width + 1` entries, the right-hand side last.
    rows: Vec<Vec<f64>>,
    /// Reduced costs, and minus the objective last.
    reduced: Vec<f64>,
    /// The variable that each row solves for.
    basis: Vec<usize>,
    /// The column that was the unit vector of each row at the start.
    start: Vec<usize>,
    /// What each given row was multiplied by on entry.
    factor: Vec<f64>,
}

impl Tableau {
    fn new<R>(variables: usize, given: &[Row<R>]) -> Self {
        let slacks = given.iter().filter(|row| row.relation != Relation::Equal).count();
        let factor: Vec<f64> = given
            .iter()
            .map(|row| {
                let largest = row.coefficients.iter().fold(0.0_f64, |most, a| most.max(a.abs()));
                let scale = if largest > ZERO { 1.0 / largest } else { 1.0 };
                if row.bound < 0.0 { -scale } else { scale }
            })
            .collect();
        // A slack of +1 can start the basis; every other row needs an artificial.
        let slack_sign = |row: &Row<R>, factor: f64| match row.relation {
            Relation::AtMost => factor.signum(),
            Relation::AtLeast => -factor.signum(),
            Relation::Equal => 0.0,
        };
        let artificial_from = variables + slacks;
        let artificials =
            given.iter().zip(&factor).filter(|(row, f)| slack_sign(row, **f) <= 0.0).count();
        let width = artificial_from + artificials;
        let (mut next_slack, mut next_artificial) = (variables, artificial_from);
        let mut rows = Vec::with_capacity(given.len());
        let mut start = Vec::with_capacity(given.len());
        for (row, &factor) in given.iter().zip(&factor) {
            let mut line = vec![0.0; width + 1];
            for (entry, a) in line.iter_mut().zip(&row.coefficients) {
                *entry = a * factor;
            }
            line[width] = row.bound * factor;
            let sign = slack_sign(row, factor);
            let mut unit = next_slack;
            if row.relation != Relation::Equal {
                line[next_slack] = sign;
                next_slack += 1;
            }
            if sign <= 0.0 {
                unit = next_artificial;
                line[unit] = 1.0;
                next_artificial += 1;
            }
            start.push(unit);
            rows.push(line);
        }
        let basis = start.clone();
        Self { width, artificial_from, rows, reduced: vec![0.0; width + 1], basis, start, factor }
    }

    /// Sets the reduced costs of a new objective for the present basis.
    fn price(&mut self, cost: &[f64]) {
        self.reduced[..self.width].copy_from_slice(cost);
        self.reduced[self.width] = 0.0;
        for (row, &basic) in self.rows.iter().zip(&self.basis) {
            let weight = cost[basic];
            if weight != 0.0 {
                for (r, a) in self.reduced.iter_mut().zip(row) {
                    *r -= weight * a;
                }
            }
        }
    }

    /// Pivots to the optimum over the first `columns` columns; false when the
    /// objective is unbounded.
    fn run(&mut self, columns: usize) -> bool {
        while let Some(entering) = (0..columns).find(|&c| self.reduced[c] < -ZERO) {
            let mut leaving: Option<(f64, usize)> = None;
            for (index, row) in self.rows.iter().enumerate() {
                if row[entering] > ZERO {
                    let ratio = row[self.width] / row[entering];
                    let better = leaving.is_none_or(|(best, chosen)| {
                        ratio < best - ZERO
                            || (ratio <= best + ZERO && self.basis[index] < self.basis[chosen])
                    });
                    if better {
                        leaving = Some((ratio, index));
                    }
                }
            }
            let Some((_, row)) = leaving else { return false };
            self.pivot(row, entering);
        }
        true
    }

    fn pivot(&mut self, row: usize, column: usize) {
        let divisor = self.rows[row][column];
        for entry in &mut self.rows[row] {
            *entry /= divisor;
        }
        let pivot_row = std::mem::take(&mut self.rows[row]);
        for line in self.rows.iter_mut().chain(std::iter::once(&mut self.reduced)) {
            if line.is_empty() {
                continue;
            }
            let factor = line[column];
            if factor != 0.0 {
                for (entry, a) in line.iter_mut().zip(&pivot_row) {
                    *entry -= factor * a;
                }
                line[column] = 0.0;
            }
        }
        self.rows[row] = pivot_row;
        self.basis[row] = column;
    }

    /// Moves artificial variables at zero out of the basis, or drops their row
    /// where it says nothing new.
    fn expel_artificials(&mut self) {
        let mut row = 0;
        while row < self.rows.len() {
            if self.basis[row] >= self.artificial_from {
                let replacement =
                    (0..self.artificial_from).find(|&c| self.rows[row][c].abs() > ZERO);
                if let Some(column) = replacement {
                    self.pivot(row, column);
                } else {
                    self.rows.swap_remove(row);
                    self.basis.swap_remove(row);
                    continue;
                }
            }
            row += 1;
        }
    }

    fn objective(&self) -> f64 {
        -self.reduced[self.width]
    }

    /// The multipliers of the given rows under which they contradict.
    fn row_weights(&self, cost: &[f64]) -> Vec<f64> {
        self.start
            .iter()
            .zip(&self.factor)
            .map(|(&column, factor)| (cost[column] - self.reduced[column]) * factor)
            .collect()
    }

    fn point(&self, variables: usize) -> Vec<f64> {
        let mut x = vec![0.0; variables];
        for (row, &basic) in self.rows.iter().zip(&self.basis) {
            if basic < variables {
                x[basic] = row[self.width].max(0.0);
            }
        }
        x
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn row(coefficients: &[f64], relation: Relation, bound: f64) -> Row<()> {
        Row { rule: (), coefficients: coefficients.to_vec(), relation, bound }
    }

    #[test]
    fn a_contradiction_is_proved_by_its_weights() {
        let rows =
            [row(&[1.0, 1.0], Relation::AtMost, 1.0), row(&[1.0, 1.0], Relation::AtLeast, 2.0)];
        let Solved::Infeasible(weights) = minimise(&[1.0, 1.0], &rows) else {
            panic!("these rows contradict each other")
        };
        assert_contradiction(&weights, &rows);
    }

    /// The weighted sum of the rows reads `(nothing positive) . x >= (something
    /// positive)`, each weight having the sign that its relation allows.
    fn assert_contradiction(weights: &[f64], rows: &[Row<()>]) {
        let variables = rows[0].coefficients.len();
        for (weight, row) in weights.iter().zip(rows) {
            match row.relation {
                Relation::AtLeast => assert!(*weight >= -1e-9),
                Relation::AtMost => assert!(*weight <= 1e-9),
                Relation::Equal => {}
            }
        }
        for variable in 0..variables {
            let sum: f64 =
                weights.iter().zip(rows).map(|(w, row)| w * row.coefficients[variable]).sum();
            assert!(sum <= 1e-9, "variable {variable} has {sum}");
        }
        let bound: f64 = weights.iter().zip(rows).map(|(w, row)| w * row.bound).sum();
        assert!(bound > 0.0);
    }

    proptest! {
        /// Oracle: microlp 0.7, an independent solver.
        #[test]
        fn agrees_with_an_independent_solver(
            cost in prop::collection::vec(0.0..3.0_f64, 4),
            raw in prop::collection::vec(
                (prop::collection::vec(-1.0..1.0_f64, 4), 0..3_u8, -20.0..40.0_f64), 1..8),
        ) {
            let rows: Vec<Row<()>> = raw
                .iter()
                .map(|(a, relation, bound)| row(a, match relation {
                    0 => Relation::AtMost, 1 => Relation::AtLeast, _ => Relation::Equal,
                }, *bound))
                .chain(std::iter::once(row(&[1.0; 4], Relation::AtMost, 100.0)))
                .collect();
            let mut oracle = microlp::Problem::new(microlp::OptimizationDirection::Minimize);
            let variables: Vec<_> =
                cost.iter().map(|c| oracle.add_var(*c, (0.0, f64::INFINITY))).collect();
            for row in &rows {
                let terms: Vec<_> =
                    variables.iter().copied().zip(row.coefficients.iter().copied()).collect();
                let operator = match row.relation {
                    Relation::AtMost => microlp::ComparisonOp::Le,
                    Relation::AtLeast => microlp::ComparisonOp::Ge,
                    Relation::Equal => microlp::ComparisonOp::Eq,
                };
                oracle.add_constraint(&terms[..], operator, row.bound);
            }
            match minimise(&cost, &rows) {
                Solved::Optimum(x) => {
                    let ours: f64 = cost.iter().zip(&x).map(|(c, x)| c * x).sum();
                    for row in &rows {
                        let sum: f64 = row.coefficients.iter().zip(&x).map(|(a, x)| a * x).sum();
                        let excess = sum - row.bound;
                        match row.relation {
                            Relation::AtMost => prop_assert!(excess < 1e-7),
                            Relation::AtLeast => prop_assert!(excess > -1e-7),
                            Relation::Equal => prop_assert!(excess.abs() < 1e-7),
                        }
                    }
                    let theirs = match oracle.solve() {
                        Ok(outcome) => outcome,
                        Err(error) => return Err(TestCaseError::fail(format!("{error:?}"))),
                    };
                    let theirs = theirs.solution().map(microlp::Solution::objective);
                    prop_assert!(theirs.is_some_and(|t| (t - ours).abs() < 1e-6), "{theirs:?} {ours}");
                }
                Solved::Infeasible(weights) => {
                    assert_contradiction(&weights, &rows);
                }
                Solved::Unbounded => prop_assert!(false, "the sum is bounded by a row"),
            }
        }
    }
}
