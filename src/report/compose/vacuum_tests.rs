//! Vacuum tests on the page: whether the limit was met, what the rise shows about a leak, what would
//! settle it, and the course of the log.

use crate::job::VacuumTest;
use crate::quantity::{Flavour, print};
use crate::report::chart::{Course, Line, chart};
use crate::report::compose::scene::Scene;
use crate::report::compose::tests::{duration, entry, gauge, part_name, worked};
use crate::report::data::{Block, Chart, SeriesStroke, Test};
use crate::text::{Message, Text, sentence};
use crate::working::vacuum_test::{Acceptance, Rise};

/// Whether the limit was met, then what the rise shows about a leak.
pub(super) fn vacuum_verdict(scene: &Scene<'_>, test: &VacuumTest, rise: &Rise) -> String {
    let shown = shown(scene, rise);
    format!("{} {shown}", acceptance(scene, test, rise))
}

fn acceptance(scene: &Scene<'_>, test: &VacuumTest, rise: &Rise) -> String {
    let limit = test.note.accept_below.map_or_else(String::new, |limit| {
        print(&limit.value, scene.site.units).to_string()
    });
    let within = test.note.accept_within.map_or_else(
        || duration(test.seconds()),
        |within| duration(within.value.value.si()),
    );
    let id = match rise.acceptance {
        Acceptance::Met => "vacuum-limit-met",
        Acceptance::NotMet => "vacuum-limit-not-met",
        Acceptance::TooShort => "vacuum-limit-too-short",
        Acceptance::NoLimit => "vacuum-no-limit",
    };
    let message = Message::of(id)
        .figure("limit", limit)
        .with("within", within)
        .with("watched", duration(test.seconds()))
        .with("by", limit_by(test));
    scene.say(&message)
}

/// Whose limit it is, or `none`.
fn limit_by(test: &VacuumTest) -> &str {
    let by = test.note.accept_by.as_ref();
    by.map_or("none", |by| by.value.as_str())
}

/// What the rise shows about a leak, with its bounds.
fn shown(scene: &Scene<'_>, rise: &Rise) -> String {
    let bound = |figure: &Option<crate::working::Figure>| {
        let printed = figure.as_ref().map(|figure| scene.value(&figure.value));
        Text::Written(printed.unwrap_or_else(|| "none".to_owned()))
    };
    let message = Message::of(rise.shown.sentence())
        .with("upper", bound(&rise.upper))
        .with("lower", bound(&rise.lower));
    scene.say(&message)
}

/// A vacuum test.
pub(super) fn vacuum_test(scene: &Scene<'_>, test: &VacuumTest, rise: &Rise) -> Test {
    let units = scene.site.units;
    let reading = |reading: &crate::job::VacuumReading| {
        let message = Message::of("test-reading")
            .with("moment", scene.words().moment(reading.at.value.civil))
            .figure("pressure", print(&reading.pressure.value, units))
            .with("temperature", "none");
        scene.say(&message)
    };
    let mut facts = vec![
        entry(scene, "test-isolated", reading(&test.start)),
        entry(scene, "test-end", reading(&test.end)),
        entry(scene, "test-watched", duration(test.seconds())),
    ];
    if let Some(warmest) = &test.note.warmest_pipe {
        facts.push(entry(
            scene,
            "test-warmest-pipe",
            scene.figure(print(&warmest.value, units)),
        ));
    }
    facts.extend(gauge(scene, test.note.gauge.as_ref()));
    if let Some(limit) = &test.note.leak_limit {
        facts.push(entry(
            scene,
            "test-leak-limit",
            scene.figure(print(&limit.value, units)),
        ));
    }
    let results = [
        ("result-mean-rise", &rise.rise),
        ("result-late-rise", &rise.late),
        ("result-smallest-leak", &rise.lower),
        ("result-largest-leak", &rise.upper),
        ("result-as-air", &rise.upper_mass),
        ("result-water", &rise.water),
    ];
    let open = rise.shown.settles().into_iter().chain(["vacuum-no-place"]);
    let prose = rise
        .reasons
        .iter()
        .cloned()
        .chain(open.map(Message::of))
        .map(|message| Block::plain(scene.say(&message)))
        .chain(
            test.note
                .note
                .as_ref()
                .map(|note| Block::plain(sentence(&note.value))),
        )
        .collect();
    Test {
        id: test.id.0.clone(),
        heading: scene.say(
            &Message::of("vacuum-test-heading")
                .with("test", test.id.0.as_str())
                .with("part", part_name(scene, test.circuit, test.section())),
        ),
        verdict: vacuum_verdict(scene, test, rise),
        facts,
        results: results
            .into_iter()
            .filter_map(|(key, figure)| Some(worked(key, figure.as_ref()?, scene)))
            .collect(),
        chart: course(scene, test, rise),
        prose,
        tables: Vec::new(),
        cautions: Vec::new(),
    }
}

/// The log, its hold line, the line through its last third, and what the largest leak left possible
/// would do alone.
fn course(scene: &Scene<'_>, test: &VacuumTest, rise: &Rise) -> Option<Chart> {
    let log = test.log.as_ref()?;
    let units = scene.site.units;
    let limit = test.note.accept_below.map(|limit| {
        let message = Message::of("chart-limit")
            .with("by", limit_by(test))
            .figure("limit", print(&limit.value, units));
        (limit.value.value.si(), scene.say(&message))
    });
    let mut lines = Vec::new();
    if let Some(course) = &rise.course {
        let back = course.late.pa_s * (course.end_s - course.late_from_s);
        lines.push(Line {
            label: scene.word("chart-late-slope"),
            stroke: SeriesStroke::Dashed,
            ends: [
                (course.late_from_s, course.end_pa - back),
                (course.end_s, course.end_pa),
            ],
        });
        let start = log.pressure_pa.first().copied().unwrap_or_default();
        lines.extend(rise.room.map(|room| Line {
            label: scene.word("chart-largest-leak"),
            stroke: SeriesStroke::Dotted,
            ends: [
                (0.0, start),
                (
                    course.end_s,
                    start + room.upper(course) / room.m3 * course.end_s,
                ),
            ],
        }));
    }
    chart(&Course {
        time_s: &log.time_s,
        value_si: &log.pressure_pa,
        flavour: Flavour::VacuumPressure,
        written: log.pressure_unit,
        units,
        words: scene.words(),
        name: "chart-pressure-absolute",
        time_name: "chart-time-since-isolation",
        limit,
        from_zero: true,
        lines,
    })
}
