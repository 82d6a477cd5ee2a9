//! How each point of the demo book stands at each visit, beside a table made by hand from the notes,
//! without this program. The book is invented and the table with it.

use rimebook::report::compose::{Scene, compose};
use rimebook::report::data::{Block, Inline};
use rimebook::report::visit_figures::VisitFigures;
use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;

/// A visit; points with a story and what is to be said of them; points not looked at. Nothing was
/// ever shown at any other point that the visit looked at.
type Row = (
    &'static str,
    &'static [(&'static str, &'static str)],
    &'static [&'static str],
);

const SOLENOID: &str = "drum-a/solenoid-inlet";
const RECEIVER: &str = "rack-a/receiver-outlet-valve";
const DRIER: &str = "rack-a/drier-outlet";
const CIRCUIT_B: [&str; 5] = [
    "drum-b/solenoid-inlet",
    "drum-b/txv-inlet",
    "rack-b/compressor",
    "rack-b/drier-outlet",
    "rack-b/receiver-outlet-valve",
];

/// Days by the calendar: 2025-02-18 to 03-13 is 10 + 13; to 08-12 is 175; to 10-15 is 239; to
/// 2026-02-03 is 350; to 06-18 is 485; to 07-09 is 506. The drier's count begins anew on 2025-10-13:
/// 113, 248 and 269 days.
const BY_HAND: &[Row] = &[
    (
        "brackwater/flake-ice-1/2025-02-18",
        &[
            (
                SOLENOID,
                "leaking again at the same place: 252 days after a repair by others; leaked twice",
            ),
            (RECEIVER, "new"),
            (DRIER, "new"),
            ("roof-a/condenser-bends", "new"),
        ],
        &CIRCUIT_B,
    ),
    (
        "brackwater/flake-ice-1/2025-03-13",
        &[
            (SOLENOID, "repaired, holding, 23 days"),
            (RECEIVER, "repaired, holding, 23 days"),
            (
                DRIER,
                "part replaced 18\u{a0}February\u{a0}2025; nothing found since",
            ),
            ("roof-a/condenser-bends", "suspect cleared"),
        ],
        &[
            "drum-a/suction-joint",
            "rack-a/compressor",
            "drum-b/solenoid-inlet",
            "drum-b/txv-inlet",
            "rack-b/compressor",
            "rack-b/drier-outlet",
            "rack-b/receiver-outlet-valve",
        ],
    ),
    (
        "brackwater/flake-ice-1/2025-08-12",
        &[
            (SOLENOID, "repaired, holding, 175 days"),
            (RECEIVER, "repaired, holding, 175 days"),
            (
                DRIER,
                "part replaced 18\u{a0}February\u{a0}2025; nothing found since",
            ),
        ],
        &[],
    ),
    (
        "brackwater/flake-ice-1/2025-10-13",
        &[
            (SOLENOID, "repaired, holding, 239 days"),
            (RECEIVER, "repaired, holding, 239 days"),
            (DRIER, "part replaced 13\u{a0}October\u{a0}2025"),
        ],
        &["drum-a/suction-joint"],
    ),
    (
        "brackwater/flake-ice-1/2026-02-03",
        &[
            (
                SOLENOID,
                "leaking again at the same place: 350 days after a repair by us; leaked 3 times",
            ),
            (RECEIVER, "repaired, holding, 350 days"),
            (
                DRIER,
                "part replaced 13\u{a0}October\u{a0}2025; nothing found since",
            ),
        ],
        &["drum-a/suction-joint"],
    ),
    (
        "brackwater/flake-ice-1/2026-06-17",
        &[
            (
                SOLENOID,
                "leaking again at the same place: 134 days after a repair by us; leaked 4 times",
            ),
            (RECEIVER, "repaired, holding, 485 days"),
            (
                DRIER,
                "part replaced 13\u{a0}October\u{a0}2025; nothing found since",
            ),
        ],
        &[
            "drum-a/suction-joint",
            "drum-b/solenoid-inlet",
            "drum-b/txv-inlet",
            "rack-b/compressor",
            "rack-b/drier-outlet",
            "rack-b/receiver-outlet-valve",
        ],
    ),
    (
        "brackwater/flake-ice-1/2026-07-09",
        &[
            (SOLENOID, "repaired, holding, 22 days"),
            (RECEIVER, "repaired, holding, 506 days"),
            (
                DRIER,
                "part replaced 13\u{a0}October\u{a0}2025; nothing found since",
            ),
        ],
        &[],
    ),
    (
        "brackwater/cold-store-1/2025-05-06",
        &[],
        &["cooler-2/u-bends"],
    ),
    (
        "brackwater/cold-store-1/2026-04-21",
        &[("cooler-1/u-bends", "new"), ("unit/liquid-valve", "new")],
        &[],
    ),
    (
        "brackwater/cold-store-1/2026-05-12",
        &[
            ("cooler-1/u-bends", "repaired, holding, 21 days"),
            ("unit/liquid-valve", "repaired, holding, 21 days"),
        ],
        &["cooler-2/u-bends", "unit/compressor"],
    ),
    (
        "dunmarrow/process-chiller-1/2025-07-09",
        &[],
        &[
            "evap/liquid-flange",
            "evap/suction-flange",
            "rack/drier",
            "rack/receiver-relief",
            "rack/shaft-seal",
            "roof/condenser-bends",
            "suction/insulated-line",
            "suction/service-port",
        ],
    ),
    (
        "dunmarrow/process-chiller-1/2025-07-15",
        &[("suction/insulated-line", "new")],
        &["evap/suction-flange", "roof/condenser-bends"],
    ),
    (
        "dunmarrow/process-chiller-1/2026-02-24",
        &[
            ("evap/suction-flange", "new"),
            ("suction/insulated-line", "suspect cleared"),
        ],
        &["roof/condenser-bends"],
    ),
    (
        "dunmarrow/process-chiller-1/2026-05-19",
        &[
            (
                "evap/suction-flange",
                "was still leaking, 84 days after it was found",
            ),
            ("suction/service-port", "new"),
        ],
        &[],
    ),
    (
        "dunmarrow/process-chiller-1/2026-05-27",
        &[
            ("evap/suction-flange", "repaired, holding, 8 days"),
            ("suction/service-port", "repaired, holding, 8 days"),
        ],
        &["roof/condenser-bends"],
    ),
    (
        "dunmarrow/ice-bank-1/2025-06-10",
        &[("liquid/drier-outlet", "new")],
        &[],
    ),
    (
        "dunmarrow/ice-bank-1/2026-08-11",
        &[(
            "liquid/drier-outlet",
            "part replaced 10\u{a0}June\u{a0}2025; nothing found since",
        )],
        &[],
    ),
];

