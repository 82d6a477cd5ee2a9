//! Refrigerant added for a loss whose leak was searched for and not found.

use crate::caution::example::{REPAIRED_LEAK, TOP_UP, VISIT, findings, readings};
use crate::caution::gas_added::open_leak;
use crate::caution::gas_added_without_search::searched;
use crate::caution::scene::on_circuit;
use crate::caution::{Caution, Edit, Scene};
use crate::job::{Movement, Visit};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::refrigerant_file::MovementWhy;
use crate::working::outcome::is_leak;

const SEARCHED: Edit = readings(
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
);

pub(super) static CAUTION: Caution = Caution {
    name: "gas-added-leak-not-found",
    summary: "refrigerant was added and the leak was searched for but not found",
    finds: "Refrigerant that made up for a loss in a circuit that was searched by a direct method, where neither this visit nor one since the last filling found a leak. A recharge after a repair is not an addition; a suspicion is not a leak found.",
    matters: "Refrigerant is not used up: what was added will leak too, until the leak is found and repaired.",
    put_right: "Agree on the day of the next search, with what could not be reached made accessible, and by another method; watch the charge until then.",
    source: "Regulation (EC) 1516/2007 Article 7 (recharge volume as a sign of leakage, to be followed by a direct method); that the loss goes on is common practice",
    example: &[VISIT, TOP_UP, SEARCHED],
    near_miss: &[
        VISIT,
        TOP_UP,
        SEARCHED,
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
        if movement.why == Some(MovementWhy::Recharge)
            || !searched(scene, circuit)
            || leak_known(scene, circuit, movement)
        {
            continue;
        }
        found.push(
            CAUTION
                .says(
                    movement.amount.span(),
                    Message::of("caution-gas-added-leak-not-found")
                        .with("circuit", scene.system.circuit_choice(circuit)),
                )
                .here("added here; the search found no leak")
                .cure("agree on the next search and write it as [[advice]] or [[due]]"),
        );
    }
}

/// Whether the leak that an addition made up for was found: at this visit, at one since the circuit
/// was last filled, or earlier and still open.
fn leak_known(scene: &Scene<'_>, circuit: usize, movement: &Movement) -> bool {
    let filled = scene.last_filling(circuit, movement.at.value);
    let filled = filled.map(|last| last.at.value.date());
    let since = |visit: &&Visit| filled.is_none_or(|filled| visit.name.date > filled);
    let leaks = |visit: &Visit| {
        let mut findings = visit.findings.iter();
        findings.any(|finding| is_leak(finding) && on_circuit(finding, circuit))
    };
    leaks(scene.visit)
        || scene.earlier_visits().filter(since).any(leaks)
        || open_leak(scene, circuit).is_some()
}
