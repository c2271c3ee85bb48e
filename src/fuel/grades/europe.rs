//! Petrol of Europe: EN 228 and what stands beside it.

use super::{Grade, percent, source};
use crate::message::Wording::{Fixed, Words};
use crate::message::keys::grades as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

/// The grades of this file, in the order in which they are shown.
pub(super) static ALL: &[Grade] =
    &[PETROL_95_E10, PETROL_95_E5, PETROL_98_E5, PETROL_91, PETROL_E20, GB_95_E10, GB_97_E5];

const EN_228: Source =
    source(SourceKind::Law, Confidence::Secondary, Citation::Words(words::EN_228_SOURCE));

/// What EN 228 allows beside ethanol, whatever the grade.
const PETROL: Grade = Grade {
    standard: Fixed("EN 228"),
    region: Words(words::EUROPE),
    methanol_max_percent: Some(3.0),
    ethers_max_percent: Some(22.0),
    source: EN_228,
    ..Grade::UNKNOWN
};
const GREAT_BRITAIN: Source =
    source(SourceKind::Law, Confidence::Secondary, Citation::Words(words::GREAT_BRITAIN_SOURCE));

const PETROL_95_E10: Grade = Grade {
    id: "en228-95-e10",
    name: Fixed("95 E10"),
    ethanol_percent: percent(5.0, 9.5, 10.0),
    ron_min: Some(95.0),
    mon_min: Some(85.0),
    label: Some("E10"),
    note: Words(words::EN228_95_E10_NOTE),
    oxygen_max_percent: Some(3.7),
    ..PETROL
};

const PETROL_95_E5: Grade = Grade {
    id: "en228-95-e5",
    name: Fixed("95 E5"),
    ethanol_percent: percent(0.0, 4.5, 5.0),
    ron_min: Some(95.0),
    mon_min: Some(85.0),
    label: Some("E5"),
    note: Words(words::EN228_95_E5_NOTE),
    oxygen_max_percent: Some(2.7),
    ethers_percent: percent(0.0, 0.0, 4.5),
    ..PETROL
};

const PETROL_98_E5: Grade = Grade {
    id: "en228-98-e5",
    name: Fixed("98 E5"),
    standard: Words(words::EN228_98_IS_A_MARKET_GRADE),
    ethanol_percent: percent(0.0, 2.5, 5.0),
    ron_min: Some(98.0),
    mon_min: Some(85.0),
    label: Some("E5"),
    note: Words(words::EN228_98_E5_NOTE),
    oxygen_max_percent: Some(2.7),
    ethers_percent: percent(0.0, 2.0, 4.5),
    ..PETROL
};

const PETROL_91: Grade = Grade {
    id: "en228-91",
    name: Words(words::EN228_91),
    ethanol_percent: percent(0.0, 5.0, 10.0),
    ron_min: Some(91.0),
    mon_min: Some(81.0),
    note: Words(words::EN228_91_NOTE),
    oxygen_max_percent: Some(3.7),
    ..PETROL
};

const PETROL_E20: Grade = Grade {
    id: "cen-ts-18227-e20",
    name: Fixed("95 E20"),
    standard: Fixed("CEN/TS 18227"),
    region: Words(words::EUROPE),
    ethanol_percent: percent(10.0, 19.0, 20.0),
    ron_min: None,
    label: Some("E20"),
    source: source(
        SourceKind::Standard,
        Confidence::Secondary,
        Citation::Words(words::CEN_TS_18227_E20_SOURCE),
    ),
    note: Words(words::CEN_TS_18227_E20_NOTE),
    oxygen_max_percent: Some(8.0),
    ethers_percent: percent(0.0, 0.0, 3.5),
    ..Grade::UNKNOWN
};

const GB_95_E10: Grade = Grade {
    id: "gb-95-e10",
    name: Fixed("95 E10 premium"),
    standard: Words(words::GB_REGULATIONS),
    region: Words(words::GREAT_BRITAIN),
    ethanol_percent: percent(5.5, 9.5, 10.0),
    ron_min: Some(95.0),
    mon_min: Some(85.0),
    label: Some("E10"),
    source: GREAT_BRITAIN,
    note: Words(words::GB_95_E10_NOTE),
    oxygen_max_percent: Some(3.7),
    ..PETROL
};

const GB_97_E5: Grade = Grade {
    id: "gb-97-e5",
    name: Fixed("97 E5 super"),
    standard: Words(words::GB_REGULATIONS),
    region: Words(words::GREAT_BRITAIN),
    ethanol_percent: percent(0.0, 2.5, 5.0),
    ron_min: Some(97.0),
    mon_min: Some(85.0),
    label: Some("E5"),
    source: GREAT_BRITAIN,
    note: Words(words::GB_97_E5_NOTE),
    oxygen_max_percent: Some(2.7),
    ethers_percent: percent(0.0, 2.0, 4.5),
    ..PETROL
};
