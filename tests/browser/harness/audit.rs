//! Checks that hold for every state of every view.

use std::env;
use std::path::PathBuf;

use serde_json::{Value, json};
use thirtyfour::BrowserLogEntry;

use super::page::{Page, done};

impl Page {
    /// The browser console since the last look at it, worst and least alike.
    #[track_caller]
    pub(crate) fn console(&self) -> impl Future<Output = Vec<BrowserLogEntry>> {
        self.note_step();
        async move { done(self.driver.get_log("browser").await, "reading the console") }
    }

    /// Fails if the console holds a warning or an error, or if the server was
    /// asked for something it does not have.
    #[track_caller]
    pub(crate) fn assert_quiet(&self) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let mut noise: Vec<String> = self
                .console()
                .await
                .into_iter()
                .filter(|entry| matches!(entry.level.as_str(), "WARNING" | "SEVERE"))
                .map(|entry| format!("{}: {}", entry.level, entry.message))
                .collect();
            noise.extend(
                self.server().requests().into_iter().filter(|request| request.status >= 400).map(
                    |request| format!("{} {} -> {}", request.method, request.path, request.status),
                ),
            );
            assert!(noise.is_empty(), "the page is not quiet:\n{}", noise.join("\n"));
        }
    }

    /// Fails if the page has sent a request anywhere but to its own place on its
    /// own server.
    #[track_caller]
    pub(crate) fn assert_own_origin_only(&self) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let base = self.server().base();
            let log = done(self.driver.get_log("performance").await, "reading the requests");
            let sent: Vec<String> =
                log.iter().filter_map(|entry| requested(&entry.message)).collect();
            // Data and blobs are in the page already.
            let own = [base, "data:", "blob:http://127.0.0.1:", "about:"];
            let foreign: Vec<&String> = sent
                .iter()
                .filter(|address| !own.iter().any(|own| address.starts_with(own)))
                .collect();
            assert!(foreign.is_empty(), "the page reaches beyond {base}: {foreign:#?}");
        }
    }

    /// Runs axe-core on the page as it is, and fails with what it objects to.
    ///
    /// Beside its usual rules it applies two that are off by default but that a
    /// screen in the sun and a gloved finger need: contrast of 7:1, and targets of
    /// at least 24 pixels.
    #[track_caller]
    pub(crate) fn axe(&self) -> impl Future<Output = ()> {
        const RUN: &str = "
            const done = arguments[arguments.length - 1];
            axe.run(document, arguments[0]).then(
                result => done(result.violations.map(violation => ({
                    rule: violation.id,
                    impact: violation.impact,
                    help: violation.help,
                    nodes: violation.nodes.map(node => ({
                        html: node.html,
                        summary: node.failureSummary,
                    })),
                }))),
                error => done(String(error)),
            );";
        self.note_step();
        async move {
            let source = axe_source();
            done(self.driver.execute(source, vec![]).await, "loading axe-core");
            let options = json!({
                "resultTypes": ["violations"],
                "rules": {
                    "color-contrast-enhanced": { "enabled": true },
                    "target-size": { "enabled": true },
                },
            });
            let found = done(self.driver.execute_async(RUN, vec![options]).await, "running axe");
            match found.json() {
                Value::Array(violations) => assert!(
                    violations.is_empty(),
                    "axe objects to the page:\n{}",
                    violations.iter().map(readable).collect::<Vec<_>>().join("\n")
                ),
                error => panic!("axe failed: {error}"),
            }
        }
    }

    /// What makes the page wider than its viewport.
    #[track_caller]
    pub(crate) fn sticking_out(&self) -> impl Future<Output = Value> {
        const WIDEST: &str = "
            const root = document.documentElement;
            if (root.scrollWidth <= root.clientWidth) return [];
            return [...document.querySelectorAll('body *')]
                .filter(element => element.getBoundingClientRect().right > root.clientWidth + 0.5)
                .map(element => element.cloneNode(false).outerHTML)
                .concat(`${root.scrollWidth} px wide in ${root.clientWidth} px`);";
        self.note_step();
        async move { self.script(WIDEST, vec![]).await }
    }

    /// Fails if the page is wider than its viewport.
    #[track_caller]
    pub(crate) fn no_horizontal_scroll(&self) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            assert_eq!(self.sticking_out().await, json!([]), "the page scrolls sideways");
        }
    }
}

impl Page {
    /// Fails if anything in sight that a finger has to hit is lower than this many
    /// pixels. What a label belongs to is hit by its label.
    #[track_caller]
    pub(crate) fn targets_at_least(&self, height: u32) -> impl Future<Output = ()> {
        const TOO_LOW: &str = "
            const targets = 'button, nav a, input, select, summary';
            const hit = element =>
                element.matches('[type=radio], [type=checkbox]') && element.closest('label')
                || element;
            return [...document.querySelectorAll(targets)]
                .filter(element => element.checkVisibility())
                .map(element => [hit(element).getBoundingClientRect().height, element])
                .filter(([height]) => height < arguments[0])
                .map(([height, element]) => `${height} px: ${element.outerHTML.slice(0, 160)}`);";
        self.note_step();
        async move {
            let too_low = self.script(TOO_LOW, vec![height.into()]).await;
            assert_eq!(too_low, json!([]), "some targets are lower than {height} px");
        }
    }
}

/// The address in an entry of the performance log that tells of a request.
fn requested(entry: &str) -> Option<String> {
    let entry: Value = serde_json::from_str(entry).ok()?;
    let message = &entry["message"];
    let address = match message["method"].as_str()? {
        "Network.requestWillBeSent" => &message["params"]["request"]["url"],
        "Network.webSocketCreated" | "Network.webTransportCreated" => &message["params"]["url"],
        _ => return None,
    };
    address.as_str().map(str::to_owned)
}

fn readable(violation: &Value) -> String {
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let nodes = violation["nodes"].as_array().into_iter().flatten().map(|node| {
        let summary = text(&node["summary"]).replace('\n', "\n    ");
        format!("  {}\n    {summary}", text(&node["html"]))
    });
    let rule = format!(
        "\n{} ({}): {}",
        text(&violation["rule"]),
        text(&violation["impact"]),
        text(&violation["help"])
    );
    std::iter::once(rule).chain(nodes).collect::<Vec<_>>().join("\n")
}

/// axe-core where `tools/setup --browser` puts it, or where `AXE_CORE` says.
fn axe_source() -> String {
    let path = env::var_os("AXE_CORE").map_or_else(
        || {
            PathBuf::from(env!("CARGO_MANIFEST_DIR"))
                .join(".tools/npm/browser/node_modules/axe-core/axe.min.js")
        },
        PathBuf::from,
    );
    std::fs::read_to_string(&path)
        .unwrap_or_else(|error| panic!("{}: {error}; run tools/setup --browser", path.display()))
}
