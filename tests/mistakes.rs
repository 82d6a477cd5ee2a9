//! Thirty different mistakes in a copy of the demo book: one run tells all thirty and nothing else.

use crate::copied::demo;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::Command;

/// File, what stands there once, what to write instead, and the name of the error that is due.
type Mistake = (&'static str, &'static str, &'static str, &'static str);

/// Stands in the new text where the mistake is, if that is not its last line.
const MARK: char = '¦';

const FLAKE: &str = "brackwater/flake-ice-1";
const MISTAKES: &[(&str, &[Mistake])] = &[
    (
        "",
        &[
            (
                "rimebook.toml",
                "accent = \"#2f5d62\"",
                "accent = “#2f5d62”",
                "curly-quotes",
            ),
            (
                "rimebook.toml",
                "certified-until = 2028-10-31",
                "certified-until = 2028-10-32",
                "date-impossible",
            ),
            (
                "rimebook.toml",
                "checked = [2025-01-20, 2026-01-12]",
                "checked = 2026-01-12",
                "list-expected",
            ),
            (
                "rimebook.toml",
                "cylinder = \"c-140\"",
                "cylinder = \"d-77\"",
                "name-unknown",
            ),
            (
                "rimebook.toml",
                "tare = \"14.20 kg\"",
                "tare = \"14.20 gk\"",
                "quantity-unreadable",
            ),
            (
                "brackwater/site.toml",
                "area = \"180 m2\"",
                "area = \"180 m\"",
                "quantity-unreadable",
            ),
            (
                "dunmarrow/site.toml",
                "altitude = \"870 ft\"",
                "altitude = 870",
                "form-unexpected",
            ),
        ],
    ),
    (
        FLAKE,
        &[
            ("system.toml", "made = 2014", "made = 02014", "leading-zero"),
            (
                "system.toml",
                "id = \"liquid\", most = \"28 bar g\", volume = \"3.4 ± 0.3 L\"",
                "id = \"liquid\", most = \"28 bar g\", volume = 3.4 ± 0.3 L",
                "value-not-quoted",
            ),
            (
                "system.toml",
                "where = \"Plant room, compressor B\"\ncircuit = \"b\"",
                "where = \"Plant room, compressor B\"\ncircuit = \"c\"",
                "name-unknown",
            ),
            (
                "2025-02-18/visit.toml",
                "{ by = \"t2\", from = 2025-02-19T08:00",
                "{ by = \"t9\", from = 2025-02-19T08:00",
                "name-unknown",
            ),
            (
                "2025-08-12/visit.toml",
                "ambient = \"27 °C\"",
                "ambient = \"27 K\"",
                "quantity-unreadable",
            ),
            (
                "2025-10-13/hold-a.csv",
                "2025-10-14T00:20,17.46,16.9",
                "2025-10-14T00:05,17.46,16.9",
                "log-row",
            ),
            (
                "2026-02-03/refrigerant.toml",
                "after = \"31.90 kg\"",
                "after = \"36.90 kg\"",
                "scale-wrong-way",
            ),
            (
                "2026-02-03/findings.md",
                "09:58 bubbles, foam",
                "09:58 bubblles, foam",
                "word-unknown",
            ),
            (
                "2026-06-17/readings.toml",
                "file = \"rise-1.csv\"",
                "file = \"rise-3.csv\"",
                "log-missing",
            ),
            (
                "2026-06-17/findings.md",
                "photos/solenoid-inlet-before.jpg",
                "photos/solenoid-before.jpg",
                "photograph-missing",
            ),
        ],
    ),
    (
        "brackwater/cold-store-1",
        &[
            (
                "system.toml",
                "rooms = [\"store-1\", \"roof\"]",
                "rooms = [\"store-2\", \"roof\"]",
                "name-unknown",
            ),
            (
                "2025-05-06/readings.toml",
                "ended = 2025-05-06T14:20",
                "ended = 2025-05-06T13:20",
                "end-before-start",
            ),
            (
                "2026-04-21/readings.toml",
                "pressure = \"17.80 bar g\"",
                "pressure = \"17.80 bar\"",
                "quantity-unreadable",
            ),
            (
                "2026-04-21/refrigerant.toml",
                "mass = \"0.05 ± 0.03 kg\"",
                "mass = 0,05",
                "decimal-comma",
            ),
            (
                "2026-04-21/findings.md",
                "- proof: p1\n- proof: 19:15",
                "- proof: p7¦\n- proof: 19:15",
                "name-unknown",
            ),
        ],
    ),
    (
        "dunmarrow/process-chiller-1",
        &[
            (
                "system.toml",
                "serial = \"DEMO-PC-612\"",
                "serail = \"DEMO-PC-612\"",
                "key-unknown",
            ),
            (
                "2025-07-15/readings.toml",
                "areas = [\"rack/*\", \"suction/service-port\", \"evap/liquid-flange\"]\nnot",
                "areas = [\"rack/*\", \"suction/service-port\", \"evap/liquid-flange\"¦\nnot",
                "bracket-not-closed",
            ),
            (
                "2026-02-24/visit.toml",
                "[[work]]\npart = \"evaporator suction flange\"\nwork = \"bolts",
                "[[work]]¦\nwork = \"bolts",
                "key-missing",
            ),
            (
                "2026-05-19/visit.toml",
                "operation = 2026-05-19T19:00",
                "operation = 2026-05-21T19:00",
                "day-not-of-the-visit",
            ),
            (
                "2026-05-19/readings.toml",
                "isolated = 2026-05-19T14:30",
                "isolated = 2026-05-19T14:30\nisolated = 2026-05-19T14:35",
                "key-twice",
            ),
        ],
    ),
    (
        "dunmarrow/ice-bank-1",
        &[
            (
                "system.toml",
                "refrigerant = \"R-22\"",
                "refrigerant = \"R-2222\"",
                "refrigerant-unknown",
            ),
            (
                "2025-06-10/findings.md",
                "{#liquid/drier-outlet}",
                "{#liquid/dryer}",
                "name-unknown",
            ),
        ],
    ),
];

