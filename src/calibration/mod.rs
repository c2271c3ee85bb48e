//! Which engine calibration may be selected on a blend that is only known within
//! a band.

use crate::fuel::{HydrocarbonBase, Mixture};
use crate::quantity::notation::VolumeUnit;
use crate::quantity::{Band, Share};

/// An engine calibration and what it was written for.
#[derive(Clone, Debug, PartialEq)]
pub struct Calibration {
    /// The name its owner gave it.
    pub name: String,
    /// The weakest blend that its author allows.
    pub low: Share,
    /// The strongest blend that its author allows.
    pub high: Share,
    /// The blend that its fuel quantities were written for.
    pub written_for: Share,
    /// The research octane number that it needs at least.
    pub ron_min: Option<f64>,
    /// Whether it counts on injection fluid.
    pub needs_fluid: bool,
}

/// Whether there is injection fluid aboard and the system works.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FluidState {
    /// Checked and ready.
    Ready,
    /// Nobody has looked.
    #[default]
    Unknown,
    /// None, or out of order.
    Absent,
}

/// What the tank is known to hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contents {
    /// The ethanol share.
    pub share: Band<Share>,
    /// The octane number, at least: at the worst end of the band, and as
    /// expected. Unknown where that of a part is.
    pub ron: Option<Band<f64>>,
}

/// The verdict on a calibration.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Everything that was checked holds over the whole band.
    Usable,
    /// Something does not hold over the whole band: measure before selecting.
    ConfirmFirst,
    /// Something does not hold at all.
    DoNotSelect,
}

/// What speaks against a calibration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reason {
    /// The whole band is weaker than the window.
    TooWeak,
    /// The whole band is stronger than the window.
    TooStrong,
    /// The low end of the band is weaker than the window; the flag tells
    /// whether the expected share is too.
    MaybeTooWeak {
        /// Whether the expected share is outside as well.
        expected_outside: bool,
    },
    /// The high end of the band is stronger than the window.
    MaybeTooStrong {
        /// Whether the expected share is outside as well.
        expected_outside: bool,
    },
    /// Even as expected, the octane number is too low.
    OctaneShort {
        /// What it is at least, as expected.
        at_least: f64,
    },
    /// At the worst end of the band the octane number is too low.
    MaybeOctaneShort {
        /// What it is at least at the worst end.
        at_least: f64,
    },
    /// An octane number is needed, but that of a part is not known.
    OctaneUnknown,
    /// It counts on injection fluid and there is none.
    FluidAbsent,
    /// It counts on injection fluid and nobody has checked it.
    FluidUnchecked,
}

impl Reason {
    /// The verdict that this reason alone leads to.
    pub fn verdict(self) -> Verdict {
        match self {
            Self::TooWeak | Self::TooStrong | Self::OctaneShort { .. } | Self::FluidAbsent => {
                Verdict::DoNotSelect
            }
            Self::MaybeTooWeak { .. }
            | Self::MaybeTooStrong { .. }
            | Self::MaybeOctaneShort { .. }
            | Self::OctaneUnknown
            | Self::FluidUnchecked => Verdict::ConfirmFirst,
        }
    }
}

/// The verdict on a calibration with its reasons.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgement {
    /// The verdict.
    pub verdict: Verdict,
    /// What speaks against it; empty when it is usable.
    pub reasons: Vec<Reason>,
    /// Lambda over that intended, when the calibration meters fuel open loop:
    /// above 1 is leaner than intended. Over the band of the blend.
    pub open_loop_lambda: Option<Band<f64>>,
}

/// Blends that meet a window's edge only by rounding are inside it.
const EDGE: f64 = 1e-9;

impl Calibration {
    /// Judges the calibration for these contents.
    ///
    /// The reasons are independent: ethanol window, octane number, injection
    /// fluid. The worst of them decides.
    pub fn judge(&self, contents: &Contents, fluid: FluidState) -> Judgement {
        let mut reasons = Vec::new();
        reasons.extend(self.window_reasons(contents.share));
        reasons.extend(self.octane_reason(contents.ron));
        if self.needs_fluid {
            match fluid {
                FluidState::Ready => {}
                FluidState::Unknown => reasons.push(Reason::FluidUnchecked),
                FluidState::Absent => reasons.push(Reason::FluidAbsent),
            }
        }
        let verdict =
            reasons.iter().map(|reason| reason.verdict()).max().unwrap_or(Verdict::Usable);
        Judgement { verdict, reasons, open_loop_lambda: self.open_loop_lambda(contents.share) }
    }

    fn window_reasons(&self, share: Band<Share>) -> Vec<Reason> {
        let below = |share: Share| share.fraction() < self.low.fraction() - EDGE;
        let above = |share: Share| share.fraction() > self.high.fraction() + EDGE;
        if below(share.high()) {
            return vec![Reason::TooWeak];
        }
        if above(share.low()) {
            return vec![Reason::TooStrong];
        }
        let mut reasons = Vec::new();
        if below(share.low()) {
            reasons.push(Reason::MaybeTooWeak { expected_outside: below(share.expected()) });
        }
        if above(share.high()) {
            reasons.push(Reason::MaybeTooStrong { expected_outside: above(share.expected()) });
        }
        reasons
    }

    fn octane_reason(&self, ron: Option<Band<f64>>) -> Option<Reason> {
        let least = self.ron_min?;
        let Some(ron) = ron else { return Some(Reason::OctaneUnknown) };
        if ron.expected() < least - EDGE {
            Some(Reason::OctaneShort { at_least: ron.expected() })
        } else if ron.low() < least - EDGE {
            Some(Reason::MaybeOctaneShort { at_least: ron.low() })
        } else {
            None
        }
    }

    /// What lambda becomes when this calibration's fuel quantities, written for
    /// one blend, are injected on another: `(AFR_cal / AFR) sqrt(rho_cal / rho)`.
    fn open_loop_lambda(&self, share: Band<Share>) -> Option<Band<f64>> {
        let litre = VolumeUnit::Litre.quantity(1.0);
        let blend = |share: Share| Mixture::splash(litre, share, &HydrocarbonBase::default());
        let intended = blend(self.written_for);
        let ratio = |share: Share| blend(share).open_loop_lambda_ratio(&intended);
        // More ethanol is always leaner: AFR falls faster than density rises.
        Band::enclosing(ratio(share.expected())?, [ratio(share.low())?, ratio(share.high())?])
    }
}
