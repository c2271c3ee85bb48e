//! Further builds of the app, as a host would get them one after the other.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::atomic::{AtomicU32, Ordering};

use serde_json::Value;

use crate::harness::{Page, Server};

/// By what a test tells builds apart: one mark in the page, one in a style sheet that
/// comes with it, one in the app's script and its WASM, and one in the worker that is
/// loaded late.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Marks {
    pub(crate) page: String,
    pub(crate) style: String,
    pub(crate) app: String,
    pub(crate) worker: String,
}

/// The mark of a worker that the page has not asked for yet.
pub(crate) const NOT_LOADED: &str = "not loaded";

impl Marks {
    /// Of the release build.
    pub(crate) fn original() -> Self {
        Self::of("")
    }

    /// Of a build with this mark.
    pub(crate) fn of(mark: &str) -> Self {
        Self {
            page: mark.to_owned(),
            style: mark.to_owned(),
            app: mark.to_owned(),
            worker: mark.to_owned(),
        }
    }

    /// As long as the Trip view was not opened.
    pub(crate) fn without_worker(self) -> Self {
        Self { worker: NOT_LOADED.to_owned(), ..self }
    }

    /// Of what runs in the page now.
    pub(crate) async fn in_use(page: &Page) -> Self {
        const READ: &str = "
            const loaded = performance.getEntriesByType('resource').map(({ name }) => name);
            const worker = loaded.find(name => name.includes('_loader.js'));
            const mark = worker?.match(/planner-(later\\w*)_loader/)?.[1] ?? '';
            const parts = loaded.map(name => name.match(/\\/app-(.*?)(_bg\\.wasm|\\.js)$/)).filter(Boolean);
            const of = end => parts.filter(it => it[2] === end).map(it => it[1].match(/^later.*/)?.[0] ?? '');
            const [script, wasm] = [of('.js'), of('_bg.wasm')].map(it => [...new Set(it)].join(' and '));
            return [
                document.title.replace('Fillwright', '').trim(),
                getComputedStyle(document.documentElement).getPropertyValue('--build').trim(),
                script === wasm ? script : `${script} with ${wasm}`,
                worker ? mark : arguments[0],
            ];";
        let read = page.script(READ, vec![NOT_LOADED.into()]).await;
        let text = |at: usize| match &read[at] {
            Value::String(text) => text.clone(),
            other => panic!("expected a mark, not {other}"),
        };
        Self { page: text(0), style: text(1), app: text(2), worker: text(3) }
    }
}

/// A build that differs from the release build in its page, a style sheet, the app
/// itself and the worker: each has this mark, which begins with `later`.
pub(crate) fn build(mark: &str) -> PathBuf {
    static MADE: AtomicU32 = AtomicU32::new(0);
    let number = MADE.fetch_add(1, Ordering::Relaxed);
    let root = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join(format!("{}-{number}-build-{mark}", std::process::id()));
    copy(&Server::build(), &root);

    let style = renamed(&root, "style-", ".css", &format!("style-{mark}.css"));
    append(&root.join(&style.1), &format!(":root {{ --build: {mark} }}"));
    let worker = renamed(&root, "planner-", "_loader.js", &format!("planner-{mark}_loader.js"));
    append(&root.join(&worker.1), &format!("\n// {mark}"));
    let wasm = renamed(&root, "app-", "_bg.wasm", &format!("app-{mark}_bg.wasm"));
    let mut module = fs::read(root.join(&wasm.1)).expect("a module");
    module.extend(custom_section(mark));
    fs::write(root.join(&wasm.1), module).expect("room for it");
    let script = renamed(&root, "app-", ".js", &format!("app-{mark}.js"));
    append(&root.join(&script.1), &format!("\n// {mark}"));
    let file = root.join("index.html");
    let mut page = fs::read_to_string(&file).expect("a page");
    let title = ("<title>Fillwright".to_owned(), format!("<title>Fillwright {mark}"));
    for (from, to) in [style, worker, wasm, script, title] {
        assert!(page.contains(&from), "{from:?} is not in the page");
        page = page.replace(&from, &to);
    }
    // The policy and the checksums in it are those of the release build, and hold there in
    // every test.
    let policy = page.find("<meta http-equiv=Content-Security-Policy").expect("a policy");
    let length = page[policy..].find('>').expect("its end");
    page.replace_range(policy..=policy + length, "");
    while let Some(start) = page.find("integrity=") {
        let length = page[start..].find(' ').expect("another attribute");
        page.replace_range(start..=start + length, "");
    }
    fs::write(&file, page).expect("a place for the page");

    let listed = Command::new("node")
        .arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("tools/precache.mjs"))
        .arg(&root)
        .status();
    assert!(listed.expect("node on the path").success(), "the files cannot be listed");
    root
}

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a directory");
    for entry in fs::read_dir(from).expect("a build") {
        let entry = entry.expect("a readable directory");
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), target).expect("room for a copy");
        }
    }
}

/// What a WASM module may hold without being another program: a custom section (WebAssembly
/// Core Specification 2.0, 5.5.3) of this name and nothing in it.
fn custom_section(name: &str) -> Vec<u8> {
    let length = u8::try_from(name.len()).expect("a short name");
    [&[0, length + 1, length], name.as_bytes()].concat()
}

/// Renames the one file whose name begins and ends so, and says from what to what.
fn renamed(root: &Path, start: &str, end: &str, name: &str) -> (String, String) {
    let files = fs::read_dir(root).expect("a build").filter_map(Result::ok);
    let names = files.filter_map(|it| it.file_name().into_string().ok());
    let found: Vec<String> =
        names.filter(|it| it.starts_with(start) && it.ends_with(end)).collect();
    let [before] = found.as_slice() else { panic!("{start:?} begins {found:?}") };
    fs::rename(root.join(before), root.join(name)).expect("another name");
    (before.clone(), name.to_owned())
}

fn append(file: &Path, text: &str) {
    let before = fs::read_to_string(file).expect("a text");
    fs::write(file, before + text).expect("room for it");
}
