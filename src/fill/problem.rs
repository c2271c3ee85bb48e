//! The question of a fill: the tank, the fuels on offer and what is wanted.

use thiserror::Error;
use uom::si::volume::liter;

use super::formulas::mean_share;
use crate::fuel::MolarDensity;
use crate::quantity::{Band, Money, Share, UnitPrice, Volume};

/// A tank as it stands before the fill.
#[derive(Clone, Debug, PartialEq, serde::Serialize, serde::Deserialize)]
pub struct Tank {
    /// What the tank holds to the brim.
    pub capacity: Volume,
    /// What is in it.
    pub level: Band<Volume>,
    /// The ethanol share of what is in it. Not read when the tank is empty.
    pub share: Band<Share>,
    /// The research octane number of what is in it, at least.
    pub ron: Option<f64>,
    /// The level below which nobody should plan to drive.
    pub reserve: Volume,
}

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

/// Why a fill cannot be worked out from what was given.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum FillError {
    /// The tank has no size.
    #[error("the tank holds nothing: give its size")]
    NoCapacity,
    /// More is said to be in the tank than it holds.
    #[error(
        "{level_l:.1} L cannot be in a tank of {capacity_l:.1} L: correct the level or the tank's size"
    )]
    Overfull {
        /// The level given, in litres.
        level_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// More has gone in than was free.
    #[error(
        "{poured_l:.1} L cannot have gone in: at the lowest level given, {free_l:.1} L were free; correct the litres or the level"
    )]
    Overpoured {
        /// The litres said to have gone in.
        poured_l: f64,
        /// The free space at the lowest level, in litres.
        free_l: f64,
    },
    /// There is nothing to pour.
    #[error("no fuel is on offer: add one")]
    NoOffer,
    /// The tank is already above the level to fill to.
    #[error(
        "the tank already holds {level_l:.1} L, more than the {wanted_l:.1} L wanted: choose a higher level"
    )]
    AboveLevel {
        /// What is in the tank and what was poured, in litres.
        level_l: f64,
        /// The level wanted, in litres.
        wanted_l: f64,
    },
    /// The level to fill to is above the brim.
    #[error("{wanted_l:.1} L do not fit a tank of {capacity_l:.1} L: choose a lower level")]
    LevelAboveBrim {
        /// The level wanted, in litres.
        wanted_l: f64,
        /// The tank's size, in litres.
        capacity_l: f64,
    },
    /// The ends of a window are the wrong way round.
    #[error("the window from E{:.0} to E{:.0} is the wrong way round: give the lower share first", low.percent(), high.percent())]
    WindowReversed {
        /// The end given first.
        low: Share,
        /// The end given second.
        high: Share,
    },
    /// A sum of money is to be spent on a fuel without a price.
    #[error("a sum of money needs the price of every fuel: fuel {} has none", index + 1)]
    PriceMissing {
        /// The fuel's place in the list.
        index: usize,
    },
    /// An octane number is wanted, but not known of a fuel.
    #[error("a least octane number needs that of every fuel: fuel {} has none", index + 1)]
    OctaneMissing {
        /// The fuel's place in the list.
        index: usize,
    },
    /// An octane number is wanted, but not known of what is in the tank.
    #[error("a least octane number needs that of what is in the tank: give it")]
    TankOctaneMissing,
    /// All of a fuel is to go in, but not said how much that is.
    #[error("all of fuel {} is to go in: say how much there is", index + 1)]
    AmountMissing {
        /// The fuel's place in the list.
        index: usize,
    },
}

impl FillError {
    /// Whether something has not been given yet, and nothing that was given is wrong.
    pub fn is_missing(&self) -> bool {
        matches!(
            self,
            Self::NoCapacity
                | Self::NoOffer
                | Self::PriceMissing { .. }
                | Self::OctaneMissing { .. }
                | Self::TankOctaneMissing
                | Self::AmountMissing { .. }
        )
    }
}

/// A level that is passed by less than this, in litres, is reached: no gauge
/// tells the difference, and rounding to the pump's step leaves as much.
const LEVEL_REACHED_L: f64 = 2.0;

/// Litres as a bare number: inside this module all volumes are litres, so that
/// the rows of a linear program can be written as on paper.
pub(super) fn in_litres(volume: Volume) -> f64 {
    volume.get::<liter>()
}

