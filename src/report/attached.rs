//! The data attached to a report, read back from its PDF.

use hayro_syntax::Pdf;
use hayro_syntax::object::{Name, Object};
use serde::Deserialize;
use std::collections::BTreeMap;

/// What a report tells of the notes that it was made from.
#[derive(Clone, Debug, Default, PartialEq, Eq, Deserialize)]
pub struct MadeFrom {
    /// Path of the visit from the root of the book.
    pub visit: String,
    /// Name of the system.
    pub system: String,
    /// Short fingerprint, as in the foot of the pages.
    #[serde(default)]
    pub fingerprint: String,
    /// SHA-256 of every file that it read, by path from the root of the book.
    pub files: BTreeMap<String, String>,
}

/// Reads what a PDF was made from; `None` where it is no report of this program, or cannot be read.
pub fn made_from(pdf: Vec<u8>) -> Option<MadeFrom> {
    let pdf = Pdf::new(pdf).ok()?;
    pdf.objects().into_iter().find_map(|object| {
        let Object::Stream(stream) = object else {
            return None;
        };
        let kind: Name<'_> = stream.dict().get("Type")?;
        if kind.as_ref() != b"EmbeddedFile" {
            return None;
        }
        serde_json::from_slice(&stream.decoded().ok()?).ok()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_report_is_not_read() {
        assert_eq!(made_from(b"%PDF-1.7 nonsense".to_vec()), None);
        assert_eq!(made_from(Vec::new()), None);
    }
}
