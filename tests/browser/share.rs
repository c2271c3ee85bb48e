//! Links that carry a fill, a car or a trip: what arrives on another device, that nothing
//! changes there before it is taken, and that no link does harm.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::deflate::compress_to_vec_zlib;
use miniz_oxide::inflate::decompress_to_vec_zlib;
use serde_json::Value;

use crate::app::{self, to_fill};
use crate::for_all::for_all;
use crate::harness::{Page, browse};
use crate::states::{State, open_everything};
use crate::storage::export;

const ONLY_SHOWN: &str = "It is only shown so far";
const UNREADABLE: &str = "Nothing was taken in";

/// All that the app stored.
async fn stored(page: &Page) -> Value {
    page.script("return Object.entries(localStorage).sort()", vec![]).await
}

/// What comes after the page's address in the link that a view offers.
async fn link_of(page: &Page, view: &str) -> String {
    page.click("link", view).await;
    page.sees(if view == "Trip" { crate::trip::SETTLED } else { view }).await;
    open_everything(page).await;
    page.until("a link", async || !page.value("Link").await.is_empty()).await;
    let link = page.value("Link").await;
    let (_, hash) = link.split_once('#').expect("a link into the app");
    assert!(hash.starts_with("/take/"), "{link}");
    format!("#{hash}")
}

/// What a view says first of what was entered.
async fn said(page: &Page, view: &str) -> String {
    match view {
        "Fill" => app::outcome(page).await,
        "Trip" => {
            page.sees(crate::trip::SETTLED).await;
            app::texts(page, "#trip-next .outcome").await.join("")
        }
        _ => page.value(app::CAPACITY).await,
    }
}

async fn shown_only(page: &Page, link: &str, before: &Value) {
    page.open(link).await;
    page.sees(ONLY_SHOWN).await;
    assert_eq!(&stored(page).await, before);
}

#[test]
fn what_is_shared_arrives_on_another_device_once_it_is_taken() {
    browse(async |page| {
        for (from, to) in [("Fill", "Fill"), ("Trip", "Trip"), ("Car", "Car"), ("Hardware", "Car")]
        {
            State::Fill.reach(page).await;
            let link = link_of(page, from).await;
            let sent = if from == "Hardware" { "58".to_owned() } else { said(page, from).await };
            page.forget().await;
            shown_only(page, &link, &Value::Array(Vec::new())).await;
            page.click("button", "Take it").await;
            page.becomes(format!("#/{}", to.to_lowercase()), async || page.hash().await).await;
            page.until(&sent, async || alike(&sent, &said(page, to).await)).await;
        }
    });
}

/// Whether two texts say the same. What the log told goes by link in tenths, so that a plan
/// may come to another step of the pump, which is half a litre.
fn alike(sent: &str, arrived: &str) -> bool {
    let same = |(one, other): (&str, &str)| {
        let numbers = one.parse::<f64>().ok().zip(other.parse::<f64>().ok());
        one == other || numbers.is_some_and(|(one, other)| (one - other).abs() <= 0.5)
    };
    let words = |text: &str| text.split_whitespace().count();
    words(sent) == words(arrived)
        && sent.split_whitespace().zip(arrived.split_whitespace()).all(same)
}

#[test]
fn what_was_there_stays_and_comes_back() {
    browse(async |page| {
        State::Fill.reach(page).await;
        let link = link_of(page, "Fill").await;
        page.forget().await;
        app::quarter_full(page).await;
        app::to_car(page).await;
        let before = export(page).await;
        for button in ["Leave it", "Take it"] {
            let kept = stored(page).await;
            shown_only(page, &link, &kept).await;
            page.click("button", button).await;
            page.sees("Put in").await;
            if button == "Leave it" {
                app::to_car(page).await;
                assert_eq!(export(page).await, before);
            }
        }
        // The car is one's own; what is shared of the other is its fill.
        app::to_car(page).await;
        assert_ne!(export(page).await, before);
        app::undo(page, "Shared fill in use").await;
        assert_eq!(without_numbers(&export(page).await), without_numbers(&before));
    });
}

/// An export without the numbers that were given: none is given twice.
fn without_numbers(export: &str) -> Value {
    let mut value: Value = serde_json::from_str(export).expect("JSON");
    value["here"]["last_id"].take();
    value
}

#[test]
fn the_card_the_preview_and_the_error_are_for_all() {
    browse(async |page| {
        State::Fill.reach(page).await;
        let link = link_of(page, "Fill").await;
        assert!(page.has("image", "QR code of the link above").await);
        for_all(page, "share").await;
        page.open(&link).await;
        page.sees(ONLY_SHOWN).await;
        for_all(page, "share-preview").await;
        page.open("#/take/nothing").await;
        page.sees(UNREADABLE).await;
        for_all(page, "share-error").await;
    });
}

