//! Petrol of Japan and Australia.

use super::{Grade, percent, source};
use crate::source::{Confidence, Source, SourceKind};

const JIS_K_2202: Source = source(
    SourceKind::Standard,
    Confidence::Weak,
    "JIS K 2202 as described by a secondary text: regular at least RON 89, premium at least 96, \
     most sellers state 100; at most 3 % v/v ethanol is from memory",
);
const AUSTRALIAN_PETROL: Source = source(
    SourceKind::Law,
    Confidence::Weak,
    "Fuel Standard (Petrol) Determination 2001: RON 91 and 95; at most 10 % v/v ethanol is from \
     memory, and 98 is a market grade",
);

const JAPANESE: Grade = Grade {
    standard: "JIS K 2202",
    region: "Japan",
    ethanol_percent: percent(0.0, 0.0, 3.0),
    source: JIS_K_2202,
    note: "Ethanol is blended as an ether, if at all, so none is expected: from memory.",
    ..Grade::UNKNOWN
};

pub(super) const JAPAN_REGULAR: Grade =
    Grade { id: "jis-k2202-regular", name: "Regular, 89", ron_min: Some(89.0), ..JAPANESE };
pub(super) const JAPAN_PREMIUM: Grade =
    Grade { id: "jis-k2202-premium", name: "Premium, 96", ron_min: Some(96.0), ..JAPANESE };
pub(super) const JAPAN_100: Grade = Grade {
    id: "jp-premium-100",
    name: "Premium, 100",
    standard: "JIS K 2202 (100 is a market grade)",
    ron_min: Some(100.0),
    ..JAPANESE
};

const AUSTRALIAN: Grade = Grade {
    standard: "Fuel Standard (Petrol) Determination 2001",
    region: "Australia",
    ethanol_percent: percent(0.0, 0.0, 10.0),
    source: AUSTRALIAN_PETROL,
    note: "None is expected where the pump does not say E10: common practice, no source. Where it \
           does, take 9.5 %.",
    ..Grade::UNKNOWN
};

pub(super) const AUSTRALIA_91: Grade =
    Grade { id: "au-91", name: "91 unleaded", ron_min: Some(91.0), ..AUSTRALIAN };
pub(super) const AUSTRALIA_95: Grade =
    Grade { id: "au-95", name: "95 premium", ron_min: Some(95.0), ..AUSTRALIAN };
pub(super) const AUSTRALIA_98: Grade = Grade {
    id: "au-98",
    name: "98 premium",
    standard: "Fuel Standard (Petrol) Determination 2001 (98 is a market grade)",
    ron_min: Some(98.0),
    ..AUSTRALIAN
};
