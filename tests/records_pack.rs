//! The records pack of the demo book as data and as a PDF. What is expected was read from the notes.

use rimebook::report::compose::{Scene, records_pack};
use rimebook::report::records_data::{RecordField, RecordsPack};
use rimebook::report::visit_figures::VisitFigures;
use rimebook::ruleset::records;
use std::path::Path;

fn of(book: &Path, system: &str) -> RecordsPack {
    let (loaded, target) = rimebook::command::load(&book.join(system)).unwrap();
    let (site, system, number) = loaded.last_visits_of(&target)[0];
    let visit = &system.visits[number];
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit,
        figures: VisitFigures::of(site, system, number).unwrap(),
        fingerprint: String::new(),
    };
    let on = visit.last_day();
    let rows = records(&loaded.book, site, system, number + 1, on);
    records_pack(&scene, &rows, on)
}

fn demo() -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example")
}

fn fields(pack: &RecordsPack) -> impl Iterator<Item = &RecordField> {
    pack.rules
        .iter()
        .flat_map(|rule| &rule.groups)
        .flat_map(|group| &group.fields)
}

#[test]
fn every_field_has_its_value_and_its_line_or_is_called_missing() {
    for system in ["brackwater/flake-ice-1", "dunmarrow/process-chiller-1"] {
        let pack = of(&demo(), system);
        assert!(fields(&pack).count() > 10, "{system}");
        for field in fields(&pack) {
            assert!(!field.asked.is_empty() && !field.source.is_empty());
            assert_eq!(field.missing, field.value.is_empty(), "{system}: {field:?}");
            let line = field.place.rsplit(':').next().unwrap();
            assert_eq!(field.missing, line.parse::<u32>().is_err(), "{field:?}");
        }
    }
}

/// Law 82.157(l) and Article 7(2): three and five years.
#[test]
fn each_rule_says_how_long_its_records_are_kept() {
    let european = of(&demo(), "brackwater/flake-ice-1");
    assert_eq!(european.rules.len(), 1);
    assert!(european.rules[0].lead[1].contains("at least 5 years"));
    let american = of(&demo(), "dunmarrow/process-chiller-1");
    assert!(
        american
            .rules
            .iter()
            .all(|rule| rule.lead[1].contains("at least 3 years"))
    );
}

const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// The moment that a row names: the last day of `17 and 18 June 2026` is not its beginning.
fn moment(when: &str) -> (u16, usize, u8, String) {
    let when = when.replace('\u{a0}', " ");
    let (day, clock) = when.split_once(", ").unwrap_or((&when, ""));
    let words: Vec<&str> = day.split(' ').collect();
    let month = words[words.len() - 2];
    let month = MONTHS.iter().position(|name| *name == month).unwrap();
    let year = words[words.len() - 1].parse().unwrap();
    (year, month, words[0].parse().unwrap(), clock.to_owned())
}

#[test]
fn events_stand_in_order_of_time_each_with_its_line() {
    let pack = of(&demo(), "brackwater/flake-ice-1");
    let rows = &pack.events.rows;
    assert!(rows.is_sorted_by_key(|row| moment(&row.cells[0])));
    assert!(rows.iter().all(|row| row.cells[4].contains(':')));
    assert_eq!(moment(&rows[0].cells[0]), (2023, 3, 18, String::new()));
    let told = |what: &str| rows.iter().any(|row| row.cells[1].starts_with(what));
    for what in [
        "Repair",
        "Check of the repair",
        "Check of an earlier repair",
        "Leak found",
        "Charged, ",
        "Recovered, ",
        "Leak inspection",
        "Pressure test",
        "Vacuum test",
        "Visit: verification",
    ] {
        assert!(told(what), "{what}: {rows:?}");
    }
    let retrofit = rows.iter().find(|row| row.cells[1] == "Visit: retrofit");
    assert_eq!(retrofit.unwrap().cells[3], "changed from R-404A to R-449A");
}

