//! Fuels of much ethanol for flexible-fuel cars: E85 and its seasons.

use super::{Grade, percent, source};
use crate::message::Wording::{Fixed, Words};
use crate::message::keys::grades as words;
use crate::source::{Citation, Confidence, Source, SourceKind};

/// The grades of this file, in the order in which they are shown.
pub(super) static ALL: &[Grade] = &[
    EN_SUMMER,
    EN_TRANSITION,
    EN_WINTER,
    SWEDISH_WINTER,
    FRENCH,
    AUSTRALIAN,
    D5798_CLASS_1,
    D5798_CLASS_2,
    D5798_CLASS_3,
    D5798_CLASS_4,
];

const EN_15293: Source =
    source(SourceKind::Standard, Confidence::Weak, Citation::Words(words::EN_15293_SOURCE));
const D5798: Source =
    source(SourceKind::Standard, Confidence::Secondary, Citation::Words(words::D5798_SOURCE));

const EN_E85: Grade = Grade {
    standard: Fixed("EN 15293"),
    region: Words(words::EUROPE),
    water_percent: percent(0.0, 0.2, 0.4),
    water_max_percent: Some(0.4),
    ron_min: Some(104.0),
    mon_min: Some(88.0),
    label: Some("E85"),
    source: EN_15293,
    ..Grade::UNKNOWN
};

const EN_SUMMER: Grade = Grade {
    id: "en15293-e85-summer",
    name: Words(words::EN15293_E85_SUMMER),
    ethanol_percent: percent(70.0, 80.0, 85.0),
    note: Words(words::EN15293_E85_SUMMER_NOTE),
    ..EN_E85
};

const EN_TRANSITION: Grade = Grade {
    id: "en15293-e85-transition",
    name: Words(words::EN15293_E85_TRANSITION),
    ethanol_percent: percent(60.0, 77.0, 85.0),
    note: Words(words::EN15293_E85_TRANSITION_NOTE),
    ..EN_E85
};

const EN_WINTER: Grade = Grade {
    id: "en15293-e85-winter",
    name: Words(words::EN15293_E85_WINTER),
    ethanol_percent: percent(50.0, 70.0, 85.0),
    note: Words(words::EN15293_E85_WINTER_NOTE),
    ..EN_E85
};

const SWEDISH_WINTER: Grade = Grade {
    id: "se-e85-winter",
    name: Words(words::SE_E85_WINTER),
    standard: Fixed("SS 15 54 80"),
    region: Words(words::SWEDEN),
    ethanol_percent: percent(70.0, 75.0, 85.0),
    water_max_percent: None,
    ron_min: None,
    mon_min: None,
    source: source(
        SourceKind::Standard,
        Confidence::Secondary,
        Citation::Words(words::SE_E85_WINTER_SOURCE),
    ),
    note: Words(words::SE_E85_WINTER_NOTE),
    ..EN_E85
};

const FRENCH: Grade = Grade {
    id: "fr-e85",
    name: Words(words::FR_E85),
    standard: Words(words::FRENCH_DECREE),
    region: Words(words::FRANCE),
    ethanol_percent: percent(65.0, 75.0, 85.0),
    water_max_percent: None,
    ron_min: None,
    mon_min: None,
    source: source(SourceKind::Law, Confidence::Secondary, Citation::Words(words::FR_E85_SOURCE)),
    note: Words(words::FR_E85_NOTE),
    ..EN_E85
};

const AUSTRALIAN: Grade = Grade {
    id: "au-e85",
    name: Words(words::AU_E85),
    standard: Fixed("Fuel Standard (Ethanol E85) Determination 2012"),
    region: Words(words::AUSTRALIA),
    ethanol_percent: percent(70.0, 77.5, 85.0),
    ron_min: Some(100.0),
    mon_min: Some(87.0),
    source: source(SourceKind::Law, Confidence::Secondary, Citation::Words(words::AU_E85_SOURCE)),
    note: Words(words::AU_E85_NOTE),
    ..Grade::UNKNOWN
};

const D5798_E85: Grade = Grade {
    standard: Fixed("ASTM D5798"),
    region: Words(words::UNITED_STATES),
    ethanol_percent: percent(51.0, 74.0, 83.0),
    water_percent: percent(0.0, 0.4, 0.8),
    methanol_percent: percent(0.0, 0.0, 0.5),
    methanol_max_percent: Some(0.5),
    source: D5798,
    note: Words(words::PLANNING_MEAN),
    ..Grade::UNKNOWN
};

const D5798_CLASS_1: Grade =
    Grade { id: "astm-d5798-class-1", name: Words(words::ASTM_D5798_CLASS_1), ..D5798_E85 };
const D5798_CLASS_2: Grade =
    Grade { id: "astm-d5798-class-2", name: Words(words::ASTM_D5798_CLASS_2), ..D5798_E85 };
const D5798_CLASS_3: Grade =
    Grade { id: "astm-d5798-class-3", name: Words(words::ASTM_D5798_CLASS_3), ..D5798_E85 };
const D5798_CLASS_4: Grade =
    Grade { id: "astm-d5798-class-4", name: Words(words::ASTM_D5798_CLASS_4), ..D5798_E85 };
