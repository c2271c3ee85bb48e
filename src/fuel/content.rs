//! What a fuel may hold: bands of the volume shares of ethanol, water, methanol and
//! ethers.

use serde::{Deserialize, Serialize};
use thiserror::Error;
use uom::si::volume::liter;

use super::constants as c;
use super::constituent::HydrocarbonBase;
use super::mixture::{Mixture, MixtureParts};
use crate::quantity::{Band, Mass, Share, Volume};

/// What a fuel may hold beside petrol and ethanol, as volume shares of the whole.
///
/// Neither a label nor a tube test tells which ether is in a petrol. So an end of a
/// band takes the ether that matters less for the lean side (ETBE), the other end the
/// one that matters more (MTBE), and half of each is expected.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Extras {
    /// Water.
    pub water: Band<Share>,
    /// Methanol.
    pub methanol: Band<Share>,
    /// Ethers: MTBE, ETBE or both.
    pub ethers: Band<Share>,
}

impl Default for Extras {
    fn default() -> Self {
        let none = Band::exact(Share::ZERO);
        Self { water: none, methanol: none, ethers: none }
    }
}

impl Extras {
    /// Whether there can be none of them.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }

    /// What is worked out from each kind by itself.
    #[must_use]
    pub fn each(of: impl Fn(fn(&Self) -> Band<Share>) -> Band<Share>) -> Self {
        Self {
            water: of(|it| it.water),
            methanol: of(|it| it.methanol),
            ethers: of(|it| it.ethers),
        }
    }
}

/// An end of all bands together, or what is expected of all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Corner {
    /// The least of everything.
    Low,
    /// What is expected.
    Expected,
    /// The most of everything.
    High,
}

/// What a fuel may hold.
///
/// More ethanol, water, methanol or ether in place of petrol each need more fuel for
/// the same air, make an engine without lambda correction run leaner, and leave less
/// energy in a litre. So over all that is possible the extremes of these lie where all
/// bands stand at their low end and where all stand at their high one.
///
/// ```
/// use fillwright::fuel::{Content, Corner, Extras, HydrocarbonBase};
/// use fillwright::quantity::{Band, Share};
/// let exact = |percent| Share::from_percent(percent).map(Band::exact);
/// let hydrous = Content {
///     ethanol: exact(95.2)?,
///     extras: Extras { water: exact(4.8)?, ..Extras::default() },
/// };
/// let litre = hydrous.litre(Corner::Expected, &HydrocarbonBase::default());
/// assert!(litre.stoichiometric_afr().is_some_and(|afr| (afr - 8.465).abs() < 1e-3));
/// # Ok::<(), fillwright::quantity::ShareError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Content {
    /// Ethanol.
    pub ethanol: Band<Share>,
    /// What else there is beside petrol.
    pub extras: Extras,
}

impl Content {
    /// Petrol and ethanol only.
    pub fn splash(ethanol: Band<Share>) -> Self {
        Self { ethanol, extras: Extras::default() }
    }

    /// The parts of one litre at a corner.
    ///
    /// Where the high ends come to more than there is, what makes an engine leaner
    /// goes first: water, methanol, ethanol, ethers.
    pub fn parts(&self, corner: Corner) -> MixtureParts {
        let of = |band: &Band<Share>| {
            let share = match corner {
                Corner::Low => band.low(),
                Corner::Expected => band.expected(),
                Corner::High => band.high(),
            };
            share.fraction()
        };
        let mut left = 1.0;
        let mut take = |wanted: f64| {
            let taken = f64::min(wanted, left);
            left -= taken;
            taken
        };
        let Extras { water, methanol, ethers } = &self.extras;
        let [water, methanol, ethanol, ethers] =
            [water, methanol, &self.ethanol, ethers].map(|band| take(of(band)));
        let mtbe = match corner {
            Corner::Low => 0.0,
            Corner::Expected => 0.5,
            Corner::High => 1.0,
        };
        let volume = |part: f64| Volume::new::<liter>(part);
        MixtureParts {
            hydrocarbon: volume(left),
            ethanol: volume(ethanol),
            methanol: volume(methanol),
            mtbe: volume(ethers * mtbe),
            etbe: volume(ethers * (1.0 - mtbe)),
            water: volume(water),
        }
    }

