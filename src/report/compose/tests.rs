//! Pressure and vacuum tests in order, and what both have in common.

use crate::report::compose::pressure_tests::{pressure_test, pressure_verdict};
use crate::report::compose::scene::Scene;
use crate::report::compose::vacuum_tests::{vacuum_test, vacuum_verdict};
use crate::report::data::{Entry, Test};
use crate::text::Message;
use crate::vocabulary::Identifier;
use crate::vocabulary::site_file::Language;
use crate::working::Figure;

/// All tests, pressure tests first.
pub fn tests(scene: &Scene<'_>) -> Vec<Test> {
    let held = scene.visit.pressure_tests.iter().zip(&scene.figures.holds);
    let risen = scene.visit.vacuum_tests.iter().zip(&scene.figures.rises);
    held.map(|(test, hold)| pressure_test(scene, test, hold))
        .chain(risen.map(|(test, rise)| vacuum_test(scene, test, rise)))
        .map(|mut test| {
            // A chart may stand on the page after its test.
            if let Some(chart) = &mut test.chart {
                chart.caption.clone_from(&test.heading);
            }
            test
        })
        .collect()
}

/// The verdict on a test by its name, short, for a proof.
pub fn verdict_of(scene: &Scene<'_>, name: &Identifier) -> Option<String> {
    let pressure = scene
        .visit
        .pressure_tests
        .iter()
        .zip(&scene.figures.holds)
        .find(|(test, _)| test.id == *name)
        .map(|(_, hold)| pressure_verdict(scene, hold));
    let vacuum = scene
        .visit
        .vacuum_tests
        .iter()
        .zip(&scene.figures.rises)
        .find(|(test, _)| test.id == *name)
        .map(|(test, rise)| vacuum_verdict(scene, test, rise));
    pressure.or(vacuum).map(|verdict| {
        // A German noun keeps its capital within a sentence.
        if scene.words().language() == Language::German {
            return verdict.trim_end_matches('.').to_owned();
        }
        let mut letters = verdict.trim_end_matches('.').chars();
        letters
            .next()
            .map(|first| first.to_lowercase().chain(letters).collect())
            .unwrap_or_default()
    })
}

pub(super) fn entry(scene: &Scene<'_>, key: &'static str, value: impl Into<String>) -> Entry {
    Entry {
        key: scene.word(key),
        value: value.into(),
        working: None,
    }
}

pub(super) fn worked(key: &'static str, figure: &Figure, scene: &Scene<'_>) -> Entry {
    Entry {
        key: scene.word(key),
        value: scene.value(&figure.value),
        working: Some(figure.id.clone()),
    }
}

/// The part of the plant that a test is of.
pub(super) fn part_name(
    scene: &Scene<'_>,
    circuit: usize,
    section: Option<&Identifier>,
) -> Message {
    let choice = scene.system.circuit_choice(circuit);
    let Some(id) = section else {
        return Message::of("test-part-whole").with("circuit", choice);
    };
    let about = scene
        .system
        .circuits
        .get(circuit)
        .and_then(|c| c.sections.get(id))
        .and_then(|s| s.about.as_ref())
        .map_or("none", |about| about.value.as_str());
    Message::of("test-part-section")
        .with("section", id.0.as_str())
        .with("about", about)
        .with("circuit", choice)
}

/// `2 h`, `15 h 10 min`, `30 min`.
pub fn duration(seconds: f64) -> String {
    let minutes = (seconds / 60.0).round() as i64;
    match (minutes / 60, minutes % 60) {
        (0, minutes) => format!("{minutes}\u{a0}min"),
        (hours, 0) => format!("{hours}\u{a0}h"),
        (hours, minutes) => format!("{hours}\u{a0}h\u{a0}{minutes}\u{a0}min"),
    }
}

pub(super) fn gauge(
    scene: &Scene<'_>,
    id: Option<&crate::text::Noted<Identifier>>,
) -> Option<Entry> {
    id.map(|id| entry(scene, "test-gauge", id.value.0.clone()))
}
