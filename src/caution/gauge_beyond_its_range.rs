//! A pressure test read on a gauge that does not reach so far.

use crate::caution::{Caution, Edit, Scene};
use crate::quantity::{AbsolutePressure, Flavour, GaugePressure, Pressure};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Amount;

const RANGE: &str = "range = \"40 bar g\"";

pub(super) static CAUTION: Caution = Caution {
    name: "gauge-beyond-its-range",
    summary: "a pressure was read beyond the top of the gauge's range",
    finds: "The first or last reading of a pressure test above the `range` of the gauge it was read on.",
    matters: "Beyond its range a gauge is wrong or damaged, and so is what the test shows.",
    put_right: "Have the gauge checked and repeat the test on one that reaches further. If the gauge's name or range was written wrongly, correct it.",
    source: "common practice",
    example: &[Edit {
        file: "rimebook.toml",
        from: RANGE,
        to: "range = \"16 bar g\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: RANGE,
        to: "range = \"24 bar g\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let atmosphere = scene.visit.atmosphere.pressure();
    for test in &scene.visit.pressure_tests {
        let gauge = test.note.gauge.as_ref();
        let Some(range) = gauge
            .and_then(|id| scene.book.instruments.get(&id.value))
            .and_then(|note| note.range)
        else {
            continue;
        };
        let Some(top) = top(range.value) else {
            continue;
        };
        let top = top.gauge(atmosphere).si();
        let mut readings = [test.start.pressure, test.end.pressure].into_iter();
        let beyond = readings
            .find(|reading| reading.value.value.gauge(atmosphere).si() > top * (1.0 + 1e-6));
        if let Some(reading) = beyond {
            found.push(
                CAUTION
                    .says(
                        reading.span,
                        Message::of("caution-gauge-beyond-its-range")
                            .figure("pressure", scene.print(&reading.value))
                            .with("test", test.id.0.as_str()),
                    )
                    .here("read here")
                    .also(range.span, "the top of the gauge's range")
                    .cure("have the gauge checked and repeat the test on one that reaches further")
                    .cure("if the gauge's name or range was written wrongly, correct it"),
            );
        }
    }
}

/// The top of a range, where it is a pressure.
fn top(range: Amount) -> Option<Pressure> {
    match range.flavour {
        Flavour::GaugePressure => Some(Pressure::Gauge(GaugePressure::new(range.si))),
        Flavour::AbsolutePressure => Some(Pressure::Absolute(AbsolutePressure::new(range.si))),
        _ => None,
    }
}
