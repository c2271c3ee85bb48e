//! Petrol of Europe: EN 228 and what stands beside it.

use super::{Grade, percent, source};
use crate::source::{Confidence, Source, SourceKind};

const EN_228: Source = source(
    SourceKind::Law,
    Confidence::Secondary,
    "Directive 98/70/EC, Annex I (RON 95, MON 85; option RON 91, MON 81) and Article 3(3) (5 % v/v, \
     2.7 % m/m oxygen); E10: EN 228:2012+A1:2017 (10 % v/v, 3.7 % m/m oxygen) as stated in Fuels \
     2021, 2(4), 501; methanol at most 3.0 and ethers at most 22.0 % v/v: Swedish decree SFS \
     2014:536, 4 §, 9 a and f",
);

/// What EN 228 allows beside ethanol, whatever the grade.
const PETROL: Grade = Grade {
    standard: "EN 228",
    region: "Europe",
    methanol_max_percent: Some(3.0),
    ethers_max_percent: Some(22.0),
    source: EN_228,
    ..Grade::UNKNOWN
};
const GREAT_BRITAIN: Source = source(
    SourceKind::Law,
    Confidence::Secondary,
    "Motor Fuel (Composition and Content) and the Biofuel (Labelling) (Amendment) Regulations \
     2021, as summarised",
);

pub(super) const PETROL_95_E10: Grade = Grade {
    id: "en228-95-e10",
    name: "95 E10",
    ethanol_percent: percent(5.0, 9.5, 10.0),
    ron_min: Some(95.0),
    mon_min: Some(85.0),
    label: Some("E10"),
    note: "The standard sets no minimum, but up to 5 % it could be sold as E5. E10 is sold near its \
           maximum: common practice, no source. So much ethanol brings all the oxygen that is \
           allowed, 3.7 %: ethers or methanol only stand in for some of it, which leans an engine \
           less than 1 % more.",
    oxygen_max_percent: Some(3.7),
    ..PETROL
};

pub(super) const PETROL_95_E5: Grade = Grade {
    id: "en228-95-e5",
    name: "95 E5",
    ethanol_percent: percent(0.0, 4.5, 5.0),
    ron_min: Some(95.0),
    mon_min: Some(85.0),
    label: Some("E5"),
    note: "The standard sets no minimum. 95 E5 is sold near its maximum: common practice, no source. \
           Beside that the 2.7 % of oxygen leave room for 4.5 % of ethers, of which none is expected: \
           no source says how much there is.",
    oxygen_max_percent: Some(2.7),
    ethers_percent: percent(0.0, 0.0, 4.5),
    ..PETROL
};

pub(super) const PETROL_98_E5: Grade = Grade {
    id: "en228-98-e5",
    name: "98 E5",
    standard: "EN 228 (98 is a market grade)",
    ethanol_percent: percent(0.0, 2.5, 5.0),
    ron_min: Some(98.0),
    mon_min: Some(85.0),
    label: Some("E5"),
    note: "The standard sets no minimum, and some sellers make it with ethers and no ethanol: the \
           middle of the range is taken. Beside the most ethanol the 2.7 % of oxygen leave room for \
           4.5 % of ethers; about half of that is expected, beside the middle of ethanol. RON 98 is what the \
           seller states; the MON is the minimum of the standard, 88 is usual: common practice, no \
           source.",
    oxygen_max_percent: Some(2.7),
    ethers_percent: percent(0.0, 2.0, 4.5),
    ..PETROL
};

pub(super) const PETROL_91: Grade = Grade {
    id: "en228-91",
    name: "91 regular",
    ethanol_percent: percent(0.0, 5.0, 10.0),
    ron_min: Some(91.0),
    mon_min: Some(81.0),
    note: "Allowed as an option and sold in few countries, with either label: read the circle on \
           the pump. The middle of the range is taken.",
    oxygen_max_percent: Some(3.7),
    ..PETROL
};

pub(super) const PETROL_E20: Grade = Grade {
    id: "cen-ts-18227-e20",
    name: "95 E20",
    standard: "CEN/TS 18227",
    region: "Europe",
    ethanol_percent: percent(10.0, 19.0, 20.0),
    ron_min: None,
    label: Some("E20"),
    source: source(
        SourceKind::Standard,
        Confidence::Secondary,
        "CEN/TS 18227, scope: 3.7 to 8.0 % m/m oxygen, up to 20 % v/v ethanol",
    ),
    note: "3.7 % m/m oxygen is 10 % v/v of ethanol, hence the minimum. Expected near its maximum, \
           as E10 is: common practice, no source. 8.0 % of oxygen leave room for some ether beside \
           that; none is expected. Octane limits were not read.",
    oxygen_max_percent: Some(8.0),
    ethers_percent: percent(0.0, 0.0, 3.5),
    ..Grade::UNKNOWN
};

pub(super) const GB_95_E10: Grade = Grade {
    id: "gb-95-e10",
    name: "95 E10 premium",
    standard: "GB regulations 2021, EN 228",
    region: "Great Britain",
    ethanol_percent: percent(5.5, 9.5, 10.0),
    ron_min: Some(95.0),
    mon_min: Some(85.0),
    label: Some("E10"),
    source: GREAT_BRITAIN,
    note: "By law at least 5.5 % since September 2021. Sold near its maximum: common practice, no \
           source.",
    oxygen_max_percent: Some(3.7),
    ..PETROL
};

pub(super) const GB_97_E5: Grade = Grade {
    id: "gb-97-e5",
    name: "97 E5 super",
    standard: "GB regulations 2021, EN 228",
    region: "Great Britain",
    ethanol_percent: percent(0.0, 2.5, 5.0),
    ron_min: Some(97.0),
    mon_min: Some(85.0),
    label: Some("E5"),
    source: GREAT_BRITAIN,
    note: "No minimum, and sellers differ: the middle of the range is taken. A higher RON on the \
           pump is the seller's own statement. Of the 4.5 % of ethers that the 2.7 % of oxygen leave \
           room for beside the most ethanol, about half is expected.",
    oxygen_max_percent: Some(2.7),
    ethers_percent: percent(0.0, 2.0, 4.5),
    ..PETROL
};
