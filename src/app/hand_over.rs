//! Handing a link to somebody: its address, the clipboard, the system's share sheet.

use js_sys::Reflect;
use leptos::prelude::window;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{DomException, ShareData};

use super::route::View;

/// The address at which what is shared is opened.
pub(crate) fn address(link: &str) -> String {
    let location = window().location();
    let part = |read: Result<String, JsValue>| read.unwrap_or_default();
    format!("{}{}{}/{link}", part(location.origin()), part(location.pathname()), View::Take.link())
}

/// Whether the browser has this; some have it in secure contexts only.
fn has(name: &str) -> bool {
    Reflect::get(&window().navigator(), &name.into()).is_ok_and(|it| !it.is_undefined())
}

/// Whether there is a clipboard to write to.
pub(crate) fn has_clipboard() -> bool {
    has("clipboard")
}

/// Whether there is a share sheet.
pub(crate) fn has_sheet() -> bool {
    has("share")
}

/// Puts a text into the clipboard. Returns whether the browser let it.
pub(crate) async fn copy(text: String) -> bool {
    JsFuture::from(window().navigator().clipboard().write_text(&text)).await.is_ok()
}

/// Opens the system's share sheet. Returns whether the link went there; that the
/// person thought better of it is no failure.
pub(crate) async fn hand_over(title: &str, address: String) -> bool {
    let data = ShareData::new();
    data.set_title(title);
    data.set_url(&address);
    match JsFuture::from(window().navigator().share_with_data(&data)).await {
        Ok(_) => true,
        Err(error) => error.dyn_ref::<DomException>().is_some_and(|it| it.name() == "AbortError"),
    }
}

/// Puts the address of a view in place of the one shown, so that neither a reload
/// nor Back comes upon it again.
pub(crate) fn replace_address(view: View) {
    let replaced = window()
        .history()
        .and_then(|it| it.replace_state_with_url(&JsValue::NULL, "", Some(view.link())));
    if let Err(error) = replaced {
        leptos::logging::error!("{error:?}");
    }
}
