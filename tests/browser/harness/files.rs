//! What a test hands to the page and takes from it besides keys and clicks: files,
//! further windows, and a browser that behaves otherwise.

use std::path::PathBuf;
use std::sync::atomic::{AtomicU32, Ordering};

use serde_json::json;
use thirtyfour::{By, WindowHandle};

use super::page::{Page, done};

impl Page {
    /// Chooses a file with this content for the one file field of the page.
    pub(crate) async fn give_file(&self, content: &[u8]) {
        let file = fresh_path("given.json");
        std::fs::write(&file, content).expect("a file to give");
        let find = || self.driver.find(By::Css("input[type=file]"));
        self.until("a file field", async || find().await.is_ok()).await;
        let field = done(find().await, "a file field");
        done(field.send_keys(file.to_string_lossy()).await, "choosing a file");
    }

    /// Does something that downloads a file, and returns its name and content.
    pub(crate) async fn download(&self, act: impl AsyncFnOnce()) -> (String, String) {
        let directory = fresh_path("downloads");
        std::fs::create_dir_all(&directory).expect("a directory for downloads");
        let allowed = json!({ "behavior": "allow", "downloadPath": directory });
        self.devtools("Page.setDownloadBehavior", allowed).await;
        act().await;
        // The browser first makes an empty file of that name, fills another one, and
        // then gives that the name.
        let file = || {
            let files = std::fs::read_dir(&directory).expect("a directory that can be read");
            let files: Vec<PathBuf> = files.filter_map(Result::ok).map(|it| it.path()).collect();
            match files.as_slice() {
                [file] if file.extension().is_some_and(|it| it != "crdownload" && it != "tmp") => {
                    let arrived = std::fs::metadata(file).is_ok_and(|it| it.len() > 0);
                    arrived.then(|| file.clone())
                }
                _ => None,
            }
        };
        self.until("a file to arrive", async || file().is_some()).await;
        let file = file().expect("a file");
        let name = file.file_name().map(|it| it.to_string_lossy().into_owned());
        (name.unwrap_or_default(), std::fs::read_to_string(&file).expect("a readable file"))
    }

    /// Has the device forget all that the app ever stored, and leaves the app.
    pub(crate) async fn forget(&self) {
        done(self.driver.goto("about:blank").await, "leaving the page");
        let all = json!({ "origin": self.server.origin(), "storageTypes": "local_storage" });
        self.devtools("Storage.clearDataForOrigin", all).await;
    }

    /// Runs a script before anything else whenever a page is loaded.
    pub(crate) async fn before_each_load(&self, script: &str) {
        self.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": script })).await;
    }

    /// Cuts the page and its service worker off from every network, their own server among
    /// them. The server itself stays up: whatever still reaches it is on its record.
    pub(crate) async fn cut_network(&self) {
        const CUT: &str = "Network.emulateNetworkConditions";
        let none = json!({
            "offline": true, "latency": 0, "downloadThroughput": 0, "uploadThroughput": 0,
        });
        self.devtools("Network.enable", json!({})).await;
        self.devtools(CUT, none.clone()).await;
        // What is done to the page does not reach its service worker.
        let found = self.devtools("Target.getTargets", json!({})).await;
        let targets = found["targetInfos"].as_array().expect("targets");
        let workers: Vec<_> = targets.iter().filter(|it| it["type"] == "service_worker").collect();
        assert!(!workers.is_empty(), "no service worker to cut off");
        for worker in workers {
            let wanted = json!({ "targetId": worker["targetId"], "flatten": false });
            let attached = self.devtools("Target.attachToTarget", wanted).await;
            for (id, (method, params)) in
                [("Network.enable", json!({})), (CUT, none.clone())].into_iter().enumerate()
            {
                let message = json!({ "id": id, "method": method, "params": params }).to_string();
                let told = json!({ "sessionId": attached["sessionId"], "message": message });
                self.devtools("Target.sendMessageToTarget", told).await;
            }
        }
    }

    /// Opens a further window on the app, and goes there.
    pub(crate) async fn open_window(&self, hash: &str) -> [WindowHandle; 2] {
        let first = done(self.driver.window().await, "the window");
        let second = done(self.driver.new_tab().await, "a new window");
        self.to_window(&second).await;
        self.open(hash).await;
        [first, second]
    }

    /// Goes to a window.
    pub(crate) async fn to_window(&self, window: &WindowHandle) {
        done(self.driver.switch_to_window(window.clone()).await, "going to a window");
    }
}

/// A path that nothing has used yet.
pub(crate) fn fresh_path(name: &str) -> PathBuf {
    static MADE: AtomicU32 = AtomicU32::new(0);
    let number = MADE.fetch_add(1, Ordering::Relaxed);
    let name = format!("{}-{number}-{name}", std::process::id());
    PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name)
}
