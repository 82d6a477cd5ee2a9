//! A repair proved only by a detector that could not have found that leak.

use crate::caution::example::{REPAIRED_LEAK, VISIT, findings, readings};
use crate::caution::{Caution, Edit, Scene};
use crate::notes::Look;
use crate::quantity::{LeakRate, Measured};
use crate::text::{Diagnostic, Message, Noted};
use crate::vocabulary::Identifier;
use crate::working::repair_proof::{Ground, only_weak};

const COARSE: Edit = Edit {
    file: "rimebook.toml",
    from: "sensitivity = \"3 g/yr\"",
    to: "sensitivity = \"5 g/yr\"",
};

const CHECKED: Edit = readings(
    r#"[[detector-check]]
instrument = "sniffer-1"
at = 2026-11-03T11:10
reference-leak = "5 g/yr R-134a"
responded = true
"#,
);

pub(super) static CAUTION: Caution = Caution {
    name: "proof-coarser-than-leak",
    summary: "a repair was called proved by a detector that could not have found that leak",
    finds: "A leak with a size, called repaired and proved, that nothing cleared but looks by detectors whose noted sensitivity is a larger leak than that size.",
    matters: "The detector would have been silent before the repair as well; its silence proves nothing.",
    put_right: "Prove the repair by a method that would have shown the leak: a more sensitive detector, or bubble solution watched long enough.",
    source: "common practice",
    example: &[
        COARSE,
        VISIT,
        CHECKED,
        REPAIRED_LEAK,
        findings(
            "- size: 4 g/yr, estimated\n- proof: 11:20 electronic sniffer-1, no alarm; rinsed and dried first\n- state: repaired, proved\n",
        ),
    ],
    near_miss: &[
        COARSE,
        VISIT,
        CHECKED,
        REPAIRED_LEAK,
        findings(
            "- size: 6 g/yr, estimated\n- proof: 11:20 electronic sniffer-1, no alarm; rinsed and dried first\n- state: repaired, proved\n",
        ),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let Some(size) = &finding.note.size else {
            continue;
        };
        let coarse = |ground: Ground<'_>| match ground {
            Ground::Look(look) => sensitivity(scene, look)
                .is_some_and(|least| is_larger(least.value.value, size.rate.value.value)),
            _ => false,
        };
        let Some(clearance) = only_weak(scene.system, scene.visit, finding, coarse) else {
            continue;
        };
        let Ground::Look(look) = clearance.ground else {
            continue;
        };
        let Some(least) = sensitivity(scene, look) else {
            continue;
        };
        found.push(
            CAUTION.says(
                clearance.span,
                Message::of("caution-proof-coarser-than-leak")
                    .with("finding", finding.note.title.as_str()),
            )
            .here("the proof")
            .also(size.rate.span, "the size of the leak")
            .also(least.span, "the smallest leak this detector finds")
            .cure(
                "prove it by a more sensitive detector, or by bubble solution watched long enough",
            ),
        );
    }
}

fn sensitivity(scene: &Scene<'_>, look: &Look) -> Option<Noted<Measured<LeakRate>>> {
    let id = Identifier(look.with.as_ref()?.value.clone());
    scene.book.instruments.get(&id)?.sensitivity
}

/// Whether one leak is larger than another, where both are written in the same manner.
fn is_larger(one: LeakRate, other: LeakRate) -> bool {
    match (one, other) {
        (LeakRate::Mass(one), LeakRate::Mass(other))
        | (LeakRate::Throughput(one), LeakRate::Throughput(other)) => one > other * (1.0 + 1e-6),
        _ => false,
    }
}
