//! A point of a line.

/// A value of a line, or a gap in it. A jump is two points at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Point {
    pub(super) x: f64,
    pub(super) figure: Option<Figure>,
}

impl Point {
    /// A value with its low and its high end, where it is not exact. What is no
    /// finite number is a gap.
    pub(crate) fn new(x: f64, expected: f64, ends: Option<(f64, f64)>) -> Self {
        let (low, high) = ends.unwrap_or((expected, expected));
        let known = expected.is_finite() && !low.is_nan() && !high.is_nan();
        Self { x, figure: known.then_some(Figure { low, expected, high }) }
    }

    /// A place without a value: the line breaks there.
    pub(crate) fn gap(x: f64) -> Self {
        Self { x, figure: None }
    }
}

/// A value with its ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Figure {
    pub(super) low: f64,
    pub(super) expected: f64,
    pub(super) high: f64,
}
