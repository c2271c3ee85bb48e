//! Fuels of the United States and Brazil.

use super::{Grade, percent, source};
use crate::source::{Confidence, Source, SourceKind};

const D4814: Source = source(
    SourceKind::Standard,
    Confidence::Weak,
    "ASTM D4814; grades by (R+M)/2, of which 87 was read in a secondary text and 88 to 93 are from \
     memory; 10 % and 15 % v/v are what fueleconomy.gov states for E10 and E15",
);
const E10_NOTE: &str = "Nearly all petrol of the country is E10, sold near its maximum: common practice, no source. The \
     denaturant of fuel ethanol, 2 to 5 % of it, is petrol, so less than 10 % is expected.";

const US_E10: Grade = Grade {
    standard: "ASTM D4814",
    region: "United States",
    ethanol_percent: percent(9.0, 9.7, 10.0),
    source: D4814,
    note: E10_NOTE,
    ..Grade::UNKNOWN
};

pub(super) const US_87_E0: Grade = Grade {
    id: "us-87-e0",
    name: "87 regular without ethanol",
    ethanol_percent: percent(0.0, 0.0, 0.0),
    aki_min: Some(87.0),
    note: "Sold as ethanol-free: by definition none.",
    ..US_E10
};
pub(super) const US_87_E10: Grade =
    Grade { id: "us-87-e10", name: "87 regular E10", aki_min: Some(87.0), ..US_E10 };
pub(super) const US_89_E10: Grade =
    Grade { id: "us-89-e10", name: "89 midgrade E10", aki_min: Some(89.0), ..US_E10 };
pub(super) const US_91_E10: Grade =
    Grade { id: "us-91-e10", name: "91 premium E10", aki_min: Some(91.0), ..US_E10 };
pub(super) const US_93_E10: Grade =
    Grade { id: "us-93-e10", name: "93 premium E10", aki_min: Some(93.0), ..US_E10 };
pub(super) const US_88_E15: Grade = Grade {
    id: "us-88-e15",
    name: "88 E15",
    ethanol_percent: percent(10.0, 14.5, 15.0),
    aki_min: Some(88.0),
    note: "More than 10 and at most 15 %. Sold near its maximum, less the denaturant of the \
           ethanol: common practice, no source. AKI 88 is what pumps state: from memory.",
    ..US_E10
};

pub(super) const DENATURED_ETHANOL: Grade = Grade {
    id: "astm-d4806-denatured",
    name: "Denatured fuel ethanol",
    standard: "ASTM D4806",
    region: "United States",
    ethanol_percent: percent(92.1, 97.0, 98.0),
    water_percent: percent(0.0, 0.5, 1.0),
    methanol_percent: percent(0.0, 0.25, 0.5),
    methanol_max_percent: Some(0.5),
    water_max_percent: Some(1.0),
    source: source(
        SourceKind::Standard,
        Confidence::Secondary,
        "ASTM D4806-98 as tabulated by a distiller: ethanol at least 92.1, water at most 1.0, \
         methanol at most 0.5, denaturant 1.96 to 4.76 % v/v; today's 1.96 to 2.50 % is from memory",
    ),
    note: "Expected: what is left by today's 2 to 2.5 % of denaturant (petrol) with between no and \
           all of the water and methanol that is allowed, 96.0 to 98.0 %, in the middle.",
    ..Grade::UNKNOWN
};

const GASOLINE_C: Source = source(
    SourceKind::Law,
    Confidence::Secondary,
    "Decision in force since 1 August 2025 as reported in the trade press: 30 % v/v anhydrous \
     ethanol in common petrol, 25 % in premium; the margin of 1 point and RON 94 are from memory",
);

pub(super) const BRAZIL_COMMON: Grade = Grade {
    id: "br-gasoline-c",
    name: "Gasoline C, E30",
    standard: "Brazilian law, ANP",
    region: "Brazil",
    ethanol_percent: percent(29.0, 30.0, 31.0),
    ron_min: Some(94.0),
    source: GASOLINE_C,
    note: "The law sets the share itself, so it is expected. Before August 2025 it was 27 %.",
    ..Grade::UNKNOWN
};

pub(super) const BRAZIL_E27: Grade = Grade {
    id: "br-gasoline-c-e27",
    name: "Gasoline C, E27",
    ethanol_percent: percent(26.0, 27.0, 28.0),
    ron_min: Some(93.0),
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        "from memory: 27 % v/v anhydrous ethanol in common petrol from 2015 to July 2025, with a \
         margin of 1 point, and RON 93 since 2022 (ANP 807/2020)",
    ),
    note: "What common petrol was until August 2025, when it became E30: the law set the share \
           itself, so it is expected.",
    ..BRAZIL_COMMON
};

pub(super) const BRAZIL_PREMIUM: Grade = Grade {
    id: "br-gasoline-premium",
    name: "Premium gasoline, E25",
    standard: "Brazilian law, ANP",
    region: "Brazil",
    ethanol_percent: percent(24.0, 25.0, 26.0),
    source: GASOLINE_C,
    note: "The law sets the share itself, so it is expected. Octane limits were not read.",
    ..Grade::UNKNOWN
};

pub(super) const BRAZIL_HYDROUS: Grade = Grade {
    id: "br-hydrous-ethanol",
    name: "Hydrous ethanol",
    standard: "ANP 907/2022",
    region: "Brazil",
    ethanol_percent: percent(93.9, 95.2, 96.6),
    water_percent: percent(3.4, 4.8, 6.1),
    water_max_percent: Some(6.1),
    source: source(
        SourceKind::FromMemory,
        Confidence::Weak,
        "from memory: ANP 907/2022, 92.5 to 94.6 % m/m ethanol, 805.2 to 811.2 kg/m3 at 20 degC",
    ),
    note: "The limits are by mass. By volume that is 95.1 to 96.5 % as an alcoholometer counts, and \
           94.0 to 95.7 % where the volumes of ethanol and water are added up, as here: the two \
           shrink on mixing. The range spans both, and its middle is taken; the rest is water.",
    ..Grade::UNKNOWN
};
