//! A sign of a leak that no direct method followed.

use crate::caution::scene::gives_place;
use crate::caution::{Caution, Edit, Scene};
use crate::job::{Finding, covers, matches_pattern};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::method_word::Shows;
use crate::vocabulary::site_file::RuleSetWord;

const SIGN: &str = r"## Receiver outlet valve {#unit/receiver-outlet-valve}

- kind: suspect
- evidence:
  - 09:30 oil, dust stuck to the stem
- state: suspect
";

pub(super) static CAUTION: Caution = Caution {
    name: "sign-without-direct-check",
    summary: "a sign of a leak was not followed by a direct method",
    finds: "Where the rules of the European Union are in force: a leak or a suspicion, left standing, whose evidence is only indirect signs, where no direct method was used at it, no direct search went over its point in the same visit, and no search lists it as not reached.",
    matters: "A sign alone neither shows a leak nor clears it, and the rule asks for a direct method after it.",
    put_right: "Go over the place with a detector or bubble solution and write what that showed.",
    source: "Regulation (EC) 1516/2007 Article 7 (a presumption of leakage is followed by a direct method)",
    example: &[
        Edit {
            file: "larchwick/cheese-store/2026-09-16/findings.md",
            from: "",
            to: SIGN,
        },
        Edit {
            file: "larchwick/cheese-store/2026-09-16/readings.toml",
            from: "areas = [\"cooler/*\", \"unit/*\"]",
            to: "areas = [\"cooler/*\"]",
        },
    ],
    near_miss: &[Edit {
        file: "larchwick/cheese-store/2026-09-16/findings.md",
        from: "",
        to: SIGN,
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let Some(rule) = scene.rule(RuleSetWord::Eu2024) else {
        return;
    };
    for finding in scene
        .visit
        .findings
        .iter()
        .filter(|finding| presumed(finding))
    {
        let Some(look) = finding.note.evidence.first() else {
            continue;
        };
        if searched(scene, finding) {
            continue;
        }
        found.push(
            CAUTION.says(
                look.span,
                Message::of("caution-sign-without-direct-check")
                    .with("finding", finding.note.title.as_str()),
            )
            .here("a sign, not followed by a direct method")
            .also(rule, "this rule asks for one")
            .cure(
                "go over the place with a detector or bubble solution and write what that showed",
            ),
        );
    }
}

/// Whether the finding stands on signs alone.
fn presumed(finding: &Finding) -> bool {
    let note = &finding.note;
    let defect = note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Defect);
    let standing = note
        .state
        .is_none_or(|state| matches!(state.value, FindingState::Open | FindingState::Suspect));
    let signs = note
        .evidence
        .iter()
        .all(|look| look.method.value.shows() == Shows::Sign);
    !defect && standing && signs
}

/// Whether a direct search went over the point, or a search says why none did.
fn searched(scene: &Scene<'_>, finding: &Finding) -> bool {
    let Some(point) = &finding.note.point else {
        // A place without a point may lie in any area that was searched.
        return !scene.visit.searches.is_empty();
    };
    let listed = scene.visit.searches.iter().any(|search| {
        let mut places = search
            .note
            .not_reached
            .iter()
            .filter_map(|place| place.point.as_ref());
        places.any(|place| matches_pattern(&place.value.0, &point.value.0))
    });
    listed
        || scene.visit.searches.iter().any(|search| {
            let direct = search
                .note
                .method
                .is_some_and(|method| gives_place(method.value));
            direct && covers(search, &point.value)
        })
}
