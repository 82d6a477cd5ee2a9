//! A repair that nothing has tested since.

use crate::caution::example::{FINDINGS, REPAIRED_LEAK, VISIT};
use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::working::repair_proof::{clearances, is_repaired_leak};

pub(super) static CAUTION: Caution = Caution {
    name: "repaired-not-retested",
    summary: "a leak was repaired and not tested again in this visit",
    finds: "A repaired leak without any proof, where no test of its circuit and no search over its place came after the repair either.",
    matters: "Many repairs do not hold at once; until it is tested nobody knows, and the loss may go on.",
    put_right: "Test the place: a pressure test and a vacuum test where the circuit was opened, and a direct method at the place. Write each as a proof.",
    source: "Regulation (EC) 1516/2007 Article 8 (leakage test after repair); Regulation (EU) 2024/573 Article 4(5); 40 CFR 82.157(e); 40 CFR 84.106(e)",
    example: &[
        VISIT,
        REPAIRED_LEAK,
        Edit {
            file: FINDINGS,
            from: "",
            to: "- state: repaired, not proved\n",
        },
    ],
    near_miss: &[
        VISIT,
        REPAIRED_LEAK,
        Edit {
            file: FINDINGS,
            from: "",
            to: "- proof: 11:20 bubbles, none in 25 min\n- state: repaired, proved\n",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let tested = !finding.note.proofs.is_empty()
            || !clearances(scene.system, scene.visit, finding).is_empty();
        let repair = finding.note.repairs.last();
        let Some(repair) = repair.filter(|_| is_repaired_leak(finding) && !tested) else {
            continue;
        };
        let diagnostic = CAUTION
            .says(
                repair.span,
                Message::of("caution-repaired-not-retested")
                    .with("finding", finding.note.title.as_str()),
            )
            .here("the last repair");
        let diagnostic = match finding.note.state {
            Some(state) => diagnostic.also(state.span, "how it was left"),
            None => diagnostic,
        };
        found.push(
            diagnostic
                .cure("test it, and write `proof:` with the test's id or with the look")
                .cure("until then it stays `repaired, not proved`"),
        );
    }
}