fn found(visit: &str) -> BTreeMap<String, String> {
    let book = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["compare", "--format", "json"])
        .arg(book.join(visit))
        .output()
        .unwrap();
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).unwrap();
    let points = told["comparisons"][0]["points"].as_array().unwrap();
    points
        .iter()
        .map(|point| {
            let text = |key: &str| point[key].as_str().unwrap().to_owned();
            (text("point"), text("describe"))
        })
        .collect()
}

#[test]
fn the_demo_books_points_stand_as_the_table_made_by_hand_says() {
    let mut wrong = String::new();
    for (visit, stories, not_looked_at) in BY_HAND {
        let found = found(visit);
        for (point, state) in &found {
            let story = stories.iter().find(|(known, _)| known == point);
            let expected = match story {
                Some((_, story)) => *story,
                None if not_looked_at.contains(&point.as_str()) => "not looked at",
                None => "nothing shown",
            };
            if state != expected {
                wrong += &format!("{visit} {point}: by hand `{expected}`, found `{state}`\n");
            }
        }
        for (point, _) in *stories {
            assert!(found.contains_key(*point), "{visit}: no {point}");
        }
    }
    let visits = BY_HAND.len();
    assert_eq!(visits, 17, "every visit of the demo book");
    assert!(wrong.is_empty(), "\n{wrong}");
}

