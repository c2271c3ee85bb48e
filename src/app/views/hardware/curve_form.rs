//! A curve of the document: what is read of it, and what is written.

use fillwright::document::CurveForm;
use leptos::prelude::*;

use crate::app::session::Session;
use crate::app::widgets::said;

/// Changes something of a curve by a text.
pub(super) fn set(id: u32, write: fn(&mut CurveForm, String)) -> Callback<String> {
    Session::here().set(move |it, text| {
        if let Some(form) = it.here.hardware.curve_mut(id) {
            write(form, text);
        }
    })
}

/// Something of a curve as a text.
pub(super) fn read(id: u32, read: fn(&CurveForm) -> String) -> Signal<String> {
    let session = Session::here();
    said(move || {
        session.document.with(|it| it.here.hardware.curve(id).map_or_else(String::new, read))
    })
}
