//! The mean of what the parts of a fuel have, by how much there is of each.

use std::iter::Sum;

use crate::workings::Arithmetic;

/// A mean over parts, `sum of w_i y_i / sum of w_i`: of ethanol shares by volume, of
/// octane numbers by moles.
///
/// What one part has may be unknown; then so is the mean, as long as there is any of
/// that part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mean<A = f64> {
    /// The sum of the weights, and of the weights times the values.
    sums: Option<(A, Option<A>)>,
}

impl<A: Arithmetic> Mean<A> {
    /// The mean of no part.
    pub const NOTHING: Self = Self { sums: None };

    /// The mean of one part, of which there is `weight`, zero or more.
    pub fn of(weight: A, value: Option<A>) -> Self {
        // Nothing of what is unknown makes nothing unknown.
        if value.is_none() && weight.value() <= 0.0 {
            return Self::NOTHING;
        }
        let sum = value.map(|value| weight.clone() * value);
        Self::of_sums(weight, sum)
    }

    /// The mean behind a sum of weights and one of weights times values.
    pub fn of_sums(weight: A, sum: Option<A>) -> Self {
        Self { sums: Some((weight, sum)) }
    }

    /// With the parts of another mean.
    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        let sums = match (self.sums, other.sums) {
            (Some((weight, sum)), Some((more, of_more))) => {
                Some((weight + more, sum.zip(of_more).map(|(a, b)| a + b)))
            }
            (sums, None) | (None, sums) => sums,
        };
        Self { sums }
    }

    /// What it comes to; none where there is nothing, or not everything is known.
    pub fn value(self) -> Option<A> {
        let (weight, sum) = self.sums?;
        let is_something = weight.value() > 0.0;
        sum.filter(|_| is_something).map(|sum| sum / weight)
    }
}

impl Mean {
    /// The same mean with so many times as much of every part.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        let scaled =
            |(weight, sum): (f64, Option<f64>)| (weight * factor, sum.map(|sum| sum * factor));
        Self { sums: self.sums.map(scaled) }
    }
}

impl<A: Arithmetic> Sum for Mean<A> {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        parts.fold(Self::NOTHING, Self::plus)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::workings::{Expression, number};

    #[test]
    fn what_is_unknown_counts_where_there_is_any_of_it() {
        let known = Mean::of(3.0, Some(95.0)).plus(Mean::of(1.0, Some(99.0)));
        assert_eq!(known.value(), Some(96.0));
        assert_eq!(known.times(0.5).value(), Some(96.0));
        assert_eq!(known.plus(Mean::of(0.0, None)).value(), Some(96.0));
        assert_eq!(known.plus(Mean::of(1e-9, None)).value(), None);
        assert_eq!(Mean::of(0.0, Some(95.0)).value(), None);
        assert_eq!(Mean::<f64>::NOTHING.value(), None);
    }

    #[test]
    fn it_is_written_as_it_is_worked_out() {
        let part =
            |weight: &str, value: &str| Mean::of(number(weight, 2.0), Some(number(value, 0.1)));
        let mean: Mean<Expression> = [part("V0", "e0"), part("x_a", "e_a")].into_iter().sum();
        let letters = mean.value().map(|it| it.letters());
        assert_eq!(letters.as_deref(), Some("(V0 * e0 + x_a * e_a) / (V0 + x_a)"));
    }
}
