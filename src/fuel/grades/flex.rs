//! Fuels of much ethanol for flexible-fuel cars: E85 and its seasons.

use super::{Grade, percent, source};
use crate::source::{Confidence, Source, SourceKind};

const EN_15293: Source = source(
    SourceKind::Standard,
    Confidence::Weak,
    "CEN/TR 15993:2018 (nominal 85 % v/v, seasonal grades at least 50 %); class limits from memory; \
     RON 104, MON 88 and 0.4 % water from a secondary text on CEN/TS 15293:2018",
);
const D5798: Source = source(
    SourceKind::Standard,
    Confidence::Secondary,
    "ASTM D5798-15 as tabulated by the US DOE Alternative Fuels Data Center: 51 to 83 % v/v in all \
     classes, methanol at most 0.5 %",
);
/// Why the mean of a year stands for every class.
const PLANNING_MEAN: &str = "All classes allow the same range of ethanol; they differ in vapour pressure. Expected: 74 %, the \
     mean of a year that the US Annual Energy Outlook 2011 plans with. Winter fuel tends to less, \
     summer fuel to more. Older pumps say E85. The ethanol in it, by ASTM D4806, holds at most 1 % \
     of water, so at most 0.8 % are in the fuel, and half of that is expected; of methanol, a \
     contamination, none is.";

const EN_E85: Grade = Grade {
    standard: "EN 15293",
    region: "Europe",
    water_percent: percent(0.0, 0.2, 0.4),
    water_max_percent: Some(0.4),
    ron_min: Some(104.0),
    mon_min: Some(88.0),
    label: Some("E85"),
    source: EN_15293,
    ..Grade::UNKNOWN
};

pub(super) const EN_SUMMER: Grade = Grade {
    id: "en15293-e85-summer",
    name: "E85, summer",
    ethanol_percent: percent(70.0, 80.0, 85.0),
    note: "85 % is the name and the most that is allowed, so what pumps give lies below it. Expected: \
           two thirds of the way from the least to the most, common practice, no source. The \
           minimum of the class is from memory. Of the water that is allowed, half is expected: no \
           source says how much there is.",
    ..EN_E85
};

pub(super) const EN_TRANSITION: Grade = Grade {
    id: "en15293-e85-transition",
    name: "E85, spring and autumn",
    ethanol_percent: percent(60.0, 77.0, 85.0),
    note: "Half way between what is expected in summer and in winter; a pump may still hold either. \
           The minimum of the class is from memory. Of the water that is allowed, half is expected.",
    ..EN_E85
};

pub(super) const EN_WINTER: Grade = Grade {
    id: "en15293-e85-winter",
    name: "E85, winter",
    ethanol_percent: percent(50.0, 70.0, 85.0),
    note: "Half way between the 75 % of Swedish and the 65 % of French winter fuel. Summer fuel may \
           still be in the pump. Of the water that is allowed, half is expected.",
    ..EN_E85
};

pub(super) const SWEDISH_WINTER: Grade = Grade {
    id: "se-e85-winter",
    name: "E85, Swedish winter",
    standard: "SS 15 54 80",
    region: "Sweden",
    ethanol_percent: percent(70.0, 75.0, 85.0),
    water_max_percent: None,
    ron_min: None,
    mon_min: None,
    source: source(
        SourceKind::Standard,
        Confidence::Secondary,
        "SS 15 54 80, winter quality of about 75 % v/v, as described by the Swedish fuel trade \
         association; the minimum is from memory",
    ),
    note: "About 75 % is stated. Summer fuel of 85 % may still be in the pump. Water is taken as in \
           EN 15293.",
    ..EN_E85
};

pub(super) const FRENCH: Grade = Grade {
    id: "fr-e85",
    name: "E85, France",
    standard: "Decree of 28 December 2006",
    region: "France",
    ethanol_percent: percent(65.0, 75.0, 85.0),
    water_max_percent: None,
    ron_min: None,
    mon_min: None,
    source: source(
        SourceKind::Law,
        Confidence::Secondary,
        "French decree of 28 December 2006 on superethanol: 65 % v/v in winter to 85 % in summer, \
         as summarised",
    ),
    note: "The middle of the range is taken: expect 65 % in winter, 85 % in summer. Water is taken as \
           in EN 15293.",
    ..EN_E85
};

pub(super) const AUSTRALIAN: Grade = Grade {
    id: "au-e85",
    name: "E85, Australia",
    standard: "Fuel Standard (Ethanol E85) Determination 2012",
    region: "Australia",
    ethanol_percent: percent(70.0, 77.5, 85.0),
    ron_min: Some(100.0),
    mon_min: Some(87.0),
    source: source(
        SourceKind::Law,
        Confidence::Secondary,
        "Fuel Standard (Ethanol E85) Determination 2012: 70 to 85 % v/v, RON 100, MON 87",
    ),
    note: "The middle of the legal range is taken: nothing published says where in it the pumps are.",
    ..Grade::UNKNOWN
};

const D5798_E85: Grade = Grade {
    standard: "ASTM D5798",
    region: "United States",
    ethanol_percent: percent(51.0, 74.0, 83.0),
    water_percent: percent(0.0, 0.4, 0.8),
    methanol_percent: percent(0.0, 0.0, 0.5),
    methanol_max_percent: Some(0.5),
    source: D5798,
    note: PLANNING_MEAN,
    ..Grade::UNKNOWN
};

pub(super) const D5798_CLASS_1: Grade =
    Grade { id: "astm-d5798-class-1", name: "Flex fuel (E85), class 1: summer", ..D5798_E85 };
pub(super) const D5798_CLASS_2: Grade =
    Grade { id: "astm-d5798-class-2", name: "Flex fuel (E85), class 2", ..D5798_E85 };
pub(super) const D5798_CLASS_3: Grade =
    Grade { id: "astm-d5798-class-3", name: "Flex fuel (E85), class 3", ..D5798_E85 };
pub(super) const D5798_CLASS_4: Grade =
    Grade { id: "astm-d5798-class-4", name: "Flex fuel (E85), class 4: winter", ..D5798_E85 };
