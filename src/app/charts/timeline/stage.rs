//! The picture with its crosshair, and what takes pointer, finger and keys.

use leptos::{ev, prelude::*};
use wasm_bindgen::JsCast;
use web_sys::Element;

use super::chart::Chart;
use super::frame::height;
use crate::app::widgets::{Drawn, When, said};

/// The picture, and over it what leads the crosshair.
#[component]
pub(super) fn Stage(chart: Chart, some: Signal<bool>) -> impl IntoView {
    let id = format!("{}-stage", chart.id);
    let measure = {
        let id = id.clone();
        move || {
            let width = document().get_element_by_id(&id).map_or(0, |it| it.client_width());
            // A hidden chart has no width; it keeps the one that it is drawn for.
            if let Ok(width @ 1..) = usize::try_from(width) {
                chart.room.set(Some(width));
            }
        }
    };
    let resized = window_event_listener(ev::resize, {
        let measure = measure.clone();
        move |_| measure()
    });
    on_cleanup(move || resized.remove());
    request_animation_frame(measure);
    let view_box = said(move || format!("0 0 {0} {1}", chart.width(), height(chart.width())));
    let words = said(move || chart.timeline.with(|it| it.words.clone()));
    view! {
        <div class="stage" id=id>
            <svg viewBox=view_box role="img" aria-label=words>
                <Drawn what=Callback::new(move |()| chart.picture()) />
                <Drawn what=Callback::new(move |()| chart.crosshair()) />
            </svg>
            <When condition=some>
                <Reader chart=chart />
            </When>
        </div>
    }
}

/// What is led over the picture. Its value is the number of the point, and the text
/// of that value is the reading, so that a screen reader says each reading once.
#[component]
fn Reader(chart: Chart) -> impl IntoView {
    let lead = move |event: ev::PointerEvent| {
        let over = event.current_target().and_then(|it| it.dyn_into::<Element>().ok());
        if let Some(width) = over.map(|it| it.client_width()).filter(|it| *it > 0) {
            chart.point_at(f64::from(event.offset_x()) / f64::from(width));
        }
    };
    let leave = move |event: ev::PointerEvent| {
        // What a finger has found stays when the finger goes.
        if event.pointer_type() == "mouse" {
            chart.at.set(None);
        }
    };
    let key = move |event: ev::KeyboardEvent| {
        if chart.step(&event.key()) {
            event.prevent_default();
        }
    };
    let title = said(move || chart.timeline.with(|it| format!("Read {}", it.title)));
    let count = said(move || chart.timeline.with(|it| it.points.len()).to_string());
    let number = said(move || (chart.index() + 1).to_string());
    let sentence = said(move || chart.reading().map_or(String::new(), |it| it.sentence()));
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
            on:pointerdown=lead
            on:pointermove=lead
            on:pointerleave=leave
            on:keydown=key
        ></div>
    }
}
