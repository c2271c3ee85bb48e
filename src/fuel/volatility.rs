//! Vapour pressure: what the law lets ethanol add to it, and the classes of flex
//! fuel.

use uom::si::f64::Pressure;
use uom::si::pressure::kilopascal;

use crate::message::keys::practice as words;
use crate::quantity::Share;
use crate::source::{Citation, Confidence, Source, SourceKind, Sourced};

/// How far summer petrol in the EU may exceed its vapour pressure limit because
/// of its ethanol, in kPa at 0, 1, 2 ... 10 % v/v.
pub static ETHANOL_WAIVER: Sourced<[f64; 11]> = Sourced {
    value: [0.0, 3.7, 6.0, 7.2, 7.8, 8.0, 8.0, 7.9, 7.9, 7.8, 7.8],
    source: Source {
        kind: SourceKind::Law,
        citation: Citation::Words(words::ETHANOL_WAIVER),
        confidence: Confidence::Secondary,
    },
};

/// The vapour pressure that the EU waiver adds at an ethanol share, with straight
/// lines between the rows of its table; none above 10 % v/v, where it ends.
///
/// ```
/// use fillwright::{fuel::ethanol_waiver, quantity::Share};
/// use uom::si::pressure::kilopascal;
/// let waiver = ethanol_waiver(Share::from_percent(1.5)?);
/// assert!(waiver.is_some_and(|waiver| (waiver.get::<kilopascal>() - 4.85).abs() < 1e-9));
/// assert_eq!(ethanol_waiver(Share::from_percent(20.0)?), None);
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
pub fn ethanol_waiver(ethanol: Share) -> Option<Pressure> {
    let percent = ethanol.percent();
    let rows = &ETHANOL_WAIVER.value;
    let mut start = 0.0;
    for (low, high) in rows.iter().zip(rows.iter().skip(1)) {
        // Ten percent is 10.000000000000002 in some sums.
        if percent <= start + 1.0 + 1e-9 {
            return Some(Pressure::new::<kilopascal>(low + (high - low) * (percent - start)));
        }
        start += 1.0;
    }
    None
}

/// Vapour pressure of the classes 1 to 4 of US flex fuel (E85), lowest and highest,
/// in psi; class 1 is for the hottest weather. SI texts round them to 38-62, 48-65,
/// 59-83 and 66-103 kPa.
pub static FLEX_FUEL_CLASSES: Sourced<[(f64, f64); 4]> = Sourced {
    value: [(5.5, 9.0), (7.0, 9.5), (8.5, 12.0), (9.5, 15.0)],
    source: Source {
        kind: SourceKind::Standard,
        citation: Citation::Words(words::FLEX_FUEL_CLASSES),
        confidence: Confidence::Secondary,
    },
};
