//! Every caution speaks on its example, is silent on its near miss and on the book of good practice.

use crate::copied::copied;
use rimebook::caution::{ALL, Caution, CylinderHistory, Edit, Scene, check, find};
use rimebook::language::Words;
use rimebook::text::{Diagnostic, Diagnostics, Severity, Sources};
use rimebook::vocabulary::site_file::Language;
use rimebook::working::account::accounts;
use rimebook::working::outcome::outcome_by;
use rimebook::{job, notes};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

/// Cautions that necessarily go together with the one under test: name, companion, reason.
const COMPANIONS: &[(&str, &str, &str)] = &[
    (
        "hold-at-moving-temperature",
        "outcome-beyond-evidence",
        "a hold that does not decide bears no claim of a proof",
    ),
    (
        "proof-before-repair",
        "outcome-beyond-evidence",
        "a proof before the last repair bears no claim of a proof",
    ),
    (
        "proved-by-looking",
        "outcome-beyond-evidence",
        "a look without a direct method bears no claim of a proof",
    ),
];

fn apply(root: &Path, edit: &Edit) {
    let path = root.join(edit.file);
    let old = fs::read_to_string(&path).unwrap_or_default();
    let new = if edit.from.is_empty() {
        old + edit.to
    } else {
        let times = old.matches(edit.from).count();
        assert_eq!(
            times, 1,
            "`{}` stands {times} times in {}",
            edit.from, edit.file
        );
        old.replace(edit.from, edit.to)
    };
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(path, new).unwrap();
}

/// All that is said about a book: reading and cautions of every visit, and the text of each.
fn spoken(root: &Path) -> (Vec<Diagnostic>, Sources) {
    let mut sources = Sources::default();
    let mut diagnostics = Diagnostics::default();
    let folder = notes::read_folder(root, &mut sources, &mut diagnostics).unwrap();
    let notes = notes::read_notes(folder, &mut sources, &mut diagnostics);
    let book = job::assemble(notes, &sources, &mut diagnostics);
    let mut all: Vec<Diagnostic> = diagnostics.iter().cloned().collect();
    let cylinders = CylinderHistory::of(&book);
    let sound = all.iter().all(|d| d.severity != Severity::Error);
    for site in &book.sites {
        for system in &site.systems {
            let accounts = accounts(system);
            for (number, visit) in system.visits.iter().enumerate() {
                let outcome = outcome_by(system, &accounts, number).unwrap();
                let scene = Scene {
                    book: &book,
                    site,
                    system,
                    number,
                    visit,
                    accounts: &accounts,
                    outcome: &outcome,
                    cylinders: &cylinders,
                };
                all.extend(check(&scene, sound));
            }
        }
    }
    (all, sources)
}

fn spoken_with(edits: &[Edit]) -> (Vec<Diagnostic>, Sources) {
    let book = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cases/good-practice/book");
    let folder = tempfile::tempdir().unwrap();
    copied(&book, folder.path());
    for edit in edits {
        apply(folder.path(), edit);
    }
    spoken(folder.path())
}

fn lines(all: &[Diagnostic], sources: &Sources) -> String {
    let line = |d: &Diagnostic| {
        let place = sources.place(d.primary.span);
        format!("{} {}: {} ({place})\n", d.severity.word(), d.name, d.what)
    };
    all.iter().map(line).collect()
}

#[test]
fn names_are_unique_sorted_and_kebab_case() {
    let names: Vec<&str> = ALL.iter().map(|caution| caution.name).collect();
    let set: BTreeSet<&str> = names.iter().copied().collect();
    assert_eq!(names, set.into_iter().collect::<Vec<_>>());
    for name in names {
        let kebab = name.split('-').all(|word| {
            !word.is_empty()
                && word
                    .bytes()
                    .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit())
        });
        assert!(kebab, "{name}");
        assert_eq!(find(name).map(|caution| caution.name), Some(name));
    }
    assert!(find("no-such-caution").is_none());
}

#[test]
fn the_page_for_developers_counts_the_cautions() {
    let page = Path::new(env!("CARGO_MANIFEST_DIR")).join("DEVELOPERS.md");
    let count = format!("{} cautions, one file each", ALL.len());
    assert!(
        fs::read_to_string(page).unwrap().contains(&count),
        "{count}"
    );
}

