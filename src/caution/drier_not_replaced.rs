//! A drier that stayed in after the circuit was opened by brazing.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Diagnostic, Message};
use crate::vocabulary::refrigerant_file::{MovementKind, MovementWhy};

const VISIT: &str = "larchwick/cheese-store/2026-03-04/visit.toml";
const REPLACED: &str = "part = \"liquid drier\"\nwork = \"replaced\"\npoint = \"unit/drier\"";

/// What a drier is called.
const DRIER: &[&str] = &["drier", "dryer"];

pub(super) static CAUTION: Caution = Caution {
    name: "drier-not-replaced",
    summary: "a circuit was opened and brazed, and nothing is said of its drier",
    finds: "A visit in which a circuit was emptied for a repair and brazed, where the register has a drier, and no work, repair or advice speaks of it.",
    matters: "A drier that has been open to the air takes up moisture and is soon spent; water left inside makes acid, ice at the expansion valve, and new leaks.",
    put_right: "Renew the drier at the next visit and look at the moisture spot of the sight glass. If it was renewed, or left with a reason, write that as [[work]].",
    source: "common practice",
    example: &[Edit {
        file: VISIT,
        from: REPLACED,
        to: "part = \"sight glass\"\nwork = \"cleaned\"",
    }],
    near_miss: &[Edit {
        file: VISIT,
        from: REPLACED,
        to: "part = \"liquid drier\"\nwork = \"valved off and not opened\"",
    }],
    check,
    limits_claim: true,
    rests_on_absence: true,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let Some(note) = &scene.visit.note else {
        return;
    };
    let Some(work) = note.work.iter().find_map(|work| {
        let words = work.work.as_ref()?;
        (words.value.to_lowercase().contains("braz")).then_some(words)
    }) else {
        return;
    };
    let emptied = scene.visit.movements.iter().find(|movement| {
        movement.kind == MovementKind::Recovered && movement.why == Some(MovementWhy::Repair)
    });
    let mut points = scene.system.points.iter();
    let drier = points.find(|(id, point)| {
        let words = [&point.kind, &point.part, &point.place];
        is_drier(&id.0)
            || words
                .into_iter()
                .flatten()
                .any(|text| is_drier(&text.value))
    });
    let (Some(emptied), Some((drier, _))) = (emptied, drier) else {
        return;
    };
    if is_spoken_of(scene) {
        return;
    }
    let mut diagnostic = CAUTION
        .says(work.span, Message::of("caution-drier-not-replaced"))
        .here("brazed")
        .also(emptied.at.span, "the circuit was emptied for it");
    if let Some(span) = scene.system.points.span(drier) {
        diagnostic = diagnostic.also(span, "the drier in the register");
    }
    found.push(
        diagnostic
            .cure("renew the drier at the next visit and look at the moisture spot of the sight glass")
            .cure("if it was renewed, or left with a reason, write that as [[work]]"),
    );
}

fn is_drier(text: &str) -> bool {
    let text = text.to_lowercase();
    DRIER.iter().any(|word| text.contains(word))
}

/// Whether work, advice or a finding of the visit speaks of a drier.
fn is_spoken_of(scene: &Scene<'_>) -> bool {
    let note = scene.visit.note.iter();
    let work = note.clone().flat_map(|note| &note.work);
    let work = work.flat_map(|work| [&work.part, &work.work]);
    let advice = note
        .flat_map(|note| &note.advice)
        .map(|advice| &advice.what);
    let written = work
        .chain(advice)
        .flatten()
        .any(|text| is_drier(&text.value));
    let findings = &scene.visit.findings;
    let mut repairs = findings.iter().flat_map(|finding| &finding.note.repairs);
    written
        || findings.iter().any(|finding| is_drier(&finding.note.title))
        || repairs.any(|repair| is_drier(&repair.what))
}
