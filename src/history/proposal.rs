//! Findings without an id, matched by their wording with registered points: proposals, never facts.

use crate::job::System;
use crate::notes::FindingNote;
use crate::text::Span;
use crate::vocabulary::Identifier;
use similar::TextDiff;

/// Likeness from which a match is proposed; our choice, as for slips of the pen.
const LIKE_ENOUGH: f64 = 0.6;

/// A point that a finding without an id probably speaks of.
#[derive(Clone, Debug)]
pub struct Proposal {
    /// The heading of the finding.
    pub heading: Span,
    /// Words of the heading.
    pub title: String,
    /// The point.
    pub point: Identifier,
    /// The words of the point, or of an earlier finding on it, that are alike.
    pub like: String,
    /// How alike, 0 to 1.
    pub likeness: f64,
    /// The line to write instead of the heading.
    pub line: String,
}

/// Proposals for the findings of a visit.
pub fn proposals(system: &System, number: usize) -> Vec<Proposal> {
    let Some(visit) = system.visits.get(number) else {
        return Vec::new();
    };
    let mut known: Vec<(String, &Identifier)> = Vec::new();
    for (id, note) in system.points.iter() {
        let part = [&note.kind, &note.place].into_iter().flatten();
        let words: Vec<&str> = part.map(|words| words.value.as_str()).collect();
        known.push((words.join(", "), id));
        known.extend(note.place.as_ref().map(|place| (place.value.clone(), id)));
    }
    for earlier in &system.visits[..number] {
        for finding in &earlier.findings {
            let tied = finding.note.point.as_ref();
            let tied = tied.filter(|id| system.points.get(&id.value).is_some());
            known.extend(tied.map(|id| (finding.note.title.clone(), &id.value)));
        }
    }
    visit
        .findings
        .iter()
        .filter(|finding| finding.note.point.is_none())
        .filter_map(|finding| proposal(&finding.note, &known))
        .collect()
}

fn proposal(note: &FindingNote, known: &[(String, &Identifier)]) -> Option<Proposal> {
    let title = in_order(&note.title);
    let (likeness, words, id) = known
        .iter()
        .map(|(words, id)| {
            let other = in_order(words);
            let diff = TextDiff::from_chars(title.as_str(), other.as_str());
            (f64::from(diff.ratio()), words, *id)
        })
        .rev()
        .max_by(|a, b| a.0.total_cmp(&b.0))?;
    (likeness >= LIKE_ENOUGH).then(|| Proposal {
        heading: note.span,
        title: note.title.clone(),
        point: id.clone(),
        like: words.clone(),
        likeness,
        line: format!("## {} {{#{id}}}", note.title),
    })
}

/// The words of a text in alphabetical order, so that the order of a heading does not count.
fn in_order(text: &str) -> String {
    let lower = text.to_lowercase();
    let mut words: Vec<&str> = lower
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty() && !matches!(*word, "the" | "of" | "at" | "on" | "and"))
        .collect();
    words.sort_unstable();
    words.join(" ")
}
