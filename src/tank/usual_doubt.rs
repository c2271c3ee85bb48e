//! How far a stated ethanol share may be off where nobody says how far.
//!
//! A share without a range is no exact one: people say "10" of a fuel that may hold 9
//! or 11. How sure they are decides what is allowed for around it.

use serde::{Deserialize, Serialize};

use crate::message::keys::practice as words;
use crate::quantity::{Band, Share};
use crate::source::Sourced;

/// What rounding to a whole per cent leaves, as a share to either side.
pub const SURE_DOUBT: Sourced<f64> = Sourced::common(0.005, words::SURE_DOUBT_SOURCE);
/// The usual doubt about a petrol's share, as a share to either side.
pub const PETROL_DOUBT: Sourced<f64> = Sourced::common(0.01, words::PETROL_DOUBT_SOURCE);
/// The usual doubt about a strong fuel's share, as a share to either side.
pub const STRONG_DOUBT: Sourced<f64> = Sourced::common(0.05, words::STRONG_DOUBT_SOURCE);
/// The shares up to which the doubt is a petrol's and from which it is a strong fuel's;
/// between them it grows evenly.
pub const DOUBT_GROWS: Sourced<(f64, f64)> =
    Sourced::common((0.15, 0.85), words::DOUBT_GROWS_SOURCE);
/// What a petrol may hold, whatever is said of it.
pub const POSSIBLE_IN_PETROL: Sourced<(f64, f64)> =
    Sourced::common((0.0, 0.15), words::POSSIBLE_IN_PETROL_SOURCE);
/// What a strong fuel may hold, whatever is said of it.
pub const POSSIBLE_IN_STRONG: Sourced<(f64, f64)> =
    Sourced::common((0.5, 1.0), words::POSSIBLE_IN_STRONG_SOURCE);

/// How sure a person is of a share that was typed without a range.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HowSure {
    /// It was measured, or stands on a delivery note: right to the whole per cent.
    Sure,
    /// It is about that.
    #[default]
    Roughly,
    /// It is a guess.
    Unknown,
}

impl HowSure {
    /// Whether this is what holds where nothing was chosen.
    #[expect(clippy::trivially_copy_pass_by_ref, reason = "what is not written asks so")]
    pub(crate) fn is_usual(&self) -> bool {
        *self == Self::default()
    }

    /// What a tank may hold of which somebody says this share. From 0 to 1; the share
    /// itself stays expected.
    ///
    /// ```
    /// use fillwright::{quantity::{Share, ShareError}, tank::HowSure};
    /// let band = HowSure::Roughly.of_tank(Share::from_percent(10.0)?);
    /// assert!((band.low().percent() - 9.0).abs() < 1e-9);
    /// assert!((band.high().percent() - 11.0).abs() < 1e-9);
    /// # Ok::<(), ShareError>(())
    /// ```
    pub fn of_tank(self, share: Share) -> Band<Share> {
        match self {
            Self::Unknown => around(share, (0.0, 1.0)),
            Self::Sure | Self::Roughly => self.give_or_take(share),
        }
    }

    /// What a fuel may hold of which somebody says this share. `grade` is what its
    /// grade may hold, if it has one: a grade that holds exactly one share by
    /// definition leaves no doubt about it.
    pub fn of_fuel(self, share: Share, grade: Option<Band<Share>>) -> Band<Share> {
        if grade == Some(Band::exact(share)) {
            return Band::exact(share);
        }
        let (petrol, strong) = (POSSIBLE_IN_PETROL.value, POSSIBLE_IN_STRONG.value);
        match (self, grade) {
            (Self::Unknown, Some(grade)) => {
                around(share, (grade.low().fraction(), grade.high().fraction()))
            }
            (Self::Unknown, None) if share.fraction() <= petrol.1 => around(share, petrol),
            (Self::Unknown, None) if share.fraction() >= strong.0 => around(share, strong),
            (Self::Unknown, None) => around(share, (0.0, 1.0)),
            (Self::Sure | Self::Roughly, _) => self.give_or_take(share),
        }
    }

