//! From what is shared to the text of a link's fragment, and back.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::deflate::compress_to_vec_zlib;
use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_zlib_with_limit};

use super::bounds::{self, BoundsError};
use super::{Kind, Shared};
use crate::document::{Document, DocumentError};

/// The longest fragment that is written or read, in characters. Programs that pass
/// links on shorten longer ones (common practice, no source).
pub const LONGEST_LINK: usize = 8_000;
/// The largest document that a link may unpack to, in bytes.
pub const LARGEST_PAYLOAD: usize = 256 * 1024;
/// The version of the link's form.
pub const LINK_FORM: u32 = 1;
/// The slowest and smallest of the compressor's levels.
const SMALLEST: u8 = 10;

/// Why something cannot be shared, or a link not be read.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum LinkError {
    /// The link is too long.
    LinkTooLong {
        /// Its length.
        length: usize,
    },
    /// What is shared is too long for a link.
    TooMuch {
        /// The length that it takes.
        length: usize,
    },
    /// The link does not say what it holds.
    NoKind,
    /// It has the form of a later version.
    TooNew {
        /// The form found.
        found: u32,
    },
    /// It arrived incomplete or changed.
    Damaged,
    /// It unpacks to too much.
    PayloadTooLarge,
    /// It holds no document.
    Document(#[from] DocumentError),
    /// A part of it is too long, or hides something.
    Bounds(#[from] BoundsError),
    /// It holds more than it says.
    MoreThanSaid {
        /// What it says.
        kind: Kind,
    },
    /// There is nothing in it.
    Blank {
        /// What it should be.
        kind: Kind,
    },
    /// What is in the tank comes from a log that does not tell it.
    UnknownContents,
}

impl Kind {
    fn letter(self) -> char {
        match self {
            Self::Fill => 'f',
            Self::Car => 'c',
            Self::Trip => 't',
        }
    }
}

impl Shared {
    /// The text of a link's fragment, without any route before it.
    ///
    /// # Errors
    /// When there is nothing in it, it is too long for a link, or a text in it is out
    /// of bounds.
    pub fn to_link(&self) -> Result<String, LinkError> {
        if self.is_blank() {
            return Err(LinkError::Blank { kind: self.kind });
        }
        let value = serde_json::to_value(&self.document).map_err(DocumentError::from)?;
        bounds::check(&value)?;
        let packed = compress_to_vec_zlib(value.to_string().as_bytes(), SMALLEST);
        let link = format!("{}{LINK_FORM}.{}", self.kind.letter(), URL_SAFE_NO_PAD.encode(packed));
        if link.len() > LONGEST_LINK {
            return Err(LinkError::TooMuch { length: link.len() });
        }
        Ok(link)
    }

    /// Reads the text of a link's fragment, from anybody.
    ///
    /// # Errors
    /// When it is too long, damaged, of a later version, no document, out of bounds,
    /// or holds more than it says.
    ///
    /// ```
    /// use fillwright::share::{Shared, LinkError};
    /// assert_eq!(Shared::from_link("f1.AAAA"), Err(LinkError::Damaged));
    /// ```
    pub fn from_link(link: &str) -> Result<Self, LinkError> {
        if link.len() > LONGEST_LINK {
            return Err(LinkError::LinkTooLong { length: link.len() });
        }
        let (tag, payload) = link.split_once('.').ok_or(LinkError::NoKind)?;
        let kind = Kind::ALL.into_iter().find_map(|kind| {
            let version = tag.strip_prefix(kind.letter())?;
            Some((kind, version.parse::<u32>().ok()?))
        });
        let kind = match kind {
            Some((kind, LINK_FORM)) => kind,
            Some((_, found)) if found > LINK_FORM => return Err(LinkError::TooNew { found }),
            _ => return Err(LinkError::NoKind),
        };
        let packed = URL_SAFE_NO_PAD.decode(payload).map_err(|_| LinkError::Damaged)?;
        let bytes = decompress_to_vec_zlib_with_limit(&packed, LARGEST_PAYLOAD).map_err(
            |error| match error.status {
                TINFLStatus::HasMoreOutput => LinkError::PayloadTooLarge,
                _ => LinkError::Damaged,
            },
        )?;
        let text = String::from_utf8(bytes).map_err(|_| LinkError::Damaged)?;
        let document = Document::from_json(&text)?;
        bounds::check(&serde_json::to_value(&document).map_err(DocumentError::from)?)?;
        let has_log = !document.here.log.all().is_empty() || document.here.draft.is_some();
        if has_log || !document.others.is_empty() {
            return Err(LinkError::MoreThanSaid { kind });
        }
        let shared = Self::of(kind, &document);
        if shared.is_blank() { Err(LinkError::Blank { kind }) } else { Ok(shared) }
    }
}
