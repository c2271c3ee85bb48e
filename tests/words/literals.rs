//! No text that a person reads stands in the program: each literal that looks like words
//! is one of those named here, with the reason why it is no message.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::str::FromStr;

use proc_macro2::{Delimiter, Group, LineColumn, TokenStream, TokenTree};

/// A literal, and where it stands.
#[derive(Debug)]
struct Literal {
    file: String,
    at: LineColumn,
    text: String,
}

/// What of a file may look like words without being read by a person as ours, and why.
const ALLOWED: &[(&str, &str, &str)] = &[
    ("answers/fill/workings/distance.rs", "per 100 km", "a unit"),
    ("answers/fill/workings/distance.rs", "per L", "a unit"),
    ("methods/fuel.rs", "per L", "a unit"),
    ("methods/", "L/100 km", "a unit"),
    ("methods/car.rs", "Hz", "a unit"),
    ("tank/figures.rs", "Hz", "a unit"),
    ("hardware/constants.rs", "mPa s", "a unit"),
    ("answers/hardware/curves.rs", "lb ft", "a unit"),
    ("answers/hardware/parts/plungers.rs", "{:.0} MPa", "a figure with its unit"),
    ("document/fuel.rs", "{} AKI", "a figure with its scale, as it is typed"),
    ("document/demo/mod.rs", "84 Hz", "a figure with its unit"),
    ("quantity/notation/printer/", "", "figures with their units"),
    ("quantity/notation/quantities/", "", "spellings of units that are read, and their symbols"),
    ("quantity/notation/comparable.rs", "", "spellings that are read"),
    ("quantity/notation/money.rs", "per ", "a spelling that is read"),
    ("quantity/notation/share_band.rs", " to ", "a spelling that is read"),
    ("quantity/notation/volume.rs", "the ", "a spelling that is read"),
    ("quantity/notation/volume.rs", "of ", "a spelling that is read"),
    ("quantity/notation/field.rs", "QuantityField", "for developers"),
    ("quantity/notation/unit.rs", "Unit", "for developers"),
    ("message/language.rs", "Language", "for developers"),
    ("document/tanks.rs", ", to be changed.", "a part of the documentation"),
    ("answers/tank/workings.rs", "ABNT NBR 13992:1997", "a standard"),
    ("power/correction.rs", "", "standards"),
    ("fuel/grades/", "", "standards, and grades as the pump names them"),
    ("fuel/expansion.rs", "", "a publication"),
    ("tank/mod.rs", "", "a publication"),
    (
        "document/csv.rs",
        "",
        "a format: columns and kinds of entries have one name in every language",
    ),
    ("document/demo/", "", "the figures of a curve, and an id made of its text"),
    ("answers/hardware/workings/parts.rs", "lambda{suffix}", "a symbol"),
    ("app/mod.rs", "Fillwright", "the name of the app"),
    ("app/planning.rs", "the page names no worker", "for developers"),
    ("app/hand_over.rs", "AbortError", "a browser's name for an error"),
    ("app/storage.rs", "QuotaExceededError", "a browser's name for an error"),
    ("app/transfer.rs", "fillwright{what}-{today}.{ending}", "the name of a file"),
    ("app/charts/crosshair.rs", "", "a browser's names for keys"),
    ("app/charts/draw.rs", "hatch bounds", "classes of an element"),
    ("app/charts/draw.rs", " strong", "classes of an element"),
    ("app/charts/draw.rs", "{part} look{}{strong}", "classes of an element"),
    ("app/charts/draw.rs", "glyph fill", "classes of an element"),
    ("app/charts/draw.rs", "glyph level", "classes of an element"),
    ("app/charts/draw.rs", "name bounds", "classes of an element"),
    ("app/charts/draw.rs", "name strong", "classes of an element"),
    ("app/charts/draw.rs", "end strong", "classes of an element"),
    ("app/charts/draw.rs", "l5 8h-10z", "a path"),
    ("app/charts/draw.rs", "m0-7l6.5 11h-13z", "a path"),
    ("app/charts/draw.rs", "m0-6.5l6.5 6.5l-6.5 6.5l-6.5-6.5z", "a path"),
    ("app/charts/draw.rs", "h8m-4 0V", "a path"),
    ("app/charts/glass.rs", "rotate(45) scale(0.4)", "a transformation"),
    ("app/charts/svg.rs", "rotate({degrees})", "a transformation"),
    ("app/charts/stage.rs", "100% 0px", "a margin"),
    ("app/widgets/verdict.rs", "M5 7h6v2h-6z", "a path"),
    ("app/views/car.rs", "short stale always", "classes of an element"),
    ("app/views/car.rs", "short open always", "classes of an element"),
    ("app/views/fill/poured.rs", "outcome missed", "classes of an element"),
    ("app/views/hardware/judgement.rs", " stale-answer", "classes of an element"),
    ("app/views/hardware/judgement.rs", "judgement {}{stale}", "classes of an element"),
    ("app/views/hardware/judgement.rs", "word long", "classes of an element"),
    ("app/views/methods/constants.rs", "readings cites", "classes of an element"),
    ("app/views/trip/answer.rs", "card stale-answer", "classes of an element"),
    ("app/views/trip/answer.rs", "judgement stale-answer", "classes of an element"),
    ("app/views/trip/legs.rs", "readings passages", "classes of an element"),
    ("app/widgets/bar.rs", "short {}", "classes of an element"),
    ("app/widgets/below.rs", "field wrong", "classes of an element"),
    ("app/widgets/button.rs", "button {look}", "classes of an element"),
    ("app/widgets/error_summary.rs", "note caution to-mend", "classes of an element"),
    ("app/widgets/error_summary.rs", "note to-mend", "classes of an element"),
];

