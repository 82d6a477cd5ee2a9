//! A repair called proved by signs alone.

use crate::caution::example::{REPAIRED_LEAK, VISIT, findings};
use crate::caution::{Caution, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Word;
use crate::vocabulary::method_word::Shows;
use crate::working::repair_proof::{Ground, only_weak};

pub(super) static CAUTION: Caution = Caution {
    name: "proved-by-looking",
    summary: "a repair was called proved by looking, without a test or a direct method",
    finds: "A leak called repaired and proved that nothing cleared but looks for signs: a dry joint, no fresh oil, a parameter that is right.",
    matters: "A joint can leak for weeks before oil or a low charge shows it; that no sign is seen shows very little.",
    put_right: "Prove the repair by a pressure test, or by a detector or bubble solution at the place.",
    source: "Regulation (EC) 1516/2007 Articles 6 to 8 (direct methods; leakage test after repair); common practice",
    example: &[
        VISIT,
        REPAIRED_LEAK,
        findings("- proof: 11:40 visual, no fresh oil\n- state: repaired, proved\n"),
    ],
    near_miss: &[
        VISIT,
        REPAIRED_LEAK,
        findings(
            "- proof: 11:40 visual, no fresh oil\n- proof: 11:45 bubbles, none in 25 min\n- state: repaired, proved\n",
        ),
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let sign = |ground: Ground<'_>| match ground {
            Ground::Look(look) => look.method.value.shows() == Shows::Sign,
            _ => false,
        };
        let Some(clearance) = only_weak(scene.system, scene.visit, finding, sign) else {
            continue;
        };
        let Ground::Look(look) = clearance.ground else {
            continue;
        };
        let mut diagnostic = CAUTION
            .says(
                clearance.span,
                Message::of("caution-proved-by-looking")
                    .with("finding", finding.note.title.as_str()),
            )
            .here(format!("{}: a sign, not a test", look.method.value.word()));
        if let Some(state) = finding.note.state {
            diagnostic = diagnostic.also(state.span, "called proved");
        }
        found.push(
            diagnostic.cure(
                "prove it by a pressure test, or by a detector or bubble solution at the place",
            ),
        );
    }
}
