//! The systems of units.

/// The units that go together where a person lives. [`Units`](super::Units) tells
/// which those are, and what was chosen apart from them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum UnitSystem {
    /// Litres, kilometres, litres per 100 km.
    #[default]
    Metric,
    /// US gallons, miles, miles per US gallon.
    Us,
    /// Imperial gallons, miles, miles per imperial gallon.
    Imperial,
}

impl UnitSystem {
    /// Every system, in the order in which to offer them.
    pub const ALL: [Self; 3] = [Self::Metric, Self::Us, Self::Imperial];

    /// The word by which it is stored.
    pub fn word(self) -> &'static str {
        match self {
            Self::Metric => "metric",
            Self::Us => "us",
            Self::Imperial => "imperial",
        }
    }
}