/// A mandatory file that is taken away: the thirtieth mistake.
const TAKEN_AWAY: &str = "dunmarrow/ice-bank-1/2026-08-11/visit.toml";

/// The line, from 1, on which the mistake of a text that stands there once is: at its mark, else
/// at its end.
fn line_of(text: &str, to: &str) -> u64 {
    let at = text.find(&to.replace(MARK, "")).unwrap();
    let before = to.split(MARK).next().unwrap_or(to);
    1 + text[..at + before.len()].matches('\n').count() as u64
}

fn make(root: &Path) -> BTreeSet<(String, u64, String)> {
    let mut due = BTreeSet::new();
    for (folder, mistakes) in MISTAKES {
        let path = |file: &str| [folder, file].join("/").trim_start_matches('/').to_owned();
        for (file, from, to, _) in *mistakes {
            let path = root.join(path(file));
            let text = fs::read_to_string(&path).unwrap();
            assert_eq!(
                text.matches(from).count(),
                1,
                "`{from}` in {}",
                path.display()
            );
            fs::write(&path, text.replace(from, &to.replace(MARK, ""))).unwrap();
        }
        for (file, _, to, name) in *mistakes {
            let text = fs::read_to_string(root.join(path(file))).unwrap();
            due.insert((path(file), line_of(&text, to), (*name).to_owned()));
        }
    }
    fs::remove_file(root.join(TAKEN_AWAY)).unwrap();
    due.insert((TAKEN_AWAY.to_owned(), 1, "file-missing".to_owned()));
    due
}

/// Errors of a book: file, line and name of each, and what they say.
fn errors(root: &Path) -> (Vec<(String, u64, String)>, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["check", "--format", "json"])
        .arg(root)
        .output()
        .unwrap();
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let mut list = Vec::new();
    let mut words = String::new();
    for diagnostic in told["diagnostics"].as_array().unwrap() {
        if diagnostic["severity"] == "error" {
            let text = |value: &serde_json::Value| value.as_str().unwrap().to_owned();
            let at = &diagnostic["at"];
            let line = at["line"].as_u64().unwrap();
            words += &format!("{}:{line}: {}\n", at["file"], diagnostic["what"]);
            list.push((text(&at["file"]), line, text(&diagnostic["name"])));
        }
    }
    (list, words)
}

#[test]
fn the_demo_book_has_no_error() {
    let (list, words) = errors(demo().path());
    assert!(list.is_empty(), "{words}");
}

#[test]
fn thirty_mistakes_are_all_told_each_at_its_line_and_nothing_else() {
    let book = demo();
    let due = make(book.path());
    assert_eq!(due.len(), 30);
    let (list, words) = errors(book.path());
    let told: BTreeSet<_> = list.iter().cloned().collect();
    let swallowed: Vec<_> = due.difference(&told).collect();
    let follow_up: Vec<_> = told.difference(&due).collect();
    assert!(
        swallowed.is_empty() && follow_up.is_empty() && list.len() == 30,
        "swallowed: {swallowed:#?}\nfollow-up: {follow_up:#?}\n{words}"
    );
}
