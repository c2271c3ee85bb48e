//! Octane numbers as typed, with the scale that they are on.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::field::AnyField;
use super::text::{clean, split_number, words};
use super::{Choosable, NumberError, Style, Units, parse_number};
use crate::quantity::style::joined;

/// The octane number on a pump, with the scale that it is on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum OctaneFigure {
    /// The research octane number, shown in most of the world.
    Ron(f64),
    /// The anti-knock index, the mean of research and motor octane number, shown
    /// in North America.
    Aki(f64),
    /// A number without its scale: where it was bought tells which one it is.
    Unmarked(f64),
}

impl OctaneFigure {
    /// The number, on whichever scale.
    pub fn value(self) -> f64 {
        match self {
            Self::Ron(value) | Self::Aki(value) | Self::Unmarked(value) => value,
        }
    }
}

/// Why a text is not an octane number.
#[derive(Clone, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum OctaneTextError {
    /// The number in it cannot be read.
    Number(#[from] NumberError),
    /// The motor octane number alone.
    Motor {
        /// What was typed.
        given: String,
    },
    /// Something else than a scale stands beside the number.
    UnknownScale {
        /// What was typed.
        given: String,
    },
}

/// The octane number that a text means, from 60 to 130: `98`, `98 RON` or
/// `93 AKI`; the scale may also stand before the number.
///
/// ```
/// use fillwright::quantity::notation::{OctaneFigure, OctaneTextError, parse_octane};
/// assert_eq!(parse_octane("98 RON")?, OctaneFigure::Ron(98.0));
/// assert_eq!(parse_octane("95,5")?, OctaneFigure::Unmarked(95.5));
/// assert!(parse_octane("E85").is_err());
/// # Ok::<(), OctaneTextError>(())
/// ```
///
/// # Errors
/// When the text has no meaning, is on another scale, or is out of range.
pub fn parse_octane(text: &str) -> Result<OctaneFigure, OctaneTextError> {
    let given = clean(text)?;
    let unknown = || OctaneTextError::UnknownScale { given: given.to_owned() };
    let end = given.find(|c: char| !c.is_alphabetic()).unwrap_or(given.len());
    let (before, rest) = given.split_at(end);
    let (number, after) = split_number(rest);
    let (before, after) = (words(before), words(after));
    let (("", scale) | (scale, "")) = (before.as_str(), after.as_str()) else {
        return Err(unknown());
    };
    let figure = match scale {
        "" => OctaneFigure::Unmarked,
        "ron" | "roz" => OctaneFigure::Ron,
        "aki" | "(r+m)/2" => OctaneFigure::Aki,
        "mon" => return Err(OctaneTextError::Motor { given: given.to_owned() }),
        _ => return Err(unknown()),
    };
    if number.is_empty() {
        return Err(unknown());
    }
    Ok(figure(parse_number(number, 60.0..=130.0)?))
}

/// An octane number to be shown under another scale.
pub(super) struct OctaneInField;

impl AnyField for OctaneInField {
    fn symbol(&self, units: Units) -> &'static str {
        units.choice(Choosable::Octane).symbol
    }

    /// The same number with the scale that it is on, as none turns into the other without
    /// knowing the fuel.
    fn reprint(&self, text: &str, then: Units, now: Units, _: Style) -> Option<String> {
        let bare = matches!(parse_octane(text), Ok(OctaneFigure::Unmarked(_)));
        let differs = bare && then.octane() != now.octane();
        differs.then(|| joined(text.trim(), self.symbol(then)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn scale_stands_on_either_side_or_is_missing() {
        for (text, figure) in [
            ("98", OctaneFigure::Unmarked(98.0)),
            ("95,5", OctaneFigure::Unmarked(95.5)),
            ("98 ron", OctaneFigure::Ron(98.0)),
            ("RON98", OctaneFigure::Ron(98.0)),
            ("102 ROZ", OctaneFigure::Ron(102.0)),
            ("93AKI", OctaneFigure::Aki(93.0)),
            ("93 (R+M)/2", OctaneFigure::Aki(93.0)),
        ] {
            assert_eq!(parse_octane(text), Ok(figure), "{text}");
            assert!((60.0..=130.0).contains(&figure.value()));
        }
    }

    #[test]
    fn other_scales_and_numbers_are_refused() {
        let motor = OctaneTextError::Motor { given: "88 MON".to_owned() };
        assert_eq!(parse_octane("88 MON"), Err(motor));
        for text in ["", "RON", "E85", "59.9", "131", "RON 98 AKI", "98 %", "super", "9 8"] {
            assert!(parse_octane(text).is_err(), "{text}");
        }
    }

    #[test]
    fn figure_is_stored_with_its_scale() -> Result<(), serde_json::Error> {
        assert_eq!(serde_json::to_string(&OctaneFigure::Ron(98.0))?, "{\"ron\":98.0}");
        Ok(())
    }
}
