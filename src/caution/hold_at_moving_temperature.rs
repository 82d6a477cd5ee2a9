//! A short pressure hold over which the temperature moved, or was not read.

use crate::caution::example::{EMPTIED, REPAIRED_LEAK, VISIT, findings, readings};
use crate::caution::{Caution, Scene};
use crate::text::{Diagnostic, Message};
use crate::working::pressure_test::is_steady;
use crate::working::repair_proof::{Ground, only_weak};

pub(super) static CAUTION: Caution = Caution {
    name: "hold-at-moving-temperature",
    summary: "a repair was called proved by a short pressure hold without steady temperature",
    finds: "A leak called repaired and proved that nothing cleared but pressure tests shorter than 23 hours, each with temperatures more than 2 K apart at start and end, or without one of the two temperatures.",
    matters: "The gas in the pipe follows its own warmth, not that of the thermometer: over a short hold a change of temperature hides a leak or makes one up.",
    put_right: "Hold for a full day, or until the temperature is again within 2 K of the start, and read the pipe's temperature both times.",
    source: "the project's own numerical study of nitrogen holds (the limit of 2 K is a judgement)",
    example: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        readings(
            r#"[[pressure-test]]
id = "p1"
purpose = "tightness"
gas = "nitrogen"
gauge = "gauge-1"
start = { at = 2026-11-03T15:00, pressure = "19.50 bar g", temperature = "13.0 °C" }
end = { at = 2026-11-04T08:30, pressure = "19.23 bar g", temperature = "9.2 °C" }
"#,
        ),
        findings("- proof: p1\n- state: repaired, proved\n"),
    ],
    near_miss: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        readings(
            r#"[[pressure-test]]
id = "p1"
purpose = "tightness"
gas = "nitrogen"
gauge = "gauge-1"
start = { at = 2026-11-03T15:00, pressure = "19.50 bar g", temperature = "11.0 °C" }
end = { at = 2026-11-04T08:30, pressure = "19.36 bar g", temperature = "9.1 °C" }
"#,
        ),
        findings("- proof: p1\n- state: repaired, proved\n"),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let unsteady = |ground: Ground<'_>| match ground {
            Ground::Pressure(test) => !is_steady(test),
            _ => false,
        };
        let Some(clearance) = only_weak(scene.system, scene.visit, finding, unsteady) else {
            continue;
        };
        let Ground::Pressure(test) = clearance.ground else {
            continue;
        };
        let mut diagnostic = CAUTION
            .says(
                clearance.span,
                Message::of("caution-hold-at-moving-temperature")
                    .with("finding", finding.note.title.as_str()),
            )
            .here("the proof");
        diagnostic = match (test.start.temperature, test.end.temperature) {
            (Some(start), Some(end)) => diagnostic
                .also(
                    start.span,
                    format!("{} at the start", scene.print(&start.value)),
                )
                .also(end.span, format!("{} at the end", scene.print(&end.value))),
            _ => diagnostic.also(test.note.whole.span, "without both temperatures"),
        };
        found.push(
            diagnostic
                .cure("hold for a full day, or until the temperature is within 2 K of the start"),
        );
    }
}
