//! Fuels of the United States and Brazil.

use super::{Grade, percent, source};
use crate::message::Wording::{Fixed, Words};
use crate::message::keys::grades as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

/// The grades of this file, in the order in which they are shown.
pub(super) static ALL: &[Grade] = &[
    US_87_E0,
    US_87_E10,
    US_89_E10,
    US_91_E10,
    US_93_E10,
    US_88_E15,
    DENATURED_ETHANOL,
    BRAZIL_COMMON,
    BRAZIL_E27,
    BRAZIL_PREMIUM,
    BRAZIL_HYDROUS,
];

const D4814: Source =
    source(SourceKind::Standard, Confidence::Weak, Citation::Words(words::D4814_SOURCE));

const US_E10: Grade = Grade {
    standard: Fixed("ASTM D4814"),
    region: Words(words::UNITED_STATES),
    ethanol_percent: percent(9.0, 9.7, 10.0),
    source: D4814,
    note: Words(words::US_E10_NOTE),
    ..Grade::UNKNOWN
};

const US_87_E0: Grade = Grade {
    id: "us-87-e0",
    name: Words(words::US_87_E0),
    ethanol_percent: percent(0.0, 0.0, 0.0),
    aki_min: Some(87.0),
    note: Words(words::US_87_E0_NOTE),
    ..US_E10
};
const US_87_E10: Grade =
    Grade { id: "us-87-e10", name: Fixed("87 regular E10"), aki_min: Some(87.0), ..US_E10 };
const US_89_E10: Grade =
    Grade { id: "us-89-e10", name: Fixed("89 midgrade E10"), aki_min: Some(89.0), ..US_E10 };
const US_91_E10: Grade =
    Grade { id: "us-91-e10", name: Fixed("91 premium E10"), aki_min: Some(91.0), ..US_E10 };
const US_93_E10: Grade =
    Grade { id: "us-93-e10", name: Fixed("93 premium E10"), aki_min: Some(93.0), ..US_E10 };
const US_88_E15: Grade = Grade {
    id: "us-88-e15",
    name: Fixed("88 E15"),
    ethanol_percent: percent(10.0, 14.5, 15.0),
    aki_min: Some(88.0),
    note: Words(words::US_88_E15_NOTE),
    ..US_E10
};

const DENATURED_ETHANOL: Grade = Grade {
    id: "astm-d4806-denatured",
    name: Words(words::ASTM_D4806_DENATURED),
    standard: Fixed("ASTM D4806"),
    region: Words(words::UNITED_STATES),
    ethanol_percent: percent(92.1, 97.0, 98.0),
    water_percent: percent(0.0, 0.5, 1.0),
    methanol_percent: percent(0.0, 0.25, 0.5),
    methanol_max_percent: Some(0.5),
    water_max_percent: Some(1.0),
    source: source(
        SourceKind::Standard,
        Confidence::Secondary,
        Citation::Words(words::ASTM_D4806_DENATURED_SOURCE),
    ),
    note: Words(words::ASTM_D4806_DENATURED_NOTE),
    ..Grade::UNKNOWN
};

const GASOLINE_C: Source =
    source(SourceKind::Law, Confidence::Secondary, Citation::Words(words::GASOLINE_C_SOURCE));

const BRAZIL_COMMON: Grade = Grade {
    id: "br-gasoline-c",
    name: Words(words::BR_GASOLINE_C),
    standard: Words(words::BRAZILIAN_LAW),
    region: Words(words::BRAZIL),
    ethanol_percent: percent(29.0, 30.0, 31.0),
    ron_min: Some(94.0),
    source: GASOLINE_C,
    note: Words(words::BR_GASOLINE_C_NOTE),
    ..Grade::UNKNOWN
};

const BRAZIL_E27: Grade = Grade {
    id: "br-gasoline-c-e27",
    name: Words(words::BR_GASOLINE_C_E27),
    ethanol_percent: percent(26.0, 27.0, 28.0),
    ron_min: Some(93.0),
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        Citation::WithCaveat(words::BR_GASOLINE_C_E27_SOURCE),
    ),
    note: Words(words::BR_GASOLINE_C_E27_NOTE),
    ..BRAZIL_COMMON
};

const BRAZIL_PREMIUM: Grade = Grade {
    id: "br-gasoline-premium",
    name: Words(words::BR_GASOLINE_PREMIUM),
    standard: Words(words::BRAZILIAN_LAW),
    region: Words(words::BRAZIL),
    ethanol_percent: percent(24.0, 25.0, 26.0),
    source: GASOLINE_C,
    note: Words(words::BR_GASOLINE_PREMIUM_NOTE),
    ..Grade::UNKNOWN
};

const BRAZIL_HYDROUS: Grade = Grade {
    id: "br-hydrous-ethanol",
    name: Words(words::BR_HYDROUS_ETHANOL),
    standard: Fixed("ANP 907/2022"),
    region: Words(words::BRAZIL),
    ethanol_percent: percent(93.9, 95.2, 96.6),
    water_percent: percent(3.4, 4.8, 6.1),
    water_max_percent: Some(6.1),
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        Citation::WithCaveat(words::BR_HYDROUS_ETHANOL_SOURCE),
    ),
    note: Words(words::BR_HYDROUS_ETHANOL_NOTE),
    ..Grade::UNKNOWN
};