/// Macros whose texts only a developer sees.
const FOR_DEVELOPERS: [&str; 9] = [
    "panic",
    "unreachable",
    "assert",
    "assert_eq",
    "assert_ne",
    "debug_assert",
    "debug_assert_eq",
    "include_str",
    "concat",
];

/// Attributes of elements whose values are names for the page's own use.
const NAMES_OF_ELEMENTS: [&str; 14] = [
    "class",
    "id",
    "role",
    "name",
    "type",
    "href",
    "rel",
    "aria-labelledby",
    "aria-describedby",
    "viewBox",
    "d",
    "style",
    "look",
    "transform",
];

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            files.extend(rust_files(&path));
        } else if path.extension().is_some_and(|it| it == "rs") {
            files.push(path);
        }
    }
    files.sort();
    files
}

/// Two words beside each other, or one with a capital letter, or one inside a pattern.
fn looks_like_words(text: &str) -> bool {
    let letters = |word: &str| word.chars().filter(|it| it.is_alphabetic()).count();
    // What is put in is no word of this text, and parts it like a blank.
    let parts = text.split('{').map(|it| it.split_once('}').map_or(it, |(_, after)| after));
    let has_gaps = text.contains('{');
    let words: Vec<&str> = parts
        .flat_map(str::split_whitespace)
        .filter(|it| {
            letters(it) >= 2
                && !it.starts_with(['-', '.'])
                && !it.ends_with('-')
                && !it.contains(['_', ':', '=', '/', '<', '#', '*', '^'])
        })
        .collect();
    let is_capital = |word: &&str| {
        let mut letters = word.trim_start_matches(|it: char| !it.is_alphabetic()).chars();
        letters.next().is_some_and(char::is_uppercase)
            && letters.next().is_some_and(char::is_lowercase)
    };
    words.len() >= 2
        || words.iter().any(is_capital)
        || (!words.is_empty() && (has_gaps || text.contains(' ')))
}

fn is_test(attribute: &Group) -> bool {
    let text = attribute.to_string().replace(' ', "");
    text.contains("cfg(test)") || text == "[test]"
}

