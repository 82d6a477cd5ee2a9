//! Case folders: a small book in, the whole output of `check` out.
//!
//! Each folder of `tests/cases/` holds `book/` and what `rimebook check book` says of it, as text
//! (`check.txt`) and as JSON (`check.json`). `RIMEBOOK_REFRESH=1` writes both anew; the git diff is
//! the review. `links.txt`, where it is there, names symbolic links to make: `link -> target`.

use crate::copied::{copied, snapshot};
use similar::TextDiff;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Cases that say something else without the typesetter and its fonts.
const NEED_PDF: [&str; 1] = ["character-no-font-prints"];

/// What a run says: standard error, then standard output, then the exit code.
fn run(folder: &Path, arguments: &[&str]) -> String {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(arguments)
        .current_dir(folder)
        .env("NO_COLOR", "1")
        .output()
        .unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    let code = output.status.code().unwrap();
    let mut said = text(output.stderr) + &text(output.stdout);
    if !arguments.contains(&"json") {
        said += &format!("exit code {code}\n");
    }
    said
}

fn make_links(case: &Path, book: &Path) {
    let links = fs::read_to_string(case.join("links.txt")).unwrap_or_default();
    for line in links.lines() {
        let (link, target) = line.split_once(" -> ").unwrap();
        #[cfg(unix)]
        std::os::unix::fs::symlink(target, book.join(link)).unwrap();
    }
}

/// Runs a case and tells every difference from what is expected.
fn differences(case: &Path) -> String {
    let name = case.file_name().unwrap().to_string_lossy();
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book");
    copied(&case.join("book"), &book);
    make_links(case, &book);
    let before = snapshot(&book);
    let mut told = String::new();
    for (file, arguments) in [
        ("check.txt", vec!["check", "book"]),
        ("check.json", vec!["check", "book", "--format", "json"]),
    ] {
        let found = run(folder.path(), &arguments);
        let path = case.join(file);
        if std::env::var_os("RIMEBOOK_REFRESH").is_some() {
            fs::write(&path, &found).unwrap();
            continue;
        }
        let expected = fs::read_to_string(&path).unwrap_or_default();
        if expected != found {
            let diff = TextDiff::from_lines(&expected, &found);
            let mut diff = diff.unified_diff();
            told += &diff.header(&format!("{name}/{file}"), "found").to_string();
        }
    }
    if snapshot(&book) != before {
        told += &format!("{name}: check changed the book\n");
    }
    told
}

#[test]
fn every_case_says_what_is_expected_and_changes_nothing() {
    let cases = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases");
    let mut folders: Vec<PathBuf> = fs::read_dir(cases)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.join("book").is_dir())
        .filter(|path| cfg!(feature = "pdf") || !NEED_PDF.iter().any(|name| path.ends_with(name)))
        .collect();
    folders.sort();
    let told: String = folders.iter().map(|case| differences(case)).collect();
    assert!(told.is_empty(), "\n{told}");
}
