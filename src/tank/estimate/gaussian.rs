//! A normal distribution over the six quantities of the tank.
//!
//! Every step changes one quantity or reads one number, so each is a handful of
//! products over one row: no general matrix is needed, and only one triangle of
//! the covariance is held, which cannot lose its symmetry.

/// Litres in the tank.
pub(super) const LEVEL: usize = 0;
/// Ethanol share of what is in it.
pub(super) const SHARE: usize = 1;
/// What the car really burns, as a factor on what it is said to burn.
pub(super) const GAIN: usize = 2;
/// Litres by which the gauge reads high.
pub(super) const GAUGE_BIAS: usize = 3;
/// How far the person's strong fuel lies off its band's mean, in its own deviations.
pub(super) const STRONG_OFFSET: usize = 4;
/// By how much the flex sensor reads high.
pub(super) const SENSOR_BIAS: usize = 5;
/// How many quantities there are.
pub(super) const QUANTITIES: usize = 6;

const ENTRIES: usize = QUANTITIES * (QUANTITIES + 1) / 2;

/// A linear form in few of the quantities: which, and with what factor.
pub(super) type Form<'a> = &'a [(usize, f64)];

/// A normal distribution over the quantities.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Gaussian {
    mean: [f64; QUANTITIES],
    covariance: [f64; ENTRIES],
}

/// What a number that is read differs from the one expected.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Innovation {
    /// Read less expected.
    pub(super) residual: f64,
    /// The variance that this was expected to have.
    pub(super) variance: f64,
}

impl Innovation {
    /// The logarithm of the density, up to a constant.
    pub(super) fn log_likelihood(self) -> f64 {
        if self.variance > 0.0 {
            -0.5 * (self.residual * self.residual / self.variance + self.variance.ln())
        } else {
            0.0
        }
    }
}

/// Where an entry stands in the triangle.
const fn entry(one: usize, other: usize) -> usize {
    if one <= other { other * (other + 1) / 2 + one } else { one * (one + 1) / 2 + other }
}

impl Gaussian {
    /// Independent quantities.
    pub(super) fn independent(mean: [f64; QUANTITIES], variance: [f64; QUANTITIES]) -> Self {
        let mut covariance = [0.0; ENTRIES];
        for (which, own) in variance.into_iter().enumerate() {
            covariance[entry(which, which)] = own;
        }
        Self { mean, covariance }
    }

    pub(super) fn mean(&self, which: usize) -> f64 {
        self.mean[which]
    }

    pub(super) fn variance(&self, which: usize) -> f64 {
        self.covariance[entry(which, which)]
    }

    pub(super) fn covariance(&self, one: usize, other: usize) -> f64 {
        self.covariance[entry(one, other)]
    }

    /// Moves the mean of a quantity and keeps its errors.
    pub(super) fn set_mean(&mut self, which: usize, mean: f64) {
        self.mean[which] = mean;
    }

    /// Adds variance to a quantity.
    pub(super) fn spread(&mut self, which: usize, variance: f64) {
        self.covariance[entry(which, which)] += variance.max(0.0);
    }

    /// Adds to what two quantities have in common.
    pub(super) fn correlate(&mut self, one: usize, other: usize, covariance: f64) {
        self.covariance[entry(one, other)] += covariance;
    }

    /// The covariance of a form with every quantity.
    fn covariance_with(&self, form: Form) -> [f64; QUANTITIES] {
        let mut with = [0.0; QUANTITIES];
        for &(which, factor) in form {
            for (other, sum) in with.iter_mut().enumerate() {
                *sum += factor * self.covariance(which, other);
            }
        }
        with
    }

    /// Makes a quantity a linear form of all, in its errors: `P = F P F'`, where
    /// F differs from the identity in this one row. The mean is left to the caller.
    pub(super) fn transform(&mut self, which: usize, form: Form) {
        let with = self.covariance_with(form);
        let own = form.iter().map(|&(other, factor)| factor * with[other]).sum::<f64>();
        for (other, covariance) in with.into_iter().enumerate() {
            self.covariance[entry(which, other)] = covariance;
        }
        self.covariance[entry(which, which)] = own.max(0.0);
    }

