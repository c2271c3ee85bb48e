//! Starting and ending `ChromeDriver` and, through it, Chromium.

use std::env;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdout, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::thread::sleep;
use std::time::{Duration, Instant};

use serde_json::json;
use thirtyfour::prelude::*;

const START_LIMIT: Duration = Duration::from_secs(20);

/// A running `ChromeDriver` with the profile directory of its one browser. Both are
/// gone when it is dropped.
pub(super) struct ChromeDriver {
    process: Child,
    // Kept open: a closed pipe would end the driver at its next message.
    _messages: BufReader<ChildStdout>,
    port: u16,
    profile: PathBuf,
}

impl ChromeDriver {
    pub(super) fn start() -> Self {
        static STARTED: AtomicU32 = AtomicU32::new(0);

        let program = program("CHROMEDRIVER", &["chromedriver", "chromium.chromedriver"]);
        let mut process = Command::new(&program)
            .arg("--port=0")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| panic!("cannot start {}: {error}", program.display()));
        let mut messages = BufReader::new(process.stdout.take().expect("a piped output"));
        let port = announced_port(&mut messages);
        let number = STARTED.fetch_add(1, Ordering::Relaxed);
        let profile = Path::new(env!("CARGO_TARGET_TMPDIR"))
            .join(format!("profile-{}-{number}", std::process::id()));
        let driver = Self { process, _messages: messages, port, profile };

        let deadline = Instant::now() + START_LIMIT;
        while !driver.is_ready() {
            assert!(Instant::now() < deadline, "ChromeDriver does not become ready");
            sleep(Duration::from_millis(20));
        }
        driver
    }

    /// A browser with an empty profile that keeps its console and its requests
    /// for the checks.
    pub(super) async fn browser(&self) -> WebDriver {
        let mut wanted = DesiredCapabilities::chrome();
        let chromium = program("CHROMIUM", &["chromium", "chromium-browser", "google-chrome"]);
        wanted.set_binary(&chromium.to_string_lossy()).expect("a path as JSON");
        let profile = format!("--user-data-dir={}", self.profile.display());
        for argument in [
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--no-first-run",
            "--lang=en-US",
            "--window-size=1280,900",
            &profile,
        ] {
            wanted.add_arg(argument).expect("an argument as JSON");
        }
        wanted
            .set("goog:loggingPrefs", json!({ "browser": "ALL", "performance": "ALL" }))
            .expect("a capability as JSON");
        WebDriver::new(format!("http://127.0.0.1:{}", self.port), wanted)
            .await
            .unwrap_or_else(|error| panic!("cannot start {}: {error}", chromium.display()))
    }

    fn is_ready(&self) -> bool {
        let ask = || -> std::io::Result<bool> {
            let mut stream = TcpStream::connect((Ipv4Addr::LOCALHOST, self.port))?;
            stream.set_read_timeout(Some(Duration::from_secs(2)))?;
            write!(stream, "GET /status HTTP/1.1\r\nHost: 127.0.0.1:{}\r\n\r\n", self.port)?;
            // The driver leaves the connection open, so there is no end to wait for.
            let (mut answer, mut part) = (Vec::new(), [0; 1024]);
            loop {
                let length = stream.read(&mut part)?;
                answer.extend_from_slice(&part[..length]);
                let ready = String::from_utf8_lossy(&answer).contains("\"ready\":true");
                if ready || length == 0 {
                    return Ok(ready);
                }
            }
        };
        ask().unwrap_or(false)
    }
}

impl Drop for ChromeDriver {
    fn drop(&mut self) {
        // Each may be gone already, and nothing is left to be done about it.
        drop(self.process.kill());
        drop(self.process.wait());
        drop(std::fs::remove_dir_all(&self.profile));
    }
}

/// The port that the driver chose, from the line in which it says so.
fn announced_port(messages: &mut impl BufRead) -> u16 {
    let mut said = String::new();
    loop {
        let mut line = String::new();
        let length = messages.read_line(&mut line).expect("readable output");
        assert!(length > 0, "ChromeDriver ended at once, saying:\n{said}");
        if let Some((_, rest)) = line.split_once("started successfully on port ") {
            let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
            return digits.parse().expect("a port number");
        }
        said.push_str(&line);
    }
}

/// The program that an environment variable gives, or else the first of the names
/// on the search path.
pub(super) fn program(variable: &str, names: &[&str]) -> PathBuf {
    if let Some(path) = env::var_os(variable).filter(|path| !path.is_empty()) {
        return path.into();
    }
    let search = env::var_os("PATH").unwrap_or_default();
    env::split_paths(&search)
        .flat_map(|directory| names.iter().map(move |name| directory.join(name)))
        .find(|path| path.is_file())
        .unwrap_or_else(|| {
            panic!("{} is not on the path: install it or set {variable} to it", names[0])
        })
}
