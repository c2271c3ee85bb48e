//! Links inside the app. They live in the fragment, so that any plain file
//! server serves them and Back works without a rule on the server.

use fillwright::message::keys::frame as keys;
use leptos::ev::MouseEvent;
use leptos::prelude::{document, window};
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

/// A view.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum View {
    /// What to put in, here and now.
    Fill,
    /// What is in the tank between fills.
    Tank,
    /// Whether the fuel system holds, and what gives first.
    Hardware,
    /// Which fills, where, and what that makes of the calibrations.
    Trip,
    /// The car, its calibrations, the units.
    Car,
    /// Where each number comes from.
    Methods,
    /// What somebody shared by link, before it is taken in.
    Take,
}

impl View {
    /// Those that there is always a way to.
    pub(crate) const ALL: [Self; 6] =
        [Self::Fill, Self::Tank, Self::Hardware, Self::Trip, Self::Car, Self::Methods];

    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Fill => keys::FILL.say(),
            Self::Tank => keys::TANK.say(),
            Self::Hardware => keys::HARDWARE.say(),
            Self::Trip => keys::TRIP.say(),
            Self::Car => keys::CAR.say(),
            Self::Methods => keys::METHODS.say(),
            Self::Take => keys::SHARED.say(),
        }
    }

    pub(crate) fn link(self) -> &'static str {
        match self {
            Self::Fill => "#/fill",
            Self::Tank => "#/tank",
            Self::Hardware => "#/hardware",
            Self::Trip => "#/trip",
            Self::Car => "#/car",
            Self::Methods => "#/methods",
            Self::Take => "#/take",
        }
    }
}

/// A view, and the part of it to bring into sight.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Route {
    pub(crate) view: View,
    pub(crate) part: Option<String>,
}

impl Route {
    /// Where the address points; an unknown address opens the first view.
    pub(crate) fn of_location() -> Self {
        let hash = window().location().hash().unwrap_or_default();
        let mut parts = hash.trim_start_matches('#').trim_start_matches('/').splitn(2, '/');
        let view = match parts.next() {
            Some("car") => View::Car,
            Some("methods") => View::Methods,
            Some("trip") => View::Trip,
            Some("tank") => View::Tank,
            Some("hardware") => View::Hardware,
            Some("take") => View::Take,
            _ => View::Fill,
        };
        Self { view, part: parts.next().filter(|part| !part.is_empty()).map(Into::into) }
    }
}

/// Whether a click was on a link to the very address that is shown.
pub(crate) fn leads_here(event: &MouseEvent) -> bool {
    let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    let link = target.and_then(|target| target.closest("a[href^='#/']").ok().flatten());
    let href = link.and_then(|link| link.get_attribute("href"));
    href.is_some() && href == window().location().hash().ok()
}

/// Brings a part of the page into sight: opens what hides it and gives it the
/// focus where it can have it.
pub(crate) fn show(id: &str) {
    let Some(element) = document().get_element_by_id(id) else { return };
    let mut hidden_in = element.closest("details").ok().flatten();
    while let Some(details) = hidden_in {
        // Setting an attribute of this name cannot fail.
        let _ = details.set_attribute("open", "");
        let around = details.parent_element();
        hidden_in = around.and_then(|it| it.closest("details").ok().flatten());
    }
    element.scroll_into_view();
    if let Some(element) = element.dyn_ref::<HtmlElement>() {
        let _ = element.focus();
    }
}

/// Whether a part of the page is there.
pub(crate) fn is_there(id: &str) -> bool {
    document().get_element_by_id(id).is_some()
}