#[test]
fn every_heading_has_its_text_and_every_caution_its_two_examples() {
    for caution in ALL {
        let texts = [
            caution.summary,
            caution.finds,
            caution.matters,
            caution.put_right,
            caution.source,
        ];
        for text in texts {
            assert!(text.len() > 10, "{}: `{text}`", caution.name);
        }
        assert!(!caution.example.is_empty(), "{}", caution.name);
        assert!(!caution.near_miss.is_empty(), "{}", caution.name);
        let printed = caution.print();
        for text in texts.iter().flat_map(|text| text.split_whitespace()) {
            assert!(printed.contains(text), "{}: `{text}`", caution.name);
        }
        let long = printed.lines().find(|line| {
            line.starts_with("  ") && !line.starts_with("    ") && line.chars().count() > 88
        });
        assert_eq!(long, None, "{}", caution.name);
    }
}

#[test]
fn on_the_book_of_good_practice_nothing_is_said() {
    let (all, sources) = spoken_with(&[]);
    assert!(all.is_empty(), "{}", lines(&all, &sources));
}

/// Companions that are allowed beside a caution.
fn companions(caution: &Caution) -> Vec<&'static str> {
    let of = COMPANIONS
        .iter()
        .filter(|(name, _, _)| *name == caution.name);
    of.map(|(_, companion, _)| *companion).collect()
}

