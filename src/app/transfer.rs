//! Files that leave the app and files that come in.

use fillwright::document::{Document, csv};
use fillwright::message::keys::files;
use js_sys::{Array, Uint8Array};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

use super::session::Session;
use super::{device, storage};

/// Hands the whole document to the person as a file.
pub(crate) fn export(session: Session) {
    match session.document.with_untracked(Document::to_json) {
        Ok(text) => download(&named("", "json"), "application/json", &text),
        Err(error) => leptos::logging::error!("{error}"),
    }
}

/// The same with the log of the car in use, as a table.
pub(crate) fn export_log(session: Session) {
    let text = session.document.with_untracked(|it| csv(&it.here));
    download(&named("-log", "csv"), "text/csv", &text);
}

/// The same with the texts that could not be read.
pub(crate) fn download_aside() {
    let texts = storage::aside();
    let parts = texts.iter().map(|aside| format!("--- {}\n{}\n", aside.key, aside.text));
    download(&named("-unreadable", "txt"), "text/plain", &parts.collect::<String>());
}

/// `fillwright-2026-05-03.json`
fn named(what: &str, ending: &str) -> String {
    let today: String = device::now().chars().take("2026-05-03".len()).collect();
    format!("fillwright{what}-{today}.{ending}")
}

fn download(name: &str, kind: &str, text: &str) {
    let offer = || -> Result<(), JsValue> {
        let options = BlobPropertyBag::new();
        options.set_type(kind);
        let parts = Array::of1(&text.into());
        let blob = Blob::new_with_str_sequence_and_options(&parts, &options)?;
        let address = Url::create_object_url_with_blob(&blob)?;
        let link: HtmlAnchorElement = document().create_element("a")?.dyn_into()?;
        link.set_href(&address);
        link.set_download(name);
        link.click();
        // The download holds on to what it needs.
        Url::revoke_object_url(&address)
    };
    if let Err(error) = offer() {
        leptos::logging::error!("{error:?}");
    }
}

/// Why a file has no text to give.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub(crate) enum FileError {
    /// It is too large.
    TooLarge { bytes: usize, largest: usize },
    /// The browser could not read it.
    Closed,
    /// It is something else than a text.
    NoText,
}

impl FileError {
    /// Why, to be read after a colon.
    pub(crate) fn say(self) -> String {
        match self {
            Self::TooLarge { bytes, largest } => files::FileTooLarge { bytes, most: largest }.say(),
            Self::Closed => files::FILE_CLOSED.say().into(),
            Self::NoText => files::FILE_NO_TEXT.say().into(),
        }
    }
}

/// The text of a file of at most so many bytes.
pub(crate) async fn read(file: File, largest: usize) -> Result<String, FileError> {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a size in bytes")]
    let bytes = file.size() as usize;
    if bytes > largest {
        return Err(FileError::TooLarge { bytes, largest });
    }
    let content = JsFuture::from(file.array_buffer()).await.map_err(|_| FileError::Closed)?;
    // A text with a replaced letter would pass for one that somebody typed.
    String::from_utf8(Uint8Array::new(&content).to_vec()).map_err(|_| FileError::NoText)
}
