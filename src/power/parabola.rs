//! A polynomial of second degree over an interval. Between two points of a curve
//! torque is straight over speed, so power is a parabola: peaks, means and
//! crossings are exact, without sampling.

/// `c0 + c1 x + c2 x^2` for `low <= x <= high`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Parabola {
    pub(super) low: f64,
    pub(super) high: f64,
    pub(super) coefficients: [f64; 3],
}

impl Parabola {
    pub(super) fn at(&self, x: f64) -> f64 {
        let [c0, c1, c2] = self.coefficients;
        (c2 * x + c1) * x + c0
    }

    /// The same less another one over the same interval.
    pub(super) fn less(&self, other: &Self) -> Self {
        let [a, b] = [self.coefficients, other.coefficients];
        Self { coefficients: [a[0] - b[0], a[1] - b[1], a[2] - b[2]], ..*self }
    }

    /// The same less a constant.
    pub(super) fn less_constant(&self, constant: f64) -> Self {
        let [c0, c1, c2] = self.coefficients;
        Self { coefficients: [c0 - constant, c1, c2], ..*self }
    }

    /// The same over a part of the interval; `None` where they do not meet.
    pub(super) fn within(&self, low: f64, high: f64) -> Option<Self> {
        let (low, high) = (self.low.max(low), self.high.min(high));
        (low <= high).then_some(Self { low, high, ..*self })
    }

    /// The highest point, as `(x, value)`; the first of several.
    pub(super) fn highest(&self) -> (f64, f64) {
        let [_, c1, c2] = self.coefficients;
        let vertex = -c1 / (2.0 * c2);
        let mut best = (self.low, self.at(self.low));
        for x in [vertex, self.high] {
            // A straight line has no vertex: the quotient is no number or far outside.
            if self.low <= x && x <= self.high && self.at(x) > best.1 {
                best = (x, self.at(x));
            }
        }
        best
    }

    /// The area below it.
    pub(super) fn area(&self) -> f64 {
        // Simpson's rule is exact for a parabola.
        let middle = f64::midpoint(self.low, self.high);
        (self.high - self.low) / 6.0
            * (self.at(self.low) + 4.0 * self.at(middle) + self.at(self.high))
    }

    /// The first and the last x at which it is above zero (or where that begins and
    /// ends); `None` where it never is.
    pub(super) fn above_zero(&self) -> Option<(f64, f64)> {
        if self.highest().1 <= 0.0 {
            return None;
        }
        let roots = self.roots();
        let first = if self.at(self.low) > 0.0 { Some(self.low) } else { roots.first().copied() };
        let last = if self.at(self.high) > 0.0 { Some(self.high) } else { roots.last().copied() };
        let peak = self.highest().0;
        Some((first.unwrap_or(peak), last.unwrap_or(peak)))
    }

    /// Where it is zero, in order.
    fn roots(&self) -> Vec<f64> {
        let [c0, c1, c2] = self.coefficients;
        let discriminant = c1 * c1 - 4.0 * c2 * c0;
        if discriminant < 0.0 {
            return Vec::new();
        }
        // The stable pair: no difference of near numbers, and a straight line, whose
        // second root is at infinity, needs no case of its own.
        let half = -0.5 * (c1 + discriminant.sqrt().copysign(c1));
        let mut roots: Vec<_> = [half / c2, c0 / half]
            .into_iter()
            .filter(|root| self.low <= *root && *root <= self.high)
            .collect();
        roots.sort_by(f64::total_cmp);
        roots
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    const HILL: Parabola = Parabola { low: 0.0, high: 10.0, coefficients: [-9.0, 10.0, -1.0] };
    const SLOPE: Parabola = Parabola { low: 0.0, high: 10.0, coefficients: [-4.0, 2.0, 0.0] };

    // By hand: -(x - 1)(x - 9), top at 5 with 16, area -90 + 500 - 1000 / 3.
    #[test]
    fn a_hill_by_hand() {
        assert_eq!(HILL.highest(), (5.0, 16.0));
        assert_relative_eq!(HILL.area(), -90.0 + 500.0 - 1000.0 / 3.0, max_relative = 1e-14);
        assert_eq!(HILL.above_zero(), Some((1.0, 9.0)));
        assert_eq!(HILL.less_constant(16.0).above_zero(), None);
        assert_eq!(HILL.within(4.0, 20.0).unwrap().above_zero(), Some((4.0, 9.0)));
        assert_eq!(HILL.within(11.0, 20.0), None);
    }

    #[test]
    fn a_straight_line_is_one_too() {
        assert_eq!(SLOPE.highest(), (10.0, 16.0));
        assert_eq!(SLOPE.above_zero(), Some((2.0, 10.0)));
        assert_eq!(HILL.less(&SLOPE), Parabola { coefficients: [-5.0, 8.0, -1.0], ..HILL });
        let flat = Parabola { coefficients: [1.0, 0.0, 0.0], ..SLOPE };
        assert_eq!(flat.highest(), (0.0, 1.0));
        assert_eq!(flat.above_zero(), Some((0.0, 10.0)));
        assert_eq!(flat.less_constant(2.0).above_zero(), None);
    }

    // A valley is above zero at both ends.
    #[test]
    fn a_valley_is_crossed_twice() {
        let valley = Parabola { coefficients: [9.0, -10.0, 1.0], ..HILL };
        assert_eq!(valley.above_zero(), Some((0.0, 10.0)));
        assert_eq!(valley.highest(), (0.0, 9.0));
    }
}
