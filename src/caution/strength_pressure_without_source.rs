//! A strength test outside the usual factors of the plate, without saying whose figure that is.

use crate::caution::example::{EMPTIED, VISIT, readings};
use crate::caution::{Caution, Scene};
use crate::job::PressureTest;
use crate::text::{Diagnostic, Message};
use crate::vocabulary::readings_file::PressureTestPurpose;

/// The usual strength tests lie between these multiples of the plate's pressure (EN 378-2, from memory).
const USUAL: std::ops::RangeInclusive<f64> = 1.1..=1.43;

pub(super) static CAUTION: Caution = Caution {
    name: "strength-pressure-without-source",
    summary: "a strength test below 1.1 or above 1.43 times the plate, without whose figure that is",
    finds: "A strength test whose highest noted reading is less than 1.1 or more than 1.43 times the lowest `most` of the parts under test, without a `note` that says where the test pressure comes from.",
    matters: "A strength test that is too low shows nothing beyond daily use; one that is too high can strain or burst parts.",
    put_right: "Write in `note` whose figure the test pressure is, such as the maker's sheet or the code. If there is none, have whoever is competent for the pressure equipment look at it.",
    source: "EN 378-2 (1.1 and 1.43 times the highest allowable pressure), from memory: verify",
    example: &[
        VISIT,
        EMPTIED,
        readings(
            r#"[[pressure-test]]
id = "p1"
purpose = "strength"
gas = "nitrogen"
gauge = "gauge-1"
start = { at = 2026-11-03T15:00, pressure = "29.50 bar g", temperature = "11.0 °C" }
end = { at = 2026-11-03T15:30, pressure = "29.50 bar g", temperature = "11.0 °C" }
"#,
        ),
    ],
    near_miss: &[
        VISIT,
        EMPTIED,
        readings(
            r#"[[pressure-test]]
id = "p1"
purpose = "strength"
gas = "nitrogen"
gauge = "gauge-1"
start = { at = 2026-11-03T15:00, pressure = "26.00 bar g", temperature = "11.0 °C" }
end = { at = 2026-11-03T15:30, pressure = "26.00 bar g", temperature = "11.0 °C" }
"#,
        ),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.pressure_tests {
        let strength = test
            .note
            .purpose
            .is_some_and(|purpose| purpose.value == PressureTestPurpose::Strength);
        if strength && test.note.note.is_none() {
            found.extend(unusual(scene, test));
        }
    }
}

fn unusual(scene: &Scene<'_>, test: &PressureTest) -> Option<Diagnostic> {
    let circuit = scene.system.circuits.get(test.circuit)?;
    let plate = circuit.most(test.section())?;
    let atmosphere = scene.visit.atmosphere.pressure();
    let gauge = |pressure: crate::quantity::Pressure| pressure.gauge(atmosphere).si();
    let (start, end) = (&test.start.pressure, &test.end.pressure);
    let higher = if gauge(end.value.value) > gauge(start.value.value) {
        end
    } else {
        start
    };
    let factor = gauge(higher.value.value) / gauge(plate.value.value);
    // A thousandth is for what a gauge cannot show.
    let usual = USUAL.start() - 1e-3..=USUAL.end() + 1e-3;
    if !factor.is_finite() || usual.contains(&factor) {
        return None;
    }
    Some(
        CAUTION.says(
            higher.span,
            Message::of("caution-strength-pressure-without-source")
                .with("test", test.id.0.as_str())
                .figure("factor", format!("{factor:.2}")),
        )
        .here("held at this pressure")
        .also(plate.span, "the most the plate allows here")
        .cure("write where the figure comes from: `note = \"by the maker's sheet, 29.5 bar g\"`")
        .cure("if nobody gave it, have whoever is competent for the pressure equipment look at it"),
    )
}
