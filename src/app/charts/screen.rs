//! A chart on the screen: the picture with its crosshair, what that reads, and all of
//! it as a table.

use fillwright::message::keys::charts as keys;
use leptos::prelude::*;

use super::chart::Chart;
use super::crosshair::Crosshair;
use super::frame::Frame;
use super::reading::Reading;
use super::stage::{Room, Show, Stage};
use super::stops::{Stop, nearest, rest, stops};
use super::table::{self, AsTable};
use super::{draw, key, notes};
use crate::app::widgets::{Drawn, When, holds, said};

/// What the parts of a chart share.
#[derive(Clone, Copy)]
struct Shared {
    id: &'static str,
    chart: Signal<Chart>,
    stops: Memo<Vec<Stop>>,
    room: Room,
    crosshair: Crosshair,
}

impl Shared {
    fn reading(self) -> Option<Reading> {
        let index = self.crosshair.index();
        self.chart.with(|it| self.stops.with(|stops| Reading::of(it, stops, index)))
    }

    /// What is made of the reading; nothing where there is none.
    fn read<T: Default>(self, make: impl FnOnce(Reading) -> T) -> T {
        self.reading().map_or_else(T::default, make)
    }

    /// Moves the crosshair to the stop nearest to a place, as a part of the width.
    fn point_at(self, part: f64) {
        let width = self.room.width();
        let x = self.chart.with(|it| Frame::of(it, width).x_at(part * width));
        self.crosshair.at.set(Some(self.stops.with(|stops| nearest(stops, x))));
    }

    /// All of the picture but the crosshair.
    fn picture(self) -> Vec<AnyView> {
        self.chart.with(|it| draw::picture(self.id, it, &Frame::of(it, self.room.width())))
    }

    /// The values that are read, with a line through them while the crosshair is led.
    fn cross(self) -> Vec<AnyView> {
        let stop = self.stops.with(|stops| stops.get(self.crosshair.index()).copied());
        let Some(stop) = stop else { return Vec::new() };
        let led = self.crosshair.is_led();
        self.chart.with(|it| draw::crosshair(it, stop, &Frame::of(it, self.room.width()), led))
    }

    fn table(self) -> Vec<AnyView> {
        self.chart.with(|it| self.stops.with(|stops| table::drawn(self.id, it, stops)))
    }

    /// Where the crosshair is, beside the title.
    fn place(self) -> String {
        let is_date = self.chart.with(|it| it.x.date.is_some());
        self.read(|it| if is_date { it.place } else { keys::At { place: it.place }.say() })
    }
}

/// The chart, with a crosshair that is led by pointer, finger or arrow keys, what
/// it reads, and all of it as a table.
#[component]
pub(crate) fn ChartOnScreen(
    /// Also the beginning of the ids inside.
    id: &'static str,
    chart: Signal<Chart>,
    /// Where the crosshair was led, for charts over the same places that share it.
    #[prop(optional)]
    led: Option<RwSignal<Option<usize>>>,
) -> impl IntoView {
    let stops = Memo::new(move |_| chart.with(stops));
    let crosshair = Crosshair {
        count: Signal::derive(move || stops.with(Vec::len)),
        rest: Signal::derive(move || chart.with(|it| stops.with(|stops| rest(it, stops)))),
        at: led.unwrap_or_else(|| RwSignal::new(None)),
    };
    let shared = Shared { id, chart, stops, room: Room::new(), crosshair };
    let some = holds(move || stops.with(|it| !it.is_empty()));
    let has_entries = holds(move || chart.with(|it| !it.entries.is_empty()));
    let title = said(move || chart.with(|it| it.title.clone()));
    let show = Show {
        id,
        title,
        words: said(move || chart.with(|it| it.words.clone())),
        picture: Callback::new(move |()| shared.picture()),
        cross: Callback::new(move |()| shared.cross()),
        sentence: said(move || shared.read(|it| it.sentence())),
        point_at: Callback::new(move |part| shared.point_at(part)),
        crosshair,
        room: shared.room,
    };
    let values = Callback::new(move |()| shared.read(Reading::values));
    let beyond = Callback::new(move |()| chart.with(notes::beyond));
    let shapes = Callback::new(move |()| chart.with(key::drawn));
    let noted = Callback::new(move |()| shared.read(|it| notes::noted(it.noted)));
    let table = Callback::new(move |()| shared.table());
    view! {
        <figure class="plot" id=id>
            <figcaption>
                <strong>{title}</strong>
                <span class="when">{said(move || shared.place())}</span>
            </figcaption>
            <ul class="values plain">
                <Drawn what=values />
            </ul>
            <Stage show=show some=some />
            <When condition=some>
                <Drawn what=beyond />
                <When condition=has_entries>
                    <ul class="key plain">
                        <Drawn what=shapes />
                    </ul>
                    <p class="notes">
                        <Drawn what=noted />
                    </p>
                </When>
                <AsTable what=table />
            </When>
        </figure>
    }
}
