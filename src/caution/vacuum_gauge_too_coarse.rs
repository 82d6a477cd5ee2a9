//! A vacuum gauge that cannot read the limit it is to be judged by.

use crate::caution::{Caution, Edit, Scene};
use crate::quantity::Flavour;
use crate::text::{Diagnostic, Message};

const RESOLUTION: &str = "resolution = \"1 micron\"";

pub(super) static CAUTION: Caution = Caution {
    name: "vacuum-gauge-too-coarse",
    summary: "a vacuum test was read on a gauge whose smallest step is larger than the limit",
    finds: "A vacuum test with `accept-below` on a gauge whose `resolution` is as large as that limit or larger.",
    matters: "Such a gauge shows zero long before the limit is reached: that the limit was met is not known.",
    put_right: "Repeat the test on a vacuum gauge with steps of a few microns. If the gauge's name or resolution was written wrongly, correct it.",
    source: "common practice",
    example: &[Edit {
        file: "rimebook.toml",
        from: RESOLUTION,
        to: "resolution = \"1000 micron\"",
    }],
    near_miss: &[Edit {
        file: "rimebook.toml",
        from: RESOLUTION,
        to: "resolution = \"25 micron\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for test in &scene.visit.vacuum_tests {
        let Some((gauge, limit)) = test.note.gauge.as_ref().zip(test.note.accept_below) else {
            continue;
        };
        let instrument = scene.book.instruments.get(&gauge.value);
        let Some(step) = instrument.and_then(|note| note.resolution) else {
            continue;
        };
        let pressure = matches!(
            step.value.flavour,
            Flavour::VacuumPressure | Flavour::PressureDifference
        );
        if !pressure || step.value.si < limit.value.value.si() * (1.0 - 1e-6) {
            continue;
        }
        found.push(
            CAUTION
                .says(
                    gauge.span,
                    Message::of("caution-vacuum-gauge-too-coarse").with("test", test.id.0.as_str()),
                )
                .here("too coarse for this test")
                .also(step.span, "its smallest step")
                .also(limit.span, "the limit")
                .cure("repeat the test on a vacuum gauge with steps of a few microns")
                .cure("if the gauge's name or resolution was written wrongly, correct it"),
        );
    }
}
