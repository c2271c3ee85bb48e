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
const ALLOWED: &[(&str, &str, &str)] = &[];

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
        || words.iter().any(|it| is_capital(it))
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
