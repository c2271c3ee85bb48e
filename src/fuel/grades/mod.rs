//! Pump fuels by the standard that they are sold under.
//!
//! A standard often sets only a maximum of ethanol, so what a pump gives is known
//! as a band: the least and most that is possible, and what to expect. Why that is
//! expected stands in each note.

mod americas;
mod europe;
mod flex;
mod pacific;

use super::content::{Content, Extras};
use crate::message::Wording::{self, Fixed, Words};
use crate::message::keys::grades as words;
use crate::quantity::{Band, Share};
use crate::source::{Citation, Confidence, Source, SourceKind};

/// A fuel as standards and laws describe it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grade {
    /// Name in stored files; never changes once published.
    pub id: &'static str,
    /// Name to show.
    pub name: Wording,
    /// The standard or law that describes it.
    pub standard: Wording,
    /// Where it is sold.
    pub region: Wording,
    /// Ethanol in percent by volume.
    ethanol_percent: Percent,
    /// Water in percent by volume.
    water_percent: Percent,
    /// Methanol in percent by volume.
    methanol_percent: Percent,
    /// Ethers in percent by volume: what oxygen leaves beside the most ethanol. Where
    /// there is less ethanol there may be more ether, which leans an engine less than 1 %
    /// more.
    ethers_percent: Percent,
    /// Most methanol that is allowed, in percent by volume; none when the source names
    /// no limit.
    pub methanol_max_percent: Option<f64>,
    /// Most water that is allowed, in percent by volume; none when the source names no
    /// limit.
    pub water_max_percent: Option<f64>,
    /// Most ethers that are allowed, in percent by volume; none when the source names no
    /// limit.
    pub ethers_max_percent: Option<f64>,
    /// Most oxygen that is allowed, in percent by mass; none when the source names no
    /// limit.
    pub oxygen_max_percent: Option<f64>,
    /// Least research octane number of the finished fuel.
    pub ron_min: Option<f64>,
    /// Least motor octane number of the finished fuel.
    pub mon_min: Option<f64>,
    /// Least anti-knock index of the finished fuel.
    pub aki_min: Option<f64>,
    /// The words in the circle of EN 16942: the *most* ethanol that the grade may
    /// hold, not what it holds.
    pub label: Option<&'static str>,
    /// Where the limits come from.
    pub source: Source,
    /// Why the expected share is expected, and what to know before relying on it.
    pub note: Wording,
}

/// Percent by volume: the least, what is expected, the most.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Percent {
    low: f64,
    expected: f64,
    high: f64,
}

impl Grade {
    /// A grade of which nothing is known; the data files fill in what is.
    const UNKNOWN: Self = Self {
        id: "",
        name: Fixed(""),
        standard: Fixed(""),
        region: Fixed(""),
        ethanol_percent: percent(0.0, 0.0, 0.0),
        water_percent: percent(0.0, 0.0, 0.0),
        methanol_percent: percent(0.0, 0.0, 0.0),
        ethers_percent: percent(0.0, 0.0, 0.0),
        methanol_max_percent: None,
        water_max_percent: None,
        ethers_max_percent: None,
        oxygen_max_percent: None,
        ron_min: None,
        mon_min: None,
        aki_min: None,
        label: None,
        source: source(SourceKind::FromMemory, Confidence::Weak, Citation::Published("")),
        note: Fixed(""),
    };

    /// Volume share of ethanol: least, expected, most.
    ///
    /// ```
    /// use fillwright::fuel::grades;
    /// let e85 = grades::find("astm-d5798-class-1");
    /// assert!(e85.is_some_and(|grade| (grade.ethanol().low().percent() - 51.0).abs() < 1e-9));
    /// ```
    pub fn ethanol(&self) -> Band<Share> {
        self.ethanol_percent.band()
    }

    /// What it may hold beside petrol and ethanol.
    pub fn extras(&self) -> Extras {
        Extras {
            water: self.water_percent.band(),
            methanol: self.methanol_percent.band(),
            ethers: self.ethers_percent.band(),
        }
    }

    /// All that it may hold.
    pub fn content(&self) -> Content {
        Content { ethanol: self.ethanol(), extras: self.extras() }
    }
}

impl Percent {
    fn band(self) -> Band<Share> {
        let Self { low, expected, high } = self;
        let [low, expected, high] =
            [low, expected, high].map(|percent| Share::clamped(percent / 100.0));
        // A test holds every grade to the order; the other arm is never taken.
        Band::new(low, expected, high).unwrap_or(Band::exact(expected))
    }
}

const fn percent(low: f64, expected: f64, high: f64) -> Percent {
    Percent { low, expected, high }
}

const fn source(kind: SourceKind, confidence: Confidence, citation: Citation) -> Source {
    Source { kind, citation, confidence }
}

/// The grade with this id.
pub fn find(id: &str) -> Option<&'static Grade> {
    catalogue().find(|grade| grade.id == id)
}

/// Every grade, grouped by region.
pub fn catalogue() -> impl Iterator<Item = &'static Grade> {
    let regions = [europe::ALL, flex::ALL, americas::ALL, pacific::ALL];
    regions.into_iter().flatten().chain([&NEAT_ETHANOL])
}

static NEAT_ETHANOL: Grade = Grade {
    id: "neat-ethanol",
    name: Words(words::NEAT_ETHANOL),
    standard: Words(words::BY_DEFINITION),
    region: Words(words::ANYWHERE),
    ethanol_percent: percent(100.0, 100.0, 100.0),
    source: source(
        SourceKind::Definition,
        Confidence::Checked,
        Citation::Words(words::NEAT_ETHANOL_SOURCE),
    ),
    note: Words(words::NEAT_ETHANOL_NOTE),
    ..Grade::UNKNOWN
};

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::HashSet;

    #[test]
    fn every_grade_is_complete_and_in_order() {
        for grade in catalogue() {
            for percent in [
                grade.ethanol_percent,
                grade.water_percent,
                grade.methanol_percent,
                grade.ethers_percent,
            ] {
                let Percent { low, expected, high } = percent;
                assert!(
                    0.0 <= low && low <= expected && expected <= high && high <= 100.0,
                    "{grade:?}"
                );
            }
            assert_eq!(grade.content().excess(), None, "{grade:?}");
            for text in [grade.name, grade.standard, grade.region, grade.note] {
                assert_ne!(text, Fixed(""), "{grade:?}");
            }
            assert_ne!(grade.source.citation, Citation::Published(""), "{grade:?}");
            let octane = [grade.ron_min, grade.mon_min, grade.aki_min].into_iter().flatten();
            assert!(octane.into_iter().all(|number| (80.0..110.0).contains(&number)), "{grade:?}");
        }
    }

    #[test]
    fn ids_are_unique_kebab_case() {
        let ids: HashSet<_> = catalogue().map(|grade| grade.id).collect();
        assert_eq!(ids.len(), catalogue().count());
        let kebab =
            |id: &str| id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
        assert!(ids.into_iter().all(|id| !id.is_empty() && kebab(id)));
    }

    #[test]
    fn a_label_states_the_most_that_the_grade_may_hold() {
        for grade in catalogue() {
            if let Some(label) = grade.label {
                let high = grade.ethanol_percent.high;
                assert_eq!(label, format!("E{high:.0}"), "{}", grade.id);
            }
        }
    }
}
