//! Fuels sold under published standards. A pump names a maximum or a nominal
//! ethanol share; what it really holds is a range, and that is what is kept
//! here.

use crate::quantity::{Band, Share};
use crate::source::{Confidence, Source, SourceKind};

/// A fuel sold under a published standard.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grade {
    /// Tells it apart in stored documents; never changes.
    pub id: &'static str,
    /// What a person calls it.
    pub name: &'static str,
    /// The standard it is sold under.
    pub standard: &'static str,
    /// Where it is sold.
    pub region: &'static str,
    /// Lowest, expected and highest ethanol share, in percent by volume.
    pub ethanol_percent: [f64; 3],
    /// Research octane number, at least.
    pub ron_min: Option<f64>,
    /// Motor octane number, at least.
    pub mon_min: Option<f64>,
    /// Anti-knock index, at least, where that is what the pump shows.
    pub aki_min: Option<f64>,
    /// The text in the circle of EN 16942, where the pump shows one. It names
    /// the most ethanol there may be, not what there is.
    pub label: Option<&'static str>,
    /// Where the figures come from.
    pub source: Source,
    /// What to know about them.
    pub note: &'static str,
}

impl Grade {
    /// The ethanol share.
    pub fn ethanol(&self) -> Band<Share> {
        let [low, expected, high] =
            self.ethanol_percent.map(|percent| Share::clamped(percent / 100.0));
        // The catalogue is in order, which a test makes sure of.
        Band::new(low, expected, high).unwrap_or(Band::exact(expected))
    }
}

const fn source(kind: SourceKind, citation: &'static str, confidence: Confidence) -> Source {
    Source { kind, citation, confidence }
}

const fn octane(ron: f64, mon: f64) -> [Option<f64>; 3] {
    [Some(ron), Some(mon), None]
}

const fn aki(aki: f64) -> [Option<f64>; 3] {
    [None, None, Some(aki)]
}

const UNKNOWN: [Option<f64>; 3] = [None; 3];

