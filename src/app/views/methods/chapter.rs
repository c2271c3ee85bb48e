//! A section that is laid out once it is opened, or once the address points into it.

use fillwright::quantity::notation::Printer;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::{Drawn, Need, Section, said};

/// A section that is laid out once it is opened, or once the address points into it.
#[component]
pub(super) fn Chapter(
    id: &'static str,
    title: &'static str,
    short: &'static str,
    /// Whether a part of the view lies in it.
    holds_part: fn(&str) -> bool,
    content: fn(&Printer) -> Vec<AnyView>,
) -> impl IntoView {
    let session = Session::here();
    let opened = RwSignal::new(false);
    // A link into one chapter makes that one.
    Effect::new(move |_| {
        if session.route.with(|route| route.part.as_deref().is_some_and(holds_part)) {
            opened.set(true);
        }
    });
    let what = Callback::new(move |()| session.printer.with(content));
    view! {
        <Section id=id title=title short=said(move || short.to_owned()) need=Signal::stored(Need::Nothing) opened=opened>
            <Drawn what=what />
        </Section>
    }
}
