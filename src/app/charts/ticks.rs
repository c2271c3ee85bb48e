//! Which numbers to write along an axis.

/// Ticks on round numbers.
#[derive(Debug, PartialEq)]
pub(super) struct Ticks {
    pub(super) values: Vec<f64>,
    /// How many decimals they need.
    pub(super) decimals: usize,
}

/// More decimals than this no axis is read with.
const DECIMALS: usize = 6;

/// Round numbers between two, with at most so many steps between them: ones, twos,
/// fives or quarters of a power of ten, and none that needs more decimals than
/// given.
pub(super) fn ticks(from: f64, to: f64, most: usize, decimals: usize) -> Ticks {
    let decimals = decimals.min(DECIMALS);
    // Counted in the finest step that the decimals allow, all ticks are whole.
    let finest = (0..decimals).fold(1.0, |power, _| power * 10.0);
    let (first, last) = (from * finest, to * finest);
    let most = most.max(1);
    let mut power = 1.0;
    while power <= (last - first).max(1.0) {
        for step in [power, 2.0 * power, 2.5 * power, 5.0 * power] {
            let begin = (first / step).ceil();
            let count = (last / step + 1e-9).floor() - begin;
            if step.fract() == 0.0 && (0.0..=number(most)).contains(&count) {
                let values = (0..=most).map(number).filter(|it| *it <= count);
                let values: Vec<f64> = values.map(|it| (begin + it) * step / finest).collect();
                return Ticks { decimals: needed(step / finest, decimals), values };
            }
        }
        power *= 10.0;
    }
    Ticks { values: vec![from, to], decimals }
}

/// How many decimals a step needs, of those that it may have.
fn needed(step: f64, most: usize) -> usize {
    let mut scaled = step;
    for decimals in 0..most {
        if (scaled - scaled.round()).abs() < 1e-6 {
            return decimals;
        }
        scaled *= 10.0;
    }
    most
}

fn number(count: usize) -> f64 {
    u16::try_from(count).map_or(f64::from(u16::MAX), f64::from)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn whole(from: f64, to: f64) -> Vec<f64> {
        ticks(from, to, 4, 0).values
    }

    #[test]
    fn ticks_are_few_and_round() {
        assert_eq!(whole(0.0, 100.0), [0.0, 25.0, 50.0, 75.0, 100.0]);
        assert_eq!(whole(0.0, 47.5), [0.0, 10.0, 20.0, 30.0, 40.0]);
        assert_eq!(whole(0.0, 13.2), [0.0, 5.0, 10.0]);
        assert_eq!(whole(0.0, 10.0), [0.0, 5.0, 10.0], "two and a half is not whole");
        assert_eq!(whole(0.0, 3.0), [0.0, 1.0, 2.0, 3.0]);
        assert_eq!(whole(0.0, 1.0), [0.0, 1.0]);
        assert_eq!(whole(0.0, 150.0), [0.0, 50.0, 100.0, 150.0]);
        assert_eq!(whole(1800.0, 7200.0), [2000.0, 4000.0, 6000.0]);
        assert_eq!(whole(-12.0, 12.0), [-10.0, -5.0, 0.0, 5.0, 10.0]);
    }

    #[test]
    fn decimals_are_those_of_the_step() {
        let lambda = ticks(0.75, 0.95, 4, 2);
        assert_eq!(lambda.decimals, 2);
        let expected = [0.75, 0.8, 0.85, 0.9, 0.95];
        assert_eq!(lambda.values.len(), expected.len());
        assert!(lambda.values.iter().zip(expected).all(|(a, b)| (a - b).abs() < 1e-9));
        assert_eq!(ticks(0.0, 1.0, 3, 2), Ticks { values: vec![0.0, 0.5, 1.0], decimals: 1 });
        assert_eq!(ticks(0.0, 8.0, 4, 2).decimals, 0);
    }

    #[test]
    fn there_are_never_more_steps_than_allowed() {
        for span in (1..60).map(|it| 1.37_f64.powi(it)) {
            for from in [0.0, 0.4 * span, -0.7 * span] {
                for most in 1..9 {
                    let Ticks { values, .. } = ticks(from, from + span, most, 1);
                    assert!((1..=most + 1).contains(&values.len()), "{from} {span} {most}");
                    assert!(values.is_sorted());
                    let inside = |it: &f64| (from - 1e-6..=from + span * (1.0 + 1e-6)).contains(it);
                    assert!(values.iter().all(inside), "{from} {span} {values:?}");
                }
            }
        }
    }
}