/// What leads the first page of a visit: the points that came back, then why the outcome is so.
fn lead(visit: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example");
    let (loaded, target) = rimebook::command::load(&path.join(visit)).unwrap();
    let (site, system, number) = loaded.visits_of(&target)[0];
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit: &system.visits[number],
        figures: VisitFigures::of(site, system, number).unwrap(),
        fingerprint: String::new(),
    };
    let data = compose(&scene, &[], false).data;
    let mut lead = String::new();
    for block in data.leaking_again.iter().chain(&data.still_leaking) {
        let Block::Paragraph { c } = block else {
            continue;
        };
        for inline in c {
            match inline {
                Inline::Text { text } => lead += text,
                Inline::Strong { c } => {
                    lead += &c
                        .iter()
                        .map(|inline| match inline {
                            Inline::Text { text } => text.as_str(),
                            _ => "",
                        })
                        .collect::<String>();
                }
                _ => {}
            }
        }
    }
    lead += " ";
    lead += &data.outcome.because.join(" ");
    for row in &data.legal {
        lead += "\n";
        lead += &row.statement;
    }
    let facts = data.findings.iter().flat_map(|finding| &finding.facts);
    for fact in facts {
        lead += "\n";
        lead += &fact.value;
    }
    lead.replace('\u{a0}', " ")
}

#[test]
fn visits_say_which_duties_they_fulfilled_and_which_tests_were_too_coarse() {
    for (visit, words, said) in [
        (
            "brackwater/flake-ice-1/2025-03-13",
            "Check the repair again (circuit a), due by 18 March 2025: done on 13 March 2025.",
            true,
        ),
        (
            "brackwater/flake-ice-1/2026-06-17",
            "Check the repair again (circuit a), due by 3 March 2026: done late, on 17 June 2026.",
            true,
        ),
        (
            "brackwater/flake-ice-1/2026-07-09",
            "Leak check (circuits a and b), due by 20 February 2025: done late, on 9 July 2026.",
            true,
        ),
        (
            "brackwater/flake-ice-1/2025-08-12",
            "This does not count as the leak check that the law asks for",
            true,
        ),
        (
            "brackwater/cold-store-1/2025-05-06",
            "This does not count as the leak check that the law asks for",
            false,
        ),
        (
            "dunmarrow/process-chiller-1/2026-05-19",
            "The leak rate of the system passed the legal trigger of 30 %; the repair was made at this visit, within the time allowed.",
            true,
        ),
        (
            "dunmarrow/process-chiller-1/2026-02-24",
            "passed the legal trigger",
            false,
        ),
        // 249 lb/yr of nitrogen left possible beside a leak of 92 lb/yr.
        (
            "dunmarrow/process-chiller-1/2026-05-19",
            "was shown (coarser than this leak)",
            true,
        ),
        // 0.15 oz of nitrogen a day, 3.4 lb/yr, beside a leak of 13 lb/yr.
        (
            "dunmarrow/ice-bank-1/2025-06-10",
            "(coarser than this leak)",
            false,
        ),
    ] {
        let found = lead(visit);
        assert_eq!(found.contains(words), said, "{visit}: {words}\n{found}");
    }
}

#[test]
fn later_visits_lead_with_what_came_back() {
    for (visit, words) in [
        (
            "brackwater/flake-ice-1/2026-06-17",
            "Drum A, inlet of the liquid solenoid valve has leaked four times: 11 June 2024, 18 February 2025, 3 February 2026 and 17 June 2026. The last repair held 134 days at most.",
        ),
        (
            "brackwater/flake-ice-1/2026-02-03",
            "The last repair held 350 days at most; it was last seen to hold on 15 October 2025.",
        ),
        (
            "brackwater/flake-ice-1/2025-02-18",
            "The last repair, by others, held 252 days at most.",
        ),
        (
            "brackwater/flake-ice-1/2026-07-09",
            "Drum A, inlet of the liquid solenoid valve has leaked four times; its last repair has held 22 days so far.",
        ),
        (
            "dunmarrow/process-chiller-1/2026-05-19",
            "Evaporator, suction outlet flange was found still leaking, 84 days after it was first found on 24 February 2026; it had not been repaired.",
        ),
    ] {
        let lead = lead(visit);
        assert!(lead.contains(words), "{visit}: {lead}");
    }
}