/// Read from the notes of 21 April 2026: 12.00 kg in the circuit, 10.75 kg came out.
#[test]
fn no_repair_stands_before_the_refrigerant_was_out_and_no_test_after_it_was_in() {
    let pack = of(&demo(), "brackwater/cold-store-1");
    let day: Vec<[&str; 2]> = pack
        .events
        .rows
        .iter()
        .filter(|row| row.cells[0].starts_with("21\u{a0}April\u{a0}2026, "))
        .map(|row| [row.cells[0].rsplit(", ").next().unwrap(), &row.cells[1]])
        .collect();
    let table = [
        [
            "08:35",
            "Leak inspection, all that is visible and accessible",
        ],
        ["08:42", "Leak found"],
        ["09:20", "Search"],
        ["09:40", "Leak found"],
        ["11:45", "Recovered, repair"],
        ["11:55", "Lost in service, repair"],
        ["12:50", "Repair"],
        ["13:15", "Repair"],
        ["13:35", "Check of the repair"],
        ["13:38", "Check of the repair"],
        ["16:00", "Pressure test p1"],
        ["16:00", "Check of the repair"],
        ["16:00", "Check of the repair"],
        ["18:05", "Vacuum test v1"],
        ["18:25", "Charged, recharge"],
        ["18:40", "Charged, recharge"],
        ["19:10", "Search"],
        ["19:15", "Check of the repair"],
        ["19:30", "Check of the repair"],
    ];
    assert_eq!(day, table);
}

/// Scale readings of the notes: 14.60 kg before and 25.35 kg after are 10.75 kg, not 10.8.
#[test]
fn masses_stand_as_weighed_in_one_unit_with_the_refrigerant() {
    let results = |system: &str| -> Vec<String> {
        let rows = of(&demo(), system).events.rows;
        let results = rows
            .into_iter()
            .map(|row| row.cells[3].replace('\u{a0}', " "));
        results.collect()
    };
    let store = results("brackwater/cold-store-1");
    assert!(store.contains(&"10.75 kg of R-454C, cylinder c-124".to_owned()));
    assert!(store.contains(&"0.05 ± 0.03 kg of R-454C".to_owned()));
    let machine = results("brackwater/flake-ice-1");
    assert!(machine.contains(&"45.40 kg of R-404A, cylinder c-121".to_owned()));
    assert!(machine.contains(&"47.00 kg of R-449A, cylinder c-130".to_owned()));
    for system in ["dunmarrow/ice-bank-1", "dunmarrow/process-chiller-1"] {
        assert!(results(system).iter().all(|result| !result.contains(" oz")));
    }
}

/// The chiller had leaked more than 30 %, so that 84.106(g) asks for a follow-up test of both repairs.
#[test]
fn a_follow_up_test_is_asked_for_and_filled_by_the_visit_that_made_it() {
    let asked = |pack: &RecordsPack| -> Vec<(String, bool)> {
        fields(pack)
            .filter(|field| field.asked.starts_with("Follow-up"))
            .map(|field| (field.value.replace('\u{a0}', " "), field.missing))
            .collect()
    };
    let made = asked(&of(&demo(), "dunmarrow/process-chiller-1"));
    assert_eq!(made.len(), 2);
    assert!(
        made.iter()
            .all(|(value, missing)| value.contains("none in") && !missing)
    );
    // Without the visit of 27 May it is missing once its day has passed; 29 May was the last.
    let book = crate::copied::demo();
    let system = "dunmarrow/process-chiller-1";
    std::fs::remove_dir_all(book.path().join(system).join("2026-05-27")).unwrap();
    let (loaded, target) = rimebook::command::load(&book.path().join(system)).unwrap();
    let (site, system, number) = loaded.last_visits_of(&target)[0];
    let missing_on = |on| {
        let rows = records(&loaded.book, site, system, number + 1, on);
        rows.iter()
            .filter(|row| matches!(row.present, rimebook::ruleset::Present::Missing { .. }))
            .count()
    };
    assert_eq!(missing_on(jiff::civil::date(2026, 5, 29)), 0);
    assert_eq!(missing_on(jiff::civil::date(2026, 5, 30)), 1);
}

