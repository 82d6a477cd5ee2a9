//! A vacuum rise over which the temperature moved.

use crate::caution::example::{EMPTIED, RECHARGED, REPAIRED_LEAK, VISIT, findings, readings};
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::working::repair_proof::{Ground, only_weak};
use crate::working::vacuum_test::{STEADY_K, moved_k};

const LOG: &str = "larchwick/cheese-store/2026-11-03/rise.csv";

const TEST: Edit = readings(
    r#"[[vacuum-test]]
id = "v1"
gauge = "micron-1"
accept-below = "500 micron"
isolated = 2026-11-04T09:30
log = { file = "rise.csv", time = "t_min", pressure = "p_micron", temperature = "T_C" }
"#,
);

const PROVED: Edit = findings("- proof: v1\n- state: repaired, proved\n");

pub(super) static CAUTION: Caution = Caution {
    name: "rise-at-moving-temperature",
    summary: "a repair was called proved by a vacuum rise while the system warmed or cooled",
    finds: "A leak called repaired and proved that nothing cleared but vacuum tests whose logs show temperatures more than 1 K apart.",
    matters: "As a system warms, oil and walls give off more gas, as it cools less: the rise then shows the warmth and not the leak.",
    put_right: "Repeat the rise at a steady temperature, or prove the joint by a second method under pressure.",
    source: "the project's own numerical study of vacuum rises, which holds for steady temperatures only; the limit of 1 K is a judgement",
    example: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        TEST,
        Edit {
            file: LOG,
            from: "",
            to: "t_min,p_micron,T_C\n0,240,9.0\n10,262,10.1\n20,281,11.3\n30,300,12.4\n",
        },
        RECHARGED,
        PROVED,
    ],
    near_miss: &[
        VISIT,
        EMPTIED,
        REPAIRED_LEAK,
        TEST,
        Edit {
            file: LOG,
            from: "",
            to: "t_min,p_micron,T_C\n0,240,9.0\n10,262,9.3\n20,281,9.6\n30,300,9.9\n",
        },
        RECHARGED,
        PROVED,
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let unsteady = |ground: Ground<'_>| match ground {
            Ground::Vacuum(test) => moved_k(test) > STEADY_K + 1e-6,
            _ => false,
        };
        let Some(clearance) = only_weak(scene.system, scene.visit, finding, unsteady) else {
            continue;
        };
        let Ground::Vacuum(test) = clearance.ground else {
            continue;
        };
        let log = test.note.log.as_ref();
        found.push(
            CAUTION.says(
                clearance.span,
                Message::of("caution-rise-at-moving-temperature")
                    .with("finding", finding.note.title.as_str()),
            )
            .here("the proof")
            .also(
                log.map_or(test.note.whole.span, |log| log.whole.span),
                format!("its temperatures are {:.1} K apart", moved_k(test)),
            )
            .cure("repeat the rise at a steady temperature, or prove the joint by a second method"),
        );
    }
}
