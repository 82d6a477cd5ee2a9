//! A pressure test whose limit is less than one step of its gauge in that time.

use crate::caution::{Caution, Edit, Scene};
use crate::job::PressureTest;
use crate::quantity::{Flavour, Measured, Throughput};
use crate::text::{Diagnostic, Message, Noted, Span};
use crate::vocabulary::readings_file::PressureTestPurpose;

const READINGS: &str = "larchwick/cheese-store/2026-03-04/readings.toml";
const LIMIT: &str = "leak-limit = \"3e-2 Pa m3/s\"";

pub(super) static CAUTION: Caution = Caution {
    name: "test-coarser-than-limit",
    summary: "one step of the gauge is more than the limit of the test in that time",
    finds: "A tightness test with `leak-limit`, a volume, and a gauge in the register with its `resolution`, where a loss of one step of the gauge, over the length of the test, is a larger leak than the limit. A test with a log, whose many rows see less than a step, says nothing.",
    matters: "A leak of the limit would not have moved the gauge by one step: that it stood still shows nothing about the limit.",
    put_right: "Hold longer, use a gauge with finer steps, or test a smaller part at a time; or ask for the limit that this test can show.",
    source: "leak = step of the gauge times volume over time (derived from leak rate = change of pressure times volume over time)",
    example: &[Edit {
        file: READINGS,
        from: LIMIT,
        to: "leak-limit = \"5e-4 Pa m3/s\"",
    }],
    near_miss: &[Edit {
        file: READINGS,
        from: LIMIT,
        to: "leak-limit = \"7e-4 Pa m3/s\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let purpose = test.note.purpose.map(|purpose| purpose.value);
        let Some(limit) = test
            .note
            .leak_limit
            .filter(|_| purpose == Some(PressureTestPurpose::Tightness) && test.log.is_none())
        else {
            continue;
        };
        let Some((step, span)) = least(scene, test, limit) else {
            continue;
        };
        if step.value.si() <= limit.value.value.si() {
            continue;
        }
        found.push(
            CAUTION
                .says(
                    limit.span,
                    Message::of("caution-test-coarser-than-limit")
                        .with("test", test.id.0.as_str())
                        .figure("leak", scene.print(&step)),
                )
                .here("asked for")
                .also(span, "one step of the gauge")
                .also(test.end.at.span, "held until here")
                .cure("hold longer, use a gauge with finer steps, or test a smaller part at a time")
                .cure("or ask for the limit that this test can show"),
        );
    }
}

/// The leak that moves the gauge by one step over the test, and where the step is noted.
fn least(
    scene: &Scene<'_>,
    test: &PressureTest,
    limit: Noted<Measured<Throughput>>,
) -> Option<(Measured<Throughput>, Span)> {
    let gauge = test.note.gauge.as_ref()?;
    let step = scene.book.instruments.get(&gauge.value)?.resolution?;
    let pressure = matches!(
        step.value.flavour,
        Flavour::PressureDifference | Flavour::GaugePressure | Flavour::AbsolutePressure
    );
    let circuit = scene.system.circuits.get(test.circuit)?;
    let volume: f64 = match &test.note.volume {
        Some(volume) => volume.value.value.si(),
        None => circuit
            .volumes(test.section())?
            .into_iter()
            .map(|volume| volume.value.value.si())
            .sum(),
    };
    let seconds = test.seconds();
    let leak = Throughput::new(step.value.si * volume / seconds);
    (pressure && seconds > 0.0).then_some((limit.value.map(|_| leak), step.span))
}
