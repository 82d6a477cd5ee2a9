//! Oil at a service valve, soon after it was used, as the only sign of a leak.

use crate::caution::{Caution, Edit, Scene};
use crate::job::Finding;
use crate::text::{Diagnostic, Message, Span};
use crate::vocabulary::finding_field::{FindingKind, FindingState};
use crate::vocabulary::method_word::MethodWord;
use jiff::civil::Date;

const FINDINGS: &str = "larchwick/cheese-store/2026-03-18/findings.md";

/// Service this long before may still show as oil, days (judgement).
const SOON_DAYS: i32 = 30;

/// Words of the register that mean a valve to which hoses are put.
const SERVICE_VALVE: &[&str] = &[
    "service valve",
    "service port",
    "access valve",
    "access port",
    "schrader",
];

pub(super) static CAUTION: Caution = Caution {
    name: "oil-at-service-valve",
    summary: "oil at a service valve soon after service is the only sign of a leak",
    finds: "A leak or a standing suspicion at a point whose kind, part or place is a service or access valve, with oil as its only evidence, where refrigerant was moved in that circuit in an earlier visit not more than 30 days before.",
    matters: "Drops from the hoses stay at a service valve after every service; they are no sign that it leaks.",
    put_right: "Wipe it, look at it again with a detector or bubble solution, and write what that showed.",
    source: "common practice; the 30 days are a judgement",
    example: &[Edit {
        file: FINDINGS,
        from: "",
        to: r"
## Suction service valve {#unit/suction-service-valve}

- kind: suspect
- evidence:
  - 10:50 oil, a drop at the cap
- state: suspect
",
    }],
    near_miss: &[Edit {
        file: FINDINGS,
        from: "",
        to: r"
## Suction service valve {#unit/suction-service-valve}

- kind: suspect
- evidence:
  - 10:50 oil, a drop at the cap; wiped
  - 11:20 bubbles, one bubble in 15 min
- state: suspect
",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in scene
        .visit
        .findings
        .iter()
        .filter(|finding| stands(finding))
    {
        let evidence = &finding.note.evidence;
        let oil = evidence
            .iter()
            .all(|look| look.method.value == MethodWord::Oil);
        let Some(look) = evidence.first().filter(|_| oil) else {
            continue;
        };
        let Some((day, span)) =
            serviced(scene, finding).filter(|_| at_service_valve(scene, finding))
        else {
            continue;
        };
        found.push(
            CAUTION.says(
                look.span,
                Message::of("caution-oil-at-service-valve")
                    .with("finding", finding.note.title.as_str()),
            )
            .here("oil at a service valve")
            .also(span, format!("hoses were on this circuit on {day}"))
            .cure("wipe it, look again with a detector or bubble solution, and write what that showed"),
        );
    }
}

/// Whether the finding says that there is, or may be, a leak.
fn stands(finding: &Finding) -> bool {
    let note = &finding.note;
    let defect = note
        .kind
        .is_some_and(|kind| kind.value == FindingKind::Defect);
    let cleared = note
        .state
        .is_some_and(|state| state.value == FindingState::SuspectCleared);
    !defect && !cleared
}

fn at_service_valve(scene: &Scene<'_>, finding: &Finding) -> bool {
    let point = finding.note.point.as_ref();
    let note = point.and_then(|point| scene.system.points.get(&point.value));
    let words = note
        .into_iter()
        .flat_map(|note| [&note.kind, &note.part, &note.place]);
    words
        .flatten()
        .map(|text| text.value.to_lowercase())
        .any(|text| SERVICE_VALVE.iter().any(|word| text.contains(word)))
}

/// The last movement in the circuit in an earlier visit, if that is not long ago.
fn serviced(scene: &Scene<'_>, finding: &Finding) -> Option<(Date, Span)> {
    let circuit = finding.circuit?;
    let last = scene
        .earlier_visits()
        .flat_map(|visit| &visit.movements)
        .filter(|movement| movement.circuit == circuit && movement.note.cylinder.is_some())
        .max_by_key(|movement| movement.at.value)?;
    let day = last.at.value.date();
    let ago = (scene.visit.name.date - day).get_days();
    (ago <= SOON_DAYS).then_some((day, last.at.span))
}