/// The literals of a stream outside of tests and of what only developers see.
fn literals(stream: TokenStream, file: &str, found: &mut Vec<Literal>) {
    let tokens: Vec<TokenTree> = stream.into_iter().collect();
    let mut at = 0;
    // Whether what follows is a test, up to the end of that item.
    let mut skips = false;
    while at < tokens.len() {
        let before = |steps: usize| at.checked_sub(steps).map(|it| tokens[it].to_string());
        match &tokens[at] {
            TokenTree::Punct(mark) if mark.as_char() == '#' => {
                let next = tokens.get(at + 1);
                if let Some(TokenTree::Group(group)) = next
                    && group.delimiter() == Delimiter::Bracket
                {
                    skips |= is_test(group);
                    at += 1;
                } else if let (Some(TokenTree::Punct(_)), Some(TokenTree::Group(_))) =
                    (next, tokens.get(at + 2))
                {
                    at += 2;
                }
            }
            TokenTree::Punct(mark) if mark.as_char() == ';' => skips = false,
            TokenTree::Group(group) => {
                let is_body = group.delimiter() == Delimiter::Brace;
                let of_macro = before(1).as_deref() == Some("!")
                    && before(2).is_some_and(|it| FOR_DEVELOPERS.contains(&it.as_str()));
                let of_expect = before(1).as_deref() == Some("expect");
                if !(skips || of_macro || of_expect) {
                    literals(group.stream(), file, found);
                }
                if is_body {
                    skips = false;
                }
            }
            TokenTree::Literal(literal) if !skips => {
                let code = literal.to_string();
                if code.starts_with('"') || code.starts_with("r\"") || code.starts_with("r#") {
                    let is_name = before(1).as_deref() == Some("=")
                        && NAMES_OF_ELEMENTS.contains(&attribute(&tokens, at).as_str());
                    let text = syn::parse_str::<syn::LitStr>(&code).expect("a text").value();
                    if !is_name && looks_like_words(&text) {
                        let at = literal.span().start();
                        found.push(Literal { file: file.to_owned(), at, text });
                    }
                }
            }
            _ => {}
        }
        at += 1;
    }
}

/// The name before `="…"`, as `aria-labelledby`.
fn attribute(tokens: &[TokenTree], literal: usize) -> String {
    let mut name = String::new();
    for token in tokens[..literal.saturating_sub(1)].iter().rev() {
        match token {
            TokenTree::Ident(part) if name.is_empty() || name.starts_with('-') => {
                name = format!("{part}{name}");
            }
            TokenTree::Punct(mark) if mark.as_char() == '-' && !name.is_empty() => {
                name = format!("-{name}");
            }
            _ => break,
        }
    }
    name
}

#[test]
fn no_sentence_stands_in_the_program() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut found = Vec::new();
    for path in rust_files(&root) {
        let file = path.strip_prefix(&root).expect("below it").to_string_lossy().into_owned();
        let is_of_tests = file.ends_with("tests.rs");
        let text = fs::read_to_string(&path).expect("it is read");
        if !is_of_tests {
            literals(TokenStream::from_str(&text).expect("it is Rust"), &file, &mut found);
        }
    }
    let mut unused: BTreeSet<usize> = (0..ALLOWED.len()).collect();
    let left: Vec<String> = found
        .iter()
        .filter(|it| {
            let allowed = ALLOWED.iter().position(|(file, text, _)| {
                it.file.starts_with(file) && (text.is_empty() || it.text == *text)
            });
            if let Some(allowed) = allowed {
                unused.remove(&allowed);
            }
            allowed.is_none()
        })
        .map(|it| format!("src/{}:{}: {:?}", it.file, it.at.line, it.text))
        .collect();
    assert!(left.is_empty(), "{} texts:\n{}", left.len(), left.join("\n"));
    assert!(unused.is_empty(), "allowed, yet not there: {unused:?}");
}

#[test]
fn what_looks_like_words_is_told_from_names() {
    for text in ["Fill", "In the tank", "{} of {}", "at {}", " and "] {
        assert!(looks_like_words(text), "{text}");
    }
    for text in ["fill", "kg/m³", "x_a", "fuel-level", "{}-{}", "12.5", "L", "{value} {}"] {
        assert!(!looks_like_words(text), "{text}");
    }
}
