//! A thousand ruined exports: each is refused or read, and nothing that is here
//! already is lost to it.

use fillwright::document::{Document, DocumentError, Event, Id, LARGEST_DOCUMENT, Moment, What};
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

pub(crate) fn logged() -> Document {
    let mut document = Document::demo();
    for number in 0..20 {
        document.here.log.write(Event {
            id: Id::new(&format!("own-{number}")).unwrap(),
            revision: 1,
            sequence: 0,
            removed: false,
            time: Moment::new(&format!("2026-05-{:02}T17:40", number + 1), 120).unwrap(),
            place: String::new(),
            note: format!("note {number}"),
            what: What::Note,
        });
    }
    document
}

/// A ruined copy of a text.
pub(crate) fn ruined(text: &str, chance: &mut ChaCha8Rng) -> Vec<u8> {
    let mut below = |limit: usize| chance.next_u32() as usize % limit.max(1);
    let mut bytes = text.as_bytes().to_vec();
    let (kind, at) = (below(8), below(bytes.len()));
    match kind {
        0 => bytes[at] ^= 1 << below(8),
        1 => bytes.truncate(at),
        2 => drop(bytes.drain(at..(at + below(40)).min(text.len()))),
        3 => {
            let again = bytes[at..(at + below(60)).min(text.len())].to_vec();
            bytes.splice(at..at, again);
        }
        4 => return text.replacen("\"revision\":1", "\"revision\":-1", below(30)).into_bytes(),
        5 => return text.replacen("\"schema\":3", &format!("\"schema\":{}", below(9)), 1).into(),
        6 => {
            let value = ["NaN", "1e999", "-1", "null", "{}", "[[[[", "\"\\ud800\""][below(7)];
            let from = text[at..].find(':').map_or(at, |it| at + it + 1);
            let to = text[from..].find([',', '}']).map_or(from, |it| from + it);
            bytes.splice(from..to, value.bytes());
        }
        _ => {
            let from = text[at..].find('"').map_or(at, |it| at + it);
            let to = (from + below(200)).min(text.len());
            let part = bytes[from..to].to_vec();
            bytes.splice(from..from, part.into_iter().chain(*b","));
        }
    }
    bytes
}

#[test]
fn a_thousand_ruined_documents_do_no_harm() {
    let here = logged();
    let text = here.to_json().unwrap();
    let mut chance = ChaCha8Rng::seed_from_u64(20_260_503);
    let mut refused = 0;
    for _ in 0..1000 {
        let bytes = ruined(&text, &mut chance);
        let read = String::from_utf8(bytes).map(|text| Document::from_json(&text));
        let Ok(Ok(other)) = read else {
            refused += 1;
            continue;
        };
        let (mut merged, mut replaced) = (here.clone(), here.clone());
        merged.merge(other.clone());
        replaced.replace(other);
        for now in [&merged, &replaced] {
            let car = now.cars().find(|car| car.id == here.here.id).unwrap();
            for event in here.here.log.all() {
                let kept = car.log.find(&event.id).unwrap();
                assert!(kept == event || kept.holds_against(event), "{event:?} is lost");
            }
            assert_eq!(&Document::from_json(&now.to_json().unwrap()).unwrap(), now);
        }
    }
    assert!((300..1000).contains(&refused), "{refused} were refused");
}

#[test]
fn extremes_are_refused() {
    let deep = "[".repeat(100_000);
    for text in
        ["", "null", "[]", "{}", "\u{feff}{}", &deep, &format!("{{\"schema\":2,\"here\":{deep}")]
    {
        let read = Document::from_json(text);
        assert!(matches!(read, Err(DocumentError::Unreadable { .. })), "{text:.40}");
    }
    let large = " ".repeat(LARGEST_DOCUMENT + 1);
    assert!(matches!(Document::from_json(&large), Err(DocumentError::TooLarge { .. })));
    let twice = logged().to_json().unwrap().replacen("\"others\":[", "\"here\":{},\"others\":[", 1);
    assert!(Document::from_json(&twice).is_err(), "a key that is there twice");
}
