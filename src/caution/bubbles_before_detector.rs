//! A detector used at a place where bubble solution had been put before.

use crate::caution::look_result::cleaned;
use crate::caution::{Caution, Edit, Scene};
use crate::job::{Finding, Moment};
use crate::notes::{Look, Proof};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::Word;
use crate::working::repair_proof::clearances;

const FINDINGS: &str = "larchwick/cheese-store/2026-03-04/findings.md";

pub(super) static CAUTION: Caution = Caution {
    name: "bubbles-before-detector",
    summary: "a detector was used where bubble solution had been put before",
    finds: "At one finding, on one day, a look by a method that an earlier look spoils (bubble solution before a sensor), with no repair between, no word of rinsing, drying or wiping in either, and no look by that method before the solution. A proof is told only where nothing else cleared the repair.",
    matters: "Solution closes small leaks for a while and wets or poisons a sensor: silence after it shows little, and an alarm may be the solution.",
    put_right: "Rinse and dry the place and use the detector again; the next time use the detector first.",
    source: "common practice",
    example: &[Edit {
        file: FINDINGS,
        from: "10:50 bubbles, foam after 4 min",
        to: "10:00 bubbles, foam after 4 min",
    }],
    near_miss: &[Edit {
        file: FINDINGS,
        from: "10:50 bubbles, foam after 4 min",
        to: "10:00 bubbles, foam after 4 min; rinsed off and dried",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    for finding in &scene.visit.findings {
        let looks = looks(scene, finding);
        let spoiled = looks
            .iter()
            .find_map(|later| Some((spoiler(scene, finding, &looks, later)?, later.1)));
        let Some((first, later)) = spoiled else {
            continue;
        };
        found.push(
            CAUTION.says(
                later.method.span,
                Message::of("caution-bubbles-before-detector")
                    .with("method", later.method.value.word())
                    .with("finding", finding.note.title.as_str()),
            )
            .here("the sensor")
            .also(first.method.span, "the solution, before it")
            .cure("rinse and dry the place and use the detector again")
            .cure("if it was rinsed and dried between, say so after a semicolon: `no alarm; rinsed and dried first`"),
        );
    }
}

/// The look that spoiled a later one: before it on the same day with no repair, no cleaning and no
/// unspoiled look by the same method between, where nothing else cleared what it is to prove.
fn spoiler<'a>(
    scene: &Scene<'_>,
    finding: &'a Finding,
    looks: &[(Moment, &'a Look)],
    later: &(Moment, &'a Look),
) -> Option<&'a Look> {
    let method = later.1.method.value;
    let same_search = looks
        .iter()
        .take_while(|look| look.1.span != later.1.span)
        .filter(|(at, _)| at.date() == later.0.date())
        .filter(|(at, _)| !repaired_between(scene, finding, *at, later.0));
    let first = same_search
        .map(|(_, look)| *look)
        .find(|look| look.method.value == method || look.method.value.spoils(method))?;
    let spoils = first.method.value.spoils(method) && !cleaned(first) && !cleaned(later.1);
    let mut evidence = finding.note.evidence.iter();
    let is_proof = !evidence.any(|look| look.span == later.1.span);
    let mut cleared = clearances(scene.system, scene.visit, finding).into_iter();
    let otherwise = cleared.any(|clearance| clearance.span != later.1.span);
    (spoils && !(is_proof && otherwise)).then_some(first)
}

/// The looks of a finding, evidence and proofs, in order of time.
fn looks<'a>(scene: &Scene<'_>, finding: &'a Finding) -> Vec<(Moment, &'a Look)> {
    let proofs = finding.note.proofs.iter().filter_map(|proof| match proof {
        Proof::Look(look) => Some(look),
        Proof::Named(_) => None,
    });
    let all = finding.note.evidence.iter().chain(proofs);
    let mut all: Vec<_> = all
        .filter_map(|look| Some((scene.moment(look.at.value)?, look)))
        .collect();
    all.sort_by_key(|(at, _)| *at);
    all
}

/// Whether a repair stands between two looks; one without a time may.
fn repaired_between(scene: &Scene<'_>, finding: &Finding, from: Moment, to: Moment) -> bool {
    finding.note.repairs.iter().any(|repair| {
        let at = repair.at.and_then(|at| scene.moment(at.value));
        at.is_none_or(|at| (from..=to).contains(&at))
    })
}
