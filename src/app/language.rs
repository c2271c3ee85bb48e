//! The language of the page: the first that the browser asks for and the build has.

use fillwright::message::{Language, keys, speak};
use js_sys::{Array, Intl, Object};
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::Response;

/// Goes on once the language is there. The first one comes with the program; where another
/// cannot be had, the first one is spoken.
pub(super) fn once_spoken(then: impl FnOnce() + 'static) {
    let [(first, _), ..] = keys::LANGUAGES;
    let asked_for = window().navigator().languages();
    match wanted(&asked_for).filter(|(tag, _)| *tag != first) {
        None => then(),
        Some((tag, file)) => spawn_local(async move {
            if let Some(language) = load(tag, file).await {
                speak(language);
                if let Some(root) = document().document_element() {
                    // Setting an attribute with a good name cannot fail.
                    let _ = root.set_attribute("lang", tag);
                }
            }
            then();
        }),
    }
}

/// The first of the languages asked for that there is: by its whole tag, or by its first
/// part where that is all that is there, as `de` for `de-AT`.
fn wanted(asked_for: &Array) -> Option<(&'static str, &'static str)> {
    let find = |tag: &str| keys::LANGUAGES.into_iter().find(|it| it.0.eq_ignore_ascii_case(tag));
    asked_for
        .iter()
        .filter_map(|it| it.as_string())
        .find_map(|tag| find(&tag).or_else(|| find(tag.split('-').next().unwrap_or_default())))
}

async fn load(tag: &str, file: &str) -> Option<Language> {
    let response = JsFuture::from(window().fetch_with_str(&format!("words/{file}"))).await;
    let response: Response = response.ok()?.dyn_into().ok()?;
    if !response.ok() {
        return None;
    }
    let text = JsFuture::from(response.text().ok()?).await.ok()?.as_string()?;
    let rules = Intl::PluralRules::new(&Array::of1(&tag.into()), &Object::new());
    Language::of(text, Box::new(move |count| category(&rules, count)))
}

/// The plural category of a count, by the browser's own table of CLDR.
#[expect(clippy::cast_precision_loss, reason = "nobody has so many of anything")]
fn category(rules: &Intl::PluralRules, count: usize) -> &'static str {
    match String::from(rules.select(count as f64)).as_str() {
        "zero" => "zero",
        "one" => "one",
        "two" => "two",
        "few" => "few",
        "many" => "many",
        _ => "other",
    }
}
