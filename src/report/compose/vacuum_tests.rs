//! Vacuum tests on the page: whether the limit was met, what the rise shows about a leak, what would
//! settle it, and the course of the log.

use crate::job::VacuumTest;
use crate::quantity::{Flavour, print};
use crate::report::chart::{Course, Line, chart};
use crate::report::compose::scene::Scene;
use crate::report::compose::tests::{duration, entry, gauge, part_name, worked};
use crate::report::data::{Block, Chart, SeriesStroke, Test};
use crate::report::printed::{self, sentence};
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
    let whose = test
        .note
        .accept_by
        .as_ref()
        .map_or_else(String::new, |by| format!(" ({}’s limit)", by.value));
    match rise.acceptance {
        Acceptance::Met => format!("Stayed below {limit} for {within}{whose}: limit met."),
        Acceptance::NotMet => {
            format!("Did not stay below {limit} for {within}{whose}: limit not met.")
        }
        Acceptance::TooShort => format!(
            "Watched for {} only; {within} are asked for{whose}.",
            duration(test.seconds())
        ),
        Acceptance::NoLimit => "No limit of pressure is noted.".to_owned(),
    }
}

/// What the rise shows about a leak, with its bounds.
fn shown(scene: &Scene<'_>, rise: &Rise) -> String {
    let words = rise.shown.words();
    let printed = |figure: &crate::working::Figure| scene.value(&figure.value);
    match &rise.upper {
        Some(upper) if !words.says.is_empty() => {
            words.says.replace("{upper}", &printed(upper)).replace(
                "{lower}",
                &rise.lower.as_ref().map_or_else(String::new, printed),
            )
        }
        _ => words.without_bound.to_owned(),
    }
}

/// A vacuum test.
pub(super) fn vacuum_test(scene: &Scene<'_>, test: &VacuumTest, rise: &Rise) -> Test {
    let units = scene.site.units;
    let reading = |reading: &crate::job::VacuumReading| {
        format!(
            "{}: {}",
            printed::moment(reading.at.value.civil),
            print(&reading.pressure.value, units)
        )
    };
    let mut facts = vec![
        entry("Isolated", reading(&test.start)),
        entry("End", reading(&test.end)),
        entry("Watched", duration(test.seconds())),
    ];
    if let Some(warmest) = &test.note.warmest_pipe {
        facts.push(entry(
            "Warmest pipe",
            print(&warmest.value, units).to_string(),
        ));
    }
    facts.extend(gauge(test.note.gauge.as_ref()));
    if let Some(limit) = &test.note.leak_limit {
        facts.push(entry("Leak limit", print(&limit.value, units).to_string()));
    }
    let results = [
        ("Mean rise, leak and moisture together", &rise.rise),
        ("Rise of the last third", &rise.late),
        ("Smallest leak that it can be", &rise.lower),
        ("Largest leak left possible", &rise.upper),
        ("As air coming in", &rise.upper_mass),
        ("Water alone can reach", &rise.water),
    ];
    let settles = rise.shown.words().settles;
    let place = "A vacuum test shows no place of a leak.";
    let prose = rise
        .reasons
        .iter()
        .map(String::as_str)
        .chain([settles, place])
        .filter(|text| !text.is_empty())
        .map(Block::plain)
        .chain(
            test.note
                .note
                .as_ref()
                .map(|note| Block::plain(sentence(&note.value))),
        )
        .collect();
    Test {
        id: test.id.0.clone(),
        heading: format!(
            "Vacuum test {} of {}",
            test.id,
            part_name(scene, test.circuit, test.section())
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
        let by = test
            .note
            .accept_by
            .as_ref()
            .map_or_else(|| "limit".to_owned(), |by| format!("{}’s limit", by.value));
        let printed = print(&limit.value, units);
        (limit.value.value.si(), format!("{by}, {printed}"))
    });
    let mut lines = Vec::new();
    if let Some(course) = &rise.course {
        let back = course.late.pa_s * (course.end_s - course.late_from_s);
        lines.push(Line {
            label: "slope of the last third".to_owned(),
            stroke: SeriesStroke::Dashed,
            ends: [
                (course.late_from_s, course.end_pa - back),
                (course.end_s, course.end_pa),
            ],
        });
        let start = log.pressure_pa.first().copied().unwrap_or_default();
        lines.extend(rise.room.map(|room| Line {
            label: "largest leak left possible, alone".to_owned(),
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
        name: "Pressure (absolute)",
        time_name: "Time since isolation",
        limit,
        from_zero: true,
        lines,
    })
}
