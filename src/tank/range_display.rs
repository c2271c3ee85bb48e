//! A level told by the distance that the dashboard says is left.

use serde::{Deserialize, Serialize};
use uom::si::volume::liter;

use crate::message::keys::practice as words;
use crate::quantity::Volume;
use crate::source::Sourced;

/// How far off a display of the distance left is, as a part of the fuel for it.
pub const RANGE_ERROR: Sourced<f64> = Sourced::common(0.15, words::RANGE_ERROR_SOURCE);
/// What its steps leave open beside that, in litres.
pub const RANGE_STEP_L: Sourced<f64> = Sourced::common(1.0, words::RANGE_STEP_L_SOURCE);
/// What a tank holds in reserve where nobody says how much, as a part of it.
pub const USUAL_RESERVE: Sourced<f64> = Sourced::common(0.12, words::USUAL_RESERVE_SOURCE);

/// What the display of the distance left counts down to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RangeDisplay {
    /// Nobody knows: either is allowed for.
    #[default]
    Unknown,
    /// The reserve.
    ToReserve,
    /// A dry tank.
    ToDry,
}

impl RangeDisplay {
    /// Whether this is what holds where nothing was chosen.
    #[expect(clippy::trivially_copy_pass_by_ref, reason = "what is not written asks so")]
    pub(crate) fn is_usual(&self) -> bool {
        *self == Self::default()
    }

    /// The level in a tank whose display shows a distance for which this fuel is needed,
    /// and its error to either side. Nothing when the display counts down to a reserve
    /// that is not known.
    ///
    /// ```
    /// use fillwright::{quantity::Volume, tank::RangeDisplay};
    /// use uom::si::volume::liter;
    /// let litres = |value| Volume::new::<liter>(value);
    /// let read = RangeDisplay::ToReserve.level(litres(8.0), litres(7.0), litres(60.0));
    /// assert_eq!(read.map(|it| it.0), Some(litres(15.0)));
    /// ```
    pub fn level(self, fuel: Volume, reserve: Volume, tank: Volume) -> Option<(Volume, Volume)> {
        let is_given = reserve > Volume::default();
        let error = fuel * RANGE_ERROR.value + Volume::new::<liter>(RANGE_STEP_L.value);
        match self {
            Self::ToDry => Some((fuel, error)),
            Self::ToReserve => is_given.then(|| (fuel + reserve, error)),
            Self::Unknown => {
                let reserve = if is_given { reserve } else { tank * USUAL_RESERVE.value };
                Some((fuel + reserve / 2.0, error + reserve / 2.0))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    fn litres(value: f64) -> Volume {
        Volume::new::<liter>(value)
    }

    fn read(display: RangeDisplay, fuel: f64, reserve: f64) -> Option<(f64, f64)> {
        let read = display.level(litres(fuel), litres(reserve), litres(50.0));
        read.map(|(level, error)| (level.get::<liter>(), error.get::<liter>()))
    }

    /// 8 L for the distance, 7 L in reserve: 8 * 0.15 + 1 = 2.2 L of doubt.
    #[test]
    fn reserve_is_added_where_the_display_leaves_it_out() {
        let near = |read: Option<(f64, f64)>, level, error| {
            let read = read.unwrap();
            assert_relative_eq!(read.0, level, max_relative = 1e-12);
            assert_relative_eq!(read.1, error, max_relative = 1e-12);
        };
        near(read(RangeDisplay::ToDry, 8.0, 7.0), 8.0, 2.2);
        near(read(RangeDisplay::ToReserve, 8.0, 7.0), 15.0, 2.2);
        // Either may be: 8 - 2.2 to 15 + 2.2.
        near(read(RangeDisplay::Unknown, 8.0, 7.0), 11.5, 5.7);
        // An eighth of 50 L, roughly, where no reserve is given.
        near(read(RangeDisplay::Unknown, 8.0, 0.0), 11.0, 5.2);
        assert_eq!(read(RangeDisplay::ToReserve, 8.0, 0.0), None);
    }

    #[test]
    fn no_display_is_exact() {
        for display in [RangeDisplay::ToDry, RangeDisplay::ToReserve, RangeDisplay::Unknown] {
            assert!(read(display, 0.0, 7.0).unwrap().1 >= 1.0);
        }
    }
}
