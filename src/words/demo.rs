//! The invented example, with its names in the language that is spoken.

use crate::document::Document;
use crate::message::Message;

impl Document {
    /// The invented example that a first start offers.
    pub fn demo() -> Self {
        Self::invented(Message::say)
    }
}
