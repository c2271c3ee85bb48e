//! What the HTML checker says of pages.

use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

use super::chromium::program;

/// Checks all pages of a directory, and returns what is wrong with them.
pub(crate) fn wrong_markup(directory: &Path) -> Vec<String> {
    let java = program("JAVA", &["java"]);
    let checker = Command::new(&java)
        .arg("-jar")
        .arg(checker())
        .args(["--errors-only", "--format", "json", "--exit-zero-always"])
        .arg(directory)
        .output()
        .unwrap_or_else(|error| panic!("cannot start {}: {error}", java.display()));
    // It tells on the channel for errors.
    let told = String::from_utf8_lossy(&checker.stderr);
    let told: Value =
        serde_json::from_str(&told).unwrap_or_else(|error| panic!("{error}; it said:\n{told}"));
    let messages = told["messages"].as_array().expect("messages");
    messages.iter().map(readable).collect()
}

fn readable(message: &Value) -> String {
    let text = |key: &str| message[key].as_str().unwrap_or_default().to_owned();
    let page = text("url").rsplit('/').next().unwrap_or_default().to_owned();
    format!("{page}: {}\n    {}", text("message"), text("extract").replace('\n', " "))
}

/// The checker where `tools/setup --browser` puts it, or where `VNU_JAR` says.
fn checker() -> PathBuf {
    let path = env::var_os("VNU_JAR").map_or_else(
        || {
            Path::new(env!("CARGO_MANIFEST_DIR"))
                .join(".tools/npm/browser/node_modules/vnu-jar/build/dist/vnu.jar")
        },
        PathBuf::from,
    );
    assert!(path.is_file(), "{} is missing; run tools/setup --browser", path.display());
    path
}