/// On 12 August 2025 roof B was not reached: the notes say that not all was inspected.
#[test]
fn a_search_in_part_fills_no_leak_check() {
    let pack = of(&demo(), "brackwater/flake-ice-1");
    let checks: Vec<&RecordField> = fields(&pack)
        .filter(|field| field.asked.starts_with("Leak check"))
        .collect();
    assert_eq!(checks.len(), 1);
    assert!(checks[0].value.starts_with("9\u{a0}July\u{a0}2026, "));
}

/// Cold store 1 holds R-454C, a blend of gases of Annexes I and II: Regulation (EU) 2024/573 does not
/// say whether the blend counts by its GWP or by the mass of its Annex II gases.
#[test]
fn where_no_rule_is_in_force_or_none_decides_the_pack_says_so() {
    let pack = of(&demo(), "brackwater/cold-store-1");
    assert!(pack.rules.is_empty() && !pack.legal.is_empty() && !pack.events.rows.is_empty());
    assert!(pack.lead[0].contains("leave open whether they cover this system"));
    let book = crate::copied::demo();
    let site = book.path().join("brackwater/site.toml");
    let text = std::fs::read_to_string(&site).unwrap();
    std::fs::write(
        &site,
        text.replace("rules = [\"eu-2024-573\"]", "rules = []"),
    )
    .unwrap();
    let pack = of(book.path(), "brackwater/flake-ice-1");
    assert!(pack.rules.is_empty() && !pack.events.rows.is_empty());
    assert!(pack.lead[0].starts_with("No rule set is named as in force"));
}

/// What is printed and attached is made of this data and of digests of files.
#[test]
fn nothing_private_is_in_the_pack() {
    let system = "brackwater/flake-ice-1";
    let pack = serde_json::to_string(&of(&demo(), system)).unwrap();
    let folder = demo().join(system);
    let files = walkdir::WalkDir::new(folder)
        .into_iter()
        .map(Result::unwrap);
    let mut private = Vec::new();
    for file in files.filter(|file| file.file_type().is_file()) {
        let text = std::fs::read_to_string(file.path()).unwrap_or_default();
        let lines = text.lines().filter_map(|line| {
            let line = line.trim_start_matches("- ");
            let rest = line
                .strip_prefix("private")?
                .trim_start_matches([' ', '=', ':']);
            Some(rest.trim_matches('"').to_owned())
        });
        private.extend(lines);
    }
    assert!(private.len() >= 4, "{private:?}");
    for text in private {
        assert!(!pack.contains(&text), "{text}");
    }
    assert!(!pack.contains("Gate code"));
}

#[test]
#[cfg(feature = "pdf")]
fn a_records_pdf_is_the_same_twice_and_keeps_the_exit_code() {
    use std::process::Command;
    let book = crate::copied::demo();
    let make = |system: &str, more: &[&str]| {
        let folder = tempfile::tempdir().unwrap();
        let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
            .arg("records")
            .arg(book.path().join(system))
            .args(["--pdf", "--into"])
            .arg(folder.path())
            .args(more)
            .output()
            .unwrap();
        let made = crate::copied::snapshot(folder.path());
        (output.status.code().unwrap(), made)
    };
    let (code, made) = make("brackwater/flake-ice-1", &[]);
    assert_eq!(code, 0);
    let bytes = &made["brackwater_flake-ice-1_records.pdf"];
    assert!(bytes.starts_with(b"%PDF-1.7"));
    assert_eq!(make("brackwater/flake-ice-1", &[]), (0, made.clone()));
    // Before the first visit there is nothing to pack.
    assert_eq!(make("brackwater/flake-ice-1", &["--on", "2020-01-01"]).0, 2);
    // Something is missing once the certificate of the firm is taken out.
    let note = book.path().join("rimebook.toml");
    let text = std::fs::read_to_string(&note).unwrap();
    std::fs::write(&note, text.replace("certificate = \"DEMO-CO-0118\"\n", "")).unwrap();
    assert_eq!(make("brackwater/flake-ice-1", &[]).0, 3);
}
