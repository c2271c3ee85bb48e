//! Petrol of Japan and Australia.

use super::{Grade, percent, source};
use crate::message::Wording::{Fixed, Words};
use crate::message::keys::grades as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

/// The grades of this file, in the order in which they are shown.
pub(super) static ALL: &[Grade] =
    &[JAPAN_REGULAR, JAPAN_PREMIUM, JAPAN_100, AUSTRALIA_91, AUSTRALIA_95, AUSTRALIA_98];

const JIS_K_2202: Source =
    source(SourceKind::Standard, Confidence::Weak, Citation::Words(words::JIS_K_2202_SOURCE));
const AUSTRALIAN_PETROL: Source =
    source(SourceKind::Law, Confidence::Weak, Citation::Words(words::AUSTRALIAN_PETROL_SOURCE));

const JAPANESE: Grade = Grade {
    standard: Fixed("JIS K 2202"),
    region: Words(words::JAPAN),
    ethanol_percent: percent(0.0, 0.0, 3.0),
    source: JIS_K_2202,
    note: Words(words::JAPANESE_NOTE),
    ..Grade::UNKNOWN
};

const JAPAN_REGULAR: Grade = Grade {
    id: "jis-k2202-regular",
    name: Words(words::JIS_K2202_REGULAR),
    ron_min: Some(89.0),
    ..JAPANESE
};
const JAPAN_PREMIUM: Grade = Grade {
    id: "jis-k2202-premium",
    name: Words(words::JIS_K2202_PREMIUM),
    ron_min: Some(96.0),
    ..JAPANESE
};
const JAPAN_100: Grade = Grade {
    id: "jp-premium-100",
    name: Words(words::JP_PREMIUM_100),
    standard: Words(words::JIS_K2202_100_IS_A_MARKET_GRADE),
    ron_min: Some(100.0),
    ..JAPANESE
};

const AUSTRALIAN: Grade = Grade {
    standard: Fixed("Fuel Standard (Petrol) Determination 2001"),
    region: Words(words::AUSTRALIA),
    ethanol_percent: percent(0.0, 0.0, 10.0),
    source: AUSTRALIAN_PETROL,
    note: Words(words::AUSTRALIAN_NOTE),
    ..Grade::UNKNOWN
};

const AUSTRALIA_91: Grade =
    Grade { id: "au-91", name: Fixed("91 unleaded"), ron_min: Some(91.0), ..AUSTRALIAN };
const AUSTRALIA_95: Grade =
    Grade { id: "au-95", name: Fixed("95 premium"), ron_min: Some(95.0), ..AUSTRALIAN };
const AUSTRALIA_98: Grade = Grade {
    id: "au-98",
    name: Fixed("98 premium"),
    standard: Words(words::AU_98_IS_A_MARKET_GRADE),
    ron_min: Some(98.0),
    ..AUSTRALIAN
};
