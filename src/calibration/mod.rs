//! Which engine calibration may be selected on a blend that is only known within
//! a band.

use crate::fuel::{Content, Extras, HydrocarbonBase, Mixture};
use crate::quantity::notation::LITRE;
use crate::quantity::{Band, Share};

/// An engine calibration and what it was written for.
#[derive(Clone, Debug, PartialEq, serde::Serialize, serde::Deserialize)]
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
    /// What there is beside petrol and ethanol.
    pub extras: Extras,
    /// The octane number, at least: at the worst end of the band, and as
    /// expected. Unknown where that of a part is.
    pub ron: Option<Band<f64>>,
}

impl Contents {
    /// What the fuel may be made of.
    pub fn content(&self) -> Content {
        Content { ethanol: self.share, extras: self.extras }
    }
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
        Judgement { verdict, reasons, open_loop_lambda: self.open_loop_lambda(contents) }
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
    fn open_loop_lambda(&self, contents: &Contents) -> Option<Band<f64>> {
        let litre = LITRE.quantity(1.0);
        let intended = Mixture::splash(litre, self.written_for, &HydrocarbonBase::default());
        contents.content().over(|blend| blend.open_loop_lambda_ratio(&intended))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn percent(value: f64) -> Share {
        Share::from_percent(value).unwrap()
    }

    fn band(low: f64, expected: f64, high: f64) -> Band<Share> {
        Band::new(percent(low), percent(expected), percent(high)).unwrap()
    }

    /// Written for E30, allowed from E24 to E40, from RON 98.
    fn mid_blend() -> Calibration {
        Calibration {
            name: "mid blend".into(),
            low: percent(24.0),
            high: percent(40.0),
            written_for: percent(30.0),
            ron_min: Some(98.0),
            needs_fluid: false,
        }
    }

    fn verdict(share: Band<Share>, ron: Option<(f64, f64)>) -> (Verdict, Vec<Reason>) {
        let ron = ron.map(|(low, expected)| Band::new(low, expected, expected).unwrap());
        let judged = mid_blend()
            .judge(&Contents { share, extras: Extras::default(), ron }, FluidState::Unknown);
        (judged.verdict, judged.reasons)
    }

    const ENOUGH: Option<(f64, f64)> = Some((98.5, 99.0));

    #[test]
    fn the_whole_band_decides_not_the_expected_blend() {
        let is = |low, expected, high| verdict(band(low, expected, high), ENOUGH);
        assert_eq!(is(24.0, 30.0, 40.0), (Verdict::Usable, vec![]));
        let low_end = Reason::MaybeTooWeak { expected_outside: false };
        assert_eq!(is(23.0, 30.0, 40.0), (Verdict::ConfirmFirst, vec![low_end]));
        let likely_weak = Reason::MaybeTooWeak { expected_outside: true };
        assert_eq!(is(18.0, 22.0, 25.0), (Verdict::ConfirmFirst, vec![likely_weak]));
        let likely_strong = Reason::MaybeTooStrong { expected_outside: true };
        assert_eq!(is(39.0, 42.0, 45.0), (Verdict::ConfirmFirst, vec![likely_strong]));
        assert_eq!(is(10.0, 15.0, 23.9), (Verdict::DoNotSelect, vec![Reason::TooWeak]));
        assert_eq!(is(40.1, 50.0, 60.0), (Verdict::DoNotSelect, vec![Reason::TooStrong]));
        let both = is(20.0, 30.0, 50.0);
        assert_eq!((both.0, both.1.len()), (Verdict::ConfirmFirst, 2));
    }

    #[test]
    fn octane_only_speaks_against() {
        let is = |ron| verdict(band(28.0, 30.0, 32.0), ron);
        assert_eq!(is(Some((98.0, 98.0))).0, Verdict::Usable);
        let worst = Reason::MaybeOctaneShort { at_least: 97.5 };
        assert_eq!(is(Some((97.5, 98.5))), (Verdict::ConfirmFirst, vec![worst]));
        let short = Reason::OctaneShort { at_least: 97.0 };
        assert_eq!(is(Some((96.0, 97.0))), (Verdict::DoNotSelect, vec![short]));
        assert_eq!(is(None), (Verdict::ConfirmFirst, vec![Reason::OctaneUnknown]));
        // A high octane number does not make up for a blend outside the window.
        assert_eq!(verdict(band(50.0, 52.0, 55.0), Some((120.0, 120.0))).0, Verdict::DoNotSelect);
    }

    #[test]
    fn fluid_counts_where_it_is_needed() {
        let contents = Contents {
            share: band(28.0, 30.0, 32.0),
            extras: Extras::default(),
            ron: Some(Band::exact(99.0)),
        };
        let verdict = |needs_fluid, fluid| {
            Calibration { needs_fluid, ..mid_blend() }.judge(&contents, fluid).verdict
        };
        assert_eq!(verdict(false, FluidState::Absent), Verdict::Usable);
        assert_eq!(verdict(true, FluidState::Ready), Verdict::Usable);
        assert_eq!(verdict(true, FluidState::Unknown), Verdict::ConfirmFirst);
        assert_eq!(verdict(true, FluidState::Absent), Verdict::DoNotSelect);
    }

    /// Arithmetic on cited inputs (petrol 745 kg/m3 and AFR 14.571, ethanol 793.7
    /// kg/m3 and AFR 9.0025 with Heywood's air): a calibration written for E10, AFR
    /// 13.9817 at 749.87 kg/m3, run on E85, AFR 9.7942 at 786.39 kg/m3, is leaner
    /// by 13.9817 / 9.7942 times the root of 749.87 / 786.39. The mistake to leave
    /// density out gives 1.4275.
    #[test]
    fn more_ethanol_than_written_for_is_leaner() {
        let written_for_e10 = Calibration { written_for: percent(10.0), ..mid_blend() };
        let of = |share: f64| Contents {
            share: Band::exact(percent(share)),
            extras: Extras::default(),
            ron: None,
        };
        let contents = of(85.0);
        let judged = written_for_e10.judge(&contents, FluidState::Ready);
        let ratio = judged.open_loop_lambda.unwrap().expected();
        approx::assert_abs_diff_eq!(ratio, 1.3940, epsilon = 5e-4);
        assert!((ratio - 1.4275).abs() > 0.02);
        let as_written = of(10.0);
        let judged = written_for_e10.judge(&as_written, FluidState::Ready);
        approx::assert_abs_diff_eq!(
            judged.open_loop_lambda.unwrap().expected(),
            1.0,
            epsilon = 1e-12
        );
    }
}