const fn grade(
    [id, name, standard, region]: [&'static str; 4],
    ethanol_percent: [f64; 3],
    [ron_min, mon_min, aki_min]: [Option<f64>; 3],
    label: Option<&'static str>,
    source: Source,
    note: &'static str,
) -> Grade {
    Grade {
        id,
        name,
        standard,
        region,
        ethanol_percent,
        ron_min,
        mon_min,
        aki_min,
        label,
        source,
        note,
    }
}

use Confidence::{Checked, Secondary, Weak};
use SourceKind::{CommonPractice, Dataset, FromMemory, Law, Standard};

const EU_FUEL: Source = source(
    Law,
    "Directive 98/70/EC as amended by 2009/30/EC, Annex I: RON 95, MON 85, ethanol at most 10 %; at most 5 % in the protection grade (Article 3(3)); EN 228 follows it",
    Checked,
);
const EU_98: Source = source(
    CommonPractice,
    "98 is a market grade above EN 228: its RON is the seller's claim, its MON about 10 lower",
    Weak,
);
const EU_91: Source = source(
    Law,
    "Directive 98/70/EC as amended by 2009/30/EC, Annex I: optional regular grade, RON 91, MON 81",
    Checked,
);
const E20: Source = source(
    Standard,
    "CEN/TS 18227: petrol with 3.7 to 8.0 % m/m oxygen, up to 20 % ethanol (catalogue entry)",
    Secondary,
);
const EN_15293: Source = source(
    Standard,
    "EN 15293: 85 % nominal, seasonal grades of 50 % and more (scope of CEN/TR 15993:2018); RON 104, MON 88 and 50 to 85 % from a secondary text on CEN/TS 15293:2018",
    Secondary,
);
const EN_15293_CLASSES: Source = source(
    FromMemory,
    "EN 15293 seasonal classes: 70 to 85 % in the summer class; not looked up in the standard",
    Weak,
);
const SWEDEN: Source = source(
    Standard,
    "SS 15 54 80, as reported by the Swedish fuel trade: about 75 % in winter",
    Secondary,
);
const FRANCE: Source = source(
    Law,
    "French order of 28 December 2006 and practice under it: 65 % in winter to 85 % in summer",
    Secondary,
);
const AUSTRALIA: Source = source(
    Law,
    "Fuel Standard (Ethanol E85) Determination 2012 (Australia): 70 to 85 %, RON 100, MON 87",
    Checked,
);
const D4814: Source = source(
    Standard,
    "ASTM D4814 with the anti-knock index posted at the pump, (RON + MON) / 2; regular 87, premium 91 to 93 by region (91 to 93 from memory)",
    Secondary,
);
const D5798: Source = source(
    Standard,
    "ASTM D5798-15, as tabulated by the US DOE AFDC: 51 to 83 % in all four classes; planning mean of 74 % from the US Annual Energy Outlook",
    Secondary,
);
const D5798_CLASS: Source = source(
    Standard,
    "ASTM D5798-15, as tabulated by the US DOE AFDC: 51 to 83 % in all classes; stronger in summer (class 1), weaker in winter (class 4): the expected share is common practice",
    Weak,
);
const E15: Source = source(
    Law,
    "US EPA waiver for E15, as reported by fueleconomy.gov: 10.5 to 15 %, cars of 2001 and later only",
    Secondary,
);
const BRAZIL: Source = source(
    Law,
    "Brazilian mandate for gasolina C: 30 % since 1 August 2025, 27 % before; premium 25 %",
    Secondary,
);
const HYDROUS: Source = source(
    FromMemory,
    "ANP resolution 907/2022: 92.5 to 94.6 % m/m, 805.2 to 811.2 kg/m3 at 20 degrees Celsius, that is 95.1 to 96.5 % by volume",
    Weak,
);
const D4806: Source = source(
    Standard,
    "ASTM D4806-98: ethanol at least 92.1 %, denaturant 1.96 to 4.76 %, water at most 1.0 %; today's denaturant at most 2.50 % from memory",
    Secondary,
);
const BRITAIN: Source = source(
    Law,
    "British regulations since 1 September 2021: the 95 grade holds 5.5 to 10 % ethanol, the super grade at most 5 %, RON 97",
    Secondary,
);
const JAPAN: Source = source(
    Standard,
    "JIS K 2202: regular RON 89, premium RON 96; most sellers offer 100",
    Secondary,
);
const NEAT: Source = source(
    Dataset,
    "neat ethanol: RON 109, MON 90 from the compilation named under the constants",
    Secondary,
);

const CIRCLE: &str = "The circle at the pump names the most ethanol there may be.";

/// All grades.
pub static CATALOGUE: &[Grade] = &[
    grade(
        ["en228-95-e10", "95 E10", "EN 228.", "Europe"],
        [5.0, 9.5, 10.0],
        octane(95.0, 85.0),
        Some("E10"),
        EU_FUEL,
        "The circle at the pump names the most ethanol there may be; E10 is usually sold close to it (common practice).",
    ),
    grade(
        ["en228-95-e5", "95 E5", "EN 228.", "Europe"],
        [0.0, 4.5, 5.0],
        octane(95.0, 85.0),
        Some("E5"),
        EU_FUEL,
        CIRCLE,
    ),
    grade(
        ["en228-98-e5", "98 E5", "EN 228, market grade.", "Europe"],
        [0.0, 4.5, 5.0],
        octane(98.0, 88.0),
        Some("E5"),
        EU_98,
        "Some 98 grades hold ethers and hardly any ethanol.",
    ),
    grade(
        ["en228-91", "91 regular", "EN 228.", "Europe"],
        [0.0, 4.5, 10.0],
        octane(91.0, 81.0),
        None,
        EU_91,
        "Rare.",
    ),
    grade(
        ["cents18227-e20", "E20", "CEN/TS 18227.", "Europe"],
        [10.0, 19.0, 20.0],
        octane(95.0, 85.0),
        Some("E20"),
        E20,
        "The octane is that of EN 228; the specification was not seen.",
    ),
    grade(
        ["en15293-e85", "E85", "EN 15293.", "Europe"],
        [50.0, 78.0, 85.0],
        octane(104.0, 88.0),
        Some("E85"),
        EN_15293,
        "Strength changes with the season and the seller: ask, or measure.",
    ),
    grade(
        ["en15293-e85-summer", "E85 summer", "EN 15293, summer class.", "Europe"],
        [70.0, 82.0, 85.0],
        octane(104.0, 88.0),
        Some("E85"),
        EN_15293_CLASSES,
        CIRCLE,
    ),
    grade(
        ["se-e85-winter", "E85 winter", "SS 15 54 80 / EN 15293.", "Sweden"],
        [70.0, 75.0, 80.0],
        octane(104.0, 88.0),
        Some("E85"),
        SWEDEN,
        "The width of the range is common practice, no source.",
    ),
    grade(
        ["fr-e85", "E85", "French E85.", "France"],
        [65.0, 76.0, 85.0],
        octane(104.0, 88.0),
        Some("E85"),
        FRANCE,
        CIRCLE,
    ),
    grade(
        ["gb-95-e10", "95 E10", "BS EN 228.", "Great Britain"],
        [5.5, 9.5, 10.0],
        octane(95.0, 85.0),
        Some("E10"),
        BRITAIN,
        CIRCLE,
    ),
    grade(
        ["gb-97-e5", "Super 97 E5", "BS EN 228.", "Great Britain"],
        [0.0, 4.0, 5.0],
        octane(97.0, 86.0),
        Some("E5"),
        BRITAIN,
        "The MON is common practice, no source; 99 is a seller's claim.",
    ),
    grade(
        ["us-87-e10", "87 AKI E10", "ASTM D4814.", "United States"],
        [0.0, 9.8, 10.5],
        aki(87.0),
        None,
        D4814,
        "Pumps say “up to 10 %”.",
    ),
    grade(
        ["us-89-e10", "89 AKI E10", "ASTM D4814.", "United States"],
        [0.0, 9.8, 10.5],
        aki(89.0),
        None,
        D4814,
        "Pumps say “up to 10 %”.",
    ),
    grade(
        ["us-91-e10", "91 AKI E10", "ASTM D4814.", "United States"],
        [0.0, 9.8, 10.5],
        aki(91.0),
        None,
        D4814,
        "Pumps say “up to 10 %”.",
    ),
    grade(
        ["us-93-e10", "93 AKI E10", "ASTM D4814.", "United States"],
        [0.0, 9.8, 10.5],
        aki(93.0),
        None,
        D4814,
        "Pumps say “up to 10 %”.",
    ),
    grade(
        ["us-91-e0", "91 AKI without ethanol", "ASTM D4814.", "United States"],
        [0.0, 0.0, 0.5],
        aki(91.0),
        None,
        D4814,
        "The width of the range is common practice, no source.",
    ),
    grade(
        ["us-88-e15", "88 AKI E15", "ASTM D4814.", "United States"],
        [10.5, 15.0, 15.5],
        aki(88.0),
        None,
        E15,
        "Only for cars of 2001 and later, by federal law.",
    ),
    grade(
        ["us-e85", "E85 flex fuel", "ASTM D5798.", "United States"],
        [51.0, 74.0, 83.0],
        octane(100.0, 85.0),
        None,
        D5798,
        "The octane is common practice, no source: D5798 sets none. A pump may show a narrower number.",
    ),
    grade(
        ["us-e85-class1", "E85 class 1 (summer)", "ASTM D5798.", "United States"],
        [51.0, 80.0, 83.0],
        octane(100.0, 85.0),
        None,
        D5798_CLASS,
        "The octane is common practice, no source.",
    ),
    grade(
        ["us-e85-class2", "E85 class 2", "ASTM D5798.", "United States"],
        [51.0, 76.0, 83.0],
        octane(100.0, 85.0),
        None,
        D5798_CLASS,
        "The octane is common practice, no source.",
    ),
    grade(
        ["us-e85-class3", "E85 class 3", "ASTM D5798.", "United States"],
        [51.0, 70.0, 83.0],
        octane(100.0, 85.0),
        None,
        D5798_CLASS,
        "The octane is common practice, no source.",
    ),
    grade(
        ["us-e85-class4", "E85 class 4 (winter)", "ASTM D5798.", "United States"],
        [51.0, 62.0, 83.0],
        octane(100.0, 85.0),
        None,
        D5798_CLASS,
        "The octane is common practice, no source.",
    ),
    grade(
        ["d4806-denatured", "Denatured fuel ethanol", "ASTM D4806.", "United States"],
        [92.1, 96.5, 98.0],
        UNKNOWN,
        None,
        D4806,
        "The rest is petrol as denaturant, and up to 1 % water.",
    ),
    grade(
        ["br-gasolina-c", "Gasolina C E30", "Brazilian mandate.", "Brazil"],
        [29.0, 30.0, 31.0],
        octane(94.0, 82.0),
        None,
        BRAZIL,
        "The tolerance of one point and the MON are from memory.",
    ),
    grade(
        ["br-premium-e25", "Premium E25", "Brazilian mandate.", "Brazil"],
        [24.0, 25.0, 26.0],
        octane(97.0, 85.0),
        None,
        BRAZIL,
        "The tolerance and the octane are from memory.",
    ),
    grade(
        ["br-hydrous", "Hydrous ethanol", "ANP 907/2022.", "Brazil"],
        [95.1, 95.8, 96.5],
        octane(108.0, 89.0),
        None,
        HYDROUS,
        "The rest is water: in a blend with much petrol it can separate in the cold.",
    ),
    grade(
        ["au-e85", "E85", "Fuel Standard (Ethanol E85).", "Australia"],
        [70.0, 80.0, 85.0],
        octane(100.0, 87.0),
        None,
        AUSTRALIA,
        "The expected share is common practice, no source.",
    ),
    grade(
        ["jp-premium", "Premium", "JIS K 2202.", "Japan"],
        [0.0, 0.0, 3.0],
        octane(96.0, 85.0),
        None,
        JAPAN,
        "Most sellers offer RON 100; the MON and the ethanol share are from memory.",
    ),
    grade(
        ["neat-ethanol", "Neat ethanol", "No fuel standard.", "Anywhere"],
        [99.0, 99.5, 100.0],
        octane(109.0, 90.0),
        None,
        NEAT,
        "Neat ethanol for fuel is denatured in most countries; duty and law apply.",
    ),
];

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn grades_are_in_order_and_told_apart() {
        let ids: HashSet<&str> = CATALOGUE.iter().map(|grade| grade.id).collect();
        assert_eq!(ids.len(), CATALOGUE.len());
        for grade in CATALOGUE {
            let [low, expected, high] = grade.ethanol_percent;
            assert!(low <= expected && expected <= high && high <= 100.0, "{}", grade.id);
            assert!(!grade.source.citation.is_empty());
        }
    }
}