    /// Forgets what was known of a quantity.
    pub(super) fn replace(&mut self, which: usize, mean: f64, variance: f64) {
        self.transform(which, &[]);
        self.mean[which] = mean;
        self.covariance[entry(which, which)] = variance.max(0.0);
    }

    /// What reading a form of the quantities would tell.
    pub(super) fn innovation(&self, form: Form, read: f64, variance: f64) -> Innovation {
        let mut innovation = Innovation { residual: read, variance };
        for &(which, factor) in form {
            innovation.residual -= factor * self.mean[which];
            for &(other, other_factor) in form {
                innovation.variance += factor * other_factor * self.covariance(which, other);
            }
        }
        innovation
    }

    /// Takes in a number that was read: `K = P h / S`, `m + K r`, `P - K S K'`.
    pub(super) fn measure(&mut self, form: Form, read: f64, variance: f64) -> Innovation {
        let innovation = self.innovation(form, read, variance);
        if innovation.variance > 0.0 {
            let with = self.covariance_with(form);
            for (which, covariance) in with.into_iter().enumerate() {
                let gain = covariance / innovation.variance;
                self.mean[which] += gain * innovation.residual;
                for (other, other_covariance) in with.into_iter().enumerate().take(which + 1) {
                    self.covariance[entry(other, which)] -= gain * other_covariance;
                }
                let own = &mut self.covariance[entry(which, which)];
                *own = own.max(0.0);
            }
        }
        innovation
    }

