//! Reports of the demo book: one PDF a visit, the same bytes on any day, nothing of the cameras in
//! them, and none while an error stands.

use crate::copied::{demo, snapshot};
use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;

/// Runs `report` on a path and gives the exit code and the PDFs made, by name.
fn report(path: &Path, more: &[&str]) -> (i32, BTreeMap<String, Vec<u8>>) {
    let folder = tempfile::tempdir().unwrap();
    let status = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .arg("report")
        .arg(path)
        .arg("--into")
        .arg(folder.path())
        .args(more)
        .output()
        .unwrap()
        .status;
    let mut made = snapshot(folder.path());
    assert!(
        made.keys().all(|name| name.ends_with(".pdf")),
        "{:?}",
        made.keys()
    );
    made.retain(|_, bytes| bytes.starts_with(b"%PDF-1.7"));
    (status.code().unwrap(), made)
}

fn holds(bytes: &[u8], text: &str) -> bool {
    bytes
        .windows(text.len())
        .any(|window| window == text.as_bytes())
}

/// A PDF with every stream unpacked, pictures left as they are.
fn opened(pdf: &[u8]) -> Vec<u8> {
    let mut document = lopdf::Document::load_mem(pdf).unwrap();
    document.decompress();
    let mut plain = Vec::new();
    document.save_to(&mut plain).unwrap();
    plain
}

#[test]
fn every_visit_of_the_demo_book_has_its_report_and_twice_the_same_bytes() {
    let book = demo();
    let before = snapshot(book.path());
    let (code, made) = report(book.path(), &[]);
    assert_eq!((code, made.len()), (0, 17));
    let (_, again) = report(book.path(), &[]);
    assert!(made == again, "the bytes differ from run to run");
    assert!(snapshot(book.path()) == before, "a note was changed");
}

#[test]
fn every_system_has_its_history_and_twice_the_same_bytes() {
    let book = demo();
    let (code, made) = report(book.path(), &["--history"]);
    assert_eq!((code, made.len()), (0, 4));
    assert!(made.contains_key("brackwater_flake-ice-1_history.pdf"));
    let (_, again) = report(book.path(), &["--history"]);
    assert!(made == again, "the bytes differ from run to run");
    for (name, bytes) in &made {
        assert!(!holds(&opened(bytes), "DEMO-OWNER-NAME"), "{name}");
    }
    let (code, of_site) = report(&book.path().join("brackwater"), &["--history"]);
    assert_eq!((code, of_site.len()), (0, 1));
    assert!(of_site.contains_key("brackwater_history.pdf"));
    let visit = book.path().join("brackwater/flake-ice-1/2026-07-09");
    assert_eq!(report(&visit, &["--history", "--issue"]).0, 2);
}

#[test]
fn nothing_of_the_cameras_reaches_a_report() {
    let (_, made) = report(demo().path(), &[]);
    for (name, bytes) in made {
        let bytes = opened(&bytes);
        assert!(holds(&bytes, "/StructTreeRoot"), "{name} was unpacked");
        // In the demo's photographs as they are; a JPEG lies in a PDF as it is.
        for mark in [
            "DEMO-SERIAL-000417",
            "DEMO-OWNER-NAME",
            "Invented Camera Works",
            "Exif",
        ] {
            assert!(!holds(&bytes, mark), "{name} holds {mark}");
        }
    }
}

#[test]
fn no_report_is_made_while_an_error_stands_and_a_draft_is() {
    let book = demo();
    let visit = book.path().join("dunmarrow/ice-bank-1/2026-08-11");
    let path = visit.join("visit.toml");
    let text = std::fs::read_to_string(&path).unwrap();
    std::fs::write(&path, text.replace("\"83 °F\"", "83")).unwrap();
    let (code, made) = report(&visit, &[]);
    assert_eq!((code, made.len()), (1, 0));
    let (_, made) = report(&visit, &["--draft"]);
    assert_eq!(made.len(), 1);
}

/// Runs the program in a book and gives the exit code and what it said.
fn say(book: &Path, line: &[&str]) -> (i32, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .current_dir(book)
        .args(line)
        .output()
        .unwrap();
    let said =
        String::from_utf8(output.stdout).unwrap() + &String::from_utf8(output.stderr).unwrap();
    (output.status.code().unwrap(), said)
}

