//! Case folders: a small book in, the whole output of `check` out.
//!
//! Each folder of `tests/cases/` holds `book/` and what `rimebook check book` says of it, as text
//! (`check.txt`) and as JSON (`check.json`). `RIMEBOOK_REFRESH=1` writes both anew; the git diff is
//! the review. `links.txt`, where it is there, names symbolic links to make: `link -> target`.
//!
//! `commands.txt`, where it is there, names further commands, one to a line, without `rimebook` and
//! run in `book/` one after the other; `"…"` holds what has spaces together. What each says stands in
//! `expected/NUMBER-WORD.txt`, by line number and first word, with the text of every file it made.

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

/// The parts of a command line; quotation marks hold what has spaces together.
fn arguments(line: &str) -> Vec<&str> {
    let mut parts = Vec::new();
    for (index, part) in line.split('"').enumerate() {
        if index % 2 == 1 {
            parts.push(part);
        } else {
            parts.extend(part.split_whitespace());
        }
    }
    parts
}

/// What a command line says in a book, and the files that it made there. A file that was there before
/// must stay as it was.
fn said(book: &Path, line: &str) -> String {
    let before = snapshot(book);
    let mut said = run(book, &arguments(line));
    let after = snapshot(book);
    for (path, bytes) in &before {
        assert_eq!(after.get(path), Some(bytes), "`{line}` changed {path}");
    }
    for (path, bytes) in after.iter().filter(|(path, _)| !before.contains_key(*path)) {
        said += &format!("\n{path}:\n{}", String::from_utf8_lossy(bytes));
    }
    said
}

/// The difference of what was found from what a file expects; `RIMEBOOK_REFRESH` writes the file.
pub fn difference(path: &Path, title: &str, found: &str) -> String {
    if std::env::var_os("RIMEBOOK_REFRESH").is_some() {
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, found).unwrap();
        return String::new();
    }
    let expected = fs::read_to_string(path).unwrap_or_default();
    if expected == found {
        return String::new();
    }
    let diff = TextDiff::from_lines(expected.as_str(), found);
    let mut diff = diff.unified_diff();
    diff.header(title, "found").to_string()
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
        told += &difference(&case.join(file), &format!("{name}/{file}"), &found);
    }
    if snapshot(&book) != before {
        told += &format!("{name}: check changed the book\n");
    }
    let commands = fs::read_to_string(case.join("commands.txt")).unwrap_or_default();
    for (index, line) in commands.lines().enumerate() {
        let word = line.split_whitespace().next().unwrap();
        let file = format!("expected/{}-{word}.txt", index + 1);
        let found = said(&book, line);
        told += &difference(&case.join(&file), &format!("{name}/{file}"), &found);
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
