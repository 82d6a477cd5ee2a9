//! The PDFs of the demo book: same bytes again, nothing private, nothing of the photographs' metadata.

use crate::copied::demo;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn rimebook(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(arguments)
        .output()
        .expect("the program runs")
}

fn report(path: &Path, into: &Path) -> Output {
    rimebook(&["report", &path.to_string_lossy(), "--into", &into.to_string_lossy()])
}

fn pdfs(folder: &Path) -> Vec<PathBuf> {
    let mut pdfs: Vec<PathBuf> = walkdir::WalkDir::new(folder)
        .into_iter()
        .filter_map(Result::ok)
        .map(walkdir::DirEntry::into_path)
        .filter(|path| path.extension().is_some_and(|ending| ending == "pdf"))
        .collect();
    pdfs.sort();
    pdfs
}

fn holds(bytes: &[u8], text: &str) -> bool {
    bytes.windows(text.len()).any(|window| window == text.as_bytes())
}

#[test]
fn the_same_notes_give_the_same_bytes_elsewhere_and_again() {
    let (first, second) = (demo(), demo());
    let visit = "brackwater/flake-ice-1/2026-06-17";
    let (a, b) = (first.path().join("a"), second.path().join("b"));
    assert!(report(&first.path().join(visit), &a).status.success());
    assert!(report(&second.path().join(visit), &b).status.success());
    let (a, b) = (pdfs(&a), pdfs(&b));
    assert_eq!(a.len(), 1);
    let read = |path: &PathBuf| std::fs::read(path).expect("a PDF");
    assert!(read(&a[0]) == read(&b[0]), "the two PDFs differ");
}

#[test]
fn photographs_leave_their_metadata_behind() {
    let book = demo();
    let visit = book.path().join("brackwater/flake-ice-1/2026-06-17");
    let photograph = pdfs_of_photographs(&visit);
    assert!(
        photograph.iter().any(|bytes| holds(bytes, "DEMO-SERIAL-000417")),
        "the demo's photographs carry a camera's serial number"
    );
    let out = book.path().join("out");
    assert!(report(&visit, &out).status.success());
    let bytes = std::fs::read(&pdfs(&out)[0]).expect("a PDF");
    for mark in ["DEMO-SERIAL-000417", "DEMO-OWNER-NAME", "Exif\0\0", "Invented Camera Works"] {
        assert!(!holds(&bytes, mark), "{mark} reached the PDF");
    }
}

fn pdfs_of_photographs(visit: &Path) -> Vec<Vec<u8>> {
    walkdir::WalkDir::new(visit.join("photos"))
        .into_iter()
        .filter_map(Result::ok)
        .filter(|entry| entry.file_type().is_file())
        .map(|entry| std::fs::read(entry.path()).expect("a photograph"))
        .collect()
}

#[test]
fn an_error_in_a_file_it_reads_holds_the_report_back_and_a_draft_does_not() {
    let book = demo();
    let visit = book.path().join("brackwater/cold-store-1/2026-05-12");
    let file = visit.join("visit.toml");
    let text = std::fs::read_to_string(&file).expect("a visit");
    let broken = text.replacen("ambient", "ambeint", 1);
    assert_ne!(text, broken);
    std::fs::write(&file, &broken).expect("written");
    let out = book.path().join("out");
    let refused = report(&visit, &out);
    assert_eq!(refused.status.code(), Some(1));
    assert!(!out.exists(), "something was written");
    let told = String::from_utf8_lossy(&refused.stderr).into_owned();
    assert!(told.contains("did you mean `ambient`?"), "{told}");
    let earlier = book.path().join("brackwater/cold-store-1/2025-05-06");
    assert!(
        report(&earlier, &out).status.success(),
        "an earlier visit does not read the broken file"
    );
    let draft = rimebook(&[
        "report",
        &visit.to_string_lossy(),
        "--into",
        &out.to_string_lossy(),
        "--draft",
    ]);
    assert!(draft.status.success());
    assert_eq!(pdfs(&out).len(), 2);
    assert_eq!(std::fs::read_to_string(&file).expect("a visit"), broken, "a note was changed");
}

#[test]
fn text_of_the_notes_is_never_evaluated() {
    let book = demo();
    let visit = book.path().join("brackwater/cold-store-1/2026-04-21");
    let file = visit.join("findings.md");
    let text = std::fs::read_to_string(&file).expect("findings");
    let hostile = format!("{text}\n\n#panic(\"x\") $ x^2 $ <label> #eval(\"1\") @ref \\u{{41}} [a](b\n");
    std::fs::write(&file, hostile).expect("written");
    let out = book.path().join("out");
    let made = report(&visit, &out);
    assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
}

#[test]
fn a_report_without_photographs_is_small() {
    let book = demo();
    let out = book.path().join("out");
    assert!(report(&book.path().join("brackwater/cold-store-1/2025-05-06"), &out).status.success());
    let length = std::fs::metadata(&pdfs(&out)[0]).expect("a PDF").len();
    assert!(length < 250_000, "{length} bytes");
}
