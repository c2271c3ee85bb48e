//! A static server for the built page that keeps a record of what it was asked.
//!
//! It has a thread for each connection and closes it after one answer. Chromium
//! opens half a dozen at once and keeps idle ones, which a server with a pool of
//! threads would wait behind; and once this one has stopped, it is truly gone.

use std::fmt;
use std::io::{BufRead, BufReader, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread::JoinHandle;

/// Serves `dist/` on a free loopback port until it is stopped or dropped.
pub(crate) struct Server {
    address: SocketAddr,
    base: String,
    site: Arc<Site>,
    listening: Mutex<Option<JoinHandle<()>>>,
}

/// What the threads share.
struct Site {
    root: Mutex<PathBuf>,
    record: Mutex<Vec<Request>>,
    stopped: AtomicBool,
}

/// One request and how it was answered.
#[derive(Debug, Clone)]
pub(crate) struct Request {
    pub(crate) method: String,
    pub(crate) path: String,
    pub(crate) status: u16,
}

impl fmt::Display for Request {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {} -> {}", self.method, self.path, self.status)
    }
}

impl Server {
    /// The page lies below a path of its own, not at the root: so every test also
    /// shows that the build needs no particular place on its host.
    const MOUNT: &str = "/some/where/";

    pub(super) fn start() -> Self {
        let root = Self::build();
        assert!(
            root.join("index.html").is_file(),
            "{} holds no build: run tools/test, or `trunk build --release` before the browser tests",
            root.display()
        );

        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).expect("a free loopback port");
        let address = listener.local_addr().expect("a bound address");
        let site = Arc::new(Site {
            root: Mutex::new(root),
            record: Mutex::new(Vec::new()),
            stopped: AtomicBool::new(false),
        });
        let listening = std::thread::spawn({
            let site = Arc::clone(&site);
            move || {
                for connection in listener.incoming() {
                    if site.stopped.load(Ordering::Acquire) {
                        return;
                    }
                    if let Ok(connection) = connection {
                        let site = Arc::clone(&site);
                        // A browser that hangs up in the middle misses nothing.
                        std::thread::spawn(move || drop(site.answer(&connection)));
                    }
                }
            }
        });
        Self {
            address,
            base: format!("http://{address}{}", Self::MOUNT),
            site,
            listening: Mutex::new(Some(listening)),
        }
    }

    /// Where the release build lies.
    pub(crate) fn build() -> PathBuf {
        Path::new(env!("CARGO_MANIFEST_DIR")).join("dist")
    }

    /// The address of the page, with a slash at its end.
    pub(crate) fn base(&self) -> &str {
        &self.base
    }

    /// The host of the page, as browsers tell hosts apart.
    pub(crate) fn origin(&self) -> String {
        format!("http://{}", self.address)
    }

    /// What has been asked so far, in the order of the answers.
    pub(crate) fn requests(&self) -> Vec<Request> {
        self.site.record.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Forgets what has been asked so far.
    pub(crate) fn forget(&self) {
        self.site.record.lock().unwrap_or_else(PoisonError::into_inner).clear();
    }

    /// From now on serves another build, at the same address.
    pub(crate) fn publish(&self, root: PathBuf) {
        *self.site.root.lock().unwrap_or_else(PoisonError::into_inner) = root;
    }

    /// Goes away for good, as the network does on the road: from now on every
    /// connection is refused.
    pub(crate) fn stop(&self) {
        self.site.stopped.store(true, Ordering::Release);
        let listening = self.listening.lock().unwrap_or_else(PoisonError::into_inner).take();
        if let Some(listening) = listening {
            // One last connection wakes the listener, which then sees the flag.
            drop(TcpStream::connect(self.address));
            drop(listening.join());
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}

impl Site {
    /// Reads one request, answers it and records both.
    fn answer(&self, mut connection: &TcpStream) -> std::io::Result<()> {
        let mut reader = BufReader::new(connection);
        let mut first = String::new();
        reader.read_line(&mut first)?;
        let mut words = first.split_whitespace();
        let (Some(method), Some(target)) = (words.next(), words.next()) else {
            // Opened in case it would be of use, and closed unused.
            return Ok(());
        };
        let mut header = String::new();
        while reader.read_line(&mut header)? > 2 {
            header.clear();
        }

        let path = target.split('?').next().unwrap_or_default();
        let found = self.file(path).and_then(|file| Some((content(&file)?, file)));
        let (status, reason, media_type, content) = match found {
            Some((content, file)) => (200, "OK", media_type(&file), content),
            None => (404, "Not Found", "text/plain; charset=utf-8", b"not here".to_vec()),
        };
        self.record.lock().unwrap_or_else(PoisonError::into_inner).push(Request {
            method: method.to_owned(),
            path: path.to_owned(),
            status,
        });
        write!(
            connection,
            "HTTP/1.1 {status} {reason}\r\n\
             Content-Type: {media_type}\r\n\
             Content-Length: {}\r\n\
             X-Content-Type-Options: nosniff\r\n\
             Cache-Control: no-cache\r\n\
             Connection: close\r\n\r\n",
            content.len()
        )?;
        connection.write_all(&content)
    }

    /// The file behind a path below the mount; none outside of it.
    fn file(&self, path: &str) -> Option<PathBuf> {
        let below = path.strip_prefix(Server::MOUNT)?;
        if below.split('/').any(|part| part == "..") {
            return None;
        }
        let root = self.root.lock().unwrap_or_else(PoisonError::into_inner);
        Some(root.join(if below.is_empty() { "index.html" } else { below }))
    }
}

/// What a file holds. The language of the tests is made by the build of the program, and
/// goes with no build of the page.
fn content(file: &Path) -> Option<Vec<u8>> {
    if file.ends_with("words/en-XA.words") {
        return Some(include_bytes!(concat!(env!("OUT_DIR"), "/en-XA.words")).to_vec());
    }
    std::fs::read(file).ok()
}

fn media_type(file: &Path) -> &'static str {
    match file.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("js" | "mjs") => "text/javascript; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("txt" | "words") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}