    fn give_or_take(self, share: Share) -> Band<Share> {
        let value = share.fraction();
        let doubt = match self {
            Self::Sure => SURE_DOUBT.value,
            Self::Roughly | Self::Unknown => {
                let (from, to) = DOUBT_GROWS.value;
                let part = ((value - from) / (to - from)).clamp(0.0, 1.0);
                PETROL_DOUBT.value + part * (STRONG_DOUBT.value - PETROL_DOUBT.value)
            }
        };
        around(share, (value - doubt, value + doubt))
    }
}

/// The band from one share to another, made wide enough for the share expected and
/// kept from 0 to 1.
fn around(expected: Share, (low, high): (f64, f64)) -> Band<Share> {
    let ends = [Share::clamped(low), Share::clamped(high)];
    Band::enclosing(expected, ends).unwrap_or(Band::exact(expected))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn percents(band: Band<Share>) -> [f64; 3] {
        [band.low(), band.expected(), band.high()].map(Share::percent)
    }

    /// The low end, the expected share and the high end in percent.
    fn told(band: Band<Share>) -> String {
        let [low, expected, high] = percents(band).map(|it| (it * 1e6).round() / 1e6);
        format!("{low} {expected} {high}")
    }

    fn share(percent: f64) -> Share {
        Share::clamped(percent / 100.0)
    }

    #[test]
    fn rough_share_is_off_by_one_point_for_petrol_and_by_five_for_e85() {
        // Halfway between E15 and E85 the doubt is halfway between 1 and 5 points.
        for (percent, low, high) in
            [(10.0, 9.0, 11.0), (15.0, 14.0, 16.0), (50.0, 47.0, 53.0), (85.0, 80.0, 90.0)]
        {
            for band in [
                HowSure::Roughly.of_tank(share(percent)),
                HowSure::Roughly.of_fuel(share(percent), None),
            ] {
                for (value, by_hand) in percents(band).into_iter().zip([low, percent, high]) {
                    assert_relative_eq!(value, by_hand, max_relative = 1e-9);
                }
            }
        }
    }

    #[test]
    fn nothing_is_below_none_or_above_all() {
        assert_eq!(told(HowSure::Roughly.of_tank(share(0.0))), "0 0 1");
        assert_eq!(told(HowSure::Roughly.of_fuel(share(100.0), None)), "95 100 100");
        assert_eq!(told(HowSure::Unknown.of_tank(share(30.0))), "0 30 100");
    }

    #[test]
    fn guess_allows_for_all_that_such_a_fuel_may_hold() {
        let guess = |percent| told(HowSure::Unknown.of_fuel(share(percent), None));
        assert_eq!(guess(10.0), "0 10 15");
        assert_eq!(guess(85.0), "50 85 100");
        assert_eq!(guess(30.0), "0 30 100");
        let grade = Band::new(share(70.0), share(82.0), share(85.0)).ok();
        let of_grade = HowSure::Unknown.of_fuel(share(82.0), grade);
        assert_eq!(told(of_grade), "70 82 85");
        // The share that was typed stays possible.
        let above = HowSure::Unknown.of_fuel(share(90.0), grade);
        assert_eq!(told(above), "70 90 90");
    }

    #[test]
    fn definition_is_exact() {
        let neat = Some(Band::exact(Share::ONE));
        for how_sure in [HowSure::Sure, HowSure::Roughly, HowSure::Unknown] {
            assert_eq!(how_sure.of_fuel(Share::ONE, neat), Band::exact(Share::ONE));
            // No other share is.
            let band = how_sure.of_fuel(share(98.0), neat);
            assert!(band.low() < band.high());
        }
    }

    #[test]
    fn no_share_is_exact_whoever_says_so() {
        for how_sure in [HowSure::Sure, HowSure::Roughly, HowSure::Unknown] {
            for percent in 0..=100_u8 {
                let share = share(f64::from(percent));
                for band in [how_sure.of_tank(share), how_sure.of_fuel(share, None)] {
                    assert!(band.contains(share));
                    let width = band.high().percent() - band.low().percent();
                    assert!(width >= 0.5 - 1e-9, "{percent}: {width}");
                }
            }
        }
    }
}
