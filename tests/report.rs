//! Reports of the demo book: one PDF a visit, the same bytes on any day, nothing of the cameras in
//! them, and none while an error stands.

use crate::copied::{demo, snapshot};
use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;

/// Runs `report` on a path and gives the exit code and the PDFs made, by name.
fn report(path: &Path, more: &[&str]) -> (i32, BTreeMap<String, Vec<u8>>) {
    let folder = tempfile::tempdir().unwrap();
    let status = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .arg("report")
        .arg(path)
        .arg("--into")
        .arg(folder.path())
        .args(more)
        .output()
        .unwrap()
        .status;
    let mut made = snapshot(folder.path());
    assert!(
        made.keys().all(|name| name.ends_with(".pdf")),
        "{:?}",
        made.keys()
    );
    made.retain(|_, bytes| bytes.starts_with(b"%PDF-1.7"));
    (status.code().unwrap(), made)
}

fn holds(bytes: &[u8], text: &str) -> bool {
    bytes
        .windows(text.len())
        .any(|window| window == text.as_bytes())
}

#[test]
fn every_visit_of_the_demo_book_has_its_report_and_twice_the_same_bytes() {
    let book = demo();
    let before = snapshot(book.path());
    let (code, made) = report(book.path(), &[]);
    assert_eq!((code, made.len()), (0, 17));
    let (_, again) = report(book.path(), &[]);
    assert!(made == again, "the bytes differ from run to run");
    assert!(snapshot(book.path()) == before, "a note was changed");
}

#[test]
fn nothing_of_the_cameras_reaches_a_report() {
    let (_, made) = report(demo().path(), &[]);
    for (name, bytes) in made {
        // In the demo's photographs as they are; a JPEG lies in a PDF as it is.
        for mark in [
            "DEMO-SERIAL-000417",
            "DEMO-OWNER-NAME",
            "Invented Camera Works",
            "Exif",
        ] {
            assert!(!holds(&bytes, mark), "{name} holds {mark}");
        }
    }
}

#[test]
fn no_report_is_made_while_an_error_stands_and_a_draft_is() {
    let book = demo();
    let visit = book.path().join("dunmarrow/ice-bank-1/2026-08-11");
    let path = visit.join("visit.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    std::fs::write(&path, text.replace("\"83 °F\"", "83")).unwrap();
    let (code, made) = report(&visit, &[]);
    assert_eq!((code, made.len()), (1, 0));
    let (_, made) = report(&visit, &["--draft"]);
    assert_eq!(made.len(), 1);
}
