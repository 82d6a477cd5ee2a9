//! `made-from`: which notes an old report was made from, and whether they have changed since.

use crate::command::console::{Console, Exit};
use crate::command::printed_report::hexadecimal;
use crate::notes::find_root;
use crate::report::attached::{MadeFrom, made_from};
use serde_json::json;
use sha2::{Digest, Sha256};
use std::path::Path;

/// How a file stands to what the report read.
fn standing(root: &Path, path: &str, digest: &str) -> &'static str {
    let inside = !path.starts_with('/') && !path.split('/').any(|part| part == "..");
    match std::fs::read(root.join(path)) {
        _ if !inside => "outside the book",
        Ok(bytes) if hexadecimal(&Sha256::digest(&bytes)) == digest => "unchanged",
        Ok(_) => "changed since",
        Err(_) => "not there",
    }
}

/// Tells of a PDF which notes it was made from; beside a book, whether they have changed.
pub fn tell(pdf: &Path, book: &Path, as_json: bool, console: &Console) -> Exit {
    let bytes = match std::fs::read(pdf) {
        Ok(bytes) => bytes,
        Err(error) => {
            console.err(&format!("error: {}: {error}\n", pdf.display()));
            return if error.kind() == std::io::ErrorKind::NotFound {
                Exit::Usage
            } else {
                Exit::Disk
            };
        }
    };
    let Some(made) = made_from(bytes) else {
        console.err(&format!(
            "error: {} carries no notes that can be read\n  = why: only a report that this program made has them attached, and a mail gateway or an editor may have taken them out\n",
            pdf.display()
        ));
        return Exit::Usage;
    };
    let root = find_root(book).ok().flatten();
    let told: Vec<(&str, &str)> = made
        .files
        .iter()
        .map(|(path, digest)| {
            let standing = root.as_ref().map_or("no book to compare with", |root| {
                standing(root, path, digest)
            });
            (path.as_str(), standing)
        })
        .collect();
    if as_json {
        let files: Vec<_> = told
            .iter()
            .map(|(path, standing)| json!({ "path": path, "standing": standing }))
            .collect();
        let value = json!({
            "version": 1, "command": "made-from", "visit": made.visit, "system": made.system,
            "fingerprint": made.fingerprint, "files": files,
        });
        console.out(&format!("{value:#}\n"));
    } else {
        console.out(&people(&made, &told));
    }
    Exit::Fine
}

fn people(made: &MadeFrom, told: &[(&str, &str)]) -> String {
    let mut text = format!(
        "{}, visit {}, notes {}\n",
        made.system, made.visit, made.fingerprint
    );
    let width = told
        .iter()
        .map(|(_, standing)| standing.len())
        .max()
        .unwrap_or(0);
    for (path, standing) in told {
        text += &format!("  {standing:width$}  {path}\n");
    }
    let same = told.iter().all(|(_, standing)| *standing == "unchanged");
    text += if same {
        "The notes are those that the report was made from.\n"
    } else {
        "The notes of today are not all those that the report was made from.\n"
    };
    text
}
