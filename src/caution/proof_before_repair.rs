//! Proofs that were all made before the last repair.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::working::repair_proof::{clearances, is_repaired_leak, last_repair, written_proofs};

const FINDINGS: &str = "larchwick/cheese-store/2026-03-04/findings.md";

pub(super) static CAUTION: Caution = Caution {
    name: "proof-before-repair",
    summary: "every proof of a repair was made before the last repair",
    finds: "A repaired leak whose proofs all began before its last repair, where nothing else tested the place after it. A repair or a proof without a time says nothing.",
    matters: "A test made before the last work at a joint does not show how the joint is now.",
    put_right: "Test the place again and write that as a proof. If a time is wrong in the notes, correct the time.",
    source: "common practice",
    example: &[Edit {
        file: FINDINGS,
        from: "- repair: 13:30 cracked",
        to: "- repair: [day 2] 16:50 cracked",
    }],
    near_miss: &[Edit {
        file: FINDINGS,
        from: "- repair: 13:30 cracked",
        to: "- repair: 16:30 cracked",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in scene.visit.findings.iter().filter(|f| is_repaired_leak(f)) {
        let Some((repaired, span)) = last_repair(scene.visit, finding) else {
            continue;
        };
        let Some(proofs) = written_proofs(scene.visit, finding) else {
            continue;
        };
        let last = proofs.iter().max_by_key(|proof| proof.at);
        let Some(last) = last.filter(|last| last.at < repaired) else {
            continue;
        };
        if !clearances(scene.system, scene.visit, finding).is_empty() {
            continue;
        }
        found.push(
            CAUTION
                .says(
                    last.span,
                    Message::of("caution-proof-before-repair")
                        .with("finding", finding.note.title.as_str()),
                )
                .here(format!("the last proof, {}", clock(last.at)))
                .also(span, format!("the last repair, {}", clock(repaired)))
                .cure("test it again and write that as a proof")
                .cure("if one of the two times is wrong, correct it"),
        );
    }
}

fn clock(at: jiff::civil::DateTime) -> String {
    at.strftime("%Y-%m-%d %H:%M").to_string()
}
