//! The build step for messages: the files of each language under `src/words/` become one
//! text that the page reads, and the keys of the first language become Rust names.

#![allow(clippy::expect_used, reason = "a build step can only stop, and says why")]
#![allow(clippy::print_stdout, reason = "this is how it speaks to Cargo")]

mod compile;
mod encode;
mod generate;
mod pseudo;

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};

use compile::Catalogue;

/// The language in which every message is first written.
const FIRST: &str = "en";

/// The tag that CLDR gives to a pseudo-language of accented letters.
const PSEUDO: &str = "en-XA";

fn main() {
    let root = PathBuf::from(std::env::var("CARGO_MANIFEST_DIR").expect("Cargo says where it is"));
    let out = PathBuf::from(std::env::var("OUT_DIR").expect("Cargo says where to write"));
    let words = root.join("src/words");
    println!("cargo::rerun-if-changed=src/words");
    println!("cargo::rerun-if-changed=tools/words");
    if let Err(why) = build(&words, &out) {
        eprintln!("{why}");
        std::process::exit(1);
    }
}

fn build(words: &Path, out: &Path) -> Result<(), String> {
    remove_older(out)?;
    let first = read(&words.join(FIRST))?;
    let keys = first.keys();
    let mut languages = Vec::new();
    // The first one goes into the program, and the pseudo-language with no page: nothing
    // keeps them by their names.
    let pseudo = pseudo::of(first.clone());
    for (tag, language) in [(FIRST, &first), (PSEUDO, &pseudo)] {
        let file = format!("{tag}.words");
        write(&out.join(&file), &encode::encode(language, &keys)?)?;
        languages.push((tag.to_owned(), file));
    }
    for name in folders(words)?.into_iter().filter(|it| it != FIRST) {
        let language = read(&words.join(&name))?;
        language.must_match(&first).map_err(|why| format!("{name}: {why}"))?;
        let text = encode::encode(&language, &keys)?;
        let file = format!("{name}-{:016x}.words", checksum(&text));
        write(&out.join(&file), &text)?;
        languages.push((name, file));
    }
    write(&out.join("messages.rs"), &generate::rust(&keys, &languages))
}

/// Removes what an earlier build wrote: whatever lies there goes with the page.
fn remove_older(out: &Path) -> Result<(), String> {
    for entry in fs::read_dir(out).map_err(|why| why.to_string())?.filter_map(Result::ok) {
        let path = entry.path();
        if path.extension().is_some_and(|it| it == "words") {
            fs::remove_file(&path).map_err(|why| format!("{}: {why}", path.display()))?;
        }
    }
    Ok(())
}

/// The messages in a folder, by file.
fn read(folder: &Path) -> Result<Catalogue, String> {
    let mut catalogue = Catalogue::default();
    let mut files: Vec<PathBuf> = fs::read_dir(folder)
        .map_err(|why| format!("{}: {why}", folder.display()))?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|it| it == "ftl"))
        .collect();
    files.sort();
    for path in files {
        let text = fs::read_to_string(&path).map_err(|why| format!("{}: {why}", path.display()))?;
        let stem = path.file_stem().and_then(|it| it.to_str()).unwrap_or_default();
        catalogue.add(stem, text).map_err(|why| format!("{}: {why}", path.display()))?;
    }
    catalogue.resolve()
}

fn folders(words: &Path) -> Result<Vec<String>, String> {
    let entries = fs::read_dir(words).map_err(|why| why.to_string())?;
    let mut names: Vec<String> = entries
        .filter_map(|entry| {
            let path = entry.ok()?.path();
            let has_messages = fs::read_dir(&path)
                .ok()?
                .filter_map(Result::ok)
                .any(|it| it.path().extension().is_some_and(|it| it == "ftl"));
            has_messages.then(|| path.file_name()?.to_str().map(str::to_owned)).flatten()
        })
        .collect();
    names.sort();
    Ok(names)
}

/// A page never gets the words of another build than its own: messages are known by their
/// place, which another build may give to another one.
fn checksum(text: &str) -> u64 {
    let mut hasher = DefaultHasher::new();
    text.hash(&mut hasher);
    hasher.finish()
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    fs::write(path, text).map_err(|why| format!("{}: {why}", path.display()))
}
