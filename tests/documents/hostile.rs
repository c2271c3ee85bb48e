//! Eight hundred links and files that somebody ruined or made to do harm: each is
//! refused in words or read into what passes the checks of a link, and the document
//! beside it stays as it was.

use fillwright::answers::fill::{FillAnswer, interpret};
use fillwright::answers::hardware::{HardwareAnswer, HardwareReading};
use fillwright::answers::tank::{History, LogReading};
use fillwright::answers::trip::TripReading;
use fillwright::document::{Document, Id, SCHEMA};
use fillwright::quantity::notation::DecimalMark;
use fillwright::share::{Kind, Shared};
use fillwright::words;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

use super::mutated::{logged, ruined};
use super::shared::{link_around, of_the_example};

/// What a text or a number may be replaced by.
const HARM: [&str; 30] = [
    "\"<script>window.harmed=1</script>\"",
    "\"<img src=x onerror=window.harmed=1>\"",
    "\"\\u003csvg onload=alert(1)\\u003e\"",
    "\"javascript:alert(1)\"",
    "\"\\\"><iframe srcdoc='<script>1</script>'>\"",
    "\"{{constructor.constructor('1')()}}\"",
    "\"\\u0000\"",
    "\"\\u001b[2J\"",
    "\"\\u202egnp.exe\"",
    "\"\\u2066E85\\u2069\"",
    "\"\\ud800\"",
    "\"\"",
    "\"NaN\"",
    "\"Infinity\"",
    "\"-Infinity\"",
    "\"-1\"",
    "\"1e308\"",
    "\"1e-400\"",
    "\"99999999999999999999999999\"",
    "NaN",
    "-1",
    "1e308",
    "1e999",
    "4294967295",
    "4294967296",
    "null",
    "true",
    "{}",
    "[]",
    "[[[[[[[[[[[[",
];

/// Every place at which a value begins in a JSON text, and where it ends.
fn values(text: &str) -> Vec<(usize, usize)> {
    let bytes = text.as_bytes();
    let mut found = Vec::new();
    let mut at = 0;
    while let Some(colon) = text[at..].find(':') {
        let from = at + colon + 1;
        let to = match bytes.get(from) {
            Some(b'"') => text[from + 1..].find('"').map(|it| from + it + 2),
            Some(b'{' | b'[') | None => None,
            Some(_) => text[from..].find([',', '}', ']']).map(|it| from + it),
        };
        found.extend(to.map(|to| (from, to)));
        at = from;
    }
    found
}

/// Texts of a document with a value replaced, one for each sort of harm and more.
fn harmed(json: &str) -> Vec<String> {
    let places = values(json);
    let with = |(from, to): (usize, usize), value: &str| {
        format!("{}{value}{}", &json[..from], &json[to..])
    };
    let mut texts = Vec::new();
    for (number, harm) in HARM.iter().enumerate() {
        for turn in 0..4 {
            let place = places[(number * 37 + turn * 53) % places.len()];
            texts.push(with(place, harm));
        }
        // In every text at once.
        let mut all = json.to_owned();
        for (from, to) in places.iter().rev().filter(|(from, _)| json.as_bytes()[*from] == b'"') {
            all.replace_range(from..to, harm);
        }
        texts.push(all);
    }
    texts.push(String::new());
    texts.push("null".into());
    texts.push("{}".into());
    texts.push("[".repeat(10_000));
    texts.push(format!("{{\"schema\":{SCHEMA},\"here\":").repeat(10_000));
    texts.push(format!(
        "{{\"schema\":{SCHEMA},\"x\":{}1{}}}",
        "[".repeat(10_000),
        "]".repeat(10_000)
    ));
    texts.push(json.replacen("\"fill\":", "\"fill\":{},\"fill\":", 1));
    texts.push(json.replacen("\"here\":", "\"here\":{},\"here\":", 1));
    texts.push(json.replacen("\"others\":[", &format!("\"others\":[{}", "{},".repeat(5000)), 1));
    let last = json.find("\"last_id\":").map(|it| it + "\"last_id\":".len()).unwrap();
    let end = last + json[last..].find(',').unwrap();
    for number in ["4294967295", "4294967296", "-1", "1e9", "2147483648"] {
        texts.push(with((last, end), number));
    }
    let schemas = ["-1", "0", "1", "2", "3", "4", "6", "99", "\"5\"", "5.0", "null", "1e400"];
    texts.extend(
        schemas.map(|it| {
            json.replacen(&format!("\"schema\":{SCHEMA}"), &format!("\"schema\":{it}"), 1)
        }),
    );
    texts
}

