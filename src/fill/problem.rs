//! The question of a fill: the tank, the fuels on offer and what is wanted.

use uom::si::volume::liter;

use super::error::FillError;
use crate::fuel::MolarDensity;
use crate::quantity::{Band, Money, Share, UnitPrice, Volume};
use crate::tank::Tank;

/// A fuel on offer.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// Its ethanol share.
    pub share: Band<Share>,
    /// What it costs.
    pub price: Option<UnitPrice>,
    /// Its research octane number, at least.
    pub ron: Option<f64>,
    /// The most there is of it: a can, or what the pump has left.
    pub limit: Option<Volume>,
    /// Whether all of `limit` has to go in.
    pub use_all: bool,
    /// What of it has already gone into the tank in this fill.
    pub poured: Volume,
}

impl Offer {
    /// A fuel with this ethanol share, without price, octane or limit.
    pub fn new(share: Band<Share>) -> Self {
        Self { share, price: None, ron: None, limit: None, use_all: false, poured: litres(0.0) }
    }
}

/// The ethanol share that the fill is to reach.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Aim {
    low: Share,
    high: Share,
}

impl Aim {
    /// Exactly this share.
    pub fn share(share: Share) -> Self {
        Self { low: share, high: share }
    }

    /// Any share in this window.
    ///
    /// # Errors
    /// When the ends are the wrong way round.
    pub fn window(low: Share, high: Share) -> Result<Self, FillError> {
        if low <= high {
            Ok(Self { low, high })
        } else {
            Err(FillError::WindowReversed { low, high })
        }
    }

    /// The lowest share that will do.
    pub fn low(self) -> Share {
        self.low
    }

    /// The highest share that will do.
    pub fn high(self) -> Share {
        self.high
    }

    /// The share in the middle.
    pub fn middle(self) -> Share {
        Share::clamped(f64::midpoint(self.low.fraction(), self.high.fraction()))
    }

    /// Whether a share will do, give or take rounding.
    pub fn admits(self, share: Share) -> bool {
        let slack = 1e-9;
        share.fraction() >= self.low.fraction() - slack
            && share.fraction() <= self.high.fraction() + slack
    }
}

/// When to stop pouring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StopRule {
    /// When the tank is full.
    Brim,
    /// When the tank holds this much.
    Level(Volume),
    /// At the latest when this much has gone in.
    AtMost(Volume),
    /// At the latest when this much has been spent.
    Budget(Money),
    /// As soon as the aim is reached.
    Least,
}

impl StopRule {
    /// What to prefer among the plans that this rule leaves open.
    pub fn usual_objective(self) -> FillObjective {
        match self {
            Self::Brim | Self::Level(_) => FillObjective::LeastCost,
            Self::AtMost(_) | Self::Budget(_) => FillObjective::MostVolume,
            Self::Least => FillObjective::LeastVolume,
        }
    }
}

/// What to prefer among the plans that reach the aim.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FillObjective {
    /// The cheapest. Where a price is missing, cost does not decide.
    LeastCost,
    /// The one with the least to pour.
    LeastVolume,
    /// The one with the most to pour.
    MostVolume,
}

/// One fill: the tank, the fuels on offer, and what is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The tank.
    pub tank: Tank,
    /// The fuels on offer.
    pub offers: Vec<Offer>,
    /// The ethanol share wanted.
    pub aim: Aim,
    /// The research octane number that the blend must have at least.
    pub ron_min: Option<f64>,
    /// When to stop pouring.
    pub stop: StopRule,
    /// What to prefer.
    pub objective: FillObjective,
    /// Moles per litre, for the octane of a blend.
    pub molar_density: MolarDensity,
    /// How far a pump's meter may be off, as a fraction of what it shows.
    pub meter_error: f64,
}

/// Litres as a bare number: inside this module all volumes are litres, so that
/// the rows of a linear program can be written as on paper.
pub(super) fn in_litres(volume: Volume) -> f64 {
    volume.get::<liter>()
}

pub(super) fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

impl Problem {
    /// The weight of a litre in the molar rule, in moles.
    pub(super) fn moles_per_litre(&self, share: Share) -> f64 {
        self.molar_density.per_litre(share.fraction())
    }

    /// Litres to the brim.
    pub(super) fn capacity(&self) -> f64 {
        in_litres(self.tank.capacity)
    }

    /// Litres expected in the tank before the fill.
    pub(super) fn level(&self) -> f64 {
        in_litres(self.tank.level.expected())
    }

    /// Litres of this fill that are already in.
    pub(super) fn poured(&self) -> f64 {
        self.offers.iter().map(|offer| in_litres(offer.poured)).sum()
    }

    /// Litres in the tank when the stop rule is met, where the rule fixes that.
    pub(super) fn final_level(&self) -> Option<f64> {
        match self.stop {
            StopRule::Brim => Some(self.capacity()),
            StopRule::Level(level) => Some(in_litres(level)),
            StopRule::AtMost(_) | StopRule::Budget(_) | StopRule::Least => None,
        }
    }

    /// What can still go in until the stop rule's level, on top of what was there before
    /// the fill; `None` where the rule sets no level.
    pub fn room(&self) -> Option<Volume> {
        self.final_level().map(|level| litres((level - self.level()).max(0.0)))
    }

    /// Price per litre of each fuel, when all are known.
    pub(super) fn prices(&self) -> Option<Vec<f64>> {
        self.offers
            .iter()
            .map(|offer| offer.price.map(|price| price.of(litres(1.0)).amount()))
            .collect()
    }
}
