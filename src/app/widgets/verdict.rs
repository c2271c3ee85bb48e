//! The verdicts of calibrations as they are shown: a shape, a colour and words.

use fillwright::calibration::Verdict;
use fillwright::message::keys::frame as keys;
use fillwright::words;
use leptos::prelude::*;

use super::flow::When;

/// Where to enter calibrations, when there are none.
#[component]
pub(crate) fn NoCalibration(condition: Signal<bool>) -> impl IntoView {
    view! {
        <When condition=condition>
            <p>
                {keys::NO_CALIBRATION.say()} " "
                <a href="#/car/calibrations">{keys::ENTER_YOURS.say()}</a>
            </p>
        </When>
    }
}

/// A verdict with its mark, and why.
pub(crate) fn verdict_item(name: &str, verdict: Verdict, why: &str) -> AnyView {
    view! {
        <li class="verdict">
            {mark(verdict_shape(verdict))}
            <span>
                {name.to_owned()} ": " <span class="word">{words::verdict(verdict)}</span>
            </span>
            <span class="why">{why.to_owned()}</span>
        </li>
    }
    .into_any()
}

/// The shape that a verdict has beside its word.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shape {
    /// A filled disc.
    Disc,
    /// A half disc.
    Half,
    /// A ring.
    Ring,
    /// A ring with a stroke in it: no verdict.
    Stroke,
}

/// The shape of the verdict on a calibration.
pub(crate) fn verdict_shape(verdict: Verdict) -> Shape {
    match verdict {
        Verdict::Usable => Shape::Disc,
        Verdict::ConfirmFirst => Shape::Half,
        Verdict::DoNotSelect => Shape::Ring,
    }
}

/// The class that gives what stands beside a shape the colour that goes with it.
pub(crate) fn class_of(shape: Shape) -> &'static str {
    match shape {
        Shape::Disc => "good",
        Shape::Half => "tight",
        Shape::Ring => "bad",
        Shape::Stroke => "open",
    }
}

/// A verdict's shape.
pub(crate) fn mark(shape: Shape) -> AnyView {
    let inner = match shape {
        Shape::Disc => "M8 2a6 6 0 1 1 0 12a6 6 0 1 1 0-12z",
        Shape::Half => "M8 2a6 6 0 0 0 0 12z",
        Shape::Ring => "",
        Shape::Stroke => "M5 7h6v2h-6z",
    };
    view! {
        <svg class="mark" viewBox="0 0 16 16" aria-hidden="true">
            <circle cx="8" cy="8" r="6" fill="none" stroke="currentColor" stroke-width="2"></circle>
            <path d=inner fill="currentColor"></path>
        </svg>
    }
    .into_any()
}
