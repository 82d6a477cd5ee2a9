//! No bubbles, watched for too short a time.

use crate::caution::example::{REPAIRED_LEAK, VISIT, findings};
use crate::caution::look_result::minutes;
use crate::caution::{Caution, Scene};
use crate::job::Finding;
use crate::quantity::LeakRate;
use crate::text::{Diagnostic, Message};
use crate::vocabulary::method_word::MethodWord;
use crate::working::repair_proof::{Ground, only_weak};

/// A small leak wants this long to show, min: common practice.
const LONG_ENOUGH_MIN: f64 = 20.0;

/// A leak this large makes a bubble of 1 mm every second: π/6 mm³ at 101 325 Pa per second, Pa m³/s (derived).
const SHOWS_AT_ONCE_PA_M3_PER_S: f64 = 5.3e-5;

/// The same in kg/s: about 100 g/yr, the upper end for the usual refrigerants at 20 °C (derived).
const SHOWS_AT_ONCE_KG_PER_S: f64 = 0.1 / (365.0 * 86_400.0);

pub(super) static CAUTION: Caution = Caution {
    name: "no-bubbles-too-soon",
    summary: "a repair was called proved by bubble solution watched for under 20 minutes",
    finds: "A leak called repaired and proved that nothing cleared but looks with bubble solution, the longest of them, by its own words, under 20 minutes. A leak sized at 100 g/yr or more, which shows at once, says nothing; nor does a look without its minutes.",
    matters: "A small leak may take many minutes to raise a bubble; a short look shows only that the leak is not a large one.",
    put_right: "Watch the solution for 20 minutes or more under pressure, or use a proved detector after rinsing and drying.",
    source: "common practice",
    example: &[
        VISIT,
        REPAIRED_LEAK,
        findings("- proof: 11:20 bubbles, none in 10 min\n- state: repaired, proved\n"),
    ],
    near_miss: &[
        VISIT,
        REPAIRED_LEAK,
        findings("- proof: 11:20 bubbles, none in 20 min\n- state: repaired, proved\n"),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in scene
        .visit
        .findings
        .iter()
        .filter(|finding| !is_large(finding))
    {
        let short = |ground: Ground<'_>| match ground {
            Ground::Look(look) => {
                look.method.value == MethodWord::Bubbles
                    && minutes(look).is_some_and(|minutes| minutes < LONG_ENOUGH_MIN)
            }
            _ => false,
        };
        if let Some(clearance) = only_weak(scene.system, scene.visit, finding, short) {
            found.push(
                CAUTION.says(
                    clearance.span,
                    Message::of("caution-no-bubbles-too-soon")
                        .with("finding", finding.note.title.as_str()),
                )
                .here("too short for a small leak")
                .cure("watch it for 20 min or more, or use a proved detector after rinsing and drying"),
            );
        }
    }
}

fn is_large(finding: &Finding) -> bool {
    let size = finding.note.size.as_ref();
    size.is_some_and(|size| match size.rate.value.value {
        LeakRate::Mass(kg_per_s) => kg_per_s >= SHOWS_AT_ONCE_KG_PER_S * (1.0 - 1e-6),
        LeakRate::Throughput(flow) => flow >= SHOWS_AT_ONCE_PA_M3_PER_S,
    })
}
