//! The page as a user has it: found by role and name, acted on with real keys.

use std::cell::Cell;
use std::fmt;
use std::panic::Location;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use thirtyfour::TypingData;
use thirtyfour::prelude::*;

use super::chromium::ChromeDriver;
use super::server::Server;

/// How long anything may take to appear.
const PATIENCE: Duration = Duration::from_secs(10);
/// Joins a number to its unit.
const NARROW_SPACE: char = '\u{202f}';
const BETWEEN_LOOKS: Duration = Duration::from_millis(25);

/// Roles of the things that carry a label and take a value.
const FIELD_ROLES: [&str; 10] = [
    "textbox",
    "searchbox",
    "spinbutton",
    "combobox",
    "listbox",
    "checkbox",
    "radio",
    "switch",
    "slider",
    "radiogroup",
];

/// A browser showing the app. Methods panic when they cannot do as told.
pub(crate) struct Page {
    pub(super) driver: WebDriver,
    pub(super) server: Server,
    step: Cell<Option<&'static Location<'static>>>,
}

/// The colour scheme that the user's system prefers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Scheme {
    Light,
    Dark,
}

/// A thing on the page as assistive technology is told of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Accessible {
    pub(crate) role: String,
    pub(crate) name: String,
    node: i64,
}

/// A part of the page, such as the group of one fuel's fields: what is looked for
/// is looked for inside of it. It is found anew each time, so it may come later.
pub(crate) struct Part<'a> {
    page: &'a Page,
    place: Place,
}

/// Role and accessible name of a part.
struct Place {
    role: String,
    name: String,
}

impl fmt::Display for Accessible {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {:?}", self.role, self.name)
    }
}

impl Page {
    pub(super) async fn in_new_browser(chromedriver: &ChromeDriver, server: Server) -> Self {
        let driver = chromedriver.browser().await;
        // The browser comes up with a page of its own. What that asks for and says
        // is none of the app's doing: leave it, and empty both logs.
        done(driver.goto("about:blank").await, "leaving the browser's first page");
        for log in ["browser", "performance"] {
            done(driver.get_log(log).await, "emptying a log");
        }
        Self { driver, server, step: Cell::new(None) }
    }

    // --- Going places ---------------------------------------------------------

