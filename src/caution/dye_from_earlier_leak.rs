//! Dye that may still glow from an earlier leak.

use crate::caution::example::{FINDINGS, VISIT, findings};
use crate::caution::look_result::cleaned;
use crate::caution::scene::gives_place;
use crate::caution::{Caution, Edit, Scene};
use crate::job::Finding;
use crate::notes::{Look, Proof};
use crate::text::{Diagnostic, Message, Span};
use crate::vocabulary::finding_field::FindingState;
use crate::vocabulary::method_word::MethodWord;

const EARLIER: Edit = Edit {
    file: "larchwick/cheese-store/2026-09-16/findings.md",
    from: "",
    to: r"## Drier {#unit/drier}

- kind: leak
- evidence:
  - 10:30 electronic sniffer-1, alarm
  - 10:40 dye, glow at the outlet flare
- state: open
",
};

pub(super) static CAUTION: Caution = Caution {
    name: "dye-from-earlier-leak",
    summary: "a leak rests on dye at a point where dye had come out before",
    finds: "A leak or suspicion whose only direct evidence is dye, at a point where an earlier visit found dye too, with no word in between that it was cleaned, wiped or rinsed off.",
    matters: "Dye stays where it came out and glows for years: this may be the old leak's.",
    put_right: "Clean the dye off and look again later, or use a detector or bubble solution now. If it was cleaned, say so: `dye, glow; wiped off last time`.",
    source: "common practice",
    example: &[
        EARLIER,
        VISIT,
        findings(
            "## Drier {#unit/drier}\n\n- kind: leak\n- evidence:\n  - 09:30 dye, glow at the outlet flare\n- state: open\n",
        ),
    ],
    near_miss: &[
        EARLIER,
        VISIT,
        Edit {
            file: FINDINGS,
            from: "",
            to: "## Drier {#unit/drier}\n\n- kind: leak\n- evidence:\n  - 09:30 dye, glow at the outlet flare; wiped off last time\n- state: open\n",
        },
    ],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let cleared = finding
            .note
            .state
            .is_some_and(|state| state.value == FindingState::SuspectCleared);
        let direct: Vec<&Look> = finding
            .note
            .evidence
            .iter()
            .filter(|look| look.positive() && gives_place(look.method.value))
            .collect();
        let only_dye = direct
            .iter()
            .all(|look| look.method.value == MethodWord::Dye);
        let Some(look) = direct.first().filter(|_| only_dye && !cleared) else {
            continue;
        };
        let Some(earlier) = earlier_dye(scene, finding) else {
            continue;
        };
        found.push(
            CAUTION
                .says(
                    look.span,
                    Message::of("caution-dye-from-earlier-leak")
                        .with("finding", finding.note.title.as_str()),
                )
                .here("the only direct evidence")
                .also(earlier, "dye came out here before")
                .cure("clean it off and look again later, or use a detector or bubble solution now")
                .cure("if it was cleaned, say so after a semicolon: `glow; wiped off last time`"),
        );
    }
}

/// Where dye was found at the same point before, if nothing says that it was cleaned off since.
fn earlier_dye(scene: &Scene<'_>, finding: &Finding) -> Option<Span> {
    let point = &finding.note.point.as_ref()?.value;
    let earlier = scene
        .earlier_visits()
        .flat_map(|visit| &visit.findings)
        .filter(|earlier| {
            earlier
                .note
                .point
                .as_ref()
                .is_some_and(|id| id.value == *point)
        });
    let mut dye = None;
    for look in earlier.chain(std::iter::once(finding)).flat_map(looks) {
        if cleaned(look) {
            return None;
        }
        let glows = look.method.value == MethodWord::Dye && look.positive();
        let before = !finding
            .note
            .evidence
            .iter()
            .any(|own| own.span == look.span);
        if glows && before {
            dye = dye.or(Some(look.span));
        }
    }
    dye
}

/// The looks of a finding, evidence and proofs.
fn looks(finding: &Finding) -> impl Iterator<Item = &Look> {
    let proofs = finding.note.proofs.iter().filter_map(|proof| match proof {
        Proof::Look(look) => Some(look),
        Proof::Named(_) => None,
    });
    finding.note.evidence.iter().chain(proofs)
}
