//! Nothing a note contains makes the reader panic or hang: files cut short, bytes changed, arbitrary
//! Markdown, TOML, logs and quantities.

use crate::copied::demo;
use proptest::prelude::*;
use rimebook::job::assemble;
use rimebook::notes::{read_folder, read_notes};
use rimebook::text::{Diagnostics, Look, Sources, render, to_json};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// A guard against what hangs or grows with the square of a text; no measure of speed.
const MOST: Duration = Duration::from_secs(if cfg!(debug_assertions) { 90 } else { 30 });

/// Reads a book as far as the validated model and draws what is told of it.
fn read(root: &Path) {
    let mut sources = Sources::default();
    let mut diagnostics = Diagnostics::default();
    let folder = read_folder(root, &mut sources, &mut diagnostics).unwrap();
    let notes = read_notes(folder, &mut sources, &mut diagnostics);
    assemble(notes, &sources, &mut diagnostics);
    diagnostics.sort(&sources);
    render(&diagnostics, &sources, Look::default());
    to_json(&diagnostics, &sources);
}

fn read_in_time(root: &Path, what: &str) {
    let start = Instant::now();
    read(root);
    let took = start.elapsed();
    assert!(took < MOST, "{what} took {took:?}");
}

/// A book with one system and one visit of the demo book: small, and with every kind of file.
fn small() -> (tempfile::TempDir, Vec<PathBuf>) {
    let book = demo();
    let at = |path: &str| book.path().join(path);
    fs::remove_dir_all(at("dunmarrow")).unwrap();
    fs::remove_dir_all(at("brackwater/cold-store-1")).unwrap();
    for visit in fs::read_dir(at("brackwater/flake-ice-1")).unwrap() {
        let visit = visit.unwrap().path();
        if visit.is_dir() && !visit.ends_with("2025-02-18") {
            fs::remove_dir_all(visit).unwrap();
        }
    }
    let texts = walkdir::WalkDir::new(book.path())
        .sort_by_file_name()
        .into_iter()
        .map(|entry| entry.unwrap().into_path())
        .filter(|path| {
            let ending = path.extension().and_then(|ending| ending.to_str());
            matches!(ending, Some("toml" | "md" | "csv"))
        })
        .collect();
    (book, texts)
}

/// A fixed sequence of numbers, by the constants of Knuth's MMIX generator.
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, end: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 33) as usize) % end.max(1)
    }
}

#[test]
fn every_file_may_end_anywhere() {
    let (book, texts) = small();
    let mut numbers = Numbers(1);
    for path in texts {
        let whole = fs::read(&path).unwrap();
        for _ in 0..24 {
            let end = numbers.below(whole.len());
            fs::write(&path, &whole[..end]).unwrap();
            read_in_time(book.path(), &format!("{} cut at {end}", path.display()));
        }
        fs::write(&path, whole).unwrap();
    }
}

#[test]
fn every_file_may_hold_any_bytes() {
    const BYTES: &[u8] = b"\"'[]{}=#\n\r\t\0\xff\xc2,.-+0123456789eE:|<>!*_()\\ ";
    let (book, texts) = small();
    let mut numbers = Numbers(2);
    for path in texts {
        let whole = fs::read(&path).unwrap();
        for _ in 0..24 {
            let mut bytes = whole.clone();
            for _ in 0..=numbers.below(6) {
                let at = numbers.below(bytes.len());
                match numbers.below(3) {
                    0 => bytes[at] = BYTES[numbers.below(BYTES.len())],
                    1 => bytes.insert(at, BYTES[numbers.below(BYTES.len())]),
                    _ => drop(bytes.remove(at)),
                }
            }
            fs::write(&path, &bytes).unwrap();
            read_in_time(book.path(), &format!("{} changed", path.display()));
        }
        fs::write(&path, whole).unwrap();
    }
}

#[test]
fn deep_and_long_texts_are_read_in_time() {
    let (book, texts) = small();
    let deep = |open: &str, close: &str| open.repeat(3000) + &close.repeat(3000);
    for path in texts {
        let whole = fs::read(&path).unwrap();
        for text in [
            format!("x = {}\n", deep("[", "]")),
            format!("x = {}\n", deep("{ a = ", " }")),
            deep("[[", "]]"),
            deep("> ", "\n"),
            deep("- ", "\n"),
            format!(
                "## a {{#{}}}\n\n- kind: {}\n",
                "b".repeat(100_000),
                "*".repeat(50_000)
            ),
            format!("ambient = \"{} °C\"\n", "9".repeat(100_000)),
            "t_s,p_micron\n".to_owned() + &"0,1\n".repeat(20_000),
        ] {
            fs::write(&path, &text).unwrap();
            let begins: String = text.chars().take(12).collect();
            read_in_time(book.path(), &format!("{} with {begins:?}", path.display()));
        }
        fs::write(&path, whole).unwrap();
    }
}

/// A book of one visit with these files in it.
fn book_of(files: &[(&str, &str)]) -> tempfile::TempDir {
    let book = tempfile::tempdir().unwrap();
    let visit = book.path().join("s/y/2026-01-02");
    fs::create_dir_all(&visit).unwrap();
    fs::write(book.path().join("rimebook.toml"), "").unwrap();
    for (name, text) in files {
        fs::write(visit.join(name), text).unwrap();
    }
    book
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn findings_of_any_markdown_read(
        text in "(##? [a-z ]{0,6}(\\{#[a-z/]{0,4}\\})?\n)?(\n?- ?(kind|evidence|size|proof|state|private)?:? ?[ -~°±“\n]{0,24}\n|  - ([0-9]{1,2}:[0-9]{1,2} )?[a-z]{0,9},?[ -~]{0,9}\n|!\\[[a-z]?\\]\\([a-z./]{0,9}( \"[ -~]{0,9}\")?\\)\n|[ -~\n]{0,24}){0,12}"
    ) {
        read(book_of(&[("findings.md", &text)]).path());
    }

    #[test]
    fn notes_of_any_toml_read(
        text in "((\\[\\[?(movement|search|pressure-test|vacuum-test)\\]?\\]?|(at|kind|mass|before|start|log|areas) ?=? ?([\"“]?[ -~°±]{0,12}[\"”]?|\\[[ -~]{0,9}\\]?|\\{[ -~]{0,18}\\}?))\n){0,10}"
    ) {
        read(book_of(&[("refrigerant.toml", &text), ("readings.toml", &text)]).path());
    }

    #[test]
    fn logs_of_any_rows_read(rows in "([0-9.,;\t:T -]{0,16}\n){0,12}") {
        let test = "[[vacuum-test]]\nid = \"v\"\nisolated = 2026-01-02T10:00\nlog = { file = \"r.csv\", time = \"t_s\", pressure = \"p_Pa\" }\n";
        let log = "t_s,p_Pa\n".to_owned() + &rows;
        read(book_of(&[("readings.toml", test), ("r.csv", &log)]).path());
    }
}