    /// Goes to the app with the given hash (`""` or `"#fill"`) and waits until it
    /// has drawn its `main` region.
    #[track_caller]
    pub(crate) fn open(&self, hash: &str) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let address = format!("{}{hash}", self.server.base());
            done(self.driver.goto(address).await, "going to the page");
            self.drawn().await;
        }
    }

    /// Loads the page anew, with what it has stored.
    #[track_caller]
    pub(crate) fn reload(&self) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            done(self.driver.refresh().await, "reloading the page");
            self.drawn().await;
        }
    }

    /// Goes back in the history, as with the browser's button.
    #[track_caller]
    pub(crate) fn back(&self) -> impl Future<Output = ()> {
        self.note_step();
        async move { done(self.driver.back().await, "going back") }
    }

    /// Goes forward again.
    #[track_caller]
    pub(crate) fn forward(&self) -> impl Future<Output = ()> {
        self.note_step();
        async move { done(self.driver.forward().await, "going forward") }
    }

    /// The address after the page's own, `"#fill"` for instance.
    #[track_caller]
    pub(crate) fn hash(&self) -> impl Future<Output = String> {
        self.note_step();
        async move { string(self.script("return location.hash", vec![]).await) }
    }

    // --- Finding ----------------------------------------------------------------

    /// The one thing of an ARIA role and accessible name, as in
    /// `find("button", "Add one")`. An empty name matches any.
    #[track_caller]
    pub(crate) fn find(&self, role: &str, name: &str) -> impl Future<Output = WebElement> {
        self.note_step();
        async move {
            let name = Some(name).filter(|name| !name.is_empty());
            self.single(None, |node| node.role == role, Some(role), name).await
        }
    }

    /// Of the things of this role and name, in the order of the page, the one at
    /// this place; counted from 0.
    #[track_caller]
    pub(crate) fn nth(
        &self,
        role: &str,
        name: &str,
        place: usize,
    ) -> impl Future<Output = WebElement> {
        self.note_step();
        async move {
            let deadline = Instant::now() + PATIENCE;
            loop {
                let found = self.accessible(None, Some(role), Some(name)).await.unwrap_or_default();
                if let Some(wanted) = found.get(place)
                    && let Ok(element) = self.element(wanted).await
                {
                    return element;
                }
                assert!(
                    Instant::now() < deadline,
                    "there is no {role} {name:?} with {place} before it, but {} in all",
                    found.len()
                );
                tokio::time::sleep(BETWEEN_LOOKS).await;
            }
        }
    }

    /// The one field that carries this label.
    #[track_caller]
    pub(crate) fn field(&self, label: &str) -> impl Future<Output = WebElement> {
        self.note_step();
        async move { self.single(None, is_field, None, Some(label)).await }
    }

    /// The one part of this role and name, to look for things inside of it.
    pub(crate) fn within(&self, role: &str, name: &str) -> Part<'_> {
        Part { page: self, place: Place { role: role.to_owned(), name: name.to_owned() } }
    }

    /// Everything of an ARIA role that is there now, in the order of the page.
    #[track_caller]
    pub(crate) fn all(&self, role: &str) -> impl Future<Output = Vec<Accessible>> {
        self.note_step();
        async move { self.accessible(None, Some(role), None).await.expect("a page to look at") }
    }

    /// Whether such a thing is there now; does not wait.
    #[track_caller]
    pub(crate) fn has(&self, role: &str, name: &str) -> impl Future<Output = bool> {
        self.note_step();
        async move {
            let name = Some(name).filter(|name| !name.is_empty());
            !self.accessible(None, Some(role), name).await.expect("a page to look at").is_empty()
        }
    }

    // --- Reading ----------------------------------------------------------------

    /// The visible text of the one thing of this role and name.
    #[track_caller]
    pub(crate) fn text(&self, role: &str, name: &str) -> impl Future<Output = String> {
        self.note_step();
        async move { done(self.find(role, name).await.text().await, "reading a text") }
    }

    /// What the field with this label holds.
    #[track_caller]
    pub(crate) fn value(&self, label: &str) -> impl Future<Output = String> {
        self.note_step();
        async move { done(self.field(label).await.value().await, "reading a field").unwrap_or_default() }
    }

    /// All visible text of the page.
    #[track_caller]
    pub(crate) fn visible_text(&self) -> impl Future<Output = String> {
        self.note_step();
        async move { string(self.script("return document.body.innerText", vec![]).await) }
    }

    /// The whole page as HTML.
    #[track_caller]
    pub(crate) fn markup(&self) -> impl Future<Output = String> {
        const READ: &str = "return '<!DOCTYPE html>\\n' + document.documentElement.outerHTML";
        self.note_step();
        async move { string(self.script(READ, vec![]).await) }
    }

    // --- Acting -----------------------------------------------------------------

    /// Clicks the one thing of this role and name.
    #[track_caller]
    pub(crate) fn click(&self, role: &str, name: &str) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            click(&self.find(role, name).await, &format!("clicking {role} {name:?}")).await;
        }
    }

    /// Replaces what the field with this label holds, key by key. The field keeps
    /// the focus; press [`Key::Tab`] to leave it.
    #[track_caller]
    pub(crate) fn type_in(&self, label: &str, text: &str) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            replace(&self.field(label).await, label, text).await;
        }
    }

    /// Chooses the option with this text from the list with this label.
    #[track_caller]
    pub(crate) fn choose(&self, label: &str, option: &str) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let list = self.field(label).await;
            let mut offered = Vec::new();
            for entry in done(list.find_all(By::Tag("option")).await, "reading the options") {
                let text = done(entry.text().await, "reading an option");
                if text == option {
                    done(entry.click().await, &format!("choosing {option:?}"));
                    return;
                }
                offered.push(text);
            }
            panic!("{label:?} does not offer {option:?} but {offered:?}");
        }
    }

    // --- The keyboard alone -----------------------------------------------------

    /// Presses keys on whatever has the focus: `press("12")`, `press(Key::Enter)`,
    /// `press(Key::Shift + Key::Tab)`.
    #[track_caller]
    pub(crate) fn press(&self, keys: impl Into<TypingData>) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let focused = done(self.driver.active_element().await, "asking for the focus");
            done(focused.send_keys(keys).await, "pressing keys");
        }
    }

    /// Presses Tab once, on whatever has the focus.
    #[track_caller]
    pub(crate) fn tab(&self) -> impl Future<Output = ()> {
        self.note_step();
        self.press_tab(false)
    }

    /// Keys that are sent to a field for files are taken for their names, but this one goes
    /// to the window.
    async fn press_tab(&self, back: bool) {
        let keys = self.driver.action_chain();
        let keys = if back { keys.key_down(Key::Shift) } else { keys };
        let keys = keys.key_down(Key::Tab).key_up(Key::Tab);
        let keys = if back { keys.key_up(Key::Shift) } else { keys };
        done(keys.perform().await, "pressing Tab");
    }

    /// What has the focus.
    #[track_caller]
    pub(crate) fn focused(&self) -> impl Future<Output = Accessible> {
        self.note_step();
        async move {
            let focused = self.remote("document.activeElement").await;
            let tree = self
                .devtools(
                    "Accessibility.getPartialAXTree",
                    json!({ "objectId": focused, "fetchRelatives": false }),
                )
                .await;
            Accessible::read(&tree["nodes"][0])
        }
    }

    /// Presses Tab until the thing of this role and name has the focus.
    #[track_caller]
    pub(crate) fn tab_to(&self, role: &str, name: &str) -> impl Future<Output = ()> {
        self.note_step();
        self.tabbing_to(false, role, name)
    }

    /// The same backwards, with Shift and Tab.
    #[track_caller]
    pub(crate) fn tab_back_to(&self, role: &str, name: &str) -> impl Future<Output = ()> {
        self.note_step();
        self.tabbing_to(true, role, name)
    }

    fn tabbing_to(&self, back: bool, role: &str, name: &str) -> impl Future<Output = ()> {
        const ENOUGH: usize = 100;
        async move {
            let mut passed = Vec::new();
            while passed.len() < ENOUGH {
                self.press_tab(back).await;
                let focused = self.focused().await;
                if focused.role == role && focused.name == name {
                    return;
                }
                passed.push(focused.to_string());
            }
            passed.dedup();
            panic!("Tab does not lead to {role} {name:?}; it passes {passed:#?}");
        }
    }

    // --- Waiting ------------------------------------------------------------------

    /// Waits until the condition holds; `what` says in a failure what was awaited.
    #[track_caller]
    pub(crate) fn until(
        &self,
        what: &str,
        condition: impl AsyncFn() -> bool,
    ) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let deadline = Instant::now() + PATIENCE;
            while !condition().await {
                assert!(Instant::now() < deadline, "waited in vain for {what}");
                tokio::time::sleep(BETWEEN_LOOKS).await;
            }
        }
    }

    /// Waits until what is read of the page is this.
    #[track_caller]
    pub(crate) fn becomes<T: PartialEq + fmt::Debug>(
        &self,
        expected: T,
        read: impl AsyncFn() -> T,
    ) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let deadline = Instant::now() + PATIENCE;
            loop {
                let found = read().await;
                if found == expected {
                    return;
                }
                assert!(
                    Instant::now() < deadline,
                    "waited in vain for\n{expected:#?}\nthere is\n{found:#?}"
                );
                tokio::time::sleep(BETWEEN_LOOKS).await;
            }
        }
    }

    /// Waits until the page shows this text. Spaces of any width are alike.
    #[track_caller]
    pub(crate) fn sees(&self, text: &str) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let deadline = Instant::now() + PATIENCE;
            loop {
                let shown = self.visible_text().await.replace(NARROW_SPACE, " ");
                if shown.contains(text) {
                    return;
                }
                assert!(Instant::now() < deadline, "{text:?} does not appear; there is:\n{shown}");
                tokio::time::sleep(BETWEEN_LOOKS).await;
            }
        }
    }

    // --- The device ---------------------------------------------------------------

    /// Gives the page this many CSS pixels.
    #[track_caller]
    pub(crate) fn viewport(&self, width: u32, height: u32) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let size = json!({
                "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false,
            });
            self.devtools("Emulation.setDeviceMetricsOverride", size).await;
        }
    }

    /// Lets the system prefer light or dark.
    #[track_caller]
    pub(crate) fn colour_scheme(&self, scheme: Scheme) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let value = match scheme {
                Scheme::Light => "light",
                Scheme::Dark => "dark",
            };
            self.emulate("", &[("prefers-color-scheme", value)]).await;
        }
    }

    /// Sets the medium (`"print"`, or `""` for the screen) and media features such
    /// as `("prefers-contrast", "more")`; those not given fall back.
    #[track_caller]
    pub(crate) fn emulate(
        &self,
        medium: &str,
        features: &[(&str, &str)],
    ) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let features: Vec<Value> = features
                .iter()
                .map(|(name, value)| json!({ "name": name, "value": value }))
                .collect();
            let media = json!({ "media": medium, "features": features });
            self.devtools("Emulation.setEmulatedMedia", media).await;
        }
    }

    /// Asks for a language from now on, as a browser that was set to it does.
    #[track_caller]
    pub(crate) fn speak(&self, tag: &str) -> impl Future<Output = ()> {
        self.note_step();
        async move {
            let agent = self.script("return navigator.userAgent", vec![]).await;
            let asks = json!({ "userAgent": agent, "acceptLanguage": tag });
            self.devtools("Emulation.setUserAgentOverride", asks).await;
        }
    }

    /// Keeps what the viewport shows as `target/screenshots/NAME.png`.
    #[track_caller]
    pub(crate) fn screenshot(&self, name: &str) -> impl Future<Output = PathBuf> {
        self.note_step();
        async move {
            let directory = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("screenshots");
            std::fs::create_dir_all(&directory).expect("a directory for screenshots");
            let file = directory.join(format!("{name}.png"));
            done(self.driver.screenshot(&file).await, "taking a screenshot");
            file
        }
    }

    /// Scrolls to every picture, since none is drawn before it comes near, and back up.
    #[track_caller]
    pub(crate) fn draws_every_picture(&self) -> impl Future<Output = ()> {
        const NEXT: &str = "
            const seen = it => it.getClientRects().length > 0;
            const left = [...document.querySelectorAll('.stage svg')]
                .filter(it => seen(it) && it.childElementCount === 0);
            if (left.length > 0) left[0].scrollIntoView(); else scrollTo(0, 0);
            return left.length;";
        self.becomes(Value::from(0), async || self.script(NEXT, vec![]).await)
    }

    /// Runs the body of a JavaScript function; for what has no other way.
    #[track_caller]
    pub(crate) fn script(&self, body: &str, arguments: Vec<Value>) -> impl Future<Output = Value> {
        self.note_step();
        async move { done(self.driver.execute(body, arguments).await, body).json().clone() }
    }

    /// The same for a function whose last argument takes the result.
    #[track_caller]
    pub(crate) fn script_that_calls_back(
        &self,
        body: &str,
        arguments: Vec<Value>,
    ) -> impl Future<Output = Value> {
        self.note_step();
        async move { done(self.driver.execute_async(body, arguments).await, body).json().clone() }
    }

    /// The server behind the page.
    pub(crate) fn server(&self) -> &Server {
        &self.server
    }

    // --- Inside -------------------------------------------------------------------

    /// Remembers where in the test the present step is, which a panic inside of a
    /// future cannot tell.
    #[track_caller]
    pub(super) fn note_step(&self) {
        let place = Location::caller();
        if !Path::new(place.file()).components().any(|part| part.as_os_str() == "harness") {
            self.step.set(Some(place));
        }
    }

    pub(super) async fn report_failure(&self) {
        let test = std::thread::current().name().unwrap_or("test").replace("::", "-");
        if let Some(place) = self.step.get() {
            println!("failed in or after the step at {place}");
        }
        // Whatever failed may also prevent this, and must stay the news.
        let file = Path::new(env!("CARGO_TARGET_TMPDIR")).with_file_name("screenshots");
        drop(std::fs::create_dir_all(&file));
        let file = file.join(format!("failed-{test}.png"));
        if self.driver.screenshot(&file).await.is_ok() {
            println!("the page as it was then: {}", file.display());
        }
        println!("the server was asked for:");
        for request in self.server.requests() {
            println!("  {request}");
        }
        if let Ok(body) = self.driver.find(By::Tag("body")).await
            && let Ok(text) = body.text().await
        {
            println!("its text:\n{text}");
        }
    }

    pub(super) async fn close(self) {
        // A browser that is gone already needs no ending.
        drop(self.driver.quit().await);
    }

    async fn drawn(&self) {
        let drawn = "const main = document.getElementById('main');
            return main !== null && !main.hasAttribute('aria-busy');";
        self.until("the app to draw its main region", async || {
            // Fails only while one document replaces another.
            self.driver.execute(drawn, vec![]).await.is_ok_and(|it| *it.json() == Value::Bool(true))
        })
        .await;
    }

    /// The only thing that fits, waited for.
    async fn single(
        &self,
        place: Option<&Place>,
        fits: impl Fn(&Accessible) -> bool,
        role: Option<&str>,
        name: Option<&str>,
    ) -> WebElement {
        let inside = place.map_or_else(String::new, |it| format!(" in {} {}", it.role, it.name));
        let described =
            format!("{} {}{inside}", role.unwrap_or("field"), name.unwrap_or("of any name"));
        let deadline = Instant::now() + PATIENCE;
        loop {
            // Fails only while one document replaces another.
            let mut found = self.accessible(place, role, name).await.unwrap_or_default();
            found.retain(&fits);
            match found.as_slice() {
                [only] => {
                    // Gone again if the page has just redrawn it: then look anew.
                    if let Ok(element) = self.element(only).await {
                        return element;
                    }
                }
                [] => {}
                several => panic!("{} things are {described:?}: {several:?}", several.len()),
            }
            if Instant::now() > deadline {
                let mut present = self.accessible(place, role, None).await.unwrap_or_default();
                present.retain(&fits);
                let present: Vec<String> = present.iter().map(ToString::to_string).collect();
                panic!("no {described:?} appears; there are {present:#?}");
            }
            tokio::time::sleep(BETWEEN_LOOKS).await;
        }
    }

    /// What the browser's accessibility tree holds of this role and name, on the
    /// whole page or in one part of it.
    async fn accessible(
        &self,
        place: Option<&Place>,
        role: Option<&str>,
        name: Option<&str>,
    ) -> WebDriverResult<Vec<Accessible>> {
        let expression = json!({ "expression": "document" });
        let document = self.driver.cdp().send_raw("Runtime.evaluate", expression).await?;
        let document = ("objectId", document["result"]["objectId"].clone());
        let Some(place) = place else { return self.below(document, role, name).await };
        let mut found = Vec::new();
        for part in self.below(document, Some(&place.role), Some(&place.name)).await? {
            found.extend(self.below(("backendNodeId", part.node.into()), role, name).await?);
        }
        Ok(found)
    }

    /// What the accessibility tree holds below a node.
    async fn below(
        &self,
        (key, node): (&str, Value),
        role: Option<&str>,
        name: Option<&str>,
    ) -> WebDriverResult<Vec<Accessible>> {
        let mut query = json!({ key: node });
        if let Some(role) = role {
            query["role"] = role.into();
        }
        if let Some(name) = name {
            query["accessibleName"] = name.into();
        }
        let found = self.driver.cdp().send_raw("Accessibility.queryAXTree", query).await?;
        let nodes = found["nodes"].as_array().map(Vec::as_slice).unwrap_or_default();
        Ok(nodes.iter().filter(|node| node["ignored"] != true).map(Accessible::read).collect())
    }

    /// The driver's handle for a node of the accessibility tree.
    async fn element(&self, found: &Accessible) -> WebDriverResult<WebElement> {
        let cdp = self.driver.cdp();
        let node = cdp.send_raw("DOM.resolveNode", json!({ "backendNodeId": found.node })).await?;
        cdp.send_raw(
            "Runtime.callFunctionOn",
            json!({
                "objectId": node["object"]["objectId"],
                "functionDeclaration": "function () { window.foundByTest = this; }",
            }),
        )
        .await?;
        let take = "const found = window.foundByTest; delete window.foundByTest; return found;";
        self.driver.execute(take, vec![]).await?.element()
    }

    async fn remote(&self, expression: &str) -> Value {
        let found = self.devtools("Runtime.evaluate", json!({ "expression": expression })).await;
        found["result"]["objectId"].clone()
    }

    /// Has the browser's developer tools do something.
    pub(crate) async fn devtools(&self, method: &str, parameters: Value) -> Value {
        done(self.driver.cdp().send_raw(method, parameters).await, method)
    }
}

