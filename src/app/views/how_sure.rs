//! How sure a share is that was typed without a range, and what it is then taken as.

use fillwright::document::Field;
use fillwright::message::Message;
use fillwright::message::keys::contents as keys;
use fillwright::tank::HowSure;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{Options, When, holds, key_of, options, said, value_of};

const HOW_SURE: [(HowSure, &str, Message); 3] = [
    (HowSure::Sure, "sure", keys::SURE),
    (HowSure::Roughly, "roughly", keys::ROUGHLY),
    (HowSure::Unknown, "unknown", keys::UNKNOWN),
];

/// The choice beside the share in a field. It is there only while the share has no range,
/// which would say more.
pub(super) fn how_sure(share: Field) -> AnyView {
    HowSureRow(HowSureRowProps { share }).into_any()
}

#[component]
fn HowSureRow(share: Field) -> impl IntoView {
    let session = Session::here();
    let name = format!("{}-how-sure", share.id().trim_end_matches("-share"));
    let now = Memo::new(move |_| session.document.with(|it| it.share_assumed(share)));
    let chosen = said(move || now.get().map_or_else(String::new, |it| key_of(&HOW_SURE, &it.0)));
    let choose = session.set(move |it, key| {
        if let (Some(form), Some(how_sure)) = (it.how_sure_mut(share), value_of(&HOW_SURE, &key)) {
            *form = how_sure;
        }
    });
    let taken = said(move || {
        let band = now.get().map(|it| it.1);
        band.map_or_else(String::new, |band| {
            session
                .printer
                .with(|printer| keys::TakenAs { shares: printer.percent_band(band) }.say())
        })
    });
    view! {
        <When condition=holds(move || now.with(Option::is_some))>
            <Options
                legend=keys::HOW_SURE.say()
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
