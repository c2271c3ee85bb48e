//! A chart on paper.

use leptos::prelude::*;

use super::chart::Chart;
use super::frame::Frame;
use super::stage::height;
use super::{draw, notes};
use crate::app::widgets::{Drawn, said};

/// The width of a picture on paper: the printed width of A4 in CSS pixels.
const PAPER: f64 = 660.0;

/// The chart on paper: what it shows, and nothing that is led or opened.
#[component]
pub(crate) fn ChartOnPaper(
    /// Also the beginning of the ids inside.
    id: &'static str,
    chart: Signal<Chart>,
) -> impl IntoView {
    let title = said(move || chart.with(|it| it.title.clone()));
    let words = said(move || chart.with(|it| it.words.clone()));
    let picture =
        Callback::new(move |()| chart.with(|it| draw::picture(id, it, &Frame::of(it, PAPER))));
    let beyond = Callback::new(move |()| chart.with(notes::beyond));
    view! {
        <figure class="plot" id=id>
            <figcaption>
                <strong>{title}</strong>
            </figcaption>
            <svg viewBox=format!("0 0 {PAPER} {}", height(PAPER)) role="img" aria-label=words>
                <Drawn what=picture />
            </svg>
            <Drawn what=beyond />
        </figure>
    }
}
