//! The picture with its crosshair, and what takes pointer, finger and keys.

use fillwright::message::keys::charts as keys;
use leptos::{ev, html, prelude::*};
use wasm_bindgen::prelude::*;
use web_sys::{
    Element, IntersectionObserver, IntersectionObserverEntry, IntersectionObserverInit,
    ResizeObserver,
};

use super::crosshair::Crosshair;
use crate::app::widgets::{Drawn, When, holds, said};

/// The width that room is kept for until it is known how much there is.
const NARROW: f64 = 340.0;

/// How far from what is in sight a picture is drawn: one screen above and below.
const NEAR: &str = "100% 0px";

/// The room that a picture has.
#[derive(Clone, Copy)]
pub(super) struct Room(RwSignal<Option<usize>>);

impl Room {
    /// Not measured yet.
    pub(super) fn new() -> Self {
        Self(RwSignal::new(None))
    }

    /// Follows the width of an element from the moment when it comes near to what is in
    /// sight: most of a long view is never scrolled to.
    fn follow_once_near(self, stage: &Element) {
        let near = stage.clone();
        let here = Owner::current().unwrap_or_default();
        let seen = Closure::<dyn FnMut(Vec<IntersectionObserverEntry>, IntersectionObserver)>::new(
            move |entries: Vec<IntersectionObserverEntry>, observer: IntersectionObserver| {
                if entries.iter().any(IntersectionObserverEntry::is_intersecting) {
                    observer.disconnect();
                    here.with(|| self.follow(&near));
                }
            },
        );
        let options = IntersectionObserverInit::new();
        options.set_root_margin(NEAR);
        match IntersectionObserver::new_with_options(seen.as_ref().unchecked_ref(), &options) {
            Ok(observer) => {
                observer.observe(stage);
                let watching = StoredValue::new_local((observer, seen));
                on_cleanup(move || watching.with_value(|(observer, _)| observer.disconnect()));
            }
            Err(error) => leptos::logging::error!("{error:?}"),
        }
    }

    /// Follows the width of an element, told by the browser when it has laid it out: to
    /// ask for it earlier would have it lay out everything at once.
    fn follow(self, stage: &Element) {
        let laid_out = stage.clone();
        let measured = Closure::<dyn FnMut()>::new(move || {
            // A hidden chart has no width; it keeps the one that it was drawn for.
            if let Ok(width @ 1..) = usize::try_from(laid_out.client_width()) {
                // What is drawn then must not change what is being measured.
                request_animation_frame(move || {
                    if self.0.try_get_untracked().is_some_and(|before| before != Some(width)) {
                        self.0.set(Some(width));
                    }
                });
            }
        });
        match ResizeObserver::new(measured.as_ref().unchecked_ref()) {
            Ok(observer) => {
                observer.observe(stage);
                let following = StoredValue::new_local((observer, measured));
                on_cleanup(move || following.with_value(|(observer, _)| observer.disconnect()));
            }
            Err(error) => leptos::logging::error!("{error:?}"),
        }
    }

    /// What is drawn, as soon as it is known for how much room: once instead of twice.
    fn fill(self, what: Callback<(), Vec<AnyView>>) -> Callback<(), Vec<AnyView>> {
        let known = holds(move || self.0.with(Option::is_some));
        Callback::new(move |()| if known.get() { what.run(()) } else { Vec::new() })
    }

    /// How wide the picture is drawn, in CSS pixels.
    pub(super) fn width(self) -> f64 {
        self.0.get().and_then(|it| u16::try_from(it).ok()).map_or(NARROW, f64::from)
    }
}

/// The height of a picture so wide: flat on a desk, nearly square in the hand. The style
/// sheet keeps as much room for it before anything is drawn.
pub(super) fn height(width: f64) -> f64 {
    (0.6 * width).clamp(240.0, 340.0)
}

/// What a stage shows, and what is told of its crosshair.
#[derive(Clone, Copy)]
pub(super) struct Show {
    /// The id of the chart.
    pub(super) id: &'static str,
    pub(super) title: Signal<String>,
    /// The picture in one sentence.
    pub(super) words: Signal<String>,
    /// All of the picture but the crosshair.
    pub(super) picture: Callback<(), Vec<AnyView>>,
    /// What is drawn over it at the point that is read.
    pub(super) cross: Callback<(), Vec<AnyView>>,
    /// The point that is read, in one sentence.
    pub(super) sentence: Signal<String>,
    /// Takes the crosshair to a place, given as a part of the width.
    pub(super) point_at: Callback<f64>,
    pub(super) crosshair: Crosshair,
    pub(super) room: Room,
}

/// The picture, and over it what leads the crosshair, where there is some to read.
#[component]
pub(super) fn Stage(show: Show, some: Signal<bool>) -> impl IntoView {
    let stage = NodeRef::<html::Div>::new();
    Effect::new(move |_| {
        if let Some(stage) = stage.get() {
            show.room.follow_once_near(&stage);
        }
    });
    let view_box = said(move || {
        let width = show.room.width();
        format!("0 0 {width} {}", height(width))
    });
    view! {
        <div class="stage" node_ref=stage>
            <svg viewBox=view_box role="img" aria-label=show.words>
                <Drawn what=show.room.fill(show.picture) />
                <Drawn what=show.room.fill(show.cross) />
            </svg>
            <When condition=some>
                <Reader show=show />
            </When>
        </div>
    }
}

/// What is led over the picture. Its value is the number of the point, and the text
/// of that value is the reading, so that a screen reader says each reading once.
#[component]
fn Reader(show: Show) -> impl IntoView {
    let crosshair = show.crosshair;
    let lead = move |event: ev::PointerEvent| {
        let over = event.current_target().and_then(|it| it.dyn_into::<Element>().ok());
        if let Some(width) = over.map(|it| it.client_width()).filter(|it| *it > 0) {
            show.point_at.run(f64::from(event.offset_x()) / f64::from(width));
        }
    };
    let leave = move |event: ev::PointerEvent| {
        // What a finger has found stays when the finger goes.
        if event.pointer_type() == "mouse" {
            crosshair.at.set(None);
        }
    };
    let key = move |event: ev::KeyboardEvent| {
        if crosshair.step(&event.key()) {
            event.prevent_default();
        }
    };
    let title = said(move || show.title.with(|it| keys::Read { chart: it }.say()));
    let count = said(move || crosshair.count.get().to_string());
    let number = said(move || (crosshair.index() + 1).to_string());
    view! {
        <div
            class="reader"
            id=format!("{}-reader", show.id)
            role="slider"
            tabindex="0"
            aria-label=title
            aria-valuemin="1"
            aria-valuemax=count
            aria-valuenow=number
            aria-valuetext=show.sentence
            on:pointerdown=lead
            on:pointermove=lead
            on:pointerleave=leave
            on:keydown=key
        ></div>
    }
}