pub(super) fn litres(value: f64) -> Volume {
    Volume::new::<liter>(value)
}

impl Problem {
    /// Checks what was given, and lowers the level band where more has gone in
    /// than the expected level left free: the tank must have been emptier.
    ///
    /// # Errors
    /// The first thing that is wrong, with what to do about it.
    pub fn checked(mut self) -> Result<Self, FillError> {
        let capacity_l = self.capacity();
        if capacity_l <= 0.0 {
            return Err(FillError::NoCapacity);
        }
        let level_l = in_litres(self.tank.level.expected());
        if level_l > capacity_l * (1.0 + 1e-12) {
            return Err(FillError::Overfull { level_l, capacity_l });
        }
        if self.offers.is_empty() {
            return Err(FillError::NoOffer);
        }
        let poured_l = self.poured();
        let lowest_l = in_litres(self.tank.level.low());
        if poured_l > (capacity_l - lowest_l) * (1.0 + 1e-9) + 1e-9 {
            return Err(FillError::Overpoured { poured_l, free_l: capacity_l - lowest_l });
        }
        // Nothing that was poured can have been too much, so it tells the level.
        let highest = litres(capacity_l - poured_l);
        let cap = |level: Volume| if level > highest { highest } else { level };
        self.tank.level = self.tank.level.map(cap);
        if let StopRule::Level(wanted) = self.stop {
            let wanted_l = in_litres(wanted);
            if wanted_l > capacity_l * (1.0 + 1e-12) {
                return Err(FillError::LevelAboveBrim { wanted_l, capacity_l });
            }
            let level_l = self.level() + poured_l;
            if wanted_l < level_l - LEVEL_REACHED_L {
                return Err(FillError::AboveLevel { level_l, wanted_l });
            }
            // Nobody takes a spoonful out again.
            if wanted_l < level_l {
                self.stop = StopRule::Level(litres(level_l));
            }
        }
        if matches!(self.stop, StopRule::Budget(_))
            && let Some(index) = self.offers.iter().position(|offer| offer.price.is_none())
        {
            return Err(FillError::PriceMissing { index });
        }
        if self.ron_min.is_some() {
            if let Some(index) = self.offers.iter().position(|offer| offer.ron.is_none()) {
                return Err(FillError::OctaneMissing { index });
            }
            if self.tank.ron.is_none() && self.level() > 0.0 {
                return Err(FillError::TankOctaneMissing);
            }
        }
        if let Some(index) =
            self.offers.iter().position(|offer| offer.use_all && offer.limit.is_none())
        {
            return Err(FillError::AmountMissing { index });
        }
        Ok(self)
    }

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

    /// The same fill with what was poured counted as in the tank.
    pub(super) fn with_poured_in_tank(&self) -> Self {
        let poured = self.poured();
        let mut merged = self.clone();
        if poured > 0.0 {
            let level = self.level();
            let amounts: Vec<f64> = self.offers.iter().map(|it| in_litres(it.poured)).collect();
            merged.tank.level = Band::exact(litres(level + poured));
            merged.tank.share = Band::exact(self.share_of(level, &amounts).unwrap_or_default());
            merged.tank.ron = self.ron_of(&amounts);
            for offer in &mut merged.offers {
                offer.limit = offer.limit.map(|limit| {
                    let left = in_litres(limit) - in_litres(offer.poured);
                    litres(left.max(0.0))
                });
                offer.poured = litres(0.0);
            }
        }
        merged
    }

    /// The ethanol share of so many litres of the tank's contents with these of each fuel;
    /// none of an empty tank.
    pub(super) fn share_of(&self, level: f64, added: &[f64]) -> Option<Share> {
        let parts = self.offers.iter().zip(added);
        let parts = parts.map(|(offer, litres)| (*litres, offer.share.expected()));
        mean_share("", (level, self.tank.share.expected()), parts).map(Share::clamped)
    }

    /// The octane number of the tank's contents with these litres of each fuel.
    pub(super) fn ron_of(&self, added: &[f64]) -> Option<f64> {
        self.octane("RON", added, self.tank.ron, |fuel| self.offers[fuel].ron)
    }
}
