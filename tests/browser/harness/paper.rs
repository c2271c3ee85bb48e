//! What the browser would print.

use lopdf::Document;
use serde_json::json;

use super::page::Page;

/// A size of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Paper {
    A4,
    Letter,
}

impl Paper {
    /// Width and height in inches.
    fn size(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0 / 25.4, 297.0 / 25.4),
            Self::Letter => (8.5, 11.0),
        }
    }
}

/// What stands on each printed page.
#[derive(Debug)]
pub(crate) struct Printed {
    pub(crate) pages: Vec<String>,
}

impl Printed {
    /// All of the text, with single blanks and without joined letters.
    pub(crate) fn text(&self) -> String {
        let words = self.pages.iter().flat_map(|page| page.split_whitespace());
        let text = words.collect::<Vec<_>>().join(" ");
        [("ﬀ", "ff"), ("ﬁ", "fi"), ("ﬂ", "fl"), ("ﬃ", "ffi"), ("ﬄ", "ffl")]
            .into_iter()
            .fold(text, |text, (joined, letters)| text.replace(joined, letters))
    }
}

impl Page {
    /// Prints the page, and reads what is on the paper.
    pub(crate) async fn print(&self, paper: Paper) -> Printed {
        let (width, height) = paper.size();
        let wanted = json!({ "paperWidth": width, "paperHeight": height });
        let answer = self.devtools("Page.printToPDF", wanted).await;
        let encoded = answer["data"].as_str().expect("a document");
        let bytes = decoded(encoded);
        let document = Document::load_mem(&bytes).expect("a document that can be read");
        let numbers = document.get_pages().into_keys();
        let pages = numbers.map(|it| document.extract_text(&[it]).expect("text")).collect();
        Printed { pages }
    }
}

/// The bytes that base 64 (RFC 4648) stands for.
fn decoded(text: &str) -> Vec<u8> {
    let value = |letter: u8| match letter {
        b'A'..=b'Z' => Some(letter - b'A'),
        b'a'..=b'z' => Some(letter - b'a' + 26),
        b'0'..=b'9' => Some(letter - b'0' + 52),
        b'+' => Some(62),
        b'/' => Some(63),
        _ => None,
    };
    let (mut bytes, mut held, mut bits) = (Vec::with_capacity(text.len() / 4 * 3), 0_u32, 0);
    for value in text.bytes().filter_map(value) {
        held = held << 6 | u32::from(value);
        bits += 6;
        if bits >= 8 {
            bits -= 8;
            bytes.push((held >> bits & 0xff) as u8);
        }
    }
    bytes
}
