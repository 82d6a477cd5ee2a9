//! `start`: the fresh folder reads at once, tells what stands open, and writes nothing over.

use crate::copied::{demo, snapshot};
use std::fs;
use std::path::Path;
use std::process::{Command, Output};

fn run(arguments: &[&str], path: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(arguments)
        .arg(path)
        .env("NO_COLOR", "1")
        .output()
        .unwrap()
}

fn start(system: &Path, day: &str) -> String {
    let output = run(&["start", "--on", day], system);
    assert!(output.status.success(), "{output:?}");
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn a_fresh_visit_reads_without_an_error_in_every_system() {
    let book = demo();
    for system in [
        "brackwater/cold-store-1",
        "brackwater/flake-ice-1",
        "dunmarrow/ice-bank-1",
        "dunmarrow/process-chiller-1",
    ] {
        // Also in the midst of the history, where more stands open.
        for day in ["2025-02-19", "2026-03-20", "2026-09-01"] {
            start(&book.path().join(system), day);
        }
    }
    let output = run(&["check", "--format", "json"], book.path());
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(told["errors"], 0, "{:#}", told["diagnostics"]);
    assert_eq!(told["visits"].as_array().unwrap().len(), 17 + 12);
}

#[test]
fn nothing_is_written_over_and_a_second_visit_of_a_day_gets_its_number() {
    let book = demo();
    let system = book.path().join("brackwater/flake-ice-1");
    let before = snapshot(book.path());
    assert!(start(&system, "2026-06-17").starts_with("made brackwater/flake-ice-1/2026-06-17-2\n"));
    assert!(start(&system, "2026-06-17").starts_with("made brackwater/flake-ice-1/2026-06-17-3\n"));
    let after = snapshot(book.path());
    for (path, bytes) in &before {
        assert_eq!(after.get(path), Some(bytes), "{path}");
    }
    let made: Vec<&String> = after
        .keys()
        .filter(|path| !before.contains_key(*path))
        .collect();
    let folder = "brackwater/flake-ice-1/2026-06-17";
    let files = [
        "findings.md",
        "readings.toml",
        "refrigerant.toml",
        "visit.toml",
    ];
    let expected: Vec<String> = ["2", "3"]
        .iter()
        .flat_map(|number| files.map(|file| format!("{folder}-{number}/{file}")))
        .collect();
    assert_eq!(made, expected.iter().collect::<Vec<_>>());
}

#[test]
fn what_stands_open_on_the_day_is_looked_at_first_and_its_heading_can_be_used() {
    let book = demo();
    let system = book.path().join("dunmarrow/process-chiller-1");
    let said = start(&system, "2026-03-20");
    assert_eq!(
        said,
        "made dunmarrow/process-chiller-1/2026-03-20\n  look first: Suction flange of the evaporator (evap/suction-flange): left open since 2026-02-24\n"
    );
    let folder = system.join("2026-03-20");
    let visit = fs::read_to_string(folder.join("visit.toml")).unwrap();
    assert!(
        visit.contains("purpose = \"leak search and repair\""),
        "{visit}"
    );
    let findings = fs::read_to_string(folder.join("findings.md")).unwrap();
    let used = findings
        .replace("<!-- Suction", "Suction")
        .replace("\n-->", "")
        .replace("09:00 …", "09:00 bubbles, foam after 2 min")
        .replace("state: …", "state: open");
    fs::write(folder.join("findings.md"), used).unwrap();
    fs::write(
        folder.join("visit.toml"),
        visit.replace("# {", "{").replace("who", "t3"),
    )
    .unwrap();
    let output = run(&["check"], &folder);
    let told = String::from_utf8(output.stdout).unwrap();
    assert!(told.contains("no errors"), "{told}");
}

#[test]
fn what_no_visit_can_be_made_from_is_refused() {
    let book = demo();
    let before = snapshot(book.path());
    let system = book.path().join("dunmarrow/ice-bank-1");
    for (arguments, path, says) in [
        (
            vec!["start", "--on", "2026-02-30"],
            system.as_path(),
            "2026-02-30",
        ),
        (
            vec!["start", "--by", "t33"],
            system.as_path(),
            "did you mean `t3`?",
        ),
        (
            vec!["start", "--purpose", "tea"],
            system.as_path(),
            "leak search and repair",
        ),
        (vec!["start"], book.path(), "which system?"),
    ] {
        let output = run(&arguments, path);
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(2), "{said}");
        assert!(said.contains(says), "{said}");
    }
    assert_eq!(snapshot(book.path()), before);
}
