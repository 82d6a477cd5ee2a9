//! What must change no figure: the order of tables in a file, the end of lines, and an hour more on
//! every clock.

use crate::copied::{copied, demo};
use std::fs;
use std::path::Path;
use std::process::Command;

/// Every figure of a book, by visit, with its printed and SI values.
fn figures(root: &Path) -> Vec<String> {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["check", "--format", "json"])
        .arg(root)
        .output()
        .unwrap();
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(told["errors"], 0, "{:#}", told["diagnostics"]);
    let mut figures = Vec::new();
    for visit in told["visits"].as_array().unwrap() {
        let name = &visit["visit"];
        figures.push(format!("{name}: {}", visit["outcome"]));
        for figure in visit["figures"].as_array().unwrap() {
            figures.push(format!(
                "{name} {}: {} {}",
                figure["id"], figure["printed"], figure["value"]
            ));
        }
    }
    figures.sort();
    assert!(figures.len() > 25, "{figures:#?}");
    figures
}

/// Changes every text file of the demo book.
fn changed(change: impl Fn(&str, String) -> String) -> tempfile::TempDir {
    let book = demo();
    for entry in walkdir::WalkDir::new(book.path()) {
        let path = entry.unwrap().into_path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if name.ends_with(".toml") || name.ends_with(".md") || name.ends_with(".csv") {
            let text = fs::read_to_string(&path).unwrap();
            fs::write(&path, change(&name, text)).unwrap();
        }
    }
    book
}

#[test]
fn the_order_of_tables_changes_no_figure() {
    let book = changed(|name, text| {
        if !name.ends_with(".toml") {
            return text;
        }
        let mut parts: Vec<&str> = text.split("\n[[").collect();
        let top = parts.remove(0);
        // A file that begins with a table has no top of its own.
        if let Some(first) = top.strip_prefix("[[") {
            parts.reverse();
            let rest: String = parts
                .iter()
                .map(|part| format!("[[{}\n", part.trim_end()))
                .collect();
            return format!("{rest}\n[[{}\n", first.trim_end());
        }
        parts.reverse();
        let rest: String = parts
            .iter()
            .map(|part| format!("\n[[{}\n", part.trim_end()))
            .collect();
        format!("{}\n{rest}", top.trim_end())
    });
    assert_eq!(figures(book.path()), figures(demo().path()));
}

#[test]
fn the_end_of_lines_changes_no_figure() {
    let book = changed(|_, text| text.replace('\n', "\r\n"));
    assert_eq!(figures(book.path()), figures(demo().path()));
}

#[test]
fn a_byte_order_mark_changes_no_figure() {
    let book = changed(|_, text| format!("\u{feff}{text}"));
    assert_eq!(figures(book.path()), figures(demo().path()));
}

#[test]
fn the_names_of_folders_above_the_book_change_no_figure() {
    let folder = tempfile::tempdir().unwrap();
    let deep = folder.path().join("2026-01-01/été 樽/book");
    copied(demo().path(), &deep);
    assert_eq!(figures(&deep), figures(demo().path()));
}

/// Puts every clock of a text an hour on: `T08:10` and, at the start of an evidence, `08:10 `.
fn an_hour_on(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(at) = rest.find(':') {
        let hour = at
            .checked_sub(2)
            .and_then(|start| rest.get(start..at)?.parse::<u32>().ok());
        let minutes = rest
            .get(at + 1..at + 3)
            .is_some_and(|m| m.bytes().all(|b| b.is_ascii_digit()));
        if let Some(hour) = hour.filter(|_| minutes) {
            out += &rest[..at - 2];
            out += &format!("{:02}", hour + 1);
            out += &rest[at..at + 3];
            rest = &rest[at + 3..];
        } else {
            out += &rest[..=at];
            rest = &rest[at + 1..];
        }
    }
    out + rest
}

#[test]
fn an_hour_more_on_every_clock_changes_no_figure() {
    // Nights are left out: an hour more would carry them into another day.
    let without_night = |book: &Path| {
        fs::remove_dir_all(book.join("dunmarrow")).unwrap();
        fs::remove_dir_all(book.join("brackwater/flake-ice-1/2025-10-13")).unwrap();
    };
    let book = changed(|name, text| {
        if name.ends_with(".csv") {
            text
        } else {
            an_hour_on(&text)
        }
    });
    let plain = demo();
    without_night(book.path());
    without_night(plain.path());
    assert_eq!(figures(book.path()).len(), figures(plain.path()).len());
    assert_eq!(figures(book.path()), figures(plain.path()));
}

#[test]
fn an_hour_more_on_every_time_of_a_pressure_test_changes_no_figure() {
    let case = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/pressure-tests/book");
    let folder = tempfile::tempdir().unwrap();
    let later = folder.path().join("book");
    copied(&case, &later);
    for entry in walkdir::WalkDir::new(&later) {
        let path = entry.unwrap().into_path();
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if name == "readings.toml" || name == "visit.toml" {
            let text = fs::read_to_string(&path).unwrap();
            fs::write(&path, an_hour_on(&text)).unwrap();
        }
    }
    assert_eq!(figures(&later), figures(&case));
}
