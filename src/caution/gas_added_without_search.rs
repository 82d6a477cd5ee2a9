//! Refrigerant added for a loss that nobody looked for.

use crate::caution::example::{REPAIRED_LEAK, TOP_UP, VISIT, findings, readings};
use crate::caution::gas_added::open_leak;
use crate::caution::scene::{gives_place, on_circuit, searched_circuit};
use crate::caution::{Caution, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::finding_field::FindingKind;
use crate::vocabulary::refrigerant_file::MovementWhy;

pub(super) static CAUTION: Caution = Caution {
    name: "gas-added-without-search",
    summary: "refrigerant was added and the leak was not searched for",
    finds: "Refrigerant that made up for a loss in a circuit that no direct method went over in this visit, and in which no leak was found. A first charge, a change of refrigerant, a recharge after a repair and a charge for the season are not additions.",
    matters: "Refrigerant is not used up: what is missing has leaked, and what was added will follow. Whether a rule sets a time to find and repair the leak stands in the legal part of the report.",
    put_right: "Come back and search the whole circuit by a direct method; work out the loss rate from this addition.",
    source: "Regulation (EC) 1516/2007 Article 7 (recharge volume as a sign, to be followed by a direct method); 40 CFR 82.157(b); 40 CFR 84.106(b)",
    example: &[VISIT, TOP_UP],
    near_miss: &[
        VISIT,
        TOP_UP,
        readings(
            r#"[[detector-check]]
instrument = "sniffer-1"
at = 2026-11-03T08:50
reference-leak = "5 g/yr R-134a"
responded = true

[[search]]
method = "electronic"
instrument = "sniffer-1"
started = 2026-11-03T09:00
ended = 2026-11-03T10:50
pressure = "2.3 bar g"
areas = ["cooler/*", "unit/*"]
"#,
        ),
        REPAIRED_LEAK,
        findings("- proof: 12:10 bubbles, none in 25 min\n- state: repaired, proved\n"),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for circuit in 0..scene.system.circuits.len() {
        let Some((_, movement)) = scene.made_up_loss(circuit) else {
            continue;
        };
        // A recharge follows a repair: its leak was known.
        if movement.why == Some(MovementWhy::Recharge) {
            continue;
        }
        if searched(scene, circuit) || open_leak(scene, circuit).is_some() {
            continue;
        }
        found.push(
            CAUTION.says(
                movement.amount.span(),
                Message::of("caution-gas-added-without-search")
                    .with("circuit", scene.system.circuit_choice(circuit)),
            )
            .here("added here; no search by a direct method in this visit")
            .cure("come back and search the whole circuit; if it was searched, write it as [[search]]"),
        );
    }
}

/// Whether a direct method went over a circuit, or a leak was found in it.
pub(super) fn searched(scene: &Scene<'_>, circuit: usize) -> bool {
    let by_search = scene.visit.searches.iter().any(|search| {
        let direct = search
            .note
            .method
            .is_some_and(|method| gives_place(method.value));
        direct && searched_circuit(search, circuit)
    });
    let by_look = scene.visit.findings.iter().any(|finding| {
        let leak = finding
            .note
            .kind
            .is_some_and(|kind| kind.value == FindingKind::Leak);
        let direct = finding
            .note
            .evidence
            .iter()
            .any(|look| gives_place(look.method.value));
        on_circuit(finding, circuit) && (leak || direct)
    });
    by_search || by_look
}