impl Part<'_> {
    /// As [`Page::find`].
    #[track_caller]
    pub(crate) fn find(&self, role: &str, name: &str) -> impl Future<Output = WebElement> {
        self.page.note_step();
        async move {
            let name = Some(name).filter(|name| !name.is_empty());
            let fits = |node: &Accessible| node.role == role;
            self.page.single(Some(&self.place), fits, Some(role), name).await
        }
    }

    /// As [`Page::field`].
    #[track_caller]
    pub(crate) fn field(&self, label: &str) -> impl Future<Output = WebElement> {
        self.page.note_step();
        async move { self.page.single(Some(&self.place), is_field, None, Some(label)).await }
    }

    /// As [`Page::value`].
    #[track_caller]
    pub(crate) fn value(&self, label: &str) -> impl Future<Output = String> {
        self.page.note_step();
        async move { done(self.field(label).await.value().await, "reading a field").unwrap_or_default() }
    }

    /// As [`Page::type_in`].
    #[track_caller]
    pub(crate) fn type_in(&self, label: &str, text: &str) -> impl Future<Output = ()> {
        self.page.note_step();
        async move { replace(&self.field(label).await, label, text).await }
    }

    /// As [`Page::click`].
    #[track_caller]
    pub(crate) fn click(&self, role: &str, name: &str) -> impl Future<Output = ()> {
        self.page.note_step();
        async move {
            click(&self.find(role, name).await, &format!("clicking {role} {name:?}")).await;
        }
    }
}

