//! `explain` and the appendix print the same working, for every figure of the demo book.

use rimebook::command::load;
use rimebook::report::compose::{Scene, compose};
use rimebook::report::explanation::explanations;
use rimebook::report::visit_figures::VisitFigures;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

fn demo() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example")
}

#[test]
fn every_figure_of_the_demo_is_explained_as_the_appendix_prints_it() {
    let (loaded, target) = load(&demo()).unwrap();
    let mut walked = 0;
    for (site, system, number) in loaded.visits_of(&target) {
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
        let appendix = compose(&scene, &[], false).data.workings;
        let ids: Vec<&str> = scene.figures.all().iter().map(|f| f.id.as_str()).collect();
        let entries: Vec<&str> = appendix.iter().map(|entry| entry.id.as_str()).collect();
        assert_eq!(ids, entries);
        assert_eq!(ids.iter().collect::<BTreeSet<_>>().len(), ids.len());
        for entry in &appendix {
            let told = explanations(&scene.figures, &entry.id, &loaded.sources, site.units);
            let text = told.concat();
            let own = text.split("\nrests on ").next().unwrap();
            let mut wanted = vec![
                format!("{} ({})\n", entry.title, entry.id),
                format!("method   {}\n", entry.method),
                format!("formula  {}\n", entry.formula_text),
                format!("source   {}\n", entry.source),
                format!("result   {}\n", entry.result),
            ];
            wanted.extend(entry.notes.iter().map(|note| format!("note     {note}\n")));
            for input in &entry.inputs {
                let origin = input.working.as_ref().unwrap_or(&input.origin);
                let line = own.lines().find(|line| {
                    line.contains(&format!("= {}   [", input.value))
                        && line
                            .trim_start()
                            .starts_with(&format!("input    {}", input.symbol))
                });
                // The appendix leaves the visit's own folder out of a place.
                let file = origin.split(':').next().unwrap();
                assert!(
                    line.is_some_and(|line| line.contains(file)),
                    "{own}\n{input:?}"
                );
                if let Some(rests_on) = &input.working {
                    assert!(ids.contains(&rests_on.as_str()), "{rests_on}");
                    assert!(text.contains(&format!("({rests_on})\n")), "{text}");
                }
            }
            for line in wanted {
                assert!(own.contains(&line), "{line}\nis not in\n{own}");
            }
            walked += 1;
        }
    }
    assert!(walked > 100, "{walked}");
}

fn explain(name: &str) -> Output {
    Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["explain", name])
        .arg(demo().join("brackwater/flake-ice-1/2025-02-18"))
        .output()
        .unwrap()
}

#[test]
fn the_chain_is_told_from_the_result_to_the_notes_and_back() {
    let told = String::from_utf8(explain("pressure-test/p1/limit").stdout).unwrap();
    for wanted in [
        "rests on",
        "(pressure-test/p1/change)",
        "(pressure-test/p1/expected)",
    ] {
        assert!(told.contains(wanted), "{told}");
    }
    assert!(told.contains("readings.toml:"), "{told}");
    let told = String::from_utf8(explain("pressure-test/p1/change").stdout).unwrap();
    let into = told
        .lines()
        .find(|line| line.contains("goes into"))
        .unwrap();
    assert!(into.contains("pressure-test/p1/leak"), "{told}");
}

#[test]
fn an_unknown_figure_is_answered_with_the_nearest() {
    let output = explain("circuit/a/los-per-year");
    assert_eq!(output.status.code(), Some(2));
    let told = String::from_utf8(output.stderr).unwrap();
    assert!(
        told.contains("did you mean `circuit/a/loss-per-year`"),
        "{told}"
    );
}
