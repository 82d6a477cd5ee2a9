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

#[test]
fn events_stand_in_order_of_time_each_with_its_line() {
    let pack = of(&demo(), "brackwater/flake-ice-1");
    let rows = &pack.events.rows;
    assert!(rows.is_sorted_by(|one, next| one.cells[0] <= next.cells[0]));
    assert!(rows.iter().all(|row| row.cells[4].contains(':')));
    assert_eq!(rows[0].cells[0], "2023-04-18");
    let told = |what: &str| rows.iter().any(|row| row.cells[1].starts_with(what));
    for what in [
        "Repair",
        "Check of the repair",
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
}

/// Cold store 1 holds R-454C, a blend of gases of Annexes I and II: Regulation (EU) 2024/573 does not
/// say whether the blend counts by its GWP or by the mass of its Annex II gases.
#[test]
fn where_no_rule_is_in_force_or_none_decides_the_pack_says_so() {
    let pack = of(&demo(), "brackwater/cold-store-1");
    assert!(pack.rules.is_empty() && !pack.legal.is_empty() && !pack.events.rows.is_empty());
    assert!(pack.lead[0].contains("do not decide whether they cover this system"));
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