fn is_field(node: &Accessible) -> bool {
    FIELD_ROLES.contains(&node.role.as_str())
}

/// Clicks what may lie under a bar at the edge of the window, as a person does: not before
/// it is in sight.
async fn click(element: &WebElement, doing: &str) {
    done(element.scroll_into_view().await, doing);
    done(element.click().await, doing);
}

/// Replaces what a field holds, with keys.
async fn replace(field: &WebElement, label: &str, text: &str) {
    done(field.send_keys(Key::Control + "a").await, "selecting what a field holds");
    done(field.send_keys(Key::Delete + text).await, &format!("typing into {label:?}"));
}

impl Accessible {
    fn read(node: &Value) -> Self {
        let said = |key: &str| node[key]["value"].as_str().unwrap_or_default().to_owned();
        Self {
            role: said("role"),
            name: said("name"),
            node: node["backendDOMNodeId"].as_i64().unwrap_or_default(),
        }
    }
}

/// The value, or a panic that says during what it failed.
#[track_caller]
pub(super) fn done<T>(outcome: WebDriverResult<T>, doing: &str) -> T {
    outcome.unwrap_or_else(|error| panic!("{doing}: {error}"))
}

fn string(value: Value) -> String {
    match value {
        Value::String(text) => text,
        other => panic!("expected a text from the page, not {other}"),
    }
}