#[test]
fn each_example_fires_its_caution_and_no_other() {
    let mut wrong = Vec::new();
    for caution in ALL {
        let (all, sources) = spoken_with(caution.example);
        let allowed = companions(caution);
        let fires = all.iter().any(|d| d.name == caution.name);
        let only = all.iter().all(|d| {
            d.severity == Severity::Caution && (d.name == caution.name || allowed.contains(&d.name))
        });
        let explained = all.iter().all(|d| d.why.is_some() && !d.cures.is_empty());
        if !(fires && only && explained) {
            wrong.push(format!("== {}\n{}", caution.name, lines(&all, &sources)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.concat());
}

/// What is amiss with a caution's sentence for the page, and with its reason, in a language.
fn amiss(told: &Diagnostic, language: Language) -> Option<String> {
    let words = Words::of(language);
    let Some(message) = &told.page else {
        return Some("no sentence for the page".to_owned());
    };
    let said = words.say(message);
    let why = told.why.as_deref().unwrap_or_default();
    let reason = words.phrase(why);
    let english = language == Language::English;
    let right = message.id == format!("caution-{}", told.name)
        && !said.contains(['⟦', '{', '}'])
        && !said.ends_with('.')
        && (said == told.what) == english
        && (reason == why) == english;
    (!right).then(|| format!("{}: {said} / {reason}", message.id))
}

#[test]
fn every_caution_that_limits_a_claim_and_no_other_has_its_sentence_for_the_page() {
    let languages = [
        Language::English,
        Language::German,
        Language::French,
        Language::Spanish,
    ];
    let mut wrong = Vec::new();
    for caution in ALL {
        let (all, _) = spoken_with(caution.example);
        for told in all.iter().filter(|told| told.name == caution.name) {
            if !caution.limits_claim {
                wrong.extend(told.page.as_ref().map(|_| caution.name.to_owned()));
                continue;
            }
            wrong.extend(languages.iter().filter_map(|one| amiss(told, *one)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn each_near_miss_stays_silent() {
    let mut wrong = Vec::new();
    for caution in ALL {
        let (all, sources) = spoken_with(caution.near_miss);
        if !all.is_empty() {
            wrong.push(format!("== {}\n{}", caution.name, lines(&all, &sources)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.concat());
}

#[test]
fn where_a_note_cannot_be_read_nothing_is_said_of_what_is_missing() {
    for caution in ALL.iter().filter(|caution| caution.rests_on_absence) {
        let mut edits = caution.example.to_vec();
        edits.push(Edit {
            file: "larchwick/cheese-store/2026-11-03/visit.toml",
            from: "",
            to: "stray = 1\n",
        });
        let (all, sources) = spoken_with(&edits);
        let spoken = all.iter().any(|d| d.name == caution.name);
        let error = all.iter().any(|d| d.severity == Severity::Error);
        assert!(error && !spoken, "{}", lines(&all, &sources));
    }
}

/// An edit that adds to a file.
const fn add(file: &'static str, to: &'static str) -> Edit {
    let from = "";
    Edit { file, from, to }
}

const VISIT: Edit = add(
    "larchwick/cheese-store/2026-11-03/visit.toml",
    "purpose = \"repair\"\nattendance = [ { by = \"n1\", from = 2026-11-03T08:00, to = 2026-11-03T17:00 } ]\n",
);

const FOUND_BY_UNPROVED_DETECTOR: Edit = add(
    "larchwick/cheese-store/2026-11-03/findings.md",
    "## Drier {#unit/drier}\n\n- kind: leak\n- state: open\n- evidence:\n  - 10:00 electronic sniffer-1, alarm\n",
);

/// What is right and comes near: why it is right, and the edits.
const RIGHT: &[(&str, &[Edit])] = &[
    (
        "gas put back after a repair made at another visit",
        &[
            VISIT,
            add(
                "larchwick/cheese-store/2026-11-03/refrigerant.toml",
                "[[movement]]\nkind = \"charged\"\nwhy = \"recharge\"\nat = 2026-11-03T10:00\nmass = \"2 kg\"\n",
            ),
        ],
    ),
    (
        "a detector not proved, and bubbles at the same place",
        &[
            VISIT,
            FOUND_BY_UNPROVED_DETECTOR,
            add(
                "larchwick/cheese-store/2026-11-03/findings.md",
                "  - 10:20 bubbles, foam\n",
            ),
        ],
    ),
    (
        "a verification that saw nothing, in a word that is not no",
        &[Edit {
            file: "larchwick/cheese-store/2026-03-18/findings.md",
            from: "- kind: leak\n",
            to: "- kind: leak\n- evidence:\n  - 09:35 visual, as left on the fifth\n",
        }],
    ),
    (
        "a sign at a place that is listed as not reached",
        &[
            add(
                "larchwick/cheese-store/2026-09-16/findings.md",
                "## Valve {#unit/receiver-outlet-valve}\n\n- kind: suspect\n- evidence:\n  - 09:30 oil, seen from below\n- state: suspect\n",
            ),
            Edit {
                file: "larchwick/cheese-store/2026-09-16/readings.toml",
                from: "areas = [\"cooler/*\", \"unit/*\"]",
                to: "areas = [\"cooler/*\"]\nnot-reached = [ { point = \"unit/*\", reason = \"guard\" } ]",
            },
        ],
    ),
    (
        "a cylinder retested after its old date",
        &[
            Edit {
                file: "rimebook.toml",
                from: "retest = \"2030-09\"",
                to: "retest = \"2026-01\"",
            },
            add(
                "rimebook.toml",
                "\n[[cylinder-event]]\ncylinder = \"rec-1\"\nat = 2026-02-11\nwhat = \"retested\"\n",
            ),
        ],
    ),
    (
        "a section under nitrogen, the rest pumped down",
        &[
            VISIT,
            add(
                "larchwick/cheese-store/2026-11-03/readings.toml",
                "[[pressure-test]]\nid = \"p1\"\npurpose = \"tightness\"\ngas = \"nitrogen\"\nsection = \"low\"\nstart = { at = 2026-11-03T10:00, pressure = \"15.0 bar g\" }\nend = { at = 2026-11-03T12:00, pressure = \"15.0 bar g\" }\n",
            ),
        ],
    ),
    (
        "a cylinder filled again on the day it was used",
        &[add(
            "rimebook.toml",
            "\n[[cylinder-event]]\ncylinder = \"new-1\"\nat = 2026-03-05\nwhat = \"filled\"\ngross = \"19.50 kg\"\n",
        )],
    ),
    (
        "someone without a valid certificate beside someone with one",
        &[
            Edit {
                file: "rimebook.toml",
                from: "certified-until = 2028-01-31",
                to: "certified-until = 2026-03-01",
            },
            Edit {
                file: "larchwick/cheese-store/2026-09-16/visit.toml",
                from: "\"n2\"",
                to: "\"n1\"",
            },
            Edit {
                file: "larchwick/cheese-store/2026-09-16/readings.toml",
                from: "by = \"n2\"\n",
                to: "",
            },
        ],
    ),
    (
        "a certificate of category II beside one of category I",
        &[
            Edit {
                file: "rimebook.toml",
                from: "certificate = \"CASE-PC-0101\"\ncategory = \"I\"",
                to: "certificate = \"CASE-PC-0101\"\ncategory = \"II\"",
            },
            Edit {
                file: "larchwick/cheese-store/2026-03-04/visit.toml",
                from: "{ by = \"n2\", from = 2026-03-04T08:00, to = 2026-03-04T14:50 }",
                to: "{ by = \"n2\", from = 2026-03-04T08:00, to = 2026-03-05T17:10 }",
            },
        ],
    ),
    (
        "a strength test above the usual factors, with its source",
        &[
            Edit {
                file: "larchwick/cheese-store/2024-09-12/readings.toml",
                from: "start = { at = 2024-09-12T08:30, pressure = \"24.00 bar g\"",
                to: "start = { at = 2024-09-12T08:30, pressure = \"29.80 bar g\"",
            },
            Edit {
                file: "larchwick/cheese-store/2024-09-12/readings.toml",
                from: "note = \"1.2 times the lower plate, as the maker's sheet asks\"",
                to: "note = \"29.8 bar g by the assembly's certificate\"",
            },
        ],
    ),
    (
        "dye at a point that had dye before, and bubbles there now",
        &[
            add(
                "larchwick/cheese-store/2026-09-16/findings.md",
                "## Drier {#unit/drier}\n\n- kind: leak\n- evidence:\n  - 10:30 electronic sniffer-1, alarm\n  - 10:40 dye, glow\n- state: open\n",
            ),
            VISIT,
            add(
                "larchwick/cheese-store/2026-11-03/findings.md",
                "## Drier {#unit/drier}\n\n- kind: leak\n- evidence:\n  - 09:30 dye, glow\n  - 09:50 bubbles, foam\n- state: open\n",
            ),
        ],
    ),
    (
        "two looks with dye one after the other, which have nothing to do with solution",
        &[Edit {
            file: "larchwick/cheese-store/2026-03-04/findings.md",
            from: "  - 10:50 bubbles, foam after 4 min\n",
            to: "  - 10:30 dye, glow\n  - 10:40 dye, glow after wiping\n  - 10:50 bubbles, foam after 4 min\n",
        }],
    ),
    (
        "a reference leak whose rate is also the number of a refrigerant",
        &[Edit {
            file: "larchwick/cheese-store/2026-09-16/readings.toml",
            from: "\"5 g/yr R-134a\"",
            to: "\"600 g/yr of R-1234yf\"",
        }],
    ),
    (
        "someone without a certificate beside someone with one",
        &[
            Edit {
                file: "rimebook.toml",
                from: "certificate = \"CASE-PC-0102\"\ncategory = \"I\"\ncertified-until = 2028-01-31\n",
                to: "",
            },
            Edit {
                file: "larchwick/cheese-store/2025-09-17/visit.toml",
                from: "attendance = [ {",
                to: "attendance = [ { by = \"n1\", from = 2025-09-17T08:30, to = 2025-09-17T13:00 }, {",
            },
            Edit {
                file: "larchwick/cheese-store/2026-09-16/visit.toml",
                from: "attendance = [ {",
                to: "attendance = [ { by = \"n1\", from = 2026-09-16T08:30, to = 2026-09-16T11:00 }, {",
            },
        ],
    ),
    (
        "clean air by a window, which is no wind",
        &[Edit {
            file: "larchwick/cheese-store/2026-09-16/readings.toml",
            from: "background = \"clean\"",
            to: "background = \"0 ppm, by the window\"",
        }],
    ),
];

#[test]
fn what_is_right_and_comes_near_is_not_spoken_of() {
    let mut wrong = Vec::new();
    for (why, edits) in RIGHT {
        let (all, sources) = spoken_with(edits);
        if !all.is_empty() {
            wrong.push(format!("== {why}\n{}", lines(&all, &sources)));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.concat());
}

#[test]
fn an_alarm_of_an_unproved_detector_alone_is_spoken_of() {
    let (all, sources) = spoken_with(&[VISIT, FOUND_BY_UNPROVED_DETECTOR]);
    let names: Vec<&str> = all.iter().map(|d| d.name).collect();
    assert_eq!(names, ["detector-not-proved"], "{}", lines(&all, &sources));
}
