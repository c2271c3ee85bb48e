//! The strokes, the letters and the hatches.

use leptos::prelude::*;

use super::path::{Path, whole};

/// The width of one figure or letter of the labels, on average and rounded up.
const LETTER: f64 = 7.5;

/// The width of a label, nearly.
pub(super) fn width_of(text: &str) -> f64 {
    text.chars().fold(0.0, |width, _| width + LETTER)
}

pub(super) fn shape(class: &'static str, d: Path) -> AnyView {
    path(class, d.text())
}

pub(super) fn path(class: &'static str, d: String) -> AnyView {
    view! { <path class=class d=d></path> }.into_any()
}

pub(super) fn text(
    class: &'static str,
    x: f64,
    y: f64,
    anchor: &'static str,
    words: String,
) -> AnyView {
    view! {
        <text class=class x=whole(x).to_string() y=whole(y).to_string() text-anchor=anchor>
            {words}
        </text>
    }
    .into_any()
}

/// A hatch with an id of its own, so many degrees from upright.
pub(super) fn hatch(id: String, class: &'static str, degrees: i32) -> AnyView {
    view! {
        <pattern
            id=id
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform=format!("rotate({degrees})")
        >
            <path class=class d="M0 0V7"></path>
        </pattern>
    }
    .into_any()
}

/// The hatches of windows, `-hatch0` and `-hatch1` after the id of the chart;
/// neighbours are hatched either way.
pub(super) fn window_hatches(id: &str) -> [AnyView; 2] {
    [(0, 45), (1, 135)].map(|(way, degrees)| hatch(format!("{id}-hatch{way}"), "hatch", degrees))
}