/// Texts that would do something wherever a page took them for more than a text.
const HARM: [&str; 12] = [
    "<img src=x onerror=window.harmed=1>",
    "<script>window.harmed=1</script>",
    "<svg onload=window.harmed=1>",
    "\"><iframe srcdoc='<script>parent.harmed=1</script>'></iframe>",
    "' onfocus=window.harmed=1 autofocus='",
    "javascript:window.harmed=1",
    "</title><style>*{display:none}</style>",
    "&lt;b&gt;&#x3c;script>",
    "\u{202e}kcab\u{2066}",
    "NaN",
    "-1",
    "1e999",
];

/// Replaces every name, place and note, or every text at all.
fn harm(value: &mut Value, key: &str, with: &str, names_alone: bool) {
    match value {
        Value::String(text) if !names_alone || ["name", "place", "note"].contains(&key) => {
            with.clone_into(text);
        }
        Value::Array(values) => values.iter_mut().for_each(|it| harm(it, key, with, names_alone)),
        Value::Object(fields) => {
            fields.iter_mut().for_each(|(key, it)| harm(it, key, with, names_alone));
        }
        _ => {}
    }
}

fn around(tag: &str, text: &[u8]) -> String {
    format!("{tag}.{}", URL_SAFE_NO_PAD.encode(compress_to_vec_zlib(text, 6)))
}

/// Links that somebody made of honest ones to do harm.
fn hostile(honest: &[String]) -> Vec<String> {
    let mut links = Vec::new();
    for link in honest {
        let (tag, payload) = link.split_once('.').expect("a tag");
        let packed = URL_SAFE_NO_PAD.decode(payload).expect("base 64");
        let json = decompress_to_vec_zlib(&packed).expect("a whole payload");
        for text in HARM {
            for names_alone in [true, false] {
                let mut value: Value = serde_json::from_slice(&json).expect("JSON");
                harm(&mut value, "", text, names_alone);
                links.push(around(tag, value.to_string().as_bytes()));
            }
            links.push(format!("{tag}.{text}"));
        }
        let json = String::from_utf8(json).expect("text");
        links.extend([
            around(tag, json.replace("\"schema\":5", "\"schema\":99").as_bytes()),
            around(tag, json.replace(":0", ":-1").as_bytes()),
            around(tag, "[".repeat(100_000).as_bytes()),
            around(tag, "{\"schema\":5,\"here\":".repeat(5_000).as_bytes()),
            // It unpacks to more than any link may.
            around(tag, &vec![b' '; 64 << 20]),
            around(tag, &[0xff; 64]),
            format!("{tag}.{}", &payload[..payload.len() / 2]),
            format!("{tag}.{}", "A".repeat(100_000)),
            format!("{}.{payload}", tag.replace('1', "2")),
        ]);
    }
    links.extend(HARM.map(str::to_owned));
    links
}

#[test]
fn no_link_does_harm() {
    browse(async |page| {
        State::Fill.reach(page).await;
        let mut honest = Vec::new();
        for view in ["Fill", "Trip", "Car"] {
            honest.push(link_of(page, view).await.replace("#/take/", ""));
        }
        let before = stored(page).await;
        let links = hostile(&honest);
        assert!(links.len() > 100, "{}", links.len());
        let (mut shown, mut as_text) = (0, 0);
        for link in links {
            // As the address is typed: a browser escapes what it has to.
            let to = "location.hash = '#/take/' + arguments[0]";
            page.script(to, vec![link.clone().into()]).await;
            page.until("a word on the link", async || {
                let text = page.visible_text().await;
                text.contains(ONLY_SHOWN) || text.contains(UNREADABLE)
            })
            .await;
            let text = page.visible_text().await;
            shown += usize::from(text.contains(ONLY_SHOWN));
            as_text += usize::from(text.contains("<img src=x onerror"));
            let made = "return document.querySelectorAll(
                'main :is(img, script, style, iframe), [onerror], [onload], [onfocus]').length";
            assert_eq!(page.script(made, vec![]).await, Value::from(0), "{link}");
            let harmed = page.script("return window.harmed ?? null", vec![]).await;
            assert_eq!(harmed, Value::Null, "{link}");
            assert_eq!(stored(page).await, before, "{link}");
        }
        assert!(shown > 5 && as_text > 0, "{shown} shown, {as_text} with markup as text");
        to_fill(page).await;
        page.sees("Makes E30").await;
    });
}
