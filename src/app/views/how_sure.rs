//! How sure a share is that was typed without a range, and what it is then taken as.

use fillwright::document::Document;
use fillwright::quantity::{Band, Share};
use fillwright::tank::HowSure;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::{Options, When, holds, key_of, options, said, value_of};

const HOW_SURE: [(HowSure, &str, &str); 3] = [
    (HowSure::Sure, "sure", "Sure"),
    (HowSure::Roughly, "roughly", "Roughly"),
    (HowSure::Unknown, "unknown", "Don't know"),
];

/// What was chosen for a share, and what it is taken as; nothing where it has a range.
type Assumed = Option<(HowSure, Band<Share>)>;

/// The choice beside a share of the document. It is there only while the share has no
/// range, which would say more. The name tells it apart, and begins the id of what it
/// says.
pub(super) fn how_sure(
    name: impl Into<String>,
    read: impl Fn(&Document) -> Assumed + Send + Sync + 'static,
    write: impl Fn(&mut Document) -> Option<&mut HowSure> + Send + Sync + 'static,
) -> AnyView {
    let state = State::here();
    let now = Memo::new(move |_| state.document.with(|it| read(it)));
    let write = Callback::new(move |chosen: HowSure| {
        state.document.update(|it| {
            if let Some(how_sure) = write(it) {
                *how_sure = chosen;
            }
        });
    });
    HowSureRow(HowSureRowProps { name: name.into(), now: now.into(), write }).into_any()
}

#[component]
fn HowSureRow(name: String, now: Signal<Assumed>, write: Callback<HowSure>) -> impl IntoView {
    let state = State::here();
    let chosen = said(move || now.get().map_or_else(String::new, |it| key_of(&HOW_SURE, &it.0)));
    let choose = Callback::new(move |key: String| {
        if let Some(how_sure) = value_of(&HOW_SURE, &key) {
            write.run(how_sure);
        }
    });
    let taken = said(move || {
        let band = now.get().map(|it| it.1);
        band.map_or_else(String::new, |band| {
            state.printer.with(|printer| format!("Taken as {}.", printer.percent_band(band)))
        })
    });
    view! {
        <When condition=holds(move || now.with(Option::is_some))>
            <Options
                legend="How sure is that"
                name=name.clone()
                options=options(&HOW_SURE)
                chosen=chosen
                on_choice=choose
            />
            <p class="hint" id=format!("{name}-taken")>
                {taken}
            </p>
        </When>
    }
}