const VISIT: &str = "brackwater/flake-ice-1/2026-07-09";

#[test]
fn a_changed_note_makes_issue_b_which_says_what_changed() {
    let book = demo();
    let root = book.path();
    let issued = root.join(VISIT).join("issued.json");
    let (code, said) = say(root, &["report", VISIT, "--issue", "--on", "2026-07-10"]);
    assert_eq!(code, 0, "{said}");
    let first = std::fs::read_to_string(&issued).unwrap();
    assert!(first.contains("\"issue\": \"A\"") && first.contains("2026-07-10"));
    // Nothing changed: nothing new is frozen.
    assert_eq!(say(root, &["report", VISIT, "--issue"]).0, 0);
    assert_eq!(std::fs::read_to_string(&issued).unwrap(), first);
    let (code, said) = say(
        root,
        &["made-from", "reports/brackwater_flake-ice-1_2026-07-09.pdf"],
    );
    assert!(code == 0 && said.contains("The notes are those"), "{said}");
    let note = root.join(VISIT).join("visit.toml");
    let text = std::fs::read_to_string(&note).unwrap();
    std::fs::write(&note, text + "\n# looked through again\n").unwrap();
    let (_, said) = say(
        root,
        &["made-from", "reports/brackwater_flake-ice-1_2026-07-09.pdf"],
    );
    assert!(
        said.contains("changed since") && said.contains("visit.toml"),
        "{said}"
    );
    assert_eq!(
        say(root, &["report", VISIT, "--issue", "--on", "2026-07-12"]).0,
        0
    );
    let second = std::fs::read_to_string(&issued).unwrap();
    assert!(second.contains("\"issue\": \"B\"") && second.contains("2026-07-12"));
    assert_eq!(
        say(root, &["check", "."]).0,
        0,
        "the file is no stranger to check"
    );
    for (line, code) in [
        (&["report", "brackwater", "--issue"][..], 2),
        (&["report", VISIT, "--issue", "--draft"][..], 2),
        (&["made-from", "rimebook.toml"][..], 2),
    ] {
        assert_eq!(say(root, line).0, code, "{line:?}");
    }
}

#[test]
fn an_own_part_of_the_template_is_used_and_its_fault_is_the_user_s() {
    let book = demo();
    let root = book.path();
    let folder = root.join("branding/templates");
    std::fs::create_dir_all(&folder).unwrap();
    let note = root.join("rimebook.toml");
    let text = std::fs::read_to_string(&note).unwrap();
    let named = text.replacen(
        "[contractor]\n",
        "[contractor]\ntemplates = \"branding/templates\"\n",
        1,
    );
    std::fs::write(&note, named).unwrap();
    std::fs::write(
        folder.join("schematic.typ"),
        "#let schematics = [Our own drawing.]\n",
    )
    .unwrap();
    let (code, said) = say(root, &["report", VISIT]);
    assert_eq!(code, 0, "{said}");
    std::fs::write(
        folder.join("schematic.typ"),
        "#let schematics = [#nonsense]\n",
    )
    .unwrap();
    let (code, said) = say(root, &["report", VISIT]);
    assert!(
        code == 1 && said.contains("schematic.typ:1:21"),
        "{code} {said}"
    );
    std::fs::write(
        folder.join("schematic.typ"),
        "#let p = plugin(\"a.wasm\")\n",
    )
    .unwrap();
    assert_eq!(say(root, &["report", VISIT]).0, 1);
}

#[test]
fn a_mail_draft_is_the_same_twice_and_names_the_operator() {
    let book = demo();
    let root = book.path();
    let path = root.join("reports/brackwater_flake-ice-1_2026-07-09.eml");
    assert_eq!(say(root, &["mail", "brackwater/flake-ice-1"]).0, 0);
    let first = std::fs::read(&path).unwrap();
    assert_eq!(say(root, &["mail", VISIT]).0, 0);
    assert!(
        first == std::fs::read(&path).unwrap(),
        "the bytes differ from run to run"
    );
    assert!(holds(&first, "plant@brackwater-ice.example"));
    assert_eq!(say(root, &["mail", "."]).0, 2);
}
