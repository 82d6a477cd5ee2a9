//! One slip of the pen in one line of the demo book yields one error, at its line.

use crate::copied::demo;
use rimebook::job::assemble;
use rimebook::notes::{read_folder, read_notes};
use rimebook::text::{Diagnostics, Severity, Sources};
use std::fs;
use std::path::Path;

/// Errors of a book as `path:line: name`.
fn errors(root: &Path) -> Vec<String> {
    let mut sources = Sources::default();
    let mut diagnostics = Diagnostics::default();
    let folder = read_folder(root, &mut sources, &mut diagnostics).unwrap();
    let notes = read_notes(folder, &mut sources, &mut diagnostics);
    assemble(notes, &sources, &mut diagnostics);
    diagnostics.sort(&sources);
    diagnostics
        .iter()
        .filter(|d| d.severity == Severity::Error)
        .map(|d| format!("{}: {}", sources.place(d.primary.span), d.name))
        .collect()
}

/// Visits that hold every kind of table; the others are left out for speed.
const VISITS: [&str; 3] = [
    "brackwater/flake-ice-1/2026-06-17",
    "brackwater/cold-store-1/2026-04-21",
    "dunmarrow/process-chiller-1/2026-05-19",
];

fn small() -> tempfile::TempDir {
    let book = demo();
    for system in [
        "brackwater/flake-ice-1",
        "brackwater/cold-store-1",
        "dunmarrow/process-chiller-1",
        "dunmarrow/ice-bank-1",
    ] {
        for visit in fs::read_dir(book.path().join(system)).unwrap() {
            let visit = visit.unwrap().path();
            if visit.is_dir() && !VISITS.iter().any(|kept| visit.ends_with(kept)) {
                fs::remove_dir_all(visit).unwrap();
            }
        }
    }
    book
}

/// Each slip is made on every so-manieth line, for speed.
const EVERY: usize = 4;

/// A slip: what it is, and what it makes of a line, if it can happen there.
type Slip = (&'static str, fn(&str) -> Option<String>);

fn key_and_value(line: &str) -> Option<(&str, &str)> {
    let (key, value) = line.split_once(" = ")?;
    let plain = key.bytes().all(|b| b.is_ascii_lowercase() || b == b'-');
    (plain && !key.is_empty()).then_some((key, value))
}

const SLIPS: [Slip; 7] = [
    ("a key misspelt", |line| {
        let (key, value) = key_and_value(line)?;
        let cut = key.len() - 1;
        Some(format!("{}q{} = {value}", &key[..cut], &key[cut..]))
    }),
    ("no closing quotation mark", |line| {
        let (key, value) = key_and_value(line)?;
        let open = value
            .strip_suffix('"')
            .filter(|open| open.matches('"').count() == 1)?;
        Some(format!("{key} = {open}"))
    }),
    ("no quotation marks", |line| {
        let (key, value) = key_and_value(line)?;
        let bare = value.strip_prefix('"')?.strip_suffix('"')?;
        Some(format!("{key} = {bare}"))
    }),
    ("no equals sign", |line| {
        let (key, value) = key_and_value(line)?;
        Some(format!("{key} {value}"))
    }),
    ("a quantity without its unit", |line| {
        let (key, value) = key_and_value(line)?;
        let text = value.strip_prefix('"')?.strip_suffix('"')?;
        let (number, unit) = text.split_once(' ')?;
        number.parse::<f64>().ok()?;
        let quantity = !unit.contains("of ") && !unit.contains("R-") && !unit.contains(',');
        let text_key = matches!(
            key,
            "accuracy"
                | "reference-leak"
                | "address"
                | "detector"
                | "note"
                | "answer"
                | "telephone"
        );
        (quantity && !text_key).then(|| format!("{key} = \"{number}\""))
    }),
    ("a header misspelt", |line| {
        let name = line.strip_prefix("[[")?.strip_suffix("]]")?;
        Some(format!("[[{name}q]]"))
    }),
    ("a header half closed", |line| {
        line.strip_suffix("]]")
            .filter(|line| line.starts_with("[["))
            .map(|open| format!("{open}]"))
    }),
];

#[test]
fn one_slip_yields_one_error_at_its_line() {
    let book = small();
    let mut wrong = String::new();
    let mut made = 0;
    for entry in walkdir::WalkDir::new(book.path()).sort_by_file_name() {
        let path = entry.unwrap().into_path();
        if path.extension().is_none_or(|ending| ending != "toml") {
            continue;
        }
        let name = path
            .strip_prefix(book.path())
            .unwrap()
            .to_string_lossy()
            .replace('\\', "/");
        let whole = fs::read_to_string(&path).unwrap();
        let lines: Vec<&str> = whole.lines().collect();
        for (index, line) in lines.iter().enumerate() {
            for (number, (what, slip)) in SLIPS.into_iter().enumerate() {
                if (index + number) % EVERY != 0 {
                    continue;
                }
                let Some(slipped) = slip(line) else { continue };
                let mut changed = lines.clone();
                changed[index] = &slipped;
                fs::write(&path, changed.join("\n") + "\n").unwrap();
                made += 1;
                let told = errors(book.path());
                let place = format!("{name}:{}: ", index + 1);
                if told.len() != 1 || !told[0].starts_with(&place) {
                    wrong += &format!("{what}: {place}{slipped}\n    {told:?}\n");
                }
            }
        }
        fs::write(&path, whole).unwrap();
    }
    assert!(made > 300, "only {made} slips");
    assert!(wrong.is_empty(), "\n{wrong}");
}
