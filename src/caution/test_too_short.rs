//! A vacuum rise watched for too short a time to prove a repair.

use crate::caution::example::{EMPTIED, RECHARGED, REPAIRED_LEAK, VISIT, findings, readings};
use crate::caution::{Caution, Scene};
use crate::text::{Diagnostic, Message};
use crate::working::repair_proof::{Ground, only_weak};

/// A rise shorter than this does not tell a leak from moisture or gas out of the oil, s.
const LONG_ENOUGH_S: f64 = crate::working::vacuum_rule::LEAST_S;

pub(super) static CAUTION: Caution = Caution {
    name: "test-too-short",
    summary: "a repair was called proved by a vacuum rise of under 20 minutes",
    finds: "A leak called repaired and proved that nothing cleared but vacuum tests watched for less than 20 minutes.",
    matters: "In so short a time a rise cannot tell a small leak from moisture or from gas that comes out of the oil; it shows only that the acceptance limit was met.",
    put_right: "Watch the rise for 20 minutes or more, with a log, and prove the joint by a second method under pressure.",
    source: "the project's own numerical study of vacuum rises (20 min and more were tried; shorter ones are not relied on); common practice",
    example: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        readings(
            r#"[[vacuum-test]]
id = "v1"
gauge = "micron-1"
accept-below = "500 micron"
start = { at = 2026-11-04T09:30, pressure = "260 micron" }
end = { at = 2026-11-04T09:45, pressure = "300 micron" }
"#,
        ),
        RECHARGED,
        findings("- proof: v1\n- state: repaired, proved\n"),
    ],
    near_miss: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        readings(
            r#"[[vacuum-test]]
id = "v1"
gauge = "micron-1"
accept-below = "500 micron"
start = { at = 2026-11-04T09:30, pressure = "260 micron" }
end = { at = 2026-11-04T09:50, pressure = "310 micron" }
"#,
        ),
        RECHARGED,
        findings("- proof: v1\n- state: repaired, proved\n"),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let short = |ground: Ground<'_>| match ground {
            Ground::Vacuum(test) => test.seconds() < LONG_ENOUGH_S,
            _ => false,
        };
        let Some(clearance) = only_weak(scene.system, scene.visit, finding, short) else {
            continue;
        };
        let Ground::Vacuum(test) = clearance.ground else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    clearance.span,
                    Message::of("caution-test-too-short")
                        .figure("minutes", format!("{:.0}", test.seconds() / 60.0))
                        .with("finding", finding.note.title.as_str()),
                )
                .here("the proof")
                .also(test.end.at.span, "the rise was watched until here")
                .cure("watch the rise for 20 min or more, and prove the joint by a second method"),
        );
    }
}
