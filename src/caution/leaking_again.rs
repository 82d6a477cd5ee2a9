//! A leak at a place that was repaired before.

use crate::caution::{Caution, Edit, Scene};
use crate::job::Finding;
use crate::notes::{Look, Proof};
use crate::text::{Diagnostic, Span};
use crate::vocabulary::Identifier;
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::system_file::EarlierHappening;
use jiff::civil::Date;

const FINDINGS: &str = "larchwick/cheese-store/2026-09-16/findings.md";

pub(super) static CAUTION: Caution = Caution {
    name: "leaking-again",
    summary: "a place leaks that was repaired before",
    finds: "A leak shown in this visit at a point whose last finding, or entry of earlier history, is a repair. A part that was replaced since then starts anew; a verification that found nothing says nothing.",
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
    let mut told = Vec::new();
    for finding in scene.visit.findings.iter().filter(|finding| leaks(finding)) {
        let Some(point) = finding.note.point.as_ref() else {
            continue;
        };
        let Some((day, span)) = repaired_before(scene, &point.value) else {
            continue;
        };
        let today = scene.visit.name.date;
        let note = scene.system.points.get(&point.value);
        let replaced = note.is_some_and(|note| {
            let mut days = note.replaced.iter();
            days.any(|replaced| day <= replaced.value && replaced.value < today)
        });
        if replaced || told.contains(&&point.value) {
            continue;
        }
        told.push(&point.value);
        found.push(
            Diagnostic::caution(
                CAUTION.name,
                point.span,
                format!("`{}` leaks again after a repair", finding.note.title),
            )
            .here(format!("leaking on {today}"))
            .also(span, format!("repaired on or before {day}"))
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

/// The day and place of the repair that the point's last look before this visit speaks of.
fn repaired_before(scene: &Scene<'_>, point: &Identifier) -> Option<(Date, Span)> {
    let at_point = |finding: &&Finding| {
        finding
            .note
            .point
            .as_ref()
            .is_some_and(|id| id.value == *point)
    };
    for visit in scene.earlier_visits().rev() {
        let Some(finding) = visit.findings.iter().rfind(at_point) else {
            continue;
        };
        let note = &finding.note;
        let state = note.state?;
        let repaired = matches!(
            state.value,
            FindingState::RepairedProved
                | FindingState::RepairedNotProved
                | FindingState::Temporary
        );
        let span = note.repairs.last().map_or(state.span, |repair| repair.span);
        return repaired.then_some((visit.last_day(), span));
    }
    let before = scene.visit.name.date;
    let earlier = scene.system.earlier.iter().rfind(|entry| {
        let this = entry
            .note
            .point
            .as_ref()
            .is_some_and(|id| id.value == *point);
        this && entry.at.value.date() < before
    })?;
    let what = earlier.note.what?;
    (what.value == EarlierHappening::Repaired).then_some((earlier.at.value.date(), what.span))
}
