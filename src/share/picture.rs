//! A link as a QR code, to be drawn.

use qrcodegen::{QrCode, QrCodeEcc};
use std::fmt::Write;

/// The empty border that readers of QR codes need, in modules (ISO/IEC 18004).
pub const QUIET_ZONE: i32 = 4;

/// Why there is no QR code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum PictureError {
    /// It holds too much for the largest one.
    TooLong {
        /// How many there are.
        bytes: usize,
    },
}

/// A QR code as lines to be filled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// How many modules it is wide and high, its quiet zone included.
    pub size: i32,
    /// The dark modules: the path data of an SVG whose unit is a module.
    pub path: String,
}

impl Picture {
    /// The QR code of a text, at the least error correction that its size allows,
    /// since a screen has no stains and small modules are the greater harm.
    ///
    /// # Errors
    /// When it is longer than the largest code can hold (2953 bytes).
    pub fn of(text: &str) -> Result<Self, PictureError> {
        let code = QrCode::encode_text(text, QrCodeEcc::Low)
            .map_err(|_| PictureError::TooLong { bytes: text.len() })?;
        let mut path = String::new();
        for y in 0..code.size() {
            let mut x = 0;
            while x < code.size() {
                let run = (x..code.size()).take_while(|x| code.get_module(*x, y)).count();
                let length = i32::try_from(run).unwrap_or_default();
                if length > 0 {
                    // Writing to a string cannot fail.
                    let _ = write!(
                        path,
                        "M{} {}h{length}v1h-{length}z",
                        x + QUIET_ZONE,
                        y + QUIET_ZONE
                    );
                }
                x += length.max(1);
            }
        }
        Ok(Self { size: code.size() + 2 * QUIET_ZONE, path })
    }
}
