//! Tables of measured values: read with straight lines, never beyond their ends.

use crate::message::Message;
use thiserror::Error;

/// A value for which a table of measured values says nothing.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub struct OutsideTable {
    /// What the table is of.
    pub what: Message,
    /// The unit of the three values.
    pub unit: &'static str,
    /// The value given.
    pub given: f64,
    /// The lowest value in the table.
    pub low: f64,
    /// The highest value in the table.
    pub high: f64,
}

/// The two rows about a value and how far it lies between them; none when the value
/// is outside or not a number. The steps ascend.
pub(super) fn locate<T>(
    rows: &[T],
    at: f64,
    step: impl Fn(&T) -> f64,
) -> Option<(usize, usize, f64)> {
    let last = rows.len().checked_sub(1)?;
    let (low, high) = (step(rows.first()?), step(rows.last()?));
    if !(low..=high).contains(&at) {
        return None;
    }
    let above = rows.partition_point(|row| step(row) < at).min(last);
    let below = above.saturating_sub(1);
    let width = step(&rows[above]) - step(&rows[below]);
    Some((below, above, if width > 0.0 { (at - step(&rows[below])) / width } else { 0.0 }))
}

/// The first place where steps do not ascend (or are not numbers), as the pair.
pub(super) fn out_of_order(steps: impl IntoIterator<Item = f64>) -> Option<(f64, f64)> {
    let mut before = f64::NEG_INFINITY;
    for step in steps {
        if !(step > before && step.is_finite()) {
            return Some((before, step));
        }
        before = step;
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_lies_between_two_rows() {
        let rows = [1.0, 2.0, 4.0];
        let at = |value| locate(&rows, value, |step| *step);
        assert_eq!(at(1.0), Some((0, 0, 0.0)));
        assert_eq!(at(2.0), Some((0, 1, 1.0)));
        assert_eq!(at(3.0), Some((1, 2, 0.5)));
        assert_eq!(at(4.0), Some((1, 2, 1.0)));
        for outside in [0.9, 4.1, f64::NAN] {
            assert_eq!(at(outside), None);
        }
        assert_eq!(locate(&[], 1.0, |step: &f64| *step), None);
    }

    #[test]
    fn disorder_is_found() {
        assert_eq!(out_of_order([1.0, 2.0, 3.0]), None);
        assert_eq!(out_of_order([1.0, 3.0, 3.0]), Some((3.0, 3.0)));
        assert!(out_of_order([1.0, f64::NAN]).is_some());
    }
}
