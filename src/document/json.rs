//! A stored text to the document, of whatever version.

use serde::Deserialize;

use super::file::{
    Document, DocumentError, DocumentFault, LARGEST_DOCUMENT, LARGEST_NUMBER, SCHEMA,
};
use super::id::Id;
use super::migration;

impl Document {
    /// Reads a stored document of this version or an earlier one.
    ///
    /// # Errors
    /// When it is too large, written by a later version, or no document.
    pub fn from_json(text: &str) -> Result<Self, DocumentError> {
        #[derive(Deserialize)]
        struct Envelope {
            schema: u32,
        }
        if text.len() > LARGEST_DOCUMENT {
            return Err(DocumentError::TooLarge { bytes: text.len() });
        }
        let envelope: Envelope = serde_json::from_str(text)?;
        let document: Self = match envelope.schema {
            SCHEMA => serde_json::from_str(text)?,
            found if found > SCHEMA => return Err(DocumentError::TooNew { found }),
            found => migration::read(text, found)?,
        };
        if let Some(car) = document.cars().find(|car| car.last_id > LARGEST_NUMBER) {
            return Err(DocumentError::Unreadable { reason: DocumentFault::Number(car.last_id) });
        }
        let mut cars: Vec<&Id> = document.cars().map(|car| &car.id).collect();
        cars.sort();
        match cars.windows(2).find(|pair| pair[0] == pair[1]) {
            Some(pair) => Err(DocumentError::Unreadable {
                reason: DocumentFault::SameIdentity(pair[0].clone()),
            }),
            None => Ok(document),
        }
    }
}
