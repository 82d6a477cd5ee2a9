//! A PDF with its small objects compressed.
//!
//! Input and output are the bytes of a PDF. The typesetter writes each tag of the structure as an
//! object of its own in plain text, so that tags are two thirds of a report without photographs. Here
//! objects go into object streams (ISO 32000-1, 7.5.7), which PDF/A-3 and PDF/UA-1 allow.

use lopdf::{Document, SaveOptions};

/// Packs the objects of a PDF; the reason where it cannot be read.
pub fn packed(pdf: &[u8]) -> Result<Vec<u8>, String> {
    let mut document = Document::load_mem(pdf).map_err(|error| error.to_string())?;
    let options = SaveOptions::builder()
        .use_object_streams(true)
        .use_xref_streams(true)
        .max_objects_per_stream(OBJECTS)
        .compression_level(6)
        .build();
    let mut out = Vec::with_capacity(pdf.len());
    document
        .save_with_options(&mut out, options)
        .map_err(|error| error.to_string())?;
    Ok(out)
}

/// Objects in a stream: a reader unpacks a whole stream for any object of it.
const OBJECTS: usize = 500;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_pdf_is_refused() {
        assert!(packed(b"%PDF-1.7 nonsense").is_err());
    }
}