    /// The mean and covariance of what is this with the given probability and
    /// otherwise the other.
    pub(super) fn or(&self, probability: f64, other: &Self) -> Self {
        let rest = 1.0 - probability;
        let apart: [f64; QUANTITIES] =
            std::array::from_fn(|which| self.mean[which] - other.mean[which]);
        let mut both = *self;
        for which in 0..QUANTITIES {
            both.mean[which] = other.mean[which] + probability * apart[which];
            for with in which..QUANTITIES {
                both.covariance[entry(which, with)] = probability * self.covariance(which, with)
                    + rest * other.covariance(which, with)
                    + probability * rest * apart[which] * apart[with];
            }
        }
        both
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_abs_diff_eq;

    type Matrix = [[f64; QUANTITIES]; QUANTITIES];

    /// A distribution in which everything hangs together, and its matrix.
    fn tangled() -> (Gaussian, Matrix) {
        let root: Matrix = std::array::from_fn(|row| {
            std::array::from_fn(|column| {
                let place = u32::try_from(row * 7 + column * 3 + row * column).unwrap();
                f64::from(place % 11) / 7.0 - 0.6
            })
        });
        let matrix: Matrix = std::array::from_fn(|row| {
            std::array::from_fn(|column| {
                (0..QUANTITIES).map(|k| root[row][k] * root[column][k]).sum()
            })
        });
        let mut gaussian =
            Gaussian::independent([20.0, 0.4, 1.0, 0.5, -0.3, 0.01], [0.0; QUANTITIES]);
        for (row, entries) in matrix.iter().enumerate() {
            for (column, covariance) in entries.iter().enumerate().skip(row) {
                gaussian.correlate(row, column, *covariance);
            }
        }
        (gaussian, matrix)
    }

    fn times(one: &Matrix, other: &Matrix) -> Matrix {
        std::array::from_fn(|row| {
            std::array::from_fn(|column| {
                (0..QUANTITIES).map(|k| one[row][k] * other[k][column]).sum()
            })
        })
    }

    fn transposed(matrix: &Matrix) -> Matrix {
        std::array::from_fn(|row| std::array::from_fn(|column| matrix[column][row]))
    }

    fn identity() -> Matrix {
        std::array::from_fn(|row| std::array::from_fn(|column| f64::from(u8::from(row == column))))
    }

    fn assert_covariance(gaussian: &Gaussian, matrix: &Matrix) {
        for (row, entries) in matrix.iter().enumerate() {
            for (column, entry) in entries.iter().enumerate() {
                assert_abs_diff_eq!(gaussian.covariance(row, column), *entry, epsilon = 1e-9);
            }
        }
    }

    #[test]
    fn a_row_is_transformed_as_the_dense_product_does() {
        let (mut gaussian, matrix) = tangled();
        let form = [(LEVEL, -0.2), (SHARE, 0.7), (STRONG_OFFSET, 0.03)];
        let mut jacobian = identity();
        jacobian[SHARE] = [0.0; QUANTITIES];
        for (which, factor) in form {
            jacobian[SHARE][which] = factor;
        }
        gaussian.transform(SHARE, &form);
        assert_covariance(&gaussian, &times(&times(&jacobian, &matrix), &transposed(&jacobian)));
    }

    /// Against the other form of the update, `(I - K h) P (I - K h)' + K R K'`.
    #[test]
    fn a_reading_is_taken_in_as_the_dense_formula_does() {
        let (mut gaussian, matrix) = tangled();
        let before = gaussian;
        let noise = 1.7;
        let form = [(LEVEL, 1.0), (GAUGE_BIAS, 1.0)];
        let mut row = [0.0; QUANTITIES];
        for (which, factor) in form {
            row[which] = factor;
        }
        let with: [f64; QUANTITIES] =
            std::array::from_fn(|k| (0..QUANTITIES).map(|l| matrix[k][l] * row[l]).sum());
        let variance = (0..QUANTITIES).map(|k| row[k] * with[k]).sum::<f64>() + noise;
        let gain = with.map(|covariance| covariance / variance);
        let left: Matrix = std::array::from_fn(|k| {
            std::array::from_fn(|l| f64::from(u8::from(k == l)) - gain[k] * row[l])
        });
        let mut expected = times(&times(&left, &matrix), &transposed(&left));
        for (entries, own) in expected.iter_mut().zip(gain) {
            for (entry, other) in entries.iter_mut().zip(gain) {
                *entry += own * noise * other;
            }
        }
        let innovation = gaussian.measure(&form, 23.0, noise);
        assert_abs_diff_eq!(innovation.variance, variance, epsilon = 1e-9);
        assert_abs_diff_eq!(innovation.residual, 2.5, epsilon = 1e-12);
        assert_covariance(&gaussian, &expected);
        for (which, gain) in gain.into_iter().enumerate() {
            let moved = before.mean(which) + gain * 2.5;
            assert_abs_diff_eq!(gaussian.mean(which), moved, epsilon = 1e-9);
        }
    }

    /// Half of the weight at each of two points: half of their distance is the
    /// deviation.
    #[test]
    fn two_possibilities_have_the_spread_between_them() {
        let at = |level, share| {
            Gaussian::independent(
                [level, share, 1.0, 0.0, 0.0, 0.0],
                [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
            )
        };
        let both = at(10.0, 0.2).or(0.5, &at(30.0, 0.4));
        assert_abs_diff_eq!(both.mean(LEVEL), 20.0, epsilon = 1e-12);
        assert_abs_diff_eq!(both.variance(LEVEL), 101.0, epsilon = 1e-9);
        assert_abs_diff_eq!(both.covariance(LEVEL, SHARE), 1.0, epsilon = 1e-12);
    }

    #[test]
    fn what_is_certain_takes_in_no_reading() {
        let mut certain = Gaussian::independent([10.0; QUANTITIES], [0.0; QUANTITIES]);
        let before = certain;
        certain.measure(&[(LEVEL, 1.0)], 20.0, 0.0);
        assert_eq!(certain, before);
    }
}