    /// One litre at 15 degC, at a corner.
    pub fn litre(&self, corner: Corner, base: &HydrocarbonBase) -> Mixture {
        Mixture::from_parts(&self.parts(corner), base)
    }

    /// What a litre of it is at the ends and as expected.
    pub fn at_ends<T: Copy>(&self, of: impl Fn(&Mixture) -> T) -> Band<T> {
        let base = HydrocarbonBase::default();
        let at = |corner| of(&self.litre(corner, &base));
        Band::at_ends(at(Corner::Low), at(Corner::Expected), at(Corner::High))
    }

    /// What depends on the mixture only, over all that is possible: for what moves one
    /// way with all of the bands.
    pub fn over(&self, of: impl Fn(&Mixture) -> Option<f64>) -> Option<Band<f64>> {
        let at = self.at_ends(of);
        Band::enclosing(at.expected()?, [at.low()?, at.high()?])
    }

    /// Whether what is expected comes to more than the whole; the sum, if so.
    pub fn excess(&self) -> Option<f64> {
        const ROUNDING: f64 = 1e-9;
        let Extras { water, methanol, ethers } = &self.extras;
        let sum: f64 = [&self.ethanol, water, methanol, ethers]
            .map(|it| it.expected().fraction())
            .iter()
            .sum();
        (sum > 1.0 + ROUNDING).then_some(sum)
    }
}

/// Why an oxygen content cannot be that of a fuel. Percent by mass.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{self:?}")]
pub enum OxygenError {
    /// The alcohols alone bring more.
    Less {
        /// What was given.
        given: f64,
        /// What is there already.
        least: f64,
    },
    /// Even ether in place of all petrol brings less.
    More {
        /// What was given.
        given: f64,
        /// The most that can be.
        most: f64,
    },
}

/// The share of ethers in a petrol of a known oxygen content, by mass balance.
///
/// `oxygen` is a fraction by mass of the finished fuel; that of water is not in it, as
/// in fuel standards. With `z` of ether in place of petrol mass and oxygen are linear
/// in `z`: `O (m_0 + z dm) = o_0 + z do`. Half MTBE and half ETBE is taken, in the
/// default petrol.
///
/// # Errors
/// When the alcohols bring more already, or ethers cannot bring so much.
pub fn ethers_of_oxygen(
    oxygen: f64,
    ethanol: Share,
    methanol: Share,
) -> Result<Share, OxygenError> {
    // A last place must not refuse what the alcohols bring.
    const ROUNDING: f64 = 1e-6;
    let base = HydrocarbonBase::default();
    let with = |ethers: Share| {
        let [ethanol, methanol, ethers] = [ethanol, methanol, ethers].map(Band::exact);
        let extras = Extras { methanol, ethers, ..Extras::default() };
        let litre = Content { ethanol, extras }.litre(Corner::Expected, &base);
        let oxygen: Mass = litre.elements().oxygen * c::OXYGEN_MASS.molar_mass();
        (litre.mass(), oxygen)
    };
    let room = Share::clamped(1.0 - ethanol.fraction() - methanol.fraction());
    let (none, full) = (with(Share::ZERO), with(room));
    let part = |(mass, oxygen): (Mass, Mass)| f64::from(oxygen / mass);
    let (least, most) = (part(none), part(full));
    if oxygen < least - ROUNDING {
        return Err(OxygenError::Less { given: oxygen * 100.0, least: least * 100.0 });
    }
    if oxygen > most + ROUNDING {
        return Err(OxygenError::More { given: oxygen * 100.0, most: most * 100.0 });
    }
    let missing = none.0 * oxygen - none.1;
    let gain = (full.1 - none.1) - (full.0 - none.0) * oxygen;
    let way: f64 = (missing / gain).into();
    Ok(Share::clamped(if way.is_finite() { way * room.fraction() } else { 0.0 }))
}
