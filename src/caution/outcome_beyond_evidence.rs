//! A claim that the notes do not bear.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};

const VISIT: &str = "larchwick/cheese-store/2026-09-16/visit.toml";
const AMBIENT: &str = "ambient = \"17 °C\"\n";

pub(super) static CAUTION: Caution = Caution {
    name: "outcome-beyond-evidence",
    summary: "an outcome is claimed that the notes do not bear",
    finds: "An `outcome` in visit.toml that the findings, proofs and movements do not show, or a finding marked `repaired, proved` without a proof after its last repair. An outcome that claims less than was shown is passed over.",
    matters: "Less was shown than was claimed: the report keeps to what the notes show.",
    put_right: "Note the proof that was made after the last repair, with its time, or claim less.",
    source: "common practice: a customer relies on the outcome, and a proof is what bears it",
    example: &[Edit {
        file: VISIT,
        from: AMBIENT,
        to: "ambient = \"17 °C\"\noutcome = \"found and repaired\"\n",
    }],
    near_miss: &[Edit {
        file: VISIT,
        from: AMBIENT,
        to: "ambient = \"17 °C\"\noutcome = \"nothing found\"\n",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for beyond in &scene.outcome.beyond {
        found.push(
            CAUTION
                .says(
                    beyond.span,
                    Message::of("caution-outcome-beyond-evidence")
                        .phrase("claim", beyond.claim)
                        .phrase("shown", beyond.shown),
                )
                .here("claimed here")
                .cure("note the proof that was made after the last repair, or claim less"),
        );
    }
}
