//! Grade of the evidence for a leak.

use crate::notes::{FindingNote, Look};
use crate::vocabulary::method_word::Shows;

/// How well a leak is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Indirect signs only.
    Presumed,
    /// Found by one direct method.
    Located,
    /// Found by two independent direct methods, in an order that does not spoil the second.
    Confirmed,
    /// A break or a jet was seen, heard or felt.
    Evident,
}

impl Grade {
    /// Every grade, the weakest first.
    pub const ALL: [Grade; 4] = [
        Grade::Presumed,
        Grade::Located,
        Grade::Confirmed,
        Grade::Evident,
    ];

    /// The word printed.
    pub fn word(self) -> &'static str {
        match self {
            Grade::Presumed => "presumed",
            Grade::Located => "located",
            Grade::Confirmed => "confirmed",
            Grade::Evident => "evident",
        }
    }

    /// What the word means.
    pub fn meaning(self) -> &'static str {
        match self {
            Grade::Presumed => "indirect signs only",
            Grade::Located => "found by one direct method",
            Grade::Confirmed => "found by two independent direct methods",
            Grade::Evident => "a break or a jet was seen, heard or felt",
        }
    }
}

/// The grade of a finding's evidence; `None` where nothing positive was seen.
pub fn grade(finding: &FindingNote) -> Option<Grade> {
    let mut positive: Vec<&Look> = finding
        .evidence
        .iter()
        .filter(|look| look.positive())
        .collect();
    positive.sort_by_key(|look| look.at.value);
    let shows = |wanted: Shows| {
        positive
            .iter()
            .filter(move |look| look.method.value.shows() == wanted)
    };
    if shows(Shows::Evident).next().is_some() {
        return Some(Grade::Evident);
    }
    let direct: Vec<_> = shows(Shows::Place).map(|look| look.method.value).collect();
    let confirmed = direct.iter().enumerate().any(|(index, first)| {
        direct[index + 1..]
            .iter()
            .any(|second| second != first && !first.spoils(*second))
    });
    if confirmed {
        return Some(Grade::Confirmed);
    }
    if !direct.is_empty() {
        return Some(Grade::Located);
    }
    (!positive.is_empty()).then_some(Grade::Presumed)
}
