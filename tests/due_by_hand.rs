//! `due` and `records` on the demo book against tables made by hand from its notes, without this
//! program. The book is invented and the tables with it: nothing here is a published value.

use crate::copied::demo;
use std::path::Path;
use std::process::Command;

fn said(book: &Path, arguments: &[&str]) -> (String, i32) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(arguments)
        .current_dir(book)
        .output()
        .unwrap();
    let text = String::from_utf8(output.stdout).unwrap();
    (text, output.status.code().unwrap())
}

/// Last day, what and where of each item of `due`.
fn due(book: &Path, on: &str, within: &str) -> (Vec<(String, String, String)>, i32) {
    let (text, code) = said(
        book,
        &["due", "--on", on, "--within", within, "--format", "json"],
    );
    let told: serde_json::Value = serde_json::from_str(&text).unwrap();
    let field = |item: &serde_json::Value, name: &str| item[name].as_str().unwrap().to_owned();
    let items = told["items"].as_array().unwrap();
    let items = items
        .iter()
        .map(|item| (field(item, "by"), field(item, "what"), field(item, "where")))
        .collect();
    (items, code)
}

fn compare(found: &[(String, String, String)], table: &[(&str, &str, &str)]) {
    let mut found: Vec<(&str, &str, &str)> = found
        .iter()
        .map(|(by, what, place)| (by.as_str(), what.as_str(), place.as_str()))
        .collect();
    assert!(
        found.windows(2).all(|pair| pair[0].0 <= pair[1].0),
        "soonest first"
    );
    let mut table = table.to_vec();
    found.sort_unstable();
    table.sort_unstable();
    assert_eq!(found, table);
}

const FLAKE_A: &str = "brackwater/flake-ice-1, circuit a";
const FLAKE_B: &str = "brackwater/flake-ice-1, circuit b";
const SOLENOID: &str = "brackwater/flake-ice-1, circuit a, drum-a/solenoid-inlet";
const CHILLER: &str = "dunmarrow/process-chiller-1";

#[test]
fn a_year_from_august_2026_is_as_by_hand() {
    // Leak checks: 47 kg of R-449A are 65.6 t, so six months from 9 July 2026, which went over all
    // of both circuits. The chiller was over 30 % on 19 May 2026; its follow-up test of 27 May
    // starts the year to an inspection. Yearly from the last day noted: checks and calibrations.
    // Certificates: only t2 within the year. Proof tests: none before November 2028.
    let yearly = [
        (
            "2026-10-06",
            "Calibrate pressure gauge g-7",
            "instrument g-7",
        ),
        ("2026-10-06", "Calibrate vacuum gauge g-9", "instrument g-9"),
        (
            "2026-10-06",
            "Calibrate pipe thermometer th-1",
            "instrument th-1",
        ),
        (
            "2026-12-01",
            "Calibrate refrigerant scale s-1",
            "instrument s-1",
        ),
        (
            "2027-01-09",
            "Check electronic leak detector ld-4",
            "instrument ld-4",
        ),
        (
            "2027-01-09",
            "Check ultrasonic leak detector us-1",
            "instrument us-1",
        ),
        (
            "2027-01-12",
            "Check electronic leak detector ld-2",
            "instrument ld-2",
        ),
        (
            "2027-03-02",
            "Calibrate pressure gauge g-21",
            "instrument g-21",
        ),
        (
            "2027-03-02",
            "Calibrate vacuum gauge g-22",
            "instrument g-22",
        ),
        (
            "2027-03-02",
            "Calibrate pipe thermometer th-2",
            "instrument th-2",
        ),
        (
            "2027-03-02",
            "Calibrate refrigerant scale s-2",
            "instrument s-2",
        ),
        (
            "2027-03-09",
            "Calibrate pressure gauge g-8",
            "instrument g-8",
        ),
        (
            "2027-03-09",
            "Calibrate pressure and temperature logger lg-1",
            "instrument lg-1",
        ),
    ];
    let mut table = vec![
        ("2027-01-09", "Leak check", FLAKE_A),
        ("2027-01-09", "Leak check", FLAKE_B),
        (
            "2027-05-27",
            "Leak inspection of all visible and accessible parts",
            CHILLER,
        ),
        (
            "2027-05-31",
            "Renew the certificate of Tomas Underquay",
            "person t2",
        ),
    ];
    table.extend(yearly);
    let book = demo();
    let (found, code) = due(book.path(), "2026-08-01", "365 days");
    compare(&found, &table);
    assert_eq!(code, 3);
}

#[test]
fn a_repair_waits_for_its_re_check_as_by_hand() {
    // On 25 May 2026: the repair of 3 February was to be checked by 3 March; the follow-up test of
    // the chiller, back in normal operation on 19 May, is due by the 29th; the last whole leak check
    // of the flake ice machine is that of 20 August 2024 in the site's logbook.
    let checks = [
        ("2025-02-20", "Leak check", FLAKE_A),
        ("2025-02-20", "Leak check", FLAKE_B),
    ];
    let book = demo();
    let mut table = checks.to_vec();
    table.push(("2026-03-03", "Check the repair again", SOLENOID));
    table.push(("2026-05-29", "Follow-up verification test", CHILLER));
    let (found, _) = due(book.path(), "2026-05-25", "10 days");
    compare(&found, &table);
    // On 1 July: that joint was repaired anew on 17 June, so one month from then.
    let mut table = checks.to_vec();
    table.push(("2026-07-17", "Check the repair again", SOLENOID));
    let (found, _) = due(book.path(), "2026-07-01", "30 days");
    compare(&found, &table);
    // Nothing is due in August 2026: exit code 0.
    assert_eq!(due(book.path(), "2026-08-01", "30 days"), (Vec::new(), 0));
}