/// Reads a link as the app does: it is refused in words, or shown, taken and reckoned
/// with, and nothing else changes. Returns whether it was read.
fn meets(here: &Document, link: &str) -> bool {
    let shared = match Shared::from_link(link) {
        Ok(shared) => shared,
        Err(error) => {
            let said = words::files::link(&error);
            assert!(said.len() > 20 && said.len() < 400, "{said}");
            return false;
        }
    };
    assert_eq!(
        Shared::from_link(&shared.to_link().expect("what was read is within bounds")).unwrap(),
        shared
    );
    let mut after = here.clone();
    after.take_shared(&shared, Id::new("taken").unwrap());
    let old = after.cars().find(|it| it.id == here.here.id).expect("no car is lost");
    assert_eq!(
        (&old.car, &old.hardware, &old.log),
        (&here.here.car, &here.here.hardware, &here.here.log)
    );
    assert_eq!(after.settings, here.settings);
    if shared.kind() != Kind::Fill {
        assert_eq!(old.fill, here.here.fill);
    }
    if shared.kind() != Kind::Trip {
        assert_eq!(old.route, here.here.route);
    }
    assert_eq!(&Document::from_json(&after.to_json().unwrap()).unwrap(), &after);
    compute(&after);
    let mut back = after.clone();
    back.take_back(here, &after);
    // Numbers that were given once are not given again.
    back.here.last_id = here.here.last_id;
    assert!((&back.here, &back.settings) == (&here.here, &here.settings), "it cannot be undone");
    true
}

/// Works out all that is shown of a document.
fn compute(document: &Document) {
    let printer = document.settings.printer(DecimalMark::Comma);
    let history = History::of(&LogReading::of(&document.here, &printer));
    let estimate = history.estimate();
    let fill = interpret(document, history.estimator.as_ref(), &printer);
    if let Some(asked) = fill.asked {
        let answer = FillAnswer::of(asked);
        assert!(answer.blend.is_none_or(|it| it.share.expected().percent() <= 100.0));
    }
    drop(TripReading::of(document, estimate.as_ref(), &printer));
    let hardware = HardwareReading::of(document, estimate.map(|it| it.content()), &printer);
    drop(HardwareAnswer::of(&hardware));
}

#[test]
fn harmful_links_are_refused_or_read_and_change_nothing_else() {
    let here = logged();
    let (mut read, mut refused) = (0, 0);
    let mut count = |is_read: bool| if is_read { read += 1 } else { refused += 1 };
    for shared in of_the_example() {
        let json = shared.document().to_json().unwrap();
        let own = shared.to_link().unwrap();
        for text in harmed(&json) {
            count(meets(&here, &link_around(&own[..2], text.as_bytes())));
        }
        for tag in ["f1", "c1", "t1", "f2", "x1", ""] {
            count(meets(&here, &link_around(tag, json.as_bytes())));
        }
    }
    assert!(read + refused >= 500, "{read} read, {refused} refused");
    assert!(read > 100 && refused > 100, "{read} read, {refused} refused");
}

#[test]
fn ruined_links_are_refused() {
    let here = logged();
    let mut chance = ChaCha8Rng::seed_from_u64(20_261_126);
    let mut below = |limit: usize| chance.next_u32() as usize % limit.max(1);
    for shared in of_the_example() {
        let link = shared.to_link().unwrap();
        for _ in 0..200 {
            let mut bytes = link.clone().into_bytes();
            let at = 3 + below(bytes.len() - 3);
            match below(4) {
                // Within the letters of the form, so that only the checksum tells.
                0 => {
                    let letters = b"ABCDEFGHIJabcdefghij0123456789-_";
                    let new = letters[below(letters.len())];
                    if new == bytes[at] {
                        continue;
                    }
                    bytes[at] = new;
                }
                1 => bytes.truncate(at),
                2 => bytes.swap(3, at),
                _ => bytes[at] ^= 1 << below(7),
            }
            let Ok(ruined) = String::from_utf8(bytes) else { continue };
            // The bits between a packed text's end and its checksum say nothing.
            let is_same = Shared::from_link(&ruined).is_ok_and(|it| it == shared);
            if ruined != link && !is_same {
                assert!(!meets(&here, &ruined), "{ruined} was read");
            }
        }
    }
}

#[test]
fn ruined_documents_in_whole_links_do_no_harm() {
    let here = logged();
    let mut chance = ChaCha8Rng::seed_from_u64(7);
    let mut read = 0;
    for shared in of_the_example() {
        let json = shared.document().to_json().unwrap();
        let tag = &shared.to_link().unwrap()[..2];
        for _ in 0..100 {
            read += usize::from(meets(&here, &link_around(tag, &ruined(&json, &mut chance))));
        }
    }
    assert!((10..290).contains(&read), "{read} were read");
}

#[test]
fn harmful_files_are_refused_or_read() {
    let here = logged();
    let json = here.to_json().unwrap();
    let mut refused = 0;
    for text in harmed(&json) {
        let Ok(other) = Document::from_json(&text) else {
            refused += 1;
            continue;
        };
        assert_eq!(&Document::from_json(&other.to_json().unwrap()).unwrap(), &other);
        compute(&other);
        let mut merged = here.clone();
        merged.merge(other);
        let car = merged.cars().find(|car| car.id == here.here.id).expect("no car is lost");
        for event in here.here.log.all() {
            let kept = car.log.find(&event.id).expect("no entry is lost");
            assert!(kept == event || kept.holds_against(event));
        }
        // A number for something new can still be given.
        merged.here.next_id();
    }
    assert!((50..150).contains(&refused), "{refused} were refused");
}
