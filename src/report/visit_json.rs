//! What `check` tells of a visit as JSON beside its figures: outcome, findings with grades, reach.

use crate::job::{System, Visit};
use crate::report::visit_figures::VisitFigures;
use crate::vocabulary::Word;
use crate::working::evidence::{Grade, grade};
use crate::working::leaks_explained::{Explained, Verdict};
use crate::working::outcome::{Standing, is_leak};
use crate::working::reach::{Reach, reach};
use serde_json::{Value, json};

/// How the visit ended, in words.
pub fn outcome_json(figures: &VisitFigures) -> Value {
    let outcome = &figures.outcome;
    match outcome.leaks {
        Some(leaks) => json!(format!("{}; {}", outcome.shown(), outcome.shown_of(leaks))),
        None => json!(outcome.shown()),
    }
}

/// Each finding: its point, whether it is a leak, its evidence grade and how it stands.
pub fn findings_json(visit: &Visit, figures: &VisitFigures) -> Value {
    let findings = visit.findings.iter().zip(&figures.outcome.standings);
    findings
        .map(|(finding, standing)| {
            json!({
                "title": finding.note.title,
                "point": finding.note.point.as_ref().map(|point| &point.value.0),
                "leak": is_leak(finding),
                "evidence": grade(&finding.note).map(Grade::word),
                "standing": match standing {
                    Standing::Proved => "repaired, proved",
                    Standing::NotProved => "repaired, not proved",
                    Standing::Noted(state) => state.word(),
                },
            })
        })
        .collect()
}

/// Each registered point and area: by which methods it was looked at, or why not.
pub fn reach_json(system: &System, visit: &Visit) -> Value {
    let places = reach(system, visit).into_iter();
    places
        .map(|(id, reach)| match reach {
            Reach::Looked(methods) => json!({
                "place": id.0,
                "by": methods.into_iter().map(Word::word).collect::<Vec<_>>(),
            }),
            Reach::NotReached(reason) => json!({ "place": id.0, "not-reached": reason }),
            Reach::NotLookedAt => json!({ "place": id.0, "not-looked-at": true }),
        })
        .collect()
}

/// For each circuit with a loss and leaks: what they explain.
pub fn explained_json(system: &System, figures: &VisitFigures) -> Value {
    let circuits = figures.circuits.iter();
    circuits
        .filter_map(|circuit| {
            let said = match circuit.explained.as_ref()? {
                Explained::NotSized { .. } => "not sized",
                Explained::Sized(share) => match share.verdict {
                    Verdict::OthersRemain => "less than was lost",
                    Verdict::MoreThanLost => "more than was lost",
                    Verdict::Open => "open",
                },
            };
            Some(json!({ "of": system.circuit_name(circuit.circuit), "leaks": said }))
        })
        .collect()
}