/// Field, what it is about, and the file it should stand in.
type Missing = (String, String, String);

/// Fields and missing fields of each system, and the missing ones.
fn records(book: &Path) -> (Vec<(String, usize, usize)>, Vec<Missing>, i32) {
    let (text, code) = said(book, &["records", "--on", "2026-08-01", "--format", "json"]);
    let told: serde_json::Value = serde_json::from_str(&text).unwrap();
    let mut counts = Vec::new();
    let mut missing = Vec::new();
    for system in told["systems"].as_array().unwrap() {
        let fields = system["fields"].as_array().unwrap();
        let text = |field: &serde_json::Value, name: &str| field[name].as_str().unwrap().to_owned();
        let before = missing.len();
        for field in fields.iter().filter(|field| field["missing"] == true) {
            missing.push((
                text(field, "field"),
                text(field, "about"),
                text(field, "place"),
            ));
        }
        counts.push((
            system["system"].as_str().unwrap().to_owned(),
            fields.len(),
            missing.len() - before,
        ));
    }
    (counts, missing, code)
}

#[test]
fn the_records_of_the_demo_are_counted_as_by_hand() {
    // Flake ice machine, Europe: operator, address, telephone, company and its certificate; gas and
    // charge of two circuits (9). Seven visits with ten people, each with a certificate (20). Seven
    // charges with their origin (14), four recoveries with their destination (8), one whole check (1;
    // that of 12 August 2025 says it was not whole), five repairs with proof and cause (10).
    // Cold store: below 5 t, no rule. Chiller, part 84, visits of 2026 only: 6 of the system; 6 on
    // 24 February (two of them parts with their work), 12 on 19 May (three), 3 on 27 May: the person
    // and the follow-up of both repairs. Ice bank, part 82: 5 of the system, 7 on 10 June 2025;
    // the visit of 11 August 2026 comes after the day.
    let table = [
        ("brackwater/cold-store-1", 0, 0),
        ("brackwater/flake-ice-1", 62, 0),
        ("dunmarrow/ice-bank-1", 12, 0),
        ("dunmarrow/process-chiller-1", 27, 0),
    ];
    let book = demo();
    let (counts, missing, code) = records(book.path());
    let counts: Vec<(&str, usize, usize)> = counts
        .iter()
        .map(|(system, fields, missing)| (system.as_str(), *fields, *missing))
        .collect();
    assert_eq!(counts, table);
    assert!(missing.is_empty(), "{missing:?}");
    assert_eq!(code, 0);
}

#[test]
fn a_field_that_is_not_written_is_missing_where_it_should_stand() {
    let book = demo();
    let edit = |file: &str, from: &str| {
        let path = book.path().join(file);
        let text = std::fs::read_to_string(&path).unwrap();
        assert!(text.contains(from), "{file}: {from}");
        std::fs::write(path, text.replacen(from, "", 1)).unwrap();
    };
    edit("brackwater/site.toml", "telephone = \"01632 960114\"\n");
    edit(
        "brackwater/flake-ice-1/2026-02-03/findings.md",
        "- cause: nut backed off, line still not clipped\n",
    );
    edit(
        "dunmarrow/process-chiller-1/system.toml",
        "full-charge-by = \"manufacturer's plate\"\n",
    );
    edit(
        "dunmarrow/ice-bank-1/2025-06-10/readings.toml",
        "all-visible-and-accessible-inspected = true\n",
    );
    let (_, missing, code) = records(book.path());
    let missing: Vec<(&str, &str)> = missing
        .iter()
        .map(|(field, _, place)| (field.as_str(), place.as_str()))
        .collect();
    // Without its certification the search of the ice bank is no inspection, so that nothing is asked.
    let table = [
        ("telephone of the operator", "brackwater/site.toml"),
        (
            "cause of the leak",
            "brackwater/flake-ice-1/2026-02-03/findings.md",
        ),
        (
            "how the full charge was determined",
            "dunmarrow/process-chiller-1/system.toml",
        ),
    ];
    assert_eq!(missing, table);
    assert_eq!(code, 3);
}

#[test]
fn the_calendar_is_as_rfc_5545_asks_and_the_same_on_every_day() {
    let book = demo();
    let arguments = [
        "due",
        "--on",
        "2026-05-25",
        "--within",
        "400 days",
        "--format",
        "calendar",
    ];
    let (text, _) = said(book.path(), &arguments);
    assert_eq!(text, said(book.path(), &arguments).0);
    assert!(text.ends_with("END:VCALENDAR\r\n"));
    assert!(
        text.split("\r\n").all(|line| !line.contains('\n')),
        "CRLF only"
    );
    let long = text.split("\r\n").find(|line| line.len() > 75);
    assert_eq!(long, None, "75 octets to a line");
    let unfolded = text.replace("\r\n ", "");
    let values = |key: &str| -> Vec<&str> {
        unfolded
            .split("\r\n")
            .filter_map(|line| line.strip_prefix(key))
            .collect()
    };
    let days = values("DTSTART;VALUE=DATE:");
    assert_eq!(days.len(), values("BEGIN:").len() - 1);
    assert_eq!(days.first(), Some(&"20250220"));
    assert!(values("SUMMARY:").contains(&"Follow-up verification test"));
    let mut names = values("UID:");
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), days.len(), "each item has its own name");
    assert!(
        values("DTSTAMP:")
            .iter()
            .all(|stamp| stamp.ends_with("T000000Z"))
    );
    // The same item keeps its name on another day.
    let later = said(
        book.path(),
        &["due", "--on", "2026-05-27", "--format", "calendar"],
    )
    .0;
    let name = |text: &str| {
        text.lines()
            .find(|line| line.starts_with("UID:"))
            .map(str::to_owned)
    };
    assert_eq!(name(&text), name(&later));
}
