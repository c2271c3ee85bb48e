use fillwright::logbook::Printer;
use leptos::prelude::*;

use crate::app::state::State;
use crate::app::widgets::{Drawn, Section, holds, said};

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
    let state = State::here();
    let opened = RwSignal::new(false);
    let wanted = holds(move || {
        let part = state.route.with(|route| route.part.as_deref().is_some_and(holds_part));
        part || opened.get()
    });
    let what = Callback::new(
        move |()| {
            if wanted.get() { state.printer.with(content) } else { Vec::new() }
        },
    );
    view! {
        <Section id=id title=title short=said(move || short.to_owned()) wrong=holds(|| false) opened=opened>
            <Drawn what=what />
        </Section>
    }
}
