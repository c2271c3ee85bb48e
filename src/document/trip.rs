//! A route, as it was typed.

use serde::{Deserialize, Serialize};

use super::contents::ContentsForm;
use super::fill::StartForm;
use super::fuel::FuelForm;
use crate::quantity::notation::Entry;

/// A stop, and the way driven after it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct TripStopForm {
    /// Tells it apart; never used again.
    pub id: u32,
    /// Where it is.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub place: String,
    /// The fuels on offer there.
    pub fuels: Vec<FuelForm>,
    /// The numbers of those that are not to be had.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub closed: Vec<u32>,
    /// What it costs to stop there at all, fuel apart.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub fee: String,
    /// How far it is to the next stop, or to the end.
    pub distance: Entry,
    /// How much more that way takes than the car's consumption; blank for as much.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub factor: String,
    /// The calibrations of which one has to stay usable on that way; none where empty.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub calibrations: Vec<u32>,
    /// The octane number that the blend must have on that way at least.
    #[serde(skip_serializing_if = "Entry::is_untouched", deserialize_with = "Entry::or_text")]
    pub ron_min: Entry,
}

impl TripForm {
    /// The stop where the car is, if it is under way.
    pub fn stop_here(&self) -> Option<&TripStopForm> {
        self.stops.iter().find(|it| Some(it.id) == self.here)
    }
}

/// What makes one plan better than another.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PreferForm {
    /// The least money.
    #[default]
    Cheapest,
    /// The fewest stops, and then the least money.
    FewestStops,
    /// The most ethanol.
    MostEthanol,
}

/// The route, as it was typed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct TripForm {
    /// The stops in order, the start first.
    pub stops: Vec<TripStopForm>,
    /// The stop where the car is now: what lies before it is not planned any more.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub here: Option<u32>,
    /// Whether the fill there is in the log already.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub filled: bool,
    /// Where the contents of the tank come from.
    pub start: StartForm,
    /// The contents, where they are typed.
    pub contents: ContentsForm,
    /// What is preferred.
    pub prefer: PreferForm,
    /// The most that may be spent.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub budget: String,
    /// Whether the plan has to hold whatever is true within the bands.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub careful: bool,
    /// How far inside the windows the blend has to stay; blank for the usual.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub margin: String,
    /// What has to be left at the end.
    pub final_level: Entry,
}

/// A part of a route.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TripPart {
    /// Where the contents of the tank come from.
    Start,
    /// The list of stops.
    Stops,
    /// The most that may be spent.
    Budget,
    /// How far inside the windows the blend has to stay.
    Margin,
    /// What has to be left at the end.
    FinalLevel,
}

/// A part of a stop, or of the way after it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TripStopPart {
    /// Where it is.
    Place,
    /// What it costs to stop there.
    Fee,
    /// How far it is to the next.
    Distance,
    /// How much more that takes.
    Factor,
    /// The calibrations to keep.
    Calibrations,
    /// The least octane number.
    RonMin,
}
