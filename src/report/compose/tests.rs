//! Pressure and vacuum tests: facts, verdict, results, and the course of a log as a chart.

use crate::job::PressureTest;
use crate::quantity::{Flavour, print};
use crate::report::chart::{Course, chart};
use crate::report::compose::in_service::in_service;
use crate::report::compose::scene::Scene;
use crate::report::compose::vacuum_tests::{vacuum_test, vacuum_verdict};
use crate::report::data::{Block, Entry, Test};
use crate::report::printed::{self, sentence};
use crate::vocabulary::{Identifier, Word};
use crate::working::Figure;
use crate::working::pressure_test::{Hold, HoldVerdict};
use crate::working::service_equivalent::InService;

/// All tests, pressure tests first.
pub fn tests(scene: &Scene<'_>) -> Vec<Test> {
    let pressure = scene
        .visit
        .pressure_tests
        .iter()
        .zip(&scene.figures.holds)
        .zip(&scene.figures.holds_in_service)
        .map(|((test, hold), serving)| {
            with_service(scene, pressure_test(scene, test, hold), serving.as_ref())
        });
    let vacuum = scene
        .visit
        .vacuum_tests
        .iter()
        .zip(&scene.figures.rises)
        .zip(&scene.figures.rises_in_service)
        .map(|((test, rise), serving)| {
            with_service(scene, vacuum_test(scene, test, rise), serving.as_ref())
        });
    pressure.chain(vacuum).collect()
}

/// A block that says what the limit would mean in service.
fn with_service(scene: &Scene<'_>, mut block: Test, serving: Option<&InService>) -> Test {
    block.prose.extend(in_service(serving, scene.site.units));
    block
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
        let mut letters = verdict.trim_end_matches('.').chars();
        letters
            .next()
            .map(|first| first.to_lowercase().chain(letters).collect())
            .unwrap_or_default()
    })
}

pub(super) fn entry(key: &str, value: impl Into<String>) -> Entry {
    Entry {
        key: key.to_owned(),
        value: value.into(),
        working: None,
    }
}

pub(super) fn worked(key: &str, figure: &Figure, scene: &Scene<'_>) -> Entry {
    Entry {
        key: key.to_owned(),
        value: figure.value.print(scene.site.units),
        working: Some(figure.id.clone()),
    }
}

pub(super) fn part_name(scene: &Scene<'_>, circuit: usize, section: Option<&Identifier>) -> String {
    let name = scene.system.circuit_name(circuit);
    match section {
        Some(id) => {
            let about = scene
                .system
                .circuits
                .get(circuit)
                .and_then(|c| c.sections.get(id))
                .and_then(|s| s.about.as_ref());
            let section = about.map_or_else(
                || format!("section {id}"),
                |about| format!("{} (section {id})", about.value),
            );
            if scene.system.several_circuits() {
                format!("{section} of {name}")
            } else {
                section
            }
        }
        None if scene.system.several_circuits() => format!("the whole of {name}"),
        None => "the whole circuit".to_owned(),
    }
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

fn pressure_verdict(scene: &Scene<'_>, hold: &Hold) -> String {
    let units = scene.site.units;
    match (hold.verdict, &hold.limit) {
        (HoldVerdict::NothingLarger, Some(limit)) => format!(
            "Nothing larger than {} was shown.",
            limit.value.print(units)
        ),
        (HoldVerdict::NothingLarger | HoldVerdict::HeldNoSize, _) => {
            "The pressure held within its uncertainty; no leak size can be given without the volume."
                .to_owned()
        }
        (HoldVerdict::Leak, _) => {
            "More pressure was lost than temperature and readings explain: it leaks.".to_owned()
        }
        (HoldVerdict::Strength, _) => {
            "Strength test: it says nothing about small leaks.".to_owned()
        }
        (HoldVerdict::Inconclusive, _) => "The test does not decide.".to_owned(),
    }
}

fn pressure_test(scene: &Scene<'_>, test: &PressureTest, hold: &Hold) -> Test {
    let units = scene.site.units;
    let reading = |reading: &crate::job::PressureReading| {
        let pressure = print(&reading.pressure.value, units);
        let temperature = reading
            .temperature
            .map_or_else(String::new, |t| format!(", {}", print(&t.value, units)));
        format!(
            "{}: {pressure}{temperature}",
            printed::moment(reading.at.value.civil)
        )
    };
    let mut facts = vec![
        entry("Gas", test.note.gas.map_or("", |gas| gas.value.word())),
        entry("Start", reading(&test.start)),
        entry("End", reading(&test.end)),
        entry("Held", duration(test.seconds())),
    ];
    if let Some(most) = scene
        .system
        .circuits
        .get(test.circuit)
        .and_then(|c| c.most(test.section()))
    {
        facts.push(entry(
            "Highest allowable",
            print(&most.value, units).to_string(),
        ));
    }
    facts.extend(gauge(test.note.gauge.as_ref()));
    if let Some(limit) = &test.note.leak_limit {
        facts.push(entry(
            "Limit asked for",
            print(&limit.value, units).to_string(),
        ));
    }
    let mut results = Vec::new();
    for (key, figure) in [
        ("Expected at the end", &hold.expected),
        ("Lost beyond temperature", &hold.change),
        ("Mean leak", &hold.leak),
        ("Largest leak left possible", &hold.limit),
        ("As nitrogen", &hold.limit_mass),
    ] {
        results.extend(figure.as_ref().map(|figure| worked(key, figure, scene)));
    }
    let mut prose: Vec<Block> = hold.reasons.iter().map(Block::plain).collect();
    prose.extend(
        test.note
            .note
            .as_ref()
            .map(|note| Block::plain(sentence(&note.value))),
    );
    Test {
        id: test.id.0.clone(),
        heading: format!(
            "Pressure test {} of {}",
            test.id,
            part_name(scene, test.circuit, test.section())
        ),
        verdict: pressure_verdict(scene, hold),
        facts,
        results,
        chart: test.log.as_ref().and_then(|log| {
            let name = if log.gauge {
                "Pressure (gauge)"
            } else {
                "Pressure (absolute)"
            };
            chart(&Course {
                time_s: &log.time_s,
                value_si: &log.pressure_pa,
                flavour: if log.gauge {
                    Flavour::GaugePressure
                } else {
                    Flavour::AbsolutePressure
                },
                written: log.pressure_unit,
                units,
                name,
                time_name: "Time since the start",
                limit: None,
                from_zero: false,
                lines: Vec::new(),
            })
        }),
        prose,
        cautions: Vec::new(),
    }
}

pub(super) fn gauge(id: Option<&crate::text::Noted<Identifier>>) -> Option<Entry> {
    id.map(|id| entry("Gauge", id.value.0.clone()))
}
