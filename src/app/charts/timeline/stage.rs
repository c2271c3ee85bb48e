//! The picture with its crosshair.

use leptos::{ev, html, prelude::*};

use super::chart::{Chart, last_value};
use super::draw;
use super::frame::height;
use super::reader::Reader;
use crate::app::widgets::{Drawn, When, said};

/// The picture, and over it what takes pointer and keys.
#[component]
pub(super) fn Stage(chart: Chart, some: Signal<bool>) -> impl IntoView {
    let stage = NodeRef::<html::Div>::new();
    let measure = move || {
        let width = stage.get().map_or(0, |it| it.client_width());
        // A hidden chart has no width; it is drawn for a narrow one until it has.
        if width > 0 {
            chart.width.set(width.into());
        }
    };
    Effect::new(move |_| measure());
    let handle = window_event_listener(ev::resize, move |_| untrack(measure));
    on_cleanup(move || handle.remove());
    let picture = Callback::new(move |()| {
        let frame = chart.frame.get();
        let timeline = chart.timeline;
        timeline.with(|it| {
            draw::picture(chart.id, it, &frame, chart.print, last_value(it, chart.print))
        })
    });
    let view_box =
        said(move || format!("0 0 {0} {1}", chart.width.get(), height(chart.width.get())));
    let words = said(move || chart.timeline.with(|it| it.words.clone()));
    let cross = said(move || chart.cross());
    let bar = said(move || chart.bar());
    let disc = said(move || chart.disc());
    view! {
        <div class="stage" node_ref=stage>
            <svg viewBox=view_box role="img" aria-label=words>
                <Drawn what=picture />
                <path class="cross" d=cross></path>
                <path class="bar" d=bar></path>
                <path class="disc" d=disc></path>
            </svg>
            <When condition=some>
                <Reader chart=chart />
            </When>
        </div>
    }
}
