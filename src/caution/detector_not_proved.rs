//! A detector relied upon without a reference leak that day.

use crate::caution::detector_use::{DetectorUse, sole};
use crate::caution::example::{CHECK_READINGS, check_also};
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};

pub(super) static CAUTION: Caution = Caution {
    name: "detector-not-proved",
    summary: "a detector was relied on that was not tried on a reference leak that day",
    finds: "A gas detector that on one day was not tried on a reference leak, or did not respond to it, where it alone stands for a search, for the evidence of a leak or for the proof of a repair.",
    matters: "A sensor that is worn, flooded or switched off is silent everywhere, and silence reads as tight.",
    put_right: "Try the detector on a reference leak and go over the places again, or go over them by another direct method. If it was tried, write it as [[detector-check]].",
    source: "common practice",
    example: &[Edit {
        file: CHECK_READINGS,
        from: "responded = true",
        to: "responded = false",
    }],
    near_miss: &[
        Edit {
            file: CHECK_READINGS,
            from: "responded = true",
            to: "responded = false",
        },
        check_also(
            r#"
[[search]]
method = "bubbles"
started = 2026-09-16T10:20
ended = 2026-09-16T10:55
areas = ["cooler/*", "unit/*"]
"#,
        ),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for one in sole(scene, |one| !proved(scene, one), same_day) {
        let mut diagnostic = CAUTION
            .says(
                one.span,
                Message::of("caution-detector-not-proved")
                    .with("detector", one.instrument.unwrap_or("none"))
                    .with("day", one.day),
            )
            .here("relied on here");
        if let Some(failed) = scene
            .visit
            .detector_checks
            .iter()
            .find(|check| one.is_tried_by(check))
            .and_then(|check| check.note.responded)
        {
            diagnostic = diagnostic.also(failed.span, "it did not respond");
        }
        found.push(
            diagnostic
                .cure("prove it and go over these places again, or use another direct method there")
                .cure("if it was proved that day, write it as [[detector-check]]"),
        );
    }
}

fn same_day(one: &DetectorUse<'_>, other: &DetectorUse<'_>) -> bool {
    one.instrument == other.instrument && one.day == other.day
}

fn proved(scene: &Scene<'_>, one: &DetectorUse<'_>) -> bool {
    scene
        .visit
        .detector_checks
        .iter()
        .filter(|check| one.is_tried_by(check))
        .any(|check| check.note.responded.is_none_or(|responded| responded.value))
}
