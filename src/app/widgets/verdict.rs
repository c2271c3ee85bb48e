use fillwright::calibration::Verdict;
use leptos::prelude::*;

use super::flow::When;
use crate::app::wording;

/// Where to enter calibrations, when there are none.
#[component]
pub(crate) fn NoCalibration(condition: Signal<bool>) -> impl IntoView {
    view! {
        <When condition=condition>
            <p>
                "No calibration is entered. "
                <a href="#/car/calibrations">"Enter yours under Car."</a>
            </p>
        </When>
    }
}

/// A verdict with its mark, and why.
pub(crate) fn verdict_item(name: &str, verdict: Verdict, why: &str) -> AnyView {
    view! {
        <li class="verdict">
            {mark(verdict)}
            <span>
                {name.to_owned()} ": " <span class="word">{wording::verdict(verdict)}</span>
            </span>
            <span class="why">{why.to_owned()}</span>
        </li>
    }
    .into_any()
}

/// A filled disc, a half disc or a ring: the verdict's shape.
fn mark(verdict: Verdict) -> impl IntoView {
    let inner = match verdict {
        Verdict::Usable => "M8 2a6 6 0 1 1 0 12a6 6 0 1 1 0-12z",
        Verdict::ConfirmFirst => "M8 2a6 6 0 0 0 0 12z",
        Verdict::DoNotSelect => "",
    };
    view! {
        <svg class="mark" viewBox="0 0 16 16" aria-hidden="true">
            <circle cx="8" cy="8" r="6" fill="none" stroke="currentColor" stroke-width="2"></circle>
            <path d=inner fill="currentColor"></path>
        </svg>
    }
}
