//! Vacuum tests: the limit, what the rise shows, and its drawing.

use crate::job::VacuumTest;
use crate::quantity::{Flavour, print};
use crate::report::chart::{Course, Line, chart};
use crate::report::compose::scene::Scene;
use crate::report::compose::tests::{duration, entry, gauge, part_name, worked};
use crate::report::data::{Block, SeriesStroke, Test};
use crate::report::printed::{self, sentence};
use crate::working::vacuum_rule::RiseVerdict;
use crate::working::vacuum_test::{Acceptance, Rise};

/// What a vacuum test shows, in a sentence or two: the limit first, then the rise.
pub(super) fn vacuum_verdict(scene: &Scene<'_>, test: &VacuumTest, rise: &Rise) -> String {
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
    let accepted = match rise.acceptance {
        Acceptance::Met => format!("Stayed below {limit} for {within}{whose}: limit met."),
        Acceptance::NotMet => {
            format!("Did not stay below {limit} for {within}{whose}: limit not met.")
        }
        Acceptance::TooShort => format!(
            "Watched for {} only; {within} are asked for{whose}.",
            duration(test.seconds())
        ),
        Acceptance::NoLimit => "No limit is noted for the pressure.".to_owned(),
    };
    match shown(scene, rise) {
        Some(shown) => format!("{accepted} {shown}"),
        None => accepted,
    }
}

/// What the rise shows beside the limit; none where only the limit could be judged.
fn shown(scene: &Scene<'_>, rise: &Rise) -> Option<String> {
    let (verdict, upper) = (rise.verdict?, rise.upper.as_ref()?);
    let upper = upper.value.print(scene.site.units);
    Some(match verdict {
        RiseVerdict::NothingLarger => {
            format!("The rise shows nothing larger than {upper} of air coming in.")
        }
        RiseVerdict::Leak => format!(
            "The rise is straight and larger than gas from inside explains: it reads as a leak, not larger than {upper}."
        ),
        RiseVerdict::Moisture => format!(
            "The rise levels off as moisture or gas from the oil does; a leak of up to {upper} may hide in it."
        ),
        RiseVerdict::Inconclusive => {
            format!("What raised the pressure is not decided; a leak is not larger than {upper}.")
        }
    })
}

/// A vacuum test as printed.
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
    let mut prose = vec![Block::plain(
        "A rise can be a leak, moisture or gas from the oil; a vacuum test never shows the place.",
    )];
    prose.extend(rise.reasons.iter().map(Block::plain));
    prose.extend(rise.settles.map(Block::plain));
    if runs_below_the_air(scene, test.circuit) {
        prose.push(Block::plain(
            "Parts of this system run below the pressure of the air: in service air comes in through a leak, as it does in this test.",
        ));
    }
    prose.extend(
        test.note
            .note
            .as_ref()
            .map(|note| Block::plain(sentence(&note.value))),
    );
    let limit = test.note.accept_below.map(|limit| {
        let by = test
            .note
            .accept_by
            .as_ref()
            .map_or_else(|| "limit".to_owned(), |by| format!("{}’s limit", by.value));
        let printed = print(&limit.value, units);
        (limit.value.value.si(), format!("{by}, {printed}"))
    });
    Test {
        id: test.id.0.clone(),
        heading: format!(
            "Vacuum test {} of {}",
            test.id,
            part_name(scene, test.circuit, test.section())
        ),
        verdict: vacuum_verdict(scene, test, rise),
        facts,
        results: [
            ("Mean rise, leak and moisture together", &rise.rise),
            ("Largest leak left possible", &rise.upper),
            ("As air coming in", &rise.upper_mass),
            ("Water alone reaches", &rise.water),
        ]
        .into_iter()
        .filter_map(|(key, figure)| Some(worked(key, figure.as_ref()?, scene)))
        .collect(),
        chart: test.log.as_ref().and_then(|log| {
            chart(&Course {
                time_s: &log.time_s,
                value_si: &log.pressure_pa,
                flavour: Flavour::VacuumPressure,
                written: log.pressure_unit,
                units,
                name: "Pressure (absolute)",
                time_name: "Time since isolation",
                limit: limit.clone(),
                from_zero: true,
                lines: lines(test, rise),
            })
        }),
        prose,
        tables: Vec::new(),
        cautions: Vec::new(),
    }
}

/// Whether the refrigerant of a circuit boils below the air's pressure at 20 °C.
fn runs_below_the_air(scene: &Scene<'_>, circuit: usize) -> bool {
    const STANDARD_AIR_PA: f64 = 101_325.0;
    scene
        .refrigerant(circuit)
        .and_then(|refrigerant| refrigerant.dew_pressure_pa(293.15))
        .is_some_and(|pressure| pressure < STANDARD_AIR_PA)
}

/// The late slope and the bound, as lines over the last third of the rise.
fn lines(test: &VacuumTest, rise: &Rise) -> Vec<Line> {
    let (Some(judged), Some(end)) = (
        &rise.judged,
        test.log.as_ref().and_then(|log| log.time_s.last().copied()),
    ) else {
        return Vec::new();
    };
    let (middle_s, middle_pa) = judged.late.middle;
    let through = |slope: f64| {
        [end * 2.0 / 3.0, end].map(|time| (time, middle_pa + slope * (time - middle_s)))
    };
    vec![
        Line {
            label: "late slope".to_owned(),
            stroke: SeriesStroke::Dashed,
            ends: through(judged.late.pa_s),
        },
        Line {
            label: "bound".to_owned(),
            stroke: SeriesStroke::Dotted,
            ends: through(judged.late.pa_s.max(0.0) + judged.late.half_pa_s),
        },
    ]
}
