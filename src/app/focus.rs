//! Where the focus goes when what had it is gone.
//!
//! A browser then gives it to nothing, and whoever goes by keys or listens to the page has
//! lost the place. Here it goes to what moved up into that place, or to what is nearest:
//! after a stop of the route was removed, to the next one.

use std::cell::RefCell;
use std::rc::Rc;
use std::time::Duration;

use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use web_sys::{Element, FocusEvent, HtmlElement, MutationObserver, MutationObserverInit};

/// A place on the page: the child of this number of an element.
struct Place {
    around: Element,
    child: u32,
}

/// What had the focus last, and its place from the inside out.
#[derive(Default)]
struct Last {
    element: Option<Element>,
    places: Vec<Place>,
}

/// Keeps the focus on the page from now on.
pub(crate) fn keep() {
    let last = Rc::new(RefCell::new(Last::default()));
    let taken = Rc::clone(&last);
    // All of these listen for as long as the page is there.
    window_event_listener(ev::focusin, move |event| {
        if let Some(element) = target(&event) {
            *taken.borrow_mut() = Last { places: places_of(&element), element: Some(element) };
        }
    });
    let left = Rc::clone(&last);
    window_event_listener(ev::focusout, move |event| {
        let Some(element) = target(&event) else { return };
        let left = Rc::clone(&left);
        // Some browsers tell this of what is being removed too; then it is gone soon.
        set_timeout(
            move || {
                let mut last = left.borrow_mut();
                if element.is_connected() && last.element.as_ref() == Some(&element) {
                    *last = Last::default();
                }
            },
            Duration::ZERO,
        );
    });
    let changed = Closure::<dyn FnMut()>::new(move || {
        let lost = {
            let last = last.borrow();
            is_nowhere() && last.element.as_ref().is_some_and(|it| !it.is_connected())
        };
        if lost {
            // Giving the focus tells the listener above, which takes a new place then.
            let Last { places, .. } = last.take();
            give_to_nearest(&places);
        }
    });
    let changed: js_sys::Function = changed.into_js_value().unchecked_into();
    let observed = MutationObserver::new(&changed).and_then(|observer| {
        let wanted = MutationObserverInit::new();
        wanted.set_child_list(true);
        wanted.set_subtree(true);
        observer.observe_with_options(&document(), &wanted)
    });
    if let Err(error) = observed {
        leptos::logging::error!("{error:?}");
    }
}

fn target(event: &FocusEvent) -> Option<Element> {
    event.target()?.dyn_into().ok()
}

fn places_of(element: &Element) -> Vec<Place> {
    let mut places = Vec::new();
    let mut inner = element.clone();
    while let Some(around) = inner.parent_element() {
        let children = around.children();
        let child = (0..children.length()).find(|at| children.item(*at).as_ref() == Some(&inner));
        places.push(Place { around: around.clone(), child: child.unwrap_or_default() });
        inner = around;
    }
    places
}

/// Whether nothing on the page has the focus.
fn is_nowhere() -> bool {
    document().active_element().is_none_or(|it| it.tag_name() == "BODY")
}

/// Gives the focus to what is at the innermost of these places that is still there, or to
/// what is beside it.
fn give_to_nearest(places: &[Place]) {
    for Place { around, child } in places.iter().filter(|it| it.around.is_connected()) {
        let children = around.children();
        let after = *child..children.length();
        let before = (0..(*child).min(children.length())).rev();
        for at in after.chain(before) {
            if let Some(near) = children.item(at).and_then(|it| it.dyn_into::<HtmlElement>().ok()) {
                give_to(near);
                // What is not drawn does not take it.
                if !is_nowhere() {
                    return;
                }
            }
        }
    }
}

fn give_to(element: HtmlElement) {
    let summary =
        if element.tag_name() == "DETAILS" { element.first_element_child() } else { None };
    let element = summary.and_then(|it| it.dyn_into().ok()).unwrap_or(element);
    if element.tab_index() < 0 && !element.has_attribute("tabindex") {
        // Setting an attribute of this name cannot fail.
        let _ = element.set_attribute("tabindex", "-1");
    }
    let _ = element.focus();
}
