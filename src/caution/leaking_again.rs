//! A leak at a place that was repaired before.

use crate::caution::{Caution, Edit, Scene};
use crate::history::{PointHistory, State};
use crate::job::Finding;
use crate::notes::{Look, Proof};
use crate::text::Diagnostic;
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::working::outcome::repaired_earlier;

const FINDINGS: &str = "larchwick/cheese-store/2026-09-16/findings.md";

pub(super) static CAUTION: Caution = Caution {
    name: "leaking-again",
    summary: "a place leaks that was repaired before",
    finds: "A leak shown in this visit at a point whose last leak, found at a visit or told by earlier history, was repaired. A part that was replaced since then starts anew; a verification that found nothing says nothing.",
    matters: "The same repair has not held; what made the place leak is still there.",
    put_right: "Look for the cause (movement, heat, a wrong fitting, a damaged seat) and repair that too, or replace the joint by one of another kind.",
    source: "Regulation (EC) 1516/2007 Article 3 (attention to repeating issues) and Article 8 (cause identified as far as possible)",
    example: &[Edit {
        file: FINDINGS,
        from: "",
        to: r"## Flare nut, expansion valve inlet {#cooler/valve-inlet}

- kind: leak
- evidence:
  - 09:20 electronic sniffer-1, alarm; clean air, alarm again
  - 09:40 bubbles, foam after 2 min
- state: open
",
    }],
    near_miss: &[
        Edit {
            file: "larchwick/cheese-store/system.toml",
            from: "part = \"expansion valve\"\n",
            to: "part = \"expansion valve\"\nreplaced = [2026-06-20]\n",
        },
        Edit {
            file: FINDINGS,
            from: "",
            to: r"## Flare nut, expansion valve inlet {#cooler/valve-inlet}

- kind: leak
- evidence:
  - 09:20 electronic sniffer-1, alarm; clean air, alarm again
  - 09:40 bubbles, foam after 2 min
- state: open
",
        },
    ],
    check,
    limits_claim: false,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let number = scene.earlier_visits().count();
    let mut told = Vec::new();
    for finding in scene.visit.findings.iter().filter(|finding| leaks(finding)) {
        let Some(point) = finding.note.point.as_ref() else {
            continue;
        };
        if told.contains(&&point.value) {
            continue;
        }
        told.push(&point.value);
        // Its whole life is read only where there is one.
        if !repaired_earlier(scene.system, number, &point.value) {
            continue;
        }
        let life = PointHistory::of(scene.system, &point.value, number);
        let State::LeakingAgain { days, times, .. } = life.state else {
            continue;
        };
        let today = scene.visit.name.date;
        let repair = life
            .spells
            .iter()
            .rev()
            .filter(|spell| spell.held == Some(days))
            .find_map(|spell| spell.repair.as_ref());
        let mut diagnostic = Diagnostic::caution(
            CAUTION.name,
            point.span,
            format!("`{}` leaks again after a repair", finding.note.title),
        )
        .here(format!("leaking on {today}: {times} times by now"));
        if let Some((repair, span)) = repair.and_then(|repair| Some((repair, repair.span?))) {
            diagnostic = diagnostic.also(
                span,
                format!("repaired on {}, {days} days before", repair.day),
            );
        }
        found.push(
            diagnostic
                .why(CAUTION.matters)
                .cure("look for what makes it leak and repair that too, or replace the joint by another kind")
                .cure("if the part was replaced since, add the day to `replaced` of the point"),
        );
    }
}

/// Whether the finding shows a leak: evidence that found something, or a proof that failed without a repair.
fn leaks(finding: &Finding) -> bool {
    let note = &finding.note;
    let leak = note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Leak);
    let verified = note.repairs.is_empty()
        && note.state.is_some_and(|state| {
            matches!(
                state.value,
                FindingState::RepairedProved | FindingState::RepairedNotProved
            )
        });
    let shown = note.evidence.iter().any(Look::positive);
    let failed = note.repairs.is_empty()
        && note.proofs.iter().any(|proof| match proof {
            Proof::Look(look) => look.positive(),
            Proof::Named(_) => false,
        });
    leak && !verified && (shown || failed)
}
