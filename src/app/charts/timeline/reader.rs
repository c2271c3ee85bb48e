//! What takes pointer, finger and keys.

use leptos::{ev, prelude::*};
use wasm_bindgen::JsCast;
use web_sys::Element;

use super::chart::Chart;
use super::reading::Reading;
use crate::app::widgets::said;

/// What is led over the picture. Its value is the number of the point, and the text
/// of that value is the reading, so that a screen reader says each reading once.
#[component]
pub(super) fn Reader(chart: Chart) -> impl IntoView {
    let focused = RwSignal::new(false);
    let to = move |event: ev::PointerEvent| {
        let over = event.current_target().and_then(|it| it.dyn_into::<Element>().ok());
        if let Some(width) = over.map(|it| it.client_width()).filter(|it| *it > 0) {
            chart.point_at(f64::from(event.offset_x()) / f64::from(width));
        }
    };
    let key = move |event: ev::KeyboardEvent| {
        if chart.step(&event.key()) {
            event.prevent_default();
        }
    };
    let enter = move |_| {
        focused.set(true);
        chart.at.set(Some(chart.index.get_untracked()));
    };
    let leave = move |_| {
        focused.set(false);
        chart.at.set(None);
    };
    let pass = move |event: ev::PointerEvent| {
        // What a finger has found stays when the finger goes.
        if event.pointer_type() == "mouse" && !focused.get_untracked() {
            chart.at.set(None);
        }
    };
    let title = said(move || chart.timeline.with(|it| format!("Read {}", it.title)));
    let count = said(move || chart.timeline.with(|it| it.points.len()).to_string());
    let number = said(move || (chart.index.get() + 1).to_string());
    let sentence = said(move || chart.reading.with(Reading::sentence));
    view! {
        <div
            class="reader"
            id=format!("{}-reader", chart.id)
            role="slider"
            tabindex="0"
            aria-label=title
            aria-valuemin="1"
            aria-valuemax=count
            aria-valuenow=number
            aria-valuetext=sentence
            on:pointerdown=to
            on:pointermove=to
            on:pointerleave=pass
            on:keydown=key
            on:focus=enter
            on:blur=leave
        ></div>
    }
}
